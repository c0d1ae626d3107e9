/**
 * The usual slips, each as a wrong variant of the computation: changed inputs or changed formulas of a plan.
 * What learners get wrong is common practice of the trade's training; no source.
 */

import { type FormulaNode, formulaTree } from '../formula/parse.js';
import type { SolutionPlan } from '../plans/plan.js';
import type { Change } from '../solution/evaluate.js';
import {
  binary,
  call,
  callArguments,
  calledName,
  joined,
  literal,
  literalValue,
  mapTree,
  symbolName,
} from './mutate.js';

/** A slip: its name, what it is in a sentence, and the wrong variants it makes of a plan. */
export interface Slip {
  /** Name in kebab-case words. */
  readonly name: string;
  /** What went wrong, said to the learner. */
  readonly explanation: string;
  /** The wrong variants for a plan; none where the slip cannot happen. */
  readonly changes: (plan: SolutionPlan) => readonly Change[];
}

/** Changes one given by its symbol. */
const given = (symbol: string, change: (value: number) => number): Change => ({
  givens: (values) => ({ ...values, [symbol]: change(values[symbol] as number) }),
});

/** Changes for every given that fits. */
const givensThat = (
  plan: SolutionPlan,
  fits: (name: string) => boolean,
  change: (value: number) => number,
): readonly Change[] =>
  plan.givens.filter(({ name }) => fits(name)).map(({ symbol }) => given(symbol, change));

/** Whether a rule changes anything in an expression. */
function touched(
  expression: string,
  plan: SolutionPlan,
  rule: (node: FormulaNode, plan: SolutionPlan) => FormulaNode,
): boolean {
  let changed = false;
  mapTree(formulaTree(expression), (node) => {
    const after = rule(node, plan);
    if (after !== node) changed = true;
    return after;
  });
  return changed;
}

/** A change of every tree by one rule; none if it touches no step. */
const trees = (
  plan: SolutionPlan,
  rule: (node: FormulaNode, plan: SolutionPlan) => FormulaNode,
): readonly Change[] => {
  const touches = plan.steps.some(({ expression }) => touched(expression, plan, rule));
  return touches ? [{ tree: (tree) => mapTree(tree, (node) => rule(node, plan)) }] : [];
};

const DEGREE = joined(
  '/',
  { type: 'Identifier', name: 'pi' } as unknown as FormulaNode,
  literal(180),
);

/** Machine left in radians: arguments are read as radians, inverse functions give radians. */
function radians(node: FormulaNode): FormulaNode {
  const name = calledName(node);
  if (name === 'sin' || name === 'cos' || name === 'tan')
    return call(`${name}Rad`, callArguments(node));
  if (name === 'asin' || name === 'acos' || name === 'atan' || name === 'atan2')
    return joined('*', node, DEGREE);
  return node;
}

function oneArgumentArctangent(node: FormulaNode): FormulaNode {
  const [y, x] = callArguments(node);
  return calledName(node) === 'atan2' && y && x ? call('atan', [joined('/', y, x)]) : node;
}

/** `20 * log(...)` as `10 * log(...)`, or the other way round. */
const logFactor =
  (from: number, to: number) =>
  (node: FormulaNode): FormulaNode => {
    const parts = binary(node);
    if (parts?.operator !== '*' || literalValue(parts.left) !== from) return node;
    const name = calledName(parts.right);
    return name === 'log' || name === 'log10' ? joined('*', literal(to), parts.right) : node;
  };

function naturalLog(node: FormulaNode): FormulaNode {
  const name = calledName(node);
  return name === 'log' || name === 'log10' ? call('ln', callArguments(node)) : node;
}

/** A division by a number left out. */
const undivided =
  (divisor: number) =>
  (node: FormulaNode): FormulaNode => {
    const parts = binary(node);
    return parts?.operator === '/' && literalValue(parts.right) === divisor ? parts.left : node;
  };

/** A square left out. */
function unsquared(node: FormulaNode): FormulaNode {
  const parts = binary(node);
  return parts?.operator === '**' && literalValue(parts.right) === 2 ? parts.left : node;
}

/** A subtracted loss added, or an added one subtracted. */
function lossSign(node: FormulaNode, plan: SolutionPlan): FormulaNode {
  const parts = binary(node);
  if (parts?.operator !== '-') return node;
  const name = symbolName(parts.right);
  const known = [...plan.givens, ...plan.constants, ...plan.steps].find(
    ({ symbol }) => symbol === name,
  );
  return known && /\bloss|attenuation\b/.test(known.meaning)
    ? joined('+', parts.left, parts.right)
    : node;
}

/** Sine for cosine and back. */
function crossed(node: FormulaNode): FormulaNode {
  const name = calledName(node);
  if (name === 'sin') return call('cos', callArguments(node));
  return name === 'cos' ? call('sin', callArguments(node)) : node;
}

/** A square root left out. */
const unrooted = (node: FormulaNode): FormulaNode =>
  calledName(node) === 'sqrt' ? (callArguments(node)[0] ?? node) : node;

/** Half the way between two given places in the stead of the place half way. */
function halfWayFromZero(node: FormulaNode, plan: SolutionPlan): FormulaNode {
  const half = binary(node);
  const sum = half?.operator === '/' && literalValue(half.right) === 2 ? binary(half.left) : null;
  if (sum?.operator !== '+') return node;
  const places = [sum.left, sum.right].map(symbolName);
  return places.every((place) => plan.givens.some(({ symbol }) => symbol === place))
    ? joined('/', joined('-', sum.right, sum.left), literal(2))
    : node;
}

/** An added term subtracted, where what it is fits. */
const subtracted =
  (what: RegExp) =>
  (node: FormulaNode, plan: SolutionPlan): FormulaNode => {
    const parts = binary(node);
    if (parts?.operator !== '+') return node;
    const name = symbolName(parts.right);
    const known = [...plan.givens, ...plan.steps].find(({ symbol }) => symbol === name);
    return known && what.test(known.meaning) ? joined('-', parts.left, parts.right) : node;
  };

/** Odds as they stand for the share x / (1 + x). */
function oddsForShare(node: FormulaNode): FormulaNode {
  const parts = binary(node);
  const below = parts?.operator === '/' ? binary(parts.right) : null;
  const share =
    below?.operator === '+' &&
    literalValue(below.left) === 1 &&
    symbolName(below.right) !== undefined;
  return parts && share ? parts.left : node;
}

/** All slips that are looked for. Where two give the same answer, both are named. */
export const SLIPS: readonly Slip[] = [
  {
    name: 'radians-for-degrees',
    explanation: 'The machine was in radians; the angles are in degrees.',
    changes: (plan) => trees(plan, radians),
  },
  {
    name: 'sign-of-west',
    explanation: 'A longitude has the wrong sign: east is positive, west is negative.',
    changes: (plan) =>
      givensThat(
        plan,
        (name) => /longitudeDeg$/i.test(name),
        (value) => -value,
      ),
  },
  {
    name: 'difference-reversed',
    explanation: 'The longitudes were subtracted the wrong way round: satellite less station.',
    changes: (plan) => {
      const station = plan.givens.find(({ name }) => name === 'longitudeDeg')?.symbol;
      const slot = plan.givens.find(({ name }) => name === 'orbitalLongitudeDeg')?.symbol;
      if (station === undefined || slot === undefined) return [];
      return [
        {
          givens: (values) => ({
            ...values,
            [station]: values[slot] as number,
            [slot]: values[station] as number,
          }),
        },
      ];
    },
  },
  {
    name: 'swapped-coordinates',
    explanation: 'Latitude and longitude of the station were swapped.',
    changes: (plan) => {
      const latitude = plan.givens.find(({ name }) => name === 'latitudeDeg')?.symbol;
      const longitude = plan.givens.find(({ name }) => name === 'longitudeDeg')?.symbol;
      if (latitude === undefined || longitude === undefined) return [];
      return [
        {
          givens: (values) => ({
            ...values,
            [latitude]: values[longitude] as number,
            [longitude]: values[latitude] as number,
          }),
        },
      ];
    },
  },
  {
    name: 'wrong-hemisphere',
    explanation: 'The latitude has the wrong sign: north is positive, south is negative.',
    changes: (plan) =>
      givensThat(
        plan,
        (name) => name === 'latitudeDeg',
        (value) => -value,
      ),
  },
  {
    name: 'true-for-magnetic',
    explanation: 'The declination was left out: the bearing is from the wrong north.',
    changes: (plan) =>
      givensThat(
        plan,
        (name) => name === 'declinationDeg',
        () => 0,
      ),
  },
  {
    name: 'declination-reversed',
    explanation: 'The declination was applied with the wrong sign.',
    changes: (plan) =>
      givensThat(
        plan,
        (name) => name === 'declinationDeg',
        (value) => -value,
      ),
  },
  {
    name: 'one-argument-arctangent',
    explanation:
      'The arctangent of a quotient loses the quadrant: take both sides with their signs.',
    changes: (plan) => trees(plan, oneArgumentArctangent),
  },
  {
    name: 'ten-log-for-twenty',
    explanation: 'A quantity that enters squared takes 20 log, not 10 log.',
    changes: (plan) => trees(plan, logFactor(20, 10)),
  },
  {
    name: 'twenty-log-for-ten',
    explanation: 'A power takes 10 log, not 20 log.',
    changes: (plan) => trees(plan, logFactor(10, 20)),
  },
  {
    name: 'natural-log-for-decimal',
    explanation: 'Decibels need the decimal logarithm, not the natural one.',
    changes: (plan) => trees(plan, naturalLog),
  },
  {
    name: 'dbm-for-dbw',
    explanation:
      'A level in dBm stands where one in dBW belongs, or the other way round: they differ by 30 dB.',
    changes: (plan) => [
      ...givensThat(
        plan,
        (name) => /Dbw$/.test(name),
        (value) => value + 30,
      ),
      ...givensThat(
        plan,
        (name) => /Dbm$/.test(name),
        (value) => value - 30,
      ),
    ],
  },
  {
    name: 'half-not-taken',
    explanation: 'The half was not taken.',
    changes: (plan) => trees(plan, undivided(2)),
  },
  {
    name: 'square-not-taken',
    explanation: 'The square was not taken.',
    changes: (plan) => trees(plan, unsquared),
  },
  {
    name: 'root-not-taken',
    explanation: 'The square root was not taken.',
    changes: (plan) => trees(plan, unrooted),
  },
  {
    name: 'half-way-from-zero',
    explanation:
      'Half the way between the two places was taken for the place itself: it counts from the first place, not from zero.',
    changes: (plan) => trees(plan, halfWayFromZero),
  },
  {
    name: 'gain-subtracted',
    explanation: 'A gain was subtracted; gains are positive and added.',
    changes: (plan) => trees(plan, subtracted(/\bgain\b/)),
  },
  {
    name: 'loss-added',
    explanation: 'A loss was added; losses are positive and subtracted.',
    changes: (plan) => trees(plan, lossSign),
  },
  {
    name: 'percentage-not-converted',
    explanation: 'A percentage was used as it stands; as a ratio it is a hundredth of that.',
    changes: (plan) => trees(plan, undivided(100)),
  },
  {
    name: 'guard-band-reversed',
    explanation:
      'The guard band was put on the wrong side of the limit: to accept, the reading must be better than the limit by it.',
    changes: (plan) => trees(plan, subtracted(/^guard band$/)),
  },
  {
    name: 'expanded-for-standard',
    explanation: 'The expanded uncertainty (k = 2) stands where the standard one belongs.',
    changes: (plan) =>
      givensThat(
        plan,
        (name) => /standardUncertainty/i.test(name),
        (value) => value * 2,
      ),
  },
  {
    name: 'prior-left-out',
    explanation:
      'What was known before the observation was left out: the likelihood ratio alone is no probability.',
    changes: (plan) => {
      const priors = plan.givens.filter(({ name }) => /^prior/.test(name));
      const even = Object.fromEntries(priors.map(({ symbol }) => [symbol, 1]));
      return priors.length > 0 ? [{ givens: (values) => ({ ...values, ...even }) }] : [];
    },
  },
  {
    name: 'odds-for-probability',
    explanation: 'Odds are no probability: a share is the odds over one and the odds.',
    changes: (plan) => trees(plan, oddsForShare),
  },
  {
    name: 'spherical-earth',
    explanation:
      'The Earth was taken as a sphere; the ellipsoid gives a slightly different direction.',
    changes: (plan) =>
      plan.constants
        .filter(({ symbol }) => symbol === 'e2')
        .map(({ symbol }) => given(symbol, () => 0)),
  },
  {
    name: 'radius-for-diameter',
    explanation: 'The radius stands where the diameter belongs.',
    changes: (plan) =>
      givensThat(
        plan,
        (name) => /diameterM$/i.test(name),
        (value) => value / 2,
      ),
  },
  {
    name: 'diameter-for-radius',
    explanation: 'The diameter stands where the radius belongs.',
    changes: (plan) =>
      givensThat(
        plan,
        (name) => /diameterM$/i.test(name),
        (value) => value * 2,
      ),
  },
  {
    name: 'mhz-for-ghz',
    explanation: 'The frequency was put in in MHz; it belongs in GHz.',
    changes: (plan) =>
      givensThat(
        plan,
        (name) => /GHz$/.test(name),
        (value) => value * 1000,
      ),
  },
  {
    name: 'metres-for-kilometres',
    explanation: 'A distance was put in in metres; it belongs in kilometres.',
    changes: (plan) =>
      givensThat(
        plan,
        (name) => /Km$/.test(name),
        (value) => value * 1000,
      ),
  },
  {
    name: 'sine-for-cosine',
    explanation: 'Sine and cosine were exchanged.',
    changes: (plan) => trees(plan, crossed),
  },
];
