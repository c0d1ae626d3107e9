/** Which reflector? Margin against size in the fade of a percentage, and the sizes that meet the target. */

import {
  availabilityForMargin,
  STANDARD_DIAMETERS_M,
  smallestReflector,
  totalFade,
} from 'slantpath/link';
import { defineExample, literal } from '../lib/example.js';
import { number, place } from '../lib/inputs/inputs.js';
import {
  airCode,
  airInputs,
  airOf,
  airOutputs,
  fadeWorking,
  frequency,
  linkOf,
  loss,
  mode,
  sight,
  slot,
  symbolRate,
} from '../lib/inputs/linkInputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';
import { reflector } from '../lib/plans.js';

/** Sizes for the curve, evenly spaced in their logarithm from 0.3 to 8 m. */
const SIZES = Array.from({ length: 67 }, (_, i) =>
  Number((0.3 * (8 / 0.3) ** (i / 66)).toFixed(4)),
);

/** Stretches of sizes that meet the target, one after the other. */
function regions(tried: readonly { readonly diameterM: number; readonly meets: boolean }[]) {
  const found: { from: number; to: number }[] = [];
  let open: { from: number; to: number } | undefined;
  for (const { diameterM, meets } of tried) {
    if (!meets) open = undefined;
    else if (open) open.to = diameterM;
    else {
      open = { from: diameterM, to: diameterM };
      found.push(open);
    }
  }
  return found;
}

export default defineExample({
  usual: [
    'station',
    'orbitalLongitudeDeg',
    'frequencyGHz',
    'eirpDbw',
    'modeName',
    'exceededPercent',
  ],
  inputs: {
    station: place(),
    orbitalLongitudeDeg: slot(),
    frequencyGHz: frequency(19.7),
    tiltDeg: number({
      label: 'Polarization tilt',
      unit: '°',
      value: 45,
      step: 5,
      min: 0,
      max: 90,
      hint: '0 horizontal, 90 vertical, 45 for circular.',
    }),
    eirpDbw: number({
      label: 'EIRP of the satellite at the station',
      unit: 'dBW',
      value: 50,
      step: 0.5,
      min: 30,
      max: 65,
    }),
    symbolRateMBd: symbolRate(30),
    modeName: mode('8PSK 3/4'),
    implementationLossDb: loss('Implementation loss of the receiver', 0.8),
    noiseFigureDb: loss('Noise figure of the low-noise block', 1.3),
    pointingOffsetDeg: number({
      label: 'Pointing error',
      unit: '°',
      value: 0.1,
      step: 0.05,
      min: 0,
      max: 1,
      hint: 'The same angle costs a larger reflector more.',
    }),
    ...airInputs,
    exceededPercent: number({
      label: 'Time of the year that may be lost',
      unit: '%',
      value: 0.05,
      step: 0.01,
      min: 0.001,
      max: 5,
    }),
    targetMarginDb: number({
      label: 'Margin left in that fade',
      unit: 'dB',
      value: 0,
      step: 0.5,
      min: -10,
      max: 20,
    }),
  },
  compute: ({ station, orbitalLongitudeDeg, exceededPercent, targetMarginDb, ...fields }) => {
    const { elevationDeg, slantRangeKm, hidden } = sight(station, orbitalLongitudeDeg);
    const path = {
      frequencyGHz: fields.frequencyGHz,
      elevationDeg: Math.max(5, elevationDeg),
      tiltDeg: fields.tiltDeg,
      diameterM: 1,
    };
    const air = airOf(station, path, fields);
    const link = linkOf({
      ...fields,
      slantRangeKm,
      diameterM: 1,
      clearAttenuationDb: air.gasDb,
    });
    const { latitudeDeg, heightM } = station;
    const fade = totalFade({ ...path, ...air, latitudeDeg, heightM });
    const target = { targetMarginDb, fade, exceededPercent };
    const choice = smallestReflector(link, target);
    const { tried: curve } = smallestReflector(link, { ...target, diametersM: SIZES });
    return {
      hidden,
      elevationDeg,
      path,
      air,
      fadeDb: fade(exceededPercent).attenuationDb,
      choice,
      curve,
      availability: STANDARD_DIAMETERS_M.map((diameterM) =>
        availabilityForMargin({
          link: { ...link, receiver: { ...link.receiver, diameterM } },
          fade,
        }),
      ),
    };
  },
  view: (result, { exceededPercent, targetMarginDb, orbitalLongitudeDeg }) => {
    const { choice, curve, fadeDb, availability } = result;
    if (result.hidden)
      return {
        says: `The slot at ${longitudeText(orbitalLongitudeDeg)} is hidden by the Earth from this station.`,
        outputs: [{ label: 'Elevation', value: result.elevationDeg, unit: '°' }],
      };
    const meeting = regions(curve);
    return {
      says:
        choice.kind === 'found'
          ? `A reflector of ${choice.diameterM} m is the smallest usual one that keeps its promise for all but ${exceededPercent} % of the year.`
          : `No usual reflector keeps that promise; the best lacks ${shown(choice.shortfallDb, 1)} dB.`,
      outputs: [
        {
          label: 'Smallest reflector',
          value: choice.kind === 'found' ? String(choice.diameterM) : 'none',
          unit: choice.kind === 'found' ? 'm' : '',
          main: true,
        },
        {
          label: 'Its margin in that fade',
          value: choice.kind === 'found' ? choice.budget.marginDb : -choice.shortfallDb,
          unit: 'dB',
          main: true,
        },
        { label: 'Fade exceeded for that time', value: fadeDb, unit: 'dB' },
        ...airOutputs(result.air),
        { label: 'Elevation', value: result.elevationDeg, unit: '°' },
      ],
      figures: [
        linePlot({
          title: 'Margin in that fade against the size of the reflector',
          x: { label: 'Diameter', unit: 'm', scale: 'log', min: 0.3, max: 8 },
          y: { label: 'Margin', unit: 'dB' },
          series: [
            {
              label: 'margin',
              points: curve.map(({ diameterM, marginDb }) => ({ x: diameterM, y: marginDb })),
            },
          ],
          bands: meeting.map(({ from, to }) => ({
            axis: 'x',
            from,
            to,
            label: 'meets the target',
          })),
          rules: [{ axis: 'y', at: targetMarginDb, label: 'target' }],
          marks:
            choice.kind === 'found'
              ? [
                  {
                    x: choice.diameterM,
                    y: choice.budget.marginDb,
                    label: `${choice.diameterM} m`,
                  },
                ]
              : [],
        }),
      ],
      tables: [
        {
          caption: 'Usual reflectors',
          columns: ['Diameter / m', 'Margin in that fade / dB', 'Up for / % of the year', 'Target'],
          rows: choice.tried.map(({ diameterM, marginDb, meets }, index) => {
            const up = availability[index];
            const sign = up?.kind === 'better-than' ? '> ' : up?.kind === 'worse-than' ? '< ' : '';
            return [
              String(diameterM),
              shown(marginDb),
              `${sign}${shown(up?.availabilityPercent ?? 0, 3)}`,
              meets ? 'met' : 'missed',
            ];
          }),
        },
      ],
      notes:
        result.elevationDeg < 5
          ? [
              'Below 5° the recommendation has another method for scintillation; here 5° stands for it.',
            ]
          : [],
    };
  },
  working: (
    { station, orbitalLongitudeDeg, frequencyGHz, noiseFigureDb, exceededPercent },
    { choice, air, path },
  ) => {
    const { hidden, slantRangeKm } = sight(station, orbitalLongitudeDeg);
    if (hidden) return [];
    return [
      ...fadeWorking(station, air, path, exceededPercent),
      { plan: 'free-space-loss', givens: { frequencyGHz, slantRangeKm } },
      ...(choice.kind === 'found' ? reflector(choice.diameterM, frequencyGHz) : []),
      { plan: 'noise-temperature', givens: { noiseFigureDb } },
    ];
  },
  code: (values) =>
    `import { attenuationAt, climateAt } from 'slantpath/climate';
import { dvbMode, smallestReflector, totalFade } from 'slantpath/link';
import { lookAngles } from 'slantpath/pointing';

const station = ${literal(values.station)};
const { elevationDeg, slantRangeKm } = lookAngles(station, ${literal(values.orbitalLongitudeDeg)});
const climate = climateAt(station);
const path = {
  frequencyGHz: ${literal(values.frequencyGHz)},
  elevationDeg: Math.max(5, elevationDeg),
  tiltDeg: ${literal(values.tiltDeg)},
  diameterM: 1,
};
const air = attenuationAt(climate, { ...path, exceededPercent: 5 });
const fade = totalFade({
  ...path,
  latitudeDeg: station.latitudeDeg,
  heightM: station.heightM,
  ${airCode(values)}
});
const choice = smallestReflector(
  {
    carrier: {
      symbolRateMBd: ${literal(values.symbolRateMBd)},
      mode: dvbMode('DVB-S2', ${literal(values.modeName)}),
      implementationLossDb: ${literal(values.implementationLossDb)},
    },
    downlink: {
      eirpDbw: ${literal(values.eirpDbw)},
      frequencyGHz: ${literal(values.frequencyGHz)},
      slantRangeKm,
      clearAttenuationDb: ${values.gasDb ?? 'air.gasDb'},
    },
    receiver: {
      diameterM: 1,
      noiseFigureDb: ${literal(values.noiseFigureDb)},
      pointingOffsetDeg: ${literal(values.pointingOffsetDeg)},
    },
  },
  { fade, exceededPercent: ${literal(values.exceededPercent)}, targetMarginDb: ${literal(values.targetMarginDb)} },
);
console.log(choice.kind === 'found' ? choice.diameterM : choice.kind);
`,
});
