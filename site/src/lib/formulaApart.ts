/** Pieces of a typed formula, or of other typed text, within sentences about it: they stay as they are in every language. */

import { own } from './language/language.js';

/** Sentences of the library around pieces of the formula, which the groups catch. */
const AROUND: readonly RegExp[] = [
  /^There is a (?:plus|minus) where a (?:plus|minus) belongs, before (.+)\.$/d,
  /^There is an? [a-z ]+ where an? [a-z ]+ belongs, of (.+)\.$/d,
  /^(?:The sign is dropped|A square root is taken too much|A power is taken too much), of (.+)\.$/d,
  /^A power stands where a square root belongs, of (.+)\.$/d,
  /^The square root is not taken, of (.+)\.$/d,
  /^It (?:multiplies|divides) by (.+) where it should (?:multiply|divide)\.$/d,
  /^(.+) and (.+) stand in each other's place in the fraction\.$/d,
  /^(.+) is read (?:as|with) .+\.$/d,
];

/** A sentence of the library with the formula's pieces marked as the reader's own. */
export function formulaApart(sentence: string): string {
  const around = AROUND.find((each) => each.test(sentence));
  return around ? marked(sentence, around) : sentence;
}

/** Text that an error repeats: names that are known, what was received, what is before the place, a name that is unknown. */
const REPEATED: readonly RegExp[] = [
  / a name that is known here \((.*?)\)/d,
  /, got (".*")(?=$|; )/ds,
  /: after '(.*?)' \(character \d+\)/ds,
  /; '(.*?)' is unknown; say what it stands for, as in (.*?) = …$/d,
  /; '(.*?)' is no function that is known here$/d,
];

/** An error's message with the reader's own text marked. */
export const typedApart = (message: string): string => REPEATED.reduce(marked, message);

/** A text with what the groups of a pattern catch marked as the reader's own. */
function marked(text: string, pattern: RegExp): string {
  const places = pattern.exec(text)?.indices?.slice(1) ?? [];
  let all = text;
  // From the end, so that the places before stay where they are.
  for (const place of places.reverse())
    if (place) all = all.slice(0, place[0]) + own(text.slice(...place)) + all.slice(place[1]);
  return all;
}
