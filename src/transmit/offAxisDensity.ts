/** What a station sends past its satellite, held against a mask over the angles that matter. */

import { type AntennaPattern, patternGain } from '../antenna/index.js';
import { inRange, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { ratioToDb } from '../numeric/decibel.js';
import { type OffAxisMask, type OffAxisMaskName, offAxisMask } from './offAxisMask.js';

/** A carrier at the flange of the antenna. */
export interface CarrierAtFlange {
  /** Power of the carrier at the flange in watts, above 0 to 1e6: after back-off and feed loss. */
  readonly powerW: number;
  /** Symbol rate in millions of symbols a second: its power is spread evenly over that bandwidth. */
  readonly symbolRateMBd: number;
}

const FLANGE_DENSITY_CARRIER_KEYS = {
  powerW: true,
  symbolRateMBd: true,
  referenceBandwidthMHz: true,
} satisfies Keys<Parameters<typeof flangeDensity>[0]>;

/**
 * Power density of a carrier in dBW in a reference bandwidth: power - 10 log10(symbol rate / reference bandwidth).
 *
 * A carrier narrower than the reference bandwidth puts all its power into it.
 *
 * @param carrier  Carrier at the flange; reference bandwidth in MHz, above 0.
 * @throws {@link DomainError} naming the field.
 * Source: flat top of a root-raised-cosine carrier. Accuracy: rounding only.
 * @example
 * ```ts
 * import { flangeDensity } from 'slantpath/transmit';
 * flangeDensity({ powerW: 4, symbolRateMBd: 2, referenceBandwidthMHz: 0.04 }).toFixed(2); // => '-10.97'
 * ```
 */
export function flangeDensity(
  carrier: CarrierAtFlange & { readonly referenceBandwidthMHz: number },
): number {
  const given = known('carrier', carrier, FLANGE_DENSITY_CARRIER_KEYS);
  const powerW = inRange('powerW', positive('powerW', given.powerW), 0, 1e6, 'is it in watts?');
  const rate = positive('symbolRateMBd', given.symbolRateMBd);
  const reference = positive('referenceBandwidthMHz', given.referenceBandwidthMHz);
  return ratioToDb(powerW) - ratioToDb(Math.max(1, rate / reference));
}

/** Where a station comes nearest to its mask; read `kind` first. */
export type OffAxisMargin =
  | {
      readonly kind: 'margin';
      /** Least margin over all angles of the mask in dB; below 0 the mask is broken. */
      readonly marginDb: number;
      /** Angle off the axis at which it is least, in degrees. */
      readonly offAxisDeg: number;
      /** EIRP density there in dBW in the reference bandwidth. */
      readonly densityDbw: number;
      /** Limit there. */
      readonly limitDbw: number;
      /** Reference bandwidth in MHz. */
      readonly referenceBandwidthMHz: number;
      /** How sure the mask itself is. */
      readonly status: OffAxisMask['status'];
    }
  /** The pattern says nothing at any angle of the mask. */
  | { readonly kind: 'no-answer' };

/** A station with its carrier, its pattern and how badly it may be pointed. */
export interface OffAxisStation extends CarrierAtFlange {
  /** Pattern of the antenna. */
  readonly pattern: AntennaPattern;
  /** How far the beam may point past the wanted satellite towards the other one, in degrees, 0 to 10; default 0. */
  readonly mispointingDeg?: number;
  /** Mask. */
  readonly mask: OffAxisMaskName;
  /** Stations that transmit at once on the same frequency, 1 to 1000; default 1. */
  readonly simultaneousStations?: number;
}

const OFF_AXIS_STATION_KEYS = {
  pattern: true,
  mispointingDeg: true,
  mask: true,
  simultaneousStations: true,
  powerW: true,
  symbolRateMBd: true,
} satisfies Keys<OffAxisStation>;

/** Angles to look at: each corner of the mask from both sides, and twenty steps between. */
function angles(mask: OffAxisMask): number[] {
  return mask.segments.flatMap(({ fromDeg, toDeg }) =>
    Array.from({ length: 21 }, (_, step) => fromDeg * (toDeg / fromDeg) ** (step / 20)),
  );
}

/**
 * Least margin of a station's off-axis EIRP density to a mask, over all angles of the mask.
 *
 * Density at an angle = density at the flange + gain of the pattern at the angle less the mispointing.
 *
 * @throws {@link DomainError} naming the field.
 * Source: definition of off-axis EIRP density; masks as in `offAxisMasks`. Accuracy: the pattern is an envelope or a model; a
 * mask from memory says so in `status`.
 * @example
 * ```ts
 * import { offAxisMargin } from 'slantpath/transmit';
 * const least = offAxisMargin({
 *   powerW: 3.565,
 *   symbolRateMBd: 2,
 *   pattern: { kind: 'S.580-6', diameterM: 1.2, frequencyGHz: 14.25 },
 *   mask: '47-CFR-25.218(c)(1)',
 * });
 * least.kind; // => 'margin'
 * ```
 */
export function offAxisMargin(station: OffAxisStation): OffAxisMargin {
  const given = known('station', station, OFF_AXIS_STATION_KEYS);
  const mask = offAxisMask('mask', given.mask);
  const mispointingDeg = inRange('mispointingDeg', given.mispointingDeg ?? 0, 0, 10);
  const stations = inRange('simultaneousStations', given.simultaneousStations ?? 1, 1, 1000);
  const { referenceBandwidthMHz, status } = mask;
  const flangeDbw = flangeDensity({
    powerW: given.powerW,
    symbolRateMBd: given.symbolRateMBd,
    referenceBandwidthMHz,
  });
  let worst: OffAxisMargin = { kind: 'no-answer' };
  for (const segment of mask.segments)
    for (const offAxisDeg of angles({ ...mask, segments: [segment] })) {
      const gain = patternGain(given.pattern, Math.max(0, offAxisDeg - mispointingDeg));
      if (gain.kind !== 'gain') continue;
      const densityDbw = flangeDbw + gain.gainDbi;
      const limitDbw =
        segment.levelDbw - segment.slopeDb * Math.log10(offAxisDeg) - ratioToDb(stations);
      const marginDb = limitDbw - densityDbw;
      if (worst.kind === 'no-answer' || marginDb < worst.marginDb)
        worst = {
          kind: 'margin',
          marginDb,
          offAxisDeg,
          densityDbw,
          limitDbw,
          referenceBandwidthMHz,
          status,
        };
    }
  return worst;
}

const SIDE_LOBE_RISE_BEAM_KEYS = { offAxisDeg: true, mispointingDeg: true } satisfies Keys<
  Parameters<typeof sideLobeRise>[0]
>;

/**
 * How much a side-lobe line of 25 log10(angle) rises in dB towards the other satellite when the beam points past its own.
 *
 * @param beam  Angle between the two satellites and mispointing towards the other one in degrees; the mispointing is smaller.
 * @throws {@link DomainError} naming the field.
 * Source: 25 log10(angle / (angle - mispointing)). Accuracy: rounding only.
 * @example
 * ```ts
 * import { sideLobeRise } from 'slantpath/transmit';
 * sideLobeRise({ offAxisDeg: 3, mispointingDeg: 0.4 }).toFixed(2); // => '1.55'
 * ```
 */
export function sideLobeRise(beam: {
  readonly offAxisDeg: number;
  readonly mispointingDeg: number;
}): number {
  const given = knownOnly('beam', beam, SIDE_LOBE_RISE_BEAM_KEYS);
  const angle = inRange('offAxisDeg', positive('offAxisDeg', given.offAxisDeg), 0, 180);
  const off = inRange('mispointingDeg', given.mispointingDeg, 0, angle * 0.999);
  return 2.5 * ratioToDb(angle / (angle - off)) + 0;
}
