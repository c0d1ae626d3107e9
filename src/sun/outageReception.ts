/** The receiving side of a sun outage. */

import { halfPowerBeamwidth } from '../antenna/beamwidth.js';
import { GEOSTATIONARY_RADIUS_KM } from '../constants.js';
import { checkedStation } from '../earth/internal.js';
import type { Station } from '../earth/station.js';
import { finite, inRange, positive } from '../errors.js';
import { cosDeg, sinDeg } from '../numeric/angle.js';
import { solarBrightness } from './brightness.js';
import { type SunNoise, sunNoise } from './discNoise.js';
import { type FixedDirection, fixedDirection } from './outageGeometry.js';
import type { SunOutageInput } from './outageInput.js';

/** What an outage depends on besides the Sun's path. */
export interface OutageReception {
  readonly station: Station;
  readonly direction: FixedDirection;
  readonly beamwidthDeg: number;
  readonly brightnessTemperatureK: number;
  /** Noise of the Sun at a separation from the beam's axis. */
  readonly noise: (separationDeg: number, angularRadiusDeg: number) => SunNoise;
}

/** The checked receiving side: direction of the slot, beam, brightness, and the noise of the Sun at a separation. */
export function outageReception(given: Omit<SunOutageInput, 'from' | 'to'>): OutageReception {
  const station = checkedStation(given.station);
  const { frequencyGHz, diameterM } = given;
  const orbitalLongitudeDeg = finite('orbitalLongitudeDeg', given.orbitalLongitudeDeg);
  const { brightnessTemperatureK } = solarBrightness({
    frequencyGHz,
    activity: given.activity ?? 'quiet',
  });
  const beamwidthDeg = inRange(
    'beamwidthDeg',
    given.beamwidthDeg ?? halfPowerBeamwidth({ diameterM, frequencyGHz }),
    0.03,
    90,
  );
  const systemNoiseK = positive('systemNoiseK', given.systemNoiseK);
  const attenuationDb = inRange('attenuationDb', given.attenuationDb ?? 0, 0, 300);
  const noise = (separationDeg: number, angularRadiusDeg: number) =>
    sunNoise({
      separationDeg,
      beamwidthDeg,
      brightnessTemperatureK,
      systemNoiseK,
      angularRadiusDeg,
      attenuationDb,
    });
  const direction = fixedDirection(station, {
    x: GEOSTATIONARY_RADIUS_KM * cosDeg(orbitalLongitudeDeg),
    y: GEOSTATIONARY_RADIUS_KM * sinDeg(orbitalLongitudeDeg),
    z: 0,
  });
  return { station, direction, beamwidthDeg, brightnessTemperatureK, noise };
}
