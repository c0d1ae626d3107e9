import fc from 'fast-check';
import {
  axialRatioFromDiscrimination,
  axialRatioRead,
  discriminationFromAxialRatio,
  ellipticalMismatchLoss,
  faradayRotation,
  linearOnEllipticalLoss,
} from 'slantpath/antenna';
import { expect, test } from 'vitest';
import { publishedTable } from '../support/published.js';
import { input, type WorkedRow, workedCases, workedRows } from '../support/worked.js';

const faraday = (row: WorkedRow) =>
  faradayRotation({
    magneticFieldT: input(row, 'fieldT'),
    electronsPerM2: input(row, 'tecPerM2'),
    frequencyGHz: input(row, 'frequencyHz') / 1e9,
  });

const answers: readonly (readonly [string, (row: WorkedRow) => readonly unknown[]])[] = [
  [
    'cross-polar discrimination dB from axial ratio dB',
    (row) => [discriminationFromAxialRatio(input(row, 'axialRatioDb'))],
  ],
  [
    'cross-polar discrimination dB from axial ratio as',
    (row) => [discriminationFromAxialRatio(20 * Math.log10(input(row, 'ratio')))],
  ],
  ['axial ratio dB from', (row) => [axialRatioFromDiscrimination(input(row, 'discriminationDb'))]],
  [
    'two readings, turning',
    (row) => {
      const read = axialRatioRead({
        by: 'turned-linear-probe',
        highestDbm: input(row, 'highestDbm'),
        lowestDbm: input(row, 'lowestDbm'),
      });
      return [read.axialRatioDb, read.discriminationDb];
    },
  ],
  [
    'two readings, the two hands',
    (row) => {
      const read = axialRatioRead({
        by: 'both-hands',
        highestDbm: input(row, 'coDbm'),
        lowestDbm: input(row, 'crossDbm'),
      });
      return [read.discriminationDb, read.axialRatioDb];
    },
  ],
  [
    'polarization loss',
    (row) => {
      const lossDb = ellipticalMismatchLoss({
        firstAxialRatioDb: input(row, 'axialRatio1Db'),
        secondAxialRatioDb: input(row, 'axialRatio2Db'),
        hands: row.inputs['sameHand'] === true ? 'same' : 'opposite',
        tiltBetweenDeg: input(row, 'tiltBetweenDeg'),
      });
      // Nothing passes between two like ellipses of opposite hands: the table has no value there.
      return [lossDb > 150 ? null : lossDb];
    },
  ],
  ['loss dB, linear antenna on a circular', () => [linearOnEllipticalLoss({ axialRatioDb: 0 })]],
  [
    'loss dB, linear antenna on an elliptical',
    (row) => [
      linearOnEllipticalLoss({
        axialRatioDb: input(row, 'axialRatioDb'),
        angleDeg: input(row, 'angleDeg'),
      }),
    ],
  ],
  [
    'constant in Faraday',
    () => {
      // One tesla, one electron a square metre, at a frequency where the rotation is the constant over 1e18.
      const { rotationDeg } = faradayRotation({
        magneticFieldT: 1e-4,
        electronsPerM2: 1e18,
        frequencyGHz: 1,
      });
      return [((rotationDeg * Math.PI) / 180) * 1e18 * (1 / (1e-4 * 1e18))];
    },
  ],
  [
    'Faraday rotation deg',
    (row) => [faraday(row).rotationDeg, faraday(row).crossPolarDb, faraday(row).lossDb],
  ],
];

publishedTable({
  part: 'antenna',
  quantity: 'circular polarization and Faraday rotation',
  unit: 'dB or deg',
  source: 'worked polarization, recomputed (rules as marked in the table)',
  status: 'recomputed',
  limit: 1e-6,
  reason: 'printed digits; the constant to its five digits',
  count: 34,
  cases: () =>
    workedRows('antenna/circular.csv').flatMap((row) => {
      const found = answers.find(([quantity]) => row.quantity.startsWith(quantity));
      if (found === undefined) throw new Error(`no answer for ${row.quantity}`);
      return workedCases(row, found[1](row));
    }),
});

test('the loss of two ellipses is that of their field vectors', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 20, noNaN: true }),
      fc.double({ min: 0, max: 20, noNaN: true }),
      fc.boolean(),
      fc.double({ min: -180, max: 180, noNaN: true }),
      (firstAxialRatioDb, secondAxialRatioDb, same, tiltBetweenDeg) => {
        // Jones vectors: long axis first, turned by the tilt; the second hand is mirrored where it is opposite.
        const a = 10 ** (firstAxialRatioDb / 20);
        const b = 10 ** (secondAxialRatioDb / 20);
        const t = (tiltBetweenDeg * Math.PI) / 180;
        const sense = same ? 1 : -1;
        const real = a * b * Math.cos(t) + sense * Math.cos(t);
        const imaginary = -(sense * a * Math.sin(t)) - b * Math.sin(t);
        const passed = (real ** 2 + imaginary ** 2) / ((1 + a * a) * (1 + b * b));
        const lossDb = ellipticalMismatchLoss({
          firstAxialRatioDb,
          secondAxialRatioDb,
          hands: same ? 'same' : 'opposite',
          tiltBetweenDeg,
        });
        expect(10 ** (-lossDb / 10)).toBeCloseTo(passed, 10);
      },
    ),
  );
});

test.each([
  [() => discriminationFromAxialRatio(-1), 'axialRatioDb'],
  [() => axialRatioRead({ by: 'both-hands', highestDbm: -60, lowestDbm: -50 }), 'lowestDbm'],
  [
    () => faradayRotation({ magneticFieldT: 50_000, electronsPerM2: 1e17, frequencyGHz: 1.5 }),
    'magneticFieldT',
  ],
])('a wrong value is named: %#', (call, parameter) => {
  expect(call).toThrow(expect.objectContaining({ name: 'DomainError', parameter }));
});
