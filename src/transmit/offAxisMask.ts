/** Limits on what a transmitting antenna sends past the satellite it points at, as data and as a function of the angle. */

import { inRange, oneOf } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { ratioToDb } from '../numeric/decibel.js';

/** One stretch of a mask: level - slope x log10(angle in degrees). */
export interface MaskSegment {
  /** Begins at this angle off the axis in degrees. */
  readonly fromDeg: number;
  /** Ends at this angle in degrees. */
  readonly toDeg: number;
  /** Level at 1 degree in dBW in the reference bandwidth. */
  readonly levelDbw: number;
  /** Fall per tenfold angle in dB; 0 where the limit is level. */
  readonly slopeDb: number;
}

/** A mask of off-axis EIRP density. */
export interface OffAxisMask {
  /** Name: the document and the part of it. */
  readonly name: OffAxisMaskName;
  /** Reference bandwidth in MHz. */
  readonly referenceBandwidthMHz: number;
  /** Plane or polarization that it holds for. */
  readonly holdsFor: 'along-the-arc' | 'across-the-arc' | 'every-direction' | 'cross-polar';
  /** Stretches in rising angle. */
  readonly segments: readonly MaskSegment[];
  /** `read` in the document or a text that quotes it, or `from-memory`: read the document before you rely on it. */
  readonly status: 'read' | 'from-memory';
}

/** Names of the masks. */
export type OffAxisMaskName =
  | '47-CFR-25.218(c)(1)'
  | '47-CFR-25.218(c)(2)'
  | '47-CFR-25.218(f)(1)'
  | '47-CFR-25.218(f)(2)'
  | '47-CFR-25.218(f)(3)'
  | '47-CFR-25.138-2017-along'
  | '47-CFR-25.138-2017-across'
  | '47-CFR-25.138-2017-cross'
  | '47-CFR-25.138-2003'
  | 'S.524-9-6GHz'
  | 'S.524-9-14GHz'
  | 'S.524-9-30GHz'
  | 'RR-22.26'
  | 'RR-22.32'
  | 'S.728-1-co'
  | 'S.728-1-cross';

type Row = readonly [fromDeg: number, toDeg: number, levelDbw: number, slopeDb: number];

const mask = (
  name: OffAxisMaskName,
  referenceBandwidthMHz: number,
  holdsFor: OffAxisMask['holdsFor'],
  status: OffAxisMask['status'],
  rows: readonly Row[],
): OffAxisMask => ({
  name,
  referenceBandwidthMHz,
  holdsFor,
  status,
  segments: rows.map(([fromDeg, toDeg, levelDbw, slopeDb]) => ({
    fromDeg,
    toDeg,
    levelDbw,
    slopeDb,
  })),
});

/** The usual shape: 25 log to 7 degrees, level to 9.2, 25 log and 3 dB more to 48, level beyond. */
const usual = (fromDeg: number, levelDbw: number, plateauDbw: number, floorDbw: number): Row[] => [
  [fromDeg, 7, levelDbw, 25],
  [7, 9.2, plateauDbw, 0],
  [9.2, 48, levelDbw + 3, 25],
  [48, 180, floorDbw, 0],
];

/**
 * Masks of off-axis EIRP density.
 *
 * Source: 47 CFR 25.218(c) and 25.138 (2003, 2017) as read in their text; the others from memory (`status`), with 80 to 95 percent
 * confidence. What an operator or an administration asks of a station comes before any of them.
 */
export const offAxisMasks: readonly OffAxisMask[] = [
  mask('47-CFR-25.218(c)(1)', 0.004, 'along-the-arc', 'read', usual(1.5, 29.5, 8.5, -9.5)),
  mask('47-CFR-25.218(c)(2)', 0.004, 'across-the-arc', 'read', [
    [3, 48, 32.5, 25],
    [48, 180, -9.5, 0],
  ]),
  mask('47-CFR-25.218(f)(1)', 0.004, 'along-the-arc', 'from-memory', [
    [1.5, 7, 15, 25],
    [7, 9.2, -6, 0],
    [9.2, 19.1, 18, 25],
    [19.1, 180, -14, 0],
  ]),
  mask('47-CFR-25.218(f)(2)', 0.004, 'across-the-arc', 'from-memory', [
    [3, 19.1, 18, 25],
    [19.1, 180, -14, 0],
  ]),
  mask('47-CFR-25.218(f)(3)', 0.004, 'cross-polar', 'from-memory', [[1.5, 7, 5, 25]]),
  mask('47-CFR-25.138-2017-along', 1, 'along-the-arc', 'read', [
    [2, 7, 32.5, 25],
    [7, 9.2, 11.5, 0],
    [9.2, 19.1, 35.5, 25],
    [19.1, 180, 3.5, 0],
  ]),
  mask('47-CFR-25.138-2017-across', 1, 'across-the-arc', 'read', [
    [3.5, 7, 35.5, 25],
    [7, 9.2, 14.4, 0],
    [9.2, 19.1, 38.5, 25],
    [19.1, 180, 6.5, 0],
  ]),
  mask('47-CFR-25.138-2017-cross', 1, 'cross-polar', 'read', [[2, 7, 22.5, 25]]),
  mask('47-CFR-25.138-2003', 0.04, 'along-the-arc', 'read', [
    [2, 7, 18.5, 25],
    [7, 9.23, -2.63, 0],
    [9.23, 48, 21.5, 25],
    [48, 180, -10.5, 0],
  ]),
  mask('S.524-9-6GHz', 0.004, 'along-the-arc', 'from-memory', usual(2.5, 32, 11, -7)),
  mask('S.524-9-14GHz', 0.04, 'along-the-arc', 'from-memory', usual(2.5, 39, 18, 0)),
  mask('S.524-9-30GHz', 0.04, 'along-the-arc', 'from-memory', usual(2, 19, -2, -10)),
  mask('RR-22.26', 0.04, 'every-direction', 'from-memory', usual(3, 42, 21, 3)),
  mask('RR-22.32', 0.04, 'every-direction', 'from-memory', usual(3, 28, 7, -1)),
  mask('S.728-1-co', 0.04, 'along-the-arc', 'from-memory', usual(2, 33, 12, -6)),
  mask('S.728-1-cross', 0.04, 'cross-polar', 'from-memory', [
    [2, 7, 23, 25],
    [7, 9.2, 2, 0],
  ]),
];

/** The limit at an angle; read `kind` first. */
export type OffAxisLimit =
  | {
      readonly kind: 'limit';
      /** Largest EIRP in dBW in the reference bandwidth. */
      readonly limitDbw: number;
      /** Reference bandwidth in MHz. */
      readonly referenceBandwidthMHz: number;
      /** How sure the mask itself is. */
      readonly status: OffAxisMask['status'];
    }
  /** Nearer to the axis than the mask begins, or beyond where it ends. */
  | { readonly kind: 'no-limit'; readonly status: OffAxisMask['status'] };

/** A mask by its name. */
export function offAxisMask(parameter: string, name: OffAxisMaskName): OffAxisMask {
  const names = offAxisMasks.map((known) => known.name);
  return offAxisMasks[names.indexOf(oneOf(parameter, name, names))] as OffAxisMask;
}

const OFF_AXIS_LIMIT_AT_KEYS = {
  mask: true,
  offAxisDeg: true,
  simultaneousStations: true,
} satisfies Keys<Parameters<typeof offAxisLimit>[0]>;

/**
 * Limit of a mask at an angle off the axis.
 *
 * @param at  Name of the mask; angle off the axis in degrees, 0 to 180; for `47-CFR-25.138-2003` and other masks that several
 *   stations share, how many transmit at once on the same frequency, 1 to 1000 (10 log10 N is taken off), default 1.
 * @throws {@link DomainError} naming the field.
 * Source: see `offAxisMasks`. Accuracy: rounding; the mask is as sure as its `status` says.
 * @example
 * ```ts
 * import { offAxisLimit } from 'slantpath/transmit';
 * const limit = offAxisLimit({ mask: '47-CFR-25.218(c)(1)', offAxisDeg: 3 });
 * limit.kind === 'limit' ? limit.limitDbw.toFixed(2) : ''; // => '17.57'
 * ```
 */
export function offAxisLimit(at: {
  readonly mask: OffAxisMaskName;
  readonly offAxisDeg: number;
  readonly simultaneousStations?: number;
}): OffAxisLimit {
  const given = knownOnly('at', at, OFF_AXIS_LIMIT_AT_KEYS);
  const { segments, referenceBandwidthMHz, status } = offAxisMask('mask', given.mask);
  const angle = inRange('offAxisDeg', given.offAxisDeg, 0, 180);
  const stations = inRange('simultaneousStations', given.simultaneousStations ?? 1, 1, 1000);
  const segment = segments.find(({ fromDeg, toDeg }) => angle >= fromDeg && angle <= toDeg);
  if (segment === undefined) return { kind: 'no-limit', status };
  const limitDbw =
    segment.levelDbw - segment.slopeDb * Math.log10(Math.max(angle, 1e-9)) - ratioToDb(stations);
  return { kind: 'limit', limitDbw, referenceBandwidthMHz, status };
}
