/** An installer's own formula against the exact function over a region: how wrong, where, and where it breaks. */

import { DomainError, inRange, positive } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import {
  type ComparedGrid,
  type Comparison,
  comparedGrid,
  errorAt,
  named,
  type Tally,
} from './comparedGrid.js';
import { type CompiledFormula, compileFormula, type FormulaValues } from './expression.js';
import type { FormulaSubject } from './subject.js';
import { FORMULA_SUBJECT_KEYS } from './subject.js';
import { formulaSubject } from './subjects.js';
import { climb, gridOf, rowOf, type Side } from './sweep.js';

/** What {@link tryFormula} is asked. */
export interface FormulaTrial {
  /** Name of a subject (see `FORMULA_SUBJECTS`), or a subject of your own. */
  readonly subject: string | FormulaSubject;
  /** The formula: a typed expression in the variables' names or symbols, or a function of their values. */
  readonly formula: string | CompiledFormula;
  /** Region by full name or symbol: `[from, to]`, or one value to hold; the subject's own region by default. */
  readonly region?: Readonly<Record<string, number | readonly [number, number]>>;
  /** Tolerance in the unit of the answer, above 0; the subject's usual one by default. */
  readonly tolerance?: number;
}

const FORMULA_TRIAL_KEYS = {
  subject: true,
  formula: true,
  region: true,
  tolerance: true,
} satisfies Keys<FormulaTrial>;

/** Agreement in a part of the region. */
export interface AreaAgreement {
  /** Name of the part. */
  readonly area: string;
  /** Places compared in it. */
  readonly places: number;
  /** Largest error found there, in the unit of the answer. */
  readonly largestError: number;
  /** Share of places within the tolerance, 0 to 1. */
  readonly withinToleranceRatio: number;
  /** Places where the formula has no value. */
  readonly brokenPlaces: number;
}

/** Outcome of a trial. */
export interface FormulaVerdict {
  /** `holds` within tolerance everywhere; `holds-in-part`; `fails` nearly everywhere (under 5 % within). */
  readonly kind: 'holds' | 'holds-in-part' | 'fails';
  /** Name of the subject and unit of its answer. */
  readonly subject: string;
  readonly unit: string;
  /** Tolerance used. */
  readonly tolerance: number;
  /** Places compared: those where the exact function has an answer and the formula has one too. */
  readonly places: number;
  /** Largest error found, with its place, the formula's and the exact answer; `null` where nothing could be compared. */
  readonly worst: {
    readonly error: number;
    readonly values: FormulaValues;
    readonly formula: number;
    readonly exact: number;
  } | null;
  /** Root mean square error over the grid. */
  readonly rootMeanSquare: number;
  /** Share of grid places within the tolerance, 0 to 1; a place where the formula has no value counts as outside. */
  readonly withinToleranceRatio: number;
  /** Places where the formula has no value though there is an answer, and the first of them. */
  readonly brokenPlaces: number;
  readonly firstBroken: FormulaValues | null;
  /** Agreement by named parts of the region. */
  readonly areas: readonly AreaAgreement[];
  /** Map of the error over the first two sides that vary (largest over the others); `null` for fewer. */
  readonly map: {
    readonly x: string;
    readonly y: string;
    readonly xValues: readonly number[];
    readonly yValues: readonly number[];
    /** Rows by y, columns by x; `null` where there is no answer or the formula has no value. */
    readonly errors: readonly (readonly (number | null)[])[];
  } | null;
}

function sidesOf(subject: FormulaSubject, region: FormulaTrial['region']): Side[] {
  const given = region ?? {};
  for (const key of Object.keys(given))
    if (!subject.variables.some(({ name, symbol }) => key === name || key === symbol))
      throw new DomainError({
        code: 'not-an-option',
        parameter: `region.${key}`,
        received: given[key],
        allowed: `a side among ${subject.variables.map(({ name }) => name).join(', ')}`,
      });
  return subject.variables.map((variable) => {
    const { name, symbol, from, to, least, most } = variable;
    const side = given[name] ?? given[symbol] ?? [from, to];
    const [low, high] = typeof side === 'number' ? [side, side] : side;
    const start = inRange(`region.${name}[0]`, low, least, most);
    const end = inRange(`region.${name}[1]`, high, least, most);
    if (end < start)
      throw new DomainError({
        code: 'inconsistent',
        parameter: `region.${name}`,
        received: low,
        allowed: `from low to high (${high} follows)`,
        slip: 'were the ends swapped?',
      });
    return { variable, from: start, to: end };
  });
}

/**
 * Tries a formula against the exact function of the library over a region.
 *
 * A grid of about ten thousand places is compared, then the worst place is sought from the 24 worst of the grid.
 *
 * @returns Largest error and its place, root mean square, share within the tolerance, where the formula
 *   has no value, agreement by named parts (hemispheres, equator, low elevation) and a map of the error.
 * @throws {@link DomainError} `malformed` for a formula that is not arithmetic; names bad sides of the region.
 *
 * Source: own search. Accuracy: the largest error of a formula that is smooth between grid places is found
 * within 1 %.
 * @example
 * ```ts
 * import { tryFormula } from 'slantpath/teaching';
 * const verdict = tryFormula({
 *   subject: 'skew',
 *   formula: 'atan(-sin(dlon) / tan(lat))',
 *   region: { lat: [30, 60], dlon: [-40, 40] },
 * });
 * verdict.kind; // => 'holds'
 * verdict.worst?.error.toFixed(2); // => '0.26'
 * ```
 */
export function tryFormula(trial: FormulaTrial): FormulaVerdict {
  const {
    subject: wanted,
    formula,
    region,
    tolerance: givenTolerance,
  } = known('trial', trial, FORMULA_TRIAL_KEYS);
  const subject =
    typeof wanted === 'string'
      ? formulaSubject(wanted)
      : known('subject', wanted, FORMULA_SUBJECT_KEYS);
  const tolerance = positive('tolerance', givenTolerance ?? subject.usualTolerance);
  const sides = sidesOf(subject, region);
  const names = subject.variables.flatMap(({ name, symbol }) => [name, symbol]);
  const compiled = typeof formula === 'function' ? formula : compileFormula(formula, names);
  const comparison = { subject, sides, formula: compiled, tolerance };
  const grid = gridOf(sides);
  const { all, areas, starts, firstBroken, map } = comparedGrid(comparison, grid);
  const worst = worstOf(comparison, grid, starts);
  const total = all.places + all.broken;
  const ratio = total === 0 ? 0 : all.within / total;
  return {
    kind:
      total > 0 && all.broken === 0 && (worst?.error ?? 0) <= tolerance
        ? 'holds'
        : ratio < 0.05
          ? 'fails'
          : 'holds-in-part',
    subject: subject.name,
    unit: subject.unit,
    tolerance,
    places: all.places,
    worst,
    rootMeanSquare: all.places === 0 ? 0 : Math.sqrt(all.squares / all.places),
    withinToleranceRatio: ratio,
    brokenPlaces: all.broken,
    firstBroken,
    areas: subject.areas.flatMap(({ name }, index) => agreement(name, areas[index])),
    map: map && {
      x: sides[map.xSide]?.variable.name ?? '',
      y: sides[map.ySide]?.variable.name ?? '',
      xValues: grid[map.xSide] ?? [],
      yValues: grid[map.ySide] ?? [],
      errors: map.errors,
    },
  };
}

/** Agreement in an area; none where the area has no place in the region. */
function agreement(area: string, tally: Tally | undefined): readonly AreaAgreement[] {
  const { places, largest, within, broken } = tally ?? {
    places: 0,
    largest: 0,
    within: 0,
    broken: 0,
  };
  const count = places + broken;
  if (count === 0) return [];
  return [
    {
      area,
      places,
      largestError: largest,
      withinToleranceRatio: within / count,
      brokenPlaces: broken,
    },
  ];
}

/** The worst place between those of the grid: a climb from each start, the highest of them. */
function worstOf(
  comparison: Comparison,
  grid: readonly (readonly number[])[],
  starts: ComparedGrid['starts'],
): FormulaVerdict['worst'] {
  const { subject, sides, formula } = comparison;
  const steps = sides.map(
    ({ from, to }, i) => (to - from) / Math.max(1, (grid[i]?.length ?? 1) - 1),
  );
  // A place without an error to compare lies below every hill, so the climb turns back there.
  const height = (place: readonly number[]): number => {
    const error = errorAt(comparison, rowOf(sides, place));
    return typeof error === 'number' ? error : -1;
  };
  const peaks = starts.map(({ place }) => climb(sides, place, height, steps));
  const peak = peaks.reduce<(typeof peaks)[number] | null>(
    (a, b) => (a === null || b.height > a.height ? b : a),
    null,
  );
  if (peak === null) return null;
  const row = rowOf(sides, peak.place);
  return {
    error: peak.height,
    values: named(sides, peak.place),
    formula: formula(row),
    exact: subject.exact(row) ?? Number.NaN,
  };
}
