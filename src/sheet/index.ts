/**
 * A record of a job as two sheets of paper, before the visit and after it: text and HTML, in the words of a language.
 *
 * @module sheet
 */

export { type FindingSentence, findingSentences } from './findingSentences.js';
export { jobSheet } from './jobSheet.js';
export { jobSheetHtml } from './jobSheetHtml.js';
export type { SheetOptions } from './sheetPage.js';
export type { CodeWords, FindingWords } from './words/codes.js';
export { germanWords } from './words/de.js';
export { englishWords, type SheetWords } from './words/en.js';
