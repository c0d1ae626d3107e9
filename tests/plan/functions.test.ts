/** Functions that fit on a screen or two, and how often the source says `as number` instead of reading a list by a checked reader. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { filesBelow } from '../support/imports.js';
import { FULL_RUNS, share } from '../support/runs.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
/** Lines of a function, head and closing bracket counted in. */
const MOST_LINES = 80;
/** Lines of the source with a cast to a number (`docs/decisions/checked-columns.md`): the rest may only fall. */
const MOST_CASTS = 90;

/** Longer ones, and why. */
const LONGER: Readonly<Record<string, string>> = {
  'src/teaching/formula/arithmetic.ts arithmeticTree':
    'a reader of one grammar: its rules are functions that call each other in a circle and share one cursor',
  'src/teaching/formula/application.ts applicationOf':
    'the rules for functions of the same grammar, apart for their idea',
};

/** What a function is called: its own name, or that of what it is given to. */
function nameOf(node: ts.Node): string {
  for (let at = node; at !== undefined; at = at.parent) {
    const { name } = at as ts.NamedDeclaration;
    if (name !== undefined) return name.getText();
  }
  return '';
}

/** Functions of a text with more lines than that. */
function longFunctions(file: string, text: string, most: number): readonly string[] {
  // A short file holds no long function, and need not be read as a tree.
  if (text.split('\n').length <= most) return [];
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const line = (at: number) => source.getLineAndCharacterOfPosition(at).line;
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body !== undefined)
      if (line(node.end) - line(node.getStart()) + 1 > most) found.push(`${file} ${nameOf(node)}`);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const texts = filesBelow('src').map((file) => [file, readFileSync(root + file, 'utf8')] as const);

describe('functions', () => {
  test(`none has more than ${MOST_LINES} lines but those with a reason`, () => {
    expect(texts.length).toBeGreaterThan(400);
    // Reading all files as trees takes two seconds: the short form reads a third of them.
    const long = share(texts, 3).flatMap(([file, text]) => longFunctions(file, text, MOST_LINES));
    if (FULL_RUNS) expect(long.sort()).toEqual(Object.keys(LONGER).sort());
    else expect(Object.keys(LONGER)).toEqual(expect.arrayContaining(long));
  });

  test('a longer one would be found, whatever it is declared as', () => {
    const lines = '\n  f();'.repeat(3);
    const text = `function a() {${lines}\n}\nconst b = () => {${lines}\n};\nconst c = { d() {${lines}\n} };\nconst e = () => f();`;
    expect(longFunctions('x.ts', text, 4)).toEqual(['x.ts a', 'x.ts b', 'x.ts d']);
    expect(longFunctions('x.ts', text, 5)).toEqual([]);
  });
});

test(`at most ${MOST_CASTS} lines say 'as number'`, () => {
  const lines = texts.flatMap(([, text]) => text.split('\n'));
  expect(lines.filter((line) => /\bas number\b/.test(line)).length).toBeLessThanOrEqual(MOST_CASTS);
});
