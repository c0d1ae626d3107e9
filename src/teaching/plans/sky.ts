/** Plans of worked solutions for skew, the round Earth of the textbooks, the polar mount and obstructions. */

import { GEOSTATIONARY_RADIUS_KM, WGS84_SEMI_MAJOR_AXIS_KM } from '../../constants.js';
import { polarizationSkew, polarMount, sphericalLookAngles } from '../../pointing/index.js';
import { obstructionClearance } from '../../survey/index.js';
import { constant, given, input, stepRows } from './parts.js';
import type { SolutionConstant, SolutionPlan } from './plan.js';
import {
  GROUND_GIVENS,
  LINE_STEPS,
  roundEarth,
  SKY_CONSTANTS,
  SKY_GIVENS,
  skyValues,
} from './pointing.js';

const SKEW: SolutionPlan = {
  name: 'skew',
  title: 'By how much is the feed turned (linear polarization)?',
  part: 'pointing',
  functionName: 'polarizationSkew',
  givens: [
    ...SKY_GIVENS,
    {
      ...given('tiltDeg', 'tilt', 't', 'tilt of the satellite', 'deg', [-30, 30, 1]),
      otherwise: 0,
    },
  ],
  constants: SKY_CONSTANTS,
  otherWays: (inputs) => roundEarth('turn')(inputs).map((turn) => turn + input(inputs, 'tiltDeg')),
  steps: [
    ...LINE_STEPS,
    ...stepRows`
      d | d | slant range | sqrt(flat^2 + up^2) | km | 1 | length of the line of sight
      turn | \gamma_g
        | turn of the Earth’s axis from the vertical, clockwise positive as seen from behind
        | mod(atan2(-east * cos(lat), d * sin(lat) - up * (north * cos(lat) + up * sin(lat)) / d) + 90, 180) - 90
        | deg | 2 | Earth’s axis and local vertical projected across the line of sight
      skew | \gamma | skew, from −90° to below 90° | mod(turn + tilt + 90, 180) - 90 | deg | 2
        | sum; a line has no head
    `,
  ],
  compute: (inputs) => {
    const sky = skyValues(inputs);
    if (typeof sky === 'string') return sky;
    const skew = polarizationSkew({
      station: {
        latitudeDeg: input(inputs, 'latitudeDeg'),
        longitudeDeg: input(inputs, 'longitudeDeg'),
        heightM: input(inputs, 'heightM'),
      },
      orbitalLongitudeDeg: input(inputs, 'orbitalLongitudeDeg'),
      polarization: { kind: 'linear', tiltDeg: input(inputs, 'tiltDeg') },
    });
    return skew.kind === 'visible'
      ? { ...sky, turn: skew.geometryDeg, skew: skew.skewDeg }
      : skew.kind;
  },
  periodDeg: 180,
};

const ROUND: readonly SolutionConstant[] = [
  constant('R', 'R', 'radius of the Earth', WGS84_SEMI_MAJOR_AXIS_KM, 'km', 'WGS 84, equator'),
  constant(
    'r',
    'r',
    'radius of the orbit',
    GEOSTATIONARY_RADIUS_KM,
    'km',
    'nominal geostationary orbit',
  ),
];

const SPHERICAL_ELEVATION: SolutionPlan = {
  name: 'spherical-elevation',
  title: 'At what elevation does the satellite stand over a round Earth?',
  part: 'pointing',
  functionName: 'sphericalLookAngles',
  givens: GROUND_GIVENS,
  constants: ROUND,
  steps: stepRows`
      dl | \Delta\lambda | longitude of the satellite east of the station
        | mod(sat - lon + 180, 360) - 180 | deg | 1 | definition
      b | \beta | angle at the centre of the Earth | acos(cos(lat) * cos(dl)) | deg | 3
        | spherical triangle with a right angle
      el | \varepsilon | elevation | atan2(cos(b) - R / r, sin(b)) | deg | 2
        | the form common to textbooks
    `,
  compute: (inputs) => {
    const look = sphericalLookAngles({
      latitudeDeg: input(inputs, 'latitudeDeg'),
      longitudeDeg: input(inputs, 'longitudeDeg'),
      orbitalLongitudeDeg: input(inputs, 'orbitalLongitudeDeg'),
    });
    if (look.kind !== 'visible') return look.kind;
    return { dl: look.longitudeDifferenceDeg, b: look.centralAngleDeg, el: look.elevationDeg };
  },
};

const POLAR_DECLINATION: SolutionPlan = {
  name: 'polar-declination',
  title:
    'What is the declination of a polar mount (axis parallel to the axis of the Earth, round Earth)?',
  part: 'pointing',
  functionName: 'polarMount',
  givens: [given('latitudeDeg', 'lat', '\\varphi', 'latitude, north positive', 'deg', [5, 65, 1])],
  constants: ROUND,
  steps: stepRows`
      decl | \delta | angle of the beam below the plane across the axis
        | atan(R * sin(abs(lat)) / (r - R * cos(lat))) | deg | 2
        | triangle of station, centre of the Earth and satellite
    `,
  compute: (inputs) => {
    const mount = polarMount({
      station: { latitudeDeg: input(inputs, 'latitudeDeg'), longitudeDeg: 0, heightM: 0 },
      fit: 'polar-axis',
      earthModel: 'sphere',
    });
    return mount.kind === 'mount' ? { decl: mount.mountDeclinationDeg } : 'no-arc';
  },
};

const OBSTRUCTION: SolutionPlan = {
  name: 'obstruction-clearance',
  title: 'How much room is left between the beam and the obstruction?',
  part: 'survey',
  functionName: 'obstructionClearance',
  givens: [
    given('distanceM', 's', 's', 'level distance to the obstruction', 'm', [8, 60, 1]),
    given('topHeightM', 'h', 'h', 'height of its top', 'm', [4, 20, 0.5]),
    given('centreHeightM', 'c', 'c', 'height of the middle of the reflector', 'm', [1, 4, 0.5]),
    given('elevationDeg', 'el', '\\varepsilon', 'elevation of the satellite', 'deg', [15, 50, 1]),
    given('diameterM', 'D', 'D', 'diameter of the reflector', 'm', [0.6, 1.8, 0.1]),
  ],
  constants: [],
  steps: stepRows`
      axis | q | room between top and beam axis, across the beam | s * sin(el) - (h - c) * cos(el)
        | m | 2 | geometry
      edge | q_e | room between top and edge of the beam, negative if it is cut | axis - D / 2 | m
        | 2 | the beam begins as wide as the reflector
    `,
  compute: (inputs) => {
    const clearance = obstructionClearance({
      distanceM: input(inputs, 'distanceM'),
      topHeightM: input(inputs, 'topHeightM'),
      centreHeightM: input(inputs, 'centreHeightM'),
      elevationDeg: input(inputs, 'elevationDeg'),
      diameterM: input(inputs, 'diameterM'),
    });
    return {
      axis: clearance.axisClearanceM,
      edge: clearance.edgeClearanceM,
    };
  },
};

/** Plans for skew, the round Earth, the polar mount and obstructions. */
export const SKY_PLANS: readonly SolutionPlan[] = [
  SKEW,
  SPHERICAL_ELEVATION,
  POLAR_DECLINATION,
  OBSTRUCTION,
];
