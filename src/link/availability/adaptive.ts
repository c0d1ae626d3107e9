/** Adaptive coding and modulation: which mode for how much of the year, and the mean throughput. */

import { checkedLossDb } from '../../antenna/internal.js';
import { DomainError, objects } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { preparedLink, totalEsN0Db } from '../budget/preparedLink.js';
import { checkedMode, type ModeThreshold } from '../modes/mode.js';
import { fadeLoss, percentOfMargin } from './availability.js';
import { checkedFade, checkedPercents, type FadingLink } from './fade.js';

/** A mode in use. */
export interface ModeShare<M extends ModeThreshold> {
  /** The mode. */
  readonly mode: M;
  /** Its useful bit rate in Mbit/s. */
  readonly bitRateMbps: number;
  /** Percent of an average year in which it or a faster one can be used. */
  readonly availablePercent: number;
  /** Percent of an average year in which it is the fastest that can be used. */
  readonly sharePercent: number;
}

/** Outcome of {@link adaptiveModes}. */
export interface AdaptiveModes<M extends ModeThreshold> {
  /** The modes worth having, slowest first: no other is both faster and less demanding. */
  readonly modes: readonly ModeShare<M>[];
  /** Percent of an average year in which not even the slowest can be used. */
  readonly outagePercent: number;
  /** Mean useful bit rate over the whole year, outages counted as nothing, in Mbit/s. */
  readonly meanBitRateMbps: number;
  /** Bit rate in clear weather in Mbit/s; 0 if none can be used. */
  readonly clearBitRateMbps: number;
}

/** Modes of which no other carries as much with a lower threshold, slowest first. */
function worthwhile<M extends ModeThreshold>(modes: readonly M[]): M[] {
  const sorted = [...modes].sort(
    (a, b) => a.bitsPerSymbol - b.bitsPerSymbol || b.esN0Db - a.esN0Db,
  );
  const kept: M[] = [];
  for (const mode of sorted) {
    while (kept.length > 0 && (kept[kept.length - 1] as M).esN0Db >= mode.esN0Db) kept.pop();
    kept.push(mode);
  }
  return kept;
}

const ADAPTIVE_MODES_ADAPTIVE_KEYS = {
  link: true,
  fade: true,
  fromPercent: true,
  toPercent: true,
  modes: true,
  switchingMarginDb: true,
} satisfies Keys<Parameters<typeof adaptiveModes>[0]>;

/**
 * Which mode can be used for how much of an average year, and the mean throughput, where the mode follows the weather.
 *
 * A mode can be used where Es/N0 in the fade reaches its threshold, the carrier's implementation loss and the switching
 * margin. At each moment the fastest such mode is used.
 *
 * @param adaptive  `link` (its carrier's mode is replaced by each of the list), `fade`, range of percentages; `modes` at least one;
 *   `switchingMarginDb` 0 or more, default 0.
 * @throws {@link DomainError} naming the field that is missing or outside its interval; `empty` for no mode.
 *
 * Source: definition. Accuracy: that of the distribution; the time that a real system takes to switch is not counted.
 * @example
 * ```ts
 * import { adaptiveModes, dvbMode, dvbModes } from 'slantpath/link';
 * const link = {
 *   carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', 'QPSK 1/2') },
 *   downlink: { eirpDbw: 52, frequencyGHz: 19.7, slantRangeKm: 38000, clearAttenuationDb: 0.6 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 1.2 },
 * };
 * const fade = (exceededPercent: number) => ({ attenuationDb: 12 * (0.01 / exceededPercent) ** 0.6 });
 * const year = adaptiveModes({ link, fade, modes: dvbModes('DVB-S2') });
 * year.meanBitRateMbps.toFixed(1); // => '133.4'
 * ```
 */
export function adaptiveModes<M extends ModeThreshold>(
  adaptive: FadingLink & { readonly modes: readonly M[]; readonly switchingMarginDb?: number },
): AdaptiveModes<M> {
  const input = knownOnly('adaptive', adaptive, ADAPTIVE_MODES_ADAPTIVE_KEYS);
  const given = objects<M>('modes', input.modes);
  if (given.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'modes',
      received: input.modes,
      allowed: 'at least one mode',
    });
  given.forEach((mode, index) => {
    checkedMode(mode, `modes[${index}]`);
  });
  const link = preparedLink(input.link);
  const fade = checkedFade(input.fade);
  const range = checkedPercents(input);
  const reserveDb =
    link.implementationDb + checkedLossDb('switchingMarginDb', input.switchingMarginDb ?? 0);
  const clearDb = totalEsN0Db(link, link.weather);
  const lossDb = fadeLoss(link, fade);
  const symbolRateMBd = input.link.carrier.symbolRateMBd;
  const modes = worthwhile(given);
  const outages = modes.map((mode) => {
    const marginDb = clearDb - mode.esN0Db - reserveDb;
    const out = percentOfMargin(lossDb, marginDb, range);
    // Rarer than asked counts as never; at the common end only a clear sky can help.
    if (out.kind === 'better-than') return 0;
    return out.kind === 'available' || marginDb >= 0 ? out.exceededPercent : 100;
  });
  const shares = modes.map((mode, index) => ({
    mode,
    bitRateMbps: symbolRateMBd * mode.bitsPerSymbol,
    availablePercent: 100 - valueAt(outages, index),
    sharePercent: (outages[index + 1] ?? 100) - valueAt(outages, index),
  }));
  const clear = [...shares].reverse().find(({ mode }) => clearDb >= mode.esN0Db + reserveDb);
  return {
    modes: shares,
    outagePercent: outages[0] ?? 100,
    meanBitRateMbps: shares.reduce(
      (sum, { bitRateMbps, sharePercent }) => sum + (bitRateMbps * sharePercent) / 100,
      0,
    ),
    clearBitRateMbps: clear?.bitRateMbps ?? 0,
  };
}
