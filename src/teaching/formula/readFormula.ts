/** A formula as installers hand it around, read into the library's notation, with everything that had to be decided told. */

import { list, text } from '../../errors.js';
import { arithmeticTree } from './arithmetic.js';
import { expanded } from './expanded.js';
import { type NameTable, nameTable } from './nameTable.js';
import { type FormulaNode, formulaText } from './parse.js';
import type { Came, Reading } from './reading.js';
import {
  type Decisions,
  type Evidence,
  evidenceOf,
  type FormulaRemark,
  remarksOf,
} from './remarks.js';
import { type Role, rolesOf } from './roles.js';
import { type Definition, statementsOf } from './statements.js';
import type { FormulaSubject } from './subject.js';
import { treeToText } from './tex.js';
import { tokensOf } from './tokens.js';
import { call, identifier, negated, rebuilt } from './trees.js';

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
