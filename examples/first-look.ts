import { lookAngles, polarizationSkew } from 'slantpath/pointing';

const station = { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 };
const look = lookAngles(station, 16.4);
if (look.kind === 'visible')
  console.log(`azimuth ${look.azimuthDeg.toFixed(2)}, elevation ${look.elevationDeg.toFixed(2)}`);
const skew = polarizationSkew({ station, orbitalLongitudeDeg: 16.4 });
if (skew.kind === 'visible') console.log(`skew ${skew.skewDeg.toFixed(2)}`);
