/** A computation of the library as a worked solution: steps with symbols, formulas, numbers put in, values, sources. */

import { DomainError, finite, object } from '../../errors.js';
import { wrapLongitudeDeg } from '../../numeric/angle.js';
import { valueNamed } from '../../numeric/columns.js';
import { treeToTex, treeToText } from '../formula/tex.js';
import { solutionPlan } from '../plans/index.js';
import type { SolutionConstant, SolutionPlan, SolutionValues } from '../plans/plan.js';
import { constantsOf, evaluateRounded, roundedTo, startValues } from './evaluate.js';
import { stepTree } from './stepTree.js';

/** A quantity of a solution. */
export interface SolutionQuantity {
  readonly symbol: string;
  readonly tex: string;
  readonly meaning: string;
  readonly value: number;
  readonly unit: string;
}

/** One step of a worked solution. */
export interface SolutionStep extends SolutionQuantity {
  /** The formula in symbols, as plain text and as TeX. */
  readonly formulaText: string;
  readonly formulaTex: string;
  /** The formula with the numbers put in. */
  readonly substitutedText: string;
  readonly substitutedTex: string;
  /** The value, rounded for hand work. */
  readonly rounded: number;
  /** Decimals kept in hand work. */
  readonly decimals: number;
  /** Document, edition, section; or derivation, geometry, definition. */
  readonly source: string;
}

/** A worked solution; read `kind` first. */
export type WorkedSolution =
  | {
      readonly kind: 'solved';
      /** Name and title of the plan. */
      readonly name: string;
      readonly title: string;
      /** Entry and function of the library that computed every value here. */
      readonly computedBy: string;
      readonly givens: readonly SolutionQuantity[];
      readonly constants: readonly (SolutionQuantity & { readonly source: string })[];
      readonly steps: readonly SolutionStep[];
      /** The last step: equal to the function's result to the last bit. */
      readonly answer: SolutionQuantity & { readonly rounded: number; readonly decimals: number };
      /** The answer if every step is rounded before the next uses it, and how far that is off. */
      readonly roundedEarly: { readonly value: number; readonly error: number };
    }
  | {
      readonly kind: 'no-answer';
      readonly name: string;
      readonly title: string;
      /** Why there is none: `below-horizon`. */
      readonly reason: string;
    };

/** A number as it is put into a formula: up to ten digits, no trailing zeros. */
function put(value: number): string {
  return String(Number(value.toPrecision(10)));
}

/** A number or the constant pi as TeX: `2.1e-7` becomes a power of ten. */
const texOfNumber = (text: string): string =>
  text === 'pi'
    ? '\\pi'
    : text.replace(
        /^(\d[\d.]*)e([+-]?)(\d+)$/,
        (_, digits, sign, power) =>
          `\\left(${digits} \\cdot 10^{${sign === '-' ? '-' : ''}${power}}\\right)`,
      );

/** Checks that every given is there as a finite number; one that may be left out gets its value. */
export function checkedInputs(
  plan: SolutionPlan,
  inputs: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  object('inputs', inputs);
  for (const key of Object.keys(inputs))
    if (!plan.givens.some(({ name }) => name === key))
      throw new DomainError({
        code: 'not-an-option',
        parameter: key,
        received: inputs[key],
        allowed: `one of ${plan.givens.map(({ name }) => name).join(', ')}`,
      });
  const filled: Record<string, number> = { ...inputs };
  for (const { name, otherwise } of plan.givens)
    filled[name] = finite(name, (inputs[name] ?? otherwise) as number);
  return filled;
}

/**
 * Worked solution of a computation.
 *
 * @param name  Name of a plan (`SOLUTION_PLANS` lists them): `elevation`.
 * @param inputs  The givens by their library names: `latitudeDeg` and so on.
 * @returns Givens, constants, steps and answer; `no-answer` where the library has none.
 * @throws {@link DomainError} naming the given that is missing or outside its domain.
 *
 * Source: the functions of the library; each step names its own. Accuracy: that of the function; the shown formulas agree
 * with the values to 1e-9.
 * @example
 * ```ts
 * import { workedSolution } from 'slantpath/teaching';
 * const solution = workedSolution('free-space-loss', { frequencyGHz: 12, slantRangeKm: 38000 });
 * solution.kind === 'solved' && solution.steps.map((step) => step.rounded); // => [21.58, 91.6, 205.63]
 * ```
 */
export function workedSolution(
  name: string,
  inputs: Readonly<Record<string, number>>,
): WorkedSolution {
  const plan = solutionPlan(name);
  const checked = checkedInputs(plan, inputs);
  const values = plan.compute(checked);
  if (typeof values === 'string')
    return { kind: 'no-answer', name: plan.name, title: plan.title, reason: values };
  const start = startValues(plan, checked);
  const constants = constantsOf(plan, checked);
  const steps = solutionSteps(plan, constants, { ...start, ...values });
  const last = steps[steps.length - 1] as SolutionStep;
  const early = valueNamed(evaluateRounded(plan, checked), last.symbol);
  const difference = early - last.value;
  return {
    kind: 'solved',
    name: plan.name,
    title: plan.title,
    computedBy: `slantpath/${plan.part} ${plan.functionName}`,
    givens: plan.givens.map(({ symbol, tex, meaning, unit }) => ({
      symbol,
      tex,
      meaning,
      value: valueNamed(start, symbol),
      unit,
    })),
    constants,
    steps,
    answer: {
      symbol: last.symbol,
      tex: last.tex,
      meaning: last.meaning,
      value: last.value,
      unit: last.unit,
      rounded: last.rounded,
      decimals: last.decimals,
    },
    roundedEarly: {
      value: early,
      error: plan.periodDeg === undefined ? difference : wrapLongitudeDeg(difference),
    },
  };
}

function solutionSteps(
  plan: SolutionPlan,
  constants: readonly SolutionConstant[],
  values: SolutionValues,
): SolutionStep[] {
  const texOf = new Map(
    [...plan.givens, ...constants, ...plan.steps].map(({ symbol, tex }) => [symbol, tex]),
  );
  const number = (symbol: string) => {
    const value = values[symbol];
    return value === undefined ? symbol : put(value);
  };
  return plan.steps.map((step) => {
    const tree = stepTree(step);
    const value = valueNamed(values, step.symbol);
    const bracketed = (symbol: string) => {
      const text = number(symbol);
      return text.startsWith('-') ? `\\left(${text}\\right)` : text;
    };
    return {
      symbol: step.symbol,
      tex: step.tex,
      meaning: step.meaning,
      value,
      unit: step.unit,
      formulaText: `${step.symbol} = ${treeToText(tree, (symbol) => symbol)}`,
      formulaTex: `${step.tex} = ${treeToTex(tree, (symbol) => texOf.get(symbol) ?? texOfNumber(symbol))}`,
      substitutedText: `${step.symbol} = ${treeToText(tree, number)}`,
      substitutedTex: `${step.tex} = ${treeToTex(tree, (symbol) => texOfNumber(bracketed(symbol)))}`,
      rounded: roundedTo(value, step.decimals),
      decimals: step.decimals,
      source: step.source,
    };
  });
}
