/** Cautions for the work, chosen by what the job holds; local codes and licensed practice come first. */

import type { JobFile } from '../file/jobFile.js';
import { partNames } from '../file/partNames.js';

/** What a caution is about; the sheet has the words. */
export type CautionTopic =
  | 'local-codes'
  | 'rf-lock-out'
  | 'work-at-height'
  | 'falling-objects'
  | 'power-lines'
  | 'weather'
  | 'drilling-and-roof-load'
  | 'lightning-and-bonding'
  | 'foreign-voltage'
  | 'sun'
  | 'burning-mirror'
  | 'mains';

/** One caution. */
export interface Caution {
  /** What it is about. */
  readonly topic: CautionTopic;
}

/** The cautions of a job, in the order of the work. */
export function cautions(job: JobFile): readonly Caution[] {
  const parts = (job.distribution?.trees ?? []).flatMap((tree) => partNames(tree, ''));
  const powered = (kind: string) => kind === 'amplifier' || kind === 'switch';
  const lineParts = (job.distribution?.lines ?? []).flatMap((line) => line.parts ?? []);
  const topics: CautionTopic[] = ['local-codes'];
  // Lock out and keep out of the beam before anything else.
  if (job.transmit && job.transmit.length > 0) topics.push('rf-lock-out');
  topics.push(
    'work-at-height',
    'falling-objects',
    'power-lines',
    'weather',
    'drilling-and-roof-load',
    'lightning-and-bonding',
  );
  // Screens that other households share can carry their voltage.
  if (
    job.station.sharedBuilding === true ||
    parts.filter(({ kind }) => kind === 'outlet').length > 1
  )
    topics.push('foreign-voltage');
  topics.push('sun', 'burning-mirror');
  if ([...parts, ...lineParts].some(({ kind }) => powered(kind)) || job.transmit)
    topics.push('mains');
  return topics.map((topic) => ({ topic }));
}
