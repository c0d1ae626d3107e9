/** Parsing of a typed formula into a tree, shared by everything that reads formulas. */

import jsep from 'jsep';
import { DomainError } from '../../errors.js';

/** A node of a formula's tree; the parser's own types stay out of the public ones. */
export interface FormulaNode {
  /** Kind of the node: `Literal`, `BinaryExpression` and so on. */
  readonly type: string;
}

/** Longest formula that is read, in characters. */
const LONGEST = 400;

/** The error of a formula that is not arithmetic. */
export function refuseFormula(received: string, allowed: string, slip?: string): never {
  throw new DomainError({ code: 'malformed', parameter: 'formula', received, allowed, slip });
}

/** Tree of a formula; what may stand in it is decided by whoever walks it. */
export function formulaTree(formula: string): FormulaNode {
  if (typeof formula !== 'string' || formula.trim() === '')
    throw new DomainError({
      code: formula === undefined || formula === null ? 'missing' : 'malformed',
      parameter: 'formula',
      received: formula,
      allowed: 'an arithmetic expression',
    });
  if (formula.length > LONGEST) refuseFormula(formula, `of at most ${LONGEST} characters`);
  try {
    // The parser's own ^ is a bitwise operator of another rank.
    return jsep(formula.replace(/\^/g, '**').replace(/[−–]/g, '-').replace(/[·×]/g, '*'));
  } catch (error) {
    return refuseFormula(
      formula,
      'an arithmetic expression',
      error instanceof Error ? error.message : undefined,
    );
  }
}
