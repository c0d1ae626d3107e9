/** Building blocks of the job schema: numbers with their interval, names, decibels over frequency. */

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

/** A finite number of any size. */
export function anyNumber(meaning: string) {
  return v.pipe(v.number(), v.finite(), v.description(meaning));
}

/** A name of 1 to 80 characters. */
export const name = v.pipe(v.string(), v.minLength(1), v.maxLength(80));

/** A value in dB, one for all frequencies or by points. */
export const decibels = v.union([
  v.pipe(v.number(), v.finite(), v.minValue(-100), v.maxValue(100)),
  v.pipe(
    v.array(
      v.strictObject({
        frequencyMHz: numberFrom(5, 10000, 'Frequency in MHz'),
        valueDb: numberFrom(-100, 100, 'Value in dB'),
      }),
    ),
    v.minLength(1),
  ),
]);

/** What a powered part takes from the cable. */
export const supplyNeed = v.strictObject({
  currentA: numberFrom(0, 10, 'Current in amperes'),
  minimumVoltageV: numberFrom(0, 60, 'Least voltage in volts'),
});
