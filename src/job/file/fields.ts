/** Building blocks of the job schemas: numbers with their interval, names, fixed words, decibels over frequency. */

import * as v from 'valibot';

/** A finite number from `minimum` to `maximum`, both inclusive. */
export function numberFrom(minimum: number, maximum: number, meaning: string) {
  return v.pipe(
    v.number(),
    v.finite(),
    v.minValue(minimum),
    v.maxValue(maximum),
    v.description(`${meaning}; ${minimum} to ${maximum}.`),
  );
}

/** A finite number of any size that a sum of angles can take. */
export function anyNumber(meaning: string) {
  return numberFrom(-1e6, 1e6, meaning);
}

/** Everything that could break a line, turn its direction or not be seen at all, and halves of characters. */
const PRINTABLE =
  /^[^\p{Cc}\p{Cs}\u2028\u2029\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]*$/u;

/** A text of 1 to `longest` printable characters. */
export function text(longest: number, meaning: string) {
  return v.pipe(
    v.string(),
    v.minLength(1),
    v.maxLength(longest),
    v.check((given) => PRINTABLE.test(given)),
    v.regex(/\S/, 'not blank'),
    v.description(`${meaning}; 1 to ${longest} characters, no control characters.`),
  );
}

/** A name of 1 to 80 characters. */
export const nameOf = (meaning: string) => text(80, meaning);

/** One of several fixed words, each explained. */
export function words<const T extends Readonly<Record<string, string>>>(
  meaning: string,
  explained: T,
) {
  const options = Object.keys(explained) as (keyof T & string)[];
  return v.pipe(
    v.picklist(options),
    v.description(
      `${meaning}. ${options.map((word) => `\`${word}\`: ${explained[word]}`).join('; ')}.`,
    ),
  );
}

/** Yes or no. */
export const yesNo = (meaning: string) => v.pipe(v.boolean(), v.description(meaning));

/** A list with its least and greatest length. */
export function listOf<const S extends v.GenericSchema>(
  item: S,
  [least, most]: readonly [number, number],
  meaning: string,
) {
  return v.pipe(v.array(item), v.minLength(least), v.maxLength(most), v.description(meaning));
}

/** A day, `YYYY-MM-DD`. */
export const day = (meaning: string) =>
  v.pipe(v.string(), v.isoDate(), v.description(`${meaning}, as YYYY-MM-DD.`));

const CLOCK = /^([01]\d|2[0-3]):[0-5]\d$/;

/** A time of the day in the job's time zone, `HH:MM`. */
export const clock = (meaning: string) =>
  v.pipe(v.string(), v.regex(CLOCK, 'HH:MM'), v.description(`${meaning}, as HH:MM.`));

/** A value in dB, one for all frequencies or by points. */
export const decibels = (meaning: string) =>
  v.pipe(
    v.union([
      v.pipe(v.number(), v.finite(), v.minValue(-100), v.maxValue(100)),
      v.pipe(
        v.array(
          v.strictObject({
            frequencyMHz: numberFrom(5, 10000, 'Frequency in MHz, rising along the list'),
            valueDb: numberFrom(-100, 100, 'Value in dB'),
          }),
        ),
        v.minLength(1),
        v.maxLength(200),
      ),
    ]),
    v.description(`${meaning} in dB, -100 to 100: one number, or points by frequency.`),
  );

/** What a powered part takes from the cable. */
export const supplyNeed = v.pipe(
  v.strictObject({
    currentA: numberFrom(0, 10, 'Current in amperes'),
    minimumVoltageV: numberFrom(0, 60, 'Least voltage in volts'),
  }),
  v.description('What it takes from the supply on the cable.'),
);
