/** How much ballast does a flat roof need? Wind load, moment, ballast, and what a bending mast costs in pointing. */

import { halfPowerBeamwidth } from 'slantpath/antenna';
import {
  ballast,
  mastUnderWind,
  peakVelocityPressure,
  reflectorLoad,
  type TerrainCategory,
  velocityPressure,
  windExceededPercent,
  windPointingLoss,
} from 'slantpath/wind';
import { defineExample, literal } from '../lib/example.js';
import { choice, number } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';

const TERRAINS: Readonly<Record<TerrainCategory, string>> = {
  '0': '0: sea and coast',
  I: 'I: lakes, flat land without obstacles',
  II: 'II: low vegetation, single obstacles',
  III: 'III: villages, suburbs, forest',
  IV: 'IV: towns with high buildings',
};

export default defineExample({
  usual: ['diameterM', 'basicSpeedMPerS', 'terrain', 'heightM', 'leverM', 'baseM'],
  inputs: {
    diameterM: number({
      label: 'Diameter of the reflector',
      unit: 'm',
      value: 1.2,
      step: 0.1,
      min: 0.3,
      max: 5,
    }),
    basicSpeedMPerS: number({
      label: 'Basic wind speed of the place',
      unit: 'm/s',
      value: 25,
      step: 1,
      min: 5,
      max: 60,
      hint: 'From the national map: the 10-minute mean at 10 m height that is met once in 50 years.',
    }),
    terrain: choice({ label: 'Terrain', options: TERRAINS, value: 'III' }),
    heightM: number({
      label: 'Height above the ground',
      unit: 'm',
      value: 12,
      step: 1,
      min: 0,
      max: 200,
    }),
    leverM: number({
      label: 'Middle of the reflector above the roof',
      unit: 'm',
      value: 1,
      step: 0.1,
      min: 0.1,
      max: 10,
    }),
    baseM: number({
      label: 'Width of the base',
      unit: 'm',
      value: 1.4,
      step: 0.1,
      min: 0.2,
      max: 10,
    }),
    frictionRatio: number({
      label: 'Friction on the roof',
      value: 0.4,
      step: 0.05,
      min: 0.1,
      max: 0.8,
      hint: '0.4 for a rubber mat on a wet roof; gravel and ice have less.',
    }),
    safetyRatio: number({ label: 'Safety factor', value: 1.5, step: 0.1, min: 1, max: 3 }),
    forceCoefficientRatio: number({
      label: 'Force coefficient',
      value: 1.3,
      step: 0.1,
      min: 1,
      max: 2,
      hint: '1.2 to 1.4 for a solid dish, practice of the trade; 1.8 for a flat plate.',
    }),
    outsideDiameterMm: number({
      label: 'Outside diameter of the mast',
      unit: 'mm',
      value: 60,
      step: 1,
      min: 10,
    }),
    wallMm: number({
      label: 'Wall thickness of the mast',
      unit: 'mm',
      value: 2.9,
      step: 0.1,
      min: 0.5,
    }),
    windSpeedMPerS: number({
      label: 'Wind in which it should still receive',
      unit: 'm/s',
      value: 15,
      step: 1,
      min: 0,
      max: 60,
    }),
    meanSpeedMPerS: number({
      label: 'Mean wind of the year',
      unit: 'm/s',
      value: 4,
      step: 0.5,
      min: 0.5,
      max: 20,
    }),
    frequencyGHz: number({
      label: 'Frequency',
      unit: 'GHz',
      value: 12,
      step: 0.5,
      min: 1,
      max: 40,
    }),
  },
  fieldOf: (parameter) =>
    ({
      outsideDiameterM: 'outsideDiameterMm',
      wallM: 'wallMm',
      lengthM: 'leverM',
      forceN: 'basicSpeedMPerS',
    })[parameter],
  compute: ({
    diameterM,
    basicSpeedMPerS,
    terrain,
    heightM,
    leverM,
    baseM,
    frictionRatio,
    safetyRatio,
    forceCoefficientRatio,
    outsideDiameterMm,
    wallMm,
    windSpeedMPerS,
    meanSpeedMPerS,
    frequencyGHz,
  }) => {
    const dish = { diameterM, heightAboveFootM: leverM, forceCoefficientRatio };
    const peak = peakVelocityPressure({ basicSpeedMPerS, terrain, heightM });
    const load = reflectorLoad({ ...dish, pressurePa: peak.peakPressurePa });
    const mount = { leverM, baseM, frictionRatio, safetyRatio };
    const beamwidthDeg = halfPowerBeamwidth({ diameterM, frequencyGHz });
    const inWind = (speed: number) => {
      const { forceN } = reflectorLoad({
        ...dish,
        pressurePa: velocityPressure({ windSpeedMPerS: speed }),
      });
      const bent = mastUnderWind({
        outsideDiameterM: outsideDiameterMm / 1000,
        wallM: wallMm / 1000,
        lengthM: leverM,
        forceN,
      });
      return {
        forceN,
        bent,
        ...windPointingLoss({ slopeDeg: bent.slopeDeg, twistDeg: bent.twistDeg, beamwidthDeg }),
      };
    };
    return {
      peak,
      load,
      needed: ballast({ ...mount, forceN: load.forceN }),
      beamwidthDeg,
      wind: inWind(windSpeedMPerS),
      exceededPercent: windExceededPercent({ windSpeedMPerS, meanSpeedMPerS }),
      curve: Array.from({ length: 41 }, (_, i) => {
        const { forceN } = reflectorLoad({
          ...dish,
          pressurePa: velocityPressure({ windSpeedMPerS: i }),
        });
        return { speed: i, ...ballast({ ...mount, forceN }) };
      }),
    };
  },
  view: ({ peak, load, needed, wind, exceededPercent, curve }, { windSpeedMPerS }) => {
    const gust = curve.find(
      ({ speed }) => velocityPressure({ windSpeedMPerS: speed }) >= peak.peakPressurePa,
    );
    const slides = needed.slidingKg >= needed.overturningKg;
    return {
      caution:
        'A load and a moment, no approval: whether the roof bears the weight, how the wind lifts at an edge, and what is fixed to what, a structural engineer says and the local code decides. Do not work on a roof in wind; secure yourself, the dish and each block against falling.',
      says: `The wind asks for ${shown(needed.neededKg, 0)} kg in all, mount included: ${
        slides ? 'against sliding' : 'against overturning'
      }.`,
      outputs: [
        {
          label: 'Mass that the load asks for',
          value: needed.neededKg,
          unit: 'kg',
          digits: 0,
          main: true,
        },
        {
          label: 'Moment at the foot',
          value: load.footMomentNm,
          unit: 'N m',
          digits: 0,
          main: true,
        },
        { label: 'Force of the wind', value: load.forceN, unit: 'N', digits: 0 },
        {
          label: 'Peak pressure',
          value: peak.peakPressurePa,
          unit: 'Pa',
          digits: 0,
          note: 'gusts counted in',
        },
        { label: 'Against sliding', value: needed.slidingKg, unit: 'kg', digits: 0 },
        { label: 'Against overturning', value: needed.overturningKg, unit: 'kg', digits: 0 },
        {
          label: 'Loss of pointing',
          value: wind.lossDb,
          unit: 'dB',
          note: wind.outsideStatedRange
            ? 'out of the main lobe: the figure says only that it is much'
            : `at ${shown(windSpeedMPerS, 0)} m/s, the mast leans by ${shown(wind.bent.slopeDeg, 2)}°`,
        },
        {
          label: 'That wind is exceeded',
          value: exceededPercent,
          unit: '%',
          digits: 4,
          note: 'of the year, by the mean wind',
        },
      ],
      figures: [
        linePlot({
          title: 'Mass that holds the mount, against the speed of the gust',
          x: { label: 'Gust', unit: 'm/s', digits: 0, min: 0, max: 40 },
          y: { label: 'Mass with mount', unit: 'kg', digits: 0, min: 0 },
          series: [
            {
              label: 'against sliding',
              points: curve.map(({ speed, slidingKg }) => ({ x: speed, y: slidingKg })),
            },
            {
              label: 'against overturning',
              points: curve.map(({ speed, overturningKg }) => ({ x: speed, y: overturningKg })),
            },
          ],
          rules: gust ? [{ axis: 'x', at: gust.speed, label: 'peak pressure' }] : [],
        }),
      ],
      tables: [
        {
          caption: 'From the wind to the ballast',
          columns: ['Step', 'Value', 'Unit'],
          rows: [
            ['mean wind at the height', shown(peak.meanSpeedMPerS, 1), 'm/s'],
            ['turbulence', shown(peak.turbulenceRatio, 3), '–'],
            ['peak pressure', shown(peak.peakPressurePa, 0), 'Pa'],
            ['force on the reflector', shown(load.forceN, 0), 'N'],
            ['moment at the foot', shown(load.footMomentNm, 0), 'N m'],
            ['mass against sliding', shown(needed.slidingKg, 0), 'kg'],
            ['mass against overturning', shown(needed.overturningKg, 0), 'kg'],
          ],
        },
      ],
      notes: [
        'Not in it: lift at the edge of a roof, wind on the mount itself, gusts that shake, ice, and whether the roof bears the weight. That is for a structural engineer.',
      ],
    };
  },
  hand: (
    {
      diameterM,
      forceCoefficientRatio,
      leverM,
      baseM,
      safetyRatio,
      frictionRatio,
      windSpeedMPerS,
      outsideDiameterMm,
      wallMm,
    },
    { peak, load, needed, wind },
  ) => {
    const [force, moment] = [shown(load.forceN, 0), shown(load.footMomentNm, 0)];
    const [outside, wall] = [shown(outsideDiameterMm / 10, 2), shown(wallMm / 10, 2)];
    const inertia = shown(wind.bent.secondMomentCm4, 2);
    return [
      {
        says: 'the force on the reflector at the peak pressure',
        formula: 'F = c \\cdot q \\cdot \\frac{\\pi \\cdot D^{2}}{4}',
        put: `F = ${shown(forceCoefficientRatio, 1)} \\cdot ${shown(peak.peakPressurePa, 0)} \\cdot \\frac{\\pi \\cdot ${shown(diameterM, 2)}^{2}}{4}`,
        result: `${force} N`,
      },
      {
        says: 'the moment at the foot',
        formula: 'M = F \\cdot h',
        put: `M = ${force} \\cdot ${shown(leverM, 1)}`,
        result: `${moment} N m`,
      },
      {
        says: 'the mass against sliding',
        formula: 'm_s = \\frac{s \\cdot F}{\\mu \\cdot g}',
        put: `m_s = \\frac{${shown(safetyRatio, 1)} \\cdot ${force}}{${shown(frictionRatio, 2)} \\cdot 9.80665}`,
        result: `${shown(needed.slidingKg, 0)} kg`,
      },
      {
        says: 'the mass against overturning about one edge of the base',
        formula: 'm_k = \\frac{s \\cdot M}{g \\cdot B / 2}',
        put: `m_k = \\frac{${shown(safetyRatio, 1)} \\cdot ${moment}}{9.80665 \\cdot ${shown(baseM, 1)} / 2}`,
        result: `${shown(needed.overturningKg, 0)} kg`,
      },
      {
        says: 'the second moment of area of the mast, in centimetres',
        formula: 'I = \\frac{\\pi \\cdot (d^{4} - (d - 2 \\cdot t)^{4})}{64}',
        put: `I = \\frac{\\pi \\cdot (${outside}^{4} - (${outside} - 2 \\cdot ${wall})^{4})}{64}`,
        result: `${inertia} cm⁴`,
      },
      {
        says: `the slope of its head at ${shown(windSpeedMPerS, 0)} m/s, steel with 210 GPa`,
        formula: 'a = \\frac{F_w \\cdot h^{2}}{2 \\cdot E \\cdot I} \\cdot \\frac{180}{\\pi}',
        put: `a = \\frac{${shown(wind.forceN, 0)} \\cdot ${shown(leverM, 1)}^{2}}{2 \\cdot 2100 \\cdot ${inertia}} \\cdot \\frac{180}{\\pi}`,
        result: `${shown(wind.bent.slopeDeg, 2)}°`,
      },
    ];
  },
  code: ({
    diameterM,
    basicSpeedMPerS,
    terrain,
    heightM,
    leverM,
    baseM,
    frictionRatio,
    safetyRatio,
    forceCoefficientRatio,
  }) =>
    `import { ballast, peakVelocityPressure, reflectorLoad } from 'slantpath/wind';

const { peakPressurePa } = peakVelocityPressure(${literal({ basicSpeedMPerS, terrain, heightM })});
const load = reflectorLoad({
  diameterM: ${diameterM},
  pressurePa: peakPressurePa,
  heightAboveFootM: ${leverM},
  forceCoefficientRatio: ${forceCoefficientRatio},
});
const needed = ballast({
  forceN: load.forceN,
  leverM: ${leverM},
  baseM: ${baseM},
  frictionRatio: ${frictionRatio},
  safetyRatio: ${safetyRatio},
});
console.log(load.forceN, load.footMomentNm, needed.neededKg);
`,
});
