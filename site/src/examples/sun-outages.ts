/** Sun outages of a year: days, start, peak, end and loss. */

import { type SunOutages, sunOutageCourse, sunOutages } from 'slantpath/sun';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, place } from '../lib/inputs/inputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { calendarStrip } from '../lib/pictures/calendarStrip.js';
import { linePlot } from '../lib/pictures/plot.js';
import { towards } from '../lib/plans.js';

function says(outages: SunOutages, name: string, year: number): string {
  if (outages.kind === 'below-horizon') return `The slot at ${name} is hidden by the Earth.`;
  if (outages.kind === 'none')
    return `In ${year} the Sun never costs that much: with the Sun exactly behind the satellite it is ${shown(outages.greatestLossDb, 1)} dB.`;
  const longest = Math.max(...outages.events.map((event) => event.durationMin));
  const first = outages.events[0]?.peakUtc.slice(0, 10) ?? '';
  return `${outages.events.length} days in ${year}, the first ${first}, for at most ${shown(longest, 1)} minutes each.`;
}

export default defineExample({
  usual: ['station', 'orbitalLongitudeDeg', 'year', 'diameterM', 'frequencyGHz'],
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
    year: number({ label: 'Year', value: 2026, step: 1, min: 1900, max: 2099 }),
    diameterM: number({
      label: 'Diameter of the reflector',
      unit: 'm',
      value: 0.9,
      step: 0.1,
      min: 0.1,
      max: 30,
    }),
    frequencyGHz: number({
      label: 'Frequency',
      unit: 'GHz',
      value: 11.7,
      step: 0.1,
      min: 1,
      max: 50,
    }),
    systemNoiseK: number({
      label: 'System noise temperature',
      unit: 'K',
      value: 120,
      step: 10,
      min: 20,
      max: 1000,
      hint: 'Under a clear sky, without the Sun.',
    }),
    thresholdLossDb: number({
      label: 'Loss that counts',
      unit: 'dB',
      value: 3,
      step: 0.5,
      min: 0.1,
      max: 40,
      hint: 'The margin of the link: beyond it the picture or the data stop.',
    }),
    activity: choice({
      label: 'Activity of the Sun',
      options: { quiet: 'quiet', moderate: 'moderate', active: 'active' },
      value: 'quiet',
    }),
  },
  compute: ({ year, thresholdLossDb, ...reception }) => {
    const outages = sunOutages({
      ...reception,
      thresholdLossDb,
      from: `${year}-01-01`,
      to: `${year}-12-31T23:59:59Z`,
    });
    const deepest =
      outages.kind === 'outages'
        ? outages.events.reduce((a, b) => (b.lossDb > a.lossDb ? b : a))
        : undefined;
    // A little more than the outage, in some fifty steps.
    const halfSpanMin = Math.min(60, Math.max(2, Math.ceil((deepest?.durationMin ?? 0) * 1.05)));
    return {
      outages,
      deepest: deepest ?? null,
      halfSpanMin,
      course: deepest
        ? sunOutageCourse({
            ...reception,
            near: deepest.peakUtc,
            halfSpanMin,
            stepS: 2.5 * halfSpanMin,
          })
        : [],
    };
  },
  view: (
    { outages, deepest, halfSpanMin, course },
    { orbitalLongitudeDeg, year, thresholdLossDb },
  ) => {
    const name = longitudeText(orbitalLongitudeDeg);
    if (outages.kind !== 'outages' || deepest === null)
      return {
        says: says(outages, name, year),
        outputs:
          outages.kind === 'none'
            ? [{ label: 'Greatest loss', value: outages.greatestLossDb, unit: 'dB', main: true }]
            : [],
      };
    return {
      says: says(outages, name, year),
      outputs: [
        { label: 'Days', value: outages.events.length, digits: 0, note: 'in the year', main: true },
        {
          label: 'Deepest loss',
          value: deepest.lossDb,
          unit: 'dB',
          digits: 1,
          note: `${deepest.peakUtc.slice(0, 10)}, ${deepest.peakUtc.slice(11, 19)} UTC`,
          main: true,
        },
        {
          label: 'Rise of the noise temperature',
          value: deepest.temperatureRiseK,
          unit: 'K',
          digits: 0,
        },
        {
          label: 'Brightness of the Sun',
          value: outages.brightnessTemperatureK,
          unit: 'K',
          digits: 0,
        },
        { label: 'Beamwidth', value: outages.beamwidthDeg, unit: '°' },
        {
          label: 'Declination of the satellite',
          value: outages.satelliteDeclinationDeg,
          unit: '°',
          note: 'the season is when the Sun has it',
        },
      ],
      figures: [
        calendarStrip({
          title: `Sun outages of ${year} for the slot at ${name}: loss by day, and from when to when in UTC`,
          year,
          events: outages.events.map((event) => ({ ...event, value: event.lossDb })),
          value: { label: 'Loss', unit: 'dB' },
        }),
        linePlot({
          title: `Loss of C/N on ${deepest.peakUtc.slice(0, 10)}, minutes from ${deepest.peakUtc.slice(11, 19)} UTC`,
          x: { label: 'Time from the peak', unit: 'min', digits: 1 },
          y: { label: 'Loss of C/N', unit: 'dB', min: 0 },
          series: [
            {
              label: 'Loss',
              points: course.map((moment, index) => ({
                x: halfSpanMin * ((2 * index) / (course.length - 1) - 1),
                y: moment.lossDb,
              })),
            },
          ],
          rules: [{ axis: 'y', at: thresholdLossDb, label: 'counts from here' }],
        }),
      ],
      notes: [
        'Do not look along the antenna at the Sun. A shiny reflector gathers heat at its feed: keep hands and eyes away.',
      ],
    };
  },
  fieldOf: (parameter) => (parameter === 'from' || parameter === 'to' ? 'year' : parameter),
  working: ({ station, orbitalLongitudeDeg, diameterM, frequencyGHz }) => [
    ...towards(['azimuth', 'elevation'], station, orbitalLongitudeDeg),
    { plan: 'beamwidth', givens: { diameterM, frequencyGHz } },
  ],
  code: ({ year, ...reception }) =>
    `import { sunOutages } from 'slantpath/sun';

const outages = sunOutages({
${Object.entries(reception)
  .map(([name, value]) => `  ${name}: ${literal(value)},`)
  .join('\n')}
  from: '${year}-01-01',
  to: '${year}-12-31T23:59:59Z',
});
if (outages.kind === 'outages')
  for (const { startUtc, peakUtc, endUtc, lossDb } of outages.events)
    console.log(startUtc, peakUtc, endUtc, lossDb.toFixed(1));
`,
});
