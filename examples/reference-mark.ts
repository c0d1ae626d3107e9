/** A mark to take a bearing from: the place 1.25 km off on the bearing of a slot, to be found on a map. */

import { coordinatesToText } from 'slantpath/earth';
import { geodesicEnd } from 'slantpath/geodesic';
import { lookAngles } from 'slantpath/pointing';

const station = { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 };
const look = lookAngles(station, 16.4);
if (look.kind === 'visible') {
  const mark = geodesicEnd(station, { azimuthDeg: look.azimuthDeg, distanceKm: 1.25 });
  console.log(coordinatesToText({ ...mark, notation: 'degrees-minutes' }));
  console.log(`from there back on ${mark.returnAzimuthDeg.toFixed(3)}`);
}
