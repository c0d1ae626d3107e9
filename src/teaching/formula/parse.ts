/** Parsing of a plan's expression into a tree, and the words of the errors of everything that reads formulas. */

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

/** The error of a formula that cannot be read on from a place: what was expected there, in a person's words. */
export function refuseAt(formula: string, at: number, expected: string, slip?: string): never {
  const before = formula.slice(0, at).trimEnd();
  const where =
    at >= formula.trimEnd().length
      ? 'at its end'
      : before === ''
        ? 'at its beginning'
        : `after '${before.length > 24 ? `…${before.slice(-23)}` : before}' (character ${at + 1})`;
  return refuseFormula(formula, `readable: ${where} ${expected} is expected`, slip);
}

/** The formula's text; refuses what is no text, empty or too long. */
export function formulaText(formula: string): string {
  if (typeof formula !== 'string' || formula.trim() === '')
    throw new DomainError({
      code: formula === undefined || formula === null ? 'missing' : 'malformed',
      parameter: 'formula',
      received: formula,
      allowed: 'an arithmetic expression',
    });
  if (formula.length > LONGEST) refuseFormula(formula, `of at most ${LONGEST} characters`);
  return formula;
}

/** Tree of a plan's expression, in the library's own notation; what may stand in it is decided by whoever walks it. */
export function formulaTree(formula: string): FormulaNode {
  const text = formulaText(formula);
  try {
    // The parser's own ^ is a bitwise operator of another rank.
    return jsep(text.replace(/\^/g, '**').replace(/[−–]/g, '-').replace(/[·×]/g, '*'));
  } catch (error) {
    return refuseFormula(
      formula,
      'an arithmetic expression',
      error instanceof Error ? error.message : undefined,
    );
  }
}
