/** What does circular polarization lose? Axial ratio, isolation, a linear antenna on a circular wave, Faraday rotation. */

import {
  crossPolarIsolation,
  discriminationFromAxialRatio,
  ellipticalMismatchLoss,
  faradayRotation,
  linearOnEllipticalLoss,
} from 'slantpath/antenna';
import { defineExample, literal } from '../lib/example.js';
import { choice, number } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { linePlot } from '../lib/pictures/plot.js';

const RECEIVERS = {
  circular: 'circular, same hand',
  opposite: 'circular, wrong hand',
  linear: 'linear',
} as const;

const TILTS = Array.from({ length: 61 }, (_, i) => i * 3);

export default defineExample({
  usual: ['receiver', 'waveAxialRatioDb', 'antennaAxialRatioDb', 'frequencyGHz'],
  inputs: {
    receiver: choice({ label: 'Receiving antenna', options: RECEIVERS, value: 'circular' }),
    waveAxialRatioDb: number({
      label: 'Axial ratio of the wave',
      unit: 'dB',
      value: 1,
      step: 0.1,
      min: 0,
      max: 20,
      hint: '0 is round. Satellites send about 0.5 to 1.5.',
    }),
    antennaAxialRatioDb: number({
      label: 'Axial ratio of the antenna',
      unit: 'dB',
      value: 1.5,
      step: 0.1,
      min: 0,
      max: 20,
      hint: 'From the data sheet of the feed; with a depolarizer plate about 1 to 3.',
    }),
    frequencyGHz: number({
      label: 'Frequency',
      unit: 'GHz',
      value: 4,
      step: 0.1,
      min: 0.4,
      max: 40,
    }),
    electronsPerM2: number({
      label: 'Electron content of the path',
      unit: '10¹⁶/m²',
      value: 50,
      step: 10,
      min: 0,
      max: 1000,
      hint: '1 at night to 100 by day near the equator; more in years of many sunspots.',
    }),
    magneticFieldUt: number({
      label: 'Magnetic field along the path',
      unit: 'µT',
      value: 45,
      step: 5,
      min: 0,
      max: 100,
    }),
  },
  fieldOf: (parameter) =>
    ({
      firstAxialRatioDb: 'waveAxialRatioDb',
      secondAxialRatioDb: 'antennaAxialRatioDb',
      axialRatioDb: 'waveAxialRatioDb',
      magneticFieldT: 'magneticFieldUt',
    })[parameter],
  compute: ({
    receiver,
    waveAxialRatioDb,
    antennaAxialRatioDb,
    frequencyGHz,
    electronsPerM2,
    magneticFieldUt,
  }) => {
    const lossAt = (tiltDeg: number) =>
      receiver === 'linear'
        ? linearOnEllipticalLoss({ axialRatioDb: waveAxialRatioDb, angleDeg: tiltDeg })
        : ellipticalMismatchLoss({
            firstAxialRatioDb: waveAxialRatioDb,
            secondAxialRatioDb: antennaAxialRatioDb,
            hands: receiver === 'circular' ? 'same' : 'opposite',
            tiltBetweenDeg: tiltDeg,
          });
    const ionosphere = {
      magneticFieldT: magneticFieldUt / 1e6,
      electronsPerM2: electronsPerM2 * 1e16,
    };
    const curve = TILTS.map((tiltDeg) => ({ x: tiltDeg, y: lossAt(tiltDeg) }));
    return {
      curve,
      worstDb: Math.max(lossAt(0), lossAt(90)),
      bestDb: Math.min(lossAt(0), lossAt(90)),
      waveDb: discriminationFromAxialRatio(waveAxialRatioDb),
      antennaDb: discriminationFromAxialRatio(antennaAxialRatioDb),
      isolation: crossPolarIsolation({ kind: 'circular', waveAxialRatioDb, antennaAxialRatioDb }),
      faraday: faradayRotation({ ...ionosphere, frequencyGHz }),
      rotations: Array.from({ length: 50 }, (_, i) => 0.4 * 50 ** (i / 49)).map((f) => ({
        x: f,
        y: faradayRotation({ ...ionosphere, frequencyGHz: f }).rotationDeg,
      })),
    };
  },
  view: (
    { curve, worstDb, bestDb, waveDb, antennaDb, isolation, faraday, rotations },
    { receiver, frequencyGHz },
  ) => {
    const [worst, best] = [shown(worstDb, 2), shown(bestDb, 2)];
    const turn = shown(faraday.rotationDeg, 1);
    return {
      says: {
        circular: () =>
          `At most ${worst} dB of the signal; what suffers is the isolation, ${shown(isolation.worstCaseIsolationDb, 1)} dB at worst.`,
        opposite: () =>
          `The wrong hand: ${best} to ${worst} dB are lost, and next to nothing is received.`,
        linear: () =>
          `A linear antenna loses ${best} to ${worst} dB, and hears both hands alike: nothing keeps the other polarization away.`,
      }[receiver](),
      outputs: [
        {
          label: 'Loss, at worst',
          value: worstDb,
          unit: 'dB',
          note: `at best ${best} dB`,
          main: true,
        },
        receiver === 'linear'
          ? { label: 'Isolation from the other hand', value: 'none', main: true }
          : {
              label: 'Isolation, at worst',
              value: isolation.worstCaseIsolationDb,
              unit: 'dB',
              digits: 1,
              note: `${shown(isolation.isolationDb, 1)} dB where the leaks add as powers`,
              main: true,
            },
        { label: 'Isolation of the wave alone', value: waveDb, unit: 'dB', digits: 1 },
        { label: 'Isolation of the antenna alone', value: antennaDb, unit: 'dB', digits: 1 },
        {
          label: 'A linear wave would be turned by',
          value: faraday.rotationDeg,
          unit: '°',
          digits: 1,
          note: 'by the ionosphere; a circular one is not',
        },
        {
          label: 'and would lose',
          value: faraday.lossDb,
          unit: 'dB',
          note: 'where the feed is not turned after it',
        },
      ],
      figures: [
        linePlot({
          title: 'Loss against the angle between wave and antenna',
          x: { label: 'Angle', unit: '°', digits: 0, min: 0, max: 180 },
          y: { label: 'Loss', unit: 'dB', digits: 2 },
          series: [{ label: 'loss', points: curve }],
        }),
        linePlot({
          title: 'Turn of a linear wave by the ionosphere',
          x: { label: 'Frequency', unit: 'GHz', scale: 'log', digits: 1, min: 0.4, max: 20 },
          y: { label: 'Rotation', unit: '°', scale: 'log', digits: 2, min: 0.01, max: 10_000 },
          series: [{ label: 'rotation', points: rotations.filter(({ y }) => y >= 0.01) }],
          marks:
            frequencyGHz <= 20 && faraday.rotationDeg >= 0.01
              ? [{ x: frequencyGHz, y: faraday.rotationDeg, label: `${turn}°` }]
              : [],
        }),
      ],
      tables: [
        {
          caption: 'From axial ratio to isolation',
          columns: ['What', 'Isolation / dB'],
          rows: [
            ['the wave alone', shown(waveDb, 1)],
            ['the antenna alone', shown(antennaDb, 1)],
            ['both, as powers', shown(isolation.isolationDb, 1)],
            ['both, in step', shown(isolation.worstCaseIsolationDb, 1)],
          ],
        },
      ],
    };
  },
  hand: ({ waveAxialRatioDb, antennaAxialRatioDb, frequencyGHz }, { isolation, faraday }) => {
    const [antenna, wave] = isolation.leakages.map(({ powerRatio }) =>
      shown(Math.sqrt(powerRatio), 4),
    );
    return [
      {
        says: 'the axial ratio of the wave as a ratio of fields',
        formula: 'r = 10^{A/20}',
        put: `r = 10^{${shown(waveAxialRatioDb, 2)}/20}`,
        result: shown(10 ** (waveAxialRatioDb / 20), 4),
      },
      {
        says: 'the field that leaks into the other hand',
        formula: 'e = \\frac{r - 1}{r + 1}',
        put: `e = \\frac{${shown(10 ** (waveAxialRatioDb / 20), 4)} - 1}{${shown(10 ** (waveAxialRatioDb / 20), 4)} + 1}`,
        result: wave ?? '',
      },
      {
        says: 'that of the antenna, the same way',
        formula: 'e_a = \\frac{r_a - 1}{r_a + 1}',
        put: `e_a = \\frac{${shown(10 ** (antennaAxialRatioDb / 20), 4)} - 1}{${shown(10 ** (antennaAxialRatioDb / 20), 4)} + 1}`,
        result: antenna ?? '',
      },
      {
        says: 'both in step: the least isolation',
        formula: 'I = -20 \\cdot \\log_{10}(e + e_a)',
        put: `I = -20 \\cdot \\log_{10}(${wave} + ${antenna})`,
        result: `${shown(isolation.worstCaseIsolationDb, 1)} dB`,
      },
      {
        says: 'the turn of a linear wave falls with the square of the frequency: at 1 GHz it would be',
        formula: 'p_1 = p \\cdot f^{2}',
        put: `p_1 = ${shown(faraday.rotationDeg, 2)} \\cdot ${shown(frequencyGHz, 2)}^{2}`,
        result: `${shown(faraday.rotationDeg * frequencyGHz ** 2, 0)}°`,
      },
    ];
  },
  code: ({ waveAxialRatioDb, antennaAxialRatioDb }) =>
    `import { crossPolarIsolation, ellipticalMismatchLoss } from 'slantpath/antenna';

const pair = ${literal({ firstAxialRatioDb: waveAxialRatioDb, secondAxialRatioDb: antennaAxialRatioDb })};
console.log(ellipticalMismatchLoss({ ...pair, hands: 'same' }));
console.log(
  crossPolarIsolation({
    kind: 'circular',
    waveAxialRatioDb: ${waveAxialRatioDb},
    antennaAxialRatioDb: ${antennaAxialRatioDb},
  }),
);
`,
});
