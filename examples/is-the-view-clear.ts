/** A horizon sighted by compass and clinometer, and what it leaves of the arc. */

import { magneticField } from 'slantpath/magnetic';
import { clearArc, horizonProfile, slotViews } from 'slantpath/survey';

const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const { declinationDeg } = magneticField(station, 2026.44);
const profile = horizonProfile({
  sightings: [
    { magneticBearingDeg: 125, elevationDeg: 24 },
    { magneticBearingDeg: 150, elevationDeg: 37 },
    { magneticBearingDeg: 160, elevationDeg: 33 },
    { magneticBearingDeg: 168, distanceM: 30, heightAboveEyeM: 8 },
    { magneticBearingDeg: 195, elevationDeg: 14 },
    { magneticBearingDeg: 230, elevationDeg: 21 },
  ],
  declinationDeg,
});
const orbitalLongitudesDeg = [7.2, 16.4, 21.8];
for (const view of slotViews({ station, profile, orbitalLongitudesDeg, requiredClearanceDeg: 2 }))
  console.log(
    `${view.orbitalLongitudeDeg} E: ${view.kind}${'clearanceDeg' in view ? `, ${view.clearanceDeg.toFixed(1)} degrees` : ''}`,
  );
for (const { kind, westLongitudeDeg, eastLongitudeDeg } of clearArc({
  station,
  profile,
  requiredClearanceDeg: 2,
}))
  console.log(`${westLongitudeDeg.toFixed(2)} to ${eastLongitudeDeg.toFixed(2)}: ${kind}`);
