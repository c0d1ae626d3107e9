/** Each number that README, a page or an `Accuracy:` line promises stands in the list of claims, with the test that holds it. */

import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { allClaims, cell } from './claimsOf.js';

const LIST = 'docs/decisions/claims.md';
const rows = readFileSync(LIST, 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('| `'))
  .map((line) => {
    const cells = line.split(/(?<!\\)\|/).map((part) => part.trim());
    return { where: cells[1] ?? '', text: cells[2] ?? '', heldBy: cells[3] ?? '' };
  });
const whereOf = ({ file, name }: { readonly file: string; readonly name: string }) =>
  `\`${name === '' ? file : name}\``;

/** What is compared: where a claim stands and its figures; other words for the same figures are no other claim. */
const figures = (where: string, text: string) =>
  `${where} ${(text.match(/\d[\d.]*(e-\d+)?/g) ?? []).join(' ')}`;

test('the list has every claim with its figures, and no other; a new one needs a row with the test that holds it', () => {
  const told = rows.map(({ where, text }) => figures(where, text));
  const now = allClaims().map((claim) => figures(whereOf(claim), cell(claim.text)));
  expect(now.filter((claim) => !told.includes(claim))).toEqual([]);
  expect(told.filter((claim) => !now.includes(claim))).toEqual([]);
  expect(now.length).toBeGreaterThan(140);
});

test('each names a test that there is, or a source', () => {
  const byName = new Map(allClaims().map((claim) => [whereOf(claim), claim]));
  for (const { where, text, heldBy } of rows) {
    const [, file] = /^`(tests\/[^`]+)`/.exec(heldBy) ?? [];
    if (file === undefined) {
      expect(heldBy, `${where} ${text}`).toMatch(/^(source|practice|of itself): ./);
      continue;
    }
    expect(existsSync(file), file).toBe(true);
    const name = byName.get(where)?.name;
    // A test that holds what is said of a function calls it, or reads the table made with it.
    if (name) expect(readFileSync(file, 'utf8'), `${file} and ${name}`).toMatch(`${name}`);
  }
});
