/** Distances and bearings between huts along the ellipsoid. */

import { geodesicBetween } from 'slantpath/geodesic';

const huts = [
  { name: 'hut 1', latitudeDeg: 46.6, longitudeDeg: 10.3 },
  { name: 'hut 2', latitudeDeg: 46.7, longitudeDeg: 10.5 },
  { name: 'hut 3', latitudeDeg: 46.5, longitudeDeg: 10.2 },
];
for (const from of huts)
  for (const to of huts) {
    if (from.name >= to.name) continue;
    const line = geodesicBetween(from, to);
    if (line.kind === 'line')
      console.log(
        `${from.name} to ${to.name}: ${line.distanceKm.toFixed(4)} km, ` +
          `${line.azimuthDeg.toFixed(3)} there, ${line.returnAzimuthDeg.toFixed(3)} back`,
      );
  }
