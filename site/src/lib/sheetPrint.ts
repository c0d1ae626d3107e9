/** The words of a printed sheet in the language of the page. */

import { englishPrint, germanPrint, type PrintWords } from 'slantpath/teaching';
import { ENGLISH, said, spoken } from './language/language.js';

const PRINTS: Readonly<Record<string, PrintWords>> = { de: germanPrint };

/** Options of `worksheetHtml`: none in English. */
export function printWords(): { readonly words?: PrintWords } {
  const { code } = spoken();
  const words = PRINTS[code] ?? englishPrint;
  return code === ENGLISH.code ? {} : { words: { ...words, translate: said } };
}
