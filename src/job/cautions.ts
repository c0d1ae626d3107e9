/** Cautions for the work, chosen by what the job holds; local codes and licensed practice come first. */

import type { DistributionPart } from '../distribution/index.js';
import type { JobFile } from './jobFile.js';

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
  const topics: CautionTopic[] = [
    'local-codes',
    'work-at-height',
    'falling-objects',
    'power-lines',
    'weather',
    'drilling-and-roof-load',
    'lightning-and-bonding',
  ];
  // Screens that other households share can carry their voltage.
  if (outlets(job.distribution) > 1) topics.push('foreign-voltage');
  topics.push('sun', 'burning-mirror');
  if (parts(job.distribution).some(({ kind }) => kind === 'amplifier' || kind === 'switch'))
    topics.push('mains');
  return topics.map((topic) => ({ topic }));
}

const outlets = (tree: DistributionPart): number =>
  parts(tree).filter(({ kind }) => kind === 'outlet').length;

/** Every part of the tree. */
function parts(part: DistributionPart | null | undefined): readonly DistributionPart[] {
  if (!part) return [];
  const behind: (DistributionPart | null | undefined)[] = [];
  if ('to' in part) behind.push(part.to);
  if ('outputs' in part) behind.push(...part.outputs);
  if ('taps' in part) behind.push(...part.taps);
  return [part, ...behind.flatMap(parts)];
}
