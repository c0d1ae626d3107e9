/** The subjects that formulas can be tried against, each an exact function of the library. */

import { antennaGain, halfPowerBeamwidth, pointingLoss, surfaceLoss } from '../../antenna/index.js';
import { DomainError } from '../../errors.js';
import { freeSpaceLoss, noiseFigureToTemperature } from '../../link/index.js';
import { valueNamed } from '../../numeric/columns.js';
import { lookAngles, polarizationSkew } from '../../pointing/index.js';
import { apparentElevation } from '../../pointing/look/refraction.js';
import { rainAttenuation } from '../../propagation/index.js';
import type { FormulaValues } from './functions.js';
import { LINK_SUBJECTS } from './moreSubjects.js';
import type { FormulaArea, FormulaSubject, FormulaVariable } from './subject.js';

const at = (values: FormulaValues, name: string): number => valueNamed(values, name);

const LATITUDE: FormulaVariable = {
  name: 'latitudeDeg',
  symbol: 'lat',
  meaning: 'geodetic latitude of the station in degrees, north positive',
  from: -70,
  to: 70,
  least: -90,
  most: 90,
};
const LONGITUDE_DIFFERENCE: FormulaVariable = {
  name: 'longitudeDifferenceDeg',
  symbol: 'dlon',
  meaning: 'longitude of the satellite less that of the station in degrees, positive to the east',
  from: -60,
  to: 60,
  least: -180,
  most: 180,
};
const FREQUENCY: FormulaVariable = {
  name: 'frequencyGHz',
  symbol: 'f',
  meaning: 'frequency in GHz',
  from: 3.4,
  to: 31,
  least: 1,
  most: 100,
};
const DIAMETER: FormulaVariable = {
  name: 'diameterM',
  symbol: 'd',
  meaning: 'diameter of the reflector in metres',
  from: 0.45,
  to: 3.7,
  least: 0.1,
  most: 30,
};

const SKY_AREAS: readonly FormulaArea[] = [
  { name: 'northern hemisphere', contains: (v) => at(v, 'latitudeDeg') > 0 },
  { name: 'southern hemisphere', contains: (v) => at(v, 'latitudeDeg') < 0 },
  {
    name: 'within 5 degrees of the equator',
    contains: (v) => Math.abs(at(v, 'latitudeDeg')) <= 5,
  },
  { name: 'satellite to the east', contains: (v) => at(v, 'longitudeDifferenceDeg') > 0 },
  { name: 'satellite to the west', contains: (v) => at(v, 'longitudeDifferenceDeg') < 0 },
  {
    name: 'within 10 degrees of the middle of the arc',
    contains: (v) => Math.abs(at(v, 'longitudeDifferenceDeg')) <= 10,
  },
  {
    name: 'elevation under 10 degrees',
    contains: (v) => {
      const look = lookAt(v);
      return look.kind === 'visible' && look.elevationDeg < 10;
    },
  },
];

function lookAt(values: FormulaValues) {
  const station = { latitudeDeg: at(values, 'latitudeDeg'), longitudeDeg: 0, heightM: 0 };
  return lookAngles(station, at(values, 'longitudeDifferenceDeg'));
}

const sky = (
  subject: Pick<
    FormulaSubject,
    'name' | 'meaning' | 'unit' | 'period' | 'exact' | 'usualTolerance'
  >,
): FormulaSubject => ({
  ...subject,
  variables: [LATITUDE, LONGITUDE_DIFFERENCE],
  areas: SKY_AREAS,
});

const DISH_AREAS: readonly FormulaArea[] = [
  { name: 'under 1 metre', contains: (v) => at(v, 'diameterM') < 1 },
  { name: 'over 20 GHz', contains: (v) => at(v, 'frequencyGHz') > 20 },
];

/** All subjects, in the order of the job. */
export const FORMULA_SUBJECTS: readonly FormulaSubject[] = [
  sky({
    name: 'azimuth',
    meaning:
      'azimuth of the satellite in degrees, clockwise from true north, on the WGS 84 ellipsoid',
    unit: 'deg',
    period: 360,
    usualTolerance: 0.1,
    exact: (values) => {
      const look = lookAt(values);
      return look.kind === 'visible' ? look.azimuthDeg : null;
    },
  }),
  sky({
    name: 'elevation',
    meaning: 'geometric elevation of the satellite in degrees on the WGS 84 ellipsoid',
    unit: 'deg',
    period: null,
    usualTolerance: 0.1,
    exact: (values) => {
      const look = lookAt(values);
      return look.kind === 'below-horizon' ? null : look.elevationDeg;
    },
  }),
  sky({
    name: 'slant-range',
    meaning: 'distance of the satellite in kilometres',
    unit: 'km',
    period: null,
    usualTolerance: 50,
    exact: (values) => {
      const look = lookAt(values);
      return look.kind === 'below-horizon' ? null : look.slantRangeKm;
    },
  }),
  sky({
    name: 'skew',
    meaning: 'polarization skew in degrees, clockwise positive as seen from behind the antenna',
    unit: 'deg',
    period: 180,
    usualTolerance: 1,
    exact: (values) => {
      const skew = polarizationSkew({
        station: { latitudeDeg: at(values, 'latitudeDeg'), longitudeDeg: 0, heightM: 0 },
        orbitalLongitudeDeg: at(values, 'longitudeDifferenceDeg'),
      });
      return skew.kind === 'visible' ? skew.skewDeg : null;
    },
  }),
  {
    name: 'polar-declination',
    meaning:
      'declination offset of a polar mount at its highest point in degrees (elevation there is 90 - latitude - offset)',
    unit: 'deg',
    period: null,
    usualTolerance: 0.1,
    variables: [{ ...LATITUDE, from: 0, to: 70, least: 0, most: 80 }],
    areas: [],
    exact: (values) => {
      const latitudeDeg = at(values, 'latitudeDeg');
      const look = lookAngles({ latitudeDeg, longitudeDeg: 0, heightM: 0 }, 0);
      return 90 - latitudeDeg - look.elevationDeg;
    },
  },
  {
    name: 'apparent-elevation-gain',
    meaning: 'by how much refraction lifts the satellite in degrees (ITU-R P.834)',
    unit: 'deg',
    period: null,
    usualTolerance: 0.05,
    variables: [
      {
        name: 'elevationDeg',
        symbol: 'el',
        meaning: 'geometric elevation in degrees',
        from: 0,
        to: 60,
        least: 0,
        most: 90,
      },
    ],
    areas: [{ name: 'elevation under 5 degrees', contains: (v) => at(v, 'elevationDeg') < 5 }],
    exact: (values) => apparentElevation(at(values, 'elevationDeg')).refractionDeg,
  },
  {
    name: 'beamwidth',
    meaning: 'half-power beamwidth in degrees, 70 wavelengths over the diameter',
    unit: 'deg',
    period: null,
    usualTolerance: 0.1,
    variables: [DIAMETER, FREQUENCY],
    areas: DISH_AREAS,
    exact: (values) =>
      halfPowerBeamwidth({
        diameterM: at(values, 'diameterM'),
        frequencyGHz: at(values, 'frequencyGHz'),
      }),
  },
  {
    name: 'antenna-gain',
    meaning: 'gain in dBi at an aperture efficiency of 0.65',
    unit: 'dBi',
    period: null,
    usualTolerance: 0.5,
    variables: [DIAMETER, FREQUENCY],
    areas: DISH_AREAS,
    exact: (values) =>
      antennaGain({
        diameterM: at(values, 'diameterM'),
        frequencyGHz: at(values, 'frequencyGHz'),
        efficiencyRatio: 0.65,
      }).gainDbi,
  },
  {
    name: 'pointing-loss',
    meaning:
      'loss in dB of a beam that points beside the satellite, 70 wavelengths over the diameter wide',
    unit: 'dB',
    period: null,
    usualTolerance: 0.2,
    variables: [
      {
        name: 'offsetDeg',
        symbol: 'off',
        meaning: 'pointing error in degrees',
        from: 0,
        to: 0.6,
        least: 0,
        most: 2,
      },
      { ...DIAMETER, to: 1.8 },
      FREQUENCY,
    ],
    areas: DISH_AREAS,
    exact: (values) =>
      pointingLoss({
        offsetDeg: at(values, 'offsetDeg'),
        beamwidthDeg: halfPowerBeamwidth({
          diameterM: at(values, 'diameterM'),
          frequencyGHz: at(values, 'frequencyGHz'),
        }),
      }),
  },
  {
    name: 'surface-loss',
    meaning: 'loss in dB of a rough surface',
    unit: 'dB',
    period: null,
    usualTolerance: 0.1,
    variables: [
      {
        name: 'surfaceErrorMm',
        symbol: 'eps',
        meaning: 'root-mean-square error of the surface in millimetres',
        from: 0,
        to: 1.5,
        least: 0,
        most: 5,
      },
      FREQUENCY,
    ],
    areas: [{ name: 'over 20 GHz', contains: (v) => at(v, 'frequencyGHz') > 20 }],
    exact: (values) =>
      surfaceLoss({
        surfaceErrorMm: at(values, 'surfaceErrorMm'),
        frequencyGHz: at(values, 'frequencyGHz'),
      }),
  },
  {
    name: 'free-space-loss',
    meaning: 'free-space loss in dB',
    unit: 'dB',
    period: null,
    usualTolerance: 0.1,
    variables: [
      FREQUENCY,
      {
        name: 'slantRangeKm',
        symbol: 'r',
        meaning: 'distance in kilometres',
        from: 35786,
        to: 41679,
        least: 1,
        most: 100000,
      },
    ],
    areas: [],
    exact: (values) =>
      freeSpaceLoss({
        frequencyGHz: at(values, 'frequencyGHz'),
        slantRangeKm: at(values, 'slantRangeKm'),
      }).lossDb,
  },
  {
    name: 'noise-temperature',
    meaning: 'noise temperature in kelvins of a noise figure',
    unit: 'K',
    period: null,
    usualTolerance: 2,
    variables: [
      {
        name: 'noiseFigureDb',
        symbol: 'nf',
        meaning: 'noise figure in dB',
        from: 0.1,
        to: 3,
        least: 0,
        most: 30,
      },
    ],
    areas: [],
    exact: (values) => noiseFigureToTemperature(at(values, 'noiseFigureDb')),
  },
  {
    name: 'rain-attenuation',
    meaning:
      'rain attenuation in dB exceeded for 0.1 % of the year (P.618-14) at 47 N, sea level, rain height 3 km, circular polarization',
    unit: 'dB',
    period: null,
    usualTolerance: 0.5,
    variables: [
      {
        name: 'rainRate001MmPerH',
        symbol: 'rain',
        meaning: 'rain rate exceeded for 0.01 % in mm/h',
        from: 5,
        to: 100,
        least: 0.1,
        most: 250,
      },
      { ...FREQUENCY, from: 10 },
      {
        name: 'elevationDeg',
        symbol: 'el',
        meaning: 'elevation in degrees',
        from: 10,
        to: 60,
        least: 1,
        most: 90,
      },
    ],
    areas: [
      { name: 'over 20 GHz', contains: (v) => at(v, 'frequencyGHz') > 20 },
      { name: 'elevation under 20 degrees', contains: (v) => at(v, 'elevationDeg') < 20 },
    ],
    exact: (values) =>
      rainAttenuation({
        latitudeDeg: 47,
        heightM: 0,
        rainHeightKm: 3,
        rainRate001MmPerH: at(values, 'rainRate001MmPerH'),
        frequencyGHz: at(values, 'frequencyGHz'),
        elevationDeg: at(values, 'elevationDeg'),
        tiltDeg: 45,
        exceededPercent: 0.1,
      }).attenuationDb,
  },
  ...LINK_SUBJECTS,
];

/**
 * Subject of a name.
 *
 * @throws {@link DomainError} `not-an-option` with the names there are.
 * @example
 * ```ts
 * import { formulaSubject } from 'slantpath/teaching';
 * formulaSubject('elevation').variables.map(({ symbol }) => symbol); // => ['lat', 'dlon']
 * ```
 */
export function formulaSubject(name: string): FormulaSubject {
  const found = FORMULA_SUBJECTS.find((subject) => subject.name === name);
  if (found) return found;
  throw new DomainError({
    code: name === undefined || name === null ? 'missing' : 'not-an-option',
    parameter: 'subject',
    received: name,
    allowed: `one of ${FORMULA_SUBJECTS.map((subject) => subject.name).join(', ')}`,
  });
}
