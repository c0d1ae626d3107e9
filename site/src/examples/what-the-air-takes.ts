/** What the air takes: gas, cloud and scintillation against frequency and elevation, without rain. */

import {
  approximateGasAttenuation,
  cloudAttenuation,
  referenceAtmosphere,
  scintillationFade,
  totalAttenuation,
} from 'slantpath/propagation';
import { defineExample, literal } from '../lib/example.js';
import { number } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot, type Point } from '../lib/pictures/plot.js';

interface Air {
  readonly frequencyGHz: number;
  readonly elevationDeg: number;
  readonly heightM: number;
  readonly waterVapourDensityGPerM3: number;
  readonly liquidWaterKgPerM2: number;
  readonly diameterM: number;
  readonly wetRefractivityNUnits: number;
  readonly exceededPercent: number;
}

/** The causes at one frequency and elevation. */
function causes(air: Air) {
  const { pressureHpa, temperatureK } = referenceAtmosphere(air.heightM / 1000);
  const { frequencyGHz, elevationDeg, diameterM, wetRefractivityNUnits, exceededPercent } = air;
  const gas = approximateGasAttenuation({
    frequencyGHz,
    elevationDeg,
    waterVapourDensityGPerM3: air.waterVapourDensityGPerM3,
    pressureHpa,
    temperatureK,
  });
  const cloud = cloudAttenuation({
    frequencyGHz,
    elevationDeg,
    liquidWaterKgPerM2: air.liquidWaterKgPerM2,
  });
  const path = { frequencyGHz, elevationDeg, diameterM, wetRefractivityNUnits, exceededPercent };
  const flicker = scintillationFade(path);
  const total = totalAttenuation({
    ...path,
    heightM: air.heightM,
    // No rain: only the air itself is asked for here.
    latitudeDeg: 0,
    rainHeightKm: 0,
    rainRate001MmPerH: 0,
    tiltDeg: 45,
    gasDb: gas.attenuationDb,
    cloudDb: cloud.attenuationDb,
  });
  return {
    pressureHpa,
    temperatureK,
    oxygenDb: gas.oxygenDb,
    waterVapourDb: gas.waterVapourDb,
    cloudDb: cloud.attenuationDb,
    scintillationDb: flicker.attenuationDb,
    attenuationDb: total.attenuationDb,
  };
}

type Causes = ReturnType<typeof causes>;
interface Sample {
  readonly x: number;
  readonly at: Causes;
}

const FREQUENCIES = Array.from({ length: 74 }, (_, index) => 1 + index * 0.75);
const ELEVATIONS = [5, 6, 7, 8, 10, 12, 15, 18, 22, 26, 30, 36, 42, 50, 60, 75, 90];

const curve = (samples: readonly Sample[], of: keyof Causes): Point[] =>
  samples.map(({ x, at }) => ({ x, y: at[of] })).filter(({ y }) => y >= 0.001);

const lines = (samples: readonly Sample[]) =>
  [
    { label: 'all together', points: curve(samples, 'attenuationDb') },
    { label: 'oxygen', points: curve(samples, 'oxygenDb') },
    { label: 'water vapour', points: curve(samples, 'waterVapourDb') },
    { label: 'cloud', points: curve(samples, 'cloudDb') },
  ].filter(({ points }) => points.length > 1);

/** Whole decades that hold every point of the curves. */
function decades(series: readonly { readonly points: readonly Point[] }[]) {
  const values = series.flatMap(({ points }) => points.map(({ y }) => y));
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return { min: 10 ** Math.floor(Math.log10(low)), max: 10 ** Math.ceil(Math.log10(high)) };
}

/** Curves against the elevation; a cause that takes nothing has none. */
const elevationLines = (samples: readonly Sample[]) =>
  [
    { label: 'all together', points: curve(samples, 'attenuationDb') },
    {
      label: 'gases',
      points: samples.map(({ x, at }) => ({ x, y: at.oxygenDb + at.waterVapourDb })),
    },
    { label: 'cloud', points: curve(samples, 'cloudDb') },
    { label: 'scintillation', points: curve(samples, 'scintillationDb') },
  ].filter(({ points }) => points.length > 1);

export default defineExample({
  usual: ['frequencyGHz', 'elevationDeg', 'heightM', 'waterVapourDensityGPerM3'],
  inputs: {
    frequencyGHz: number({
      label: 'Frequency',
      unit: 'GHz',
      value: 20,
      step: 0.5,
      min: 1,
      max: 55,
    }),
    elevationDeg: number({
      label: 'Elevation',
      unit: '°',
      value: 36,
      step: 1,
      min: 5,
      max: 90,
    }),
    heightM: number({
      label: 'Height of the station',
      unit: 'm',
      value: 1900,
      step: 100,
      min: 0,
      max: 5000,
      hint: 'Pressure and temperature follow from it, by the mean atmosphere.',
    }),
    waterVapourDensityGPerM3: number({
      label: 'Water vapour at the station',
      unit: 'g/m³',
      value: 4,
      step: 0.5,
      min: 0,
      max: 30,
      hint: 'Mountain air 2 to 6, temperate lowland 7 to 12, tropics 18 to 25.',
    }),
    liquidWaterKgPerM2: number({
      label: 'Liquid water in the clouds above',
      unit: 'kg/m²',
      value: 0.6,
      step: 0.1,
      min: 0,
      max: 3,
      hint: 'Clear sky 0; a thick cloud 1 and more.',
    }),
    diameterM: number({
      label: 'Antenna diameter',
      unit: 'm',
      value: 0.9,
      step: 0.1,
      min: 0.3,
      max: 5,
    }),
    wetRefractivityNUnits: number({
      label: 'Wet refractivity',
      unit: 'N-units',
      value: 45,
      step: 5,
      min: 0,
      max: 150,
      hint: 'Median of the year: mountains 30 to 50, tropics 110 to 130.',
    }),
    exceededPercent: number({
      label: 'Scintillation exceeded for',
      unit: '% of the time',
      value: 1,
      step: 0.5,
      min: 0.01,
      max: 50,
    }),
  },
  compute: (air) => ({
    here: causes(air),
    byFrequency: FREQUENCIES.map((x) => ({ x, at: causes({ ...air, frequencyGHz: x }) })),
    byElevation: ELEVATIONS.map((x) => ({ x, at: causes({ ...air, elevationDeg: x }) })),
  }),
  view: ({ here, byFrequency, byElevation }, air) => {
    const parts = [
      ['oxygen', here.oxygenDb],
      ['water vapour', here.waterVapourDb],
      ['cloud', here.cloudDb],
      ['scintillation', here.scintillationDb],
    ] as const;
    const frequencies = lines(byFrequency);
    const elevations = elevationLines(byElevation);
    const most = parts.reduce((a, b) => (b[1] > a[1] ? b : a));
    return {
      says: `Without rain the air takes ${shown(here.attenuationDb, 2)} dB at ${shown(air.frequencyGHz, 1)} GHz and ${shown(air.elevationDeg, 1)}° of elevation; the largest part is ${most[0]}.`,
      outputs: [
        { label: 'All together', value: here.attenuationDb, unit: 'dB', digits: 2, main: true },
        { label: 'Oxygen', value: here.oxygenDb, unit: 'dB', digits: 3 },
        { label: 'Water vapour', value: here.waterVapourDb, unit: 'dB', digits: 3 },
        { label: 'Cloud', value: here.cloudDb, unit: 'dB', digits: 3 },
        {
          label: 'Scintillation',
          value: here.scintillationDb,
          unit: 'dB',
          digits: 3,
          note: `exceeded for ${String(air.exceededPercent)} % of the time`,
        },
        { label: 'Pressure', value: here.pressureHpa, unit: 'hPa', digits: 1 },
        { label: 'Temperature', value: here.temperatureK, unit: 'K', digits: 1 },
      ],
      notes:
        air.elevationDeg < 5
          ? ['Below 5° the flat layers of this method stop being true: the sum is too high.']
          : [],
      figures: [
        linePlot({
          title: `What the air takes against frequency, at ${shown(air.elevationDeg, 1)}° of elevation`,
          x: { label: 'Frequency', unit: 'GHz', digits: 2, min: 0, max: 56 },
          y: { label: 'Attenuation', unit: 'dB', scale: 'log', digits: 3, ...decades(frequencies) },
          series: frequencies,
          rules: [{ axis: 'x', at: air.frequencyGHz, label: `${shown(air.frequencyGHz, 1)} GHz` }],
        }),
        linePlot({
          title: `What the air takes against elevation, at ${shown(air.frequencyGHz, 1)} GHz`,
          x: { label: 'Elevation', unit: '°', digits: 0, min: 0, max: 90 },
          y: { label: 'Attenuation', unit: 'dB', scale: 'log', digits: 3, ...decades(elevations) },
          series: elevations,
          rules: [{ axis: 'x', at: air.elevationDeg, label: `${shown(air.elevationDeg, 1)}°` }],
        }),
      ],
    };
  },
  working: (_, { here: { attenuationDb } }) => [{ plan: 'sky-noise', givens: { attenuationDb } }],
  code: (air) => `import {
  approximateGasAttenuation,
  cloudAttenuation,
  referenceAtmosphere,
  scintillationFade,
} from 'slantpath/propagation';

const path = ${literal({
    frequencyGHz: air.frequencyGHz,
    elevationDeg: air.elevationDeg,
  })};
const { pressureHpa, temperatureK } = referenceAtmosphere(${literal(air.heightM / 1000)});
const waterVapourDensityGPerM3 = ${literal(air.waterVapourDensityGPerM3)};
const gas = approximateGasAttenuation({ ...path, pressureHpa, temperatureK, waterVapourDensityGPerM3 });
console.log('oxygen', gas.oxygenDb, 'water vapour', gas.waterVapourDb);
const liquidWaterKgPerM2 = ${literal(air.liquidWaterKgPerM2)};
console.log('cloud', cloudAttenuation({ ...path, liquidWaterKgPerM2 }).attenuationDb);
const flicker = ${literal({
    diameterM: air.diameterM,
    wetRefractivityNUnits: air.wetRefractivityNUnits,
    exceededPercent: air.exceededPercent,
  })};
console.log('scintillation', scintillationFade({ ...path, ...flicker }).attenuationDb);
`,
});
