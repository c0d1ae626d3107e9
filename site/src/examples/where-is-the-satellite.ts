/** Where is the satellite? Look angles of one slot, in the sky and on the compass. */

import { type LookAngles, lookAngles } from 'slantpath/pointing';
import { defineExample, literal } from '../lib/example.js';
import { number, place } from '../lib/inputs/inputs.js';
import { compassWords, longitudeText, shown } from '../lib/language/text.js';
import { arcOver, nearestSlot, slotBeside } from '../lib/pictures/arc.js';
import { compass, sky } from '../lib/pictures/sky.js';
import { towards } from '../lib/plans.js';

function says(look: LookAngles, name: string): string {
  if (look.kind === 'overhead')
    return `The slot at ${name} is straight overhead: any azimuth serves.`;
  const bearing = `${shown(look.azimuthDeg, 1)}° (${compassWords(look.azimuthDeg)})`;
  return look.kind === 'visible'
    ? `The slot at ${name} stands ${shown(look.elevationDeg, 1)}° above the horizon at azimuth ${bearing}.`
    : `The slot at ${name} is hidden by the Earth, ${shown(-look.elevationDeg, 1)}° below the horizon at azimuth ${bearing}.`;
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
  },
  compute: ({ station, orbitalLongitudeDeg }) => lookAngles(station, orbitalLongitudeDeg),
  view: (look, { station, orbitalLongitudeDeg }) => {
    const name = longitudeText(orbitalLongitudeDeg);
    const aimed = look.kind === 'overhead' ? undefined : look.azimuthDeg;
    const away = station.latitudeDeg < 0 ? 0 : 180;
    // The view stands still while the mark is moved; near the equator the arc goes over the head, and the view turns with it.
    const still = look.kind === 'visible' && Math.abs(station.latitudeDeg) > 5;
    return {
      says: says(look, name),
      outputs: [
        {
          label: 'Azimuth',
          value: aimed ?? 'any',
          unit: aimed === undefined ? '' : '°',
          note: 'from true north, clockwise',
          main: true,
        },
        { label: 'Elevation', value: look.elevationDeg, unit: '°', note: 'geometric', main: true },
        { label: 'Slant range', value: look.slantRangeKm, unit: 'km', digits: 1 },
      ],
      figures: [
        sky({
          title: `The slot at ${name} and the arc of all slots over the horizon`,
          objects: [{ label: name, azimuthDeg: aimed ?? 180, elevationDeg: look.elevationDeg }],
          arc: arcOver(station),
          centreDeg: still ? away : (aimed ?? away),
          handles:
            look.kind === 'visible'
              ? [
                  {
                    label: 'Slot along the arc',
                    says: says(look, name),
                    azimuthDeg: look.azimuthDeg,
                    elevationDeg: look.elevationDeg,
                    now: orbitalLongitudeDeg,
                    min: -180,
                    max: 180,
                    put: (_, far) => ({
                      orbitalLongitudeDeg: nearestSlot(station, far) ?? orbitalLongitudeDeg,
                    }),
                    step: (right, up) => ({
                      orbitalLongitudeDeg: slotBeside(station, orbitalLongitudeDeg, right + up),
                    }),
                  },
                ]
              : [],
        }),
        ...(aimed === undefined
          ? []
          : [
              compass({
                title: `Compass bearing to the slot at ${name}, from true north`,
                bearings: [{ label: `${shown(aimed, 1)}°`, azimuthDeg: aimed }],
              }),
            ]),
      ],
    };
  },
  working: ({ station, orbitalLongitudeDeg }) =>
    towards(['azimuth', 'elevation', 'slant-range'], station, orbitalLongitudeDeg),
  code: ({ station, orbitalLongitudeDeg }) =>
    `import { lookAngles } from 'slantpath/pointing';

const station = ${literal(station)};
console.log(lookAngles(station, ${literal(orbitalLongitudeDeg)}));
`,
});
