/** Which readings may not belong to the lobe: all likely answers with their probabilities, not one verdict. */

import { logGamma } from '../../numeric/beta.js';
import { denseAt, valueAt } from '../../numeric/columns.js';
import { freeQuantities, type LobeProblem, type LobeSolution } from './lobeModel.js';
import {
  definiteFactor,
  definiteInverse,
  definiteSolution,
  logDeterminant,
} from './normalEquations.js';

/** One answer: the readings left out, and how likely it is. */
export interface ForeignReadings {
  /** Indices in rising order. */
  readonly leftOut: readonly number[];
  readonly probability: number;
}

/** Scatter of a reading as far as it is known. */
export interface ScatterBasis {
  /** Variance in dB^2 where it is exactly known, rounding included. */
  readonly stated: number | undefined;
  /** What a stated scatter is worth otherwise: as many readings to spare, with this sum of squares in dB^2. */
  readonly before: { readonly readings: number; readonly square: number };
  /** Least variance in dB^2 that rounding and display leave. */
  readonly least: number;
}

/** Probability that one reading is foreign: a gust, a passer-by, a slip of the pen. */
const FOREIGN = 0.05;
/** Range in dB over which a foreign reading may lie anywhere. */
const FOREIGN_RANGE_DB = 10;
/** What is known of an unstated scatter when readings are judged: as good as one reading to spare that says 0.1 dB. */
const SCATTER_BEFORE = { readings: 1, square: 0.01 };
/** Answers followed at each number of readings left out. */
const FOLLOWED = 5;
/** Answers less likely than this share of the best are dropped. */
const LEAST_SHARE = 0.03;
const MOST_ANSWERS = 6;

interface Node {
  readonly leftOut: readonly number[];
  readonly logEvidence: number;
}

/**
 * Answers in falling probability, at least one; their probabilities add up to 1.
 *
 * Each subset is weighed by Bayes' rule with the lobe's quantities (and an unknown scatter) integrated out, on the lobe's
 * tangent at `solution`. Subsets grow by one reading at a time from the best few; leaving out one reading changes sum
 * of squares and determinant in closed form (R. D. Cook and S. Weisberg, Residuals and Influence in Regression, ch. 2).
 *
 * @param usable  1 for a reading that may count at all.
 */
export function foreignReadings(
  problem: LobeProblem,
  solution: LobeSolution,
  usable: Float64Array,
  basis: ScatterBasis,
): readonly ForeignReadings[] {
  const n = problem.places.length;
  const free = freeQuantities(problem);
  let count = 0;
  for (let i = 0; i < n; i++) if (denseAt(usable, i) > 0) count++;
  const before = basis.before.readings > 0 ? basis.before : SCATTER_BEFORE;
  const told = basis.stated !== undefined || basis.before.readings > 0;
  const most = Math.min(Math.floor(count / 3), count - free - (told ? 1 : 2));
  if (most < 1) return [{ leftOut: [], probability: 1 }];
  const odds = Math.log(FOREIGN / (1 - FOREIGN) / FOREIGN_RANGE_DB);
  const evidence = (removed: number, square: number, logDeterminant: number) => {
    const kept = count - removed;
    const constant = removed * odds - logDeterminant / 2;
    if (basis.stated !== undefined)
      return (
        constant - (kept / 2) * Math.log(2 * Math.PI * basis.stated) - square / (2 * basis.stated)
      );
    const spare = kept - free;
    const pooled = (spare + before.readings) / 2;
    return (
      constant -
      pooled * Math.log(square + spare * basis.least + before.square) +
      logGamma(pooled) -
      (kept / 2) * Math.log(Math.PI)
    );
  };
  const root = tangentFit(solution, usable, []);
  if (root === undefined) return [{ leftOut: [], probability: 1 }];
  const whole = evidence(0, root.square, root.logDeterminant);
  const answers: Node[] = [{ leftOut: [], logEvidence: whole }];
  const seen = new Set<string>();
  let level: Node[] = answers.slice();
  let best = whole;
  for (let removed = 1; removed <= most; removed++) {
    const children: Node[] = [];
    for (const node of level) {
      const fit = removed === 1 ? root : tangentFit(solution, usable, node.leftOut);
      if (fit === undefined) continue;
      for (let i = 0; i < n; i++) {
        const rest = 1 - denseAt(fit.leverages, i);
        if (denseAt(usable, i) === 0 || node.leftOut.includes(i) || !(rest > 1e-6)) continue;
        const leftOut = [...node.leftOut, i].sort((a, b) => a - b);
        if (removed > 1) {
          const key = leftOut.join();
          if (seen.has(key)) continue;
          seen.add(key);
        }
        const square = Math.max(0, fit.square - denseAt(fit.residuals, i) ** 2 / rest);
        children.push({
          leftOut,
          logEvidence: evidence(removed, square, fit.logDeterminant + Math.log(rest)),
        });
      }
    }
    children.sort((a, b) => b.logEvidence - a.logEvidence);
    const top = children[0]?.logEvidence ?? Number.NEGATIVE_INFINITY;
    // One reading may hide another, so a level is given up only well below the best.
    if (top < best - (removed === 1 ? 5 : 9)) break;
    best = Math.max(best, top);
    answers.push(...children.slice(0, 2 * FOLLOWED));
    level = children.slice(0, FOLLOWED);
  }
  const likely = answers
    .sort((a, b) => b.logEvidence - a.logEvidence)
    .filter(({ logEvidence }) => logEvidence > best + Math.log(LEAST_SHARE))
    .slice(0, MOST_ANSWERS);
  const shares = likely.map(({ logEvidence }) => Math.exp(logEvidence - best));
  const sum = shares.reduce((a, b) => a + b, 0);
  return likely.map(({ leftOut }, i) => ({ leftOut, probability: valueAt(shares, i) / sum }));
}

/** Fit on the tangent at a solution, without some readings; `undefined` where the rest does not determine it. */
function tangentFit(
  { active, slopes, residuals, priorWeights, priorPulls, penalty }: LobeSolution,
  usable: Float64Array,
  leftOut: readonly number[],
) {
  const n = residuals.length;
  const m = active.length;
  const normal = new Float64Array(m * m);
  const right = Float64Array.from(priorPulls);
  let square = penalty;
  for (let j = 0; j < m; j++) normal[j * m + j] = denseAt(priorWeights, j);
  for (let i = 0; i < n; i++) {
    if (denseAt(usable, i) === 0 || leftOut.includes(i)) continue;
    const residual = denseAt(residuals, i);
    square += residual * residual;
    for (let j = 0; j < m; j++) {
      const slope = denseAt(slopes, i * m + j);
      right[j] = denseAt(right, j) + slope * residual;
      for (let k = 0; k < m; k++)
        normal[j * m + k] = denseAt(normal, j * m + k) + slope * denseAt(slopes, i * m + k);
    }
  }
  const factor = definiteFactor(normal, m);
  if (factor === undefined) return undefined;
  const inverse = definiteInverse(factor);
  const step = definiteSolution(factor, right);
  for (let j = 0; j < m; j++) square -= denseAt(step, j) * denseAt(right, j);
  const left = new Float64Array(n);
  const leverages = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let residual = denseAt(residuals, i);
    let leverage = 0;
    for (let j = 0; j < m; j++) {
      residual -= denseAt(slopes, i * m + j) * denseAt(step, j);
      for (let k = 0; k < m; k++)
        leverage +=
          denseAt(slopes, i * m + j) * denseAt(inverse, j * m + k) * denseAt(slopes, i * m + k);
    }
    left[i] = residual;
    leverages[i] = leverage;
  }
  return {
    square: Math.max(0, square),
    logDeterminant: logDeterminant(factor),
    residuals: left,
    leverages,
  };
}
