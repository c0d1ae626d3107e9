/** The stages of a job in the order of the work, and where each field and each finding of the job belongs. */

import type { Finding, Severity } from 'slantpath/job';

/** The stages in their order. */
export const STAGES = [
  'place',
  'mount',
  'skyline',
  'plan',
  'rain',
  'outlets',
  'peak',
  'readings',
  'verdict',
  'sheet',
] as const;

/** A stage of the job. */
export type StageName = (typeof STAGES)[number];

/** How a stage stands, as a fixed word; `cannot-be-read` where something in it is no number or outside what is allowed. */
export type StageState =
  | 'done'
  | 'missing'
  | 'undecided'
  | 'does-not-conform'
  | 'cannot-be-read'
  | 'not-begun';

/** Beginnings of paths in the job file, and the stage in which the field stands. */
const FIELDS: readonly (readonly [RegExp, StageName])[] = [
  [/^(title|date|timeZone|station|notes)/, 'place'],
  [/^slots\[\d+\]\.carriers/, 'plan'],
  [/^slots/, 'place'],
  [/^(mounts|wind)/, 'mount'],
  [/^horizon/, 'skyline'],
  [/^(units|tuner|transmit)/, 'plan'],
  [/^target\.pointingLossDb/, 'peak'],
  [/^(rain|target)/, 'rain'],
  [/^distribution/, 'outlets'],
  [/^visits(\[\d+\])?\.(peaking|feedTurns)/, 'peak'],
  [/^(limits|visits|instruments)/, 'readings'],
];

/** The stage in which a field stands; the first for a field that the page does not show. */
export function stageOfField(path: string): StageName {
  return FIELDS.find(([begins]) => begins.test(path))?.[1] ?? 'place';
}

/** Beginnings of the codes of findings, and where they belong. */
const FINDINGS: readonly (readonly [RegExp, StageName])[] = [
  [/^(slot-|compass|declination)/, 'place'],
  [/^(mount-|slots-|feeds-|loss-beyond|motor-|wind-|ballast)/, 'mount'],
  [/^view-/, 'skyline'],
  [/^(promise-|outside-stated)/, 'rain'],
  [/^no-line/, 'outlets'],
  [/^transmit-test/, 'readings'],
  [/^(no-unit|intermediate|transmit-|tuning-)/, 'plan'],
  [/^(planned-|amplifier|supply|receiver|stack)/, 'outlets'],
  [/^(pointing|peak-|not-main|main-lobe|axis-|feed-turned)/, 'peak'],
  [/^(reading|polarization)/, 'readings'],
  [/^(no-cause|changed-)/, 'verdict'],
];

/** The stage of a finding: by its code, else by the field it names, else by where it lies. */
export function stageOfFinding({ code, where }: Pick<Finding, 'code' | 'where'>): StageName {
  const byCode = FINDINGS.find(([begins]) => begins.test(code))?.[1];
  if (byCode) return byCode;
  if (where.field !== undefined) return stageOfField(where.field);
  if (where.axis) return 'peak';
  if (where.quantity) return 'readings';
  if (where.testPoint || where.part) return 'outlets';
  if (where.unit || where.carrier) return 'plan';
  return 'verdict';
}

const STATE_OF: Readonly<Record<Severity, StageState>> = {
  'does-not-conform': 'does-not-conform',
  undecided: 'undecided',
  incomplete: 'missing',
  note: 'done',
};

/** The worst first. */
const ORDER: readonly StageState[] = [
  'cannot-be-read',
  'does-not-conform',
  'undecided',
  'missing',
  'not-begun',
  'done',
];

/** The worst of some states; `done` for none. */
export function worstState(states: readonly StageState[]): StageState {
  return ORDER.find((state) => states.includes(state)) ?? 'done';
}

/** What a finding makes of its stage. */
export const stateOfFinding = ({ severity }: Pick<Finding, 'severity'>): StageState =>
  STATE_OF[severity];
