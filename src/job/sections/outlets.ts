/** Section of the plan: levels at every outlet, carrier by carrier. */

import { outletLevels } from '../../distribution/index.js';
import { within } from '../../errors.js';
import type { JobFile } from '../jobFile.js';
import { carrierOf } from './peaking.js';
import type { SignalPlan } from './signals.js';

/** What to expect of one carrier at one outlet. */
export interface OutletPlan {
  /** Name of the outlet. */
  readonly outlet: string;
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** Frequency on the cable in MHz. */
  readonly intermediateFrequencyMHz: number;
  /** Loss from the outdoor unit to the outlet in dB; negative where amplifiers win. */
  readonly lossDb: number;
  /** Level in dBuV at 75 ohm. */
  readonly levelDbuv: number;
  /** Carrier-to-noise ratio in dB. */
  readonly carrierToNoiseDb: number;
}

/** Expectations at every outlet. */
export function outletPlans(job: JobFile, signals: readonly SignalPlan[]): readonly OutletPlan[] {
  return signals.flatMap((signal) => {
    const carrier = carrierOf(job, signal);
    if (!carrier) return [];
    const levels = within(
      'distribution',
      () =>
        outletLevels(
          {
            source: {
              levelDbuv: signal.levelDbuv,
              carrierToNoiseDb: signal.carrierToNoiseDb,
              bandwidthMHz: carrier.symbolRateMBd,
            },
            tree: job.distribution,
          },
          [carrier.intermediateFrequencyMHz],
        ),
      { tree: '' },
    );
    return levels
      .filter(({ kind }) => kind === 'outlet')
      .flatMap(({ name, points }) =>
        points.map((point) => ({
          outlet: name,
          slot: signal.slot,
          carrier: signal.carrier,
          intermediateFrequencyMHz: carrier.intermediateFrequencyMHz,
          lossDb: signal.levelDbuv - point.levelDbuv,
          levelDbuv: point.levelDbuv,
          carrierToNoiseDb: point.carrierToNoiseDb,
        })),
      );
  });
}
