/** North by the Sun: when a plumb line's shadow lies along the bearing of a slot. */

import { lookAngles } from 'slantpath/pointing';
import { type ShadowInstant, shadowInstants } from 'slantpath/sun';
import { defineExample, literal } from '../lib/example.js';
import { number, place, text } from '../lib/inputs/inputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { compass, sky } from '../lib/pictures/sky.js';
import { towards } from '../lib/plans.js';

const clock = (utc: string) => `${utc.slice(11, 19)} UTC`;

function says(first: ShadowInstant | undefined, bearing: string): string {
  if (first === undefined)
    return `On that day the Sun never stands high enough over the bearing ${bearing} or opposite.`;
  return first.pointer === 'shadow'
    ? `At ${clock(first.instantUtc)} the shadow itself points along ${bearing}.`
    : `At ${clock(first.instantUtc)} the shadow lies along ${bearing}: from its far end towards the plumb line.`;
}

export default defineExample({
  inputs: {
    station: place(),
    orbitalLongitudeDeg: number({
      label: 'Orbital longitude of the slot',
      unit: '° east',
      value: 16.4,
      step: 0.1,
      min: -180,
      max: 180,
      hint: 'West is negative.',
    }),
    day: text({ label: 'Date at the station', value: '2026-06-10', hint: 'Year-month-day.' }),
    minimumElevationDeg: number({
      label: 'Lowest Sun',
      unit: '°',
      value: 5,
      step: 1,
      min: 0,
      max: 60,
      hint: 'Above houses and hills, so that there is a shadow.',
    }),
  },
  compute: ({ station, orbitalLongitudeDeg, day, minimumElevationDeg }) => {
    const look = lookAngles(station, orbitalLongitudeDeg);
    const azimuthDeg = look.kind === 'overhead' ? 0 : look.azimuthDeg;
    return {
      look,
      instants:
        look.kind === 'visible'
          ? shadowInstants({ station, azimuthDeg, day, minimumElevationDeg })
          : [],
    };
  },
  view: ({ look, instants }, { orbitalLongitudeDeg }) => {
    const name = longitudeText(orbitalLongitudeDeg);
    if (look.kind !== 'visible')
      return {
        says:
          look.kind === 'overhead'
            ? `The slot at ${name} is straight overhead: no bearing is needed.`
            : `The slot at ${name} is hidden by the Earth: no bearing helps.`,
        outputs: [{ label: 'Elevation', value: look.elevationDeg, unit: '°' }],
      };
    const first = instants[0];
    const bearing = `${shown(look.azimuthDeg, 1)}°`;
    return {
      caution:
        'Never look at the Sun, not even through sunglasses, smoked glass or a phone held close: it burns the eye before it hurts. Watch the shadow on the ground only. On a roof or a mast secure yourself first, and keep clear of power lines.',
      says: says(first, bearing),
      outputs: [
        {
          label: 'Bearing of the slot',
          value: look.azimuthDeg,
          unit: '°',
          note: 'from true north',
          main: true,
        },
        ...(first
          ? [
              {
                label: 'Instant',
                value: clock(first.instantUtc),
                note: first.instantUtc.slice(0, 10),
                main: true,
              },
              { label: 'Elevation of the Sun', value: first.sunElevationDeg, unit: '°', digits: 1 },
              {
                label: 'Error for a minute of clock',
                value: first.errorDegPerMin,
                unit: '°',
              },
              {
                label: 'Shadow of a 1 m plumb line',
                value: first.shadowLengthRatio,
                unit: 'm',
              },
            ]
          : []),
      ],
      figures: [
        compass({
          title: `The bearing ${bearing} and the shadow at that instant, from true north`,
          bearings: [
            { label: `slot ${bearing}`, azimuthDeg: look.azimuthDeg },
            ...(first
              ? [
                  {
                    label: 'shadow',
                    azimuthDeg: (first.sunAzimuthDeg + 180) % 360,
                    kind: 'reference' as const,
                  },
                ]
              : []),
          ],
        }),
        sky({
          title: `The slot at ${name} and the Sun at that instant`,
          objects: [
            { label: name, azimuthDeg: look.azimuthDeg, elevationDeg: look.elevationDeg },
            ...instants.map((at) => ({
              label: `Sun ${at.instantUtc.slice(11, 16)}`,
              azimuthDeg: at.sunAzimuthDeg,
              elevationDeg: at.sunElevationDeg,
            })),
          ],
          centreDeg: first?.sunAzimuthDeg ?? look.azimuthDeg,
        }),
      ],
      tables: [
        {
          caption: 'Instants of that day',
          columns: ['UTC', 'What points', 'Sun / °', 'Error per minute / °', 'Shadow of 1 m / m'],
          rows: instants.map((at) => [
            at.instantUtc.slice(11, 19),
            at.pointer === 'sun' ? 'towards the plumb line' : 'the shadow',
            shown(at.sunElevationDeg, 1),
            shown(at.errorDegPerMin, 2),
            shown(at.shadowLengthRatio, 2),
          ]),
        },
      ],
      notes: [
        'Never look at the Sun, not through sunglasses either: watch the shadow on the ground.',
        ...(first && first.sunElevationDeg > 70
          ? [
              'The Sun is high: the shadow is short and swings fast. Another day or slot gives a better bearing.',
            ]
          : []),
      ],
    };
  },
  working: ({ station, orbitalLongitudeDeg }) => towards(['azimuth'], station, orbitalLongitudeDeg),
  code: ({ station, orbitalLongitudeDeg, day }) =>
    `import { lookAngles } from 'slantpath/pointing';
import { shadowInstants } from 'slantpath/sun';

const station = ${literal(station)};
const look = lookAngles(station, ${literal(orbitalLongitudeDeg)});
if (look.kind === 'visible')
  console.log(shadowInstants({ station, azimuthDeg: look.azimuthDeg, day: ${literal(day)} }));
`,
});
