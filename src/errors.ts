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
  | 'unknown-field'
  | 'malformed'
  | 'empty'
  | 'too-few'
  | 'too-many'
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
  /** Least value allowed, where there is one; itself left out where `allowed` says `above`. */
  readonly minimum?: number | undefined;
  /** Largest value allowed, where there is one. */
  readonly maximum?: number | undefined;
}

/** A {@link DomainError} as plain data, for logs and for other programs: what `JSON.stringify` writes. */
export interface DomainErrorJson {
  readonly name: 'DomainError';
  readonly code: DomainErrorCode;
  readonly message: string;
  readonly parameter: string;
  /** The value as it came in: a number, text or truth value as it is, anything else as the message shows it. */
  readonly received: string | number | boolean | null;
  readonly allowed: string;
  readonly slip?: string;
  readonly index?: number;
  readonly minimum?: number;
  readonly maximum?: number;
}

/** Mark that the error carries in every copy of the library, whatever its module format. */
const MARK = 'slantpath/DomainError';

/** Longest part of a message that is shown whole. */
const LONGEST_TEXT = 240;

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
  /** Least value allowed, where there is one; itself left out where `allowed` says `above`. */
  readonly minimum: number | undefined;
  /** Largest value allowed, where there is one. */
  readonly maximum: number | undefined;

  /** Builds the message from the facts; it never prints more than one value. */
  constructor(details: DomainErrorDetails, options?: { readonly cause?: unknown }) {
    const { parameter, received, slip, index } = details;
    const allowed = shortened(details.allowed);
    const where = index === undefined ? parameter : `${parameter}[${index}]`;
    super(
      `${where} must be ${allowed}, got ${show(received)}${slip ? `; ${shortened(slip)}` : ''}`,
      options,
    );
    this.name = 'DomainError';
    this.code = details.code;
    this.parameter = parameter;
    this.received = received;
    this.allowed = allowed;
    this.slip = slip;
    this.index = index;
    this.minimum = details.minimum;
    this.maximum = details.maximum;
    Object.defineProperty(this, Symbol.for(MARK), { value: true });
  }

  /**
   * The same error told from further out, itself the `cause`: the path goes before the parameter.
   *
   * @param path  Where the refused object lies, such as `slots[1]`; may be empty.
   * @param parameter  What the caller calls the parameter in there; default as it is.
   */
  at(path: string, parameter = this.parameter): DomainError {
    const joint = path === '' || parameter === '' || parameter.startsWith('[') ? '' : '.';
    const told = `${path}${joint}${parameter}`;
    if (told === this.parameter) return this;
    return new DomainError({ ...factsOf(this), parameter: told }, { cause: this });
  }

  /** The same error with the row of a batch, itself the `cause`; an error that has a row keeps it. */
  inRow(index: number): DomainError {
    if (this.index !== undefined) return this;
    return new DomainError({ ...factsOf(this), index }, { cause: this });
  }

  /** Plain data with the message, for logs and for other programs. */
  toJSON(): DomainErrorJson {
    const { code, message, parameter, received, allowed, slip, index, minimum, maximum } = this;
    const plain =
      received === null ||
      typeof received === 'boolean' ||
      (typeof received === 'string' && received.length <= LONGEST_TEXT) ||
      (typeof received === 'number' && Number.isFinite(received) && !Object.is(received, -0));
    return {
      name: 'DomainError',
      code,
      message,
      parameter,
      received: plain ? received : show(received),
      allowed,
      ...(slip === undefined ? {} : { slip }),
      ...(index === undefined ? {} : { index }),
      ...(minimum === undefined ? {} : { minimum }),
      ...(maximum === undefined ? {} : { maximum }),
    };
  }
}

function factsOf(error: DomainError): DomainErrorDetails {
  const { code, parameter, received, allowed, slip, index, minimum, maximum } = error;
  return { code, parameter, received, allowed, slip, index, minimum, maximum };
}

/**
 * Whether something caught is a {@link DomainError}, also one thrown by another copy of the library: an app that loads it as an
 * ES module and as CommonJS has two classes, and `instanceof` knows only one of them.
 *
 * @example
 * ```ts
 * import { isDomainError } from 'slantpath';
 * import { lookAngles } from 'slantpath/pointing';
 * let field = '';
 * try {
 *   lookAngles({ latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 190000 }, 16.4);
 * } catch (error) {
 *   if (!isDomainError(error)) throw error;
 *   field = `${error.parameter} ${error.minimum} ${error.maximum}`;
 * }
 * field; // => 'heightM -1000 100000'
 * ```
 */
export function isDomainError(caught: unknown): caught is DomainError {
  return (
    typeof caught === 'object' &&
    caught !== null &&
    (caught as Record<symbol, unknown>)[Symbol.for(MARK)] === true
  );
}

/**
 * Runs a computation on a part of the input; an error comes out with the path in front of its parameter.
 *
 * @param names  What the caller calls the parameters: beginnings of paths with what stands for them, the longest counts;
 *   `{ tree: '' }` turns `tree.outputs[1]` into `outputs[1]`.
 */
export function within<T>(
  path: string,
  compute: () => T,
  names: Readonly<Record<string, string>> = {},
): T {
  try {
    return compute();
  } catch (error) {
    throw isDomainError(error) ? error.at(path, renamed(error.parameter, names)) : error;
  }
}

function renamed(parameter: string, names: Readonly<Record<string, string>>): string {
  const known = Object.keys(names).filter(
    (name) => parameter.startsWith(name) && /^$|^[.[]/.test(parameter.slice(name.length)),
  );
  const longest = known.sort((a, b) => b.length - a.length)[0];
  if (longest === undefined) return parameter;
  return `${names[longest]}${parameter.slice(longest.length)}`.replace(/^\./, '');
}

/** Runs a computation on a row of a batch; an error comes out with the row. */
export function withinRow<T>(index: number, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    throw isDomainError(error) ? error.inRow(index) : error;
  }
}

/** A text that fits in a message: the beginning of a long one. */
function shortened(text: string): string {
  return text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT - 1)}…` : text;
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

/** Throws the error for a value that is not the number asked for. */
function refuse(
  parameter: string,
  received: unknown,
  allowed: string,
  slip?: string,
  index?: number,
  bounds?: { readonly minimum?: number | undefined; readonly maximum?: number | undefined },
): never {
  const code =
    received === undefined || received === null
      ? 'missing'
      : typeof received !== 'number'
        ? 'not-a-number'
        : Number.isFinite(received)
          ? 'out-of-range'
          : 'not-finite';
  const quoted =
    typeof received === 'string' && received.trim() !== '' && Number.isFinite(Number(received));
  throw new DomainError({
    code,
    parameter,
    received,
    allowed,
    // A slip of the unit or of the order shows in a number only.
    slip: code === 'out-of-range' ? slip : quoted ? 'is the number in quotes?' : undefined,
    index,
    ...bounds,
  });
}

/**
 * Largest and least size of a number taken where no other bound stands: far beyond anything physical, and small enough that
 * squares and products of it stay finite.
 */
const LARGEST = 1e60;
const LEAST = 1e-60;

/** Returns `value` if it is a finite number of a size that can be computed with, otherwise throws; -0 comes out as 0. */
export function finite(parameter: string, value: number, slip?: string, index?: number): number {
  if (typeof value === 'number' && value >= -LARGEST && value <= LARGEST) return value + 0;
  const allowed = Number.isFinite(value) ? 'from -1e60 to 1e60' : 'a finite number';
  return refuse(parameter, value, allowed, slip, index);
}

/** Share of an end by which rounding may put a value beyond it. */
const GRACE = 8e-16;

/** Whether a value lies in an interval, with the grace of {@link inRange}. */
export const isInside = (value: number, from: number, to: number): boolean =>
  value >= from - GRACE * Math.abs(from) && value <= to + GRACE * Math.abs(to);

/**
 * Returns `value` held to `minimum`..`maximum` (both inclusive), -0 as 0; a few units in the last place beyond
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
  if (typeof value === 'number') {
    if (value >= minimum && value <= maximum) return value + 0;
    if (value < minimum && minimum - value <= GRACE * Math.abs(minimum)) return minimum;
    if (value > maximum && value - maximum <= GRACE * Math.abs(maximum)) return maximum;
  }
  const open = maximum === Number.POSITIVE_INFINITY;
  const allowed = open ? `${minimum} or more` : `from ${minimum} to ${maximum}`;
  const bounds = { minimum, maximum: open ? undefined : maximum };
  return refuse(parameter, value, allowed, slip, index, bounds);
}

/** Returns `value` if it is above zero and of a size that can be computed with, otherwise throws. */
export function positive(parameter: string, value: number, slip?: string, index?: number): number {
  if (typeof value === 'number' && value >= LEAST && value <= LARGEST) return value;
  const allowed = Number.isFinite(value) && value > 0 ? 'from 1e-60 to 1e60' : 'above 0';
  return refuse(parameter, value, allowed, slip, index, { minimum: 0 });
}

/** Returns `value` if it is one of `options`, otherwise throws. */
export function oneOf<T extends string>(parameter: string, value: T, options: readonly T[]): T {
  if (options.includes(value)) return value;
  throw new DomainError({
    code: value === undefined || value === null ? 'missing' : 'not-an-option',
    parameter,
    received: value,
    allowed: `one of ${listed(options)}`,
  });
}

/** Returns `value` if it is a text that says something, otherwise throws. */
export function text(parameter: string, value: unknown): string {
  if (typeof value === 'string' && value !== '') return value;
  throw new DomainError({
    code: value === undefined ? 'missing' : 'malformed',
    parameter,
    received: value,
    allowed: 'a name',
  });
}

/** Words in a row; of many only the first, and how many there are. */
export function listed(words: readonly string[]): string {
  const whole = words.join(', ');
  if (whole.length < LONGEST_TEXT - 20) return whole;
  const first = words
    .slice(0, 8)
    .join(', ')
    .slice(0, LONGEST_TEXT - 40);
  return `${first} … (${words.length} in all)`;
}

/** Most entries that a list may have: what a mistake in a program makes longer is refused before it is read. */
const LONGEST_LIST = 10_000_000;

/**
 * Returns `value` if it is a list, whose entries can be read: an array, a typed array, or plain data with a length and a last
 * entry; otherwise throws.
 */
export function list<T extends ArrayLike<unknown>>(parameter: string, value: T): T {
  const length = typeof value === 'object' && value !== null ? value.length : undefined;
  if (length !== undefined && Number.isInteger(length) && length >= 0 && length <= LONGEST_LIST)
    if (length === 0 || length - 1 in value) return value;
  throw new DomainError({
    code:
      value === undefined || value === null
        ? 'missing'
        : typeof length === 'number' && length > LONGEST_LIST
          ? 'too-many'
          : 'malformed',
    parameter,
    received: value,
    allowed: `a list of at most ${LONGEST_LIST} entries`,
  });
}

/** The same for a list of objects, each of which can be read. */
export function objects<T extends object>(parameter: string, value: ArrayLike<T>): readonly T[] {
  return Array.from(list(parameter, value), (entry, index) =>
    object(`${parameter}[${index}]`, entry),
  );
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
