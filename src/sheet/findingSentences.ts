/** Each finding of a record as a sentence, for pages and apps that show findings one by one. */

import { object } from '../errors.js';
import type { Finding, JobRecord } from '../job/index.js';
import { notARecord, speechOf } from './paper/speech.js';
import { sentenceOf } from './results/findingBlocks.js';
import type { SheetOptions } from './sheetPage.js';
import { englishWords } from './words/en.js';

/** A finding in words. */
export interface FindingSentence {
  /** The finding. */
  readonly finding: Finding;
  /** Where, what and how bad, as one sentence. */
  readonly says: string;
  /** What to do; empty where nothing is asked. */
  readonly action: string;
}

/**
 * The findings of a record as sentences, in the record's order: the words of the sheet, one finding each.
 *
 * @param record  From `recordJob`; one that came from elsewhere goes through `checkedRecord` first.
 * @param options  `words`: the words of another language.
 * @returns One entry for each finding; empty for a record without findings.
 * @throws {@link DomainError} `malformed` at `record` for what is not a record.
 *
 * Source: the record. Accuracy: rounded for reading, the record keeps all digits.
 * @example
 * ```ts
 * import { recordJobWith } from 'slantpath/job';
 * import { findingSentences } from 'slantpath/sheet';
 * const record = recordJobWith(
 *   {
 *     format: 'slantpath-job', version: 2,
 *     station: { latitudeDeg: 46.6, longitudeDeg: 10.3 },
 *     slots: [{ name: 'middle', orbitalLongitudeDeg: 16.4 }],
 *   },
 *   { climate: null },
 * );
 * findingSentences(record)[0]?.says; // => 'Middle, sightings of the skyline: the skyline is not known in this direction.'
 * findingSentences(record)[0]?.action; // => 'Sight the skyline there.'
 * ```
 */
export function findingSentences(
  record: JobRecord,
  options: Pick<SheetOptions, 'words'> = {},
): readonly FindingSentence[] {
  const { words = englishWords } = object('options', options);
  try {
    const speech = speechOf(object('record', record), words);
    return record.findings.map((finding) => {
      const { text, action } = sentenceOf(speech, finding);
      return { finding, says: text, action };
    });
  } catch (error) {
    if (error instanceof TypeError) throw notARecord(error.message);
    throw error;
  }
}
