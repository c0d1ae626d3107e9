/** The home page's first answer: where a slot stands and how the feed is turned for it. */

import { lookAngles, polarizationSkew } from 'slantpath/pointing';
import { defineExample, literal } from '../lib/example.js';
import { number, place } from '../lib/inputs/inputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { arcOver } from '../lib/pictures/arc.js';
import { sky } from '../lib/pictures/sky.js';
import { towards } from '../lib/plans.js';

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
    }),
  },
  compute: ({ station, orbitalLongitudeDeg }) => ({
    look: lookAngles(station, orbitalLongitudeDeg),
    skew: polarizationSkew({ station, orbitalLongitudeDeg }),
  }),
  view: ({ look, skew }, { station, orbitalLongitudeDeg }) => {
    const name = longitudeText(orbitalLongitudeDeg);
    const azimuthDeg = look.kind === 'overhead' ? undefined : look.azimuthDeg;
    const turned = 'skewDeg' in skew ? skew.skewDeg : undefined;
    return {
      says:
        look.kind === 'below-horizon'
          ? `The slot at ${name} is hidden by the Earth.`
          : `The slot at ${name} stands ${shown(look.elevationDeg, 1)}° above the horizon.`,
      outputs: [
        {
          label: 'Azimuth',
          value: azimuthDeg ?? 'any',
          unit: azimuthDeg === undefined ? '' : '°',
          note: 'true north',
          main: true,
        },
        { label: 'Elevation', value: look.elevationDeg, unit: '°', main: true },
        {
          label: 'Skew',
          value: turned ?? 'by the ground bearing',
          unit: turned === undefined ? '' : '°',
          note: 'clockwise from behind',
        },
        { label: 'Distance', value: look.slantRangeKm, unit: 'km', digits: 0 },
      ],
      figures: [
        sky({
          title: `The slot at ${name} on the arc of all slots`,
          objects: [
            { label: name, azimuthDeg: azimuthDeg ?? 180, elevationDeg: look.elevationDeg },
          ],
          arc: arcOver(station),
          centreDeg: azimuthDeg ?? 180,
        }),
      ],
    };
  },
  working: ({ station, orbitalLongitudeDeg }) =>
    towards(['azimuth', 'elevation', 'skew'], station, orbitalLongitudeDeg),
  code: ({ station, orbitalLongitudeDeg }) =>
    `import { lookAngles, polarizationSkew } from 'slantpath/pointing';

const station = ${literal(station)};
console.log(JSON.stringify(lookAngles(station, ${literal(orbitalLongitudeDeg)})));
console.log(JSON.stringify(polarizationSkew({ station, orbitalLongitudeDeg: ${literal(orbitalLongitudeDeg)} })));
`,
});
