/** A formula as installers hand it around, read into the library's notation, with everything that had to be decided told. */

import { list, text } from '../../errors.js';
import { arithmeticTree, type Came, type Choices, type Reading } from './arithmetic.js';
import { fromModule, functionNamed } from './functionNames.js';
import { type NameTable, nameTable } from './nameTable.js';
import { type FormulaNode, formulaText } from './parse.js';
import { type Role, rolesOf } from './roles.js';
import { type Definition, statementsOf } from './statements.js';
import type { FormulaSubject } from './subject.js';
import { treeToText } from './tex.js';
import { type Token, tokensOf } from './tokens.js';
import { call, identifier, negated, rebuilt } from './trees.js';

/** What was decided in reading a formula. */
export interface FormulaRemark {
  /** Which decision, as a fixed word. */
  readonly code:
    | 'angles'
    | 'arctangent-order'
    | 'decimal-comma'
    | 'function-reach'
    | 'logarithm'
    | 'minus-before-power'
    | 'name'
    | 'product-after-slash'
    | 'thousands'
    | 'units';
  /** The decision in a sentence. */
  readonly says: string;
}

/** A formula that was read. */
export interface ReadFormula {
  readonly tree: FormulaNode;
  /** The formula in the library's notation. */
  readonly text: string;
  readonly remarks: readonly FormulaRemark[];
  /** How it was read, and each other way in which it could be. */
  readonly decisions: Decisions;
  readonly others: readonly Decisions[];
}

/** All that may be decided. */
export interface Decisions extends Choices {
  readonly thousands: boolean;
}

/** Units that may stand behind a number. */
const UNITS: ReadonlySet<string> = new Set(
  'km m cm mm GHz MHz kHz Hz dB dBi dBm dBW dBµV dBuV K W mW kW deg degrees rad s µs ns V mV ft miles mi inch Ohm ohm kBd MBd MSps'.split(
    ' ',
  ),
);
const CENT = new Set([
  'dBi',
  'dB',
  'dBW',
  'dBm',
  'deg',
  'GHz',
  'MHz',
  'km',
  'm',
  'cm',
  'mm',
  'Hz',
  'rad',
]);

/** The table of a subject's names. */
export function subjectNames(
  subject: Pick<FormulaSubject, 'name' | 'variables'>,
  formula: string,
): NameTable {
  const logarithm = /log|lg|ln/i.test(formula);
  const symbols = subject.variables.map(({ symbol }) => symbol);
  return nameTable(rolesOf(subject.name, subject.variables, logarithm), symbols);
}

/** A table of names that stand for themselves. */
export function plainNames(variables: readonly string[]): NameTable {
  const roles = Array.from(list('variables', variables), (given, index): Role => {
    const name = text(`variables[${index}]`, given);
    return { name, expression: name, said: name };
  });
  return nameTable(roles, variables);
}

/** Reads a formula; `decided` overrules what the text suggests. */
export function readFormula(
  input: {
    readonly formula: string;
    readonly names: NameTable;
    readonly legend?: Readonly<Record<string, string>> | undefined;
  },
  decided: Partial<Decisions> = {},
): ReadFormula {
  const formula = formulaText(input.formula);
  const { names } = input;
  const statements = statementsOf(formula, input.legend ?? {}, (name) =>
    names.symbols.includes(name),
  );
  const thousands = decided.thousands ?? true;
  const cut = (text: string) => tokensOf(text, { thousands });
  const main = cut(statements.formula);
  const parts = statements.definitions.map((definition) => ({
    definition,
    cut: cut(definition.text),
  }));
  const known = definedNames(statements.definitions);
  const tokens = expanded(main.tokens, names, known);
  const others = parts.map((part) => ({
    ...part,
    tokens: expanded(part.cut.tokens, names, known),
  }));
  const all = [tokens, ...others.map((part) => part.tokens)];
  const evidence = evidenceOf(all, statements);
  const decisions: Decisions = { ...evidence.decisions, thousands, ...decided };
  const variables = [
    ...new Set(
      all
        .flat()
        .flatMap(({ kind, text }) =>
          kind === 'name' && !known.has(text) && names.knows(text) ? [text] : [],
        ),
    ),
  ];
  const read = names.assign(variables);
  const defined = new Map<string, FormulaNode>();
  const came = new Set<Came>();
  const reading = (text: string): Reading => ({
    formula: text,
    choices: decisions,
    nameTree: (name) => defined.get(name) ?? read.get(name)?.tree,
    known: `a name that is known here (${names.symbols.join(', ')})`,
    came,
  });
  for (const { definition, tokens: list } of others)
    defined.set(definition.name, arithmeticTree(list, reading(definition.text)));
  const side = arithmeticTree(tokens, reading(statements.formula));
  const tree = shortened(statements.inverse === '' ? side : call(`a${statements.inverse}`, side));
  const commas = [main, ...parts.map((part) => part.cut)];
  const remarks = remarksOf({
    came,
    decisions,
    spreadsheet: evidence.spreadsheet,
    converted: evidence.converted,
    thousands: commas.flatMap((each) => each.thousands),
    decimalCommas: commas.flatMap((each) => each.decimalCommas),
    told: [...read].flatMap(([name, { told }]) => (told === '' ? [] : [[name, told] as const])),
  });
  return {
    tree,
    text: treeToText(tree, (symbol) => symbol),
    remarks,
    decisions,
    others: otherDecisions(
      decisions,
      came,
      commas.some((each) => each.thousands.length > 0),
      evidence,
    ),
  };
}

/** The two longitudes as their difference again. */
function shortened(tree: FormulaNode): FormulaNode {
  return rebuilt(tree, (node) => {
    const text = node.type === 'BinaryExpression' ? treeToText(node, (symbol) => symbol) : '';
    if (text === 'dlon + 10 - 10') return identifier('dlon');
    return text === '10 - (dlon + 10)' ? negated(identifier('dlon')) : node;
  });
}

function definedNames(definitions: readonly Definition[]): ReadonlySet<string> {
  return new Set(definitions.map(({ name }) => name));
}

/** Names joined from several words, runs of letters taken apart, units behind numbers and names marked. */
function expanded(
  tokens: readonly Token[],
  names: NameTable,
  defined: ReadonlySet<string>,
): readonly Token[] {
  const list: Token[] = [];
  const variable = (name: string) => defined.has(name) || names.knows(name);
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    const before = list[list.length - 1];
    if (token.kind !== 'name') {
      // f(MHz), D [m]: a unit in brackets behind a name.
      const [inner, close] = [tokens[at + 1], tokens[at + 2]];
      if (
        before?.kind === 'name' &&
        /^[([]$/.test(token.text) &&
        inner?.kind === 'name' &&
        CENT.has(inner.text) &&
        /^[)\]]$/.test(close?.text ?? '') &&
        variable(before.text)
      ) {
        const counted = `${before.text}${inner.text}`;
        if (names.knows(counted)) list[list.length - 1] = { ...before, text: counted };
        at += 2;
        continue;
      }
      list.push(token);
      continue;
    }
    const single = [...token.text].length === 1;
    if (
      (before?.kind === 'number' || before?.kind === 'unit') &&
      UNITS.has(token.text) &&
      !defined.has(token.text) &&
      !(single && names.symbols.includes(token.text)) &&
      !(single && before.kind === 'number' && names.candidates(token.text).length > 0) &&
      !(functionNamed(token.text) && tokens[at + 1]?.text === '(')
    ) {
      list.push({ ...token, kind: 'unit' });
      // m/s, dBW/K/Hz: what a unit is divided by.
      while (
        tokens[at + 1]?.text === '/' &&
        tokens[at + 2]?.kind === 'name' &&
        (UNITS.has(tokens[at + 2]?.text ?? '') || tokens[at + 2]?.text === 's') &&
        !variable(tokens[at + 2]?.text ?? '')
      )
        at += 2;
      continue;
    }
    // 'site longitude', 'Δ λ', 'G/T': words that are one name together.
    const joined = [3, 2].flatMap((count) => {
      const words = tokens.slice(at, at + count);
      const slash = count === 3 && words[1]?.text === '/' && /^[GC]$/.test(words[0]?.text ?? '');
      if (words.length < count || !(slash || words.every(({ kind }) => kind === 'name'))) return [];
      const text = words.map((word) => word.text).join('');
      const apart = words.every((word) => word.text === '/' || [...word.text].length === 1);
      const together = slash || !apart || /^[Δδ]/.test(text);
      return together &&
        !words.some((word) => functionNamed(word.text)) &&
        names.knows(text) &&
        !allKnown(words)
        ? [{ text, count }]
        : [];
    })[0];
    if (joined) {
      list.push({ ...token, text: joined.text });
      at += joined.count - 1;
      continue;
    }
    if (variable(token.text) || functionNamed(token.text) || /^(?:pi|π|e)$/i.test(token.text)) {
      // tan with raised -1 and 'arc tan' are one function.
      if (/^(?:arc|inv)$/i.test(before?.text ?? '')) {
        list.pop();
        list.push({ ...token, text: `arc${token.text.toLowerCase()}` });
      } else list.push(token);
      continue;
    }
    const pieces = names.split(token.text);
    if (pieces && pieces.length > 1) {
      let start = token.at;
      pieces.forEach((text, index) => {
        list.push({ kind: 'name', text, at: start, spaced: index === 0 && token.spaced });
        start += text.length;
      });
    } else list.push(token);
  }
  return list;

  /** Words of more than a letter that are names each stay apart. */
  function allKnown(words: readonly Token[]): boolean {
    return (
      words.every(
        (word) => variable(word.text) && !/^[Δδ]$/.test(word.text) && !/^delta$/i.test(word.text),
      ) &&
      !words.some((word) => word.text === '/') &&
      !words.some((word) => /^(?:site|station|sat|satellite|slot)$/i.test(word.text))
    );
  }
}

interface Evidence {
  readonly decisions: Omit<Decisions, 'thousands'>;
  readonly spreadsheet: boolean;
  /** Whether the formula turns degrees into radians or back somewhere. */
  readonly converted: boolean;
}

/** What the notation says of itself: a spreadsheet's, a program's, or a hand's. */
function evidenceOf(
  lists: readonly (readonly Token[])[],
  statements: { readonly spreadsheet: boolean },
): Evidence {
  const tokens = lists.flat();
  const functions = tokens.filter(
    ({ kind, text }) => kind === 'name' && functionNamed(text) !== undefined && text.length > 1,
  );
  const capitals =
    functions.some(({ text }) => /^[A-Z]{3}/.test(text)) &&
    functions.every(({ text }) => text === text.toUpperCase());
  const modules = tokens.some(({ kind, text }) => kind === 'name' && fromModule(text));
  const turns = tokens.some(
    ({ kind, text }) =>
      kind === 'name' && ['radians', 'degrees'].includes(functionNamed(text)?.base ?? ''),
  );
  const isPi = (text: string | undefined) => /^(?:pi|π)$/i.test(text ?? '');
  const constants = tokens.some(({ kind, text }, at) => {
    if (kind === 'number' && /^(?:57\.[23]\d*|0?\.01745\d*)$/.test(text)) return true;
    if (kind !== 'number' || text !== '180') return false;
    const around = tokens.slice(Math.max(0, at - 4), at + 5).map((token) => token.text);
    return (
      (tokens[at - 1]?.text === '/' || tokens[at + 1]?.text === '/' || around.includes('\\frac')) &&
      around.some(isPi)
    );
  });
  const semicolons = tokens.some(({ text }) => text === ';');
  const spreadsheet = statements.spreadsheet || capitals || semicolons;
  const converted = turns || constants;
  return {
    spreadsheet,
    converted,
    decisions: {
      angles: converted || modules || statements.spreadsheet ? 'radians' : 'degrees',
      tight: true,
      reach: false,
      xFirst: spreadsheet,
      natural: modules,
      minusFirst: statements.spreadsheet,
    },
  };
}

function remarksOf(from: {
  readonly came: ReadonlySet<Came>;
  readonly decisions: Decisions;
  readonly spreadsheet: boolean;
  readonly converted: boolean;
  readonly thousands: readonly string[];
  readonly decimalCommas: readonly string[];
  readonly told: readonly (readonly [name: string, role: string])[];
}): readonly FormulaRemark[] {
  const { came, decisions, spreadsheet, converted } = from;
  const remarks: FormulaRemark[] = [];
  const tell = (code: FormulaRemark['code'], says: string) => remarks.push({ code, says });
  if (came.has('angle-functions') && decisions.angles === 'radians')
    tell(
      'angles',
      converted
        ? 'Sine, cosine and tangent are read in radians, because the formula converts between degrees and radians.'
        : 'Sine, cosine and tangent are read in radians, as spreadsheets and programs do.',
    );
  else if (came.has('angle-functions') && spreadsheet)
    tell(
      'angles',
      'Sine, cosine and tangent are read in degrees; a spreadsheet would take radians.',
    );
  if (came.has('arctangent-of-two'))
    tell(
      'arctangent-order',
      decisions.xFirst
        ? 'ATAN2 is read as spreadsheets do: x first, then y.'
        : 'atan2 is read as programs do: y first, then x.',
    );
  if (came.has('log'))
    tell(
      'logarithm',
      decisions.natural
        ? 'log is read as the natural logarithm, as in a program.'
        : 'log is read as the logarithm to base 10.',
    );
  if (came.has('minus-before-power'))
    tell(
      'minus-before-power',
      decisions.minusFirst
        ? 'The minus before a power is read as spreadsheets do: -x^2 is (-x)^2.'
        : 'The minus before a power is read as on paper: -x^2 is -(x^2).',
    );
  if (came.has('product-after-slash'))
    tell(
      'product-after-slash',
      decisions.tight
        ? 'Factors without a sign between them after a slash are read as one divisor: a/bc is a/(bc).'
        : 'Only the first factor after a slash is read as the divisor: a/bc is (a/b)c.',
    );
  if (came.has('function-reach'))
    tell(
      'function-reach',
      decisions.reach
        ? 'A function without brackets is taken of the whole quotient after it.'
        : 'A function without brackets is taken of what stands before the slash.',
    );
  for (const number of new Set(from.thousands))
    tell(
      'thousands',
      /[,]/.test(number) && !decisions.thousands
        ? `${number} is read with a decimal comma.`
        : `${number} is read as ${number.replace(/[^\d.]/g, '')}.`,
    );
  if (from.decimalCommas.length > 0)
    tell('decimal-comma', `${from.decimalCommas[0]} is read with a decimal comma.`);
  if (came.has('units'))
    tell('units', 'Units behind numbers are passed over; nothing is converted.');
  for (const [name, role] of from.told) tell('name', `${name} is read as ${saidRole(role)}.`);
  return remarks;
}

/** A role in words: `longitudeDifferenceDeg` is the longitude difference. */
function saidRole(role: string): string {
  if (/\s/.test(role)) return `the ${role}`;
  const words = role
    .replace(/(?:DbPerK|Deg|GHz|MHz|MmPerH|Dbi?w?m?|Km|Mm|M|K|W)$/, '')
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  const sign = role === 'longitudeDifferenceDeg' ? ', satellite less station, east positive' : '';
  return `the ${words}${sign}`;
}

/** The other ways in which the formula could be read, one decision changed each. */
function otherDecisions(
  decisions: Decisions,
  came: ReadonlySet<Came>,
  thousands: boolean,
  evidence: Evidence,
): readonly Decisions[] {
  const others: Decisions[] = [];
  if (thousands) others.push({ ...decisions, thousands: !decisions.thousands });
  if (came.has('product-after-slash')) others.push({ ...decisions, tight: !decisions.tight });
  if (came.has('function-reach')) others.push({ ...decisions, reach: !decisions.reach });
  if (came.has('arctangent-of-two') && evidence.spreadsheet)
    others.push({ ...decisions, xFirst: !decisions.xFirst });
  return others;
}
