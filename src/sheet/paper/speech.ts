/** What every part of a sheet speaks with: the record, the words, and how numbers and times are written. */

import { DomainError } from '../../errors.js';
import type { JobPlan, JobRecord } from '../../job/index.js';
import type { SheetWords } from '../words/en.js';
import { type Numbers, numbersOf } from './numbers.js';
import { type Times, timesOf } from './times.js';

/** What every part of a sheet speaks with. */
export interface Speech extends Numbers {
  readonly record: JobRecord;
  readonly job: JobRecord['job'];
  readonly plan: JobPlan;
  readonly words: SheetWords;
  readonly times: Times;
  /** A turn in words: the amount, then the sense, never a sign. */
  readonly turn: (turnDeg: number | null, decimals?: number) => string;
  /** Whether the job has more than one mount, so that mounts must be named. */
  readonly severalMounts: boolean;
}

/** The error for what is no record. */
export function notARecord(received: string): DomainError {
  return new DomainError({
    code: 'malformed',
    parameter: 'record',
    received,
    allowed: 'a record as recordJob makes it',
    slip: 'did it pass checkedRecord?',
  });
}

/** Maps of words in which a code may be missing; in all others it is the mark of a document that is no record. */
const OPEN = ['fields', 'taken', 'meaningShort'];

/** Words that refuse a code they do not know. */
function strictCodes(codes: SheetWords['codes']): SheetWords['codes'] {
  return Object.fromEntries(
    Object.entries(codes).map(([name, words]) => [
      name,
      OPEN.includes(name)
        ? words
        : new Proxy(words, {
            get: (of: object, code) => {
              if (typeof code === 'string' && !Object.hasOwn(of, code)) throw notARecord(code);
              return Reflect.get(of, code);
            },
          }),
    ]),
  ) as unknown as SheetWords['codes'];
}

/** The speech for a record in the words of a language. */
export function speechOf(record: JobRecord, given: SheetWords): Speech {
  const words = { ...given, codes: strictCodes(given.codes) };
  const numbers = numbersOf(words);
  const { job, plan } = record;
  return {
    ...numbers,
    record,
    job,
    plan,
    words,
    times: timesOf(job.timeZone),
    turn: (turnDeg, decimals = 1) => {
      if (turnDeg === null) return '-';
      const amount = numbers.fixed(Math.abs(turnDeg), decimals);
      if (Math.abs(turnDeg) < 0.5 * 10 ** -decimals) return words.noTurn;
      return turnDeg > 0 ? words.clockwise(amount) : words.counterClockwise(amount);
    },
    severalMounts: plan.mounts.length > 1,
  };
}
