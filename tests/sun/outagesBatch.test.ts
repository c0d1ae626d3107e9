import fc from 'fast-check';
import { markBadRows } from 'slantpath';
import { outageOutcomes, sunOutages, sunOutagesBatch } from 'slantpath/sun';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const row = fc.record({
  latitudeDeg: within(-70, 70),
  longitudeDeg: within(0, 40),
  heightM: within(0, 3000),
  orbitalLongitudeDeg: within(0, 60),
  diameterM: within(0.4, 4),
  frequencyGHz: within(3, 30),
  systemNoiseK: within(60, 600),
  thresholdLossDb: within(0.3, 8),
  attenuationDb: within(0, 2),
});
type Row = typeof row extends fc.Arbitrary<infer T> ? T : never;
const SEASON = { from: '2026-02-20', to: '2026-04-20' } as const;

test('each row sums up what the single function gives', () => {
  fc.assert(
    fc.property(
      fc.array(row, { minLength: 1, maxLength: 3 }),
      fc.constantFrom('quiet' as const, 'active' as const),
      (rows, activity) => {
        const columns = Object.fromEntries(
          Object.keys(rows[0] ?? {}).map((field) => [
            field,
            rows.map((values) => values[field as keyof Row]),
          ]),
        ) as Record<keyof Row, number[]>;
        const batch = sunOutagesBatch({ ...columns, ...SEASON, activity });
        rows.forEach(({ latitudeDeg, longitudeDeg, heightM, ...rest }, index) => {
          const station = { latitudeDeg, longitudeDeg, heightM };
          const single = sunOutages({ station, ...rest, ...SEASON, activity });
          expect(outageOutcomes[batch.outcome[index] ?? -1]).toBe(single.kind);
          const events = single.kind === 'outages' ? single.events : [];
          expect(batch.count[index]).toBe(events.length);
          const minutes = events.map(({ durationMin }) => durationMin);
          expect(batch.totalMin[index]).toBe(minutes.reduce((sum, value) => sum + value, 0));
          expect(batch.longestMin[index]).toBe(Math.max(0, ...minutes));
          expect(batch.lossDb[index]).toBe(Math.max(0, ...events.map(({ lossDb }) => lossDb)));
          const instant = (ms = Number.NaN) =>
            Number.isNaN(ms) ? undefined : new Date(Math.round(ms)).toISOString();
          expect(instant(batch.firstPeakMs[index])).toBe(events[0]?.peakUtc);
          expect(instant(batch.lastPeakMs[index])).toBe(events[events.length - 1]?.peakUtc);
        });
      },
    ),
    { numRuns: runs(100) },
  );
});

test('marks a bad row; a bad span and activity are nobody’s row', () => {
  const input = {
    latitudeDeg: [46.4, 146, 46.4],
    longitudeDeg: 9.6,
    heightM: 600,
    orbitalLongitudeDeg: 16.4,
    diameterM: [0.9, 0.9, -1],
    frequencyGHz: 11.7,
    systemNoiseK: 120,
    ...SEASON,
  };
  const marked = markBadRows(sunOutagesBatch, input);
  expect(marked.badRows.map(({ parameter, index }) => [parameter, index])).toEqual([
    ['latitudeDeg', 1],
    ['diameterM', 2],
  ]);
  expect(marked.columns.count[0]).toBeGreaterThan(5);
  const whole = expect.objectContaining({ index: undefined });
  expect(() => sunOutagesBatch({ ...input, to: '2026-01-01' })).toThrow(whole);
  expect(() => sunOutagesBatch({ ...input, activity: 'loud' as never })).toThrow(whole);
});
