/** A function and what it is taken of: its arguments, in brackets or beside it, its angles, its power. */

import { fromModule, functionNamed, type NamedFunction } from './functionNames.js';
import { type FormulaNode, refuseAt } from './parse.js';
import { type Cursor, inDegrees, inRadians, OPENERS, type Reading } from './reading.js';
import type { Token } from './tokens.js';
import { binary, call, identifier, literal, numberOf } from './trees.js';

/** Functions of an angle in radians by their name in degrees. */
const TWIN: Readonly<Record<string, string>> = {
  sin: 'sinRad',
  cos: 'cosRad',
  tan: 'tanRad',
  asin: 'asinRad',
  acos: 'acosRad',
  atan: 'atanRad',
  atan2: 'atan2Rad',
};
const INVERSE: Readonly<Record<string, string>> = { sin: 'asin', cos: 'acos', tan: 'atan' };

/** The reader of what stands around and inside a function. */
export interface Around {
  readonly sum: () => FormulaNode;
  readonly comparison: () => FormulaNode;
  readonly signed: () => FormulaNode;
  readonly powered: () => FormulaNode;
  readonly exponent: () => FormulaNode;
  readonly marked: () => FormulaNode;
  readonly bracketed: () => FormulaNode;
  /** What a slash divides by, as far as products without a sign reach. */
  readonly divisor: () => FormulaNode;
  readonly startsFactor: () => boolean;
  readonly closed: (open: string, what: string) => void;
}

/** Reads a function whose name has just been passed. */
export function applicationOf(
  cursor: Cursor,
  reading: Reading,
  around: Around,
): (token: Token, named: NamedFunction) => FormulaNode {
  const { formula, choices, nameTree, came } = reading;
  const { peek, isMark, skip, fail } = cursor;
  const { sum, comparison, signed, powered, exponent, marked, bracketed, divisor } = around;
  const { startsFactor, closed } = around;
  return application;

  function application(token: Token, { base, angle }: NamedFunction): FormulaNode {
    if (base === 'pi') {
      if (isMark('(') && isMark(')', 1)) skip(2);
      return identifier('pi');
    }
    let power: FormulaNode | undefined;
    let name = base;
    if (peek().kind === 'superscript') power = literal(Number(skip().text));
    else if (isMark('^') && !isMark('°', 1)) {
      skip();
      power = isMark('{') || isMark('(') ? bracketed() : isMark('-') ? exponent() : marked();
    }
    if (power && numberOf(power) === -1 && INVERSE[base] !== undefined) {
      name = INVERSE[base] as string;
      power = undefined;
    }
    const turned = angle === 'radians' || (angle === 'mode' && choices.angles === 'radians');
    if (angle === 'mode') came.add('angle-functions');
    const args = argumentsOf(token, name);
    const result = applied(token, name, turned, args);
    return power ? binary('**', result, power) : result;
  }

  /** The arguments in brackets, or what stands beside a function without them. */
  function argumentsOf(token: Token, name: string): readonly FormulaNode[] {
    if (peek().kind === 'mark' && OPENERS.has(peek().text)) {
      const open = peek().text;
      skip();
      if (isMark(OPENERS.get(open) as string))
        return fail(`what '${token.text}' is taken of`, 'its brackets are empty');
      const args = [comparisonIf(name)];
      while (isMark(',') || isMark(';')) {
        skip();
        args.push(sum());
      }
      closed(open, 'an operator');
      return args;
    }
    if (!startsFactor() && peek().kind !== 'number' && !isMark('-'))
      return fail(`what '${token.text}' is taken of`, 'are its brackets missing?');
    let inner = signed();
    while (startsFactor() && !(peek().kind === 'name' && isFunctionNext()))
      inner = binary('*', inner, powered());
    if (isMark('/') && !(peek(1).kind === 'name' && isFunctionNext(1))) {
      came.add('function-reach');
      if (choices.reach) {
        skip();
        inner = binary('/', inner, divisor());
      }
    }
    return [inner];
  }

  function comparisonIf(name: string): FormulaNode {
    return name === 'if' ? comparison() : sum();
  }

  function isFunctionNext(ahead = 0): boolean {
    const { text } = peek(ahead);
    return (
      nameTree(text) === undefined &&
      functionNamed(text) !== undefined &&
      text.toLowerCase() !== 'pi'
    );
  }

  function applied(
    token: Token,
    name: string,
    turned: boolean,
    args: readonly FormulaNode[],
  ): FormulaNode {
    const wanted = (counts: readonly number[], words: string): void => {
      if (!counts.includes(args.length))
        refuseAt(
          formula,
          token.at + token.text.length,
          words,
          args.length > 1 && counts[0] === 1
            ? 'is a decimal comma meant? Then write it between two digits without a space'
            : undefined,
        );
    };
    const [first, second, third] = args as [FormulaNode, FormulaNode, FormulaNode];
    const twin = (base: string) => (turned ? (TWIN[base] as string) : base);
    switch (name) {
      case 'atan2': {
        wanted([2], 'two sides in brackets');
        came.add('arctangent-of-two');
        return choices.xFirst ? call(twin(name), second, first) : call(twin(name), first, second);
      }
      case 'cot':
        wanted([1], 'one angle in brackets');
        return binary('/', literal(1), call(twin('tan'), first));
      case 'log':
        wanted([1, 2], 'a number, and a base if there is one, in brackets');
        if (args.length === 2) return binary('/', call('ln', first), call('ln', second));
        came.add('log');
        return call(choices.natural || fromModule(token.text) ? 'ln' : 'log', first);
      case 'log10':
        wanted([1], 'one number in brackets');
        return call('log', first);
      case 'power':
        wanted([2], 'a base and an exponent in brackets');
        return binary('**', first, second);
      case 'round': {
        wanted([1, 2], 'a number, and its decimals if there are any, in brackets');
        if (args.length === 1) return call('round', first);
        const factor = binary('**', literal(10), second);
        return binary('/', call('round', binary('*', first, factor)), factor);
      }
      case 'radians':
        wanted([1], 'one angle in brackets');
        return inRadians(first);
      case 'degrees':
        wanted([1], 'one angle in brackets');
        return inDegrees(first);
      case 'if':
        wanted([3], 'a comparison and two values in brackets');
        return call('if', first, second, third);
      case 'mod':
      case 'min':
      case 'max':
      case 'student':
        wanted([2], 'two numbers in brackets');
        return call(name, first, second);
      default:
        wanted([1], name in TWIN ? 'one angle or ratio in brackets' : 'one number in brackets');
        return call(name in TWIN ? twin(name) : name, first);
    }
  }
}
