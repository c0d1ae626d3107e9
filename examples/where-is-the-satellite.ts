/** Where a slot stands over a hut at Tarnfell, and what changes when the station moves a little. */

import { lookAngles } from 'slantpath/pointing';

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

for (const orbitalLongitudeDeg of [7.2, 16.4, 21.8, 120]) {
  const look = lookAngles(hut, orbitalLongitudeDeg);
  switch (look.kind) {
    case 'visible':
      console.log(
        `${orbitalLongitudeDeg} E: azimuth ${look.azimuthDeg.toFixed(2)}, ` +
          `elevation ${look.elevationDeg.toFixed(2)}, range ${look.slantRangeKm.toFixed(1)} km`,
      );
      break;
    case 'below-horizon':
      console.log(`${orbitalLongitudeDeg} E: hidden by the Earth`);
      break;
    case 'overhead':
      console.log(`${orbitalLongitudeDeg} E: straight overhead`);
      break;
  }
}

const east = lookAngles({ ...hut, longitudeDeg: hut.longitudeDeg + 0.1 }, 16.4);
const here = lookAngles(hut, 16.4);
if (here.kind === 'visible' && east.kind === 'visible')
  console.log(
    `A tenth of a degree further east turns the azimuth by ${(east.azimuthDeg - here.azimuthDeg).toFixed(3)} degrees`,
  );
