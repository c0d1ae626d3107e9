/** A file of sites, and the words that say what its columns are. */
import type { ReadColumn } from '../../../src/command/columns/computePart.js';

export const FILE = ['id', 'lat', 'lon', 'alt'];
export const WORDS = {
  latitudeDeg: 'lat',
  longitudeDeg: 'lon',
  heightM: 'alt',
  orbitalLongitudeDeg: '16.4',
};

/** One column as it is read from a file. */
export const read = (values: readonly (number | null)[]): ReadColumn => ({
  values: Float64Array.from(values, (value) => value ?? 0),
  missing: values.includes(null)
    ? Uint8Array.from(values, (value) => Number(value === null))
    : null,
});
