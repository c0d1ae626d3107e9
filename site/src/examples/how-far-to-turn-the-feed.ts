/** How far to turn the feed? Polarization skew of one slot, and over the whole arc. */

import { type PolarizationSkew, polarizationSkew, visibleArc } from 'slantpath/pointing';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, type Place, place } from '../lib/inputs/inputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { feedFace } from '../lib/pictures/feedFace.js';
import { linePlot, type Point } from '../lib/pictures/plot.js';
import { towards } from '../lib/plans.js';

const polarizationOf = (kind: 'linear' | 'circular', tiltDeg: number) =>
  kind === 'linear' ? ({ kind, tiltDeg } as const) : ({ kind } as const);

/** Skew over the visible arc, broken where a line turns over. */
function overTheArc(station: Place, tiltDeg: number): Point[] {
  const arc = visibleArc({ station });
  if (arc.kind === 'none') return [];
  let before = Number.NaN;
  return Array.from({ length: 81 }, (_, step) => (step / 40 - 1) * arc.halfWidthDeg).flatMap(
    (x) => {
      const skew = polarizationSkew({
        station,
        orbitalLongitudeDeg: station.longitudeDeg + x,
        polarization: { kind: 'linear', tiltDeg },
      });
      const y = 'skewDeg' in skew ? skew.skewDeg : Number.NaN;
      const jump = Math.abs(y - before) > 90;
      before = y;
      return jump
        ? [
            { x, y: Number.NaN },
            { x, y },
          ]
        : [{ x, y }];
    },
  );
}

function says(skew: PolarizationSkew, name: string): string {
  switch (skew.kind) {
    case 'circular':
      return 'Circular polarization: any turn of the feed serves.';
    case 'overhead':
      return `The slot at ${name} is straight overhead: lay the feed for vertical polarization along the bearing ${shown(skew.polarizationBearingDeg, 1)}°.`;
    case 'below-horizon':
      return `The slot at ${name} is hidden by the Earth.`;
    case 'visible':
      return Math.abs(skew.skewDeg) < 0.05
        ? `For ${name} leave the feed upright, as seen from behind the antenna.`
        : `For ${name} turn the feed ${shown(Math.abs(skew.skewDeg), 1)}° ${skew.skewDeg < 0 ? 'counter-clockwise' : 'clockwise'} from upright, as seen from behind the antenna.`;
  }
}

export default defineExample({
  inputs: {
    station: place(),
    orbitalLongitudeDeg: number({
      label: 'Orbital longitude of the slot',
      unit: '° east',
      value: 21.8,
      step: 0.1,
      min: -180,
      max: 180,
    }),
    polarization: choice({
      label: 'Polarization',
      options: { linear: 'Linear', circular: 'Circular' },
      value: 'linear',
    }),
    tiltDeg: number({
      label: 'The satellite’s own tilt',
      unit: '°',
      value: 0,
      step: 0.5,
      min: -90,
      max: 90,
      hint: 'Clockwise positive as seen from behind the antenna; 0 for most.',
    }),
  },
  compute: ({ station, orbitalLongitudeDeg, polarization, tiltDeg }) => ({
    skew: polarizationSkew({
      station,
      orbitalLongitudeDeg,
      polarization: polarizationOf(polarization, tiltDeg),
    }),
    curve: polarization === 'linear' ? overTheArc(station, tiltDeg) : [],
  }),
  fieldOf: (parameter) =>
    parameter.startsWith('polarization.') ? parameter.slice('polarization.'.length) : undefined,
  view: ({ skew, curve }, { station, orbitalLongitudeDeg }) => {
    const name = longitudeText(orbitalLongitudeDeg);
    if (skew.kind !== 'visible')
      return {
        says: says(skew, name),
        outputs:
          skew.kind === 'overhead'
            ? [
                {
                  label: 'Bearing of the polarization',
                  value: skew.polarizationBearingDeg,
                  unit: '°',
                  main: true,
                },
              ]
            : [],
      };
    const difference =
      ((((orbitalLongitudeDeg - station.longitudeDeg + 180) % 360) + 360) % 360) - 180;
    return {
      caution:
        'If this feed transmits, whoever may do it switches the transmitter off before a hand goes in front of the reflector.',
      says: says(skew, name),
      outputs: [
        {
          label: 'Skew',
          value: skew.skewDeg,
          unit: '°',
          note: 'clockwise positive, seen from behind',
          main: true,
        },
        { label: 'Share of the geometry', value: skew.geometryDeg, unit: '°' },
        { label: 'Share of the satellite’s tilt', value: skew.tiltDeg, unit: '°' },
      ],
      figures: [
        feedFace({
          title: `The feed for ${name} as seen from behind the antenna, facing the satellite`,
          skewDeg: skew.skewDeg,
        }),
        linePlot({
          title: 'Skew over the visible arc',
          x: { label: 'Slot east of the station', unit: '°', digits: 1 },
          y: { label: 'Skew', unit: '°' },
          series: [{ label: 'skew', points: curve }],
          marks: [{ x: difference, y: skew.skewDeg, label: name }],
        }),
      ],
    };
  },
  working: ({ station, orbitalLongitudeDeg, polarization, tiltDeg }) =>
    polarization === 'linear'
      ? towards(['skew'], station, orbitalLongitudeDeg).map(({ plan, givens }) => ({
          plan,
          givens: { ...givens, tiltDeg },
        }))
      : [],
  code: ({ station, orbitalLongitudeDeg, polarization, tiltDeg }) =>
    `import { polarizationSkew } from 'slantpath/pointing';

console.log(
  polarizationSkew({
    station: ${literal(station)},
    orbitalLongitudeDeg: ${literal(orbitalLongitudeDeg)},
    polarization: ${literal(polarizationOf(polarization, tiltDeg))},
  }),
);
`,
});
