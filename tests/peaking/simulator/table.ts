/** The coverage table of the fit and of the searches: one row for each cell, rounded as it is kept. */

import { type Cell, simulateCell } from './cells.js';
import { type SearchSetting, simulateSearches } from './searches.js';

/** One row of the kept table; shares in percent with one decimal. */
export interface CoverageRow {
  readonly cell: string;
  readonly peakPercent: number;
  readonly assuredPercent: number;
  readonly assuredCoveragePercent: number | null;
  readonly otherCoveragePercent: number | null;
  readonly lossBoundPercent: number;
}

export interface SearchRow {
  readonly setting: string;
  readonly donePercent: number;
  readonly beyondBoundPercent: number;
  readonly medianReadings: number;
}

const percent = (share: number) => Math.round(1000 * share) / 10;

/** Runs of one pass over the table; passes add up. */
export const PASS_RUNS = 100;

/** Counts of one cell over some runs. */
interface CellCounts {
  readonly runs: number;
  readonly peaks: number;
  readonly assured: number;
  readonly assuredHeld: number;
  readonly other: number;
  readonly otherHeld: number;
  readonly bounded: number;
}

/** Counts of one pass over a cell. */
export function cellPass(cell: Cell, index: number, pass: number): CellCounts {
  const result = simulateCell(cell, PASS_RUNS, index + 1 + 10_000 * pass);
  const count = (share: number | null, of: number) => Math.round((share ?? 0) * of);
  const peaks = count(result.peaks, PASS_RUNS);
  return {
    runs: PASS_RUNS,
    peaks,
    assured: count(result.assured, PASS_RUNS),
    assuredHeld: result.held.assured,
    other: count(result.notAssured, PASS_RUNS),
    otherHeld: result.held.notAssured,
    bounded: count(result.lossBound, peaks),
  };
}

/** The row of a cell from the counts of its passes. */
export function coverageRow(cell: Cell, passes: readonly CellCounts[]): CoverageRow {
  const sum = (key: keyof CellCounts) => passes.reduce((total, pass) => total + pass[key], 0);
  const runs = sum('runs');
  const orNull = (part: number, whole: number) =>
    whole < Math.max(20, runs / 50) ? null : percent(part / whole);
  return {
    cell: cell.name,
    peakPercent: percent(sum('peaks') / runs),
    assuredPercent: percent(sum('assured') / runs),
    assuredCoveragePercent: orNull(sum('assuredHeld'), sum('assured')),
    otherCoveragePercent: orNull(sum('otherHeld'), sum('other')),
    lossBoundPercent: percent(sum('bounded') / Math.max(1, sum('peaks'))),
  };
}

/** Whether the usefulness floor is asked of a cell: nine readings or more, evenly within 0.75 of the beamwidth. */
export function floorAsked(cell: Cell): boolean {
  return cell.readings >= 9 && cell.from === -0.75 && cell.to === 0.75;
}

const ORDINARY: SearchSetting = {
  lobe: 'rim 10 dB down',
  standardDeviationDb: 0.3,
  widthError: 0.1,
};

/** The settings of the searches. */
export const SEARCHES: readonly (readonly [string, SearchSetting])[] = [
  ['width 5 %', { ...ORDINARY, widthError: 0.05 }],
  ['width 10 %', ORDINARY],
  ['width 15 %', { ...ORDINARY, widthError: 0.15 }],
  ['scatter 0.1 dB', { ...ORDINARY, standardDeviationDb: 0.1 }],
  ['scatter 0.5 dB', { ...ORDINARY, standardDeviationDb: 0.5 }],
  ['step 0.5 dB', { ...ORDINARY, stepDb: 0.5 }],
  ['scatter not told', { ...ORDINARY, scatterTold: false }],
  ['play of a tenth of the beamwidth', { ...ORDINARY, play: 0.1 }],
  ['play of a fifth, scatter 0.1 dB', { ...ORDINARY, play: 0.2, standardDeviationDb: 0.1 }],
  ['start within one beamwidth', { ...ORDINARY, startWithin: 1 }],
  ['start on a side lobe', { ...ORDINARY, startAt: 1.65 }],
  ['outliers 10 %', { ...ORDINARY, outliers: 0.1 }],
  ['rim 6 dB down, width 15 %', { ...ORDINARY, lobe: 'rim 6 dB down', widthError: 0.15 }],
  ['feed in front, width 15 %', { ...ORDINARY, lobe: 'feed in front', widthError: 0.15 }],
  ['uneven surface, width 15 %', { ...ORDINARY, lobe: 'uneven surface', widthError: 0.15 }],
];

/** Counts of one pass over a setting of the search. */
export function searchPass(setting: SearchSetting, index: number, pass: number) {
  const { done, beyondBound, readings } = simulateSearches(
    setting,
    PASS_RUNS,
    1000 + index + 10_000 * pass,
  );
  const ended = Math.round(done * PASS_RUNS);
  return { runs: PASS_RUNS, ended, beyond: Math.round(beyondBound * ended), readings };
}

/** The row of a setting from its passes. */
export function searchRow(
  name: string,
  passes: readonly ReturnType<typeof searchPass>[],
): SearchRow {
  const sum = (of: (pass: (typeof passes)[number]) => number) =>
    passes.reduce((total, pass) => total + of(pass), 0);
  const readings = passes.flatMap((pass) => pass.readings).sort((a, b) => a - b);
  return {
    setting: name,
    donePercent: percent(sum(({ ended }) => ended) / sum(({ runs }) => runs)),
    beyondBoundPercent: percent(
      sum(({ beyond }) => beyond) /
        Math.max(
          1,
          sum(({ ended }) => ended),
        ),
    ),
    medianReadings: readings[Math.floor(readings.length / 2)] as number,
  };
}
