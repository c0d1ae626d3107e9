/** What a job file says wrong is refused with its path, all faults at once. */

import { DomainError } from 'slantpath';
import { parseJob } from 'slantpath/job';
import { describe, expect, test } from 'vitest';
import { type Draft, oneSlot, only, readings } from './support/goodJobs.js';

describe('what a file says wrong is refused with its path, all at once', () => {
  const refused = (job: unknown): DomainError => {
    try {
      parseJob(job);
    } catch (error) {
      if (error instanceof DomainError) return error;
      throw error;
    }
    throw new Error('was not refused');
  };
  const changed = (change: (job: Draft) => void) => {
    const job = oneSlot();
    change(job);
    return refused(job);
  };
  test.each<[string, (job: Draft) => void, string]>([
    [
      'reading at an outlet that does not exist',
      (job) => {
        only(readings(job)[4]).testPoint = 'dsk';
      },
      'visits[0].readings[4].testPoint',
    ],
    [
      'limit at a test point that does not exist',
      (job) => {
        only(job.limits?.[2]).testPoint = 'outlet';
      },
      'limits[2].testPoint',
    ],
    [
      'two slots of one name',
      (job) => {
        job.slots.push({ ...only(job.slots[0]) });
      },
      'slots[1].name',
    ],
    [
      'two carriers of one name',
      (job) => {
        only(job.slots[0]?.carriers?.[1]).name = 'news';
      },
      'slots[0].carriers[1].name',
    ],
    [
      'the same reading twice',
      (job) => {
        readings(job).push({ ...only(readings(job)[0]) });
      },
      'visits[0].readings[12]',
    ],
    [
      'outlet named like a fixed point',
      (job) => {
        only(job.distribution).trees = [{ kind: 'outlet', name: 'antenna' }];
      },
      'distribution.trees[0].name',
    ],
    [
      'control characters in a title',
      (job) => {
        job.title = 'hut\u001b[31m red';
      },
      'title',
    ],
    [
      'a line that turns its direction',
      (job) => {
        job.station.name = 'hut\u202egnihton';
      },
      'station.name',
    ],
    [
      'mode that no standard has',
      (job) => {
        only(job.slots[0]?.carriers?.[0]).mode = '64QAM 7/8';
      },
      'slots[0].carriers[0].mode',
    ],
    [
      'loss of a splitter below its share',
      (job) => {
        only(job.distribution).trees = [
          { kind: 'splitter', lossDb: 1, outputs: [{ kind: 'outlet', name: 'desk' }, null] },
        ];
      },
      'distribution.trees[0].lossDb',
    ],
    [
      'visits in the wrong order',
      (job) => {
        only(job.visits).push({ kind: 'service', date: '2020-01-01' });
      },
      'visits[1].date',
    ],
  ])('%s', (_, change, parameter) => {
    const error = changed(change);
    const paths = error.message.split('\n').map((line) => line.split(' must be ')[0]);
    expect([error.parameter, ...paths]).toContain(parameter);
  });

  test('seven faults are seven lines', () => {
    const error = changed((job) => {
      job.date = 'soon';
      job.station.latitudeDeg = 146;
      only(job.slots[0]?.carriers?.[0]).frequencyGHz = 11300;
      only(readings(job)[4]).testPoint = 'dsk';
      only(readings(job)[5]).carrier = 'nws';
      only(job.limits?.[0]).testPoint = 'anntenna';
      (job as { colour?: string }).colour = 'blue';
    });
    expect(error.message.split('\n')).toHaveLength(7);
  });
});
