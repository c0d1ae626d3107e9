/**
 * The plan of a worked solution: givens, constants and steps of one computation of the library.
 *
 * The values of the steps come from the library (`compute`), never from the expressions. The expressions are
 * what is shown; a test holds each against the library's value, so that what is shown is what is computed.
 * The same expressions serve to show what rounding early does and what a slip would give.
 */

/** A given of the computation. */
export interface SolutionGiven {
  /** Name of the library's input: `latitudeDeg`. */
  readonly name: string;
  /** Symbol in the expressions: `lat`. */
  readonly symbol: string;
  /** The same as TeX: `\\varphi`. */
  readonly tex: string;
  /** What it is. */
  readonly meaning: string;
  /** Its unit as it is written behind a number; empty for a ratio. */
  readonly unit: string;
  /** Round values that exercises draw from: `from`, `from + step` … `to`. */
  readonly draw: { readonly from: number; readonly to: number; readonly step: number };
  /** Value where the input leaves it out, and in exercises; none for a given that must be there. */
  readonly otherwise?: number;
  /** Steps of each level of difficulty from 1; the draw's own step for all levels by default. */
  readonly levelSteps?: readonly number[];
}

/** A constant of the computation. */
export interface SolutionConstant {
  readonly symbol: string;
  readonly tex: string;
  readonly meaning: string;
  readonly value: number;
  readonly unit: string;
  /** Where its value comes from. */
  readonly source: string;
}

/** A step of the hand calculation. */
export interface PlanStep {
  /** Symbol of what the step gives; later steps use it. */
  readonly symbol: string;
  readonly tex: string;
  /** What it is. */
  readonly meaning: string;
  /** The formula in the notation of typed formulas, in symbols of givens, constants and earlier steps. */
  readonly expression: string;
  readonly unit: string;
  /** Decimals to keep in hand work. */
  readonly decimals: number;
  /** Document, edition, section; or the word for own derivation, geometry, definition. */
  readonly source: string;
}

/** Values by symbol. */
export type SolutionValues = Readonly<Record<string, number>>;

/** A plan. The last step is the answer. */
export interface SolutionPlan {
  /** Name of the plan: `elevation`. */
  readonly name: string;
  /** Title as a question: `At what elevation does the satellite stand?`. */
  readonly title: string;
  /** Part of the library and name of the function that computes it. */
  readonly part: string;
  readonly functionName: string;
  readonly givens: readonly SolutionGiven[];
  readonly constants: readonly SolutionConstant[];
  /** Values that are looked up for the inputs, beside the constants: a table at a frequency, the case that applies. */
  readonly lookedUp?: (inputs: Readonly<Record<string, number>>) => readonly SolutionConstant[];
  readonly steps: readonly PlanStep[];
  /** The library's values of all steps by symbol for inputs by name; a text where there is no answer. */
  readonly compute: (inputs: Readonly<Record<string, number>>) => SolutionValues | string;
  /** Answers of a shorter way that the trade teaches, the round Earth, for inputs; none by default. */
  readonly otherWays?: (inputs: Readonly<Record<string, number>>) => readonly number[];
  /** Full periods of the answer that do not count: 360 for an azimuth; none by default. */
  readonly periodDeg?: 360 | 180;
}
