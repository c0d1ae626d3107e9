/** Nothing misspelt passes: the arguments of every doc example, with one field of one object written wrongly beside the right one. */

import { isDomainError } from 'slantpath';
import { expect, test } from 'vitest';
import { at, cloned, objects, recordedCalls } from './support/recordedCalls.js';
import { FULL_RUNS, share } from './support/runs.js';

/** Objects that bear names of the user's own, or follow another standard; told by function, with the reason. */
const EXCEPTIONS: readonly (readonly [where: RegExp, reason: string])[] = [
  [/^ommToElements/, 'a message after CCSDS 502.0-B, whose other keywords are allowed'],
  [
    /footprintLevel(?:sAt|Batch)? 0\.(?:footprint\.)?features/,
    'GeoJSON, whose properties are free',
  ],
  [/tryFormula 0(?:\.region)?$/, 'names of the variables of a formula, which has its own refusal'],
  [
    /workedSolution 1|(?:checkAnswer|checkSteps|likelySlips) 0\.inputs/,
    'names of the plan, which has its own refusal',
  ],
  [/parseJob|recheckRecord 0/, 'documents of the job, held by their schema'],
  [/recordExperience 0/, 'records hold more than is read here; a field that is missing is refused'],
  [/userBandConflicts 0\.bands/, 'a letter short of a word that is spelt in two ways'],
];

/** Job documents are refused by their schema, which names the wrong field and not yet the right one. */
const JOB_DOCUMENT = /Job|Record/;

/** Misspelt names that lie as near to another field. */
const EITHER = new Set([
  'frequencyGHz as frequency',
  'frequencyMHz as frequency',
  'userBand as useBand',
]);

/** A name written wrongly: without its unit, with a capital, a letter short. */
function misspelt(key: string): readonly string[] {
  const bare = key.replace(/(?:Deg|Dbm|Dbuv|Dbw|Dbi|Db|GHz|MHz|Km|Mm|M|Percent|Ratio|K)$/, '');
  return [
    ...(bare !== key && bare.length > 1 ? [bare] : []),
    key[0]?.toUpperCase() + key.slice(1),
    ...(key.length > 5 ? [key.slice(0, 3) + key.slice(4)] : []),
  ];
}

test('a misspelt field is refused in every object of every doc example, naming the right one', async () => {
  const calls = await recordedCalls();
  const passed = new Set<string>();
  const functions = new Set<string>();
  let planted = 0;
  for (const { name, call, args, own } of share(calls, 17))
    for (const path of objects(args, [])) {
      // What the library itself returned may hold any field.
      if (own.has(path.join('.'))) continue;
      const where = `${name} ${path.join('.').replace(/\.\d+/g, '[]')}`;
      if (EXCEPTIONS.some(([pattern]) => pattern.test(where))) continue;
      functions.add(name);
      for (const key of Object.keys(at(args, path)))
        for (const wrong of misspelt(key)) {
          const changed = cloned(args) as unknown[];
          const target = at(changed, path);
          if (wrong in target) continue;
          target[wrong] = target[key];
          planted++;
          try {
            call(...changed);
            passed.add(`${where}: ${wrong}`);
          } catch (error) {
            const job = JOB_DOCUMENT.test(name);
            const named = job || `is ${key} meant?` === (error as { slip?: string }).slip;
            const either = EITHER.has(`${key} as ${wrong}`);
            if (
              !isDomainError(error) ||
              !error.allowed.startsWith('left out') ||
              !(named || either)
            )
              passed.add(`${where}: ${wrong} (${(error as Error).message.slice(0, 60)})`);
          }
        }
    }
  console.log(`${planted} misspelt fields planted in the arguments of ${functions.size} functions`);
  expect([...passed].sort()).toEqual([]);
  expect(functions.size).toBeGreaterThan(FULL_RUNS ? 150 : 10);
});
