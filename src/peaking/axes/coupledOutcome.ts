/** Readings over two axes, and what they say about the peak. */

import { DomainError, finite, inRange, object, oneOf, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import type { IntervalCoverage } from '../fit/peakOutcome.js';

/** Readings of level over two axes. Both in degrees on the sky: multiply azimuth by the cosine of elevation. */
export interface CoupledSamples {
  /** Places on the first axis in degrees. */
  readonly firstDeg: ArrayLike<number>;
  /** Places on the second axis in degrees. */
  readonly secondDeg: ArrayLike<number>;
  /** Levels in dBm. */
  readonly levelDbm: ArrayLike<number>;
  /** Standard deviation of one reading in dB, if known; default found from the readings. */
  readonly standardDeviationDb?: number;
  /** Step of the displayed level in dB; default 0 (none). */
  readonly levelStepDb?: number;
  /** `reflector` (default): a real lobe. `parabola`: a second-order surface in dB, as in the arithmetic by hand. */
  readonly lobe?: 'reflector' | 'parabola';
  /** Where the antenna stands now: first and second axis; default the last reading. */
  readonly currentDeg?: readonly [number, number];
}

const COUPLED_SAMPLES_KEYS = {
  firstDeg: true,
  secondDeg: true,
  levelDbm: true,
  standardDeviationDb: true,
  levelStepDb: true,
  lobe: true,
  currentDeg: true,
} satisfies Keys<CoupledSamples>;

/** Outcome of a fit over two axes; read `kind` first. */
export type CoupledPeak =
  | {
      readonly kind: 'peak';
      /** Peak on the first and the second axis in degrees. */
      readonly positionDeg: readonly [number, number];
      /** Interval of each axis that holds the peak with 95 % confidence, in degrees. */
      readonly interval95Deg: readonly [readonly [number, number], readonly [number, number]];
      /** How far that 95 % can be relied on. */
      readonly coverage: Exclude<IntervalCoverage, 'nominal'>;
      /** Standard uncertainty of each axis in degrees. */
      readonly standardUncertaintyDeg: readonly [number, number];
      /** Correlation of the two errors, -1 to 1. */
      readonly correlationRatio: number;
      /** Half-power beamwidths along the lobe's own axes, smaller first, in degrees. */
      readonly beamwidthDeg: readonly [number, number];
      /** Direction of the narrow axis from the first axis towards the second, in degrees, (-90, 90]. */
      readonly narrowAxisDeg: number;
      /** Coupling of the axes, -1 to 1; 0 where turning one leaves the other's peak alone. */
      readonly couplingRatio: number;
      /** Level at the peak in dBm. */
      readonly peakLevelDbm: number;
      /** Standard deviation of one reading in dB. */
      readonly standardDeviationDb: number;
      /** Pointing loss where the antenna stands now, in dB. */
      readonly lossNowDb: number;
      /** Mean pointing loss in dB left by the uncertainty after a move to the peak. */
      readonly meanLossAtPeakDb: number;
    }
  | {
      /** `saddle`: it rises one way and falls the other. `flat`: no bend stands out. `outside`: the peak lies beyond the readings. */
      readonly kind: 'saddle' | 'flat' | 'outside';
      /** Likely place of the peak, or `null`. */
      readonly likelyDeg: readonly [number, number] | null;
    }
  | {
      readonly kind: 'too-few';
      /** Readings needed at least. */
      readonly readingsNeeded: number;
    };

/** Checks every field; throws at the first that is wrong. */
export function checkedCoupled(samples: CoupledSamples) {
  knownOnly('samples', samples, COUPLED_SAMPLES_KEYS);
  const { firstDeg, secondDeg, levelDbm } = samples;
  const length = object('levelDbm', levelDbm).length;
  const column = (parameter: string, values: ArrayLike<number>, limit: number) => {
    if (object(parameter, values).length !== length)
      throw new DomainError({
        code: 'length-mismatch',
        parameter,
        received: values,
        allowed: `of the same length as levelDbm (${length})`,
      });
    return Array.from(values, (value, i) =>
      inRange(parameter, finite(parameter, value, undefined, i), -limit, limit, undefined, i),
    );
  };
  if (length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'levelDbm',
      received: levelDbm,
      allowed: 'a list of at least one level',
    });
  const first = column('firstDeg', firstDeg, 720);
  const second = column('secondDeg', secondDeg, 720);
  const current = samples.currentDeg ?? [valueAt(first, length - 1), valueAt(second, length - 1)];
  object('currentDeg', current);
  return {
    first,
    second,
    levels: column('levelDbm', levelDbm, 300),
    now: [
      inRange('currentDeg', current[0], -720, 720, undefined, 0),
      inRange('currentDeg', current[1], -720, 720, undefined, 1),
    ] as const,
    parabola: oneOf('lobe', samples.lobe ?? 'reflector', ['reflector', 'parabola']) === 'parabola',
    stepDb: inRange('levelStepDb', samples.levelStepDb ?? 0, 0, 20),
    knownDb:
      samples.standardDeviationDb === undefined
        ? undefined
        : inRange(
            'standardDeviationDb',
            positive('standardDeviationDb', samples.standardDeviationDb),
            1e-6,
            50,
          ),
  };
}
