/** The coverage table of the fit and of the searches: one row for each cell, rounded as it is kept. */

import { allCells, type Cell, simulateCell } from './cells.js';
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

function coverageRow(cell: Cell, runs: number, seed: number): CoverageRow {
  const result = simulateCell(cell, runs, seed);
  const orNull = (share: number | null) => (share === null ? null : percent(share));
  return {
    cell: cell.name,
    peakPercent: percent(result.peaks),
    assuredPercent: percent(result.assured),
    assuredCoveragePercent: orNull(result.assuredCoverage),
    otherCoveragePercent: orNull(result.notAssuredCoverage),
    lossBoundPercent: percent(result.lossBound),
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

function searchRow(name: string, setting: SearchSetting, runs: number, seed: number): SearchRow {
  const figures = simulateSearches(setting, runs, seed);
  return {
    setting: name,
    donePercent: percent(figures.done),
    beyondBoundPercent: percent(figures.beyondBound),
    medianReadings: figures.medianReadings,
  };
}

/** The whole table; `part` of `parts` of it where it is made in pieces. */
export function coverageTable(runs: number, part = 0, parts = 1) {
  const mine = (_: unknown, index: number) => index % parts === part;
  return {
    runs,
    fit: allCells()
      .map((cell, index) => ({ cell, seed: index + 1 }))
      .filter(mine)
      .map(({ cell, seed }) => coverageRow(cell, runs, seed)),
    searches: SEARCHES.map(([name, setting], index) => ({ name, setting, seed: 1000 + index }))
      .filter(mine)
      .map(({ name, setting, seed }) => searchRow(name, setting, runs, seed)),
  };
}
