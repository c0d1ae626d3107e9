/** Runs of simulated samples for the figures of the peaking part: coverage, error against the bound, outcomes. */

import { randomStream } from '../../src/numeric/random.js';
import { fitPeak, type PeakFit, type PeakSamples, peakBound } from '../../src/peaking/index.js';
import { runs } from '../support/runs.js';

/** Runs of each setting that does not ask for others. */
export const SIMULATION_RUNS = runs(10_000, 300);

/** One setting; positions run evenly from -1 to 1 degree, the peak anywhere within 0.2 of the middle. */
export interface SimulationSetting {
  readonly readings: number;
  /** Level lost one degree off the peak, in dB. */
  readonly dropDb: number;
  readonly standardDeviationDb: number;
  readonly stepDb?: number;
  readonly width?: 'known' | 'unknown';
  /** Readings in each set that are lowered by 10 to 30 times the scatter. */
  readonly fades?: number;
  /** Noise floor below the peak in dB. */
  readonly floorBelowDb?: number;
  /** Drift in dB from the first reading to the last; times are given and readings taken in shuffled order. */
  readonly driftDb?: number;
  readonly more?: Partial<PeakSamples>;
  readonly runs?: number;
  readonly seed?: number;
}

/** Figures of a setting. */
export interface SimulationFigures {
  /** Percent of the runs that gave a peak. */
  readonly peakPercent: number;
  /** Percent of the intervals of those that hold the true peak. */
  readonly coveragePercent: number;
  /** The same where the result says `nominal`. */
  readonly nominalCoveragePercent: number;
  /** Percent of those in which the loss after the move keeps below its bound. */
  readonly lossBoundPercent: number;
  /** Root mean square error over the root mean Cramer-Rao bound of all readings. */
  readonly errorOverBound: number;
  /** Readings set aside in a run, on average. */
  readonly setAside: number;
  readonly kinds: Readonly<Record<string, number>>;
}

export function simulate(setting: SimulationSetting): SimulationFigures {
  const {
    readings: n,
    dropDb,
    standardDeviationDb,
    stepDb = 0,
    runs: count = SIMULATION_RUNS,
  } = setting;
  const random = randomStream(setting.seed ?? 20_260_101);
  const widthDeg = Math.sqrt(12 / dropDb);
  const known = setting.width === 'known';
  const positionDeg = Array.from({ length: n }, (_, i) => -1 + (2 * i) / (n - 1));
  const kinds: Record<string, number> = {};
  let peaks = 0;
  let covered = 0;
  let nominal = 0;
  let nominalCovered = 0;
  let bounded = 0;
  let square = 0;
  let bound = 0;
  let setAside = 0;
  for (let run = 0; run < count; run++) {
    const peak = 0.4 * (random.uniform() - 0.5);
    const top = -40 + random.uniform();
    const faded = new Set<number>();
    while (faded.size < (setting.fades ?? 0)) faded.add(random.integer(n));
    const timeS = positionDeg.map((_, i) => ((i * 7) % n) * 5);
    const levelDbm = positionDeg.map((x, i) => {
      let level = top - dropDb * (x - peak) ** 2;
      if (setting.driftDb !== undefined)
        level += (setting.driftDb * (timeS[i] as number)) / (5 * (n - 1));
      if (setting.floorBelowDb !== undefined)
        level = 10 * Math.log10(10 ** (level / 10) + 10 ** ((-40 - setting.floorBelowDb) / 10));
      level += standardDeviationDb * random.normal();
      if (faded.has(i)) level -= standardDeviationDb * (10 + 20 * random.uniform());
      return stepDb > 0 ? stepDb * Math.round(level / stepDb) : level;
    });
    const fit: PeakFit = fitPeak({
      lobe: 'parabola',
      positionDeg,
      levelDbm,
      levelStepDb: stepDb,
      ...(known ? { beamwidthDeg: widthDeg } : {}),
      ...(setting.floorBelowDb === undefined ? {} : { noiseFloorDbm: -40 - setting.floorBelowDb }),
      ...(setting.driftDb === undefined ? {} : { timeS }),
      ...setting.more,
    });
    kinds[fit.kind] = (kinds[fit.kind] ?? 0) + 1;
    if (fit.kind !== 'peak') continue;
    peaks++;
    const holds = fit.interval95Deg[0] <= peak && peak <= fit.interval95Deg[1];
    if (holds) covered++;
    if (fit.coverage === 'nominal') {
      nominal++;
      if (holds) nominalCovered++;
    }
    const error = fit.positionDeg - peak;
    if (dropDb * error * error <= fit.lossAtPeakUpper95Db) bounded++;
    square += error * error;
    setAside += fit.outliers.length;
    // The bound hardly moves with the peak, so it is taken from a sample of the runs.
    if (run % 20 === 0) {
      const limit = peakBound({
        positionDeg,
        peakDeg: peak,
        beamwidthDeg: widthDeg,
        standardDeviationDb,
        levelStepDb: stepDb,
        width: known ? 'known' : 'unknown',
        ...(setting.floorBelowDb === undefined
          ? {}
          : { peakAboveNoiseDb: setting.floorBelowDb + top + 40 }),
        ...(setting.driftDb === undefined ? {} : { timeS }),
      });
      if (limit.kind === 'bound') bound += 20 * limit.standardUncertaintyDeg ** 2;
    }
  }
  return {
    peakPercent: (100 * peaks) / count,
    coveragePercent: (100 * covered) / peaks,
    nominalCoveragePercent: (100 * nominalCovered) / nominal,
    lossBoundPercent: (100 * bounded) / peaks,
    errorOverBound: Math.sqrt(square / peaks / (bound / count)),
    setAside: setAside / peaks,
    kinds,
  };
}
