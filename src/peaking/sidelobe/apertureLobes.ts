/** Main lobe and side lobes of a round aperture: where they stand, how high and how wide they are. */

import type { Illumination } from '../../antenna/illumination.js';
import { apertureField, checkedIllumination } from '../../antenna/internal.js';
import { SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import { inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { asinDeg, sinDeg } from '../../numeric/angle.js';
import { ratioToDb } from '../../numeric/decibel.js';
import { minimumBetween } from '../../numeric/minimum.js';
import { bracketedRoot } from '../../numeric/root.js';

/** A round aperture at a frequency. */
export interface ApertureInput {
  /** Diameter in metres across the axis that is turned, 0.05 to 100. */
  readonly diameterM: number;
  /** Frequency in GHz, 0.5 to 100; at least eight wavelengths must fit into the diameter. */
  readonly frequencyGHz: number;
  /** How the feed lights the aperture; default 10 dB down at the rim, exponent 1. */
  readonly illumination?: Illumination;
}

const APERTURE_INPUT_KEYS = {
  diameterM: true,
  frequencyGHz: true,
  illumination: true,
} satisfies Keys<ApertureInput>;

/** One lobe of a pattern, on one side of the axis. */
export interface ApertureLobe {
  /** 0 for the main lobe, 1 for the first side lobe, and so on. */
  readonly order: number;
  /** Angle of its peak off the axis in degrees, 0 or more. */
  readonly offsetDeg: number;
  /** Its peak below that of the main lobe in dB, 0 or more. */
  readonly belowMainDb: number;
  /** Width between the points half as strong as its own peak, in degrees. */
  readonly beamwidthDeg: number;
}

export const APERTURE_LOBE_KEYS = {
  order: true,
  offsetDeg: true,
  belowMainDb: true,
  beamwidthDeg: true,
} satisfies Keys<ApertureLobe>;

/** Least diameter in wavelengths at which scalar aperture theory is used. */
const LEAST_WAVELENGTHS = 8;

/** Checked aperture: field by u, and u by angle. */
function checkedAperture(input: ApertureInput) {
  const { diameterM, frequencyGHz, illumination } = known('aperture', input, APERTURE_INPUT_KEYS);
  const millimetres = 'is the diameter in metres?';
  const diameter = inRange('diameterM', diameterM, 0.05, 100, millimetres);
  const frequency = inRange('frequencyGHz', frequencyGHz, 0.5, 100, 'is the frequency in GHz?');
  const wavelengths = (diameter * frequency * 1e9) / SPEED_OF_LIGHT_M_PER_S;
  inRange(
    'diameterM',
    diameter,
    (LEAST_WAVELENGTHS * diameter) / wavelengths,
    100,
    'is it at least eight wavelengths?',
  );
  const { edge, exponent } = checkedIllumination(illumination ?? { edgeTaperDb: 10 });
  return {
    field: (u: number) => apertureField(edge, exponent, u),
    uOf: (offsetDeg: number) => Math.PI * wavelengths * sinDeg(offsetDeg),
    angleOf: (u: number) => asinDeg(u / (Math.PI * wavelengths)),
  };
}

/**
 * Level at an angle off the axis, in dB relative to the main lobe's peak: 0 or below; nulls are held at -100.
 *
 * @param offsetDeg  Angle in degrees, either sign, within 90.
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: scalar aperture theory, see {@link apertureLobes}.
 * @example
 * ```ts
 * import { apertureLevelDb } from 'slantpath/peaking';
 * const aperture = { diameterM: 0.9, frequencyGHz: 11.7, illumination: { edgeTaperDb: 0 } };
 * apertureLevelDb(aperture, 0.8393).toFixed(2); // => '-3.01'
 * ```
 */
export function apertureLevelDb(aperture: ApertureInput, offsetDeg: number): number {
  const { field, uOf } = checkedAperture(aperture);
  const power = field(uOf(inRange('offsetDeg', offsetDeg, -90, 90))) ** 2;
  return Math.min(0, Math.max(-100, ratioToDb(Math.max(power, 1e-12)))) + 0;
}

/**
 * The main lobe and the first side lobes of a round aperture.
 *
 * The pattern is C L1(u) + (1 - C) / (n + 1) L_(n+1)(u) over its value on the axis, with u = pi D sin(angle)
 * / wavelength, for a field C + (1 - C) (1 - rho^2)^n across the aperture. Feed struts, surface errors
 * and an offset feed raise and shift real side lobes; half a decibel of difference means nothing.
 *
 * @param lobes  Number of side lobes wanted, 1 to 5; default 2.
 * @returns The main lobe and the side lobes, from the axis outwards.
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: S. Silver, Microwave Antenna Theory and Design (1949), section 6.8; W. L. Stutzman and
 * G. A. Thiele, Antenna Theory and Design, table of tapered circular apertures.
 * Accuracy: 1e-6 degree and 1e-6 dB of the formula.
 * @example
 * ```ts
 * import { apertureLobes } from 'slantpath/peaking';
 * const [main, side] = apertureLobes({ diameterM: 0.9, frequencyGHz: 11.7 });
 * main?.beamwidthDeg.toFixed(2); // => '1.86'
 * side?.belowMainDb.toFixed(1); // => '22.3'
 * ```
 */
export function apertureLobes(aperture: ApertureInput, lobes = 2): readonly ApertureLobe[] {
  const { field, angleOf } = checkedAperture(aperture);
  const count = Math.round(inRange('lobes', lobes, 1, 5));
  const half = (from: number, to: number, top: number) =>
    bracketedRoot((u) => Math.abs(field(u)) - top * Math.SQRT1_2, { from, to }) ?? to;
  const mainHalf = half(0, nextNull(field, 0.5), 1);
  const found: ApertureLobe[] = [
    { order: 0, offsetDeg: 0, belowMainDb: 0, beamwidthDeg: 2 * angleOf(mainHalf) },
  ];
  let from = nextNull(field, 0.5);
  for (let order = 1; order <= count; order++) {
    const to = nextNull(field, from + 0.3);
    const top = minimumBetween((u) => -Math.abs(field(u)), { from, to });
    const height = -top.value;
    found.push({
      order,
      offsetDeg: angleOf(top.at),
      belowMainDb: -2 * ratioToDb(height),
      beamwidthDeg: angleOf(half(top.at, to, height)) - angleOf(half(from, top.at, height)),
    });
    from = to;
  }
  return found;
}

/** First zero of the field above `from`. */
function nextNull(field: (u: number) => number, from: number): number {
  let before = field(from);
  for (let u = from + 0.1; u < from + 12; u += 0.1) {
    const here = field(u);
    if (before * here <= 0) return bracketedRoot(field, { from: u - 0.1, to: u }) ?? u;
    before = here;
  }
  return from + 12;
}
