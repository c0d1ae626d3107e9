/** When a plumb line's shadow lies along the bearing of a slot. Never look at the Sun: watch the shadow. */

import { lookAngles } from 'slantpath/pointing';
import { shadowInstants } from 'slantpath/sun';

const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const look = lookAngles(station, 16.4);
if (look.kind === 'visible')
  for (const day of ['2026-03-20', '2026-06-21', '2026-12-21'])
    for (const at of shadowInstants({ station, azimuthDeg: look.azimuthDeg, day }))
      console.log(
        `${at.instantUtc.slice(0, 19)}Z  ${at.pointer} on ${look.azimuthDeg.toFixed(2)}, ` +
          `Sun ${at.sunElevationDeg.toFixed(1)} high, ${at.errorDegPerMin.toFixed(2)} degree per minute`,
      );
