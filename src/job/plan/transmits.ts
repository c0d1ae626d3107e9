/** Section of the plan: what a two-way terminal sends, to its satellite, beside it, and to whoever stands in front. */

import { antennaGain, patternGain, safeDistance } from '../../antenna/index.js';
import { within } from '../../errors.js';
import { stationEirp } from '../../link/index.js';
import { ratioToDb } from '../../numeric/decibel.js';
import type { JobFile } from '../file/jobFile.js';
import type { Ledger } from './ledger.js';
import type { MountPlan } from './mounts.js';

/** A transmitted carrier. */
export interface TransmitPlan {
  readonly slot: string;
  readonly carrier: string;
  readonly frequencyGHz: number;
  /** Power at the antenna's flange in watts. */
  readonly powerW: number;
  /** Back-off from saturation in dB. */
  readonly outputBackOffDb: number;
  readonly antennaGainDbi: number;
  readonly eirpDbw: number;
  /** EIRP density on the axis in dBW in 40 kHz; `null` without a symbol rate. */
  readonly densityDbwPer40KHz: number | null;
  /** Off-axis density against the mask, where it is tightest; `null` without a mask, a symbol rate, or a pattern for the size. */
  readonly mask: {
    readonly offAxisDeg: number;
    readonly densityDbwPer40KHz: number;
    readonly maximumDbwPer40KHz: number;
    /** Mask less density in dB; negative where it is exceeded. */
    readonly headroomDb: number;
    /** Pattern used for the reflector. */
    readonly pattern: string;
  } | null;
  /** Distance on the axis within which the limit of exposure is exceeded in metres; 0 where it is not in the beam. */
  readonly keepOutM: number;
  /** For whom. */
  readonly exposureGroup: 'public' | 'occupational';
  /** Limit of the power density in W/m2. */
  readonly exposureLimitWPerM2: number;
}

/** Bandwidth of the density in megahertz. */
const DENSITY_MHZ = 0.04;

/** Every transmitted carrier whose mount has a reflector. */
export function transmitPlans(
  job: JobFile,
  mounts: readonly MountPlan[],
  notes: Ledger,
): readonly TransmitPlan[] {
  return (job.transmit ?? []).flatMap((sent, index): TransmitPlan[] => {
    const path = `transmit[${index}]`;
    const at = { slot: sent.slot, carrier: sent.name };
    const mountIndex = job.mounts.findIndex(({ slots }) => slots.includes(sent.slot));
    const reflector = mounts[mountIndex]?.reflector;
    if (!reflector) {
      notes.miss('transmit', `mounts[${mountIndex}].reflector.diameterM`, at);
      return [];
    }
    const { diameterM, efficiencyRatio, surfaceErrorMm } = reflector;
    const { frequencyGHz } = sent;
    return [
      within(path, () => {
        const outputBackOffDb = notes.number(
          sent.outputBackOffDb,
          `${path}.outputBackOffDb`,
          0,
          'dB',
        );
        const feedLossDb = notes.number(sent.feedLossDb, `${path}.feedLossDb`, 0, 'dB');
        const exposureGroup = notes.word(sent.exposureGroup, `${path}.exposureGroup`, 'public');
        const antennaGainDbi = antennaGain({
          diameterM,
          frequencyGHz,
          efficiencyRatio,
          surfaceErrorMm,
        }).gainDbi;
        const { eirpDbw } = stationEirp({
          saturatedPowerW: sent.saturatedPowerW,
          outputBackOffDb,
          feedLossDb,
          antennaGainDbi,
        });
        const powerDbw = eirpDbw - antennaGainDbi;
        const powerW = 10 ** (powerDbw / 10);
        const densityDbw =
          sent.symbolRateMBd === undefined
            ? null
            : powerDbw - Math.max(0, ratioToDb(sent.symbolRateMBd / DENSITY_MHZ));
        if (densityDbw === null) notes.miss('transmit', `${path}.symbolRateMBd`, at);
        if (!sent.offAxisMask) notes.miss('transmit', `${path}.offAxisMask`, at);
        const safe = safeDistance(
          { diameterM, frequencyGHz, powerW, antennaGainDbi: Math.max(-10, antennaGainDbi) },
          { standard: 'ICNIRP 2020 local', group: exposureGroup },
        );
        return {
          ...at,
          frequencyGHz,
          powerW,
          outputBackOffDb,
          antennaGainDbi,
          eirpDbw,
          densityDbwPer40KHz: densityDbw === null ? null : densityDbw + antennaGainDbi,
          mask:
            densityDbw === null || !sent.offAxisMask
              ? null
              : tightest(sent.offAxisMask, densityDbw, { diameterM, frequencyGHz }),
          keepOutM: safe.kind === 'distance' ? safe.distanceM : 0,
          exposureGroup,
          exposureLimitWPerM2: safe.limit.powerDensityWPerM2,
        };
      }),
    ];
  });
}

/** Where the density comes nearest to the mask, the reflector's pattern being that of S.580-6. */
function tightest(
  mask: NonNullable<NonNullable<JobFile['transmit']>[number]['offAxisMask']>,
  densityDbw: number,
  size: { readonly diameterM: number; readonly frequencyGHz: number },
): TransmitPlan['mask'] {
  let worst: TransmitPlan['mask'] = null;
  const wavelengths = (size.diameterM * size.frequencyGHz) / 0.299792458;
  if (wavelengths < 10) return null;
  for (const { offAxisDeg, maximumDensityDbwPer40KHz } of mask) {
    const gain = patternGain({ kind: 'S.580-6', ...size }, offAxisDeg);
    if (gain.kind !== 'gain') continue;
    const here = densityDbw + gain.gainDbi;
    const headroomDb = maximumDensityDbwPer40KHz - here;
    if (worst === null || headroomDb < worst.headroomDb)
      worst = {
        offAxisDeg,
        densityDbwPer40KHz: here,
        maximumDbwPer40KHz: maximumDensityDbwPer40KHz,
        headroomDb,
        pattern: gain.edition,
      };
  }
  return worst;
}
