/** Whether a value from a store or a file can be shown as a job at all. */

import type { Draft } from './draft.js';
import { prepared } from './prepared.js';

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isListOfObjects = (value: unknown) =>
  value === undefined || (Array.isArray(value) && value.every(isObject));

/** Whether the groups and lists of a draft are groups and lists; what stands in their fields may be anything. */
export function isDraft(value: unknown): value is Draft {
  if (!isObject(value) || value['format'] !== 'slantpath-job' || value['version'] !== 2)
    return false;
  const groups = ['station', 'horizon', 'rain', 'target', 'distribution'];
  if (groups.some((name) => value[name] !== undefined && !isObject(value[name]))) return false;
  const lists = ['slots', 'mounts', 'units', 'limits', 'transmit', 'visits'];
  if (lists.some((name) => !isListOfObjects(value[name]))) return false;
  try {
    // What cannot even be walked through is damaged, whatever it is.
    prepared(value as unknown as Draft);
    return true;
  } catch {
    return false;
  }
}
