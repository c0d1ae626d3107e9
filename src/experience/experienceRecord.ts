/** What `recordExperience` reads of a record, and the refusal of what lacks it. */

import { DomainError, object } from '../errors.js';

/** What is taken from a record: a `JobRecord` of `slantpath/job` is one; all else in it is left alone. */
export interface ExperienceRecord {
  readonly job: {
    readonly station: {
      readonly name: string;
      readonly latitudeDeg: number;
      readonly longitudeDeg: number;
    };
    readonly visits: readonly {
      readonly date: string;
      readonly weather?: string;
      readonly instrument?: string;
      readonly readings?: readonly object[];
    }[];
  };
  readonly plan: {
    readonly signals: readonly {
      readonly slot: string;
      readonly carrier: string;
      readonly unit: string;
    }[];
  };
  readonly verdicts: readonly {
    readonly visit: number;
    readonly testPoint: string;
    readonly slot: string | null;
    readonly carrier: string | null;
    readonly quantity: string;
    readonly difference: number | null;
    readonly standardUncertainty: number;
    readonly wet: boolean;
    readonly bound: string | null;
  }[];
}

/** Kinds of the fields that are read, `null` where a record may leave one out. */
const isText = (value: unknown) => typeof value === 'string';
const isNumber = (value: unknown) => typeof value === 'number';
const orNull = (is: (value: unknown) => boolean) => (value: unknown) => value === null || is(value);

const STATION = { name: isText, latitudeDeg: isNumber, longitudeDeg: isNumber };
const VISIT = { date: isText };
const SIGNAL = { slot: isText, carrier: isText, unit: isText };
const VERDICT = {
  visit: isNumber,
  testPoint: isText,
  slot: orNull(isText),
  carrier: orNull(isText),
  quantity: isText,
  difference: orNull(isNumber),
  standardUncertainty: isNumber,
};

/** Where one of the fields of `value` is missing or of another kind. */
const wrongField = (
  value: unknown,
  fields: Readonly<Record<string, (value: unknown) => boolean>>,
) =>
  Object.keys(fields).find(
    (name) => fields[name]?.((value as Readonly<Record<string, unknown>> | null)?.[name]) !== true,
  );

/** A record whose fields that are read here are there and of their kind; all else in it is left alone. */
export function recordForExperience(record: ExperienceRecord, index: number): ExperienceRecord {
  const path = `records[${index}]`;
  const { job, plan, verdicts } = object(path, record);
  const refuse = (parameter: string): never => {
    throw new DomainError({
      code: 'malformed',
      parameter,
      received: record,
      allowed: parameter === path ? 'a record with job, plan and verdicts' : 'as a record holds it',
      slip: parameter === path ? 'is it a job file, not yet a record?' : undefined,
    });
  };
  const lists = { visits: job?.visits, signals: plan?.signals, verdicts };
  if (!job || !plan || !verdicts) refuse(path);
  if (!Array.isArray(lists.visits)) refuse(`${path}.job.visits`);
  if (!Array.isArray(lists.signals)) refuse(`${path}.plan.signals`);
  if (!Array.isArray(verdicts)) refuse(`${path}.verdicts`);
  const need = (where: string, value: unknown, fields: Parameters<typeof wrongField>[1]) => {
    const wrong = wrongField(value, fields);
    if (wrong !== undefined) refuse(`${path}.${where}.${wrong}`);
  };
  need('job.station', job.station, STATION);
  for (const [at, visit] of job.visits.entries()) need(`job.visits[${at}]`, visit, VISIT);
  for (const [at, signal] of plan.signals.entries()) need(`plan.signals[${at}]`, signal, SIGNAL);
  for (const [at, verdict] of verdicts.entries()) need(`verdicts[${at}]`, verdict, VERDICT);
  return record;
}
