/** Availability of a transparent link whose two ways fade, together or each by itself. */

import { oneOf } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { gaussLegendre } from '../../numeric/gaussLegendre.js';
import { bracketedRoot } from '../../numeric/root.js';
import { preparedLink, requiredDb, totalEsN0Db } from '../budget/preparedLink.js';
import { asOneWay, type TransparentLinkInput } from '../uplink/transparentLink.js';
import { type Availability, availabilityAt, percentOfMargin } from './availability.js';
import {
  checkedFade,
  checkedPercents,
  type FadeDistribution,
  fadeWeather,
  type PercentRange,
} from './fade.js';

/** Input of {@link combinedAvailability}. */
export interface CombinedFades extends PercentRange {
  /** The link in clear weather. */
  readonly link: TransparentLinkInput;
  /** Fade on the way up against percent of an average year. */
  readonly uplinkFade: FadeDistribution;
  /** Fade on the way down against percent of an average year. */
  readonly downlinkFade: FadeDistribution;
  /**
   * `independent`: stations far apart, each with its own weather. `together`: both ends under the same weather, so that the fades of
   * one percentage come at the same time.
   */
  readonly relation: 'independent' | 'together';
}

const COMBINED_FADES_KEYS = {
  link: true,
  uplinkFade: true,
  downlinkFade: true,
  relation: true,
  fromPercent: true,
  toPercent: true,
} satisfies Keys<CombinedFades>;

/**
 * Share of an average year for which a transparent link lasts, with fades on both ways.
 *
 * Independent: the time out is the integral, over the levels of the fade on the way up, of the time for which the fade on
 * the way down is then too much. Together: the percentage at which both fades at once use up the margin.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: own derivation. Accuracy: 1e-3 relative of the time out; that of the distributions.
 * @example
 * ```ts
 * import { combinedAvailability, dvbMode } from 'slantpath/link';
 * const result = combinedAvailability({
 *   link: {
 *     carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', '8PSK 3/4') },
 *     uplink: { eirpDbw: 76, frequencyGHz: 14.25, slantRangeKm: 38500, figureOfMeritDbPerK: 4 },
 *     transponder: {
 *       saturationFluxDensityDbwPerM2: -86,
 *       saturatedEirpDbw: 51,
 *       outputBackOff: { kind: 'linear', compressionDb: 2 },
 *     },
 *     downlink: { frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *     receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 *   },
 *   uplinkFade: (percent) => ({ attenuationDb: 7 * (0.01 / percent) ** 0.5 }),
 *   downlinkFade: (percent) => ({ attenuationDb: 5 * (0.01 / percent) ** 0.5 }),
 *   relation: 'independent',
 * });
 * result.availabilityPercent.toFixed(3); // => '99.989'
 * ```
 */
export function combinedAvailability(fades: CombinedFades): Availability {
  const input = knownOnly('fades', fades, COMBINED_FADES_KEYS);
  const range = checkedPercents(input);
  const uplinkFade = checkedFade(input.uplinkFade, 'uplinkFade');
  const downlinkFade = checkedFade(input.downlinkFade, 'downlinkFade');
  oneOf('relation', input.relation, ['independent', 'together']);
  const { downAt, required } = fadedLink(input.link, uplinkFade, downlinkFade);
  // Under one sky the fades of a percentage come together, so one search over the percentage suffices.
  if (input.relation === 'together')
    return percentOfMargin((percent) => required - downAt(percent)(percent), 0, range);

  /** Percent of time for which the way down is too much, given the state of the way up. */
  const outGiven = (uplinkPercent: number | undefined): number => {
    const esN0Db = downAt(uplinkPercent);
    // Out even in clear sky below: the search would find no percentage, and the share is the whole of the time.
    if (esN0Db(undefined) < required) return 100;
    const out = percentOfMargin((percent) => required - esN0Db(percent), 0, range);
    return out.kind === 'better-than' ? 0 : out.exceededPercent;
  };
  // Fades on the way up so deep that the link is out under any sky at the other end.
  const upAlone = (x: number): number =>
    downAt(Math.min(range.to, Math.max(range.from, Math.exp(x))))(undefined) - required;
  return independentAvailability(range, upAlone, outGiven);
}

type DownAt = (
  uplinkPercent: number | undefined,
) => (downlinkPercent: number | undefined) => number;

/** The one-way link with the way up faded, as Es/N0 against the percentage of the way down; no percentage: clear. */
function fadedLink(
  link: CombinedFades['link'],
  uplinkFade: CombinedFades['uplinkFade'],
  downlinkFade: CombinedFades['downlinkFade'],
): { readonly downAt: DownAt; readonly required: number } {
  const clear = preparedLink(asOneWay(link).oneWay);
  // The way up is prepared once for many states of the way down: the inner search asks dozens of times.
  const downAt: DownAt = (uplinkPercent) => {
    const own = link.uplink.rainDb ?? 0;
    const clearDb = link.uplink.clearAttenuationDb ?? 0;
    const up =
      uplinkPercent === undefined
        ? { clearDb, rainDb: own, scintillationDb: 0 }
        : fadeWeather(uplinkFade(uplinkPercent), clearDb);
    const { oneWay } = asOneWay({
      ...link,
      uplink: {
        ...link.uplink,
        clearAttenuationDb: up.clearDb,
        // Scintillation on the way up weakens the carrier as rain does; at the satellite neither warms the receiver.
        rainDb: up.rainDb + up.scintillationDb,
      },
    });
    const prepared = preparedLink(oneWay);
    return (downlinkPercent: number | undefined): number =>
      totalEsN0Db(
        prepared,
        downlinkPercent === undefined
          ? clear.weather
          : fadeWeather(downlinkFade(downlinkPercent), clear.weather.clearDb),
      );
  };
  return { downAt, required: requiredDb(clear) };
}

/** Time out where the fades of both ways are independent: the integral over the levels of the way up. */
function independentAvailability(
  range: { readonly from: number; readonly to: number },
  upAlone: (x: number) => number,
  outGiven: (uplinkPercent: number | undefined) => number,
): Availability {
  // Percentages span many decades; in their logarithm the outage is smooth, which the quadrature needs.
  const from = Math.log(range.from);
  const to = Math.log(range.to);
  if (upAlone(to) < 0) return availabilityAt('worse-than', range.to);
  // At the kink where the way up alone ends the link, the outage jumps to all of the time: integrate up to it, not across.
  const begin = upAlone(from) >= 0 ? from : (bracketedRoot(upAlone, { from, to }) ?? to);
  // Rarer fades than asked for are taken as deep as the rarest.
  let outPercent = upAlone(from) >= 0 ? (range.from * outGiven(range.from)) / 100 : Math.exp(begin);
  // Pieces keep the quadrature true where a distribution bends.
  const pieces = 8;
  const width = (to - begin) / pieces;
  for (let piece = 0; piece < pieces; piece++)
    outPercent += gaussLegendre(
      (x) => {
        const percent = Math.exp(x);
        // d(percent) = percent d(ln percent); each slice of levels is out for its own share.
        return (percent * outGiven(percent)) / 100;
      },
      begin + piece * width,
      begin + (piece + 1) * width,
    );
  // The rest of the year the way up is clear, but the way down may still fade.
  outPercent += ((100 - range.to) * outGiven(undefined)) / 100;
  if (outPercent < range.from) return availabilityAt('better-than', range.from);
  return outPercent > range.to
    ? availabilityAt('worse-than', range.to)
    : availabilityAt('available', outPercent);
}
