/** The job page has no verdict of its own: a job that is opened and kept there has the findings of the command line. */

import { readdirSync, readFileSync } from 'node:fs';
import { parseJob, recordJob } from 'slantpath/job';
import { describe, expect, test } from 'vitest';
import { newBeside } from '../../../site/src/desk/state/beside.js';
import { fileOf, takenFrom } from '../../../site/src/desk/state/exchange.js';
import { prepared } from '../../../site/src/desk/state/prepared.js';
import { stageOfFinding } from '../../../site/src/desk/state/stages.js';
import { standingOf } from '../../../site/src/desk/state/standing.js';
import { readEntry } from '../../../site/src/desk/store/entry.js';

const folder = new URL('../../../examples/job/', import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith('.json'));
const textOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');

describe.each(demos)('%s', (name) => {
  const taken = takenFrom(textOf(name));
  const draft = taken.kind === 'job' ? taken.draft : undefined;
  const record = recordJob(parseJob(textOf(name)));
  if (!draft) throw new Error(`${name} was not taken`);

  test('has the findings, the outcome and the plan of the command line', () => {
    const ready = prepared(draft);
    expect(ready.faults).toEqual([]);
    expect(ready.waiting).toEqual([]);
    const { job, ...own } = recordJob(ready.job ?? '');
    const { job: _, ...other } = record;
    expect(own.findings).toEqual(other.findings);
    expect(own).toEqual(other);
    // What is saved on the page is the same job again.
    expect(parseJob(fileOf(job))).toEqual(parseJob(textOf(name)));
  });

  test('is on the page as it was kept', () => {
    const value = JSON.parse(
      JSON.stringify({ id: 'a', revision: 3, changedAt: 1, draft, beside: newBeside }),
    );
    expect(readEntry('a', value)).toEqual({ entry: value });
  });

  test('shows each finding in one stage, and the worst of them as the state of the verdict', () => {
    const { stages, outcome } = standingOf(prepared(draft), record);
    expect(outcome).toBe(record.outcome);
    const verdict = stages.find(({ stage }) => stage === 'verdict');
    expect(verdict?.findings).toEqual(record.findings);
    for (const finding of record.findings) {
      const stage = stages.find((each) => each.stage === stageOfFinding(finding));
      expect(stage?.findings).toContainEqual(finding);
      if (finding.severity !== 'note') expect(stage?.state).not.toBe('done');
    }
  });
});
