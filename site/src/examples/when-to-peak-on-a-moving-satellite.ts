/** When to peak on a moving satellite? Its daily figure, and what a fixed antenna loses. */

import { dailyFigure, fixedAntennaLoss } from 'slantpath/pointing';
import { defineExample, literal } from '../lib/example.js';
import { number, place } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';
import { towards } from '../lib/plans.js';

/** The interval of an axis, wide enough that a satellite at rest is a point. */
function around(values: readonly number[]): { readonly min?: number; readonly max?: number } {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return high - low > 0.01 ? {} : { min: low - 0.05, max: high + 0.05 };
}

export default defineExample({
  usual: ['station', 'orbitalLongitudeDeg', 'inclinationDeg', 'beamwidthDeg'],
  inputs: {
    station: place(),
    orbitalLongitudeDeg: number({
      label: 'Mean orbital longitude',
      unit: '° east',
      value: 16.4,
      step: 0.1,
      min: -180,
      max: 180,
    }),
    inclinationDeg: number({
      label: 'Inclination',
      unit: '°',
      value: 0.7,
      step: 0.1,
      min: 0,
      max: 15,
    }),
    eccentricityRatio: number({
      label: 'Eccentricity',
      value: 0.0003,
      step: 0.0001,
      min: 0,
      max: 0.01,
    }),
    argumentOfPerigeeDeg: number({
      label: 'Argument of perigee',
      unit: '°',
      value: 90,
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
  },
  compute: ({ beamwidthDeg, ...orbit }) => {
    const day = dailyFigure(orbit);
    return { day, fixed: fixedAntennaLoss({ track: day, beamwidthDeg }) };
  },
  view: ({ day, fixed }) => {
    const hour = (index: number) => day[index]?.sinceNodeH ?? 0;
    const ifPeaked = (index: number) => fixed.worstLossIfPeakedThereDb[index] ?? 0;
    // Across north the azimuth goes on below 0 or above 360, so that the path is not torn.
    const azimuth = (deg: number) =>
      fixed.aim.azimuthDeg + ((((deg - fixed.aim.azimuthDeg + 180) % 360) + 360) % 360) - 180;
    const path = [...day, ...day.slice(0, 1)].map((p) => ({
      x: azimuth(p.azimuthDeg),
      y: p.elevationDeg,
    }));
    const { lowest, highest } = fixed.elevationDeg;
    return {
      says: `Peak ${shown(hour(fixed.bestIndex), 1)} h after the satellite crosses the equator northbound: the day then costs at most ${shown(ifPeaked(fixed.bestIndex))} dB; peaked at the worst moment it costs ${shown(ifPeaked(fixed.worstIndex))} dB.`,
      outputs: [
        {
          label: 'Largest loss, peaked at the best moment',
          value: ifPeaked(fixed.bestIndex),
          unit: 'dB',
          main: true,
        },
        {
          label: 'Largest loss, peaked at the worst moment',
          value: ifPeaked(fixed.worstIndex),
          unit: 'dB',
          main: true,
        },
        {
          label: 'Best moment',
          value: hour(fixed.bestIndex),
          unit: 'h',
          digits: 1,
          note: 'after the ascending node; it comes 4 minutes earlier each day',
        },
        { label: 'Largest loss of the best aim', value: fixed.worstLossDb, unit: 'dB' },
        { label: 'Best aim, azimuth', value: fixed.aim.azimuthDeg, unit: '°' },
        { label: 'Best aim, elevation', value: fixed.aim.elevationDeg, unit: '°' },
        { label: 'Elevation through the day', value: `${shown(lowest)}° to ${shown(highest)}°` },
      ],
      notes: [
        ...(lowest < 0 ? ['For a part of the day the satellite is below the horizon.'] : []),
        ...(fixed.worstLossDb > 20
          ? [
              'More than about 20 dB lies beyond the main lobe: for a part of the day nothing is received. The antenna must follow the satellite, or have a wider beam.',
            ]
          : []),
      ],
      figures: [
        linePlot({
          title: 'Path of the satellite in the sky through a day',
          x: { label: 'Azimuth', unit: '°', ...around(path.map((p) => p.x)) },
          y: { label: 'Elevation', unit: '°', ...around(path.map((p) => p.y)) },
          series: [{ label: 'path', points: path }],
          marks: [{ x: fixed.aim.azimuthDeg, y: fixed.aim.elevationDeg, label: 'best aim' }],
        }),
        linePlot({
          title: 'Loss through the day with the best aim, and largest loss by the hour of peaking',
          x: { label: 'Since the ascending node', unit: 'h', min: 0, max: 24, digits: 1 },
          y: {
            label: 'Loss',
            unit: 'dB',
            min: 0,
            ...(ifPeaked(fixed.worstIndex) < 0.01 ? { max: 0.1 } : {}),
          },
          series: [
            {
              label: 'loss with the best aim',
              points: day.map((p, i) => ({ x: p.sinceNodeH, y: fixed.lossDb[i] ?? 0 })),
            },
            {
              label: 'largest loss if peaked then',
              points: day.map((p, i) => ({ x: p.sinceNodeH, y: ifPeaked(i) })),
            },
          ],
        }),
      ],
    };
  },
  working: ({ station, orbitalLongitudeDeg }) =>
    towards(['azimuth', 'elevation'], station, orbitalLongitudeDeg),
  code: ({ beamwidthDeg, ...orbit }) =>
    `import { dailyFigure, fixedAntennaLoss } from 'slantpath/pointing';

const day = dailyFigure(${literal(orbit)});
const fixed = fixedAntennaLoss({ track: day, beamwidthDeg: ${literal(beamwidthDeg)} });
console.log(day[fixed.bestIndex]?.sinceNodeH, fixed.worstLossIfPeakedThereDb[fixed.bestIndex]);
`,
});
