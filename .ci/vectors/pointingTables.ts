/** Tables of directions: Earth, look angles, skew, mounts, magnetism, Sun, orbits. */

import { cell } from '../../tests/support/csv.js';
import { always, metres, place, type Spec, text } from './spec.js';

const degree = (column: string, tolerance: number) => [column, tolerance, 'direction'] as const;
const wmm = (height: string) => ({
  ...place('lat_deg', 'lon_deg', height),
  heightM: metres(height),
  decimalYear: 'decimal_year',
});

const TWO_LIBRARIES =
  'WGS 84 vectors and those on a sphere, recomputed with two general-purpose geodesy libraries.';

export const POINTING_TABLES: readonly Spec[] = [
  {
    file: 'earth/ecef.csv',
    calls: 'stationToEcef',
    status: 'recomputed',
    inputs: place('latitude_deg', 'longitude_deg', 'height_m'),
    expected: { xKm: ['x_km', 5e-12], yKm: ['y_km', 5e-12], zKm: ['z_km', 5e-12] },
  },
  {
    file: 'earth/ecef.csv',
    name: 'earth/ecef-to-station',
    calls: 'ecefToStation',
    status: 'recomputed',
    inputs: { xKm: 'x_km', yKm: 'y_km', zKm: 'z_km' },
    expected: {
      latitudeDeg: ['latitude_deg', 1e-13],
      longitudeDeg: degree('longitude_deg', 1e-13),
      heightM: ['height_m', 1e-8],
    },
  },
  {
    file: 'geodesic/lines.csv',
    calls: 'geodesicEnd',
    status: 'recomputed',
    inputs: {
      latitudeDeg: 'from_latitude_deg',
      longitudeDeg: 'from_longitude_deg',
      azimuthDeg: 'bearing_deg',
      distanceKm: 'distance_km',
    },
    expected: {
      latitudeDeg: ['to_latitude_deg', 3e-13],
      longitudeDeg: degree('to_longitude_deg', 3e-13),
      returnAzimuthDeg: degree('return_bearing_deg', 3e-13),
    },
  },
  {
    file: 'gridref/plus-code-encoding.csv',
    calls: 'coordinatesToPlusCode',
    status: 'published',
    inputs: { latitudeDeg: 'latitude_deg', longitudeDeg: 'longitude_deg', length: 'length' },
    expected: { code: [text('code'), 0, 'text'] },
  },
  {
    file: 'gridref/mgrs.csv',
    calls: 'coordinatesToMgrs',
    status: 'recomputed',
    note: 'Zone without a leading zero, square, then easting and northing cut (not rounded) to whole metres.',
    inputs: { latitudeDeg: 'latitude_deg', longitudeDeg: 'longitude_deg', digits: always(5) },
    expected: {
      mgrs: [
        (row) =>
          `${row['square']?.replace(/^0/, '')}${['easting_m', 'northing_m'].map((column) => String(Math.floor(cell(row, column))).padStart(5, '0')).join('')}`,
        0,
        'text',
      ],
    },
  },
  {
    file: 'magnetic/wmm2025-test-values.csv',
    calls: 'magneticField',
    status: 'published',
    note: 'The components carry a residue of the official file itself, up to 7.2e-4 nT.',
    inputs: wmm('height_km_above_ellipsoid'),
    expected: {
      declinationDeg: degree('declination_recomputed_deg', 5.1e-7),
      inclinationDeg: ['inclination_deg', 0.005],
      northNt: ['X_nT', 7.2e-4],
      eastNt: ['Y_nT', 3e-6],
      downNt: ['Z_nT', 3e-6],
      declinationRateDegPerYear: ['dD_deg_per_yr', 1e-6],
    },
  },
  {
    file: 'magnetic/wmm2025-grid.csv',
    calls: 'magneticField',
    status: 'recomputed',
    inputs: wmm('height_km'),
    expected: { northNt: ['X_nT', 6e-5], eastNt: ['Y_nT', 6e-5], downNt: ['Z_nT', 6e-5] },
  },
  {
    file: 'pointing/look-angles-wgs84.csv',
    source: TWO_LIBRARIES,
    calls: 'lookAngles',
    status: 'recomputed',
    keep: (row) => cell(row, 'elevation_geometric_deg') < 90,
    inputs: {
      ...place('lat_deg', 'lon_deg_east', 'height_m'),
      orbitalLongitudeDeg: 'sat_lon_deg_east',
    },
    expected: {
      azimuthDeg: degree('azimuth_deg', 1e-6),
      elevationDeg: ['elevation_geometric_deg', 1e-6],
      slantRangeKm: ['range_km', 1e-4],
    },
  },
  {
    file: 'pointing/look-angles-random.csv',
    calls: 'lookAngles',
    status: 'recomputed',
    note: 'Places from which the satellite stands within 5 degrees of the vertical are left out: azimuth is loose there.',
    keep: (row) => Math.abs(cell(row, 'elevation_deg')) < 85,
    inputs: { ...place('lat_deg', 'lon_deg', 'height_m'), orbitalLongitudeDeg: 'slot_deg' },
    expected: {
      azimuthDeg: degree('azimuth_deg', 6e-10),
      elevationDeg: ['elevation_deg', 5e-11],
      slantRangeKm: ['range_km', 5e-8],
    },
  },
  {
    file: 'pointing/look-angles-wgs84.csv',
    source: TWO_LIBRARIES,
    name: 'pointing/spherical-look-angles',
    calls: 'sphericalLookAngles',
    status: 'recomputed',
    keep: (row) => cell(row, 'elevation_geometric_deg') < 90,
    note: 'Earth radius 6378.137 km, orbit radius 42164.17 km, no height.',
    inputs: {
      latitudeDeg: 'lat_deg',
      longitudeDeg: 'lon_deg_east',
      orbitalLongitudeDeg: 'sat_lon_deg_east',
      earthRadiusKm: always(6378.137),
      orbitRadiusKm: always(42164.17),
    },
    expected: {
      azimuthDeg: degree('azimuth_spherical_deg', 6e-6),
      elevationDeg: ['elevation_spherical_deg', 6e-6],
      slantRangeKm: ['range_spherical_km', 6e-4],
    },
  },
  {
    file: 'pointing/skew-random.csv',
    calls: 'polarizationSkew',
    status: 'recomputed',
    inputs: {
      ...place('lat_deg', 'lon_deg', 'height_m'),
      orbitalLongitudeDeg: 'slot_deg',
      tiltDeg: 'tilt_deg',
    },
    expected: { skewDeg: ['skew_deg', 4e-10] },
  },
  {
    file: 'pointing/visible-arc.csv',
    calls: 'visibleArc',
    status: 'recomputed',
    inputs: {
      latitudeDeg: 'lat_deg',
      longitudeDeg: always(100),
      heightM: 'height_m',
      minimumElevationDeg: 'minimum_elevation_deg',
    },
    expected: { halfWidthDeg: ['half_width_deg', 4e-10] },
  },
  {
    file: 'pointing/mast-lean.csv',
    calls: 'mastLeanError',
    status: 'recomputed',
    inputs: {
      leanDeg: 'lean_deg',
      leanAzimuthDeg: 'lean_azimuth_deg',
      azimuthDeg: 'azimuth_deg',
      elevationDeg: 'elevation_deg',
    },
    expected: {
      beamAzimuthDeg: degree('beam_azimuth_deg', 4e-10),
      beamElevationDeg: ['beam_elevation_deg', 4e-10],
      scaleAzimuthDeg: degree('scale_azimuth_deg', 4e-10),
      scaleElevationDeg: ['scale_elevation_deg', 4e-10],
      skewErrorDeg: degree('skew_error_deg', 4e-10),
    },
  },
  {
    file: 'pointing/polar-mount.csv',
    calls: 'polarMount',
    status: 'recomputed',
    inputs: {
      latitudeDeg: 'latitude_deg',
      fit: always('apex-and-ends'),
      earthModel: always('sphere'),
    },
    expected: {
      forwardTiltDeg: ['modified_axis_forward_tilt_deg', 6e-6],
      axisElevationDeg: ['modified_axis_elevation_deg(lat+tilt)', 6e-6],
      mountDeclinationDeg: ['modified_declination_deg', 6e-6],
      largestErrorDeg: ['max_error_modified_deg', 6e-6],
    },
  },
  {
    file: 'pointing/refraction-p834.csv',
    calls: 'apparentElevation',
    status: 'recomputed',
    keep: (row) => cell(row, 'free_space_elevation_deg') <= 10,
    inputs: { elevationDeg: 'free_space_elevation_deg', heightM: metres('station_height_km') },
    expected: { refractionDeg: ['correction_formula_free_space_deg', 6e-7] },
  },
  {
    file: 'link/slot-separation.csv',
    calls: 'slotSeparation',
    status: 'recomputed',
    inputs: {
      ...place('lat_deg', 'lon_deg', 'height_m'),
      fromLongitudeDeg: 'from_deg',
      toLongitudeDeg: 'to_deg',
    },
    expected: { topocentricDeg: ['separation_deg', 2e-9] },
  },
  {
    file: 'orbit/sgp4-tracks.csv',
    calls: 'satelliteTrack',
    status: 'recomputed',
    keep: (row) => Math.abs(cell(row, 'elevation_deg')) < 85,
    inputs: {
      line1: text('line1'),
      line2: text('line2'),
      ...place('lat_deg', 'lon_deg', 'height_m'),
      instant: text('instant'),
    },
    expected: {
      azimuthDeg: degree('azimuth_deg', 6e-6),
      elevationDeg: ['elevation_deg', 5e-7],
      slantRangeKm: ['range_km', 5e-5],
      underLongitudeDeg: degree('under_longitude_deg', 5e-7),
      underLatitudeDeg: ['under_latitude_deg', 5e-7],
    },
  },
  {
    file: 'sun/sun-direction-iau2006.csv',
    calls: 'sunDirection',
    status: 'recomputed',
    note: 'To a thousandth of a degree, a tenth of what a shadow shows; places with the Sun above 80 degrees are left out.',
    keep: (row) => Math.abs(cell(row, 'elevation_deg')) < 80,
    inputs: {
      instant: text('instant_utc'),
      ...place('latitude_deg', 'longitude_deg', 'height_m'),
    },
    expected: {
      azimuthDeg: degree('azimuth_deg', 0.006),
      elevationDeg: ['elevation_deg', 0.001],
    },
  },
  {
    file: 'sun/equation-of-time.csv',
    calls: 'solarTime',
    status: 'recomputed',
    inputs: { instant: text('instant_utc') },
    expected: { equationOfTimeMin: ['equation_of_time_min', 0.004] },
  },
];
