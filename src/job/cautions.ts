/** Cautions for the work, chosen by what the job holds; local codes and licensed practice come first. */

import type { DistributionPart } from '../distribution/index.js';
import type { JobFile } from './jobFile.js';

/** One caution. */
export interface Caution {
  /** What it is about, in kebab-case words. */
  readonly topic:
    | 'work-at-height'
    | 'power-lines'
    | 'lightning-and-bonding'
    | 'sun'
    | 'mains'
    | 'weather'
    | 'local-codes';
  /** The caution in one or two sentences. */
  readonly text: string;
}

/** The cautions of a job, in the order of the work. */
export function cautions(job: JobFile): readonly Caution[] {
  const list: Caution[] = [
    {
      topic: 'local-codes',
      text: 'Local building, electrical and radio rules decide. Where they ask for a licensed person, have one do the work.',
    },
    {
      topic: 'work-at-height',
      text: 'Work on roofs and masts only secured against a fall, with a second person present; keep people out from below.',
    },
    {
      topic: 'power-lines',
      text: 'Keep mast, ladder and reflector further from overhead power lines than they could reach in falling.',
    },
    {
      topic: 'weather',
      text: 'Stop in wind, ice or when thunder can be heard. A reflector in the hands is a sail.',
    },
    {
      topic: 'lightning-and-bonding',
      text: 'Bond mast and cable screens and protect against lightning as the local code says, before the cable is connected.',
    },
    {
      topic: 'sun',
      text: 'Never look at the Sun to find a direction; use the shadow of a plumb line.',
    },
  ];
  if (hasPoweredPart(job.distribution))
    list.push({
      topic: 'mains',
      text: 'Amplifiers and switches fed from the mains are opened and connected by a licensed person only.',
    });
  return list;
}

/** Whether the tree holds an amplifier or a switch. */
function hasPoweredPart(part: DistributionPart | null | undefined): boolean {
  if (!part) return false;
  if (part.kind === 'amplifier' || part.kind === 'switch') return true;
  const behind: (DistributionPart | null | undefined)[] = [];
  if ('to' in part) behind.push(part.to);
  if ('outputs' in part) behind.push(...part.outputs);
  if ('taps' in part) behind.push(...part.taps);
  return behind.some(hasPoweredPart);
}
