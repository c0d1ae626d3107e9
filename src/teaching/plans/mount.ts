/** Plans of worked solutions for bearings, mounts and the view. */

import { WGS84_ECCENTRICITY_SQUARED_RATIO } from '../../constants.js';
import { stationToGeocentric } from '../../earth/index.js';
import { trueToMagneticBearing } from '../../magnetic/bearing.js';
import { offsetAngleFromRim, offsetReflectorPreset } from '../../pointing/index.js';
import { horizonProfile } from '../../survey/index.js';
import { constant, given, input, stepRows } from './parts.js';
import type { SolutionPlan } from './plan.js';

const MAGNETIC_BEARING: SolutionPlan = {
  name: 'magnetic-bearing',
  title: 'What must the compass show?',
  part: 'magnetic',
  functionName: 'trueToMagneticBearing',
  givens: [
    given('azimuthDeg', 'az', 'A', 'true azimuth', 'deg', [90, 270, 0.5]),
    given('declinationDeg', 'decl', '\\delta', 'declination, east positive', 'deg', [-20, 20, 0.5]),
  ],
  constants: [],
  steps: stepRows`
      m | M | magnetic bearing | mod(az - decl, 360) | deg | 1 | definition of declination
    `,
  compute: (inputs) => ({
    m: trueToMagneticBearing({
      azimuthDeg: input(inputs, 'azimuthDeg'),
      declinationDeg: input(inputs, 'declinationDeg'),
    }),
  }),
  periodDeg: 360,
};

const OFFSET_ANGLE: SolutionPlan = {
  name: 'offset-angle',
  title: 'What is the offset angle of this reflector?',
  part: 'pointing',
  functionName: 'offsetAngleFromRim',
  givens: [
    given('widthM', 'w', 'w', 'width of the rim', 'm', [0.6, 1.2, 0.01]),
    given('heightM', 'h', 'h', 'height of the rim', 'm', [0.65, 1.3, 0.01]),
  ],
  constants: [],
  steps: stepRows`
      off | \psi | offset angle | acos(w / h) | deg | 1 | an ellipse seen as a circle
    `,
  compute: (inputs) => {
    const widthM = input(inputs, 'widthM');
    const heightM = input(inputs, 'heightM');
    if (widthM >= heightM) return 'wider-than-high';
    return { off: offsetAngleFromRim({ widthM, heightM }).offsetAngleDeg };
  },
};

const FACE_LEAN: SolutionPlan = {
  name: 'face-lean',
  title: 'How does the face of an offset reflector stand?',
  part: 'pointing',
  functionName: 'offsetReflectorPreset',
  givens: [
    given('elevationDeg', 'el', '\\varepsilon', 'elevation of the satellite', 'deg', [12, 60, 0.5]),
    given('offsetAngleDeg', 'off', '\\psi', 'offset angle', 'deg', [18, 28, 0.5]),
  ],
  constants: [],
  steps: stepRows`
      lean | n | lean of the face from the vertical, backwards positive | el - off | deg | 1
        | geometry
    `,
  compute: (inputs) => ({
    lean: offsetReflectorPreset({
      elevationDeg: input(inputs, 'elevationDeg'),
      offsetAngleDeg: input(inputs, 'offsetAngleDeg'),
    }).faceLeanDeg,
  }),
};

const SKYLINE: SolutionPlan = {
  name: 'skyline',
  title: 'How high does the obstruction stand in the sky?',
  part: 'survey',
  functionName: 'horizonProfile',
  givens: [
    given('heightAboveEyeM', 'h', 'h', 'height of its top above the eye', 'm', [2, 30, 0.5]),
    given('distanceM', 's', 's', 'level distance', 'm', [5, 120, 1]),
  ],
  constants: [],
  steps: stepRows`
      sky | \eta | elevation of the skyline | atan2(h, s) | deg | 1 | geometry
    `,
  compute: (inputs) => {
    const profile = horizonProfile({
      sightings: [
        {
          azimuthDeg: 180,
          distanceM: input(inputs, 'distanceM'),
          heightAboveEyeM: input(inputs, 'heightAboveEyeM'),
        },
      ],
    });
    return { sky: profile.points[0]?.elevationDeg ?? 0 };
  },
};

const GEOCENTRIC_LATITUDE: SolutionPlan = {
  name: 'geocentric-latitude',
  title: 'Which geocentric latitude belongs to this geodetic one?',
  part: 'earth',
  functionName: 'stationToGeocentric',
  givens: [
    given(
      'latitudeDeg',
      'lat',
      '\\varphi',
      'geodetic latitude, north positive',
      'deg',
      [-80, 80, 1],
    ),
  ],
  constants: [
    constant(
      'e2',
      'e^2',
      'eccentricity squared of the ellipsoid',
      WGS84_ECCENTRICITY_SQUARED_RATIO,
      '',
      'WGS 84 (NGA.STND.0036)',
    ),
  ],
  steps: stepRows`
      gc | \varphi_c | geocentric latitude | atan((1 - e2) * tan(lat)) | deg | 3
        | geometry of the ellipse
    `,
  compute: (inputs) => {
    const latitudeDeg = input(inputs, 'latitudeDeg');
    const point = stationToGeocentric({ latitudeDeg, longitudeDeg: 0, heightM: 0 });
    return { gc: point.geocentricLatitudeDeg };
  },
};

/** Plans for bearings, mounts and the view. */
export const MOUNT_PLANS: readonly SolutionPlan[] = [
  MAGNETIC_BEARING,
  OFFSET_ANGLE,
  FACE_LEAN,
  SKYLINE,
  GEOCENTRIC_LATITUDE,
];
