/** How much rain margin: the climate of a place, attenuation by cause against time, worst month, outages of a year. */

import { type AttenuationAt, attenuationAt, type Climate, climateAt } from 'slantpath/climate';
import { lookAngles } from 'slantpath/pointing';
import { fadeDuration, totalExceedance, worstMonthPercent } from 'slantpath/propagation';
import { defineExample, literal, type Output, type Table } from '../lib/example.js';
import { number, optionalNumber, place } from '../lib/inputs/inputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';
import { towards } from '../lib/plans.js';

const SECONDS_OF_YEAR = 365.25 * 86400;
const PERCENTS = Array.from({ length: 38 }, (_, step) => 10 ** (-3 + step / 10)).filter(
  (percent) => percent <= 5,
);
const DURATIONS = [
  [10, '10 s'],
  [60, '1 min'],
  [600, '10 min'],
  [3600, '1 h'],
] as const;

/** Quantities of the method in words. */
const QUANTITIES: Readonly<Record<string, string>> = {
  elevationDeg: 'the elevation',
  frequencyGHz: 'the frequency',
  exceededPercent: 'the part of the year',
  diameterM: 'the diameter of the antenna',
};

/** Hours and minutes of a part of the year. */
function timeText(percent: number): string {
  const minutes = (percent / 100) * (SECONDS_OF_YEAR / 60);
  return minutes < 100
    ? `${shown(minutes, 0)} min`
    : `${shown(minutes / 60, minutes < 6000 ? 1 : 0)} h`;
}

const SOURCE = {
  measured: 'measured',
  'monthly-normals': 'monthly normals, P.837-7',
  'climate-grid': 'embedded grid, P.837-7',
  'rain-zone': 'rain zone, superseded',
} as const;

function climateTable(climate: Climate): Table {
  const water = climate.waterAloft[0];
  const uncertain = 100 * climate.rainUncertainty.standardUncertaintyRatio;
  return {
    caption: 'Climate of the place',
    columns: ['Quantity', 'Value', 'From'],
    rows: [
      [
        'Rain rate at 0.01 %',
        `${shown(climate.rainRate001MmPerH, 1)} mm/h ±\u00a0${shown(uncertain, 0)}\u00a0%`,
        SOURCE[climate.rainSource],
      ],
      ['It rains', `${shown(climate.rainProbabilityPercent, 1)} % of the year`, 'P.837-7'],
      ['Rain height', `${shown(climate.rainHeightKm, 2)} km`, 'P.839-4'],
      ['Mean temperature', `${shown(climate.meanTemperatureK, 1)} K`, 'P.1510-1'],
      [
        'Water vapour above, at 5 %',
        `${shown(water?.waterVapourContentKgPerM2 ?? 0, 1)} kg/m²`,
        'P.836-6',
      ],
      ['Cloud water, at 5 %', `${shown(water?.liquidWaterKgPerM2 ?? 0, 2)} kg/m²`, 'P.840-9'],
      ['Wet refractivity', `${shown(climate.wetRefractivityNUnits, 0)} N-units`, 'P.453-14'],
    ],
  };
}

type Fade = ReturnType<typeof fadeDuration>;

function outages(depthDb: number, fades: readonly (readonly [string, Fade])[]): Table {
  return {
    caption: `Outages of a year with a margin of ${shown(depthDb, 1)} dB`,
    columns: ['Longer than', 'Outages', 'Time in them'],
    rows: fades.map(([name, fade]) => [
      name,
      shown(fade.fades, fade.fades < 10 ? 1 : 0),
      `${shown(fade.timeInFadesS / 60, 0)} min`,
    ]),
  };
}

export default defineExample({
  usual: ['station', 'orbitalLongitudeDeg', 'frequencyGHz', 'diameterM', 'exceededPercent'],
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
    frequencyGHz: number({
      label: 'Frequency',
      unit: 'GHz',
      value: 20,
      step: 0.5,
      min: 4,
      max: 55,
    }),
    tiltDeg: number({
      label: 'Tilt of the polarization',
      unit: '°',
      value: 45,
      step: 5,
      min: 0,
      max: 90,
      hint: 'From horizontal; 45 for circular.',
    }),
    diameterM: number({
      label: 'Antenna diameter',
      unit: 'm',
      value: 0.9,
      step: 0.1,
      min: 0.3,
      max: 5,
    }),
    exceededPercent: number({
      label: 'Outage allowed',
      unit: '% of the year',
      value: 0.05,
      step: 0.01,
      min: 0.001,
      max: 5,
      hint: '0.05 % of outage is 99.95 % of availability.',
    }),
    rainRate001MmPerH: optionalNumber({
      label: 'Rain rate measured there',
      unit: 'mm/h',
      step: 1,
      min: 0,
      max: 200,
      empty: 'from grid',
      hint: 'Exceeded 0.01 % of the time; one-minute integration, some ten years.',
    }),
    marginDb: optionalNumber({
      label: 'Margin that the link has',
      unit: 'dB',
      step: 0.5,
      min: 0.5,
      max: 40,
      empty: 'as needed',
      hint: 'To see the outages that another margin leaves.',
    }),
  },
  compute: (values) => {
    const { station, exceededPercent, frequencyGHz, marginDb } = values;
    const look = lookAngles(station, values.orbitalLongitudeDeg);
    if (look.kind === 'below-horizon') return { kind: 'below-horizon' as const };
    const { elevationDeg } = look;
    const { rainRate001MmPerH } = values;
    const climate = climateAt(
      station,
      rainRate001MmPerH === undefined ? {} : { measured: { rainRate001MmPerH, years: 10 } },
    );
    const path = {
      frequencyGHz,
      elevationDeg,
      tiltDeg: values.tiltDeg,
      diameterM: values.diameterM,
    };
    const at = (percent: number) => attenuationAt(climate, { ...path, exceededPercent: percent });
    const needed = at(exceededPercent);
    const curve = PERCENTS.map(at);
    const exceeded =
      marginDb === undefined
        ? undefined
        : totalExceedance(
            {
              ...path,
              latitudeDeg: climate.latitudeDeg,
              heightM: climate.heightM,
              rainHeightKm: climate.rainHeightKm,
              rainRate001MmPerH: climate.rainRate001MmPerH,
              wetRefractivityNUnits: climate.wetRefractivityNUnits,
              gasDb: needed.gasDb,
              cloudDb: needed.cloudDb,
            },
            marginDb,
          );
    const depthDb = marginDb ?? needed.attenuationDb;
    const outagePercent =
      exceeded === undefined
        ? exceededPercent
        : exceeded.kind === 'exceeded'
          ? exceeded.exceededPercent
          : exceeded.limitPercent;
    const fades = DURATIONS.map(
      ([durationS, name]) =>
        [
          name,
          fadeDuration({
            frequencyGHz,
            elevationDeg,
            attenuationDb: Math.max(0.001, depthDb),
            durationS,
            totalFadeTimeS: (outagePercent / 100) * SECONDS_OF_YEAR,
          }),
        ] as const,
    );
    return {
      kind: 'visible' as const,
      elevationDeg,
      climate,
      needed,
      curve,
      exceeded,
      depthDb,
      outagePercent,
      worst: worstMonthPercent(outagePercent),
      fades,
    };
  },
  view: (result, { orbitalLongitudeDeg, exceededPercent, marginDb }) => {
    const name = longitudeText(orbitalLongitudeDeg);
    if (result.kind === 'below-horizon')
      return { says: `The slot at ${name} is below the horizon here.`, outputs: [] };
    const { needed, climate, curve, worst, exceeded, depthDb, outagePercent } = result;
    const { spread } = needed;
    const line = (label: string, of: (row: AttenuationAt) => number) => ({
      label,
      points: curve.map((row) => ({ x: row.exceededPercent, y: of(row) })),
    });
    const spare: Output[] =
      marginDb === undefined
        ? []
        : [
            {
              label: 'Outage with the margin given',
              value: outagePercent,
              unit: '%',
              digits: 4,
              note:
                exceeded?.kind === 'rarer'
                  ? 'or less: beyond the method'
                  : exceeded?.kind === 'more-often'
                    ? 'or more: beyond the method'
                    : timeText(outagePercent),
            },
          ];
    return {
      says: `For an outage of at most ${exceededPercent} % of the year (${timeText(exceededPercent)}) the link needs ${shown(needed.attenuationDb, 1)} dB of margin.`,
      outputs: [
        {
          label: 'Margin needed',
          value: needed.attenuationDb,
          unit: 'dB',
          note: `give or take ${shown(spread.standardUncertaintyDb, spread.standardUncertaintyDb < 0.1 ? 2 : 1)} dB`,
          main: true,
        },
        { label: 'Rain', value: needed.rainDb, unit: 'dB' },
        { label: 'Gases', value: needed.gasDb, unit: 'dB' },
        { label: 'Cloud', value: needed.cloudDb, unit: 'dB' },
        { label: 'Scintillation', value: needed.scintillationDb, unit: 'dB' },
        ...spare,
        {
          label: 'In the worst month',
          value: worst.worstMonthPercent,
          unit: '%',
          digits: 3,
          note: 'outage of the average worst month',
        },
        {
          label: 'From year to year',
          value: spread.singleYearDb,
          unit: 'dB',
          note: 'standard deviation of single years',
        },
        { label: 'Elevation', value: result.elevationDeg, unit: '°', digits: 1 },
      ],
      figures: [
        linePlot({
          title: 'Attenuation against the part of the year in which it is exceeded',
          x: {
            label: 'Exceeded',
            unit: '% of the year',
            scale: 'log',
            min: 0.001,
            max: 10,
            digits: 3,
          },
          y: { label: 'Attenuation', unit: 'dB', min: 0 },
          series: [
            line('all together', (row) => row.attenuationDb),
            line('rain', (row) => row.rainDb),
            line('scintillation', (row) => row.scintillationDb),
            line('gases and cloud', (row) => row.gasDb + row.cloudDb),
          ],
          marks: [{ label: 'needed', x: exceededPercent, y: needed.attenuationDb }].filter(
            ({ x }) => x >= 0.001 && x <= 10,
          ),
        }),
      ],
      tables: [outages(depthDb, result.fades), climateTable(climate)],
      notes: [
        ...(Math.abs(climate.groundHeightM - climate.heightM) > 1500
          ? [
              'The height typed differs from the ground in the map by more than 1.5 km: is it in metres?',
            ]
          : []),
        ...(needed.outsideStatedRange.length > 0
          ? [
              `Outside the range of P.618-14: ${needed.outsideStatedRange.map((name) => QUANTITIES[name] ?? name).join(', ')}.`,
            ]
          : []),
        'The margin counts from a reading in air without gas: what a clear day takes is already in a clear-sky reading.',
      ],
    };
  },
  working: (values, result) =>
    result.kind === 'visible'
      ? [
          ...towards(['elevation'], values.station, values.orbitalLongitudeDeg),
          ...(result.elevationDeg >= 5 && values.exceededPercent <= 5 && result.needed.rainDb > 0
            ? [
                {
                  plan: 'rain-attenuation',
                  givens: {
                    latitudeDeg: result.climate.latitudeDeg,
                    rainRate001MmPerH: result.climate.rainRate001MmPerH,
                    rainHeightKm: result.climate.rainHeightKm,
                    heightM: result.climate.heightM,
                    elevationDeg: result.elevationDeg,
                    exceededPercent: values.exceededPercent,
                    frequencyGHz: values.frequencyGHz,
                    tiltDeg: values.tiltDeg,
                  },
                },
              ]
            : []),
          {
            plan: 'total-attenuation',
            givens: {
              rainDb: result.needed.rainDb,
              cloudDb: result.needed.cloudDb,
              scintillationDb: result.needed.scintillationDb,
              gasDb: result.needed.gasDb,
            },
          },
        ]
      : [],
  code: ({ station, orbitalLongitudeDeg, rainRate001MmPerH, ...values }) =>
    `import { attenuationAt, climateAt } from 'slantpath/climate';
import { lookAngles } from 'slantpath/pointing';

const station = ${literal(station)};
const { elevationDeg } = lookAngles(station, ${literal(orbitalLongitudeDeg)});
const climate = climateAt(station${
      rainRate001MmPerH === undefined
        ? ''
        : `, { measured: { rainRate001MmPerH: ${literal(rainRate001MmPerH)}, years: 10 } }`
    });
console.log(
  attenuationAt(climate, {
    elevationDeg,
    frequencyGHz: ${literal(values.frequencyGHz)},
    tiltDeg: ${literal(values.tiltDeg)},
    diameterM: ${literal(values.diameterM)},
    exceededPercent: ${literal(values.exceededPercent)},
  }),
);
`,
});
