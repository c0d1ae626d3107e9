/** Slips by value: which wrong variants of a plan give an answer. */

import { wrapLongitudeDeg } from '../../numeric/angle.js';
import { valueNamed } from '../../numeric/columns.js';
import type { PlanStep, SolutionPlan, SolutionValues } from '../plans/plan.js';
import { evaluateCompiled, roundedTo } from '../solution/evaluate.js';
import type { Typed } from './typed.js';
import { type Variant, variantsOf } from './variants.js';

/** A slip that explains an answer. */
export interface NamedSlip {
  /** Name of the slip. */
  readonly name: string;
  /** What went wrong, said to the learner. */
  readonly explanation: string;
  /** What the slip gives, in the asked unit. */
  readonly value: number;
}

/** The slips that explain an answer. */
export interface Matched {
  /** The likeliest first; empty where none is known. */
  readonly slips: readonly NamedSlip[];
  /** Whether it takes all of them at once. */
  readonly together: boolean;
  /** Whether a slip of its own, not just an item of many, gives the answer with the decimals asked for. */
  readonly own: boolean;
  /** Whether a slip of its own gives the answer to the last digit, however few it shows. */
  readonly exactly: boolean;
}

const NONE: Matched = { slips: [], together: false, own: false, exactly: false };

/** Most slips named: a longer list explains nothing. */
const MOST = 3;

/** Names that say again, of an item, what a slip of its own says of the matter. */
const RESTATED: ReadonlySet<string> = new Set([
  'item-forgotten',
  'item-reversed',
  'item-twice',
  'given-for-answer',
  'step-for-answer',
  'wrong-sign',
  'decimal-point',
]);

/** Wrong variants by chance within the reach of an answer above which two slips at once are not told. */
const CHANCE = 0.25;

/** Difference of two answers; full periods do not count. */
export function apart(plan: SolutionPlan, a: number, b: number): number {
  if (plan.periodDeg === undefined) return Math.abs(a - b);
  const turns = 360 / plan.periodDeg;
  return Math.abs(wrapLongitudeDeg((a - b) * turns)) / turns;
}

/** What a learner answered, what would be right, and how far from it still counts as right. */
export interface Asked {
  readonly plan: SolutionPlan;
  readonly start: SolutionValues;
  readonly given: Typed;
  readonly exact: number;
  readonly half: number;
  /** Steps as the learner has them, by symbol, in place of what the plan gives. */
  readonly own?: (value: number, step: PlanStep) => number;
}

interface Hit extends NamedSlip {
  readonly variant: Variant;
  readonly miss: number;
  readonly sharp: boolean;
  /** Whether the slip is clearly apart from the right answer. */
  readonly clear: boolean;
}

/** Slips whose value, rounded early or not, is the answer. */
export function matchingSlips(asked: Asked): Matched {
  const { plan } = asked;
  const { single, double } = variantsOf(plan);
  const round = roundEarth(asked);
  const hits = single.flatMap(
    (variant) => hit(asked, variant) ?? (round && hit({ ...asked, start: round }, variant)) ?? [],
  );
  if (hits.length > 0) return named(hits);
  // With few digits, two of many slips always give it: nothing is told then.
  const values = double().flatMap((variant) => {
    const value = answerOf(asked, variant);
    return Number.isFinite(value) ? [{ variant, value }] : [];
  });
  const reach = Math.max(2 * Math.abs(asked.given.value - asked.exact), 20 * asked.half);
  const near = values.filter(({ value }) => Math.abs(value - asked.given.value) <= reach);
  const expected = (distinct(near.map(({ value }) => value)) * asked.half) / reach;
  if (expected > CHANCE) return NONE;
  const pairs = near.flatMap(({ variant }) => hit(asked, variant) ?? []).sort(byMiss);
  const [first] = pairs;
  return first
    ? {
        slips: first.variant.slips.map((slip) => ({ ...slip, value: first.value })),
        together: true,
        own: false,
        exactly: false,
      }
    : NONE;
}

const distinct = (values: readonly number[]) =>
  new Set(values.map((value) => value.toPrecision(9))).size;

/** The start values over a round Earth; none where the plan knows no other. */
const roundEarth = ({ start }: Asked): SolutionValues | undefined =>
  start['e2'] === undefined ? undefined : { ...start, e2: 0 };

const answerOf = ({ plan, start, own }: Asked, { compiled }: Variant): number =>
  valueNamed(
    evaluateCompiled(compiled, start, own),
    plan.steps[plan.steps.length - 1]?.symbol ?? '',
  );

const byMiss = (a: Hit, b: Hit) => a.variant.rank - b.variant.rank || a.miss - b.miss;

/** Whether a value is not to be told from the right answer in the decimals asked for. */
const roundsAlike = ({ plan, exact }: Asked, value: number): boolean => {
  const decimals = plan.steps[plan.steps.length - 1]?.decimals ?? 0;
  return roundedTo(value, decimals) === roundedTo(exact, decimals);
};

/** A variant that gives the answer. */
function hit(asked: Asked, variant: Variant): Hit | undefined {
  const { plan, start, given, exact, half, own } = asked;
  const value = answerOf(asked, variant);
  // A slip that does not show in these numbers explains nothing.
  if (!Number.isFinite(value) || value === 0) return;
  if (apart(plan, value, exact) <= half && roundsAlike(asked, value)) return;
  const miss = apart(plan, given.value, value);
  const coarse = Math.max(half, Math.min(0.5 * 10 ** -given.decimals, 100 * half)) * 1.02;
  if (miss > Math.max(coarse, 200 * half, 0.01 * Math.abs(value))) return;
  const last = plan.steps[plan.steps.length - 1] as PlanStep;
  const early =
    miss <= half
      ? value
      : valueNamed(
          evaluateCompiled(variant.compiled, start, (x, step) =>
            roundedTo(own?.(x, step) ?? x, step.decimals),
          ),
          last.symbol,
        );
  // A way that rounding upsets altogether is no match for whatever lies between.
  const spread = Number.isFinite(early) ? Math.min(apart(plan, early, value), 20 * half) : 0;
  if (miss > coarse + spread) return;
  const [slip] = variant.slips;
  const clear = apart(plan, value, exact) > 2 * half;
  return (
    slip && {
      ...slip,
      value,
      variant,
      miss,
      sharp: miss <= half * 1.02 && slip.name !== 'other-constant',
      clear,
    }
  );
}

/** The likeliest slips: of variants with the same value the more telling one, then the rarer kinds left out. */
function named(hits: readonly Hit[]): Matched {
  const best = new Map<string, Hit>();
  for (const each of [...hits].sort(byMiss)) {
    const known = best.get(each.name);
    if (!known) best.set(each.name, each);
  }
  const sorted = [...best.values()];
  const telling = sorted.filter(
    (each) =>
      !sorted.some(
        (other) =>
          other.variant.rank < each.variant.rank &&
          (each.variant.rank === 3 ||
            (RESTATED.has(each.name) &&
              Math.abs(other.value - each.value) <= 1e-9 * Math.max(1, Math.abs(each.value)))),
      ),
  );
  return {
    slips: telling
      .slice(0, MOST)
      .map(({ name, explanation, value }) => ({ name, explanation, value })),
    together: false,
    exactly: telling.some(({ miss, variant }) => miss <= 1e-9 && variant.rank === 1),
    own: telling.some(({ sharp, clear, variant }) => sharp && clear && variant.rank === 1),
  };
}
