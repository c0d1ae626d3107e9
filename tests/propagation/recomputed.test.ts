import {
  diversityGain,
  frequencyScaledRain,
  gasSlantAttenuation,
  meanRadiatingTemperature,
  type ReferenceAtmosphere,
  rainAttenuationLognormal,
  referenceAtmosphere,
  siteDiversity,
  skyNoise,
} from 'slantpath/propagation';
import { type CsvRow, cell, referenceTable } from '../support/csv.js';
import { publishedTable } from '../support/published.js';

function recomputed(
  file: string,
  quantity: string,
  unit: string,
  limit: number,
  reason: string,
  column: string,
  got: (row: CsvRow) => number,
): void {
  const rows = referenceTable(`propagation/${file}`);
  publishedTable({
    part: 'propagation',
    quantity,
    unit,
    source: `independent computation in Python, ${file}`,
    status: 'recomputed',
    limit,
    reason,
    relative: true,
    count: rows.length,
    cases: () =>
      rows.map((row) => ({
        name: Object.values(row).slice(0, 5).join(' '),
        expected: cell(row, column),
        got: got(row),
      })),
  });
}

const site = (row: CsvRow) => ({
  latitudeDeg: cell(row, 'lat'),
  heightM: cell(row, 'hs') * 1000,
  rainHeightKm: cell(row, 'hr'),
  rainRate001MmPerH: cell(row, 'r'),
  frequencyGHz: cell(row, 'f'),
  elevationDeg: cell(row, 'el'),
  tiltDeg: cell(row, 'tau'),
  rainProbabilityPercent: cell(row, 'p0'),
});

const lognormal = 'p618-14-lognormal-recomputed.csv';
recomputed(
  lognormal,
  'mean of ln A',
  '',
  1e-11,
  'double precision',
  'log_mean',
  (row) => rainAttenuationLognormal(site(row)).logMean,
);
recomputed(
  lognormal,
  'deviation of ln A',
  '',
  1e-11,
  'double precision',
  'log_deviation',
  (row) => rainAttenuationLognormal(site(row)).logDeviation,
);

const sites = referenceTable(`propagation/${lognormal}`).map(site);
const both = (row: CsvRow) => {
  const end = (which: string, attenuationDb: number) => {
    const found = sites[cell(row, which)];
    if (!found) throw new Error(`no site ${row[which]}`);
    return { ...found, attenuationDb };
  };
  return siteDiversity({
    first: end('first', cell(row, 'attenuation_1_db')),
    second: end('second', cell(row, 'attenuation_2_db')),
    distanceKm: cell(row, 'distance_km'),
  });
};
const diversity = 'p618-14-diversity-recomputed.csv';
recomputed(
  diversity,
  'rain at both sites',
  '%',
  1e-11,
  'double precision',
  'rain_at_both_percent',
  (row) => both(row).rainAtBothPercent,
);
recomputed(
  diversity,
  'joint outage',
  '%',
  5e-11,
  'SciPy holds about 1e-15 absolute in the tail',
  'joint_outage_percent',
  (row) => both(row).jointOutagePercent,
);

recomputed(
  'p618-14-diversity-gain-recomputed.csv',
  'diversity gain',
  'dB',
  1e-12,
  'double precision',
  'gain_db',
  (row) =>
    diversityGain({
      attenuationDb: cell(row, 'attenuation_db'),
      distanceKm: cell(row, 'distance_km'),
      frequencyGHz: cell(row, 'frequency_ghz'),
      elevationDeg: cell(row, 'elevation_deg'),
      baselineAngleDeg: cell(row, 'baseline_deg'),
    }).gainDb,
);

recomputed(
  'p618-14-frequency-scaling-recomputed.csv',
  'frequency scaling',
  'dB',
  1e-12,
  'double precision',
  'scaled_db',
  (row) =>
    frequencyScaledRain({
      attenuationDb: cell(row, 'attenuation_db'),
      fromGHz: cell(row, 'from_ghz'),
      toGHz: cell(row, 'to_ghz'),
    }).attenuationDb,
);

const atmosphere = 'p835-6-mean-recomputed.csv';
recomputed(
  atmosphere,
  'temperature of the mean atmosphere',
  'K',
  1e-12,
  'double precision',
  'temperature_k',
  (row) => referenceAtmosphere(cell(row, 'height_km')).temperatureK,
);
recomputed(
  atmosphere,
  'pressure of the mean atmosphere',
  'hPa',
  5e-5,
  'the printed pressures of the layers above 32 km depart by up to 4.3e-5 from hydrostatic balance',
  'pressure_hpa',
  (row) => referenceAtmosphere(cell(row, 'height_km')).pressureHpa,
);

const seasonal = 'p835-6-seasonal-recomputed.csv';
const season = (row: CsvRow) =>
  referenceAtmosphere(cell(row, 'height_km'), row['atmosphere'] as ReferenceAtmosphere);
for (const [quantity, unit, column, got] of [
  ['temperature by season', 'K', 'temperature_k', (row) => season(row).temperatureK],
  ['pressure by season', 'hPa', 'pressure_hpa', (row) => season(row).pressureHpa],
  ['vapour by season', 'g/m3', 'density_g_m3', (row) => season(row).waterVapourDensityGPerM3],
] as const satisfies [string, string, string, (row: CsvRow) => number][])
  recomputed(seasonal, quantity, unit, 1e-13, 'double precision', column, got);

const slant = 'p676-13-slant-recomputed.csv';
const ray = (row: CsvRow) =>
  gasSlantAttenuation({
    frequencyGHz: cell(row, 'frequency_ghz'),
    elevationDeg: cell(row, 'elevation_deg'),
    heightM: cell(row, 'station_height_km') * 1000,
  });
for (const [quantity, unit, column, got] of [
  ['oxygen along a slant path', 'dB', 'oxygen_db', (row) => ray(row).oxygenDb],
  ['water vapour along a slant path', 'dB', 'water_vapour_db', (row) => ray(row).waterVapourDb],
  ['excess path', 'm', 'excess_path_m', (row) => ray(row).excessPathM],
] as const satisfies [string, string, string, (row: CsvRow) => number][])
  recomputed(
    slant,
    quantity,
    unit,
    5e-11,
    'thin layers lose digits in the printed chord formula',
    column,
    got,
  );

publishedTable({
  part: 'propagation',
  quantity: 'bending',
  unit: 'deg',
  source: `independent computation in Python, ${slant}`,
  status: 'recomputed',
  limit: 2e-12,
  reason: 'sum of 922 small differences of angles',
  count: 10,
  cases: () =>
    referenceTable(`propagation/${slant}`).map((row) => ({
      name: `${row['frequency_ghz']} GHz at ${row['elevation_deg']} deg`,
      expected: cell(row, 'bending_deg'),
      got: ray(row).bendingDeg,
    })),
});

publishedTable({
  part: 'propagation',
  quantity: 'sky noise',
  unit: 'K',
  source: 'P.618-14, equations 68 to 70; the value at 3 dB read in an open implementation',
  status: 'recomputed',
  limit: 5e-7,
  reason: 'six printed decimals',
  count: 7,
  cases: () =>
    [
      [0, 2.7],
      [0.1, 8.898305],
      [0.5, 32.31237],
      [1, 58.704422],
      [3, 138.526716],
      [5, 188.891179],
      [10, 247.77],
    ].map(([attenuationDb = 0, expected = 0]) => ({
      name: `${attenuationDb} dB`,
      expected,
      got: skyNoise(attenuationDb).skyNoiseK,
    })),
});

publishedTable({
  part: 'propagation',
  quantity: 'mean radiating temperature',
  unit: 'K',
  source: 'P.618-14, equation 68, by hand',
  status: 'recomputed',
  limit: 1e-10,
  reason: 'two products',
  count: 1,
  cases: () => [{ name: '300 K', expected: 280.34, got: meanRadiatingTemperature(300) }],
});
