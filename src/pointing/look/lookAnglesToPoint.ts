/** Look angles to a satellite that is not on the nominal orbit. */

import type { EcefKm } from '../../earth/ecef.js';
import { ecefToEnu } from '../../earth/localFrame.js';
import type { Station } from '../../earth/station.js';
import { DomainError } from '../../errors.js';
import { direction, type LookAngles } from './lookAngles.js';
import { OVERHEAD_RATIO } from './overhead.js';

/**
 * Look angles from a station to any point in the Earth-fixed frame, without refraction.
 *
 * @param station  Where the antenna stands.
 * @param ecef  The satellite's Earth-fixed position in kilometres.
 * @throws {@link DomainError} naming the bad field; `inconsistent` for a point less than a metre away.
 *
 * Source: IOGP Guidance Note 7-2, topocentric conversion (EPSG method 9836).
 * Accuracy: 1e-10 degree for a satellite.
 * @example
 * ```ts
 * import { lookAnglesToPoint } from 'slantpath/pointing';
 * const station = { latitudeDeg: 0, longitudeDeg: 0, heightM: 0 };
 * const look = lookAnglesToPoint(station, { xKm: 42164.169, yKm: 0, zKm: 73.6 });
 * look.kind === 'visible' && look.elevationDeg.toFixed(3); // => '89.882'
 * ```
 */
export function lookAnglesToPoint(station: Station, ecef: EcefKm): LookAngles {
  const { eastKm, northKm, upKm } = ecefToEnu(station, ecef);
  const { horizontalKm, azimuthDeg, elevationDeg, slantRangeKm } = direction(eastKm, northKm, upKm);
  if (!(slantRangeKm >= 0.001 && slantRangeKm < 1e9))
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'ecef',
      received: ecef,
      allowed: 'at least a metre and at most 1e9 km from the station',
      slip: 'is it in kilometres?',
    });
  if (upKm > 0 && horizontalKm < OVERHEAD_RATIO * upKm)
    return { kind: 'overhead', elevationDeg, slantRangeKm };
  return { kind: upKm > 0 ? 'visible' : 'below-horizon', azimuthDeg, elevationDeg, slantRangeKm };
}
