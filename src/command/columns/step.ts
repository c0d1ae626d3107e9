/** What one function is to the command. */

import type { Footprint, LinkBudgetInput } from '../../link/index.js';

/** Input of a step: a column of the rows, or one number for all. */
export type StepInput = Readonly<Record<string, number | ArrayLike<number>>>;
/** Columns that a step gives, by name. */
export type StepColumns = Readonly<Record<string, Float64Array | Uint8Array>>;

/** One function that the command adds columns with. */
export interface Step {
  /** Fields that must come from somewhere. */
  readonly needs: readonly string[];
  /** Fields that are taken where a word names the step: `polarizationSkew.tiltDeg=3`. */
  readonly may?: readonly string[];
  /** Columns that it gives, in their order; for a column of codes the word of each. */
  readonly gives: Readonly<Record<string, readonly string[] | null>>;
  /** Left out in rows in which the satellite is below the horizon. */
  readonly aboveHorizon?: boolean;
  /** Fields that are taken where an earlier function gave them. */
  readonly follows?: readonly string[];
  /** Options of the command that it needs. */
  readonly asks?: readonly (keyof StepGiven)[];
  readonly batch: (input: StepInput, given: StepGiven) => StepColumns;
}

/** What the options of the command give to functions: the same for all rows. */
export interface StepGiven {
  /** The link of `--link`. */
  readonly link?: LinkBudgetInput;
  /** The contours of `--footprint`. */
  readonly footprint?: Footprint;
  /** First instant of `--from`. */
  readonly from?: string;
  /** Last instant of `--to`. */
  readonly to?: string;
}

/** The fields of a place. */
export const PLACE = ['latitudeDeg', 'longitudeDeg', 'heightM'];

/** The columns of a batch as a record; nothing is copied. */
export const columnsOf = (result: object): StepColumns => ({ ...result }) as StepColumns;
