/** Readings of level against position: their form and the checks at the edge. */

import { DomainError, finite, inRange, object, positive } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { type LobeShape, PARABOLA, reflectorShape } from '../lobe/lobeShape.js';

/** Another band whose pointing loss is wanted. */
export interface PeakBand {
  /** Name to find it by. */
  readonly name: string;
  /** Half-power beamwidth of the antenna in that band, in degrees. */
  readonly beamwidthDeg: number;
  /** Peak of that band less peak of the band read, in degrees (feeds that squint); default 0. */
  readonly squintDeg?: number;
}

const PEAK_BAND_KEYS = { name: true, beamwidthDeg: true, squintDeg: true } satisfies Keys<PeakBand>;

/** Readings of level against position on one axis. */
export interface PeakSamples {
  /** Positions in degrees on the sky along one axis, in any order, repeats allowed; -720 to 720. */
  readonly positionDeg: ArrayLike<number>;
  /** Level at each position in dBm (any level in dB serves, the differences count); -300 to 300. */
  readonly levelDbm: ArrayLike<number>;
  /** Time of each reading in seconds from any start; with it a steady drift is fitted too. Default none. */
  readonly timeS?: ArrayLike<number>;
  /** Where the antenna stands now, in degrees; default the last position. */
  readonly currentPositionDeg?: number;
  /** Half-power beamwidth in degrees, if it is known; default fitted. */
  readonly beamwidthDeg?: number;
  /** Standard uncertainty of that beamwidth over itself, 0 to 0.5; default 0.1, as a rule of thumb or a data sheet knows it. */
  readonly beamwidthStandardUncertaintyRatio?: number;
  /**
   * `reflector` (default): steeper than a parabola beyond the half-power points, perhaps a little lopsided, as real
   * lobes are. `parabola`: exactly 12 (offset / beamwidth)^2 dB, as in the arithmetic by hand; then the beamwidth
   * counts as exact by default.
   */
  readonly lobe?: 'reflector' | 'parabola';
  /** Power at the rim of the reflector below that at its centre in dB, 0 to 30, if known; default unknown. */
  readonly edgeTaperDb?: number;
  /** Level without any signal in dBm, if it is known; default none. A reading is signal plus noise power. */
  readonly noiseFloorDbm?: number;
  /** `fitted`: find the noise floor from the readings (some must be near it). Default `as-given`. */
  readonly noiseFloor?: 'as-given' | 'fitted';
  /** Step of the displayed level in dB; default 0 (none). */
  readonly levelStepDb?: number;
  /** Standard deviation of one reading in dB, without rounding, if it is known; default found from the readings. */
  readonly standardDeviationDb?: number;
  /** `set-aside`: look for outliers, given four readings to spare (default). `keep`: use every reading. */
  readonly outliers?: 'set-aside' | 'keep';
  /** Other bands whose loss is wanted; default none. */
  readonly bands?: readonly PeakBand[];
}

const PEAK_SAMPLES_KEYS = {
  positionDeg: true,
  levelDbm: true,
  timeS: true,
  currentPositionDeg: true,
  beamwidthDeg: true,
  beamwidthStandardUncertaintyRatio: true,
  lobe: true,
  edgeTaperDb: true,
  noiseFloorDbm: true,
  noiseFloor: true,
  levelStepDb: true,
  standardDeviationDb: true,
  outliers: true,
  bands: true,
} satisfies Keys<PeakSamples>;

/** Standard uncertainty of a beamwidth as people know it, over itself. */
const BEAMWIDTH_DOUBT = 0.1;

/** Samples after the checks. */
export interface CheckedSamples {
  readonly positionDeg: readonly number[];
  readonly levelDbm: readonly number[];
  readonly timeS: readonly number[] | undefined;
  readonly nowDeg: number;
  readonly widthDeg: number | undefined;
  readonly widthDoubtRatio: number;
  readonly shape: LobeShape;
  readonly floorDbm: number | undefined;
  readonly fitFloor: boolean;
  readonly stepDb: number;
  readonly standardDeviationDb: number | undefined;
  readonly keepAll: boolean;
  readonly bands: readonly Required<PeakBand>[];
}

/** Checks every field; throws at the first that is wrong. */
export function checkedSamples(samples: PeakSamples): CheckedSamples {
  knownOnly('samples', samples, PEAK_SAMPLES_KEYS);
  const positionDeg = column('positionDeg', samples.positionDeg, undefined, 720);
  const { length } = positionDeg;
  if (length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: 'positionDeg',
      received: samples.positionDeg,
      allowed: 'a list of at least one position',
    });
  const levelDbm = column('levelDbm', samples.levelDbm, length, 300);
  const nowDeg = inRange(
    'currentPositionDeg',
    samples.currentPositionDeg ?? valueAt(positionDeg, length - 1),
    -720,
    720,
  );
  const parabola = choice('lobe', samples.lobe, 'reflector', 'parabola') === 'parabola';
  const edgeTaperDb =
    samples.edgeTaperDb === undefined
      ? undefined
      : inRange('edgeTaperDb', samples.edgeTaperDb, 0, 30, 'a taper is positive');
  return {
    positionDeg,
    levelDbm,
    timeS: samples.timeS === undefined ? undefined : column('timeS', samples.timeS, length, 1e12),
    nowDeg,
    widthDeg:
      samples.beamwidthDeg === undefined
        ? undefined
        : beamwidth('beamwidthDeg', samples.beamwidthDeg),
    widthDoubtRatio: inRange(
      'beamwidthStandardUncertaintyRatio',
      samples.beamwidthStandardUncertaintyRatio ?? (parabola ? 0 : BEAMWIDTH_DOUBT),
      0,
      0.5,
      'is it a share of the beamwidth?',
    ),
    shape: parabola ? PARABOLA : reflectorShape(edgeTaperDb),
    floorDbm:
      samples.noiseFloorDbm === undefined
        ? undefined
        : inRange('noiseFloorDbm', samples.noiseFloorDbm, -400, 300),
    fitFloor: choice('noiseFloor', samples.noiseFloor, 'as-given', 'fitted') === 'fitted',
    stepDb: inRange('levelStepDb', samples.levelStepDb ?? 0, 0, 20),
    standardDeviationDb:
      samples.standardDeviationDb === undefined
        ? undefined
        : inRange(
            'standardDeviationDb',
            positive('standardDeviationDb', samples.standardDeviationDb),
            1e-6,
            50,
          ),
    keepAll: choice('outliers', samples.outliers, 'set-aside', 'keep') === 'keep',
    bands: Array.from(samples.bands ?? [], (band, i) => ({
      name: known(`bands[${i}]`, band, PEAK_BAND_KEYS).name,
      beamwidthDeg: beamwidth(`bands[${i}].beamwidthDeg`, band.beamwidthDeg),
      squintDeg: finite(`bands[${i}].squintDeg`, band.squintDeg ?? 0),
    })),
  };
}

function beamwidth(parameter: string, value: number): number {
  return inRange(parameter, value, 1e-4, 180);
}

function choice(
  parameter: string,
  value: string | undefined,
  standard: string,
  other: string,
): string {
  if (value === undefined || value === standard || value === other) return value ?? standard;
  throw new DomainError({
    code: 'not-an-option',
    parameter,
    received: value,
    allowed: `one of ${standard}, ${other}`,
  });
}

function column(
  parameter: string,
  values: ArrayLike<number>,
  length: number | undefined,
  limit: number,
): number[] {
  object(parameter, values);
  if (length !== undefined && values.length !== length)
    throw new DomainError({
      code: 'length-mismatch',
      parameter,
      received: values,
      allowed: `of the same length as positionDeg (${length})`,
    });
  return Array.from(values, (value, i) =>
    inRange(parameter, finite(parameter, value, undefined, i), -limit, limit, undefined, i),
  );
}
