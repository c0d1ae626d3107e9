/** Gain of an antenna off its axis, by a reference pattern, a formula or a measured table. */

import { SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import { inRange, oneOf } from '../../errors.js';
import { known } from '../../keys.js';
import { checkedDiameterM, checkedFrequencyGHz } from '../guards.js';
import { crossPolarBo1213, shapeBo1213 } from './bo1213.js';
import { shapeGaussian, shapeIlluminated } from './formulas.js';
import type { Segment, Shape } from './patternShape.js';
import { shapeTable } from './patternTable.js';
import type {
  AntennaPattern,
  Bo1213Pattern,
  PatternGain,
  PatternSegment,
  Sized,
} from './patternTypes.js';
import { ANTENNA_PATTERN_KEYS, BO1213_PATTERN_KEYS } from './patternTypes.js';
import { shapeAppendix7, shapeAppendix8, shapeAppendix30 } from './radioRegulations.js';
import { shapeS465 } from './s465.js';
import { shapeS580 } from './s580.js';
import { shapeS1428 } from './s1428.js';

const KINDS = [
  'S.465-6',
  'S.580-6',
  'S.1428-1',
  'BO.1213-1',
  'RR-AP7',
  'RR-AP8',
  'RR-AP30',
  'gaussian',
  'illuminated',
  'table',
] as const;

/** Diameter over wavelength, at least 10, and the fields behind it. */
function size(pattern: Sized): { readonly x: number; readonly frequencyGHz: number } {
  const frequencyGHz = checkedFrequencyGHz(pattern.frequencyGHz);
  const wavelengthM = SPEED_OF_LIGHT_M_PER_S / (frequencyGHz * 1e9);
  const diameterM = checkedDiameterM(pattern.diameterM);
  inRange(
    'diameterM',
    diameterM,
    10 * wavelengthM,
    100,
    'a reference pattern needs a reflector of at least 10 wavelengths',
  );
  return { x: diameterM / wavelengthM, frequencyGHz };
}

/** The stretches of a pattern with its input checked. */
export function shapeOf(pattern: AntennaPattern): Shape {
  const input = known('pattern', pattern, ANTENNA_PATTERN_KEYS);
  oneOf('pattern.kind', input.kind, KINDS);
  switch (input.kind) {
    case 'S.465-6':
      return shapeS465(size(input));
    case 'S.580-6':
      return shapeS580(size(input));
    case 'S.1428-1':
      return shapeS1428(size(input));
    case 'RR-AP8':
      return shapeAppendix8(size(input));
    case 'RR-AP7':
      return shapeAppendix7(size(input), input.peakGainDbi);
    case 'RR-AP30':
      return shapeAppendix30(size(input), input.peakGainDbi);
    case 'BO.1213-1':
      return shapeBo1213(size(input), input.peakGainDbi);
    case 'gaussian':
      return shapeGaussian(input);
    case 'illuminated':
      return shapeIlluminated(size(input).x, input);
    case 'table':
      return shapeTable(input);
  }
}

/** The stretch that holds an angle, if the pattern says something there. */
function segmentAt(shape: Shape, offAxisDeg: number): Segment | undefined {
  if (offAxisDeg > shape.endDeg) return undefined;
  let found: Segment | undefined;
  for (const segment of shape.segments) {
    const { fromDeg, opensAfter } = segment;
    if (opensAfter === true ? offAxisDeg > fromDeg : offAxisDeg >= fromDeg) found = segment;
  }
  return found;
}

/**
 * Gain of an antenna towards an angle off its axis.
 *
 * At a breakpoint the outer stretch counts ("a <= phi < b"), but for S.580-6 at 20 degrees.
 *
 * @param offAxisDeg  Angle on the sky between axis and direction in degrees, either sign, within 180.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: ITU-R S.465-6, S.580-6, S.1428-1, BO.1213-1; Radio Regulations, Appendices 7 (Annex 3), 8 and 30; the
 * formulas of `illuminatedAperture`. The stated range of S.1428-1, 10.7 to 30 GHz, is from memory. Envelopes of the side lobes: a real antenna has nulls and lobes below them.
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { patternGain } from 'slantpath/antenna';
 * const gain = patternGain({ kind: 'S.1428-1', diameterM: 0.6, frequencyGHz: 11 }, 10);
 * gain.kind === 'gain' && gain.gainDbi; // => 4
 * ```
 */
export function patternGain(pattern: AntennaPattern, offAxisDeg: number): PatternGain {
  const shape = shapeOf(pattern);
  const angleDeg = Math.abs(inRange('offAxisDeg', offAxisDeg, -180, 180));
  const segment = segmentAt(shape, angleDeg);
  const { edition, outsideStatedRange } = shape;
  if (segment === undefined)
    return {
      kind: 'not-specified',
      specifiedFromDeg: shape.segments[0]?.fromDeg ?? 0,
      specifiedToDeg: shape.endDeg,
      edition,
      outsideStatedRange,
    };
  return {
    kind: 'gain',
    gainDbi: segment.gainDbi(angleDeg) + 0,
    region: segment.region,
    edition,
    outsideStatedRange,
  };
}

/**
 * Gain in dBi of a BO.1213-1 antenna to the other polarization, towards an angle off its axis.
 *
 * @param offAxisDeg  Angle on the sky between axis and direction in degrees, either sign, within 180.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: ITU-R BO.1213-1, cross-polar part; the form of Radio Regulations Appendix 30, Regions 1 and 3.
 * Accuracy: rounding only; an envelope.
 * @example
 * ```ts
 * import { crossPolarGain } from 'slantpath/antenna';
 * crossPolarGain(
 *   { kind: 'BO.1213-1', diameterM: 0.6, frequencyGHz: 12.1, peakGainDbi: 35.5 },
 *   0,
 * ); // => 10.5
 * ```
 */
export function crossPolarGain(pattern: Bo1213Pattern, offAxisDeg: number): number {
  const input = known('pattern', pattern, BO1213_PATTERN_KEYS);
  oneOf('pattern.kind', input.kind, ['BO.1213-1']);
  const shape = crossPolarBo1213(size(input), input.peakGainDbi);
  const angleDeg = Math.abs(inRange('offAxisDeg', offAxisDeg, -180, 180));
  return segmentAt(shape, angleDeg)?.gainDbi(angleDeg) ?? 0;
}

/**
 * The stretches of a pattern with the gain at their ends: breakpoints for a drawing, or a check by hand.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: as {@link patternGain}.
 * @example
 * ```ts
 * import { patternSegments } from 'slantpath/antenna';
 * const [first] = patternSegments({ kind: 'S.465-6', diameterM: 2, frequencyGHz: 12 });
 * first?.fromDeg.toFixed(3); // => '1.249'
 * ```
 */
export function patternSegments(pattern: AntennaPattern): readonly PatternSegment[] {
  const shape = shapeOf(pattern);
  return shape.segments.map(({ fromDeg, region, gainDbi }, index) => {
    const toDeg = shape.segments[index + 1]?.fromDeg ?? shape.endDeg;
    return { fromDeg, toDeg, region, fromDbi: gainDbi(fromDeg) + 0, toDbi: gainDbi(toDeg) + 0 };
  });
}
