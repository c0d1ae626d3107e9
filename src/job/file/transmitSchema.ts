/** Schema of a transmitted carrier. */

import * as v from 'valibot';
import { offAxisMasks } from '../../transmit/index.js';
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
      'Local oscillator of the BUC in GHz; without it no frequency on the transmit cable is computed',
    ),
  ),
  upconverterGainDb: v.exactOptional(
    numberFrom(
      0,
      100,
      'Gain of the BUC in dB, far from saturation; without it the drive is not judged',
    ),
  ),
  linearDriveLevelDbm: v.exactOptional(
    numberFrom(-80, 20, 'Drive level at the BUC in dBm; without it the drive is not judged'),
  ),
  measuredPairs: v.exactOptional(
    listOf(
      v.strictObject({
        inputDbm: numberFrom(
          -100,
          60,
          'Level at the input of the BUC in dBm, rising along the list',
        ),
        outputDbm: numberFrom(-100, 80, 'Level at its output in dBm'),
      }),
      [2, 200],
      'Steps of the line-up as measured, the first at least 10 dB below saturation; none by default.',
    ),
  ),
  offAxisMaskNames: v.exactOptional(
    listOf(
      v.pipe(
        v.picklist(offAxisMasks.map(({ name }) => name)),
        v.description('Name of a published mask, as in `offAxisMasks` of `slantpath/transmit`.'),
      ),
      [1, 16],
      'Published masks of off-axis density that are to be kept; none by default.',
    ),
  ),
  mispointingDeg: v.exactOptional(
    numberFrom(
      0,
      10,
      'How far the beam may point past its satellite in degrees, by default what the pointing loss of the target allows',
    ),
  ),
  allowedRiseDb: v.exactOptional(
    numberFrom(
      0,
      40,
      'How far the network lets the EIRP rise in a fade in dB; without it power control is not computed',
    ),
  ),
  controlErrorDb: v.exactOptional(
    numberFrom(0, 10, 'Error of the power control in dB, by default 1'),
  ),
  crossPolarTest: v.exactOptional(
    v.pipe(
      v.strictObject({
        coPolarDbm: numberFrom(
          -200,
          60,
          'The carrier in its own polarization as the control centre reads it, noise included, in dBm',
        ),
        crossPolarDbm: numberFrom(
          -200,
          60,
          'The same carrier in the other polarization, noise included, in dBm',
        ),
        noiseDbm: numberFrom(
          -200,
          60,
          'Noise in the other polarization with the carrier off in dBm',
        ),
        standardUncertaintyDb: v.exactOptional(
          numberFrom(
            0,
            10,
            'Standard uncertainty of the difference of two levels in dB, by default 0.2',
          ),
        ),
      }),
      v.description('Levels of the cross-polar test; none by default.'),
    ),
  ),
  askBefore: v.exactOptional(
    v.pipe(
      v.strictObject({
        controlCentre: v.exactOptional(
          nameOf('Who gives leave to transmit, with number or channel; not said by default'),
        ),
        siteOwner: v.exactOptional(
          nameOf('Who gives leave to work at the site; not said by default'),
        ),
      }),
      v.description('Who must be asked; nobody is named by default.'),
    ),
  ),
});
