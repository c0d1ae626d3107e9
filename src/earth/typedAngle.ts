/** One angle of a typed coordinate: degrees, or degrees and minutes, or degrees, minutes and seconds. */

/** Which coordinate a letter or label makes an angle. */
type Axis = 'latitude' | 'longitude' | 'unnamed';

/** One reading of half a text. */
export interface AngleReading {
  readonly axis: Axis;
  /** 1 or -1. */
  readonly sign: number;
  /** Degrees, then minutes and seconds where given. */
  readonly fields: readonly number[];
  /** Decimals of the last field. */
  readonly decimals: number;
}

const FIELD = String.raw`\d{1,3}(?:\.\d{1,15})?`;
// Between fields stands a mark, a lone hyphen or space; a mark may follow the last field.
const ANGLE = new RegExp(
  String.raw`^\s*([xy])?\s*([nsew])?\s*([+-])?\s*(${FIELD})` +
    String.raw`(?:(?:\s*[°:]\s*|-|\s+)(${FIELD})(?:(?:\s*[':]\s*|-|\s+)(${FIELD}))?)?` +
    String.raw`\s*([°'"])?\s*([nsew])?\s*$`,
);
const LAST_MARK = ['°', "'", '"'] as const;

/** The angle in a tidied text (lower case, plain marks, points); `undefined` if it is none. */
export function readAngle(half: string): AngleReading | undefined {
  const match = ANGLE.exec(half);
  if (!match) return undefined;
  const [, label, before, sign, degrees, minutes, seconds, mark, behind] = match;
  const texts = [degrees, minutes, seconds].filter((text) => text !== undefined);
  const letter = before ?? behind;
  const axis = axisOf(letter);
  const labelled = label === undefined ? axis : label === 'y' ? 'latitude' : 'longitude';
  if (
    (before !== undefined && behind !== undefined) ||
    (letter !== undefined && sign !== undefined) ||
    (letter !== undefined && labelled !== axis) ||
    (mark !== undefined && mark !== LAST_MARK[texts.length - 1]) ||
    texts.slice(0, -1).some((text) => text.includes('.'))
  )
    return undefined;
  return {
    axis: labelled,
    sign: sign === '-' || letter === 's' || letter === 'w' ? -1 : 1,
    fields: texts.map(Number),
    decimals: texts[texts.length - 1]?.split('.')[1]?.length ?? 0,
  };
}

function axisOf(letter: string | undefined): Axis {
  if (letter === undefined) return 'unnamed';
  return letter === 'n' || letter === 's' ? 'latitude' : 'longitude';
}

/** Degrees of a reading, with one rounding. */
export function readingDeg({ sign, fields }: AngleReading): number {
  const [degrees = 0, minutes, seconds] = fields;
  if (minutes === undefined) return sign * degrees;
  if (seconds === undefined) return (sign * (degrees * 60 + minutes)) / 60;
  return (sign * (degrees * 3600 + minutes * 60 + seconds)) / 3600;
}

/** Worth of one step of the last digit, in degrees. */
export function readingStepDeg({ fields, decimals }: AngleReading): number {
  return 1 / (60 ** (fields.length - 1) * 10 ** decimals);
}
