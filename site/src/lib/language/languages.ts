/** The languages of the site, and what each example needs of them. */

import { ENGLISH, finderOf, type Language, type Pairs } from './language.js';
import type { Words } from './words.js';

/** What a language has for all examples: `site/src/words/<code>/common.ts`. */
export interface Common {
  readonly decimal: '.' | ',';
  readonly words: Words;
  readonly pairs: Pairs;
}

const commons = import.meta.glob<{ default: Common }>('../../words/*/common.ts');
const sentences = import.meta.glob<{ default: Pairs }>([
  '../../words/*/*.ts',
  '!../../words/*/common.ts',
]);

/** The language of a page for an example; English where the example has not been translated. */
export async function languageFor(
  lang: string,
  example: string,
  working = false,
): Promise<Language> {
  const code = lang.split('-')[0] ?? 'en';
  const common = commons[`../../words/${code}/common.ts`];
  const own = sentences[`../../words/${code}/${example}.ts`];
  const solutions = working ? sentences[`../../words/${code}/working.ts`] : undefined;
  if (!common || !own) return ENGLISH;
  const [{ default: of }, ...lists] = await Promise.all([
    common(),
    ...(solutions ? [solutions()] : []),
    own(),
  ]);
  // What the pattern itself says is in the language already; an example's own words come last, and win.
  const spoken = Object.fromEntries(Object.values(of.words).map((word) => [word, word]));
  const pairs = [spoken, of.pairs, ...lists.map((list) => list.default)];
  return {
    code,
    decimal: of.decimal,
    words: of.words,
    pairs,
    find: finderOf(...pairs),
  };
}
