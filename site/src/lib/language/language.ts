/**
 * The language that is being printed in. Examples are defined in English; what they print passes through `said`, which
 * looks it up among the sentences of the page's language. A translation is data alone (`site/src/words/`).
 */

import { en, type Words } from './words.js';

/** Sentences by their English. `{}` stands for whatever comes between; `{2}` takes up the second of them. */
export type Pairs = Readonly<Record<string, string>>;

/** A language: how it writes numbers, and its sentences. */
export interface Language {
  /** As in the attribute `lang`. */
  readonly code: string;
  readonly decimal: '.' | ',';
  /** The words of the pattern. */
  readonly words: Words;
  /** What `find` seeks in, as data that can be sent to a worker. */
  readonly pairs: readonly Pairs[];
  /** The translation of a text; `undefined` where there is none. */
  readonly find: (text: string) => string | undefined;
}

/** English as the examples speak it. */
export const ENGLISH: Language = {
  code: 'en',
  decimal: '.',
  words: en,
  pairs: [],
  find: (text) => text,
};

let present: Language = ENGLISH;
let missed: Set<string> | undefined;

/** Prints in a language for as long as `draw` runs; collects in `missing` what it has no words for. */
export function inLanguage<T>(language: Language, draw: () => T, missing?: Set<string>): T {
  const before = [present, missed] as const;
  [present, missed] = [language, missing];
  try {
    return draw();
  } finally {
    [present, missed] = before;
  }
}

/** Prints in a language from now on: the browser, which shows one page. */
export function speak(language: Language): void {
  present = language;
}

/** The present language. */
export const spoken = (): Language => present;

/** The words of the pattern in the present language. */
export const words = (): Words => present.words;

/** Units, abbreviations and signs: the same in every language. */
const WORDLESS =
  /^([A-Za-z]{1,2}|[A-Z]+|dB[A-Za-z]*|[kMG](Hz|Bd)|[kM]?bit|[km]?(km|mm|cm)|kg|hPa)$/;

/** Whether a text such as `3.5 dBm` or `P.618-14` has nothing to translate. */
const isWordless = (text: string) =>
  (text.match(/[A-Za-z]+/g) ?? []).every((word) => WORDLESS.test(word));

/** Signs around what a user typed, from the private area of Unicode; they never reach the page. */
const [OPEN, CLOSE] = ['\ue000', '\ue001'];
const MARKS = /[\ue000\ue001]/g;
const OWN = /\ue000([^\ue001]*)\ue001/g;

/** A user's own text, such as the name of an outlet: no language looks it up, alone or within a sentence. */
export const own = (text: string): string => OPEN + text.replace(MARKS, '') + CLOSE;

/** A text without the marks of {@link own}, as it goes to the page. */
export const unmarked = (text: string): string => text.replace(MARKS, '');

/** Sentences one after the other, each in the present language; empty ones are left out. */
export const together = (...sentences: readonly string[]): string =>
  own(sentences.filter(Boolean).map(said).join(' '));

/** A text in the present language; the text itself where it has no words for it. */
export function said(text: string): string {
  if (present === ENGLISH) return text;
  if (!text.includes(OPEN)) return sought(text);
  // The user's words wait outside while the sentence around them is looked up.
  const words: string[] = [];
  const around = text.replace(OWN, (whole) => `${OPEN}${words.push(whole) - 1}${CLOSE}`);
  return sought(around).replace(OWN, (_, index: string) => words[Number(index)] ?? '');
}

function sought(text: string): string {
  if (text.replace(OWN, '') === '') return text;
  const found = present.find(text);
  if (found !== undefined) return found;
  if (isWordless(text)) return localNumbers(text);
  missed?.add(text);
  return text;
}

/** Signs and units with the decimal sign of the present language: `3,5 dB ± 0,1 dB`, but `P.618-14`. */
function localNumbers(text: string): string {
  if (present.decimal === '.') return text;
  return text.replace(/(?<![\w.])(\d+)\.(\d+)(?![\w.])/g, '$1,$2');
}

/** A formula in plain text with the decimal sign of the present language. */
export function localFormula(text: string): string {
  if (present.decimal === '.') return text;
  return text.replaceAll(', ', '; ').replace(/(\d)\.(?=\d)/g, '$1,');
}

/** A plain number with the decimal sign of the present language; any other text as it is. */
export function localNumber(text: string): string {
  return present.decimal === ',' && /^[−+-]?\d+\.\d+$/.test(text) ? text.replace('.', ',') : text;
}

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** A finder over pairs: whole sentences first, then those with gaps, the one with the most words of its own first. */
export function finderOf(...lists: readonly Pairs[]): Language['find'] {
  const whole = new Map<string, string>();
  const gapped: { readonly pattern: RegExp; readonly into: string; readonly weight: number }[] = [];
  for (const [english, other] of lists.flatMap((pairs) => Object.entries(pairs))) {
    if (!english.includes('{}')) whole.set(english, other);
    else
      gapped.push({
        pattern: new RegExp(`^${english.split('{}').map(escaped).join('(.+?)')}$`, 's'),
        into: other,
        weight: english.length - 2 * (english.split('{}').length - 1),
      });
  }
  gapped.sort((a, b) => b.weight - a.weight);
  return (text) => {
    const exact = whole.get(text);
    if (exact !== undefined) return exact;
    for (const { pattern, into } of gapped) {
      const gaps = pattern.exec(text)?.slice(1);
      if (gaps) return filled(into, gaps);
    }
    return undefined;
  };
}

/** A sentence with its gaps filled, each of them said in the present language. */
function filled(sentence: string, gaps: readonly string[]): string {
  let next = 0;
  return sentence.replace(/\{(\d?)\}/g, (_, place: string) => {
    const gap = gaps[place === '' ? next : Number(place) - 1] ?? '';
    next += 1;
    return sought(gap);
  });
}
