/** A fixed antenna and a satellite that moves: extremes, the best aim, the loss through the day, and when to peak. */

import { DomainError, finite, inRange, positive } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { DEGREES_PER_RADIAN, turnDeg, wrapAzimuthDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import { leastWorst } from '../../numeric/leastWorst.js';
import {
  azimuthOfDeg,
  dot,
  type EastNorthUp,
  elevationOfDeg,
  pictureAxes,
  separationDeg,
  skyVector,
  unit,
} from '../look/sightLine.js';
import { beside } from '../reflector/slotLosses.js';

/** What {@link fixedAntennaLoss} is asked. */
export interface FixedAntennaInput {
  /** Directions of the satellite, evenly spaced in time over the span that matters; 1 to 2000. */
  readonly track: readonly { readonly azimuthDeg: number; readonly elevationDeg: number }[];
  /** Half-power beamwidth in degrees, above 0 to 90. */
  readonly beamwidthDeg: number;
  /** Direction of the fixed beam; the best one when left out. */
  readonly aim?: { readonly azimuthDeg: number; readonly elevationDeg: number };
}

const FIXED_ANTENNA_INPUT_KEYS = {
  track: true,
  beamwidthDeg: true,
  aim: true,
} satisfies Keys<FixedAntennaInput>;

/** What a fixed antenna makes of a moving satellite. */
export interface FixedAntennaLoss {
  /** Smallest and largest elevation of the track in degrees. */
  readonly elevationDeg: { readonly lowest: number; readonly highest: number };
  /** Azimuths between which the track swings, clockwise from the first, in degrees, [0, 360). */
  readonly azimuthDeg: { readonly from: number; readonly to: number };
  /** Largest angle between any two directions of the track as seen from their best aim: its diameter in degrees. */
  readonly diameterDeg: number;
  /** The beam's direction: as given, or the one whose largest loss over the track is least. */
  readonly aim: { readonly azimuthDeg: number; readonly elevationDeg: number };
  /** Loss at each point of the track in dB, 0 or more. */
  readonly lossDb: readonly number[];
  /** Largest loss over the track in dB. */
  readonly worstLossDb: number;
  /** Mean of the loss in dB over the track. */
  readonly meanLossDb: number;
  /** Largest loss over the track, for each point, if the antenna were peaked on the satellite there, in dB. */
  readonly worstLossIfPeakedThereDb: readonly number[];
  /** Point of the track at which to peak: its largest loss is the least. */
  readonly bestIndex: number;
  /** Point of the track at which not to peak: its largest loss is the greatest. */
  readonly worstIndex: number;
}

/**
 * Loss of a fixed antenna through the track of a moving satellite, the direction that serves best, and when to peak.
 *
 * The best aim is the centre of the smallest circle round the track. An antenna peaked by its level points where the satellite
 * stands at that moment; the best moment is the one at which it passes nearest to that centre.
 *
 * @param input  `track` from `dailyFigure` or from orbital elements.
 * @throws {@link DomainError} naming the bad field, `track[3].elevationDeg` for instance.
 *
 * Source: Gaussian main lobe, loss = 12 (offset / half-power beamwidth)^2.
 * Accuracy: that of the lobe (0.1 dB up to 1 dB of loss); the aim itself 1e-4 of the track's diameter.
 * @example
 * ```ts
 * import { dailyFigure, fixedAntennaLoss } from 'slantpath/pointing';
 * const track = dailyFigure({
 *   station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
 *   orbitalLongitudeDeg: 16.4,
 *   inclinationDeg: 1,
 * });
 * const day = fixedAntennaLoss({ track, beamwidthDeg: 1.9 });
 * // Peaked at a turning point the loss half a day later is four times that of the best aim, in dB.
 * const ratio = (day.worstLossIfPeakedThereDb[day.worstIndex] ?? 0) / day.worstLossDb;
 * ratio.toFixed(1); // => '4.0'
 * ```
 */
export function fixedAntennaLoss(input: FixedAntennaInput): FixedAntennaLoss {
  const given = knownOnly('input', input, FIXED_ANTENNA_INPUT_KEYS);
  const widthDeg = inRange('beamwidthDeg', positive('beamwidthDeg', given.beamwidthDeg), 0, 90);
  const track = checkedTrack(given.track);
  const circle = smallestCircle(track);
  const aimed = given.aim === undefined ? circle.centre : checkedVector('aim', given.aim);
  const loss = (a: EastNorthUp, b: EastNorthUp): number =>
    gaussianLobeLossDb(separationDeg(a, b), widthDeg);
  const lossDb = track.map((point) => loss(point, aimed));
  const ifPeaked = track.map((there) =>
    track.reduce((most, point) => Math.max(most, separationDeg(point, there)), 0),
  );
  const worstLossIfPeakedThereDb = ifPeaked.map((offset) => gaussianLobeLossDb(offset, widthDeg));
  const elevations = track.map(elevationOfDeg);
  const middleDeg = azimuthOfDeg(circle.centre);
  const swings = track.map((point) => turnDeg(middleDeg, azimuthOfDeg(point)));
  return {
    elevationDeg: { lowest: Math.min(...elevations), highest: Math.max(...elevations) },
    azimuthDeg: {
      from: wrapAzimuthDeg(middleDeg + Math.min(...swings)),
      to: wrapAzimuthDeg(middleDeg + Math.max(...swings)),
    },
    diameterDeg: 2 * circle.radiusDeg,
    aim: { azimuthDeg: azimuthOfDeg(aimed), elevationDeg: elevationOfDeg(aimed) },
    lossDb,
    worstLossDb: Math.max(...lossDb),
    meanLossDb: lossDb.reduce((a, b) => a + b, 0) / lossDb.length,
    worstLossIfPeakedThereDb,
    bestIndex: ifPeaked.indexOf(Math.min(...ifPeaked)),
    worstIndex: ifPeaked.indexOf(Math.max(...ifPeaked)),
  };
}

const CHECKED_VECTOR_NAME_KEYS = { azimuthDeg: true, elevationDeg: true } satisfies Keys<
  Parameters<typeof checkedVector>[1]
>;

function checkedVector(
  name: string,
  at: { readonly azimuthDeg: number; readonly elevationDeg: number },
): EastNorthUp {
  const { azimuthDeg, elevationDeg } = known(name, at, CHECKED_VECTOR_NAME_KEYS);
  return skyVector(
    finite(`${name}.azimuthDeg`, azimuthDeg),
    inRange(`${name}.elevationDeg`, elevationDeg, -90, 90),
  );
}

function checkedTrack(track: FixedAntennaInput['track']): readonly EastNorthUp[] {
  if (!Array.isArray(track) || track.length === 0 || track.length > 2000)
    throw new DomainError({
      code:
        track === undefined || track === null
          ? 'missing'
          : !Array.isArray(track)
            ? 'malformed'
            : track.length === 0
              ? 'empty'
              : 'out-of-range',
      parameter: 'track',
      received: track,
      allowed: 'a list of 1 to 2000 directions',
    });
  return Array.from(track as FixedAntennaInput['track'], (at, index) =>
    checkedVector(`track[${index}]`, at),
  );
}

/** The smallest circle on the sky round directions: centre and radius. */
function smallestCircle(track: readonly EastNorthUp[]): {
  readonly centre: EastNorthUp;
  readonly radiusDeg: number;
} {
  const sum = track.reduce(
    (total, v): EastNorthUp => [total[0] + v[0], total[1] + v[1], total[2] + v[2]],
    [0, 0, 0],
  );
  const start = Math.hypot(...sum) > 1e-9 ? unit(sum) : (track[0] as EastNorthUp);
  const { right, up } = pictureAxes(start);
  const flat = track.map((v) => [dot(v, right), dot(v, up)] as const);
  const spread = flat.reduce((most, [x, y]) => Math.max(most, Math.hypot(x, y)), 1e-12);
  // In the plane across the start, in units of the spread, so that the search is the same for any figure.
  const { at } = leastWorst(
    ([x = 0, y = 0]) =>
      flat.map(([px, py]) => 10 * ((px / spread - x) ** 2 + (py / spread - y) ** 2)),
    [0, 0],
    0.01,
  );
  const scale = spread * DEGREES_PER_RADIAN;
  const centre = beside(start, valueAt(at, 0) * scale, valueAt(at, 1) * scale);
  return {
    centre,
    radiusDeg: track.reduce((most, v) => Math.max(most, separationDeg(v, centre)), 0),
  };
}
