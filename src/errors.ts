/**
 * The one error class of the library and the guards that throw it.
 *
 * Guards stand at the public edge only, once. Each returns the checked value, so that a formula can
 * be written on top of it; bounds are inclusive with a grace of a few units in the last place.
 */

/** What is wrong with a value, for programs; the message says the same for people. */
export type DomainErrorCode =
  | 'missing'
  | 'not-a-number'
  | 'not-finite'
  | 'out-of-range'
  | 'not-an-option'
  | 'malformed'
  | 'empty'
  | 'too-few'
  | 'length-mismatch'
  | 'inconsistent';

/** The facts of a {@link DomainError}. */
export interface DomainErrorDetails {
  /** What is wrong, as a fixed word. */
  readonly code: DomainErrorCode;
  /** Name of the offending field or argument; a path such as `slots[1].frequencyGHz` for nested input. */
  readonly parameter: string;
  /** The value as it came in. */
  readonly received: unknown;
  /** What would have been right, as the end of a sentence: `from -90 to 90`. */
  readonly allowed: string;
  /** The likely slip as a question, where there is one: `were latitude and longitude swapped?`. */
  readonly slip?: string | undefined;
  /** Row of the bad value in a batch call, from 0. */
  readonly index?: number | undefined;
}

/**
 * Wrong input: a value outside its domain, missing, of another type or inconsistent with its neighbours.
 *
 * A legitimate "no answer" (satellite below the horizon, no peak) is never an error but a tagged union.
 *
 * @example
 * ```ts
 * import { DomainError } from 'slantpath';
 * import { lookAngles } from 'slantpath/pointing';
 * let message = '';
 * try {
 *   lookAngles({ latitudeDeg: 116.2, longitudeDeg: 46.4, heightM: 0 }, 16.4);
 * } catch (error) {
 *   if (error instanceof DomainError) message = error.message;
 * }
 * message; // => 'latitudeDeg must be from -90 to 90, got 116.2; were latitude and longitude swapped?'
 * ```
 */
export class DomainError extends RangeError implements DomainErrorDetails {
  /** What is wrong, as a fixed word. */
  readonly code: DomainErrorCode;
  /** Name or path of the offending field or argument. */
  readonly parameter: string;
  /** The value as it came in. */
  readonly received: unknown;
  /** What would have been right. */
  readonly allowed: string;
  /** The likely slip as a question, where there is one. */
  readonly slip: string | undefined;
  /** Row of the bad value in a batch call, from 0. */
  readonly index: number | undefined;

  /** Builds the message from the facts; it never prints more than one value. */
  constructor(details: DomainErrorDetails) {
    const { parameter, received, allowed, slip, index } = details;
    const where = index === undefined ? parameter : `${parameter}[${index}]`;
    super(`${where} must be ${allowed}, got ${show(received)}${slip ? `; ${slip}` : ''}`);
    this.name = 'DomainError';
    this.code = details.code;
    this.parameter = parameter;
    this.received = received;
    this.allowed = allowed;
    this.slip = slip;
    this.index = index;
  }
}

/** One value, briefly: an array is shown by its length, an object by its kind, a long text is cut. */
function show(value: unknown): string {
  if (typeof value === 'string')
    return value.length > 40 ? `"${value.slice(0, 40)}…"` : `"${value}"`;
  if (Array.isArray(value)) return `an array of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  if (typeof value === 'function') return 'a function';
  return Object.is(value, -0) ? '-0' : String(value);
}

/** Throws the error for a value that is not a finite number. */
function refuse(
  parameter: string,
  received: unknown,
  allowed: string,
  slip?: string,
  index?: number,
): never {
  const code =
    received === undefined || received === null
      ? 'missing'
      : typeof received !== 'number'
        ? 'not-a-number'
        : Number.isFinite(received)
          ? 'out-of-range'
          : 'not-finite';
  throw new DomainError({ code, parameter, received, allowed, slip, index });
}

/** Returns `value` if it is a finite number, otherwise throws. */
export function finite(parameter: string, value: number, slip?: string, index?: number): number {
  if (Number.isFinite(value)) return value;
  return refuse(parameter, value, 'a finite number', slip, index);
}

/**
 * Returns `value` held to `minimum`..`maximum` (both inclusive); a few units in the last place beyond
 * an end are brought back to it, more throws.
 */
export function inRange(
  parameter: string,
  value: number,
  minimum: number,
  maximum: number,
  slip?: string,
  index?: number,
): number {
  if (typeof value === 'number' && value >= minimum && value <= maximum) return value;
  if (Number.isFinite(value)) {
    if (value < minimum && minimum - value <= 8e-16 * Math.abs(minimum)) return minimum;
    if (value > maximum && value - maximum <= 8e-16 * Math.abs(maximum)) return maximum;
  }
  const allowed =
    maximum === Number.POSITIVE_INFINITY ? `${minimum} or more` : `from ${minimum} to ${maximum}`;
  return refuse(parameter, value, allowed, slip, index);
}

/** Returns `value` if it is finite and above zero, otherwise throws. */
export function positive(parameter: string, value: number, slip?: string, index?: number): number {
  if (value > 0 && Number.isFinite(value)) return value;
  return refuse(parameter, value, 'above 0', slip, index);
}

/** Returns `value` if it is one of `options`, otherwise throws. */
export function oneOf<T extends string>(parameter: string, value: T, options: readonly T[]): T {
  if (options.includes(value)) return value;
  throw new DomainError({
    code: value === undefined || value === null ? 'missing' : 'not-an-option',
    parameter,
    received: value,
    allowed: `one of ${options.join(', ')}`,
  });
}

/** Returns `value` if it is an object, so that its fields can be read; otherwise throws. */
export function object<T>(parameter: string, value: T): T {
  if (typeof value === 'object' && value !== null) return value;
  throw new DomainError({
    code: value === undefined || value === null ? 'missing' : 'malformed',
    parameter,
    received: value,
    allowed: 'an object',
  });
}
