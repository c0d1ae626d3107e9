/** An installer's own formula against the exact function over a region: how wrong, where, where it breaks, and what is wrong with it. */

import { DomainError, inRange, list, positive } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { treeColumn } from '../formula/columns.js';
import { compileTree } from '../formula/expression.js';
import type { CompiledFormula, FormulaValues } from '../formula/functions.js';
import { type ReadFormula, readFormula, subjectNames } from '../formula/readFormula.js';
import type { FormulaRemark } from '../formula/remarks.js';
import type { FormulaSubject } from '../formula/subject.js';
import { FORMULA_SUBJECT_KEYS } from '../formula/subject.js';
import { FORMULA_SUBJECTS, formulaSubject } from '../formula/subjects.js';
import { type ComparedGrid, comparedGrid, distance, named, type Tally } from './comparedGrid.js';
import { diagnoses, type FormulaDiagnosis } from './diagnosis.js';
import { keptPlaces, type Places, placesOf } from './places.js';
import { climb, rowOf, type Side } from './sweep.js';

/** What {@link tryFormula} is asked. */
export interface FormulaTrial {
  /** Name of a subject (see `FORMULA_SUBJECTS`), or a subject of your own. */
  readonly subject: string | FormulaSubject;
  /** The formula: a typed expression in the variables' names or symbols, or a function of their values. */
  readonly formula: string | CompiledFormula;
  /** What names of the formula stand for, as a number or an expression: `{ A1: 'lat', k: '0.151' }`; none by default. */
  readonly legend?: Readonly<Record<string, string>>;
  /** Region by full name or symbol: `[from, to]`, or one value to hold; the subject's own region by default. */
  readonly region?: Readonly<Record<string, number | readonly [number, number]>>;
  /** Tolerance in the unit of the answer, above 0; the subject's usual one by default. */
  readonly tolerance?: number;
}

const FORMULA_TRIAL_KEYS = {
  subject: true,
  formula: true,
  legend: true,
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
  /**
   * `holds` within tolerance everywhere; `holds-in-part`, right in a named part or at some places; `holds-once-corrected`,
   * right but for the fault that `diagnoses` names; `fails` nearly everywhere (under 5 % within) for no reason that is known.
   */
  readonly kind: 'holds' | 'holds-in-part' | 'holds-once-corrected' | 'fails';
  /** The formula as it was read, in the library's notation; `null` for a function. */
  readonly read: string | null;
  /** What had to be decided in reading it. */
  readonly remarks: readonly FormulaRemark[];
  /** What is wrong with it: none where it holds or no usual fault explains it. */
  readonly diagnoses: readonly FormulaDiagnosis[];
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
        allowed: `one of ${subject.variables.map(({ name }) => name).join(', ')}`,
      });
  return subject.variables.map((variable) => {
    const { name, symbol, from, to, least, most } = variable;
    const side = given[name] ?? given[symbol] ?? [from, to];
    const [low = Number.NaN, high = Number.NaN] =
      typeof side === 'number' ? [side, side] : [...list(`region.${name}`, side)];
    const start = inRange(`region.${name}[0]`, low, least, most);
    const end = inRange(`region.${name}[1]`, high, least, most);
    if (end < start)
      throw new DomainError({
        code: 'inconsistent',
        parameter: `region.${name}`,
        received: low,
        allowed: `the smaller number first (${high} comes second)`,
        slip: 'were the ends swapped?',
      });
    return { variable, from: start, to: end };
  });
}

/**
 * Tries a formula against the exact function of the library over a region.
 *
 * Spreadsheet, calculator, handwriting and LaTeX notation are read; `remarks` tells each decision, and where a text can be
 * read in two ways and only the second way holds, that one is taken and told. A grid of about five thousand places is compared,
 * then the worst place is sought from the highest hills of the error. What does not hold is held against the usual faults:
 * a sign, a constant, a factor, an offset, the quadrant, degrees for radians, another function, another variable or its unit.
 *
 * @returns Verdict with its diagnoses, largest error and its place, root mean square, share within the tolerance, where the
 *   formula has no value, agreement by named parts (hemispheres, equator, low elevation) and a map of the error.
 * @throws {@link DomainError} `malformed` for a formula that is not arithmetic, with the place and what is expected there; names
 *   bad sides of the region.
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
    legend,
    region,
    tolerance: givenTolerance,
  } = known('trial', trial, FORMULA_TRIAL_KEYS);
  const subject =
    typeof wanted === 'string'
      ? formulaSubject(wanted)
      : known('subject', wanted, FORMULA_SUBJECT_KEYS);
  const tolerance = positive('tolerance', givenTolerance ?? subject.usualTolerance);
  const sides = sidesOf(subject, region);
  // A subject of one's own may change its mind between two calls; the library's cannot.
  const own = FORMULA_SUBJECTS.includes(subject);
  const places = own ? keptPlaces(subject, sides) : placesOf(subject, sides);
  const from = { sides, period: subject.period, tolerance };
  if (typeof formula === 'function') {
    const grid = comparedGrid(places, functionColumn(formula, sides, places), from);
    return verdictOf({
      subject,
      tolerance,
      sides,
      places,
      grid,
      formula,
      reading: null,
      faults: [],
    });
  }
  const { reading, grid } = bestReading({ formula, legend, subject }, (tree) =>
    comparedGrid(places, treeColumn(tree, places), from),
  );
  const faults = holds(grid, tolerance) ? [] : diagnoses(reading.tree, subject, places, tolerance);
  const symbols = subject.variables.flatMap(({ name, symbol }) => [name, symbol]);
  const compiled = compileTree(reading.tree, symbols);
  return verdictOf({ subject, tolerance, sides, places, grid, formula: compiled, reading, faults });
}

/** The formula as its notation suggests; where that does not hold and another way of reading it does, that one. */
function bestReading(
  input: {
    readonly formula: string;
    readonly legend: FormulaTrial['legend'];
    readonly subject: FormulaSubject;
  },
  compare: (tree: ReadFormula['tree']) => ComparedGrid,
): { readonly reading: ReadFormula; readonly grid: ComparedGrid } {
  const { formula, legend, subject } = input;
  const names = subjectNames(subject, typeof formula === 'string' ? formula : '');
  const first = readFormula({ formula, names, legend });
  const grid = compare(first.tree);
  const ratio = (each: ComparedGrid) =>
    each.all.within / Math.max(1, each.all.places + each.all.broken);
  if (ratio(grid) === 1) return { reading: first, grid };
  for (const decisions of first.others) {
    const other = readFormula({ formula, names, legend }, decisions);
    const compared = compare(other.tree);
    if (ratio(compared) > Math.max(0.4, 1.5 * ratio(grid)))
      return { reading: other, grid: compared };
  }
  return { reading: first, grid };
}

function functionColumn(
  formula: CompiledFormula,
  sides: readonly Side[],
  places: Places,
): Float64Array {
  const columns = sides.map(({ variable }) => places.columns.get(variable.name));
  return Float64Array.from({ length: places.count }, (_, i) =>
    formula(
      rowOf(
        sides,
        columns.map((column) => column?.[i] as number),
      ),
    ),
  );
}

const holds = ({ all }: ComparedGrid, tolerance: number) =>
  all.places > 0 && all.broken === 0 && all.largest <= tolerance;

function verdictOf(from: {
  readonly subject: FormulaSubject;
  readonly tolerance: number;
  readonly sides: readonly Side[];
  readonly places: Places;
  readonly grid: ComparedGrid;
  readonly formula: CompiledFormula;
  readonly reading: ReadFormula | null;
  readonly faults: readonly FormulaDiagnosis[];
}): FormulaVerdict {
  const { subject, tolerance, sides, places, grid, reading, faults } = from;
  const { all, areas, firstBroken, map } = grid;
  const worst = worstOf(from);
  const total = all.places + all.broken;
  const ratio = total === 0 ? 0 : all.within / total;
  const right = holds(grid, tolerance) && (worst?.error ?? 0) <= tolerance;
  return {
    kind: right ? 'holds' : kindOf(ratio, faults),
    read: reading?.text ?? null,
    remarks: reading?.remarks ?? [],
    diagnoses: faults,
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
      xValues: places.grid[map.xSide] ?? [],
      yValues: places.grid[map.ySide] ?? [],
      errors: map.errors,
    },
  };
}

/** Verdict of what does not hold everywhere. */
function kindOf(ratio: number, faults: readonly FormulaDiagnosis[]): FormulaVerdict['kind'] {
  if (faults.some(({ corrected }) => corrected !== null)) return 'holds-once-corrected';
  return ratio < 0.05 && faults.length === 0 ? 'fails' : 'holds-in-part';
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

/** Halvings of the steps of each climb, and of the last one from the highest place. */
const HALVINGS = 8;
const LAST_HALVINGS = 30;

/** The worst place between those of the grid: a climb from each hill, and once more from the highest. */
function worstOf(from: {
  readonly subject: FormulaSubject;
  readonly sides: readonly Side[];
  readonly places: Places;
  readonly grid: ComparedGrid;
  readonly formula: CompiledFormula;
}): FormulaVerdict['worst'] {
  const { subject, sides, places, grid, formula } = from;
  const steps = sides.map(
    ({ from: low, to }, i) => (to - low) / Math.max(1, (places.grid[i]?.length ?? 1) - 1),
  );
  // A place without an error to compare lies below every hill, so the climb turns back there.
  const row: Record<string, number> = {
    ...rowOf(
      sides,
      places.grid.map((side) => valueAt(side, 0)),
    ),
  };
  const height = (place: readonly number[]): number => {
    sides.forEach(({ variable }, index) => {
      row[variable.name] = row[variable.symbol] = valueAt(place, index);
    });
    const exact = subject.exact(row);
    if (exact === null) return -1;
    const got = formula(row);
    return Number.isFinite(got) ? distance(got - exact, subject.period) : -1;
  };
  let best: ReturnType<typeof climb> | undefined;
  for (const start of grid.starts) {
    const peak = climb(sides, start, height, steps, HALVINGS);
    if (!best || peak.height > best.height) best = peak;
  }
  if (!best) return null;
  const fine = steps.map((step) => step / 2 ** (HALVINGS - 1));
  const peak = climb(sides, best.place, height, fine, LAST_HALVINGS);
  height(peak.place);
  return {
    error: peak.height,
    values: named(sides, peak.place),
    formula: formula(row) + 0,
    exact: subject.exact(row) ?? Number.NaN,
  };
}
