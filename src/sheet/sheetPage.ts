/** The two sheets of a job, put together from their parts in the order of the work. */

import { DomainError, object, oneOf } from '../errors.js';
import type { JobRecord } from '../job/index.js';
import { type Keys, knownOnly } from '../keys.js';
import { blanks, type SheetBlock, type SheetPage } from './paper/blocks.js';
import { notARecord, type Speech, speechOf } from './paper/speech.js';
import { assumptionBlocks, peakingAidBlocks, sunOutageBlocks } from './plan/aidBlocks.js';
import { inputBlocks, stackingBlocks } from './plan/cableBlocks.js';
import { mountBlocks } from './plan/mountBlocks.js';
import { commissioningBlocks, windBlocks } from './plan/outdoorBlocks.js';
import { placeBlocks, shadowBlocks, slotBlocks, viewBlocks } from './plan/placeBlocks.js';
import {
  antennaBlocks,
  outletBlocks,
  rainBlocks,
  supplyBlocks,
  transmitBlocks,
  tuningBlocks,
} from './plan/tuningBlocks.js';
import { findingBlocks, firstLookBlocks, outcomeBlock } from './results/findingBlocks.js';
import {
  changeBlocks,
  feedTurnBlocks,
  noteBlocks,
  peakingBlocks,
  readingBlocks,
} from './results/readingBlocks.js';
import type { SheetWords } from './words/en.js';
import { englishWords } from './words/en.js';

/** How a sheet is asked for. */
export interface SheetOptions {
  /**
   * `before`: what is taken to the roof, with blanks to write in. `after`: what was found, the outcome first. Left out,
   * `after` where a visit has readings or peaking, else `before`.
   */
  readonly visit?: 'before' | 'after';
  /** The words; English when left out. */
  readonly words?: SheetWords;
}

const SHEET_OPTIONS_KEYS = { visit: true, words: true } satisfies Keys<SheetOptions>;

/** A sheet of a record, written by `write`; what is no record is told as such. */
export function writtenSheet(
  record: JobRecord,
  options: SheetOptions,
  write: (page: SheetPage) => string,
): string {
  const { visit, words = englishWords } = knownOnly('options', options, SHEET_OPTIONS_KEYS);
  if (visit !== undefined) oneOf('visit', visit, ['before', 'after']);
  try {
    return write(pageOf(object('record', record), visit, words));
  } catch (error) {
    // A record that came from elsewhere may lack what every record has.
    if (error instanceof TypeError || error instanceof RangeError) throw notARecord(error.message);
    if (error instanceof DomainError && error.parameter !== 'record')
      throw notARecord(error.message);
    throw error;
  }
}

function pageOf(record: JobRecord, visit: SheetOptions['visit'], words: SheetWords): SheetPage {
  const speech = speechOf(record, words);
  const done = record.verdicts.length > 0 || record.peaking.length > 0;
  const kind = visit ?? (done ? 'after' : 'before');
  const { job, plan } = record;
  const day = plan.north?.date ?? job.visits[0]?.date;
  return {
    language: words.language,
    title: words.title[kind](job.title),
    subtitle: words.subtitle(day ?? null, `${record.format} ${record.version}`, speech.times.zone),
    running: job.title,
    pageWords: words.page,
    blocks: kind === 'before' ? before(speech) : after(speech),
  };
}

function cautionBlock({ plan, words }: Speech): SheetBlock {
  return {
    kind: 'cautions',
    texts: plan.cautions.map(({ topic }) => words.codes.cautions[topic]),
  };
}

/** What is taken to the roof. */
function before(speech: Speech): readonly SheetBlock[] {
  const { words } = speech;
  return [
    cautionBlock(speech),
    blanks(...words.blanks.head),
    ...placeBlocks(speech),
    ...slotBlocks(speech),
    ...viewBlocks(speech),
    ...shadowBlocks(speech),
    ...mountBlocks(speech, true),
    ...tuningBlocks(speech),
    ...peakingAidBlocks(speech),
    ...antennaBlocks(speech, true),
    ...supplyBlocks(speech),
    ...stackingBlocks(speech),
    ...outletBlocks(speech, true),
    ...inputBlocks(speech, true),
    ...transmitBlocks(speech),
    ...commissioningBlocks(speech, true),
    ...windBlocks(speech),
    ...rainBlocks(speech),
    ...sunOutageBlocks(speech),
    ...noteBlocks(speech),
    ...assumptionBlocks(speech),
    blanks(...words.blanks.foot),
  ];
}

/** What was found. */
function after(speech: Speech): readonly SheetBlock[] {
  const { words } = speech;
  return [
    outcomeBlock(speech),
    ...findingBlocks(speech),
    ...firstLookBlocks(speech),
    cautionBlock(speech),
    ...changeBlocks(speech),
    ...readingBlocks(speech),
    ...peakingBlocks(speech),
    ...feedTurnBlocks(speech),
    ...placeBlocks(speech),
    ...slotBlocks(speech),
    ...mountBlocks(speech, false),
    ...tuningBlocks(speech),
    ...stackingBlocks(speech),
    ...inputBlocks(speech, false),
    ...transmitBlocks(speech),
    ...commissioningBlocks(speech, false),
    ...windBlocks(speech),
    ...rainBlocks(speech),
    ...noteBlocks(speech),
    ...assumptionBlocks(speech),
    blanks(...words.blanks.foot),
  ];
}
