/** The words of the page and of its sheets, by the language of the page; another language is fetched where it is needed. */

import { englishWords, type SheetWords } from 'slantpath/sheet';
import { ENGLISH, type Language } from '../../lib/language/language.js';
import { en } from './en/en.js';
import type { DeskWords } from './words.js';

/** How the page speaks. */
export interface Spoken {
  readonly words: DeskWords;
  readonly sheet: SheetWords;
  readonly language: Language;
}

/** English, which is always there. */
export const english: Spoken = { words: en, sheet: englishWords, language: ENGLISH };

/** How a page in this language speaks. */
export const spokenIn = async (lang: string): Promise<Spoken> =>
  lang.startsWith('de') ? (await import('./de/spoken.js')).german : english;
