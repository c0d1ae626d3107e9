/** Rules of thumb that go round in the trade, as formulas to be tried (common practice, no source). */

/** A rule of thumb. */
export interface RuleOfThumb {
  /** Name in kebab-case words. */
  readonly name: string;
  /** Name of the subject it answers. */
  readonly subject: string;
  /** The rule as a typed formula. */
  readonly formula: string;
  /** How it is told. */
  readonly told: string;
}

/**
 * The rules, in the order of the job; `tryFormula` gives each its verdict.
 *
 * @example
 * ```ts
 * import { RULES_OF_THUMB, tryFormula } from 'slantpath/teaching';
 * const rule = RULES_OF_THUMB.find(({ name }) => name === 'sphere-elevation');
 * rule && tryFormula(rule).kind; // => 'holds'
 * ```
 */
export const RULES_OF_THUMB: readonly RuleOfThumb[] = [
  {
    name: 'south-plus-arctangent',
    subject: 'azimuth',
    formula: '180 - atan(tan(dlon) / sin(lat))',
    told: 'Azimuth is 180 less the arctangent of tan(longitude difference) over sin(latitude).',
  },
  {
    name: 'four-quadrant-azimuth',
    subject: 'azimuth',
    formula: 'mod(atan2(tan(dlon), 0 - sin(lat)), 360)',
    told: 'The same with both signs kept.',
  },
  {
    name: 'sphere-elevation',
    subject: 'elevation',
    formula: 'atan((cos(lat) * cos(dlon) - 0.1512) / sqrt(1 - (cos(lat) * cos(dlon))^2))',
    told: 'Elevation on a round Earth, 0.1512 being its radius over that of the orbit.',
  },
  {
    name: 'one-height-for-all',
    subject: 'slant-range',
    formula: '36000 + 0 * lat',
    told: 'The satellite is 36000 km away.',
  },
  {
    name: 'sphere-range',
    subject: 'slant-range',
    formula: '35786 * sqrt(1 + 0.42 * (1 - cos(lat) * cos(dlon)))',
    told: 'Range from the height of the orbit and the angle at the Earth’s centre.',
  },
  {
    name: 'short-skew',
    subject: 'skew',
    formula: 'atan(0 - sin(dlon) / tan(lat))',
    told: 'Skew is the arctangent of sin(longitude difference) over tan(latitude).',
  },
  {
    name: 'sphere-declination',
    subject: 'polar-declination',
    formula: 'atan(6378 * sin(lat) / (42164 - 6378 * cos(lat)))',
    told: 'Declination offset of a polar mount on a round Earth.',
  },
  {
    name: 'seventy-wavelengths',
    subject: 'beamwidth',
    formula: '21 / (f * d)',
    told: 'Beamwidth is 21 over frequency in GHz and diameter in metres.',
  },
  {
    name: 'gain-by-size',
    subject: 'antenna-gain',
    formula: '18.5 + 20 * log(f * d)',
    told: 'Gain is 18.5 dB and 20 log of frequency in GHz times diameter in metres.',
  },
  {
    name: 'twelve-times-square',
    subject: 'pointing-loss',
    formula: '12 * (off * f * d / 21)^2',
    told: 'Pointing loss is twelve times the square of error over beamwidth.',
  },
  {
    name: 'surface-by-square',
    subject: 'surface-loss',
    formula: '0.0076 * (eps * f)^2',
    told: 'Surface loss is 0.0076 times the square of millimetres times GHz.',
  },
  {
    name: 'ninety-two-and-a-half',
    subject: 'free-space-loss',
    formula: '92.5 + 20 * log(f * r)',
    told: 'Free-space loss is 92.5 dB and 20 log of GHz times kilometres.',
  },
  {
    name: 'seventy-kelvin-a-decibel',
    subject: 'noise-temperature',
    formula: '70 * nf',
    told: 'Each dB of noise figure is 70 K.',
  },
  {
    name: 'refraction-by-cotangent',
    subject: 'apparent-elevation-gain',
    formula: '0.018 / tan(el)',
    told: 'Refraction is 0.018 degree times the cotangent of the elevation.',
  },
];
