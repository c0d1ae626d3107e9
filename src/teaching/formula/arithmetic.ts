/** Tokens of a formula made into a tree: what binds closer, where a product has no sign, how far a function reaches. */

import { applicationOf } from './application.js';
import { functionNamed } from './functionNames.js';
import type { FormulaNode } from './parse.js';
import { cursorOf, inRadians, OPENERS, type Reading } from './reading.js';
import type { Token } from './tokens.js';
import { binary, call, identifier, literal, negated, numberOf } from './trees.js';

const COMPARISONS: readonly string[] = ['<', '>', '<=', '>=', '=', '<>'];
/** Deepest brackets that are followed. */
const DEEPEST = 60;

/** Tree of tokens; refuses in words what cannot be read on. */
export function arithmeticTree(tokens: readonly Token[], reading: Reading): FormulaNode {
  const { formula, choices, nameTree, came } = reading;
  let depth = 0;
  let insideBars = 0;
  const cursor = cursorOf(tokens, formula);
  const { peek, isMark, skip, fail } = cursor;
  const application = applicationOf(cursor, reading, {
    sum,
    comparison,
    signed,
    powered,
    exponent,
    marked,
    bracketed,
    divisor: () => whole(chain()),
    startsFactor,
    closed,
  });

  const tree = sum();
  if (peek().kind !== 'end') {
    const { kind, text } = peek();
    if (kind === 'number') fail('an operator', 'is a * or a decimal point missing?');
    if (kind === 'mark' && ')]}'.includes(text)) fail('the end', 'is there one bracket too many?');
    if (text === ',')
      fail(
        'an operator or the end',
        'is a decimal comma meant? Then write it between two digits without a space',
      );
    if (COMPARISONS.includes(text))
      fail('an operator or the end', 'a formula has one side; leave out the sign =');
    fail('an operator or the end');
  }
  return tree;

  function sum(): FormulaNode {
    if (++depth > DEEPEST)
      fail('an end of the brackets', 'so many brackets in each other are not read');
    let left = product();
    while (isMark('+') || isMark('-')) {
      const operator = peek().text;
      skip();
      left = binary(operator, left, product());
    }
    depth--;
    return left;
  }

  function comparison(): FormulaNode {
    const left = sum();
    const { kind, text } = peek();
    if (kind !== 'mark' || !COMPARISONS.includes(text)) return left;
    skip();
    return binary(text, left, sum());
  }

  function product(): FormulaNode {
    let left = chain();
    while (isMark('*') || isMark('/')) {
      const operator = peek().text;
      skip();
      const [number, behind] = [peek(), peek(1)];
      const right = chain();
      if (operator === '/' && right.rest) {
        came.add('product-after-slash');
        const tight = choices.tight && !(number.kind === 'number' && behind.spaced);
        left = {
          first: tight
            ? binary('/', whole(left), whole(right))
            : binary('*', binary('/', whole(left), right.first), right.rest),
        };
      } else left = { first: binary(operator, whole(left), whole(right)) };
    }
    return whole(left);
  }

  /** Factors that stand beside each other without a sign. */
  function chain(): { first: FormulaNode; rest?: FormulaNode } {
    const first = signed();
    let rest: FormulaNode | undefined;
    while (startsFactor()) {
      const factor = powered();
      rest = rest ? binary('*', rest, factor) : factor;
    }
    return rest ? { first, rest } : { first };
  }

  function whole({ first, rest }: { first: FormulaNode; rest?: FormulaNode }): FormulaNode {
    return rest ? binary('*', first, rest) : first;
  }

  function startsFactor(): boolean {
    const { kind, text } = peek();
    if (kind === 'name') return true;
    if (kind !== 'mark') return false;
    if (text === '|') return insideBars === 0;
    return OPENERS.has(text) || ['√', '∛', '∜', '\\frac', '\\sqrt'].includes(text);
  }

  function signed(): FormulaNode {
    if (isMark('+')) {
      skip();
      return signed();
    }
    if (!isMark('-')) return powered();
    skip();
    const bracketFirst = isMark('(');
    const inner = signed();
    const { operator, left, right } = inner as unknown as {
      operator?: string;
      left?: FormulaNode;
      right?: FormulaNode;
    };
    if (operator === '**' && left && right && !bracketFirst) {
      came.add('minus-before-power');
      if (choices.minusFirst) return binary('**', negated(left), right);
    }
    return negated(inner);
  }

  function powered(): FormulaNode {
    const base = marked();
    if (!isMark('^')) return base;
    skip();
    return binary('**', base, exponent());
  }

  function exponent(): FormulaNode {
    if (isMark('-')) {
      skip();
      return negated(exponent());
    }
    if (isMark('+')) skip();
    return powered();
  }

  /** What stands right behind a number, a name or a bracket: raised digits, degree marks, minutes, per cent, units. */
  function marked(): FormulaNode {
    let node = primary();
    for (;;) {
      const { kind, text } = peek();
      if (kind === 'superscript') {
        skip();
        node = binary('**', node, literal(Number(text)));
      } else if (kind === 'mark' && text === '°') {
        skip();
        node = sexagesimal(node);
      } else if (isMark('^') && isMark('°', 1)) {
        skip(2);
        node = sexagesimal(node);
      } else if (isMark('^') && isMark('{', 1) && isMark('°', 2) && isMark('}', 3)) {
        skip(4);
        node = sexagesimal(node);
      } else if (kind === 'mark' && text === '%') {
        skip();
        node = binary('/', node, literal(100));
      } else if (kind === 'unit') {
        skip();
        came.add('units');
      } else return node;
    }
  }

  /** 46° 24′ 30″ as one number; a degree mark alone changes nothing but where functions take radians. */
  function sexagesimal(node: FormulaNode): FormulaNode {
    let degrees = node;
    const whole = numberOf(node);
    for (const [mark, parts] of [
      ['′', 60],
      ['″', 3600],
    ] as const) {
      if (whole === undefined || peek().kind !== 'number' || !isMark(mark, 1)) continue;
      degrees = binary('+', degrees, binary('/', literal(Number(peek().text)), literal(parts)));
      skip(2);
    }
    return choices.angles === 'radians' ? inRadians(degrees) : degrees;
  }

  function closed(open: string, what: string): void {
    const close = OPENERS.get(open) as string;
    if (!isMark(close))
      fail(
        `${what} or the closing bracket '${close}'`,
        peek().text === ',' ? 'is a decimal comma meant? Then write it without a space' : undefined,
      );
    skip();
  }

  function bracketed(): FormulaNode {
    const open = peek().text;
    if (!OPENERS.has(open)) fail('an opening bracket');
    skip();
    const inner = sum();
    closed(open, 'an operator');
    return inner;
  }

  function primary(): FormulaNode {
    const token = peek();
    if (token.kind === 'number') {
      skip();
      return literal(Number(token.text), token.text);
    }
    if (token.kind === 'name') return named();
    if (token.kind === 'superscript' && /^\d$/.test(token.text) && isMark('√', 1)) {
      skip(2);
      return root(Number(token.text), marked());
    }
    if (token.kind === 'mark') {
      const { text } = token;
      if (OPENERS.has(text)) return bracketed();
      if (text === '|') {
        skip();
        insideBars++;
        const outer = insideBars;
        const inner = sum();
        insideBars = outer - 1;
        if (!isMark('|')) fail("the second '|'");
        skip();
        return call('abs', inner);
      }
      const degree = { '√': 2, '∛': 3, '∜': 4 }[text];
      if (degree !== undefined) {
        skip();
        return root(degree, marked());
      }
      if (text === '\\sqrt') {
        skip();
        if (!isMark('[')) return call('sqrt', bracketed());
        skip();
        const degree = sum();
        closed('[', 'a number');
        return binary('**', bracketed(), binary('/', literal(1), degree));
      }
      if (text === '\\frac') {
        skip();
        const top = bracketed();
        return binary('/', top, bracketed());
      }
    }
    return fail(
      'a number, a name or a bracket',
      token.kind === 'end' ? 'is the formula cut off?' : undefined,
    );
  }

  function root(degree: number, inner: FormulaNode): FormulaNode {
    return degree === 2
      ? call('sqrt', inner)
      : binary('**', inner, binary('/', literal(1), literal(degree)));
  }

  function named(): FormulaNode {
    const token = peek();
    const variable = nameTree(token.text);
    if (variable) {
      skip();
      return variable;
    }
    const known = functionNamed(token.text);
    if (known) {
      skip();
      return application(token, known);
    }
    if (/^(?:pi|π)$/i.test(token.text)) {
      skip();
      return identifier('pi');
    }
    if (token.text === 'e') {
      skip();
      return identifier('e');
    }
    return fail(
      reading.known,
      isMark('(', 1) && !isMark(')', 2)
        ? `'${token.text}' is no function that is known here`
        : `'${token.text}' is unknown; say what it stands for, as in ${token.text} = …`,
    );
  }
}
