/** A complete job in which nothing is wrong conforms, whatever its mount. */

import { recordJob } from 'slantpath/job';
import { expect, test } from 'vitest';
import * as good from './support/goodJobs.js';

test.each([
  ['one slot', good.oneSlot],
  ['several slots, free feeds', good.severalFree],
  ['several slots, rigid feeds', good.severalRigid],
  ['separate reflectors', good.separate],
  ['polar mount', good.polar],
  ['inclined orbit by schedule', good.tracking],
  ['two-way terminal', good.twoWay],
])('%s', (_, job) => {
  const { findings, outcome } = recordJob(job());
  expect(findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
  expect(outcome).toBe('conforms');
});
