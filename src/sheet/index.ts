/**
 * A record of a job as a sheet of paper: text and HTML, in the words of a language.
 *
 * @module sheet
 */

export { jobSheet } from './jobSheet.js';
export { jobSheetHtml } from './jobSheetHtml.js';
export { englishWords, type SheetWords } from './words/en.js';
