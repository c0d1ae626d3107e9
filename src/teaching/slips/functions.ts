/** Slips of functions and powers: sine for cosine, a square, a root or a half not taken, a function left out. */

import { valueNamed } from '../../numeric/columns.js';
import type { FormulaNode } from '../formula/parse.js';
import { binary, call, functionOf, literal } from '../formula/trees.js';
import type { SolutionPlan } from '../plans/plan.js';
import { stepTree } from '../solution/stepTree.js';
import { answered, lastStep, type NodeRule, type Slip, type SlipChange, trees } from './slip.js';
import {
  callArguments,
  factorsOf,
  literalValue,
  placesOf,
  productOf,
  sidesOf,
  symbolName,
} from './tree.js';
import { undivided } from './units.js';

/** A rule for all places, for those of each step, and for each place alone. */
function anywhere(plan: SolutionPlan, rule: NodeRule): readonly SlipChange[] {
  return [
    ...trees(plan, rule),
    ...plan.steps.flatMap((own) => {
      const { symbol } = own;
      const fits = placesOf(stepTree(own)).filter(({ node }) => rule(node, plan) !== node);
      return fits.length < 2
        ? []
        : fits.map(({ node, put }): SlipChange => {
            const changed = put(rule(node, plan));
            return {
              step: symbol,
              tree: (tree, step) => (step.symbol === symbol ? changed : tree),
            };
          });
    }),
  ];
}

/** One function for another. */
const renamed =
  (from: string, to: string): NodeRule =>
  (node) =>
    functionOf(node) === from ? call(to, ...callArguments(node)) : node;

/** Sine for cosine and back. */
const crossed: NodeRule = (node) => {
  const name = functionOf(node);
  if (name === 'sin') return call('cos', ...callArguments(node));
  if (name === 'asin') return call('acos', ...callArguments(node));
  if (name === 'acos') return call('asin', ...callArguments(node));
  return name === 'cos' ? call('sin', ...callArguments(node)) : node;
};

/** A square left out. */
const unsquared: NodeRule = (node) => {
  const parts = sidesOf(node);
  return parts?.operator === '**' && literalValue(parts.right) === 2 ? parts.left : node;
};

/** A square root left out. */
const unrooted: NodeRule = (node) =>
  functionOf(node) === 'sqrt' ? (callArguments(node)[0] ?? node) : node;

/** Odd powers of a symbol: `R^al`. */
const raised = (node: FormulaNode) => {
  const power = sidesOf(node);
  return power?.operator === '**' &&
    symbolName(power.left) !== undefined &&
    symbolName(power.right) !== undefined
    ? power
    : undefined;
};

const TRIGONOMETRIC = ['sin', 'cos', 'tan'];
const INVERSE = ['asin', 'acos', 'atan', 'atan2'];

/** An arctangent of two sides as a function of their quotient. */
const ofQuotient =
  (name: string): NodeRule =>
  (node) => {
    const [y, x] = callArguments(node);
    if (functionOf(node) === 'atan' && y) return call(name, y);
    return functionOf(node) === 'atan2' && y && x ? call(name, binary('/', y, x)) : node;
  };

/** The slips. */
export const FUNCTION_SLIPS: readonly Slip[] = [
  {
    name: 'half-not-taken',
    group: 'function',
    explanation: 'The half was not taken.',
    changes: (plan) => [...anywhere(plan, undivided(2)), ...withoutTwo(plan)],
  },
  {
    name: 'square-not-taken',
    group: 'function',
    explanation: 'The square was not taken.',
    changes: (plan) => [...anywhere(plan, unsquared), ...anywhere(plan, productUnsquared)],
  },
  {
    name: 'root-not-taken',
    group: 'function',
    explanation: 'The square root was not taken.',
    changes: (plan) => anywhere(plan, unrooted),
  },
  {
    name: 'root-taken',
    group: 'function',
    explanation: 'A square root was taken where none belongs.',
    reach: 'item',
    changes: (plan) =>
      anywhere(plan, (node) => {
        const terms = sidesOf(node);
        return terms?.operator === '-' && literalValue(terms.left) === 1 && symbolName(terms.right)
          ? call('sqrt', node)
          : node;
      }),
  },
  {
    name: 'power-for-product',
    group: 'function',
    explanation: 'An exponent was taken as a factor.',
    changes: (plan) =>
      trees(plan, (node) => {
        const power = raised(node);
        return power ? binary('*', power.left, power.right) : node;
      }),
  },
  {
    name: 'power-left-out',
    group: 'function',
    explanation: 'The exponent was left out.',
    changes: (plan) => trees(plan, (node) => raised(node)?.left ?? node),
  },
  {
    name: 'sine-for-cosine',
    group: 'function',
    explanation: 'Sine and cosine were exchanged.',
    changes: (plan) => anywhere(plan, crossed),
  },
  {
    name: 'sine-for-tangent',
    group: 'function',
    explanation:
      'The sine stands where the tangent belongs: what is known are the two sides at the right angle.',
    changes: (plan) => [
      ...trees(plan, ofQuotient('asin')),
      ...trees(plan, renamed('tan', 'sin')),
      ...roundEarthSine(plan),
    ],
  },
  {
    name: 'tangent-for-cosine',
    group: 'function',
    explanation: 'The tangent stands where the sine or the cosine belongs.',
    changes: (plan) => [
      ...trees(plan, renamed('acos', 'atan')),
      ...trees(plan, renamed('cos', 'tan')),
      ...trees(plan, renamed('sin', 'tan')),
      ...trees(plan, ofQuotient('acos')),
    ],
  },
  {
    name: 'double-angle',
    group: 'function',
    explanation: 'Twice the angle was put in.',
    reach: 'item',
    changes: (plan) =>
      trees(plan, (node) => {
        const [angle] = TRIGONOMETRIC.includes(functionOf(node)) ? callArguments(node) : [];
        return angle ? call(functionOf(node), binary('*', literal(2), angle)) : node;
      }),
  },
  {
    name: 'half-angle',
    group: 'function',
    explanation: 'Half of the right answer, as if counted to one side only.',
    changes: (plan) =>
      /beamwidth|angle|error/.test(lastStep(plan).meaning) ? [answered((value) => value / 2)] : [],
  },
  {
    name: 'half-too-much',
    group: 'function',
    explanation:
      'Half of the right answer: a half was taken where none belongs, or a two was forgotten.',
    reach: 'vague',
    changes: () => [answered((value) => value / 2)],
  },
  {
    name: 'twice-too-much',
    group: 'function',
    explanation: 'Twice the right answer: a half was forgotten, or both sides were counted.',
    reach: 'vague',
    changes: () => [answered((value) => value * 2)],
  },
  {
    name: 'half-for-full-width',
    group: 'function',
    explanation:
      'The beamwidth counts from edge to edge; half of it was put in, or the whole where the half belongs.',
    changes: (plan) => [
      ...plan.givens
        .filter(({ meaning }) => /beamwidth/.test(meaning))
        .flatMap(({ symbol }) =>
          [0.5, 2].map(
            (factor): SlipChange => ({
              givens: (values) => ({ ...values, [symbol]: valueNamed(values, symbol) * factor }),
            }),
          ),
        ),
      ...(/^half width/.test(lastStep(plan).meaning)
        ? [
            answered(
              (half) => 2 * half,
              'This is the whole width of the interval; asked for is the half to one side.',
            ),
          ]
        : []),
    ],
  },
  {
    name: 'function-left-out',
    group: 'function',
    explanation:
      'A function was left out: the angle of a quotient is its arctangent, the decibels are a logarithm.',
    reach: 'item',
    changes: (plan) => [
      ...trees(plan, (node) => {
        const [y, x] = callArguments(node);
        if (functionOf(node) === 'atan2' && y && x) return binary('/', y, x);
        return INVERSE.includes(functionOf(node)) && y ? y : node;
      }),
      ...anywhere(plan, (node) =>
        ['log', 'log10', 'ln', 'exp', ...TRIGONOMETRIC].includes(functionOf(node))
          ? (callArguments(node)[0] ?? node)
          : node,
      ),
      // The factor of the tangent on the angle itself.
      ...trees(plan, (node) => {
        const [of] = functionOf(node) === 'atan' ? callArguments(node) : [];
        const parts = of && sidesOf(of);
        const [angle] =
          parts && functionOf(parts.right) === 'tan' ? callArguments(parts.right) : [];
        return parts?.operator === '*' && angle ? binary('*', parts.left, angle) : node;
      }),
    ],
  },
  {
    name: 'slope-for-angle',
    group: 'function',
    explanation: 'This is the slope in percent; the angle is its arctangent.',
    changes: (plan) =>
      lastStep(plan).unit === 'deg'
        ? trees(plan, (node) => {
            const [y, x] = callArguments(node);
            return functionOf(node) === 'atan2' && y && x
              ? binary('*', literal(100), binary('/', y, x))
              : node;
          })
        : [],
  },
];

/** A two below the line left out: `F * L^2 / (2 * E * I)`. */
function withoutTwo(plan: SolutionPlan): readonly SlipChange[] {
  return trees(plan, (node) => {
    if (sidesOf(node)?.operator !== '/') return node;
    const factors = factorsOf(node);
    const left = factors.filter(({ node: each, sign }) => sign === 1 || literalValue(each) !== 2);
    return left.length < factors.length && left.length > 0 ? productOf(left) : node;
  });
}

/** The square of a product taken of one factor only: `4 * pi * s / wl` without its square. */
function productUnsquared(node: FormulaNode): FormulaNode {
  const power = sidesOf(node);
  const inside = power && sidesOf(power.left);
  return power?.operator === '**' && literalValue(power.right) === 2 && inside?.operator === '/'
    ? binary('/', inside.left, binary('**', inside.right, literal(2)))
    : node;
}

/** The azimuth of the round Earth with the sine of the difference for its tangent. */
function roundEarthSine(plan: SolutionPlan): readonly SlipChange[] {
  const [lat, lon, sat] = ['latitudeDeg', 'longitudeDeg', 'orbitalLongitudeDeg'].map(
    (name) => plan.givens.find((given) => given.name === name)?.symbol,
  );
  if (plan.periodDeg !== 360 || !lat || !lon || !sat) return [];
  const radians = Math.PI / 180;
  return [
    answered((_, values) => {
      const latitude = valueNamed(values, lat) * radians;
      const difference = (valueNamed(values, sat) - valueNamed(values, lon)) * radians;
      const turned = Math.atan(Math.sin(difference) / Math.sin(Math.abs(latitude))) / radians;
      return latitude < 0 ? turned : 180 - turned;
    }),
    answered((_, values) => {
      const latitude = valueNamed(values, lat) * radians;
      const difference = (valueNamed(values, sat) - valueNamed(values, lon)) * radians;
      return 180 - Math.atan(Math.sin(difference) / Math.sin(latitude)) / radians;
    }, 'The sine stands where the tangent belongs in the short formula, and in the south 180 degrees are not added.'),
  ];
}
