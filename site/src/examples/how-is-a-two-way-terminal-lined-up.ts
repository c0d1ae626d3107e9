/** How is a two-way terminal lined up? EIRP step by step, compression, off-axis density, the other polarization, stops. */

import { type AntennaPattern, antennaGain, patternGain } from 'slantpath/antenna';
import {
  compressionPoint,
  crossPolarIsolationRead,
  flangeDensity,
  lineUp,
  type OffAxisMaskName,
  offAxisLimit,
  offAxisMargin,
  offAxisMasks,
  uplinkPowerControl,
} from 'slantpath/transmit';
import { orderOfWork } from '../lib/commissioningWords.js';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, rows } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';

const MASKS = {
  'S.524-9-14GHz': 'ITU-R S.524-9, 14 GHz (from memory)',
  'S.524-9-6GHz': 'ITU-R S.524-9, 6 GHz (from memory)',
  'S.524-9-30GHz': 'ITU-R S.524-9, 30 GHz (from memory)',
  'S.728-1-co': 'ITU-R S.728-1, 14 GHz (from memory)',
  '47-CFR-25.218(c)(1)': '47 CFR 25.218, 14 GHz along the arc',
  '47-CFR-25.138-2017-along': '47 CFR 25.138 of 2017, 30 GHz along the arc',
} as const satisfies Partial<Record<OffAxisMaskName, string>>;

const BELOW_DB = [20, 10, 3, 0];

export default defineExample({
  usual: ['powerW', 'symbolRateMBd', 'diameterM', 'mispointingDeg', 'allowedEirpDbw', 'mask'],
  inputs: {
    powerW: number({
      label: 'Power of the carrier at the amplifier',
      unit: 'W',
      value: 4,
      step: 0.5,
      min: 0.1,
    }),
    symbolRateMBd: number({ label: 'Symbol rate', unit: 'MBd', value: 2, step: 0.5, min: 0.05 }),
    diameterM: number({
      label: 'Diameter of the reflector',
      unit: 'm',
      value: 1.2,
      step: 0.1,
      min: 0.5,
      max: 10,
    }),
    mispointingDeg: number({
      label: 'Pointing error',
      unit: '°',
      value: 0.2,
      step: 0.05,
      min: 0,
      max: 1.4,
    }),
    allowedEirpDbw: number({
      label: 'EIRP that the operator allows',
      unit: 'dBW',
      value: 49,
      step: 0.5,
      min: 0,
      max: 100,
    }),
    mask: choice({ label: 'Limit past the satellite', options: MASKS, value: 'S.524-9-14GHz' }),
    frequencyGHz: number({
      label: 'Transmit frequency',
      unit: 'GHz',
      value: 14.25,
      step: 0.25,
      min: 5,
      max: 31,
    }),
    feedLossDb: number({
      label: 'Loss to the antenna',
      unit: 'dB',
      value: 0.5,
      step: 0.1,
      min: 0,
      max: 30,
    }),
    pairs: rows({
      label: 'Compression: power in and out',
      columns: {
        inputDbm: { label: 'In', unit: 'dBm', step: 1 },
        outputDbm: { label: 'Out', unit: 'dBm', step: 0.1 },
      },
      value: [
        { inputDbm: -30, outputDbm: 30 },
        { inputDbm: -26, outputDbm: 33.9 },
        { inputDbm: -24, outputDbm: 35.6 },
        { inputDbm: -22, outputDbm: 36.9 },
        { inputDbm: -20, outputDbm: 37.6 },
      ],
      add: { inputDbm: -18, outputDbm: 38 },
    }),
    coPolarDbm: number({
      label: 'Monitor: carrier in its polarization',
      unit: 'dBm',
      value: -48.5,
      step: 0.5,
    }),
    crossPolarDbm: number({
      label: 'Monitor: carrier in the other polarization',
      unit: 'dBm',
      value: -78.1,
      step: 0.5,
    }),
    noiseDbm: number({
      label: 'Monitor: noise with the carrier off',
      unit: 'dBm',
      value: -82,
      step: 0.5,
    }),
    fadeDb: number({ label: 'Fade of the uplink', unit: 'dB', value: 8, step: 1, min: 0, max: 40 }),
    amplifierReserveDb: number({
      label: 'Reserve of the amplifier',
      unit: 'dB',
      value: 6,
      step: 1,
      min: 0,
      max: 40,
    }),
    allowedRiseDb: number({
      label: 'Rise that the operator allows in a fade',
      unit: 'dB',
      value: 10,
      step: 1,
      min: 0,
      max: 40,
    }),
  },
  compute: ({
    powerW,
    symbolRateMBd,
    diameterM,
    mispointingDeg,
    allowedEirpDbw,
    mask,
    frequencyGHz,
    feedLossDb,
    pairs,
    coPolarDbm,
    crossPolarDbm,
    noiseDbm,
    fadeDb,
    amplifierReserveDb,
    allowedRiseDb,
  }) => {
    const antennaGainDbi = antennaGain({ diameterM, frequencyGHz }).gainDbi;
    const referenceBandwidthMHz =
      offAxisMasks.find(({ name }) => name === mask)?.referenceBandwidthMHz ?? 0.04;
    const line = lineUp({
      powerW,
      feedLossDb,
      antennaGainDbi,
      symbolRateMBd,
      allowedEirpDbw,
      referenceBandwidthMHz,
    });
    const flange = { powerW: 10 ** (line.flangeDbw / 10), symbolRateMBd };
    const pattern: AntennaPattern = { kind: 'S.580-6', diameterM, frequencyGHz };
    const perReference = flangeDensity({ ...flange, referenceBandwidthMHz });
    return {
      antennaGainDbi,
      referenceBandwidthMHz,
      line,
      least: offAxisMargin({ ...flange, pattern, mispointingDeg, mask }),
      curve: Array.from({ length: 80 }, (_, i) => 1.5 * (60 / 1.5) ** (i / 79)).map(
        (offAxisDeg) => {
          const gain = patternGain(pattern, Math.max(0, offAxisDeg - mispointingDeg));
          const limit = offAxisLimit({ mask, offAxisDeg });
          return {
            offAxisDeg,
            densityDbw: gain.kind === 'gain' ? perReference + gain.gainDbi : null,
            limitDbw: limit.kind === 'limit' ? limit.limitDbw : null,
          };
        },
      ),
      compression: compressionPoint(pairs),
      isolation: crossPolarIsolationRead({ coPolarDbm, crossPolarDbm, noiseDbm }),
      control: uplinkPowerControl({ fadeDb, amplifierReserveDb, allowedRiseDb }),
    };
  },
  view: (
    { antennaGainDbi, referenceBandwidthMHz, line, least, curve, compression, isolation, control },
    { feedLossDb },
  ) => {
    const toAllowed = line.toAllowedDb ?? 0;
    const margin = least.kind === 'margin' ? least.marginDb : null;
    const eirp = shown(line.eirpDbw, 1);
    return {
      caution:
        'Do not transmit, at any level, before the control centre of the operator has said yes. The beam can harm the eyes and the body, most of all between feed and reflector: lock the transmitter out before any hand goes there, close off the area in front, and leave the rest to a licensed practitioner and the local code.',
      says:
        toAllowed < 0
          ? `Stop: ${eirp} dBW is ${shown(-toAllowed, 1)} dB more than the operator allows.`
          : margin !== null && margin < 0 && least.kind === 'margin'
            ? `Stop: past the satellite, at ${shown(least.offAxisDeg, 1)}°, ${shown(-margin, 1)} dB too much goes out.`
            : margin === null
              ? `EIRP ${eirp} dBW; the pattern says nothing about the angles of this limit.`
              : `EIRP ${eirp} dBW, ${shown(toAllowed, 1)} dB below what is allowed; past the satellite ${shown(margin, 1)} dB are left.`,
      outputs: [
        { label: 'EIRP', value: line.eirpDbw, unit: 'dBW', digits: 1, main: true },
        {
          label: 'Left past the satellite',
          value: margin === null ? 'not known' : margin,
          unit: margin === null ? '' : 'dB',
          digits: 1,
          note: least.kind === 'margin' ? `least at ${shown(least.offAxisDeg, 1)}°` : '',
          main: true,
        },
        {
          label: 'Gain of the antenna',
          value: antennaGainDbi,
          unit: 'dBi',
          digits: 1,
          note: 'efficiency 0.65',
        },
        {
          label: 'EIRP density on the axis',
          value: line.densityDbw,
          unit: 'dBW',
          digits: 1,
          note: `in ${shown(1000 * referenceBandwidthMHz, 0)} kHz`,
        },
        compression.kind === 'compressed'
          ? {
              label: 'Compressed by 1 dB at',
              value: compression.outputDbm,
              unit: 'dBm',
              digits: 1,
              note: `power out; the carrier lies ${shown(compression.outputDbm - (line.flangeDbw + feedLossDb + 30), 1)} dB below`,
            }
          : {
              label: 'Compression at the last step',
              value: compression.compressionDb,
              unit: 'dB',
              digits: 1,
            },
        {
          label: 'Isolation of the other polarization',
          value: isolation.isolationDb,
          unit: 'dB',
          digits: 1,
          note:
            isolation.kind === 'isolation'
              ? `± ${shown(2 * isolation.standardUncertaintyDb, 1)} dB (k = 2), satellite included`
              : 'at least: the leak is lost in the noise',
        },
        {
          label: 'Fade that power control leaves',
          value: control.leftDb,
          unit: 'dB',
          digits: 1,
          note: `it makes up for ${shown(control.madeUpDb, 1)} dB`,
        },
      ],
      figures: [
        linePlot({
          title: 'What goes past the satellite, and the limit',
          x: { label: 'Off the axis', unit: '°', scale: 'log', digits: 1, min: 1.5, max: 60 },
          y: { label: 'EIRP density', unit: 'dBW', digits: 1 },
          series: [
            {
              label: 'sent',
              points: curve.flatMap(({ offAxisDeg, densityDbw }) =>
                densityDbw === null ? [] : [{ x: offAxisDeg, y: densityDbw }],
              ),
            },
            {
              label: 'limit',
              points: curve.flatMap(({ offAxisDeg, limitDbw }) =>
                limitDbw === null ? [] : [{ x: offAxisDeg, y: limitDbw }],
              ),
            },
          ],
          marks:
            least.kind === 'margin'
              ? [{ x: least.offAxisDeg, y: least.densityDbw, label: 'least margin' }]
              : [],
        }),
      ],
      tables: [
        {
          caption: 'Levels of the line-up: at each, stop and ask',
          columns: ['Level', 'EIRP / dBW', 'Below the full level / dB'],
          rows: line.stepsDbw.map((step, index) => [
            String(index + 1),
            shown(step, 1),
            shown(BELOW_DB[index] ?? 0, 0),
          ]),
        },
        orderOfWork(),
      ],
      notes:
        least.kind === 'margin' && least.status === 'from-memory'
          ? [
              'This limit was written down from memory: read the document, and what the operator asks for, before you rely on it.',
            ]
          : [],
    };
  },
  working: (
    { powerW, feedLossDb, symbolRateMBd },
    { antennaGainDbi, referenceBandwidthMHz, least, line },
  ) => [
    ...(referenceBandwidthMHz === 0.04
      ? [{ plan: 'eirp-density', givens: { powerW, feedLossDb, antennaGainDbi, symbolRateMBd } }]
      : []),
    ...(referenceBandwidthMHz === 0.04 && least.kind === 'margin' && least.offAxisDeg < 20
      ? [
          {
            plan: 'off-axis-density',
            givens: {
              powerW: 10 ** (line.flangeDbw / 10),
              symbolRateMBd,
              offAxisDeg: least.offAxisDeg,
            },
          },
        ]
      : []),
  ],
  hand: ({ coPolarDbm, crossPolarDbm, noiseDbm }, { isolation }) =>
    isolation.kind === 'isolation'
      ? [
          {
            says: 'the leak without the noise',
            formula: 'X = 10 \\cdot \\log_{10}(10^{L_x/10} - 10^{N/10})',
            put: `X = 10 \\cdot \\log_{10}(10^{${shown(crossPolarDbm, 1)}/10} - 10^{${shown(noiseDbm, 1)}/10})`,
            result: `${shown(coPolarDbm - isolation.isolationDb, 1)} dBm`,
          },
          {
            says: 'the isolation of the other polarization',
            formula: 'I = L - X',
            put: `I = ${shown(coPolarDbm, 1)} - (${shown(coPolarDbm - isolation.isolationDb, 1)})`,
            result: `${shown(isolation.isolationDb, 1)} dB`,
          },
        ]
      : [],
  code: ({
    powerW,
    feedLossDb,
    symbolRateMBd,
    diameterM,
    frequencyGHz,
    mispointingDeg,
    allowedEirpDbw,
    mask,
  }) =>
    `import { antennaGain } from 'slantpath/antenna';
import { lineUp, offAxisMargin } from 'slantpath/transmit';

const antenna = ${literal({ diameterM, frequencyGHz })};
const line = lineUp({
  powerW: ${powerW},
  feedLossDb: ${feedLossDb},
  antennaGainDbi: antennaGain(antenna).gainDbi,
  symbolRateMBd: ${symbolRateMBd},
  allowedEirpDbw: ${allowedEirpDbw},
});
const least = offAxisMargin({
  powerW: 10 ** (line.flangeDbw / 10),
  symbolRateMBd: ${symbolRateMBd},
  pattern: { kind: 'S.580-6', ...antenna },
  mispointingDeg: ${mispointingDeg},
  mask: ${literal(mask)},
});
console.log(line.eirpDbw, line.toAllowedDb, least);
`,
});
