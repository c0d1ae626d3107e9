/** Tokens of a formula made into a tree: what binds closer, where a product has no sign, how far a function reaches. */

import { fromModule, functionNamed, type NamedFunction } from './functionNames.js';
import { type FormulaNode, refuseAt } from './parse.js';
import type { Token } from './tokens.js';
import { binary, call, identifier, literal, negated, numberOf } from './trees.js';

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

const DEGREE = binary('/', identifier('pi'), literal(180));
const OPENERS: ReadonlyMap<string, string> = new Map([
  ['(', ')'],
  ['[', ']'],
  ['{', '}'],
]);
const COMPARISONS: readonly string[] = ['<', '>', '<=', '>=', '=', '<>'];
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
/** Deepest brackets that are followed. */
const DEEPEST = 60;

/** Tree of tokens; refuses in words what cannot be read on. */
export function arithmeticTree(tokens: readonly Token[], reading: Reading): FormulaNode {
  const { formula, choices, nameTree, came } = reading;
  let next = 0;
  let depth = 0;
  let insideBars = 0;
  const peek = (ahead = 0): Token => tokens[Math.min(next + ahead, tokens.length - 1)] as Token;
  const isMark = (text: string, ahead = 0) =>
    peek(ahead).kind === 'mark' && peek(ahead).text === text;
  const fail = (expected: string, slip?: string): never =>
    refuseAt(formula, peek().at, expected, slip);
  const radians = (node: FormulaNode) => binary('*', node, DEGREE);

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
      next++;
      left = binary(operator, left, product());
    }
    depth--;
    return left;
  }

  function comparison(): FormulaNode {
    const left = sum();
    const { kind, text } = peek();
    if (kind !== 'mark' || !COMPARISONS.includes(text)) return left;
    next++;
    return binary(text, left, sum());
  }

  function product(): FormulaNode {
    let left = chain();
    while (isMark('*') || isMark('/')) {
      const operator = peek().text;
      next++;
      const before = next;
      const right = chain();
      if (operator === '/' && right.rest) {
        came.add('product-after-slash');
        const tight =
          choices.tight && !(tokens[before]?.kind === 'number' && tokens[before + 1]?.spaced);
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
      next++;
      return signed();
    }
    if (!isMark('-')) return powered();
    next++;
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
    next++;
    return binary('**', base, exponent());
  }

  function exponent(): FormulaNode {
    if (isMark('-')) {
      next++;
      return negated(exponent());
    }
    if (isMark('+')) next++;
    return powered();
  }

  /** What stands right behind a number, a name or a bracket: raised digits, degree marks, minutes, per cent, units. */
  function marked(): FormulaNode {
    let node = primary();
    for (;;) {
      const { kind, text } = peek();
      if (kind === 'superscript') {
        next++;
        node = binary('**', node, literal(Number(text)));
      } else if (kind === 'mark' && text === '°') {
        next++;
        node = sexagesimal(node);
      } else if (isMark('^') && isMark('°', 1)) {
        next += 2;
        node = sexagesimal(node);
      } else if (isMark('^') && isMark('{', 1) && isMark('°', 2) && isMark('}', 3)) {
        next += 4;
        node = sexagesimal(node);
      } else if (kind === 'mark' && text === '%') {
        next++;
        node = binary('/', node, literal(100));
      } else if (kind === 'unit') {
        next++;
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
      next += 2;
    }
    return choices.angles === 'radians' ? radians(degrees) : degrees;
  }

  function closed(open: string, what: string): void {
    const close = OPENERS.get(open) as string;
    if (!isMark(close))
      fail(
        `${what} or the closing bracket '${close}'`,
        peek().text === ',' ? 'is a decimal comma meant? Then write it without a space' : undefined,
      );
    next++;
  }

  function bracketed(): FormulaNode {
    const open = peek().text;
    if (!OPENERS.has(open)) fail('an opening bracket');
    next++;
    const inner = sum();
    closed(open, 'an operator');
    return inner;
  }

  function primary(): FormulaNode {
    const token = peek();
    if (token.kind === 'number') {
      next++;
      return literal(Number(token.text), token.text);
    }
    if (token.kind === 'name') return named();
    if (token.kind === 'superscript' && /^\d$/.test(token.text) && isMark('√', 1)) {
      next += 2;
      return root(Number(token.text), marked());
    }
    if (token.kind === 'mark') {
      const { text } = token;
      if (OPENERS.has(text)) return bracketed();
      if (text === '|') {
        next++;
        insideBars++;
        const outer = insideBars;
        const inner = sum();
        insideBars = outer - 1;
        if (!isMark('|')) fail("the second '|'");
        next++;
        return call('abs', inner);
      }
      const degree = { '√': 2, '∛': 3, '∜': 4 }[text];
      if (degree !== undefined) {
        next++;
        return root(degree, marked());
      }
      if (text === '\\sqrt') {
        next++;
        if (!isMark('[')) return call('sqrt', bracketed());
        next++;
        const degree = sum();
        closed('[', 'a number');
        return binary('**', bracketed(), binary('/', literal(1), degree));
      }
      if (text === '\\frac') {
        next++;
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
      next++;
      return variable;
    }
    const known = functionNamed(token.text);
    if (known) {
      next++;
      return application(token, known);
    }
    if (/^(?:pi|π)$/i.test(token.text)) {
      next++;
      return identifier('pi');
    }
    if (token.text === 'e') {
      next++;
      return identifier('e');
    }
    return fail(
      reading.known,
      isMark('(', 1) && !isMark(')', 2)
        ? `'${token.text}' is no function that is known here`
        : `'${token.text}' is unknown; say what it stands for, as in ${token.text} = …`,
    );
  }

  function application(token: Token, { base, angle }: NamedFunction): FormulaNode {
    if (base === 'pi') {
      if (isMark('(') && isMark(')', 1)) next += 2;
      return identifier('pi');
    }
    let power: FormulaNode | undefined;
    let name = base;
    if (peek().kind === 'superscript') power = literal(Number(tokens[next++]?.text));
    else if (isMark('^') && !isMark('°', 1)) {
      next++;
      power = isMark('{') || isMark('(') ? bracketed() : isMark('-') ? exponent() : marked();
    }
    if (power && numberOf(power) === -1 && INVERSE[base] !== undefined) {
      name = INVERSE[base] as string;
      power = undefined;
    }
    const inRadians = angle === 'radians' || (angle === 'mode' && choices.angles === 'radians');
    if (angle === 'mode') came.add('angle-functions');
    const args = argumentsOf(token, name);
    const result = applied(token, name, inRadians, args);
    return power ? binary('**', result, power) : result;
  }

  /** The arguments in brackets, or what stands beside a function without them. */
  function argumentsOf(token: Token, name: string): readonly FormulaNode[] {
    if (peek().kind === 'mark' && OPENERS.has(peek().text)) {
      const open = peek().text;
      next++;
      if (isMark(OPENERS.get(open) as string))
        return fail(`what '${token.text}' is taken of`, 'its brackets are empty');
      const args = [comparisonIf(name)];
      while (isMark(',') || isMark(';')) {
        next++;
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
        next++;
        inner = binary('/', inner, whole(chain()));
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
    inRadians: boolean,
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
    const twin = (base: string) => (inRadians ? (TWIN[base] as string) : base);
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
        return radians(first);
      case 'degrees':
        wanted([1], 'one angle in brackets');
        return binary('/', first, DEGREE);
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
