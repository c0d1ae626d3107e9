/** The names of a formula brought to the variables of its subject. */

import { FUNCTION_STARTS } from './functionNames.js';
import { type FormulaNode, formulaTree } from './parse.js';
import { plainName, type Role, unitFactors } from './roles.js';

/** What a name was read as. */
interface ReadName {
  readonly tree: FormulaNode;
  /** What the person is told: `read as the latitude`; empty where nothing else could be meant. */
  readonly told: string;
}

/** Names that a formula may use. */
export interface NameTable {
  /** What a name may stand for; empty for an unknown one. */
  readonly candidates: (name: string) => readonly Role[];
  /** Whether it stands for something. */
  readonly knows: (name: string) => boolean;
  /** A run of letters as several known names: `fD` as f and D, `sinφ` as sin and φ; `undefined` where it is none. */
  readonly split: (name: string) => readonly string[] | undefined;
  /** Each name of a formula with its meaning. */
  readonly assign: (names: readonly string[]) => ReadonlyMap<string, ReadName>;
  /** Symbols for messages. */
  readonly symbols: readonly string[];
}

/** Longest run of letters that is taken apart, and most names that it may hold. */
const LONGEST_RUN = 24;
const MOST_PIECES = 6;

/** Table of the roles of a subject. */
export function nameTable(roles: readonly Role[], symbols: readonly string[]): NameTable {
  const byName = new Map<string, Role[]>();
  for (const role of roles)
    for (const said of role.said.split(' ').filter(Boolean)) {
      const key = [...said].length === 1 ? said : said.toLowerCase();
      const list = byName.get(key) ?? [];
      if (!list.includes(role)) byName.set(key, [...list, role]);
    }
  const exact = new Map(symbols.map((symbol) => [symbol, symbol]));
  const otherCase = (name: string) =>
    name === name.toLowerCase() ? name.toUpperCase() : name.toLowerCase();
  const found = (plain: string): readonly Role[] =>
    byName.get(plain) ?? ([...plain].length === 1 ? (byName.get(otherCase(plain)) ?? []) : []);
  const counted = (name: string): readonly Role[] => {
    for (const role of roles) {
      for (const [unit, factor] of Object.entries(unitFactors(role.name))) {
        if (!name.endsWith(unit) || name.length === unit.length) continue;
        const head = plainName(name.slice(0, name.length - unit.length));
        if (found(head).includes(role))
          return [{ ...role, expression: `(${role.expression} ${factor})` }];
      }
    }
    return [];
  };
  const candidates = (name: string): readonly Role[] => {
    const symbol = exact.get(name);
    if (symbol !== undefined) {
      const own = roles.find(({ expression }) => expression === symbol);
      const others = found(plainName(name));
      // A symbol of the subject means itself, but 'p' may be a level and 'd' may have other readings.
      return own && !others.some((role) => role !== own && roles.indexOf(role) < roles.indexOf(own))
        ? [own]
        : others;
    }
    const direct = found(plainName(name));
    return direct.length > 0 ? direct : counted(name);
  };
  const knows = (name: string) => candidates(name).length > 0;
  const piece = (text: string): boolean =>
    FUNCTION_STARTS.includes(text) || text === 'pi' || text === 'π' || knows(text);
  return {
    candidates,
    knows,
    split: (name) => piecesOf(name, piece),
    assign: (names) => assigned(new Map(names.map((name) => [name, candidates(name)]))),
    symbols,
  };
}

/** A run of letters cut into the fewest pieces that are names; `undefined` where it is no product. */
function piecesOf(name: string, piece: (text: string) => boolean): readonly string[] | undefined {
  if (name.length > LONGEST_RUN) return undefined;
  const best: (readonly string[] | undefined)[] = [[]];
  for (let end = 1; end <= name.length; end++) {
    for (let start = 0; start < end; start++) {
      const before = best[start];
      const text = name.slice(start, end);
      if (!before || !piece(text) || /^\d/.test(name.slice(end))) continue;
      const here = best[end];
      if (!here || before.length + 1 < here.length) best[end] = [...before, text];
    }
  }
  const pieces = best[name.length];
  // Without a function in it only a short run of single letters is a product; a longer one is a word that is unknown.
  const product =
    pieces?.some((text) => FUNCTION_STARTS.includes(text) || text === 'π') ||
    (name.length <= 3 && pieces?.every((text) => [...text].length === 1));
  return product && pieces && pieces.length <= MOST_PIECES ? pieces : undefined;
}

/**
 * Each name with its meaning, from what each may mean: first those that have but one in the company of the others, then the
 * rest, each with a role that is still free.
 */
function assigned(lists: ReadonlyMap<string, readonly Role[]>): ReadonlyMap<string, ReadName> {
  const has = (role: string, but: string) =>
    [...lists].some(([name, list]) => name !== but && list.some((each) => each.name === role));
  const taken = new Map<Role, string>();
  const read = new Map<string, ReadName>();
  const take = (name: string, role: Role, among: number): void => {
    if (!taken.has(role)) taken.set(role, name);
    const told = role.told || among > 1 ? role.name : '';
    read.set(name, { tree: formulaTree(role.expression), told });
  };
  const open: [string, readonly Role[]][] = [];
  for (const [name, list] of lists) {
    const met = list.filter(({ needs }) => needs === undefined || has(needs, name));
    const [first] = met;
    if (first && met.length === 1) take(name, first, list.length);
    else if (first) open.push([name, met]);
    else if (list[0]) take(name, list[0], 1);
  }
  for (const [name, list] of open) {
    const ordered = [
      ...list.filter(({ name: role }) => role === 'latitudeDeg'),
      ...list.filter(({ name: role, needs }) => role !== 'latitudeDeg' && needs !== undefined),
      ...list.filter(({ name: role, needs }) => role !== 'latitudeDeg' && needs === undefined),
    ];
    const free = ordered.find((role) => !taken.has(role)) ?? ordered[0];
    if (free) take(name, free, list.length);
  }
  return read;
}
