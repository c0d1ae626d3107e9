/** From one hut to a mast on the next ridge: Earth-fixed coordinates, then east, north and up, then a direction. */

import {
  ecefToEnu,
  ecefToStation,
  enuToDirection,
  stationToEcef,
  stationToGeocentric,
} from 'slantpath/earth';

const hut = { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 };
const mast = { latitudeDeg: 46.6, longitudeDeg: 10.4, heightM: 2310 };
const direction = enuToDirection(ecefToEnu(hut, stationToEcef(mast)));
if (direction.kind === 'inclined')
  console.log(
    `azimuth ${direction.azimuthDeg.toFixed(3)}, elevation ${direction.elevationDeg.toFixed(3)}, ` +
      `${direction.slantRangeKm.toFixed(4)} km`,
  );
const { geocentricLatitudeDeg, radiusKm } = stationToGeocentric(hut);
console.log(`geocentric latitude ${geocentricLatitudeDeg.toFixed(5)}, ${radiusKm.toFixed(4)} km`);
console.log(`and back: ${ecefToStation(stationToEcef(hut)).heightM.toFixed(3)} m`);
