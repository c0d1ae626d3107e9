import {
  crossPolarDiscrimination,
  rainAttenuation,
  rainAttenuationProbability,
  scintillationFade,
  specificRainAttenuation,
} from 'slantpath/propagation';
import { type CsvRow, cell } from '../support/csv.js';
import { officialTable } from './official.js';

const rev8 = 'ITU-R validation examples CG-3M3J-13-ValEx, revision 8.3.0';

const specific = (row: CsvRow) =>
  specificRainAttenuation({
    frequencyGHz: cell(row, 'frequency_ghz'),
    elevationDeg: cell(row, 'elevation_deg'),
    tiltDeg: cell(row, 'tilt_deg'),
    rainRateMmPerH: cell(row, 'rain_rate_mm_h'),
  });

for (const [quantity, unit, column, got, limit] of [
  ['k of rain', '', 'k', (row) => specific(row).k, 2e-7],
  ['alpha of rain', '', 'alpha', (row) => specific(row).alpha, 2e-8],
  [
    'specific rain attenuation',
    'dB/km',
    'gamma_rain_db_km',
    (row) => specific(row).specificAttenuationDbPerKm,
    1e-8,
  ],
] as const satisfies [string, string, string, (row: CsvRow) => number, number][])
  officialTable({
    file: 'p838-3-specific-rain.csv',
    quantity,
    unit,
    source: `ITU-R validation examples CG-3M3J-13-ValEx, revision 5.1, P.838-3`,
    limit,
    reason: 'last printed digit',
    relative: true,
    count: 38,
    column,
    got,
  });

/** The rows give the slant length instead of the rain height: the height above the station is its rise. */
const heights = (row: CsvRow) => ({
  heightM: cell(row, 'station_height_km') * 1000,
  rainHeightKm:
    cell(row, 'station_height_km') +
    cell(row, 'slant_length_km') * Math.sin((cell(row, 'elevation_deg') * Math.PI) / 180),
  elevationDeg: cell(row, 'elevation_deg'),
});

officialTable({
  file: 'p618-14-rain.csv',
  quantity: 'rain attenuation',
  unit: 'dB',
  source: `${rev8}, P.618-14`,
  limit: 5e-9,
  reason: 'last printed digit of attenuation and rain rate',
  relative: true,
  count: 38,
  column: 'a_rain_db',
  got: (row) =>
    rainAttenuation({
      ...heights(row),
      latitudeDeg: cell(row, 'latitude_deg'),
      rainRate001MmPerH: cell(row, 'r001_mm_h'),
      frequencyGHz: cell(row, 'frequency_ghz'),
      tiltDeg: cell(row, 'tilt_deg'),
      exceededPercent: cell(row, 'time_percent'),
    }).attenuationDb,
});

officialTable({
  file: 'p618-14-rain.csv',
  quantity: 'probability of rain attenuation',
  unit: '%',
  source: `${rev8}, P.618-14`,
  limit: 1e-7,
  reason: 'the probability of rain is printed to 9 decimals of a fraction',
  relative: true,
  count: 38,
  column: 'p_rain_percent',
  got: (row) =>
    rainAttenuationProbability({
      ...heights(row),
      rainProbabilityPercent: 100 * cell(row, 'p0_rain_fraction'),
    }).attenuationProbabilityPercent,
});

const fade = (row: CsvRow, wetRefractivityNUnits: number, frequencyGHz: number) =>
  scintillationFade({
    frequencyGHz,
    elevationDeg: cell(row, 'elevation_deg'),
    diameterM: cell(row, 'antenna_diameter_m'),
    efficiencyRatio: cell(row, 'antenna_efficiency'),
    wetRefractivityNUnits,
    exceededPercent: cell(row, 'time_percent'),
  }).attenuationDb;

officialTable({
  file: 'p618-14-rain.csv',
  quantity: 'scintillation beside rain attenuation',
  unit: 'dB',
  source: `${rev8}, P.618-14`,
  limit: 5e-9,
  reason:
    'last printed digit; the rows at 29 GHz print the value of 20 GHz and are computed at 20 GHz here',
  relative: true,
  count: 38,
  column: 'a_scintillation_db',
  got: (row) =>
    fade(
      row,
      cell(row, 'n_wet'),
      cell(row, 'frequency_ghz') === 29 ? 20 : cell(row, 'frequency_ghz'),
    ),
});

/** Median wet refractivity of the places of the scintillation table, as the rain table prints them. */
const wet: Readonly<Record<string, number>> = {
  '51.5': 50.38926222,
  '41.9': 61.21890044,
  '33.94': 80.14015964,
  '22.9': 104.3584747,
  '25.78': 113.2738672,
  '28.717': 75.66013547,
  '3.133': 128.1408003,
  '9.05': 61.73157333,
};

officialTable({
  file: 'p618-14-scintillation.csv',
  quantity: 'scintillation',
  unit: 'dB',
  source: `${rev8}, P.618-14`,
  limit: 5e-9,
  reason: 'wet refractivity is printed to 10 digits',
  relative: true,
  count: 29,
  column: 'a_scintillation_db',
  got: (row) => fade(row, wet[row['latitude_deg'] ?? ''] ?? Number.NaN, cell(row, 'frequency_ghz')),
});

officialTable({
  file: 'p618-14-xpd.csv',
  quantity: 'cross-polar discrimination',
  unit: 'dB',
  source: `${rev8}, P.618-14`,
  limit: 5e-8,
  reason: 'the copolar attenuation is printed to 8 decimals',
  count: 38,
  column: 'xpd_db',
  got: (row) =>
    crossPolarDiscrimination({
      frequencyGHz: cell(row, 'frequency_ghz'),
      elevationDeg: cell(row, 'elevation_deg'),
      tiltDeg: cell(row, 'tilt_deg'),
      copolarAttenuationDb: cell(row, 'copolar_attenuation_db'),
      exceededPercent: cell(row, 'time_percent'),
    }).discriminationDb,
});
