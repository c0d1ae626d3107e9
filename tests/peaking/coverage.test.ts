/** The kept coverage table of `fitPeak` and `nextMove`: what the docs claim of it, and a few of its cells and searches run anew. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';
import { allCells, simulateCell } from './simulator/cells.js';
import { simulateSearches } from './simulator/searches.js';
import { type CoverageRow, floorAsked, SEARCHES, type SearchRow } from './simulator/table.js';

const kept = JSON.parse(readFileSync('docs/decisions/peaking-coverage.json', 'utf8')) as {
  readonly runs: number;
  readonly fit: readonly CoverageRow[];
  readonly searches: readonly SearchRow[];
};

const cells = allCells();

/** Whether so many of `of` runs fit a kept share in percent: both come from chance, three standard deviations and a run. */
function fits(count: number, of: number, keptPercent: number): boolean {
  const share = Math.min(0.99, Math.max(0.01, keptPercent / 100));
  const deviation = Math.sqrt(share * (1 - share) * (1 / of + 1 / kept.runs));
  return Math.abs(count / of - keptPercent / 100) <= 3 * deviation + 1 / of;
}

describe('the kept table', () => {
  test('has every cell and every search', () => {
    expect(kept.runs).toBeGreaterThanOrEqual(700);
    expect(kept.fit.map(({ cell }) => cell)).toEqual(cells.map(({ name }) => name));
    expect(kept.searches.map(({ setting }) => setting)).toEqual(SEARCHES.map(([name]) => name));
  });

  test('an assured label holds 95 % in every cell, and is given where the readings are good', () => {
    for (const [index, row] of kept.fit.entries()) {
      if (row.assuredCoveragePercent !== null)
        expect(row.assuredCoveragePercent, row.cell).toBeGreaterThanOrEqual(95);
      const cell = cells[index];
      if (cell && floorAsked(cell)) expect(row.assuredPercent, row.cell).toBeGreaterThanOrEqual(90);
    }
  });

  test('the pages name its size and its worst cell', () => {
    const assured = kept.fit.filter(
      ({ assuredCoveragePercent }) => assuredCoveragePercent !== null,
    );
    const worst = Math.min(...assured.map((row) => row.assuredCoveragePercent ?? 100));
    for (const [file, told] of [
      ['docs/examples/find-the-peak.mdx', worst.toFixed(1)],
      ['docs/de/examples/find-the-peak.mdx', worst.toFixed(1).replace('.', ',')],
    ] as const) {
      const text = readFileSync(file, 'utf8');
      expect(text).toContain(`${told} %`);
      expect(text).toContain(`${kept.runs} simul`);
      expect(text).toContain(`${kept.fit.length} `);
    }
    expect(
      kept.fit
        .filter(({ cell }) => cell.startsWith('5 readings'))
        .every((row) => row.assuredPercent === 0),
    ).toBe(true);
  });

  test('searches end on the peak, and keep their bound', () => {
    for (const row of kept.searches) {
      expect(row.donePercent, row.setting).toBeGreaterThanOrEqual(99);
      expect(row.beyondBoundPercent, row.setting).toBeLessThanOrEqual(4);
      if (row.setting === 'width 10 %') expect(row.medianReadings).toBe(4);
      expect(row.medianReadings, row.setting).toBeLessThanOrEqual(
        row.setting === 'start on a side lobe' ? 7 : 6,
      );
    }
  });
});

// The worst cells of the table, and one each of the ordinary, the coarse, the lopsided and the outliers.
test.each([
  '9 readings, scatter 0.2 dB, one-sided, rim 10 dB down, width 5 %',
  '9 readings, scatter 0.1 dB, even, coma, width 10 %',
  '9 readings, scatter 0.1 dB, even, rim 10 dB down, width 10 %',
  '6 readings, scatter 0.3 dB, step 0.5 dB, even, rim 10 dB down, width 10 %',
  '9 readings, scatter 0.3 dB, lopsided, rim 10 dB down, width 10 %, outliers 10 %',
  '9 readings, scatter 0.1 dB, lopsided, feed in front, width 10 %',
  '9 readings, scatter 0.2 dB, even, rim 10 dB down, width 10 %, drift 1 dB, timed',
])('%s', (name) => {
  const index = cells.findIndex((cell) => cell.name === name);
  const row = kept.fit[index];
  const cell = cells[index];
  if (row === undefined || cell === undefined) throw new Error(`no cell ${name}`);
  const count = runs(1000);
  const result = simulateCell(cell, count, 5000 + index);
  expect(fits(result.peaks * count, count, row.peakPercent)).toBe(true);
  expect(fits(result.assured * count, count, row.assuredPercent)).toBe(true);
  const assured = Math.round(result.assured * count);
  const { assuredCoverage } = result;
  if (assuredCoverage === null || row.assuredCoveragePercent === null) throw new Error('too few');
  expect(fits(assuredCoverage * assured, assured, row.assuredCoveragePercent)).toBe(true);
});

test.each(['width 10 %', 'width 15 %', 'play of a tenth of the beamwidth'])(
  'searches: %s',
  (name) => {
    const row = kept.searches.find(({ setting }) => setting === name);
    const setting = SEARCHES.find(([other]) => other === name)?.[1];
    if (row === undefined || setting === undefined) throw new Error(`no search ${name}`);
    const count = runs(500);
    const result = simulateSearches(setting, count, 77);
    expect(fits(result.done * count, count, row.donePercent)).toBe(true);
    const done = Math.round(result.done * count);
    expect(fits(result.beyondBound * done, done, row.beyondBoundPercent)).toBe(true);
    // Searches end after four readings or, in doubt of the width, six: with 15 % about half of them do, and the median is either.
    expect(Math.abs(result.medianReadings - row.medianReadings)).toBeLessThanOrEqual(2);
  },
);
