/** Faults at one place inside a formula: a sign, a variable, a function, an operation that is another one. */

import type jsep from 'jsep';
import type { FormulaNode } from '../formula/parse.js';
import type { FormulaVariable } from '../formula/subject.js';
import {
  binary,
  call,
  functionOf,
  identifier,
  literal,
  numberOf,
  oneChanged,
} from '../formula/trees.js';
import {
  BACK,
  type Correction,
  FORWARD,
  type FormulaFault,
  INVERSE_SAID,
  reversed,
  said,
  text,
} from './faults.js';

const FAMILIES: readonly (readonly string[])[] = [
  ['sin', 'tan', 'cos'],
  ['sinRad', 'tanRad', 'cosRad'],
  ['asin', 'atan', 'acos'],
  ['asinRad', 'atanRad', 'acosRad'],
  ['log', 'ln'],
  ['min', 'max'],
];
const SAID: Readonly<Record<string, string>> = {
  sin: 'sine',
  cos: 'cosine',
  tan: 'tangent',
  ...INVERSE_SAID,
  log: 'decimal logarithm',
  ln: 'natural logarithm',
  min: 'minimum',
  max: 'maximum',
};
const saidFunction = (name: string) => SAID[name.replace(/Rad$/, '')] ?? name;
const MIRRORED: Readonly<Record<string, string>> = { '+': '-', '-': '+', '*': '/', '/': '*' };

/** What may stand in the place of a node, and what was wrong then. */
type Variants = (
  node: FormulaNode,
  variables: readonly FormulaVariable[],
) => readonly (readonly [node: FormulaNode, says: string])[];

/** The variable that a node names. */
function variableOf(
  node: FormulaNode,
  variables: readonly FormulaVariable[],
): FormulaVariable | undefined {
  const own = (node as jsep.Identifier).name;
  return variables.find(({ name, symbol }) => name === own || symbol === own);
}

const saidOf = (node: FormulaNode, variables: readonly FormulaVariable[]) =>
  said(variableOf(node, variables)?.name ?? (node as jsep.Identifier).name);
const rootOf = (inner: FormulaNode) => `the square root is not taken, of ${text(inner)}`;

const signs: Variants = (node) => {
  const { operator, left, right } = node as jsep.BinaryExpression;
  if (node.type !== 'BinaryExpression' || !(operator === '+' || operator === '-')) return [];
  return [
    [
      binary(MIRRORED[operator] as string, left, right),
      `there is ${operator === '+' ? 'a plus where a minus' : 'a minus where a plus'} belongs, before ${text(right)}`,
    ],
  ];
};

const variablesInstead: Variants = (node, variables) => {
  if (numberOf(node) === 10 && (node as jsep.Literal).raw === '10')
    return variables.map(({ symbol, name }) => [
      identifier(symbol),
      `the longitude of the station stands where the ${said(name)} belongs`,
    ]);
  if (node.type === 'BinaryExpression' && text(node) === 'dlon + 10')
    return variables.map(({ symbol, name }) => [
      identifier(symbol),
      `the longitude of the satellite stands where the ${said(name)} belongs`,
    ]);
  if (node.type !== 'Identifier') return [];
  const here = variableOf(node, variables);
  return variables
    .filter((variable) => here && variable !== here)
    .map(({ symbol, name }) => [
      identifier(symbol),
      `the ${said(here?.name ?? '')} stands where the ${said(name)} belongs`,
    ]);
};

const functionsInstead: Variants = (node) => {
  const name = functionOf(node);
  const family = FAMILIES.find((names) => names.includes(name));
  const args = name === '' ? [] : (node as jsep.CallExpression).arguments;
  return (family ?? [])
    .filter((other) => other !== name)
    .map((other) => [
      call(other, ...args),
      `there is a ${saidFunction(name)} where a ${saidFunction(other)} belongs, of ${text(args[0] as FormulaNode)}`,
    ]);
};

const angleUnits: Variants = (node) => {
  const name = functionOf(node);
  const twin = FORWARD[name] ?? BACK[name] ?? reversed(FORWARD)[name] ?? reversed(BACK)[name];
  if (name === '' || twin === undefined) return [];
  return [
    [
      call(twin, ...(node as jsep.CallExpression).arguments),
      `one ${saidFunction(name)} has degrees and radians mixed up`,
    ],
  ];
};

const operations: Variants = (node, variables) => {
  if (functionOf(node) === 'sqrt' || functionOf(node) === 'abs') {
    const inner = (node as jsep.CallExpression).arguments[0] as FormulaNode;
    return [
      [
        inner,
        `${functionOf(node) === 'abs' ? 'the sign is dropped' : 'a square root is taken too much'}, of ${text(inner)}`,
      ],
    ];
  }
  if (node.type === 'Identifier') {
    const square = binary('**', node, literal(2));
    return [
      [square, `the ${saidOf(node, variables)} is not squared`],
      [call('sqrt', node), `the square root of the ${saidOf(node, variables)} is not taken`],
    ];
  }
  if (node.type !== 'BinaryExpression') return [];
  const { operator, left, right } = node as jsep.BinaryExpression;
  if (operator === '**')
    return [
      [left, `a power is taken too much, of ${text(left)}`],
      [call('sqrt', left), `a power stands where a square root belongs, of ${text(left)}`],
    ];
  if (operator === '*')
    return [
      [binary('/', left, right), `it multiplies by ${text(right)} where it should divide`],
      [binary('/', right, left), `it multiplies by ${text(left)} where it should divide`],
      [binary('*', left, call('sqrt', right)), rootOf(right)],
    ];
  if (operator === '/') return quotients(node as jsep.BinaryExpression);
  if (operator === '-')
    return [
      [binary('-', right, left), 'the two sides of the subtraction are exchanged'],
      [call('sqrt', node), rootOf(node)],
    ];
  if (operator === '+') return [[call('sqrt', node), rootOf(node)]];
  return [];
};

/** What a quotient may have been meant for. */
function quotients(node: jsep.BinaryExpression): ReturnType<Variants> {
  const { left, right } = node;
  const top = left as jsep.BinaryExpression;
  const inner: (readonly [FormulaNode, string])[] =
    left.type === 'BinaryExpression' && top.operator === '*'
      ? [
          [
            binary('/', binary('*', top.left, right), top.right),
            `${text(top.right)} and ${text(right)} stand in each other's place in the fraction`,
          ],
        ]
      : [];
  return [
    [binary('*', left, right), `it divides by ${text(right)} where it should multiply`],
    [binary('/', right, left), 'the two sides of the fraction are exchanged'],
    [binary('/', left, call('sqrt', right)), rootOf(right)],
    [call('sqrt', node), rootOf(node)],
    ...inner,
  ];
}

/** The faults in the order in which they are tried. */
const FAULTS: readonly (readonly [fault: FormulaFault, variants: Variants])[] = [
  ['sign', signs],
  ['wrong-variable', variablesInstead],
  ['function', functionsInstead],
  ['angle-unit', angleUnits],
  ['operation', operations],
];

/** Corrections of one place inside the formula: trees in which one node is another one. */
export function insideCorrections(
  tree: FormulaNode,
  variables: readonly FormulaVariable[],
): readonly Correction[] {
  return FAULTS.flatMap(([fault, variants]) => {
    const sentences: string[] = [];
    const trees = oneChanged(tree, (node) =>
      variants(node, variables).map(([changed, says]) => {
        sentences.push(says);
        return changed;
      }),
    );
    return trees.map((changed, index) => ({ fault, says: sentences[index] ?? '', tree: changed }));
  });
}
