/** The text of a two-line element set, read strictly by its columns: the checksum alone takes a letter O for a zero. */

import { DomainError } from '../errors.js';

/** A field of a line: its columns counted from 1, what stands in them, and how that is said. */
type Field = readonly [name: string, from: number, to: number, pattern: RegExp, form: string];

const ANGLE = /^(?: {2}\d| \d\d|\d{3})\.\d{4}$/;
const POWER = /^[ +-]\d{5}[+-]\d$/;
const NUMBER = /^[ A-HJ-NP-Z\d][ \d]{3}\d$/;

const FIRST: readonly Field[] = [
  ['catalogue number', 3, 7, NUMBER, 'NNNNN'],
  ['classification', 8, 8, /^[UCS ]$/, 'U, C or S'],
  ['international designator', 10, 17, /^(?: {8}|\d{5}[A-Z]{1,3} {0,2})$/, 'YYNNNAAA'],
  ['epoch', 19, 32, /^\d\d(?: {2}\d| \d\d|\d{3})\.\d{8}$/, 'YYDDD.DDDDDDDD'],
  ['first derivative of the mean motion', 34, 43, /^[ +-]\.\d{8}$/, '+.NNNNNNNN'],
  ['second derivative of the mean motion', 45, 52, POWER, '+NNNNN-N'],
  ['drag term', 54, 61, POWER, '+NNNNN-N'],
  ['ephemeris type', 63, 63, /^[\d ]$/, 'N'],
  ['element set number', 65, 68, /^ *\d+$/, 'NNNN'],
];

const SECOND: readonly Field[] = [
  ['catalogue number', 3, 7, NUMBER, 'NNNNN'],
  ['inclination', 9, 16, ANGLE, 'NNN.NNNN'],
  ['right ascension of the ascending node', 18, 25, ANGLE, 'NNN.NNNN'],
  ['eccentricity', 27, 33, /^\d{7}$/, 'NNNNNNN'],
  ['argument of perigee', 35, 42, ANGLE, 'NNN.NNNN'],
  ['mean anomaly', 44, 51, ANGLE, 'NNN.NNNN'],
  ['mean motion', 53, 63, /^[ \d]\d\.\d{8}$/, 'NN.NNNNNNNN'],
  ['revolution number', 64, 68, /^ *\d+$|^ {5}$/, 'NNNNN'],
];

/** Last digit of a line: the sum of its digits, a minus counting 1, modulo 10. */
function checksum(line: string): number {
  let sum = 0;
  for (const sign of line.slice(0, 68))
    sum += sign === '-' ? 1 : /\d/.test(sign) ? Number(sign) : 0;
  return sum % 10;
}

function bad(received: unknown, allowed: string, slip?: string): DomainError {
  return new DomainError({ code: 'malformed', parameter: 'tle', received, allowed, slip });
}

/** A function that cuts the columns of a field out of a checked line. */
function checkedLine(line: string, number: 1 | 2, fields: readonly Field[]) {
  if (line.length !== 69) throw bad(line, 'lines of 69 characters', 'were blanks lost in copying?');
  // What lies between fields must be blank: a line shifted by a column would otherwise still read as numbers.
  let next = 3;
  for (const [name, from, to, pattern, form] of fields) {
    const text = line.slice(from - 1, to);
    const gap = line.slice(next - 1, from - 1);
    const place = from === to ? `column ${from}` : `columns ${from} to ${to}`;
    if (!pattern.test(text) || gap.trim() !== '')
      throw bad(
        gap + text,
        `a line ${number} with the ${name} in ${place} as ${form}`,
        /[A-Za-z]/.test(text) ? 'is a letter in the place of a digit?' : undefined,
      );
    next = to + 1;
  }
  // Last, since it says least: the columns above tell which figure is wrong.
  if (line.slice(68) !== String(checksum(line)))
    throw bad(line, `a line whose checksum is ${checksum(line)}`, 'was a digit changed?');
  return (name: string): string => {
    const field = fields.find(([own]) => own === name) as Field;
    return line.slice(field[1] - 1, field[2]).trim();
  };
}

/** A number written as mantissa behind an unwritten point, and a power of ten: `-11606-4`. */
function withPower(text: string): number {
  const [, sign, digits, power] = /^([+-]?)(\d{5})([+-]\d)$/.exec(text) as unknown as string[];
  // Plus 0 turns the -0 of an empty term into 0.
  return Number(`${sign}0.${digits}e${power}`) + 0;
}

/** The figures of a two-line set, as written; the epoch in milliseconds since 1970. */
export function twoLineFigures(tle: string) {
  if (typeof tle !== 'string')
    throw new DomainError({
      code: tle === undefined || tle === null ? 'missing' : 'malformed',
      parameter: 'tle',
      received: tle,
      allowed: 'the text of two lines',
    });
  const lines = tle
    .split(/\r\n|\n|\r/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
  // The name above the set may begin with a 1 as well.
  const at = lines.findIndex((line, i) => /^1 /.test(line) && /^2 /.test(lines[i + 1] ?? ''));
  if (at < 0) throw bad(tle, 'a line that begins with 1 and after it a line that begins with 2');
  const first = checkedLine(lines[at] as string, 1, FIRST);
  const second = checkedLine(lines[at + 1] as string, 2, SECOND);
  // Lines of two satellites are each right by themselves; only the number tells that they do not belong together.
  if (first('catalogue number') !== second('catalogue number'))
    throw bad(
      second('catalogue number'),
      `of one satellite: ${first('catalogue number')} in both lines`,
    );
  return {
    epochMs: epochMs(first('epoch')),
    dragTermPerEarthRadius: withPower(first('drag term')),
    inclinationDeg: Number(second('inclination')),
    ascendingNodeDeg: Number(second('right ascension of the ascending node')),
    eccentricityRatio: Number(`0.${second('eccentricity')}`),
    argumentOfPerigeeDeg: Number(second('argument of perigee')),
    meanAnomalyDeg: Number(second('mean anomaly')),
    meanMotionRevPerDay: Number(second('mean motion')),
  };
}

/** Years of two digits belong to 1957 to 2056; days count from 1. */
function epochMs(text: string): number {
  const short = Number(text.slice(0, 2));
  const year = short + (short < 57 ? 2000 : 1900);
  const day = Number(text.slice(2));
  // In these hundred years every fourth one is a leap year, 2000 included.
  const days = year % 4 === 0 ? 366 : 365;
  if (!(day >= 1 && day < days + 1)) throw bad(text, `an epoch of day 1 to ${days} of ${year}`);
  return Date.UTC(year, 0, 1) + (day - 1) * 86400000;
}
