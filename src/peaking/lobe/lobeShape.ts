/** The main lobe of a reflector beyond the half-power points: the next orders after the parabola. */

import { apertureField } from '../../antenna/internal.js';
import { dbToRatio } from '../../numeric/decibel.js';
import { bracketedRoot } from '../../numeric/root.js';

/** A lobe's shape as the fit takes it. */
export interface LobeShape {
  /** Square of the half-power beamwidth over the distance of the first null; 0 for a parabola in dB. */
  readonly nullRatio: number;
  /** Coefficient of the squared offset besides the null, in dB. */
  readonly bend: number;
  /** Standard deviation of that ratio: blockage, struts and a taper not known. */
  readonly nullRatioDoubt: number;
  /** Standard deviation in dB of the lopsidedness one beamwidth off the peak: uneven surface, a feed off its place. */
  readonly lopsidedDb: number;
}

/** A parabola in dB, 12 (offset / beamwidth)^2, as in the arithmetic by hand. */
export const PARABOLA: LobeShape = {
  nullRatio: 0,
  bend: 12,
  nullRatioDoubt: 0,
  lopsidedDb: 0,
};

/** Half-power beamwidths off the peak to which the shape is used; the level there is some 15 dB down. */
export const SHAPE_REACH = 1;

const PER_NEPER = 20 / Math.LN10;
const HALF_DB = 10 * Math.log10(2);

/** Null ratio for an unknown taper: rims 6 to 15 dB down, with and without a feed in front, lie within 0.04 of it; out of focus it falls to 0.45. */
const ORDINARY_RATIO = 0.67;
const UNKNOWN_TAPER_DOUBT = 0.1;
const STATED_TAPER_DOUBT = 0.08;
/** A wavefront with a coma of a twentieth of the wavelength is lopsided by 5 dB one beamwidth off, by 0.3 dB at half of it. */
const LOPSIDED_DB = 4;

/**
 * Shape for an edge taper in dB, or for an unknown one.
 *
 * One zero of the field stands for all: the level at nine tenths of the beamwidth fixes where it lies.
 */
export function reflectorShape(edgeTaperDb?: number): LobeShape {
  if (edgeTaperDb === undefined) return shapeOf(ORDINARY_RATIO, UNKNOWN_TAPER_DOUBT);
  const edge = Math.sqrt(dbToRatio(-edgeTaperDb));
  const levelDb = (u: number) => PER_NEPER * Math.log(Math.abs(apertureField(edge, 1, u)));
  const half = bracketedRoot((u) => levelDb(u) + HALF_DB, { from: 0.1, to: 3 }) ?? 1.8;
  const wanted = levelDb(1.8 * half);
  const nullRatio =
    bracketedRoot((ratio) => shapeLevelDb(0.9, ratio) - wanted, { from: 0, to: 0.9 }) ??
    ORDINARY_RATIO;
  return shapeOf(nullRatio, STATED_TAPER_DOUBT);
}

function shapeOf(nullRatio: number, nullRatioDoubt: number): LobeShape {
  return { nullRatio, bend: bendBesides(nullRatio), nullRatioDoubt, lopsidedDb: LOPSIDED_DB };
}

/** Coefficient of the squared offset besides the null, so that half a beamwidth off is half power. */
function bendBesides(nullRatio: number): number {
  return nullRatio === 0 ? 12 : 4 * (HALF_DB + PER_NEPER * Math.log(1 - nullRatio / 4));
}

/** Level in dB at an offset in beamwidths; beyond the reach it goes on straight. */
export function shapeLevelDb(
  offset: number,
  nullRatio: number,
  bend = bendBesides(nullRatio),
): number {
  const size = Math.abs(offset);
  if (nullRatio === 0) return -bend * size * size;
  if (size <= SHAPE_REACH)
    return PER_NEPER * Math.log(1 - nullRatio * size * size) - bend * size * size;
  return (
    PER_NEPER * Math.log(1 - nullRatio * SHAPE_REACH ** 2) -
    bend * SHAPE_REACH ** 2 +
    (size - SHAPE_REACH) * shapeSlope(SHAPE_REACH, nullRatio, bend)
  );
}

/** Slope in dB per beamwidth at an offset. */
export function shapeSlope(
  offset: number,
  nullRatio: number,
  bend = bendBesides(nullRatio),
): number {
  const at = nullRatio === 0 ? offset : Math.max(-SHAPE_REACH, Math.min(SHAPE_REACH, offset));
  return (-2 * PER_NEPER * nullRatio * at) / (1 - nullRatio * at * at) - 2 * bend * at;
}

/** Change of the level in dB for a change of the null ratio. */
export function shapeByNull(offset: number, nullRatio: number): number {
  const at = Math.min(SHAPE_REACH, Math.abs(offset));
  const square = at * at;
  return PER_NEPER * (square / (1 - nullRatio / 4) - square / (1 - nullRatio * square));
}

/**
 * How a lobe that is lopsided by 1 dB one beamwidth off the peak grows so: its two nulls stand at unlike distances. The next
 * order of ln(1 - ratio x^2) for a ratio that changes in proportion to the offset.
 */
export function shapeLopsided(offset: number, nullRatio: number): number {
  const at = Math.max(-SHAPE_REACH, Math.min(SHAPE_REACH, offset));
  return ((1 - nullRatio) * at * at * at) / (1 - nullRatio * at * at);
}

/** Its slope per beamwidth. */
export function shapeLopsidedSlope(offset: number, nullRatio: number): number {
  const square = offset * offset;
  if (square > SHAPE_REACH ** 2) return 0;
  return ((1 - nullRatio) * square * (3 - nullRatio * square)) / (1 - nullRatio * square) ** 2;
}
