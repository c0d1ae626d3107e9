/** What a compass shows in the direction of a slot, how sure that is, and how it changes. */

import { instantToDecimalYear, magneticField, trueToMagneticBearing } from 'slantpath/magnetic';
import { lookAngles } from 'slantpath/pointing';

const station = { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 };
const field = magneticField(station, instantToDecimalYear('2026-06-10'));
console.log(
  `declination ${field.declinationDeg.toFixed(2)} +- ${field.declinationStandardUncertaintyDeg.toFixed(2)} degrees, ` +
    `${(60 * field.declinationRateDegPerYear).toFixed(1)} minutes of arc a year, ${field.compassZone}`,
);
const look = lookAngles(station, 16.4);
if (look.kind === 'visible') {
  const bearing = trueToMagneticBearing({
    azimuthDeg: look.azimuthDeg,
    declinationDeg: field.declinationDeg,
  });
  console.log(`true ${look.azimuthDeg.toFixed(2)}, compass ${bearing.toFixed(2)}`);
}
const later = magneticField(station, 2031);
console.log(`${later.validity}: ${later.outsideStatedRange.join(', ')}`);
