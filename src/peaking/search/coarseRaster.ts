/** Coarse search: places or sweeps that cannot miss the lobe, and how long they take at worst. */

import { inRange, positive } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { cosDeg } from '../../numeric/angle.js';

/** What is searched, and how fast. */
export interface CoarseRasterInput {
  /** Half-power beamwidth in degrees. */
  readonly beamwidthDeg: number;
  /** The satellite is within this many degrees of the preset azimuth, either way; 0 to 180. */
  readonly azimuthWithinDeg: number;
  /** The satellite is within this many degrees of the preset elevation, either way; 0 to 90. */
  readonly elevationWithinDeg: number;
  /** Preset elevation in degrees, 0 to 89: azimuth moves the beam less the higher it is. */
  readonly elevationDeg: number;
  /** Loss in dB off the peak at which the signal still shows: its margin over the least that is recognised. */
  readonly visibleDropDb: number;
  /** Speed of sweeping in azimuth, in degrees on the sky per second; above 0. */
  readonly sweepDegPerS: number;
  /** Time in seconds for which the signal must be in the beam to be recognised; default 0. */
  readonly dwellS?: number;
  /** Time in seconds to set the elevation for the next sweep; default 10. */
  readonly resetS?: number;
}

const COARSE_RASTER_INPUT_KEYS = {
  beamwidthDeg: true,
  azimuthWithinDeg: true,
  elevationWithinDeg: true,
  elevationDeg: true,
  visibleDropDb: true,
  sweepDegPerS: true,
  dwellS: true,
  resetS: true,
} satisfies Keys<CoarseRasterInput>;

/** One sweep. */
export interface RasterSweep {
  /** Elevation of the sweep in degrees. */
  readonly elevationDeg: number;
  /** Azimuth at its beginning and end, relative to the preset, in degrees. */
  readonly fromAzimuthDeg: number;
  readonly toAzimuthDeg: number;
}

/** The raster, or why there is none. */
export type CoarseRaster =
  | {
      readonly kind: 'raster';
      /** Sweeps in the order of the search: the preset elevation first, then outwards by turns. */
      readonly sweeps: readonly RasterSweep[];
      /** Distance of the sweeps in degrees. */
      readonly spacingDeg: number;
      /** Greatest loss in dB at the nearest sweep. */
      readonly worstDropDb: number;
      /** Longest time in seconds until the signal has been seen. */
      readonly worstDurationS: number;
    }
  | {
      /** The sweep passes the beam faster than the dwell asks for. */
      readonly kind: 'too-fast';
      /** Greatest speed in degrees on the sky per second that allows a raster. */
      readonly sweepAtMostDegPerS: number;
    };

/** Share of the visible half width that a dwell may take along the sweep. */
const DWELL_SHARE = 0.9;

/**
 * Sweeps in azimuth at stepped elevations, so close that the satellite passes within the visible part
 * of the lobe, for long enough, wherever it is.
 *
 * The signal shows within r = beamwidth sqrt(drop / 12) of the peak. A sweep at a distance d crosses it along
 * 2 sqrt(r^2 - d^2), which must last the dwell; so d = sqrt(r^2 - (speed dwell / 2)^2) and the sweeps are 2 d apart.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: own derivation on a flat patch of sky; azimuth is stretched by the cosine of the elevation farthest up.
 * @example
 * ```ts
 * import { coarseRaster } from 'slantpath/peaking';
 * const raster = coarseRaster({
 *   beamwidthDeg: 2,
 *   azimuthWithinDeg: 10,
 *   elevationWithinDeg: 2,
 *   elevationDeg: 36,
 *   visibleDropDb: 6,
 *   sweepDegPerS: 1,
 * });
 * raster.kind === 'raster' && raster.sweeps.map((sweep) => sweep.elevationDeg.toFixed(1)); // => ['36.0', '37.3', '34.7']
 * ```
 */
export function coarseRaster(input: CoarseRasterInput): CoarseRaster {
  knownOnly('input', input, COARSE_RASTER_INPUT_KEYS);
  const width = inRange('beamwidthDeg', positive('beamwidthDeg', input.beamwidthDeg), 0.01, 60);
  const azimuth = inRange('azimuthWithinDeg', input.azimuthWithinDeg, 0, 180);
  const within = inRange('elevationWithinDeg', input.elevationWithinDeg, 0, 90);
  const middle = inRange('elevationDeg', input.elevationDeg, 0, 89);
  const dropDb = inRange('visibleDropDb', positive('visibleDropDb', input.visibleDropDb), 0.01, 20);
  const speed = inRange('sweepDegPerS', positive('sweepDegPerS', input.sweepDegPerS), 1e-4, 1e3);
  const dwellS = inRange('dwellS', input.dwellS ?? 0, 0, 1e4);
  const resetS = inRange('resetS', input.resetS ?? 10, 0, 1e5);
  const radius = width * Math.sqrt(dropDb / 12);
  const along = (speed * dwellS) / 2;
  if (along > DWELL_SHARE * radius)
    return { kind: 'too-fast', sweepAtMostDegPerS: (2 * DWELL_SHARE * radius) / dwellS };
  const across = Math.sqrt(radius * radius - along * along);
  // As few sweeps as cover the interval, then spread evenly.
  const least = Math.max(0, Math.ceil((within - across) / (2 * across) - 1e-9));
  const spacingDeg = least === 0 ? 2 * across : (2 * within) / (2 * least + 1);
  const order = [0];
  for (let k = 1; k <= least; k++) order.push(k, -k);
  const sweeps: RasterSweep[] = [];
  let worstDurationS = 0;
  for (const [index, k] of order.entries()) {
    const elevationDeg = Math.min(90, Math.max(-10, middle + k * spacingDeg));
    const sense = index % 2 === 0 ? 1 : -1;
    sweeps.push({
      elevationDeg,
      fromAzimuthDeg: -sense * azimuth + 0,
      toAzimuthDeg: sense * azimuth + 0,
    });
    worstDurationS +=
      (2 * azimuth * Math.abs(cosDeg(Math.max(0, elevationDeg - across)))) / speed +
      (index === 0 ? 0 : resetS);
  }
  const farthest = least === 0 ? within : spacingDeg / 2;
  return {
    kind: 'raster',
    sweeps,
    spacingDeg,
    worstDropDb: 12 * (farthest / width) ** 2,
    worstDurationS: worstDurationS + dwellS,
  };
}
