/** The usual faults of a formula, each as a corrected tree that is then held against the exact function. */

import type jsep from 'jsep';
import type { FormulaNode } from '../formula/parse.js';
import { unitFactors } from '../formula/roles.js';
import type { FormulaVariable } from '../formula/subject.js';
import { treeToText } from '../formula/tex.js';
import {
  binary,
  call,
  functionOf,
  identifier,
  literal,
  negated,
  numberOf,
  oneChanged,
  rebuilt,
} from '../formula/trees.js';

/** What a formula can have wrong. */
export type FormulaFault =
  | 'sign'
  | 'offset'
  | 'factor'
  | 'constant'
  | 'angle-unit'
  | 'unit'
  | 'function'
  | 'wrong-variable'
  | 'operation'
  | 'quadrant'
  | 'hemisphere'
  | 'part-of-region';

/** A corrected formula and what was wrong with the first one. */
export interface Correction {
  readonly fault: FormulaFault;
  /** What is wrong, as a sentence that begins in small letters. */
  readonly says: string;
  readonly tree: FormulaNode;
}

const text = (node: FormulaNode) => treeToText(node, (symbol) => symbol);
const plus = (tree: FormulaNode, value: number) =>
  value < 0 ? binary('-', tree, literal(-value)) : binary('+', tree, literal(value));

/** Corrections of a power in dBW that is taken for one in dBm, or the other way round. */
export function levelCorrections(tree: FormulaNode, unit: string): readonly Correction[] {
  if (!/^dB[Wm]$/.test(unit)) return [];
  return [
    {
      fault: 'unit',
      says: 'its power is in dBW where dBm is asked: 30 dB are missing',
      tree: plus(tree, 30),
    },
    {
      fault: 'unit',
      says: 'its power is in dBm where dBW is asked: 30 dB are too many',
      tree: plus(tree, -30),
    },
  ];
}

/** Corrections of the whole: its sign, what is added to it, what it is multiplied by. */
export function wholeCorrections(tree: FormulaNode, unit: string): readonly Correction[] {
  const angle = unit === 'deg';
  const turned = negated(tree);
  const list: Correction[] = [
    { fault: 'sign', says: 'the sign of the whole is turned', tree: turned },
  ];
  const offset = (value: number, says: string, from = tree) =>
    list.push({ fault: 'offset', says, tree: plus(from, value) });
  if (angle) {
    for (const value of [180, 90, -90, 360])
      offset(value, `${Math.abs(value)} degrees must be ${value < 0 ? 'subtracted' : 'added'}`);
    offset(
      180,
      'the sign is turned and 180 degrees are missing: it must be subtracted from 180',
      turned,
    );
    offset(90, 'it gives the complement: it must be subtracted from 90', turned);
    offset(360, 'it must be subtracted from 360', turned);
    offset(-90, 'the sign is turned and 90 degrees are too many', turned);
    list.push(
      {
        fault: 'angle-unit',
        says: 'the answer is in radians, not in degrees',
        tree: binary('*', tree, binary('/', literal(180), identifier('pi'))),
      },
      {
        fault: 'angle-unit',
        says: 'the answer is turned into degrees once too often',
        tree: binary('*', tree, binary('/', identifier('pi'), literal(180))),
      },
      ...['atan', 'asin', 'acos'].map(
        (name): Correction => ({
          fault: 'function',
          says: `the ${INVERSE_SAID[name]} of it is not taken`,
          tree: call(name, tree),
        }),
      ),
    );
  } else if (/^dB/.test(unit)) {
    for (const ten of [10, 20])
      list.push({
        fault: 'function',
        says: `${ten} times its logarithm is not taken`,
        tree: binary('*', literal(ten), call('log', tree)),
      });
  }
  for (const [value, said] of [
    [2, 'half of what it should be'],
    [0.5, 'twice what it should be'],
  ] as const)
    list.push({ fault: 'factor', says: `it is ${said}`, tree: binary('*', literal(value), tree) });
  list.push(
    { fault: 'operation', says: 'the square root is not taken', tree: call('sqrt', tree) },
    { fault: 'operation', says: 'it is not squared', tree: binary('**', tree, literal(2)) },
  );
  return list;
}

const INVERSE_SAID: Readonly<Record<string, string>> = {
  atan: 'arctangent',
  asin: 'arcsine',
  acos: 'arccosine',
};

/** The tree with every variable replaced that `change` has something for. */
function withVariables(
  tree: FormulaNode,
  change: Readonly<Record<string, FormulaNode>>,
): FormulaNode {
  const changes = new Map(Object.entries(change));
  return rebuilt(tree, (node) =>
    node.type === 'Identifier' ? (changes.get((node as jsep.Identifier).name) ?? node) : node,
  );
}

const said = (name: string) =>
  name
    .replace(/(?:DbPerK|Deg|GHz|MHz|MmPerH|Dbi?w?m?|Km|Mm|M|K|W)$/, '')
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** Corrections of what is put in: signs, names exchanged, units. */
export function variableCorrections(
  tree: FormulaNode,
  variables: readonly FormulaVariable[],
): readonly Correction[] {
  const list: Correction[] = [];
  const of = ({ name, symbol }: FormulaVariable) =>
    ([name, symbol] as const).map((each) => [each, identifier(each)] as const);
  for (const variable of variables) {
    if (variable.least >= 0) continue;
    const turned = Object.fromEntries(of(variable).map(([name, node]) => [name, negated(node)]));
    list.push({
      fault: 'sign',
      says:
        variable.name === 'longitudeDifferenceDeg'
          ? 'the sign of the longitude difference is turned (station less satellite, or longitudes counted to the west)'
          : `the sign of the ${said(variable.name)} is turned`,
      tree: withVariables(tree, turned),
    });
  }
  for (const [index, first] of variables.entries())
    for (const second of variables.slice(index + 1))
      list.push({
        fault: 'wrong-variable',
        says: `${said(first.name)} and ${said(second.name)} stand in each other's place`,
        tree: withVariables(
          tree,
          Object.fromEntries([
            ...of(first).map(([name]) => [name, identifier(second.symbol)]),
            ...of(second).map(([name]) => [name, identifier(first.symbol)]),
          ]),
        ),
      });
  for (const variable of variables)
    for (const [unit, factor] of Object.entries(unitFactors(variable.name))) {
      const found = /^([*/])([\d.]+)$/.exec(factor);
      if (!found || Number(found[2]) === 1 || /W$/.test(unit)) continue;
      const counted = Object.fromEntries(
        of(variable).map(([name, node]) => [
          name,
          binary(found[1] as string, node, literal(Number(found[2]))),
        ]),
      );
      const own = variable.name.match(/(?:GHz|MHz|Km|Mm|M|W)$/)?.[0] ?? '';
      list.push({
        fault: 'unit',
        says: `it wants the ${said(variable.name)} in ${unit}, not in ${OWN_UNIT[own] ?? own}`,
        tree: withVariables(tree, counted),
      });
    }
  return list;
}

const OWN_UNIT: Readonly<Record<string, string>> = { Km: 'km', Mm: 'mm', M: 'm' };

const FORWARD: Readonly<Record<string, string>> = {
  sinRad: 'sin',
  cosRad: 'cos',
  tanRad: 'tan',
};
const BACK: Readonly<Record<string, string>> = {
  asinRad: 'asin',
  acosRad: 'acos',
  atanRad: 'atan',
  atan2Rad: 'atan2',
};
const reversed = (names: Readonly<Record<string, string>>) =>
  Object.fromEntries(Object.entries(names).map(([from, to]) => [to, from]));

/** Corrections of degrees taken for radians and the other way round. */
export function angleCorrections(tree: FormulaNode): readonly Correction[] {
  const renamed = (names: Readonly<Record<string, string>>) => {
    const map = new Map(Object.entries(names));
    return rebuilt(tree, (node) => {
      const name = map.get(functionOf(node));
      return name === undefined ? node : call(name, ...(node as jsep.CallExpression).arguments);
    });
  };
  const degrees = 'degrees are put in where the functions take radians';
  const radians = 'radians are put in where the functions take degrees';
  return [
    { says: degrees, names: FORWARD },
    { says: `${degrees}, and the answer is left in radians`, names: { ...FORWARD, ...BACK } },
    { says: 'the inverse functions give radians, and degrees are needed', names: BACK },
    { says: radians, names: reversed(FORWARD) },
    {
      says: `${radians}, and the answer is taken for radians`,
      names: reversed({ ...FORWARD, ...BACK }),
    },
  ].map(({ says, names }): Correction => ({ fault: 'angle-unit', says, tree: renamed(names) }));
}

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

/** Corrections of one place inside the formula: a function, an operator, a variable. */
export function insideCorrections(
  tree: FormulaNode,
  variables: readonly FormulaVariable[],
): readonly Correction[] {
  const list: Correction[] = [];
  const variableSaid = (node: FormulaNode) => {
    const own = (node as jsep.Identifier).name;
    return said(variables.find(({ name, symbol }) => name === own || symbol === own)?.name ?? own);
  };
  /** Trees in which one node is another one; the sentence comes from the node and what stands in its place. */
  const each = (
    fault: FormulaFault,
    variants: (node: FormulaNode) => readonly (readonly [node: FormulaNode, says: string])[],
  ): void => {
    const sentences: string[] = [];
    const trees = oneChanged(tree, (node) =>
      variants(node).map(([changed, says]) => {
        sentences.push(says);
        return changed;
      }),
    );
    trees.forEach((changed, index) => {
      list.push({ fault, says: sentences[index] ?? '', tree: changed });
    });
  };
  each('sign', (node) => {
    const { operator, left, right } = node as jsep.BinaryExpression;
    if (node.type !== 'BinaryExpression' || !(operator === '+' || operator === '-')) return [];
    return [
      [
        binary(MIRRORED[operator] as string, left, right),
        `there is ${operator === '+' ? 'a plus where a minus' : 'a minus where a plus'} belongs, before ${text(right)}`,
      ],
    ];
  });
  each('wrong-variable', (node) => {
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
    const own = (node as jsep.Identifier).name;
    const here = variables.find(({ name, symbol }) => name === own || symbol === own);
    return variables
      .filter((variable) => here && variable !== here)
      .map(({ symbol, name }) => [
        identifier(symbol),
        `the ${said(here?.name ?? '')} stands where the ${said(name)} belongs`,
      ]);
  });
  each('function', (node) => {
    const name = functionOf(node);
    const family = FAMILIES.find((names) => names.includes(name));
    const args = name === '' ? [] : (node as jsep.CallExpression).arguments;
    return (family ?? [])
      .filter((other) => other !== name)
      .map((other) => [
        call(other, ...args),
        `there is a ${saidFunction(name)} where a ${saidFunction(other)} belongs, of ${text(args[0] as FormulaNode)}`,
      ]);
  });
  each('angle-unit', (node) => {
    const name = functionOf(node);
    const twin = FORWARD[name] ?? BACK[name] ?? reversed(FORWARD)[name] ?? reversed(BACK)[name];
    if (name === '' || twin === undefined) return [];
    return [
      [
        call(twin, ...(node as jsep.CallExpression).arguments),
        `one ${saidFunction(name)} has degrees and radians mixed up`,
      ],
    ];
  });
  each('operation', (node) => {
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
        [square, `the ${variableSaid(node)} is not squared`],
        [call('sqrt', node), `the square root of the ${variableSaid(node)} is not taken`],
      ];
    }
    if (node.type !== 'BinaryExpression') return [];
    const { operator, left, right } = node as jsep.BinaryExpression;
    if (operator === '**')
      return [
        [left, `a power is taken too much, of ${text(left)}`],
        [call('sqrt', left), `a power stands where a square root belongs, of ${text(left)}`],
      ];
    const rootOf = (inner: FormulaNode) => `the square root is not taken, of ${text(inner)}`;
    if (operator === '*')
      return [
        [binary('/', left, right), `it multiplies by ${text(right)} where it should divide`],
        [binary('/', right, left), `it multiplies by ${text(left)} where it should divide`],
        [binary('*', left, call('sqrt', right)), rootOf(right)],
      ];
    if (operator === '/') {
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
    if (operator === '-')
      return [
        [binary('-', right, left), 'the two sides of the subtraction are exchanged'],
        [call('sqrt', node), rootOf(node)],
      ];
    if (operator === '+') return [[call('sqrt', node), rootOf(node)]];
    return [];
  });
  return list;
}
