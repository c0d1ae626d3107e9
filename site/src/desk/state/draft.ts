/** A job while it is being done: the job file, version 2, of which anything may still be missing or wrong. */

import type { JobFile2 } from 'slantpath/job';

/** The same with every field optional, and a number perhaps still a text that is no number. */
type Loose<T> = T extends number
  ? number | string
  : T extends readonly (infer Item)[]
    ? readonly Loose<Item>[]
    : T extends object
      ? { readonly [Key in keyof T]?: Loose<T[Key]> }
      : T;

/** A job that may be half-filled. The parts of a distribution stay as they are: they are changed as rows. */
export type Draft = Omit<Loose<Omit<JobFile2, 'distribution'>>, 'format' | 'version'> & {
  readonly format: 'slantpath-job';
  readonly version: 2;
  readonly distribution?: {
    readonly trees?: readonly LoosePart[];
    readonly lines?: readonly LooseLine[];
    readonly [field: string]: unknown;
  };
};

/** A part of the distribution. */
export interface LoosePart {
  readonly kind: string;
  readonly name?: string;
  readonly to?: LoosePart | null;
  readonly outputs?: readonly (LoosePart | null)[];
  readonly taps?: readonly (LoosePart | null)[];
  readonly [field: string]: unknown;
}

/** A line from a receiving unit to a switch. */
interface LooseLine {
  readonly unit?: string;
  readonly into?: string;
  readonly input?: string;
  readonly parts?: readonly LoosePart[];
  readonly [field: string]: unknown;
}

/** Something of a list of the draft. */
type Each<T> = T extends readonly (infer Item)[] ? Item : never;
export type LooseSlot = Each<NonNullable<Draft['slots']>>;
export type LooseCarrier = Each<NonNullable<LooseSlot['carriers']>>;
export type LooseUnit = Each<NonNullable<Draft['units']>>;
type LooseVisit = Each<NonNullable<Draft['visits']>>;
export type LooseReading = Each<NonNullable<LooseVisit['readings']>>;
export type LoosePeaking = Each<NonNullable<LooseVisit['peaking']>>;
export type LooseLimit = Each<NonNullable<Draft['limits']>>;
export type LooseMount = Each<NonNullable<Draft['mounts']>>;

/** A job of which nothing is known yet but the day. */
export function emptyDraft(title: string, date: string, mount = 'mount'): Draft {
  return {
    format: 'slantpath-job',
    version: 2,
    title,
    date,
    station: {},
    slots: [],
    mounts: [{ kind: 'fixed', name: mount, slots: [] }],
  };
}
