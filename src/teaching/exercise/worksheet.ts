/** Whole worksheets: the same exercises for everyone who has the seed, with an answer key. */

import { DomainError, finite, inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { randomStream } from '../../numeric/random.js';
import { SOLUTION_PLANS } from '../plans/index.js';
import { type Exercise, exercise } from './exercise.js';

/** What {@link worksheet} is asked. */
export interface WorksheetInput {
  /** Seed, any whole number. */
  readonly seed: number;
  /** Number of exercises, 1 to 100. */
  readonly count: number;
  /** Kinds to draw from, by plan name; all by default. */
  readonly plans?: readonly string[];
  /** Difficulty; 2 by default. */
  readonly level?: 1 | 2 | 3;
  /** Form of the sheet: B has the kinds of A in the same order with other numbers, for neighbours; A by default. */
  readonly form?: 'A' | 'B';
  /** Title over the sheet; `Worksheet` and the seed by default. */
  readonly title?: string;
}

const WORKSHEET_INPUT_KEYS = {
  seed: true,
  count: true,
  plans: true,
  level: true,
  form: true,
  title: true,
} satisfies Keys<WorksheetInput>;

/** A worksheet with its key. */
export interface Worksheet {
  readonly title: string;
  readonly seed: number;
  readonly level: 1 | 2 | 3;
  readonly form: 'A' | 'B';
  /** Short code that makes the sheet and its key again: {@link worksheetOfCode}. */
  readonly code: string;
  /** The exercises, numbered from 1 in this order. */
  readonly exercises: readonly Exercise[];
}

/**
 * A worksheet of exercises from a seed.
 *
 * Kinds are taken in turn before one comes again.
 *
 * @throws {@link DomainError} naming `seed`, `count`, `plans` or `level`.
 *
 * Source: {@link exercise}.
 * @example
 * ```ts
 * import { worksheet } from 'slantpath/teaching';
 * const sheet = worksheet({ seed: 3, count: 4, plans: ['elevation', 'free-space-loss'] });
 * sheet.exercises.map(({ plan }) => plan).sort(); // => ['elevation', 'elevation', 'free-space-loss', 'free-space-loss']
 * ```
 */
export function worksheet(input: WorksheetInput): Worksheet {
  const {
    seed: givenSeed,
    count,
    plans,
    level,
    form: wanted,
    title,
  } = knownOnly('input', input, WORKSHEET_INPUT_KEYS);
  const seed = finite('seed', givenSeed);
  inRange('count', count, 1, 100);
  if (!Number.isInteger(count))
    throw new DomainError({
      code: 'malformed',
      parameter: 'count',
      received: count,
      allowed: 'a whole number',
    });
  const names = plans ?? SOLUTION_PLANS.map(({ name }) => name);
  if (names.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'plans',
      received: names,
      allowed: 'at least one plan',
    });
  const form = wanted ?? 'A';
  if (form !== 'A' && form !== 'B')
    throw new DomainError({
      code: 'not-an-option',
      parameter: 'form',
      received: form,
      allowed: 'A or B',
    });
  const stream = randomStream(seed);
  const exercises: Exercise[] = [];
  let deck: string[] = [];
  for (let number = 0; number < count; number++) {
    if (deck.length === 0) deck = [...names];
    const [name] = deck.splice(stream.integer(deck.length), 1);
    exercises.push(
      exercise({
        plan: name ?? '',
        seed: stream.integer(2 ** 31) + (form === 'A' ? 0 : 2 ** 31),
        ...(level === undefined ? {} : { level }),
      }),
    );
  }
  return {
    title: title ?? `Worksheet ${seed} ${form}`,
    seed,
    level: level ?? 2,
    form,
    code: codeOf(seed, count, level ?? 2, form, plans),
    exercises,
  };
}

/** `A7-2-5` and, where not all kinds were drawn from, which. */
function codeOf(
  seed: number,
  count: number,
  level: number,
  form: string,
  plans: readonly string[] | undefined,
): string {
  const start = `${form}${seed}.${level}.${count}`;
  return plans === undefined ? start : `${start}.${plans.join('+')}`;
}

/**
 * The worksheet of a code that stands at the foot of a printed sheet.
 *
 * @param code  As printed: form, seed, level, number of exercises and, where not all are drawn from, the kinds.
 * @throws {@link DomainError} for a text that is no such code, and as {@link worksheet}.
 *
 * Source: {@link worksheet}.
 * @example
 * ```ts
 * import { worksheet, worksheetOfCode } from 'slantpath/teaching';
 * const sheet = worksheet({ seed: 3, count: 2, plans: ['elevation', 'skew'], form: 'B' });
 * sheet.code; // => 'B3.2.2.elevation+skew'
 * worksheetOfCode(sheet.code).exercises[0]?.text === sheet.exercises[0]?.text; // => true
 * ```
 */
export function worksheetOfCode(code: string): Worksheet {
  const match = /^\s*([AB])(-?\d+)\.([123])\.(\d+)(?:\.([a-z0-9+-]+))?\s*$/.exec(
    typeof code === 'string' ? code : '',
  );
  if (!match)
    throw new DomainError({
      code: 'malformed',
      parameter: 'code',
      received: code,
      allowed: 'a code from the foot of a sheet: A7.2.5',
    });
  const [, form, seed, level, count, plans] = match;
  return worksheet({
    form: form as 'A' | 'B',
    seed: Number(seed),
    level: Number(level) as 1 | 2 | 3,
    count: Number(count),
    ...(plans === undefined ? {} : { plans: plans.split('+') }),
  });
}
