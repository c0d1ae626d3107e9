/** What a formula is read with: the decisions, the names, and the place that the reader has come to. */

import { type FormulaNode, refuseAt } from './parse.js';
import type { Token } from './tokens.js';
import { binary, identifier, literal } from './trees.js';

/** What may be read in two ways, and how it is read. */
export interface Choices {
  /** Angles of the functions that do not say it themselves. */
  readonly angles: 'degrees' | 'radians';
  /** `a/bc` is a/(bc), not (a/b)c. */
  readonly tight: boolean;
  /** A function without brackets reaches over a slash: `log d/λ` is log(d/λ). */
  readonly reach: boolean;
  /** ATAN2 takes x first, as in a spreadsheet. */
  readonly xFirst: boolean;
  /** `log` is the natural logarithm. */
  readonly natural: boolean;
  /** `-x^2` is (-x)^2, as in a spreadsheet. */
  readonly minusFirst: boolean;
}

/** What came up while reading, for what is told. */
export type Came =
  | 'angle-functions'
  | 'product-after-slash'
  | 'function-reach'
  | 'arctangent-of-two'
  | 'log'
  | 'minus-before-power'
  | 'units';

/** What the tree is made with. */
export interface Reading {
  /** The text, for errors. */
  readonly formula: string;
  readonly choices: Choices;
  /** The tree of a name; `undefined` for an unknown one. */
  readonly nameTree: (name: string) => FormulaNode | undefined;
  /** The end of an error about an unknown name: which are known. */
  readonly known: string;
  readonly came: Set<Came>;
}

/** Closing brackets by their opening ones. */
export const OPENERS: ReadonlyMap<string, string> = new Map([
  ['(', ')'],
  ['[', ']'],
  ['{', '}'],
]);

const DEGREE = binary('/', identifier('pi'), literal(180));

/** An angle in degrees as radians, and back. */
export const inRadians = (node: FormulaNode): FormulaNode => binary('*', node, DEGREE);
export const inDegrees = (node: FormulaNode): FormulaNode => binary('/', node, DEGREE);

/** The tokens and the place among them. */
export interface Cursor {
  /** The token at the place, or some further on; the last one beyond the end. */
  readonly peek: (ahead?: number) => Token;
  readonly isMark: (text: string, ahead?: number) => boolean;
  /** Goes on; gives the token that was at the place. */
  readonly skip: (count?: number) => Token;
  /** Refuses in words what is at the place. */
  readonly fail: (expected: string, slip?: string) => never;
}

/** A cursor at the first token. */
export function cursorOf(tokens: readonly Token[], formula: string): Cursor {
  let next = 0;
  const peek = (ahead = 0): Token => tokens[Math.min(next + ahead, tokens.length - 1)] as Token;
  return {
    peek,
    isMark: (text, ahead = 0) => peek(ahead).kind === 'mark' && peek(ahead).text === text,
    skip: (count = 1) => {
      const token = peek();
      next += count;
      return token;
    },
    fail: (expected, slip) => refuseAt(formula, peek().at, expected, slip),
  };
}
