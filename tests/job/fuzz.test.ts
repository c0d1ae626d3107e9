/** Fuzzed job files of both versions: a clear error or a record that is true to the end. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { DomainError } from 'slantpath';
import { checkedRecord, parseJob, recheckRecord, recordJob } from 'slantpath/job';
import { expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { runs } from '../support/runs.js';
import * as good from './support/goodJobs.js';
import { leaves, replaced } from './support/leaves.js';

const file = (path: string): unknown =>
  JSON.parse(readFileSync(fileURLToPath(new URL(path, import.meta.url)), 'utf8'));
const demo = (name: string): unknown => file(`../../examples/job/${name}.json`);

const SEEDS: readonly unknown[] = [
  demo('tarnfell-lower-hut'),
  demo('riverine-clinic'),
  demo('station-school'),
  good.oneSlot(),
  good.severalRigid(),
  good.separate(),
  good.polar(),
  good.tracking(),
  good.twoWay(),
  file('./data/job-version-1.json'),
];

const JUNK: readonly unknown[] = [
  null,
  undefined,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -1,
  0,
  -0,
  1e-300,
  1e300,
  90,
  181,
  12518,
  '',
  'x',
  '12',
  [],
  {},
  true,
  [[]],
  { kind: 'cable' },
  '__proto__',
  'antenna',
  'outlets',
  '\u0007',
  'line\nbreak',
  '2026-02-30',
  'vertical',
  'West slot',
];

/** Deepest part taken away from a path: a whole branch instead of a leaf. */
const branchOf = (path: string, stream: { integer(n: number): number }): string => {
  const keys = path.split(/(?=[.[])/);
  return keys.slice(0, 1 + stream.integer(keys.length)).join('');
};

const COUNT = runs(10_000, 120);

test(`${COUNT} fuzzed job files: a clear error or an answer, never a crash`, () => {
  const stream = randomStream(20_261_127);
  const paths = SEEDS.map((seed) => leaves(seed).map(({ path }) => path));
  let refused = 0;
  let taken = 0;
  let computed = 0;
  const outcomes = new Map<string, number>();
  for (let run = 0; run < COUNT; run++) {
    const at = stream.integer(SEEDS.length);
    let document = SEEDS[at];
    for (let change = stream.uniform() < 0.6 ? 1 : 2 + stream.integer(2); change > 0; change--) {
      const leaf = paths[at]?.[stream.integer(paths[at]?.length ?? 1)] ?? 'title';
      const path = stream.uniform() < 0.8 ? leaf : branchOf(leaf, stream);
      const dice = stream.uniform();
      const value =
        dice < 0.2
          ? JUNK[stream.integer(JUNK.length)]
          : dice < 0.35
            ? stream.normal() * 10 ** (stream.integer(5) - 1)
            : (old: unknown) =>
                typeof old === 'number' ? old * (0.5 + stream.uniform()) : undefined;
      try {
        document = replaced(document, path, value);
      } catch {
        // An earlier change took the parent away.
      }
    }
    let job: ReturnType<typeof parseJob>;
    try {
      job = parseJob(document);
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).message).not.toMatch(/\[object|undefined\[/);
      refused++;
      continue;
    }
    taken++;
    // What was taken can be taken again, and says the same.
    expect(parseJob(JSON.stringify(job))).toEqual(JSON.parse(JSON.stringify(job)));
    // The record is slower than the parser: of the files taken every fourth is computed.
    if (taken % 4 !== 0) continue;
    try {
      const record = recordJob(job);
      computed++;
      for (const { path, value } of leaves(record))
        if (typeof value === 'number')
          expect(Number.isFinite(value) && !Object.is(value, -0), path).toBe(true);
        else
          expect(['string', 'boolean'].includes(typeof value) || value === null, path).toBe(true);
      // The outcome is the worst of the findings, and a sound headline has nothing against it.
      const worst = record.findings.find(({ severity }) => severity !== 'note')?.severity;
      expect(record.outcome).toBe(worst ?? 'conforms');
      outcomes.set(record.outcome, (outcomes.get(record.outcome) ?? 0) + 1);
      if (computed % 10 === 0) {
        const text = JSON.stringify(record);
        expect(recheckRecord(text).kind).toBe('agrees');
        expect(checkedRecord(text).outcome).toBe(record.outcome);
      }
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      // What passes the parser and cannot be planned is told by a field of the file.
      expect(error.parameter).toMatch(
        /^(slots|mounts|units|horizon|rain|station|distribution|transmit|visits|date|target|$)/,
      );
    }
  }
  console.log(
    `fuzzed job files: ${refused} refused, ${taken} taken, ${computed} computed; ${JSON.stringify([...outcomes])}`,
  );
  expect(refused).toBeGreaterThan(COUNT / 5);
  expect(computed).toBeGreaterThan(COUNT / 50);
});
