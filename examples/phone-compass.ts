/**
 * From the compass of a phone to an azimuth from true north. A browser's `alpha` counts anticlockwise, so that the bearing of a
 * phone that lies flat is 360 less alpha (W3C Device Orientation). Some phones correct for the declination themselves: check
 * one bearing against a landmark before you add it again.
 */

import { instantToDecimalYear, magneticField, magneticToTrueBearing } from 'slantpath/magnetic';
import { lookAngles } from 'slantpath/pointing';

const station = { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 };
/** Five readings while the phone lies along the mount, away from iron. */
const alphaDeg = [192.4, 190.9, 191.7, 193.0, 191.5];

/** Mean on the circle: 359 and 1 give 0, not 180. */
function meanBearingDeg(bearingsDeg: readonly number[]): number {
  const rad = Math.PI / 180;
  const east = bearingsDeg.reduce((sum, each) => sum + Math.sin(each * rad), 0);
  const north = bearingsDeg.reduce((sum, each) => sum + Math.cos(each * rad), 0);
  return (Math.atan2(east, north) / rad + 360) % 360;
}

const magneticBearingDeg = meanBearingDeg(alphaDeg.map((alpha) => 360 - alpha));
const field = magneticField(station, instantToDecimalYear('2026-06-10'));
const azimuthDeg = magneticToTrueBearing({
  magneticBearingDeg,
  declinationDeg: field.declinationDeg,
});
console.log(`compass ${magneticBearingDeg.toFixed(1)}, true ${azimuthDeg.toFixed(1)}`);
const look = lookAngles(station, 16.4);
if (look.kind === 'visible') {
  const turnDeg = look.azimuthDeg - azimuthDeg;
  console.log(
    `turn ${Math.abs(turnDeg).toFixed(1)} ${turnDeg < 0 ? 'to the left' : 'to the right'}`,
  );
}
