/** How the page speaks German. */

import { germanWords } from 'slantpath/sheet';
import common from '../../../words/de/common.js';
import type { Spoken } from '../languages.js';
import { de } from './de.js';

export const german: Spoken = {
  words: de,
  sheet: germanWords,
  // The page's own texts are German already: only what stands around pictures and tables is looked up.
  language: {
    code: 'de',
    decimal: common.decimal,
    words: common.words,
    pairs: [],
    find: () => undefined,
  },
};
