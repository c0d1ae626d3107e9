/** What a formula can be tried against: an exact function of the library with named variables. */

import type { Keys } from '../../keys.js';
import type { FormulaValues } from './functions.js';

/** A variable of a subject. */
export interface FormulaVariable {
  /** Full name with its unit: `latitudeDeg`. */
  readonly name: string;
  /** Short name that a typed formula may use instead: `lat`. */
  readonly symbol: string;
  /** What it is. */
  readonly meaning: string;
  /** Ends of the region that is tried when none is given. */
  readonly from: number;
  readonly to: number;
  /** Outermost ends that may be asked for. */
  readonly least: number;
  readonly most: number;
}

/** A part of the region that has a name in the trade. */
export interface FormulaArea {
  /** Name: `southern hemisphere`. */
  readonly name: string;
  /** Whether a place belongs to it; `exact` is the right answer there. */
  readonly contains: (values: FormulaValues, exact: number) => boolean;
}

/** A subject of formulas. */
export interface FormulaSubject {
  /** Name: `azimuth`. */
  readonly name: string;
  /** What the exact function gives. */
  readonly meaning: string;
  /** Unit of the answer. */
  readonly unit: string;
  /** Answers this far apart are equal: 360 for a bearing, 180 for a line without a head; `null` for plain numbers. */
  readonly period: 360 | 180 | null;
  /** The variables, at least one. */
  readonly variables: readonly FormulaVariable[];
  /** The exact answer; `null` where there is none (below the horizon). */
  readonly exact: (values: FormulaValues) => number | null;
  /** Named parts of the region. */
  readonly areas: readonly FormulaArea[];
  /** Tolerance in the answer's unit that practice asks for (common practice of the trade). */
  readonly usualTolerance: number;
}

export const FORMULA_SUBJECT_KEYS = {
  name: true,
  meaning: true,
  unit: true,
  period: true,
  variables: true,
  exact: true,
  areas: true,
  usualTolerance: true,
} satisfies Keys<FormulaSubject>;
