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
  /** Title over the sheet; `Worksheet` and the seed by default. */
  readonly title?: string;
}

const WORKSHEET_INPUT_KEYS = {
  seed: true,
  count: true,
  plans: true,
  level: true,
  title: true,
} satisfies Keys<WorksheetInput>;

/** A worksheet with its key. */
export interface Worksheet {
  readonly title: string;
  readonly seed: number;
  readonly level: 1 | 2 | 3;
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
  const stream = randomStream(seed);
  const exercises: Exercise[] = [];
  let deck: string[] = [];
  for (let number = 0; number < count; number++) {
    if (deck.length === 0) deck = [...names];
    const [name] = deck.splice(stream.integer(deck.length), 1);
    exercises.push(
      exercise({
        plan: name ?? '',
        seed: stream.integer(2 ** 31),
        ...(level === undefined ? {} : { level }),
      }),
    );
  }
  return { title: title ?? `Worksheet ${seed}`, seed, level: level ?? 2, exercises };
}
