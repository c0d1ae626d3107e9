/** The wrong variants of a plan, made ready once for each plan. */

import type { SolutionPlan } from '../plans/plan.js';
import { SLIPS } from '../slips/index.js';
import { twoOfOneSum } from '../slips/items.js';
import type { Slip, SlipChange } from '../slips/slip.js';
import { type Change, type CompiledPlan, compiledPlan } from '../solution/evaluate.js';

/** A slip as it is told. */
interface ToldSlip {
  readonly name: string;
  readonly explanation: string;
}

/** One wrong way through a plan, by one slip or by two at once. */
export interface Variant {
  readonly slips: readonly ToldSlip[];
  /** 1 a slip of its own, 2 one that can happen at any item, 3 one that explains little. */
  readonly rank: number;
  readonly compiled: CompiledPlan;
}

/** What {@link variantsOf} gives. */
export interface Variants {
  readonly right: CompiledPlan;
  readonly single: readonly Variant[];
  readonly double: () => readonly Variant[];
}

const RANKS = { own: 1, item: 2, vague: 3 } as const;

const told = ({ name, explanation }: Slip, { says }: SlipChange): ToldSlip => ({
  name,
  explanation: says ?? explanation,
});

/** Two changes one after the other; none where one would overwrite the other. */
function after(first: Change, second: Change): Change | undefined {
  if (first.step !== undefined && first.step === second.step) return undefined;
  // A tree that is put in as a whole goes first, rules then work on it.
  if (second.step !== undefined && first.step === undefined) return after(second, first);
  if (first.answer && second.answer) return undefined;
  const { givens: g1, tree: t1, value: v1 } = first;
  const { givens: g2, tree: t2, value: v2 } = second;
  const answer = first.answer ?? second.answer;
  return {
    ...(g1 || g2
      ? { givens: (values) => g2?.(g1?.(values) ?? values) ?? g1?.(values) ?? values }
      : {}),
    ...(t1 || t2
      ? {
          tree: (tree, step) => {
            const once = t1?.(tree, step) ?? tree;
            return t2?.(once, step) ?? once;
          },
        }
      : {}),
    ...(v1 || v2
      ? {
          value: (value, step) => {
            const once = v1?.(value, step) ?? value;
            return v2?.(once, step) ?? once;
          },
        }
      : {}),
    ...(answer ? { answer } : {}),
  };
}

/** Slips likely enough to be made together with another one. */
const COMMON = new Set([
  'sign-of-west',
  'wrong-hemisphere',
  'measured-from-south',
  'ten-log-for-twenty',
  'twenty-log-for-ten',
  'natural-log-for-decimal',
  'amplitude-for-power',
  'dbm-for-dbw',
  'radius-for-diameter',
  'mhz-for-ghz',
  'percentage-not-converted',
  'half-not-taken',
  'square-not-taken',
  'root-not-taken',
  'sine-for-cosine',
  'guard-band-reversed',
  'expanded-for-standard',
  'item-forgotten',
  'item-reversed',
  'step-for-answer',
  'altitude-for-radius',
  'zenith-angle',
  'wrong-sign',
  'backlash-forgotten',
]);

/** Most variants of one slip, and of all slips, that are taken for two at once: a page must answer at once. */
const MOST_ALIKE = 5;
const MOST_COMMON = 30;

function made(plan: SolutionPlan): Variants {
  const right = compiledPlan(plan);
  const changes = SLIPS.flatMap((slip) => slip.changes(plan).map((change) => ({ slip, change })));
  const single = changes.map(
    ({ slip, change }): Variant => ({
      slips: [told(slip, change)],
      rank: RANKS[slip.reach ?? 'own'],
      compiled: compiledPlan(plan, change, right),
    }),
  );
  const seen = new Map<string, number>();
  const common = changes
    .filter(({ slip }) => {
      const count = (seen.get(slip.name) ?? 0) + 1;
      seen.set(slip.name, count);
      return COMMON.has(slip.name) && count <= MOST_ALIKE;
    })
    .slice(0, MOST_COMMON);
  let doubles: readonly Variant[] | undefined;
  const double = () => {
    doubles ??= [
      ...twoOfOneSum(plan).map(
        ({ names, says, change }): Variant => ({
          slips: names.map((name, at) => ({ name, explanation: says[at] as string })),
          rank: 4,
          compiled: compiledPlan(plan, change, right),
        }),
      ),
      ...common.flatMap((first, at) =>
        common.slice(at + 1).flatMap((second): readonly Variant[] => {
          if (first.slip === second.slip) return [];
          const both = after(first.change, second.change);
          return both
            ? [
                {
                  slips: [told(first.slip, first.change), told(second.slip, second.change)],
                  rank: 4,
                  compiled: compiledPlan(plan, both, right),
                },
              ]
            : [];
        }),
      ),
    ];
    return doubles;
  };
  return { right, single, double };
}

/** Variants by plan: a plan never changes, so that its formulas are compiled once. */
const MADE = new WeakMap<SolutionPlan, Variants>();

/** The wrong variants of a plan. */
export function variantsOf(plan: SolutionPlan): Variants {
  const known = MADE.get(plan);
  if (known) return known;
  const variants = made(plan);
  MADE.set(plan, variants);
  return variants;
}
