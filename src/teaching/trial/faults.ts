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

/** A tree as a person types it. */
export const text = (node: FormulaNode) => treeToText(node, (symbol) => symbol);
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

/** Inverse functions in words. */
export const INVERSE_SAID: Readonly<Record<string, string>> = {
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

/** The words in a variable's name. */
export const said = (name: string) =>
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

/** Functions that take radians, and the same that take degrees. */
export const FORWARD: Readonly<Record<string, string>> = {
  sinRad: 'sin',
  cosRad: 'cos',
  tanRad: 'tan',
};
/** Functions that give radians, and the same that give degrees. */
export const BACK: Readonly<Record<string, string>> = {
  asinRad: 'asin',
  acosRad: 'acos',
  atanRad: 'atan',
  atan2Rad: 'atan2',
};
/** The other way round. */
export const reversed = (names: Readonly<Record<string, string>>) =>
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
