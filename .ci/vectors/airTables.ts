/** Tables of the air: the ITU-R validation examples and what was recomputed beside them. */

import { cell } from '../../tests/support/csv.js';
import { always, metres, type Spec, text } from './spec.js';

const relative = (column: string, tolerance: number) => [column, tolerance, 'relative'] as const;
const MAP =
  'Needs the digital map of the recommendation; the grid that the library ships is coarser.';
const where = { latitudeDeg: 'latitude_deg', longitudeDeg: 'longitude_deg' };
const duration = {
  frequencyGHz: 'frequency_ghz',
  elevationDeg: 'elevation_deg',
  attenuationDb: 'attenuation_db',
  durationS: 'fade_duration_s',
  totalFadeTimeS: 'total_time_s',
};

export const AIR_TABLES: readonly Spec[] = [
  {
    file: 'propagation/p838-3-specific-rain.csv',
    calls: 'specificRainAttenuation',
    status: 'published',
    inputs: {
      frequencyGHz: 'frequency_ghz',
      elevationDeg: 'elevation_deg',
      tiltDeg: 'tilt_deg',
      rainRateMmPerH: 'rain_rate_mm_h',
    },
    expected: {
      k: relative('k', 2e-7),
      alpha: relative('alpha', 2e-8),
      specificAttenuationDbPerKm: relative('gamma_rain_db_km', 1e-8),
    },
  },
  {
    file: 'propagation/p618-14-rain.csv',
    calls: 'rainAttenuation',
    status: 'published',
    note: 'The source gives the slant length instead of the rain height, which is its rise above the station.',
    inputs: {
      latitudeDeg: 'latitude_deg',
      heightM: metres('station_height_km'),
      rainHeightKm: (row) =>
        cell(row, 'station_height_km') +
        cell(row, 'slant_length_km') * Math.sin((cell(row, 'elevation_deg') * Math.PI) / 180),
      rainRate001MmPerH: 'r001_mm_h',
      frequencyGHz: 'frequency_ghz',
      elevationDeg: 'elevation_deg',
      tiltDeg: 'tilt_deg',
      exceededPercent: 'time_percent',
    },
    expected: { attenuationDb: relative('a_rain_db', 5e-9) },
  },
  {
    file: 'propagation/p618-14-rain.csv',
    name: 'propagation/p618-14-scintillation-beside-rain',
    calls: 'scintillationFade',
    status: 'published',
    note: 'The rows at 29 GHz print the value of 20 GHz and are left out.',
    keep: (row) => row['frequency_ghz'] !== '29',
    inputs: {
      frequencyGHz: 'frequency_ghz',
      elevationDeg: 'elevation_deg',
      diameterM: 'antenna_diameter_m',
      efficiencyRatio: 'antenna_efficiency',
      wetRefractivityNUnits: 'n_wet',
      exceededPercent: 'time_percent',
    },
    expected: { attenuationDb: relative('a_scintillation_db', 5e-9) },
  },
  {
    file: 'propagation/p618-14-xpd.csv',
    calls: 'crossPolarDiscrimination',
    status: 'published',
    inputs: {
      frequencyGHz: 'frequency_ghz',
      elevationDeg: 'elevation_deg',
      tiltDeg: 'tilt_deg',
      copolarAttenuationDb: 'copolar_attenuation_db',
      exceededPercent: 'time_percent',
    },
    expected: { discriminationDb: ['xpd_db', 5e-8] },
  },
  {
    file: 'propagation/p676-13-specific.csv',
    calls: 'specificGasAttenuation',
    status: 'published',
    note: 'The pressure is that of the dry air.',
    inputs: {
      frequencyGHz: 'frequency_ghz',
      dryPressureHpa: 'pressure_hpa',
      temperatureK: 'temperature_k',
      waterVapourDensityGPerM3: 'water_vapour_density_g_m3',
    },
    expected: {
      oxygenDbPerKm: relative('gamma_oxygen_db_km', 5e-14),
      waterVapourDbPerKm: relative('gamma_water_vapour_db_km', 5e-14),
      specificAttenuationDbPerKm: relative('gamma_db_km', 5e-14),
    },
  },
  {
    file: 'propagation/p676-13-slant-gas.csv',
    calls: 'approximateGasAttenuation',
    status: 'published',
    note: 'The source prints the pressure of the dry air; here stands the total pressure.',
    inputs: {
      frequencyGHz: 'frequency_ghz',
      elevationDeg: 'elevation_deg',
      pressureHpa: (row) =>
        cell(row, 'pressure_hpa') +
        (cell(row, 'water_vapour_density_g_m3') * cell(row, 'temperature_k')) / 216.7,
      temperatureK: 'temperature_k',
      waterVapourDensityGPerM3: 'water_vapour_density_g_m3',
    },
    expected: { attenuationDb: relative('a_gas_db', 1e-9) },
  },
  {
    file: 'propagation/p676-13-slant-recomputed.csv',
    calls: 'gasSlantAttenuation',
    status: 'recomputed',
    inputs: {
      frequencyGHz: 'frequency_ghz',
      elevationDeg: 'elevation_deg',
      heightM: metres('station_height_km'),
    },
    expected: {
      oxygenDb: relative('oxygen_db', 5e-11),
      waterVapourDb: relative('water_vapour_db', 5e-11),
      bendingDeg: ['bending_deg', 2e-12],
      excessPathM: relative('excess_path_m', 5e-11),
    },
  },
  {
    file: 'propagation/p840-9-cloud.csv',
    calls: 'cloudAttenuation',
    status: 'published',
    inputs: {
      frequencyGHz: 'frequency_ghz',
      elevationDeg: 'elevation_deg',
      liquidWaterKgPerM2: 'l_kg_m2',
    },
    expected: { attenuationDb: relative('a_cloud_db', 5e-8) },
  },
  {
    file: 'propagation/p840-9-cloud-lognormal.csv',
    calls: 'cloudAttenuationLognormal',
    status: 'published',
    inputs: {
      frequencyGHz: 'frequency_ghz',
      elevationDeg: 'elevation_deg',
      exceededPercent: 'time_percent',
      logMean: 'log_mean',
      logDeviation: 'log_deviation',
      cloudProbabilityPercent: 'cloud_percent',
    },
    expected: { attenuationDb: relative('a_cloud_db', 5e-8) },
  },
  {
    file: 'propagation/p1623-1-fade-duration.csv',
    calls: 'fadeDuration',
    status: 'published',
    inputs: duration,
    expected: {
      longerProbabilityRatio: relative('probability', 2e-7),
      longerTimeRatio: relative('fraction_of_time', 3e-9),
      fades: relative('number_of_fades', 1e-9),
      timeInFadesS: relative('time_in_fade_s', 1e-12),
    },
  },
  {
    file: 'propagation/p1623-1-number-of-fades.csv',
    calls: 'fadeDuration',
    status: 'published',
    inputs: duration,
    expected: { fades: relative('number_of_fades', 2e-7) },
  },
  {
    file: 'propagation/p618-14-lognormal-recomputed.csv',
    calls: 'rainAttenuationLognormal',
    status: 'recomputed',
    inputs: {
      latitudeDeg: 'lat',
      heightM: metres('hs'),
      rainHeightKm: 'hr',
      rainRate001MmPerH: 'r',
      frequencyGHz: 'f',
      elevationDeg: 'el',
      tiltDeg: 'tau',
      rainProbabilityPercent: 'p0',
    },
    expected: {
      logMean: relative('log_mean', 1e-11),
      logDeviation: relative('log_deviation', 1e-11),
    },
  },
  {
    file: 'propagation/p618-14-diversity-gain-recomputed.csv',
    calls: 'diversityGain',
    status: 'recomputed',
    inputs: {
      attenuationDb: 'attenuation_db',
      distanceKm: 'distance_km',
      frequencyGHz: 'frequency_ghz',
      elevationDeg: 'elevation_deg',
      baselineAngleDeg: 'baseline_deg',
    },
    expected: { gainDb: relative('gain_db', 1e-12) },
  },
  {
    file: 'propagation/p618-14-frequency-scaling-recomputed.csv',
    calls: 'frequencyScaledRain',
    status: 'recomputed',
    inputs: { attenuationDb: 'attenuation_db', fromGHz: 'from_ghz', toGHz: 'to_ghz' },
    expected: { attenuationDb: relative('scaled_db', 1e-12) },
  },
  {
    file: 'propagation/p835-6-mean-recomputed.csv',
    calls: 'referenceAtmosphere',
    status: 'recomputed',
    inputs: { heightKm: 'height_km', atmosphere: always('mean') },
    expected: {
      temperatureK: relative('temperature_k', 1e-12),
      pressureHpa: relative('pressure_hpa', 5e-5),
    },
  },
  {
    file: 'propagation/p835-6-seasonal-recomputed.csv',
    calls: 'referenceAtmosphere',
    status: 'recomputed',
    inputs: { heightKm: 'height_km', atmosphere: text('atmosphere') },
    expected: {
      temperatureK: relative('temperature_k', 1e-13),
      pressureHpa: relative('pressure_hpa', 1e-13),
      waterVapourDensityGPerM3: relative('density_g_m3', 1e-13),
    },
  },
  {
    file: 'propagation/p839-4-rain-height.csv',
    calls: 'rain height of P.839-4 by its map',
    status: 'published',
    note: MAP,
    inputs: where,
    expected: { rainHeightKm: ['rain_height_km', 5e-9] },
  },
  {
    file: 'propagation/p837-7-rain-rate.csv',
    calls: 'rain rate of P.837-7 by its monthly maps',
    status: 'published',
    note: MAP,
    inputs: { ...where, exceededPercent: 'time_percent' },
    expected: { rainRateMmPerH: ['rain_rate_mm_h', 5e-8] },
  },
  {
    file: 'propagation/p837-7-rain-probability.csv',
    calls: 'probability of rain of P.837-7 by its monthly maps',
    status: 'published',
    note: MAP,
    inputs: where,
    expected: { rainProbabilityPercent: ['p_rain_percent', 5e-9] },
  },
  {
    file: 'propagation/p453-14-nwet.csv',
    calls: 'wet refractivity of P.453-14 by its map',
    status: 'published',
    note: MAP,
    inputs: { ...where, exceededPercent: 'time_percent' },
    expected: { wetRefractivityNUnits: ['n_wet', 5e-8] },
  },
  {
    file: 'propagation/p1510-1-temperature.csv',
    calls: 'mean surface temperature of P.1510-1 by its map',
    status: 'published',
    note: MAP,
    inputs: where,
    expected: { temperatureK: ['temperature_k', 5e-8] },
  },
  {
    file: 'propagation/p840-9-columnar-liquid.csv',
    calls: 'columnar cloud water of P.840-9 by its map',
    status: 'published',
    note: MAP,
    inputs: { ...where, exceededPercent: 'time_percent' },
    expected: { liquidWaterKgPerM2: ['l_kg_m2', 5e-9] },
  },
  {
    file: 'climate/rain-native.csv',
    calls: 'rain rate and probability of P.837-7 by its native maps',
    status: 'recomputed',
    note: MAP,
    inputs: where,
    expected: {
      rainRate001MmPerH: ['rain_rate_001_mm_h', 6e-4],
      rainProbabilityPercent: ['rain_probability_percent', 6e-7],
    },
  },
];
