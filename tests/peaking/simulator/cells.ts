/** Cells of the coverage table: readings on real lobes, and how often the stated interval and bound hold. */

import { fitPeak, type PeakFit } from '../../../src/peaking/index.js';
import { generator, LOBES, type LobeName, normals } from './aperture.js';
import { type AnyLobe, anyLobe } from './lobes.js';
import { IN_TABLE } from './wavefront.js';

/** One cell. Places are in true half-power beamwidths from where the peak was expected. */
export interface Cell {
  readonly name: string;
  readonly lobe: AnyLobe;
  readonly readings: number;
  readonly standardDeviationDb: number;
  readonly stepDb: number;
  readonly from: number;
  readonly to: number;
  /** Standard deviation of the given beamwidth, relative; `null` where no beamwidth is given. */
  readonly widthError: number | null;
  /** Probability of each reading to be off by 1 to 6 dB. */
  readonly outliers: number;
  /** Drift over the whole set in dB. */
  readonly driftDb: number;
  /** Whether times are given; the places are then read in mixed order. */
  readonly timed: boolean;
  /** Whether the scatter is told to the fit. */
  readonly scatterTold: boolean;
}

/** What a cell comes to. */
export interface CellResult {
  readonly runs: number;
  /** Share of the runs that gave a peak. */
  readonly peaks: number;
  /** Share of the runs with a peak whose coverage is assured. */
  readonly assured: number;
  /** Coverage of the intervals with an assured label; `null` where there are too few. */
  readonly assuredCoverage: number | null;
  readonly nominalCoverage: number | null;
  readonly atLeastCoverage: number | null;
  readonly notAssuredCoverage: number | null;
  /** Intervals that held the peak, by label. */
  readonly held: { readonly assured: number; readonly notAssured: number };
  readonly nominal: number;
  readonly atLeast: number;
  readonly notAssured: number;
  /** Share of all peaks whose loss after the move keeps below its bound. */
  readonly lossBound: number;
  /** Root mean square error of the place in beamwidths. */
  readonly rmsError: number;
  /** Mean half width of the interval in beamwidths. */
  readonly halfInterval: number;
  readonly kinds: Readonly<Record<string, number>>;
}

export function simulateCell(
  cell: Cell,
  runs: number,
  seed: number,
  fitOf: (samples: Parameters<typeof fitPeak>[0]) => PeakFit = fitPeak,
): CellResult {
  const lobe = anyLobe(cell.lobe);
  const next = generator(seed);
  const normal = normals(next);
  const n = cell.readings;
  const kinds: Record<string, number> = {};
  const count = { nominal: 0, 'at-least': 0, 'not-assured': 0 };
  const held = { nominal: 0, 'at-least': 0, 'not-assured': 0 };
  let bounded = 0;
  let square = 0;
  let half = 0;
  for (let run = 0; run < runs; run++) {
    const peak = 0.2 * (next() - 0.5);
    const top = -40 + next();
    const believed = cell.widthError === null ? 1 : Math.max(0.4, 1 + cell.widthError * normal());
    const places = Array.from(
      { length: n },
      (_, i) => cell.from + ((cell.to - cell.from) * i) / (n - 1),
    );
    const order = cell.timed
      ? places.map((_, i) => (i * (n % 4 === 0 ? 3 : n % 7 === 0 ? 4 : 7)) % n)
      : places.map((_, i) => i);
    const positionDeg = order.map((i) => places[i] as number);
    const levelDbm = positionDeg.map((x, i) => {
      let level =
        top + lobe(x - peak) + (cell.driftDb * i) / (n - 1) + cell.standardDeviationDb * normal();
      if (next() < cell.outliers) level += (next() < 0.2 ? 1 : -1) * (1 + 5 * next());
      return cell.stepDb > 0 ? cell.stepDb * Math.round(level / cell.stepDb) : level;
    });
    const fit = fitOf({
      positionDeg,
      levelDbm,
      levelStepDb: cell.stepDb,
      ...(cell.widthError === null ? {} : { beamwidthDeg: believed }),
      ...(cell.timed ? { timeS: positionDeg.map((_, i) => 5 * i) } : {}),
      ...(cell.scatterTold ? { standardDeviationDb: cell.standardDeviationDb } : {}),
    });
    kinds[fit.kind] = (kinds[fit.kind] ?? 0) + 1;
    if (fit.kind !== 'peak') continue;
    const holds = fit.interval95Deg[0] <= peak && peak <= fit.interval95Deg[1];
    count[fit.coverage]++;
    if (holds) held[fit.coverage]++;
    if (-lobe(fit.positionDeg - peak) <= fit.lossAtPeakUpper95Db) bounded++;
    square += (fit.positionDeg - peak) ** 2;
    half += (fit.interval95Deg[1] - fit.interval95Deg[0]) / 2;
  }
  const found = kinds['peak'] ?? 0;
  const share = (part: number, whole: number) =>
    whole < Math.max(20, runs / 50) ? null : part / whole;
  const assured = count.nominal + count['at-least'];
  return {
    runs,
    peaks: found / runs,
    assured: assured / runs,
    assuredCoverage: share(held.nominal + held['at-least'], assured),
    nominalCoverage: share(held.nominal, count.nominal),
    atLeastCoverage: share(held['at-least'], count['at-least']),
    notAssuredCoverage: share(held['not-assured'], count['not-assured']),
    held: { assured: held.nominal + held['at-least'], notAssured: held['not-assured'] },
    nominal: count.nominal / runs,
    atLeast: count['at-least'] / runs,
    notAssured: count['not-assured'] / runs,
    lossBound: bounded / Math.max(1, found),
    rmsError: Math.sqrt(square / Math.max(1, found)),
    halfInterval: half / Math.max(1, found),
    kinds,
  };
}

const ORDINARY: Cell = {
  name: '',
  lobe: 'rim 10 dB down',
  readings: 9,
  standardDeviationDb: 0.2,
  stepDb: 0,
  from: -0.75,
  to: 0.75,
  widthError: 0.1,
  outliers: 0,
  driftDb: 0,
  timed: false,
  scatterTold: false,
};

const SPANS = {
  even: [-0.75, 0.75],
  short: [-0.5, 0.5],
  lopsided: [-0.9, 0.5],
  'one-sided': [-1, 0.3],
  'far flank': [-0.4, 1],
} as const;

/** All cells: each quantity in turn against readings and spans, and the combinations that are hardest. */
export function allCells(): readonly Cell[] {
  const cells: Cell[] = [];
  const add = (more: Partial<Cell>, span: keyof typeof SPANS = 'even') => {
    const [from, to] = SPANS[span];
    const cell = { ...ORDINARY, from, to, ...more };
    const name = [
      `${cell.readings} readings`,
      `scatter ${cell.standardDeviationDb} dB`,
      ...(cell.stepDb > 0 ? [`step ${cell.stepDb} dB`] : []),
      span,
      cell.lobe,
      cell.widthError === null ? 'width not given' : `width ${Math.round(100 * cell.widthError)} %`,
      ...(cell.outliers > 0 ? [`outliers ${Math.round(100 * cell.outliers)} %`] : []),
      ...(cell.driftDb !== 0 ? [`drift ${cell.driftDb} dB${cell.timed ? ', timed' : ''}`] : []),
      ...(cell.scatterTold ? ['scatter told'] : []),
    ].join(', ');
    cells.push({ ...cell, name });
  };
  for (const readings of [5, 9, 25]) {
    for (const widthError of [0.05, 0.15])
      for (const span of ['even', 'short', 'lopsided', 'one-sided', 'far flank'] as const)
        add({ readings, widthError }, span);
    for (const span of ['even', 'lopsided'] as const) {
      add({ readings, widthError: null }, span);
      for (const standardDeviationDb of [0.1, 0.3])
        add({ readings, standardDeviationDb, scatterTold: true }, span);
    }
  }
  for (const readings of [5, 9, 15, 25])
    for (const standardDeviationDb of [0.05, 0.1, 0.3])
      for (const span of ['even', 'lopsided', 'one-sided'] as const)
        add({ readings, standardDeviationDb }, span);
  for (const readings of [5, 6, 9, 15])
    for (const stepDb of [0.1, 0.5, 1])
      for (const standardDeviationDb of [0.05, 0.3]) {
        add({ readings, stepDb, standardDeviationDb });
        if (stepDb === 0.5) add({ readings, stepDb, standardDeviationDb }, 'lopsided');
      }
  for (const lobe of Object.keys(LOBES) as LobeName[])
    for (const readings of [9, 25])
      for (const span of ['even', 'lopsided'] as const)
        if (lobe !== ORDINARY.lobe) add({ readings, lobe, standardDeviationDb: 0.1 }, span);
  for (const lobe of IN_TABLE)
    for (const span of ['even', 'lopsided'] as const) {
      for (const standardDeviationDb of [0.1, 0.3])
        add({ readings: 9, lobe, standardDeviationDb }, span);
      add({ readings: 25, lobe, standardDeviationDb: 0.1 }, span);
    }
  for (const readings of [5, 6, 7, 9, 15, 25]) {
    for (const standardDeviationDb of [0.1, 0.3])
      add({ readings, standardDeviationDb, outliers: 0.1 });
    add({ readings, standardDeviationDb: 0.3, outliers: 0.1 }, 'lopsided');
    add({ readings, standardDeviationDb: 0.3, outliers: 0.1, scatterTold: true });
    if (readings > 7) add({ readings, standardDeviationDb: 0.3, outliers: 0.1, widthError: null });
  }
  for (const readings of [9, 25]) {
    add({ readings, driftDb: 0.2 }, 'lopsided');
    add({ readings, driftDb: 1, timed: true });
    add({ readings, driftDb: 1, timed: true }, 'lopsided');
    add({ readings, driftDb: 1, timed: true, outliers: 0.1 });
    const hard = {
      readings,
      standardDeviationDb: 0.3,
      stepDb: 0.5,
      outliers: 0.1,
      widthError: 0.15,
    };
    add({ ...hard, lobe: 'feed in front', driftDb: 0.2 }, 'lopsided');
    add({ ...hard, lobe: 'uneven surface', driftDb: 0.2 });
  }
  return cells;
}
