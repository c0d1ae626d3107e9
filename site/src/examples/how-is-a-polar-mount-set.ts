/** How is a polar mount set? Axis, declination, rotation to each slot and the error that is left. */

import { polarMount } from 'slantpath/pointing';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, place, rows } from '../lib/inputs/inputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';
import { polarAxis } from '../lib/pictures/polarAxis.js';

const longitudes = (slots: readonly { readonly orbitalLongitudeDeg: number }[]) =>
  slots.map((slot) => slot.orbitalLongitudeDeg);

export default defineExample({
  inputs: {
    station: place(),
    minimumElevationDeg: number({
      label: 'Lowest elevation to reach',
      unit: '°',
      value: 10,
      step: 1,
      min: 0,
      max: 60,
    }),
    fit: choice({
      label: 'Setting of the axis',
      options: {
        'least-worst': 'Smallest largest error',
        'apex-and-ends': 'Right at the top and at both ends',
        'polar-axis': 'Parallel to the Earth’s axis',
      },
      value: 'apex-and-ends',
    }),
    orbitalLongitudesDeg: rows({
      label: 'Slots',
      columns: { orbitalLongitudeDeg: { label: 'Orbital longitude', unit: '° east', step: 0.1 } },
      value: [
        { orbitalLongitudeDeg: -30 },
        { orbitalLongitudeDeg: 7.2 },
        { orbitalLongitudeDeg: 16.4 },
        { orbitalLongitudeDeg: 21.8 },
        { orbitalLongitudeDeg: 60 },
      ],
      add: { orbitalLongitudeDeg: 0 },
    }),
  },
  compute: ({ station, minimumElevationDeg, fit, orbitalLongitudesDeg }) =>
    polarMount({
      station,
      minimumElevationDeg,
      fit,
      orbitalLongitudesDeg: longitudes(orbitalLongitudesDeg),
    }),
  view: (mount, { station }) => {
    if (mount.kind === 'none')
      return {
        says: `There is nothing to follow: the highest point of the arc stands at an elevation of ${shown(mount.apexElevationDeg, 1)}°.`,
        outputs: [{ label: 'Highest point of the arc', value: mount.apexElevationDeg, unit: '°' }],
      };
    const north = station.latitudeDeg >= 0;
    return {
      caution:
        'Before you climb: secure yourself and the tools, and keep clear of power lines. A motor can start by itself: take its supply off while hands are in the mount.',
      says: `Axis ${shown(mount.axisElevationDeg)}° above the horizontal towards true ${north ? 'north' : 'south'}, beam ${shown(mount.mountDeclinationDeg)}° below the plane across it; it then misses no slot by more than ${shown(mount.largestErrorDeg, 3)}°.`,
      outputs: [
        {
          label: 'Elevation of the axis',
          value: mount.axisElevationDeg,
          unit: '°',
          note: `latitude and ${shown(mount.forwardTiltDeg)}° more`,
          main: true,
        },
        {
          label: 'Declination',
          value: mount.mountDeclinationDeg,
          unit: '°',
          note: 'below the plane across the axis',
          main: true,
        },
        { label: 'Beam at the top of the arc', value: mount.apexBeamElevationDeg, unit: '°' },
        { label: 'Largest error', value: mount.largestErrorDeg, unit: '°', digits: 4 },
        {
          label: 'Half of the arc',
          value: mount.halfWidthDeg,
          unit: '°',
          note: 'of orbital longitude to either side',
        },
      ],
      figures: [
        polarAxis({
          title: 'The mount from the side, in the plane of the meridian',
          axisElevationDeg: mount.axisElevationDeg,
          mountDeclinationDeg: mount.mountDeclinationDeg,
          beamElevationDeg: mount.apexBeamElevationDeg,
          pole: north ? 'north' : 'south',
          equator: north ? 'south' : 'north',
        }),
        linePlot({
          title: 'How far the beam passes above the slots, from the top of the arc to its end',
          x: { label: 'Slot from the meridian', unit: '°', min: 0 },
          y: { label: 'Beam above the slot', unit: '0.001°', digits: 2 },
          series: [
            {
              label: 'error',
              points: mount.curve.map((point) => ({
                x: point.longitudeDifferenceDeg,
                y: 1000 * point.errorDeg,
              })),
            },
          ],
          rules: [{ axis: 'y', at: 0, label: 'on the slot' }],
        }),
      ],
      tables: [
        {
          caption: 'Rotation from the top of the arc to each slot',
          columns: ['Slot', 'Rotation', 'Error / °', 'Elevation / °'],
          rows: mount.slots.map((slot) => [
            longitudeText(slot.orbitalLongitudeDeg),
            `${shown(Math.abs(slot.rotationEastDeg))}° ${slot.rotationEastDeg < 0 ? 'west' : 'east'}`,
            shown(slot.errorDeg, 4),
            shown(slot.elevationDeg, 1),
          ]),
        },
      ],
    };
  },
  working: ({ station: { latitudeDeg } }) => [
    { plan: 'polar-declination', givens: { latitudeDeg } },
  ],
  code: ({ station, minimumElevationDeg, fit, orbitalLongitudesDeg }) =>
    `import { polarMount } from 'slantpath/pointing';

console.log(
  polarMount({
    station: ${literal(station)},
    minimumElevationDeg: ${literal(minimumElevationDeg)},
    fit: ${literal(fit)},
    orbitalLongitudesDeg: ${literal(longitudes(orbitalLongitudesDeg))},
  }),
);
`,
});
