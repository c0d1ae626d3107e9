/** Tables of antennas, links, acceptance and of the mathematics below. */

import { always, type Spec, text } from './spec.js';

const relative = (column: string, tolerance: number) => [column, tolerance, 'relative'] as const;

export const OTHER_TABLES: readonly Spec[] = [
  {
    file: 'antenna/illumination.csv',
    calls: 'illuminatedAperture',
    status: 'recomputed',
    inputs: { edgeTaperDb: 'edge_taper_db', exponent: 'exponent' },
    expected: {
      beamwidthFactorDeg: ['beamwidth_factor_deg', 1e-9],
      firstNullFactorDeg: ['first_null_factor_deg', 1e-9],
      taperEfficiencyRatio: ['efficiency_ratio', 1e-9],
      firstSideLobeDb: ['first_side_lobe_db', 1e-9],
    },
  },
  {
    file: 'antenna/exposure.csv',
    calls: 'powerDensity',
    status: 'recomputed',
    note: 'At 1 m in front of the reflector.',
    inputs: {
      diameterM: 'diameter_m',
      powerW: 'power_w',
      frequencyGHz: 'frequency_ghz',
      antennaGainDbi: 'gain_dbi',
      distanceM: always(1),
    },
    expected: {
      surfaceWPerM2: relative('surface_w_m2', 2e-5),
      nearFieldWPerM2: relative('near_field_w_m2', 2e-5),
      nearFieldEndM: relative('near_field_end_m', 2e-5),
      farFieldFromM: relative('far_field_from_m', 2e-5),
    },
  },
  {
    file: 'link/adjacent-channel.csv',
    calls: 'adjacentChannel',
    status: 'recomputed',
    inputs: {
      wantedSymbolRateMBd: 'wanted_rate_mbd',
      wantedRollOffRatio: 'wanted_roll_off',
      otherSymbolRateMBd: 'other_rate_mbd',
      otherRollOffRatio: 'other_roll_off',
      spacingMHz: 'spacing_mhz',
    },
    expected: { carrierToInterferenceDb: ['carrier_ratio_db', 1e-7] },
  },
  {
    file: 'link/dvb-s2.csv',
    calls: 'dvbMode',
    status: 'published',
    inputs: {
      standard: always('DVB-S2'),
      mode: (row) => `${row['modulation']} ${row['code_rate']}`,
    },
    expected: {
      esN0Db: ['ideal_EsN0_dB_published', 0],
      bitsPerSymbol: ['eff_published_bit_per_symbol', 5e-7],
    },
  },
  {
    file: 'link/dvb-s2x.csv',
    calls: 'dvbMode',
    status: 'published',
    inputs: { standard: always('DVB-S2X'), mode: text('modcod') },
    expected: { bitsPerSymbol: ['eff_published_bit_per_symbol', 5e-7] },
  },
  {
    file: 'numeric/bessel.csv',
    calls: 'besselJ',
    status: 'recomputed',
    inputs: { order: 'order', x: 'x' },
    expected: { value: ['j', 3e-15] },
  },
  {
    file: 'numeric/normal.csv',
    calls: 'normalExceedance',
    status: 'recomputed',
    inputs: { z: 'z' },
    expected: { exceedance: relative('exceedance', 1e-13) },
  },
  {
    file: 'numeric/student-tail.csv',
    calls: 'exceedance of Student’s distribution',
    status: 'recomputed',
    inputs: { degreesOfFreedom: 'degrees_of_freedom', t: 't' },
    expected: { exceedance: relative('exceedance', 1e-11) },
  },
  {
    file: 'numeric/chi-square-tail.csv',
    calls: 'exceedance of the chi-square distribution',
    status: 'recomputed',
    inputs: { degreesOfFreedom: 'degrees_of_freedom', x: 'x' },
    expected: { exceedance: relative('exceedance', 1e-11) },
  },
  {
    file: 'numeric/incomplete-beta.csv',
    calls: 'regularised incomplete beta function',
    status: 'recomputed',
    inputs: { x: 'x', a: 'a', b: 'b' },
    expected: { value: relative('value', 1e-11) },
  },
];

/** Worked tables: quantity in words, inputs and expected values as they stand, a tolerance for each row. */
export const WORKED_TABLES: readonly string[] = [
  'antenna/circular.csv',
  'ingress/worked.csv',
  'readings/corrections.csv',
  'readings/offsets.csv',
  'readings/quality.csv',
  'transmit/worked.csv',
  'tuning/frequencies.csv',
  'tuning/user-bands.csv',
  'wind/worked.csv',
  'acceptance/sampling.csv',
];

/** Tables that no vectors are made of, and why. */
export const LEFT_OUT: Readonly<Record<string, string>> = {
  'acceptance/aql-code-letters.csv':
    'a table of letters; its sense is tested by acceptance/sampling',
  'acceptance/aql-single-normal.csv':
    'a table of plans; its sense is tested by acceptance/sampling',
  'acceptance/student-t.csv':
    'factors of coverage in columns; numeric/student-tail holds the same law',
  'antenna/depointing.csv': 'in radii, not in the decibels that the library takes',
  'antenna/patterns.csv': 'the antenna is told by either of two columns',
  'climate/full-resolution.csv': 'what the maps give, for weighing the shipped grid',
  'distribution/coax.csv': 'figures of cables, no formula',
  'distribution/tree.csv': 'one network, described in words',
  'gridref/plus-code-short.csv': 'says which code leads back, no value',
  'ingress/screening-classes.csv': 'figures of classes, no formula',
  'ingress/terrestrial-bands.csv': 'figures of bands, no formula',
  'link/budgets.csv': 'inputs of several functions in one row',
  'link/dvb-s.csv': 'thresholds per useful bit, which the library does not give by that name',
  'link/textbooks.csv': 'inputs in words',
  'numeric/bivariate-normal.csv': 'a step of another computation, not public',
  'numeric/exponential-integral.csv': 'a step of another computation, not public',
  'numeric/log-gamma.csv': 'a step of another computation, not public',
  'numeric/noncentral-t.csv': 'a step of another computation, not public',
  'numeric/student-factors.csv': 'numeric/student-tail holds the same law',
  'peaking/aperture-lobes.csv': 'a list of lobes in order',
  'peaking/cramer-rao.csv': 'lists in a cell',
  'peaking/parabola-fits.csv': 'a case is spread over many rows',
  'pointing/daily-figure.csv': 'points of a curve in order',
  'pointing/feed-beams.csv': 'belongs to the method of the library alone',
  'pointing/feed-places.csv': 'belongs to the method of the library alone',
  'pointing/look-angles-textbooks.csv': 'one quantity in a row, tolerances by example',
  'pointing/polar-mount-least-worst.csv': 'belongs to the method of the library alone',
  'pointing/several-slots-least-worst.csv': 'lists in a cell',
  'propagation/p1511-2-altitude.csv': 'another edition than the grid’s',
  'propagation/p618-14-diversity-recomputed.csv': 'rows point at rows of another table',
  'propagation/p618-14-scintillation.csv': 'lacks one input; the table beside rain has all',
  'propagation/p618-14-total.csv': 'its gas comes from other maps than those at hand',
  'propagation/p678-3-sampling-recomputed.csv':
    'one input, one ratio, as a step of another computation',
  'propagation/p837-7-monthly-inputs.csv': 'inputs of another table',
  'propagation/p837-7-rain-rate-r001.csv':
    'from a ready map that nobody needs beside the monthly ones',
  'readings/crossed-24x6.csv': 'data, no values to find',
  'sun/brightness.csv': 'read by eye off a figure',
  'sun/disc-share.csv': 'a step of another computation, not public',
  'sun/shadow-instants.csv': 'instants in a day, several answers in a row',
  'sun/spa-example.csv': 'one example in rows; the table of 300 places is sharper',
  'sun/sun-transits-2026.csv': 'events of a year, several answers in a row',
  'teaching/formulas.tsv': 'formulas, not values',
  'teaching/practice-slips.csv': 'wrong answers, not values',
  'teaching/solutions.csv': 'steps of the plans of the library',
  'transmit/off-axis-masks.csv': 'segments of masks; transmit/worked holds values of them',
  'tuning/lo-plans.csv': 'figures of plans, no formula',
};
