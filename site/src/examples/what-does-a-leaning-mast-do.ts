/** What does a leaning mast do? Error of the beam, roll of the antenna, and the lean that a budget allows. */

import { allowedMastLean, lookAngles, mastLeanCircle, mastLeanError } from 'slantpath/pointing';
import { defineExample, literal } from '../lib/example.js';
import { number, place } from '../lib/inputs/inputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { leaningMast } from '../lib/pictures/mast.js';
import { linePlot } from '../lib/pictures/plot.js';
import { towards } from '../lib/plans.js';

const sine = (deg: number) => Math.sin((deg * Math.PI) / 180);
const cosine = (deg: number) => Math.cos((deg * Math.PI) / 180);

export default defineExample({
  usual: ['station', 'orbitalLongitudeDeg', 'leanDeg', 'leanAzimuthDeg'],
  inputs: {
    station: place(),
    orbitalLongitudeDeg: number({
      label: 'Orbital longitude of the slot',
      unit: '° east',
      value: 16.4,
      step: 0.1,
      min: -180,
      max: 180,
    }),
    leanDeg: number({
      label: 'Lean of the mast',
      unit: '°',
      value: 1.5,
      step: 0.1,
      min: 0,
      max: 10,
      hint: '1° is 17 mm for each metre of a plumb line.',
    }),
    leanAzimuthDeg: number({
      label: 'Azimuth towards which its top leans',
      unit: '°',
      value: 225,
      step: 5,
      min: 0,
      max: 360,
    }),
    beamwidthDeg: number({
      label: 'Half-power beamwidth',
      unit: '°',
      value: 1.94,
      step: 0.1,
      min: 0.1,
      max: 20,
      hint: 'About 70 wavelengths over diameters: 1.94° for 0.9 m at 12 GHz.',
    }),
    lossDb: number({
      label: 'Loss that the lean may cost',
      unit: 'dB',
      value: 0.5,
      step: 0.1,
      min: 0.1,
      max: 10,
    }),
  },
  compute: ({ station, orbitalLongitudeDeg, leanDeg, leanAzimuthDeg, beamwidthDeg, lossDb }) => {
    const look = lookAngles(station, orbitalLongitudeDeg);
    const allowed = allowedMastLean({ lossDb, beamwidthDeg });
    if (look.kind !== 'visible') return { kind: look.kind, allowed };
    const { azimuthDeg, elevationDeg } = look;
    return {
      kind: look.kind,
      azimuthDeg,
      elevationDeg,
      error: mastLeanError({ leanDeg, leanAzimuthDeg, azimuthDeg, elevationDeg }),
      circle: mastLeanCircle({ leanDeg, leanAzimuthDeg, elevationDeg }),
      allowed,
    };
  },
  view: (result, { orbitalLongitudeDeg, leanDeg, leanAzimuthDeg }) => {
    const limit =
      result.allowed.kind === 'limited'
        ? {
            label: 'Lean allowed when set by the scales only',
            value: result.allowed.allowedLeanDeg,
            unit: '°',
            note: `${shown(result.allowed.allowedLeanMmPerM, 0)} mm for each metre of plumb line`,
          }
        : { label: 'Lean allowed when set by the scales only', value: 'any up to 20°' };
    if (result.kind !== 'visible')
      return {
        says:
          result.kind === 'overhead'
            ? 'The slot stands straight overhead, where a lean has no direction to count from.'
            : 'The slot is hidden by the Earth.',
        outputs: [limit],
      };
    const { error, circle, azimuthDeg, elevationDeg } = result;
    const turn = leanAzimuthDeg - azimuthDeg;
    return {
      caution:
        'Before a mast is set upright: tie yourself and the antenna, let nobody stand below, and keep a falling mast’s length away from power lines.',
      says: `Set by its scales, the beam points ${shown(error.offsetDeg)}° beside ${longitudeText(orbitalLongitudeDeg)}; once it is peaked, the antenna is still rolled by ${shown(error.skewErrorDeg)}°.`,
      outputs: [
        { label: 'Beam beside the slot', value: error.offsetDeg, unit: '°', main: true },
        {
          label: 'Roll after peaking',
          value: error.skewErrorDeg,
          unit: '°',
          note: 'clockwise positive, from behind; turn the feed back by it',
          main: true,
        },
        {
          label: 'Error in elevation',
          value: error.elevationErrorDeg,
          unit: '°',
          note: 'up positive',
        },
        {
          label: 'Error across',
          value: error.acrossErrorDeg,
          unit: '°',
          note: 'to the right positive',
        },
        { label: 'Azimuth scale on the slot', value: error.scaleAzimuthDeg, unit: '°' },
        { label: 'Elevation scale on the slot', value: error.scaleElevationDeg, unit: '°' },
        limit,
      ],
      figures: [
        leaningMast({
          title: `Mast that leans by ${shown(leanDeg, 1)}°, from the side and from behind`,
          towardsDeg: leanDeg * cosine(turn),
          rightDeg: leanDeg * sine(turn),
          elevationDeg,
          elevationErrorDeg: error.elevationErrorDeg,
          rollDeg: error.skewErrorDeg,
        }),
        linePlot({
          title: 'Errors over the azimuth circle at this elevation',
          x: { label: 'Azimuth', unit: '°', min: 0, max: 360, digits: 0 },
          y: { label: 'Error', unit: '°' },
          series: [
            {
              label: 'elevation of the beam',
              points: circle.points.map((p) => ({ x: p.azimuthDeg, y: p.elevationErrorDeg })),
            },
            {
              label: 'across',
              points: circle.points.map((p) => ({ x: p.azimuthDeg, y: p.acrossErrorDeg })),
            },
            {
              label: 'roll',
              points: circle.points.map((p) => ({ x: p.azimuthDeg, y: p.skewErrorDeg })),
            },
          ],
          rules: [{ axis: 'x', at: azimuthDeg, label: 'slot' }],
        }),
      ],
    };
  },
  working: ({ station, orbitalLongitudeDeg }) =>
    towards(['azimuth', 'elevation'], station, orbitalLongitudeDeg),
  code: ({ station, orbitalLongitudeDeg, leanDeg, leanAzimuthDeg, beamwidthDeg, lossDb }) =>
    `import { allowedMastLean, lookAngles, mastLeanError } from 'slantpath/pointing';

const look = lookAngles(${literal(station)}, ${literal(orbitalLongitudeDeg)});
if (look.kind === 'visible')
  console.log(
    mastLeanError({
      ${`leanDeg: ${literal(leanDeg)}, leanAzimuthDeg: ${literal(leanAzimuthDeg)}`},
      azimuthDeg: look.azimuthDeg,
      elevationDeg: look.elevationDeg,
    }),
  );
console.log(allowedMastLean({ lossDb: ${literal(lossDb)}, beamwidthDeg: ${literal(beamwidthDeg)} }));
`,
});
