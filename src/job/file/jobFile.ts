/** The types of the job file, from the schemas that check it. */

import type * as v from 'valibot';
import type { jobSchema1 } from './jobSchema1.js';
import type { jobSchema2 } from './jobSchema2.js';

/** The same with every field and list read-only. */
type ReadonlyDeep<T> = T extends readonly (infer Item)[]
  ? readonly ReadonlyDeep<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: ReadonlyDeep<T[Key]> }
    : T;

/** A job file, version 1: one reflector, one receiving unit, one tree. Still read; see `docs/schemas/job-1.schema.json`. */
export type JobFile1 = ReadonlyDeep<v.InferOutput<typeof jobSchema1>>;

/** A job file, version 2: what a technician knows and has read; see `docs/schemas/job-2.schema.json`. */
export type JobFile2 = ReadonlyDeep<v.InferOutput<typeof jobSchema2>>;

/** What `parseJob` gives: a job file of version 2 in which everything has its name. */
export interface JobFile extends JobFile2 {
  readonly title: string;
  readonly station: JobStation;
  readonly slots: readonly JobSlot[];
  readonly mounts: readonly JobMount[];
  readonly visits: readonly JobVisit[];
}

type Named<T> = T & { readonly name: string };
type Each<T> = T extends readonly (infer Item)[] ? Item : never;

/** Where the antenna stands. */
export type JobStation = Named<JobFile2['station']>;
/** An orbital slot and its carriers. */
export type JobSlot = Named<JobFile2['slots'][number]>;
/** A carrier that is to be received. */
export type JobCarrier = Each<NonNullable<JobSlot['carriers']>>;
type MountOf<T> = T extends unknown ? Named<T> & { readonly slots: readonly string[] } : never;
/** A mount with its reflector; read `kind` first. */
export type JobMount = MountOf<Each<NonNullable<JobFile2['mounts']>>>;
/** A reflector. */
export type JobReflector = NonNullable<JobMount['reflector']>;
/** A receiving unit. */
export type JobUnit = Each<NonNullable<JobFile2['units']>>;
/** The horizon as sighted. */
export type JobHorizon = NonNullable<JobFile2['horizon']>;
/** Where the rain statistics come from. */
export type JobRain = NonNullable<JobFile2['rain']>;
/** What was promised. */
export type JobTarget = NonNullable<JobFile2['target']>;
/** What lies behind the receiving units. */
export type JobDistribution = NonNullable<JobFile2['distribution']>;
/** A line from a receiving unit to a switch. */
export type JobLine = Each<NonNullable<JobDistribution['lines']>>;
/** A transmitted carrier. */
export type JobTransmit = Each<NonNullable<JobFile2['transmit']>>;
/** A limit at a test point. */
export type JobLimit = Each<NonNullable<JobFile2['limits']>>;
/** A visit: what was done and read on one day. */
export type JobVisit = Each<NonNullable<JobFile2['visits']>>;
/** Samples and bracketing taken on one axis while peaking. */
export type JobPeaking = Each<NonNullable<JobVisit['peaking']>>;
/** One reading. */
export type JobReading = Each<NonNullable<JobVisit['readings']>>;
