/** The words of the job page in a language. */

import type { en } from './en/en.js';

/** The same shape with any text. */
type Wide<T> = T extends string
  ? string
  : T extends (...given: infer Given) => string
    ? (...given: Given) => string
    : { readonly [Key in keyof T]: Wide<T[Key]> };

/** What the page says: `en.ts` in any language. */
export type DeskWords = Wide<typeof en>;
