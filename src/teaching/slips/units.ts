/** Slips of units: a given put in in another unit, the machine in radians, a percentage, decibels and watts. */

import type { FormulaNode } from '../formula/parse.js';
import { binary, call, functionOf, identifier, literal } from '../formula/trees.js';
import type { SolutionPlan } from '../plans/plan.js';
import { answered, givensThat, lastStep, type Slip, type SlipChange, set, trees } from './slip.js';
import { callArguments, literalValue, sidesOf } from './tree.js';

const DEGREE = binary('/', identifier('pi'), literal(180));

/** Machine left in radians: arguments are read as radians, inverse functions give radians. */
function radians(node: FormulaNode): FormulaNode {
  const name = functionOf(node);
  if (name === 'sin' || name === 'cos' || name === 'tan')
    return call(`${name}Rad`, ...callArguments(node));
  if (name === 'asin' || name === 'acos' || name === 'atan' || name === 'atan2')
    return binary('*', node, DEGREE);
  return node;
}

/** The same, with the sign dropped of which there is no logarithm. */
function signDropped(node: FormulaNode): FormulaNode {
  const [of] = ['log', 'log10'].includes(functionOf(node)) ? callArguments(node) : [];
  return of && /Rad$/.test(functionOf(of))
    ? call(functionOf(node), call('abs', of))
    : radians(node);
}

/** A division by a number left out. */
export const undivided =
  (divisor: number) =>
  (node: FormulaNode): FormulaNode => {
    const parts = sidesOf(node);
    return parts?.operator === '/' && literalValue(parts.right) === divisor ? parts.left : node;
  };

/** Units that people take one for the other: factors by which a number then changes. */
const FACTORS: Readonly<Record<string, readonly (readonly [unit: string, factor: number])[]>> = {
  GHz: [['Hz', 1e9]],
  MHz: [
    ['GHz', 1e-3],
    ['kHz', 1e3],
    ['Hz', 1e6],
  ],
  MBd: [
    ['kBd', 1e3],
    ['Bd', 1e6],
  ],
  m: [
    ['cm', 100],
    ['mm', 1000],
    ['km', 1e-3],
  ],
  mm: [
    ['m', 1e-3],
    ['cm', 0.1],
  ],
  W: [
    ['mW', 1e3],
    ['kW', 1e-3],
  ],
  'm/s': [
    ['km/h', 3.6],
    ['km/h', 1 / 3.6],
  ],
  percent: [['%', 0.01]],
};

const elsewhere = (plan: SolutionPlan): readonly SlipChange[] => [
  ...[...plan.givens, ...plan.constants].flatMap(({ symbol: name, unit, meaning }) =>
    (FACTORS[unit] ?? []).map(([other, factor]) =>
      set({ [name]: (value) => value * factor }, inAnother(other, meaning)),
    ),
  ),
  ...plan.steps.slice(0, -1).flatMap(({ symbol: name, unit, meaning }) =>
    (FACTORS[unit] ?? []).map(
      ([other, factor]): SlipChange => ({
        value: (value, step) => (step.symbol === name ? value * factor : value),
        says: inAnother(other, meaning),
      }),
    ),
  ),
];

const inAnother = (unit: string, meaning: string) =>
  `Put in in another unit (${unit}): ${meaning}.`;

/** Powers of ten that convert a unit: 1000 metres, a million hertz. */
const isConversion = (node: FormulaNode): boolean => {
  const power = sidesOf(node);
  return (
    literalValue(node) === 1000 ||
    (power?.operator === '**' &&
      literalValue(power.left) === 10 &&
      literalValue(power.right) !== undefined)
  );
};

/** The slips. */
export const UNIT_SLIPS: readonly Slip[] = [
  {
    name: 'radians-for-degrees',
    group: 'unit',
    explanation: 'The machine was in radians; the angles are in degrees.',
    changes: (plan) => [...trees(plan, radians), ...trees(plan, signDropped)],
  },
  {
    name: 'radians-in-answer',
    group: 'unit',
    explanation: 'The answer is in radians: times 180 over pi it is in degrees.',
    changes: (plan) =>
      lastStep(plan).unit === 'deg' ? [answered((x) => (x * Math.PI) / 180)] : [],
  },
  {
    name: 'minutes-for-decimals',
    group: 'unit',
    explanation:
      'Minutes of arc were put in as decimals: 24 minutes are 0.4 degrees, so 46 degrees 24 minutes are 46.4, not 46.24.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => /(?:latitude|longitude)Deg$/i.test(name),
        (value) => Math.trunc(value) + 0.6 * (value - Math.trunc(value)),
      ),
  },
  {
    name: 'mhz-for-ghz',
    group: 'unit',
    explanation: 'The frequency was put in in MHz; it belongs in GHz.',
    changes: (plan) => [
      ...givensThat(
        plan,
        ({ name }) => /GHz$/.test(name),
        (value) => value * 1000,
      ),
      ...(plan.givens.some(({ name }) => /frequencyMHz$/i.test(name))
        ? trees(plan, undivided(1000))
        : []),
    ],
  },
  {
    name: 'metres-for-kilometres',
    group: 'unit',
    explanation: 'A distance was put in in metres; it belongs in kilometres.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => /Km$/.test(name),
        (value) => value * 1000,
      ),
  },
  {
    name: 'percentage-not-converted',
    group: 'unit',
    explanation: 'A percentage was used as it stands; as a ratio it is a hundredth of that.',
    changes: (plan) => trees(plan, undivided(100)),
  },
  {
    name: 'dbm-for-dbw',
    group: 'unit',
    explanation:
      'A level in dBm stands where one in dBW belongs, or the other way round: they differ by 30 dB.',
    changes: (plan) => [
      ...givensThat(
        plan,
        ({ name }) => /Dbw$/.test(name),
        (value) => value + 30,
      ),
      ...givensThat(
        plan,
        ({ name }) => /Dbm$/.test(name),
        (value) => value - 30,
      ),
      ...givensThat(
        plan,
        ({ name }) => name === 'eirpDbm',
        (value) => value + 30,
      ),
      ...(/^dB[mW]$/.test(lastStep(plan).unit)
        ? [answered((level) => level + 30), answered((level) => level - 30)]
        : plan.givens.some(({ name }) => /Dbw$/.test(name))
          ? [answered((value) => value - 30)]
          : []),
    ],
  },
  {
    name: 'unit-of-input',
    group: 'unit',
    explanation: 'A given was put in in another unit than the formula wants.',
    changes: elsewhere,
  },
  {
    name: 'conversion-left-out',
    group: 'unit',
    explanation: 'The power of ten that converts a unit was left out, or another one was taken.',
    reach: 'item',
    changes: (plan) => [
      ...trees(plan, (node) => {
        const parts = sidesOf(node);
        if (parts?.operator !== '*' && parts?.operator !== '/') return node;
        return isConversion(parts.right) ? parts.left : node;
      }),
      ...trees(plan, (node) => {
        const parts = sidesOf(node);
        return parts?.operator === '*' && isConversion(parts.left) ? parts.right : node;
      }),
      ...trees(plan, (node) =>
        isConversion(node) && sidesOf(node)?.operator === '**' ? literal(1000) : node,
      ),
    ],
  },
];
