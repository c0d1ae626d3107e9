/** Schema of a transmitted carrier. */

import * as v from 'valibot';
import { listOf, nameOf, numberFrom, words } from './fields.js';
import { polarization } from './sharedFields.js';

/** A carrier that the terminal sends. */
export const transmitSchema = v.strictObject({
  name: nameOf('Name of the transmitted carrier, its own within the slot'),
  slot: nameOf('Name of the slot'),
  frequencyGHz: numberFrom(1, 60, 'Frequency in GHz'),
  polarization,
  saturatedPowerW: numberFrom(0.001, 2000, 'Power of the amplifier (BUC) at saturation in watts'),
  outputBackOffDb: v.exactOptional(
    numberFrom(0, 30, 'How far the carrier stays below saturation in dB, by default 0'),
  ),
  feedLossDb: v.exactOptional(
    numberFrom(0, 10, 'Loss between amplifier and antenna in dB, by default 0'),
  ),
  symbolRateMBd: v.exactOptional(
    numberFrom(0.001, 500, 'Symbol rate in megabaud; without it no density is computed'),
  ),
  minimumEirpDbw: v.exactOptional(
    numberFrom(-20, 100, 'EIRP that the network asks for in dBW; not judged by default'),
  ),
  maximumEirpDbw: v.exactOptional(
    numberFrom(-20, 100, 'EIRP that the network allows in dBW; not judged by default'),
  ),
  minimumBackOffDb: v.exactOptional(
    numberFrom(
      0,
      30,
      'Least output back-off that keeps the carrier clean in dB; not judged by default',
    ),
  ),
  offAxisMask: v.exactOptional(
    listOf(
      v.strictObject({
        offAxisDeg: numberFrom(0.5, 180, 'Angle off the axis in degrees, rising along the list'),
        maximumDensityDbwPer40KHz: numberFrom(
          -80,
          80,
          'Highest EIRP density there in dBW in 40 kHz',
        ),
      }),
      [1, 60],
      'Off-axis mask of the network or the licence; not judged by default.',
    ),
  ),
  exposureGroup: v.exactOptional(
    words('For whom the distance in front of the reflector is computed, by default public', {
      public: 'anyone',
      occupational: 'trained people who know of it',
    }),
  ),
  upconverterLocalOscillatorGHz: v.exactOptional(
    numberFrom(
      0.5,
      60,
      'Local oscillator of the BUC in GHz; none by default; accepted, not yet computed',
    ),
  ),
  linearDriveLevelDbm: v.exactOptional(
    numberFrom(
      -80,
      20,
      'Drive level at the BUC in dBm; none by default; accepted, not yet computed',
    ),
  ),
});
