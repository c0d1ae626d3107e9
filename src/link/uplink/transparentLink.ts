/** A link through a transparent satellite: up, through the transponder, down. */

import { inRange, object } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { ratioToDb } from '../../numeric/decibel.js';
import type { LinkBudget } from '../budget/budgetOf.js';
import { checkedRate } from '../budget/carrierRatios.js';
import type { Impairment } from '../budget/combine.js';
import { linkBudget } from '../budget/linkBudget.js';
import type { Downlink, LinkBudgetInput } from '../budget/linkBudgetInput.js';
import { CARRIER_KEYS } from '../budget/linkBudgetInput.js';
import { type Transponder, type TransponderState, transponderState } from './transponder.js';
import { type Uplink, type UplinkBudget, uplinkBudget } from './uplink.js';

/** Input of {@link transparentLink}. */
export interface TransparentLinkInput extends Omit<LinkBudgetInput, 'downlink'> {
  /** The way up. */
  readonly uplink: Uplink;
  /** The transponder. */
  readonly transponder: Transponder;
  /** The way down, without the EIRP, which follows. */
  readonly downlink: Omit<Downlink, 'eirpDbw'>;
}

const TRANSPARENT_LINK_INPUT_KEYS = {
  uplink: true,
  transponder: true,
  downlink: true,
  carrier: true,
  receiver: true,
  impairments: true,
} satisfies Keys<TransparentLinkInput>;

/** Outcome of {@link transparentLink}. */
export interface TransparentLink {
  /** The way up, line by line. */
  readonly uplink: UplinkBudget;
  /** Where the carrier stands in the transponder. */
  readonly transponder: TransponderState;
  /** The whole, line by line to the margin; uplink noise and intermodulation stand among its impairments. */
  readonly budget: LinkBudget;
}

/** The one-way link that a transparent link comes to. */
export function asOneWay(link: TransparentLinkInput): {
  readonly uplink: UplinkBudget;
  readonly transponder: TransponderState;
  readonly oneWay: LinkBudgetInput;
} {
  const input = known('link', link, TRANSPARENT_LINK_INPUT_KEYS);
  const uplink = uplinkBudget(input.uplink);
  const transponder = transponderState(input.transponder, uplink.fluxDensityDbwPerM2);
  const symbolRateMBd = checkedRate(
    'symbolRateMBd',
    known('carrier', input.carrier, CARRIER_KEYS).symbolRateMBd,
  );
  const { carrierToIntermodulationDb } = input.transponder;
  const impairments: Impairment[] = [
    {
      name: 'uplink-noise',
      carrierToImpairmentDb: uplink.carrierToNoiseDensityDbHz - ratioToDb(symbolRateMBd * 1e6),
    },
  ];
  if (carrierToIntermodulationDb !== undefined)
    impairments.push({
      name: 'intermodulation',
      carrierToImpairmentDb: inRange(
        'carrierToIntermodulationDb',
        carrierToIntermodulationDb,
        -50,
        100,
      ),
    });
  return {
    uplink,
    transponder,
    oneWay: {
      carrier: input.carrier,
      receiver: input.receiver,
      downlink: { ...object('downlink', input.downlink), eirpDbw: transponder.eirpDbw },
      impairments: [...impairments, ...(input.impairments ?? [])],
    },
  };
}

/**
 * Budget of a link through a transparent satellite.
 *
 * The uplink's flux density sets the transponder's back-off and so the power on the way down; the uplink's noise and the
 * intermodulation come down with the carrier. A fade on the way up thus counts twice.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: D. Roddy, Satellite Communications, 3rd ed., sections 12.7 to 12.10. Accuracy: rounding only.
 * @example
 * ```ts
 * import { dvbMode, transparentLink } from 'slantpath/link';
 * const { budget } = transparentLink({
 *   carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', '8PSK 3/4') },
 *   uplink: { eirpDbw: 76, frequencyGHz: 14.25, slantRangeKm: 38500, figureOfMeritDbPerK: 4 },
 *   transponder: {
 *     saturationFluxDensityDbwPerM2: -86,
 *     saturatedEirpDbw: 51,
 *     outputBackOff: { kind: 'linear', compressionDb: 2 },
 *   },
 *   downlink: { frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * });
 * budget.marginDb.toFixed(2); // => '10.44'
 * ```
 */
export function transparentLink(link: TransparentLinkInput): TransparentLink {
  const { uplink, transponder, oneWay } = asOneWay(link);
  return { uplink, transponder, budget: linkBudget(oneWay) };
}
