/** Interference from a carrier in the next channel through the skirts of both filters. */

import { inRange } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { ratioToDb } from '../../numeric/decibel.js';
import { gaussLegendre } from '../../numeric/gaussLegendre.js';
import { checkedRate } from './carrierRatios.js';

/** A carrier as its spectrum shows it. */
export interface ChannelShape {
  /** Symbol rate in megabaud, 1e-6 to 1e4. */
  readonly symbolRateMBd: number;
  /** Roll-off, 0.01 to 1: 0.35 for DVB-S; 0.35, 0.25 or 0.2 for DVB-S2; also 0.15, 0.1 or 0.05 for DVB-S2X. */
  readonly rollOffRatio: number;
}

const CHANNEL_SHAPE_KEYS = { symbolRateMBd: true, rollOffRatio: true } satisfies Keys<ChannelShape>;

/** Outcome of {@link adjacentChannel}. */
export type AdjacentChannel =
  | {
      readonly kind: 'interference';
      /** Carrier over interference in dB in the symbol-rate bandwidth: an impairment of the budget. */
      readonly carrierToInterferenceDb: number;
    }
  | {
      /** The spectra do not overlap. */
      readonly kind: 'apart';
      /** Free space between them in MHz. */
      readonly gapMHz: number;
    };

function checkedShape(path: string, shape: ChannelShape): ChannelShape {
  const { symbolRateMBd, rollOffRatio } = known(path, shape, CHANNEL_SHAPE_KEYS);
  return {
    symbolRateMBd: checkedRate(`${path}.symbolRateMBd`, symbolRateMBd),
    rollOffRatio: inRange(
      `${path}.rollOffRatio`,
      rollOffRatio,
      0.01,
      1,
      'is the roll-off a ratio, not a percentage?',
    ),
  };
}

/**
 * Width of a carrier in MHz from end to end of its spectrum: symbol rate times one plus the roll-off.
 *
 * @throws {@link DomainError} naming `carrier.symbolRateMBd` or `carrier.rollOffRatio`.
 *
 * Source: ETSI EN 302 307-1, section 5.6 (root raised cosine). Accuracy: rounding only.
 * @example
 * ```ts
 * import { occupiedBandwidth } from 'slantpath/link';
 * occupiedBandwidth({ symbolRateMBd: 27.5, rollOffRatio: 0.2 }); // => 33
 * ```
 */
export function occupiedBandwidth(carrier: ChannelShape): number {
  const { symbolRateMBd, rollOffRatio } = checkedShape('carrier', carrier);
  return symbolRateMBd * (1 + rollOffRatio);
}

/** Power of a raised cosine at an offset from its centre, 1 in the flat part. */
function raisedCosine({ symbolRateMBd, rollOffRatio }: ChannelShape, offsetMHz: number): number {
  const x = (2 * Math.abs(offsetMHz)) / symbolRateMBd;
  if (x <= 1 - rollOffRatio) return 1;
  if (x >= 1 + rollOffRatio) return 0;
  return 0.5 * (1 + Math.cos((Math.PI * (x - (1 - rollOffRatio))) / (2 * rollOffRatio)));
}

const ADJACENT_CHANNEL_INPUT_KEYS = {
  wanted: true,
  other: true,
  spacingMHz: true,
  otherLessWantedDb: true,
} satisfies Keys<Parameters<typeof adjacentChannel>[0]>;

/**
 * Carrier over interference from one carrier beside the wanted one, both with root-raised-cosine filters.
 *
 * The part of the other carrier's power that passes the wanted receiver's filter; spectral regrowth in amplifiers
 * driven near saturation is not counted and can be more.
 *
 * @param input  `wanted` and `other` carriers; `spacingMHz` between their centres, either sign, within 1e5;
 *   `otherLessWantedDb` level of the other less that of the wanted carrier, within 100, default 0.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: own derivation from the filters of ETSI EN 302 307-1, section 5.6. Accuracy: 1e-6 dB.
 * @example
 * ```ts
 * import { adjacentChannel } from 'slantpath/link';
 * const shape = { symbolRateMBd: 30, rollOffRatio: 0.2 };
 * const result = adjacentChannel({ wanted: shape, other: shape, spacingMHz: 33 });
 * result.kind === 'interference' && result.carrierToInterferenceDb.toFixed(1); // => '29.5'
 * ```
 */
export function adjacentChannel(input: {
  readonly wanted: ChannelShape;
  readonly other: ChannelShape;
  readonly spacingMHz: number;
  readonly otherLessWantedDb?: number;
}): AdjacentChannel {
  const given = knownOnly('input', input, ADJACENT_CHANNEL_INPUT_KEYS);
  const wanted = checkedShape('wanted', given.wanted);
  const other = checkedShape('other', given.other);
  const spacing = Math.abs(inRange('spacingMHz', given.spacingMHz, -1e5, 1e5));
  const levelDb = inRange('otherLessWantedDb', given.otherLessWantedDb ?? 0, -100, 100);
  const edge = (shape: ChannelShape, sign: number): number =>
    0.5 * shape.symbolRateMBd * (1 + sign * shape.rollOffRatio);
  const gapMHz = spacing - edge(wanted, 1) - edge(other, 1);
  if (gapMHz >= 0) return { kind: 'apart', gapMHz };
  // Between these frequencies both spectra are smooth.
  const cuts = [-1, 1].flatMap((side) =>
    [-1, 1].flatMap((sign) => [side * edge(wanted, sign), spacing + side * edge(other, sign)]),
  );
  const low = Math.max(-edge(wanted, 1), spacing - edge(other, 1));
  const high = Math.min(edge(wanted, 1), spacing + edge(other, 1));
  const points = cuts.filter((f) => f >= low && f <= high).sort((a, b) => a - b);
  let passed = 0;
  for (let index = 1; index < points.length; index++)
    passed += gaussLegendre(
      (f) => raisedCosine(wanted, f) * raisedCosine(other, f - spacing),
      valueAt(points, index - 1),
      valueAt(points, index),
    );
  // Below -300 dB, where spectra just touch, the sum may vanish in rounding.
  const share = Math.max(passed / other.symbolRateMBd, 1e-30);
  return { kind: 'interference', carrierToInterferenceDb: -ratioToDb(share) - levelDb };
}
