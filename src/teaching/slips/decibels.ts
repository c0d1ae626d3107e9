/** Slips with decibels: the wrong factor before the logarithm, decibels treated as plain numbers and the other way round. */

import { valueNamed } from '../../numeric/columns.js';
import type { FormulaNode } from '../formula/parse.js';
import { binary, call, functionOf, literal } from '../formula/trees.js';
import type { SolutionPlan } from '../plans/plan.js';
import { stepTree } from '../solution/stepTree.js';
import { answered, calledBy, lastStep, type Slip, type SlipChange, trees } from './slip.js';
import { callArguments, literalValue, placesOf, sidesOf, termsOf } from './tree.js';

const isLog = (node: FormulaNode) => ['log', 'log10'].includes(functionOf(node));

/** `20 * log(...)` as `10 * log(...)`, or the other way round; `-20` as `-10`. */
const logFactor =
  (from: number, to: number) =>
  (node: FormulaNode): FormulaNode => {
    const parts = sidesOf(node);
    if (parts?.operator !== '*' || !isLog(parts.right)) return node;
    const signed = parts.left.type === 'UnaryExpression' ? termsOf(parts.left)[0] : undefined;
    if (literalValue(parts.left) === from) return binary('*', literal(to), parts.right);
    return signed?.sign === -1 && literalValue(signed.node) === from
      ? binary('*', binary('-', literal(0), literal(to)), parts.right)
      : node;
  };

/** The exponent of a power of ten; none for a plain conversion such as 10^6. */
const exponentOf = (node: FormulaNode): FormulaNode | undefined => {
  const power = sidesOf(node);
  return power?.operator === '**' &&
    literalValue(power.left) === 10 &&
    literalValue(power.right) === undefined
    ? power.right
    : undefined;
};

/** A power of ten with twice or half its exponent's divisor: 10^(x/20) for 10^(x/10). */
function otherRoot(node: FormulaNode): FormulaNode {
  const exponent = exponentOf(node);
  return exponent ? binary('**', literal(10), binary('/', exponent, literal(2))) : node;
}

/** A ratio of fields as one of powers: 10^(x/10) for 10^(x/20). */
function powerRoot(node: FormulaNode): FormulaNode {
  const divided = sidesOf(exponentOf(node) ?? node);
  return exponentOf(node) && divided?.operator === '/' && literalValue(divided.right) === 20
    ? binary('**', literal(10), binary('/', divided.left, literal(10)))
    : node;
}

/** Two givens in the same unit of a plan that adds their powers. */
function poweredPair(plan: SolutionPlan): readonly [string, string] | undefined {
  const powered = plan.steps.flatMap((step) =>
    placesOf(stepTree(step)).flatMap(({ node }) => exponentOf(node) ?? []),
  );
  const used = plan.givens.filter(
    ({ symbol, unit }) =>
      /^dB/.test(unit) &&
      powered.some((node) =>
        placesOf(node).some((at) => (at.node as { name?: string }).name === symbol),
      ),
  );
  const [a, b] = used;
  return a && b && used.length === 2 && /log/.test(lastStep(plan).expression)
    ? [a.symbol, b.symbol]
    : undefined;
}

const ofPair = (
  plan: SolutionPlan,
  ...ways: readonly ((a: number, b: number) => number)[]
): readonly SlipChange[] => {
  const pair = poweredPair(plan);
  if (!pair) return [];
  const [a, b] = pair;
  return ways.map((way) =>
    answered((_, values) => way(valueNamed(values, a), valueNamed(values, b))),
  );
};

/** The slips. */
export const DECIBEL_SLIPS: readonly Slip[] = [
  {
    name: 'ten-log-for-twenty',
    group: 'decibel',
    explanation: 'A quantity that enters squared takes 20 log, not 10 log.',
    changes: (plan) => [
      ...trees(plan, logFactor(20, 10)),
      ...oneTerm(plan, logFactor(20, 10)),
      ...trees(plan, powerRoot).map((change) => ({
        ...change,
        says: 'Decibels of a ratio of fields are turned back by 10^(dB/20), not by 10^(dB/10).',
      })),
    ],
  },
  {
    name: 'twenty-log-for-ten',
    group: 'decibel',
    explanation: 'A power takes 10 log, not 20 log.',
    changes: (plan) => [...trees(plan, logFactor(10, 20)), ...oneTerm(plan, logFactor(10, 20))],
  },
  {
    name: 'natural-log-for-decimal',
    group: 'decibel',
    explanation: 'Decibels need the decimal logarithm, not the natural one.',
    changes: (plan) =>
      trees(plan, (node) => (isLog(node) ? call('ln', ...callArguments(node)) : node)),
  },
  {
    name: 'amplitude-for-power',
    group: 'decibel',
    explanation: 'Decibels of a power are turned back by 10^(dB/10), not by 10^(dB/20).',
    changes: (plan) => {
      const both = (node: FormulaNode) => logFactor(10, 20)(otherRoot(node));
      return [...trees(plan, otherRoot), ...trees(plan, both)];
    },
  },
  {
    name: 'exponent-sign',
    group: 'decibel',
    explanation:
      'The sign of the exponent is turned: a loss or a ratio to be added as noise takes 10^(-dB/10).',
    changes: (plan) => {
      const rule = (node: FormulaNode) => {
        const exponent = exponentOf(node);
        return exponent ? binary('**', literal(10), binary('-', literal(0), exponent)) : node;
      };
      const positive = (value: number) => Math.abs(value);
      return [
        ...trees(plan, rule),
        ...(poweredPair(plan) ? [{ ...(trees(plan, rule)[0] ?? {}), answer: positive }] : []),
      ];
    },
  },
  {
    name: 'smaller-for-sum',
    group: 'decibel',
    explanation:
      'The smaller of the two was taken for both together: both noises add, so that less is left than the smaller one.',
    changes: (plan) => (/both/.test(lastStep(plan).meaning) ? ofPair(plan, Math.min) : []),
  },
  {
    name: 'mean-of-decibels',
    group: 'decibel',
    explanation: 'The decibels were averaged: it is powers that add.',
    changes: (plan) => ofPair(plan, (a, b) => (a + b) / 2),
  },
  {
    name: 'decibels-added',
    group: 'decibel',
    explanation:
      'The decibels themselves were added: that multiplies powers. Turn them into powers, add, and turn back.',
    changes: (plan) => ofPair(plan, (a, b) => a + b),
  },
  {
    name: 'decibels-subtracted',
    group: 'decibel',
    explanation:
      'The decibels themselves were subtracted: that divides powers. Turn them into powers, subtract, and turn back.',
    changes: (plan) =>
      ofPair(
        plan,
        (a, b) => a - b,
        (a, b) => b - a,
      ),
  },
  {
    name: 'ratio-as-decibel',
    group: 'decibel',
    explanation: 'A plain number was added to decibels: take 10 log of it first.',
    reach: 'item',
    changes: (plan) =>
      logTerms(plan, (node) => {
        const parts = sidesOf(node);
        return parts?.operator === '*' && isLog(parts.right)
          ? callArguments(parts.right)[0]
          : undefined;
      }).map(({ change, told }) => ({
        ...change,
        says: `A plain number was added to decibels, take the logarithm first: ${told}.`,
      })),
  },
  {
    name: 'decibel-as-ratio',
    group: 'decibel',
    explanation: 'Decibels were used as a plain ratio: turn them back by 10^(dB/10) first.',
    changes: (plan) => {
      const plain = (node: FormulaNode) => {
        const exponent = exponentOf(node);
        const divided = exponent && sidesOf(exponent);
        return divided?.operator === '/' ? divided.left : node;
      };
      // Where one is taken off a power of ten, people leave that out as well.
      const whole = (node: FormulaNode) => {
        const parts = sidesOf(node);
        return parts?.operator === '-' && literalValue(parts.right) === 1
          ? plain(parts.left) === parts.left
            ? node
            : plain(parts.left)
          : node;
      };
      return [...trees(plan, plain), ...trees(plan, whole)];
    },
  },
  {
    name: 'quotient-of-decibels',
    group: 'decibel',
    explanation: 'Decibels were divided: a quotient of powers is a difference of decibels.',
    changes: (plan) => {
      const [first, ...rest] = plan.givens;
      const last = rest[rest.length - 1];
      return first &&
        last &&
        /^dB/.test(first.unit) &&
        / log\(/.test(` ${lastStep(plan).expression.replace(/\*/g, ' ')}`)
        ? [
            answered(
              (_, values) => valueNamed(values, first.symbol) / valueNamed(values, last.symbol),
            ),
          ]
        : [];
    },
  },
  {
    name: 'dipole-for-isotropic',
    group: 'decibel',
    explanation: 'The gain is over a dipole; dBi counts from an isotropic antenna, 2.15 dB more.',
    changes: (plan) => (lastStep(plan).unit === 'dBi' ? [answered((gain) => gain - 2.15)] : []),
  },
];

/** A rule at one place of a step that has several. */
function oneTerm(
  plan: SolutionPlan,
  rule: (node: FormulaNode) => FormulaNode,
): readonly SlipChange[] {
  return plan.steps.flatMap((own) => {
    const fits = placesOf(stepTree(own)).filter(({ node }) => rule(node) !== node);
    if (fits.length < 2) return [];
    return fits.map(
      (_, at): SlipChange => ({
        tree: (tree, step) => {
          if (step !== own) return tree;
          const place = placesOf(tree).filter(({ node }) => rule(node) !== node)[at];
          return place ? place.put(rule(place.node)) : tree;
        },
      }),
    );
  });
}

/** Changes at each node that a rule replaces, with what the node is called. */
function logTerms(
  plan: SolutionPlan,
  rule: (node: FormulaNode) => FormulaNode | undefined,
): readonly { readonly change: SlipChange; readonly told: string }[] {
  return plan.steps.flatMap((at) => {
    const { symbol } = at;
    const tree = stepTree(at);
    return placesOf(tree).flatMap(({ node, put }) => {
      const other = rule(node);
      if (other === undefined) return [];
      const changed = put(other);
      return [
        {
          told: calledBy(node, plan),
          change: {
            tree: (own: FormulaNode, step: { symbol: string }) =>
              step.symbol === symbol ? changed : own,
          },
        },
      ];
    });
  });
}
