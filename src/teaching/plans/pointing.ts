/** Plans of worked solutions for `pointing`. */

import {
  GEOSTATIONARY_RADIUS_KM,
  WGS84_ECCENTRICITY_SQUARED_RATIO,
  WGS84_SEMI_MAJOR_AXIS_KM,
} from '../../constants.js';
import { atan2Deg, cosDeg, sinDeg } from '../../numeric/angle.js';
import { valueNamed } from '../../numeric/columns.js';
import { lookAngles } from '../../pointing/index.js';
import { direction, lineOfSight } from '../../pointing/internal.js';
import type {
  PlanStep,
  SolutionConstant,
  SolutionGiven,
  SolutionPlan,
  SolutionValues,
} from './plan.js';

/** Station and slot over a round Earth. */
export const GROUND_GIVENS: readonly SolutionGiven[] = [
  {
    name: 'latitudeDeg',
    symbol: 'lat',
    tex: '\\varphi',
    meaning: 'geodetic latitude, north positive',
    unit: 'deg',
    draw: { from: -60, to: 60, step: 1 },
  },
  {
    name: 'longitudeDeg',
    symbol: 'lon',
    tex: '\\lambda',
    meaning: 'longitude of the station, east positive',
    unit: 'deg',
    draw: { from: -20, to: 40, step: 1 },
  },
  {
    name: 'orbitalLongitudeDeg',
    symbol: 'sat',
    tex: '\\lambda_s',
    meaning: 'longitude of the slot, east positive',
    unit: 'deg',
    draw: { from: -30, to: 50, step: 0.5 },
  },
];

/** Station with its height, and slot. */
export const SKY_GIVENS: readonly SolutionGiven[] = [
  ...GROUND_GIVENS,
  {
    name: 'heightM',
    symbol: 'h',
    tex: 'h',
    meaning: 'height of the station above the ellipsoid',
    unit: 'm',
    draw: { from: 0, to: 2500, step: 100 },
    otherwise: 0,
  },
];

/** The ellipsoid and the orbit. */
export const SKY_CONSTANTS: readonly SolutionConstant[] = [
  {
    symbol: 'a',
    tex: 'a',
    meaning: 'semi-major axis of the ellipsoid',
    value: WGS84_SEMI_MAJOR_AXIS_KM,
    unit: 'km',
    source: 'WGS 84 (NGA.STND.0036)',
  },
  {
    symbol: 'e2',
    tex: 'e^2',
    meaning: 'eccentricity squared of the ellipsoid',
    value: WGS84_ECCENTRICITY_SQUARED_RATIO,
    unit: '',
    source: 'WGS 84 (NGA.STND.0036)',
  },
  {
    symbol: 'r',
    tex: 'r',
    meaning: 'radius of the orbit',
    value: GEOSTATIONARY_RADIUS_KM,
    unit: 'km',
    source: 'nominal geostationary orbit',
  },
];

/** The line of sight, step by step; both look angles begin with it. */
export const LINE_STEPS: readonly PlanStep[] = (
  [
    ['N', 'N', 'radius of curvature across the meridian', 'a / sqrt(1 - e2 * sin(lat)^2)', 2],
    ['out', 'u', 'way out from the axis', 'r * cos(sat - lon) - (N + h / 1000) * cos(lat)', 1],
    ['axis', 'w', 'way along the axis', '-(N * (1 - e2) + h / 1000) * sin(lat)', 1],
    ['east', 'E', 'line of sight, east', 'r * sin(sat - lon)', 1],
    ['north', 'M', 'line of sight, north', 'cos(lat) * axis - sin(lat) * out', 1],
    ['up', 'U', 'line of sight, up', 'cos(lat) * out + sin(lat) * axis', 1],
    ['flat', 'S', 'line of sight, level', 'sqrt(east^2 + north^2)', 1],
  ] as const
).map(([symbol, tex, meaning, expression, decimals]) => ({
  symbol,
  tex,
  meaning,
  expression,
  unit: 'km',
  decimals,
  source: 'derivation from the WGS 84 conversion',
}));

/** The library's values of the line of sight and of both angles. */
export function skyValues(inputs: Readonly<Record<string, number>>): SolutionValues | string {
  const { latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg } = inputs as Readonly<
    Record<'latitudeDeg' | 'longitudeDeg' | 'heightM' | 'orbitalLongitudeDeg', number>
  >;
  const look = lookAngles({ latitudeDeg, longitudeDeg, heightM }, orbitalLongitudeDeg);
  if (look.kind !== 'visible') return look.kind;
  const line = lineOfSight(latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg);
  return {
    N: line.normalKm,
    out: line.outKm,
    axis: line.axisKm,
    east: line.eastKm,
    north: line.northKm,
    up: line.upKm,
    flat: direction(line.eastKm, line.northKm, line.upKm).horizontalKm,
    az: look.azimuthDeg,
    el: look.elevationDeg,
    d: look.slantRangeKm,
  };
}

/** The answers of the round Earth, with both radii that books have for it. */
export const roundEarth =
  (what: 'az' | 'el' | 'd' | 'turn') =>
  (inputs: Readonly<Record<string, number>>): readonly number[] =>
    [WGS84_SEMI_MAJOR_AXIS_KM, 6371].map((radiusKm) => {
      const latitude = valueNamed(inputs, 'latitudeDeg');
      const east = valueNamed(inputs, 'orbitalLongitudeDeg') - valueNamed(inputs, 'longitudeDeg');
      const [x, y, z] = [
        GEOSTATIONARY_RADIUS_KM * cosDeg(east) * cosDeg(latitude) - radiusKm,
        GEOSTATIONARY_RADIUS_KM * sinDeg(east),
        -GEOSTATIONARY_RADIUS_KM * cosDeg(east) * sinDeg(latitude),
      ];
      const level = Math.hypot(y, z);
      if (what === 'az') return atan2Deg(y, z);
      if (what === 'el') return atan2Deg(x, level);
      // The textbook's angle between the vertical and the axis of the Earth.
      return what === 'd'
        ? Math.hypot(level, x)
        : -atan2Deg(sinDeg(east) * cosDeg(latitude), sinDeg(latitude));
    });

const sky = (
  plan: Pick<SolutionPlan, 'name' | 'title'> & {
    readonly last: PlanStep;
    readonly otherWays: NonNullable<SolutionPlan['otherWays']>;
    readonly without?: readonly string[];
  },
): SolutionPlan => ({
  name: plan.name,
  title: plan.title,
  part: 'pointing',
  functionName: 'lookAngles',
  givens: SKY_GIVENS,
  constants: SKY_CONSTANTS,
  steps: [...LINE_STEPS.filter(({ symbol }) => !plan.without?.includes(symbol)), plan.last],
  otherWays: plan.otherWays,
  compute: skyValues,
});

/** Plans for `pointing`. */
export const POINTING_PLANS: readonly SolutionPlan[] = [
  {
    ...sky({
      name: 'azimuth',
      title: 'In which direction does the satellite stand?',
      otherWays: roundEarth('az'),
      // What is up does not change the direction.
      without: ['up', 'flat'],
      last: {
        symbol: 'az',
        tex: 'A',
        meaning: 'azimuth from true north',
        expression: 'mod(atan2(east, north), 360)',
        unit: 'deg',
        decimals: 2,
        source: 'four-quadrant arctangent of east and north',
      },
    }),
    periodDeg: 360,
  },
  sky({
    name: 'elevation',
    title: 'At what elevation does the satellite stand?',
    otherWays: roundEarth('el'),
    last: {
      symbol: 'el',
      tex: '\\varepsilon',
      meaning: 'geometric elevation',
      expression: 'atan2(up, flat)',
      unit: 'deg',
      decimals: 2,
      source: 'angle above the level',
    },
  }),
  sky({
    name: 'slant-range',
    title: 'How far away is the satellite?',
    otherWays: roundEarth('d'),
    last: {
      symbol: 'd',
      tex: 'd',
      meaning: 'slant range',
      expression: 'sqrt(flat^2 + up^2)',
      unit: 'km',
      decimals: 0,
      source: 'length of the line of sight',
    },
  }),
];
