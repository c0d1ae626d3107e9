/** Which mode when? Throughput against percent of the year where the mode follows the weather. */

import { adaptiveModes, dvbModes, outages, totalFade } from 'slantpath/link';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, place } from '../lib/inputs/inputs.js';
import {
  airCode,
  airInputs,
  airOf,
  airOutputs,
  diameter,
  fadeWorking,
  frequency,
  linkOf,
  loss,
  sight,
  slot,
  symbolRate,
} from '../lib/inputs/linkInputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { linePlot, type Point } from '../lib/pictures/plot.js';
import { reflector } from '../lib/plans.js';

const SETS = {
  s2: 'DVB-S2',
  both: 'DVB-S2 and DVB-S2X',
  s: 'DVB-S',
} as const;

const modesOf = (set: keyof typeof SETS) =>
  set === 's'
    ? dvbModes('DVB-S')
    : set === 's2'
      ? dvbModes('DVB-S2')
      : [...dvbModes('DVB-S2'), ...dvbModes('DVB-S2X')];

export default defineExample({
  usual: ['station', 'orbitalLongitudeDeg', 'frequencyGHz', 'eirpDbw', 'modes', 'diameterM'],
  inputs: {
    station: place(),
    orbitalLongitudeDeg: slot(),
    frequencyGHz: frequency(19.7),
    eirpDbw: number({
      label: 'EIRP of the satellite at the station',
      unit: 'dBW',
      value: 50,
      step: 0.5,
      min: 30,
      max: 65,
    }),
    symbolRateMBd: symbolRate(30),
    modes: choice({ label: 'Modes', options: SETS, value: 's2' }),
    switchingMarginDb: loss(
      'Switching margin',
      0.5,
      'Kept in hand so that the link does not drop while it changes mode.',
    ),
    implementationLossDb: loss('Implementation loss of the receiver', 1),
    diameterM: diameter(),
    noiseFigureDb: loss('Noise figure of the low-noise block', 1.3),
    pointingOffsetDeg: number({
      label: 'Pointing error',
      unit: '°',
      value: 0.05,
      step: 0.05,
      min: 0,
      max: 1,
    }),
    ...airInputs,
  },
  compute: ({ station, orbitalLongitudeDeg, modes, switchingMarginDb, ...fields }) => {
    const { elevationDeg, slantRangeKm, hidden } = sight(station, orbitalLongitudeDeg);
    const raised = Math.max(5, elevationDeg);
    const path = {
      frequencyGHz: fields.frequencyGHz,
      elevationDeg: raised,
      tiltDeg: 45,
      diameterM: fields.diameterM,
    };
    const air = airOf(station, path, fields);
    const link = linkOf({
      ...fields,
      modeName: 'QPSK 1/4',
      slantRangeKm,
      clearAttenuationDb: air.gasDb,
    });
    const { latitudeDeg, heightM } = station;
    const fade = totalFade({ ...path, ...air, latitudeDeg, heightM });
    const year = adaptiveModes({ link, fade, modes: modesOf(modes), switchingMarginDb });
    const out =
      year.outagePercent >= 0.001 && year.outagePercent <= 50
        ? outages({
            exceededPercent: year.outagePercent,
            frequencyGHz: fields.frequencyGHz,
            elevationDeg: raised,
            attenuationDb: Math.max(0.01, fade(year.outagePercent).attenuationDb),
          })
        : null;
    return { hidden, elevationDeg, path, air, year, out };
  },
  view: ({ hidden, elevationDeg, air, year, out }, { orbitalLongitudeDeg }) => {
    if (hidden)
      return {
        says: `The slot at ${longitudeText(orbitalLongitudeDeg)} is hidden by the Earth from this station.`,
        outputs: [{ label: 'Elevation', value: elevationDeg, unit: '°' }],
      };
    const used = year.modes.filter(({ sharePercent }) => sharePercent > 0);
    // Rate that is kept for all but a percentage of the year: a staircase.
    const stairs: Point[] = [{ x: 0.001, y: 0 }];
    for (const { availablePercent, bitRateMbps } of used) {
      const x = Math.max(0.001, 100 - availablePercent);
      stairs.push({ x, y: stairs[stairs.length - 1]?.y ?? 0 }, { x, y: bitRateMbps });
    }
    stairs.push({ x: 100, y: stairs[stairs.length - 1]?.y ?? 0 });
    // A share that would be printed as nothing says nothing.
    const seen = used.filter(({ sharePercent }) => sharePercent >= 0.00005);
    const usual = [...used].sort((a, b) => b.sharePercent - a.sharePercent)[0];
    return {
      says: usual
        ? `Most of the year ${usual.mode.name} carries ${shown(usual.bitRateMbps, 1)} Mbit/s; the mean over all weathers is ${shown(year.meanBitRateMbps, 1)} Mbit/s.`
        : 'Not even the slowest mode can be used.',
      outputs: [
        { label: 'Mean throughput', value: year.meanBitRateMbps, unit: 'Mbit/s', main: true },
        {
          label: 'Out altogether',
          value: year.outagePercent,
          unit: '%',
          digits: 4,
          note: 'of the year',
          main: true,
        },
        { label: 'Throughput in clear weather', value: year.clearBitRateMbps, unit: 'Mbit/s' },
        ...airOutputs(air),
        ...(out
          ? [
              { label: 'Hours out in a year', value: out.outageHPerYear, unit: 'h' },
              { label: 'Hours out in the worst month', value: out.worstMonthH, unit: 'h' },
              {
                label: 'Outages longer than 10 s in a year',
                value: out.outagesPerYear,
                digits: 0,
                note: `${shown(out.meanDurationMin, 1)} minutes on average`,
              },
            ]
          : []),
      ],
      figures: !usual
        ? []
        : [
            linePlot({
              title: 'Throughput kept for all but a percentage of the year',
              x: {
                label: 'Percent of the year with less',
                unit: '%',
                scale: 'log',
                min: 0.001,
                max: 100,
                digits: 4,
              },
              y: {
                label: 'Throughput',
                unit: 'Mbit/s',
                min: 0,
                max: Math.max(1, 1.15 * year.clearBitRateMbps),
              },
              series: [{ label: 'fastest mode that can be used', points: stairs }],
              rules: [{ axis: 'y', at: year.meanBitRateMbps, label: 'mean' }],
            }),
          ],
      tables: !usual
        ? []
        : [
            {
              caption: 'Modes in use, slowest first',
              columns: ['Mode', 'Rate / Mbit/s', 'In use / % of the year', 'This or faster / %'],
              rows: seen.map(({ mode, bitRateMbps, sharePercent, availablePercent }) => [
                mode.name,
                shown(bitRateMbps, 1),
                shown(sharePercent, 4),
                shown(availablePercent, 4),
              ]),
            },
          ],
    };
  },
  working: (
    { station, orbitalLongitudeDeg, frequencyGHz, diameterM, noiseFigureDb },
    { air, path, year },
  ) => {
    const { hidden, slantRangeKm } = sight(station, orbitalLongitudeDeg);
    if (hidden) return [];
    return [
      ...fadeWorking(station, air, path, Math.min(5, Math.max(0.001, year.outagePercent))),
      { plan: 'free-space-loss', givens: { frequencyGHz, slantRangeKm } },
      ...reflector(diameterM, frequencyGHz),
      { plan: 'noise-temperature', givens: { noiseFigureDb } },
    ];
  },
  code: (values) =>
    `import { attenuationAt, climateAt } from 'slantpath/climate';
import { adaptiveModes, dvbMode, dvbModes, totalFade } from 'slantpath/link';
import { lookAngles } from 'slantpath/pointing';

const station = ${literal(values.station)};
const { elevationDeg, slantRangeKm } = lookAngles(station, ${literal(values.orbitalLongitudeDeg)});
const climate = climateAt(station);
const path = {
  frequencyGHz: ${literal(values.frequencyGHz)},
  elevationDeg: Math.max(5, elevationDeg),
  tiltDeg: 45,
  diameterM: ${literal(values.diameterM)},
};
const air = attenuationAt(climate, { ...path, exceededPercent: 5 });
const fade = totalFade({
  ...path,
  latitudeDeg: station.latitudeDeg,
  heightM: station.heightM,
  ${airCode(values)}
});
const year = adaptiveModes({
  link: {
    carrier: {
      symbolRateMBd: ${literal(values.symbolRateMBd)},
      mode: dvbMode('DVB-S2', 'QPSK 1/4'),
      implementationLossDb: ${literal(values.implementationLossDb)},
    },
    downlink: {
      eirpDbw: ${literal(values.eirpDbw)},
      frequencyGHz: ${literal(values.frequencyGHz)},
      slantRangeKm,
      clearAttenuationDb: ${values.gasDb ?? 'air.gasDb'},
    },
    receiver: {
      diameterM: ${literal(values.diameterM)},
      noiseFigureDb: ${literal(values.noiseFigureDb)},
      pointingOffsetDeg: ${literal(values.pointingOffsetDeg)},
    },
  },
  fade,
  modes: ${
    values.modes === 'both'
      ? "[...dvbModes('DVB-S2'), ...dvbModes('DVB-S2X')]"
      : `dvbModes('${values.modes === 's' ? 'DVB-S' : 'DVB-S2'}')`
  },
  switchingMarginDb: ${literal(values.switchingMarginDb)},
});
console.log(year.meanBitRateMbps, year.outagePercent);
`,
});
