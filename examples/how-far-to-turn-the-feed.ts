/** Polarization skew for the slots of the Tarnfell huts, for a tilted satellite, and straight below one. */

import { type PolarizationSkew, polarizationSkew } from 'slantpath/pointing';

function inWords(skew: PolarizationSkew): string {
  switch (skew.kind) {
    case 'visible':
      return `turn by ${Math.abs(skew.skewDeg).toFixed(2)} degrees ${skew.skewDeg < 0 ? 'counter-clockwise' : 'clockwise'}`;
    case 'overhead':
      return `lay the feed along the bearing ${skew.polarizationBearingDeg.toFixed(1)} degrees`;
    case 'circular':
      return 'any rotation serves';
    case 'below-horizon':
      return 'hidden by the Earth';
  }
}

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
for (const orbitalLongitudeDeg of [7.2, 16.4, 21.8])
  console.log(
    `${orbitalLongitudeDeg} E: ${inWords(polarizationSkew({ station: hut, orbitalLongitudeDeg }))}`,
  );

const tilted = { kind: 'linear', tiltDeg: 3.5 } as const;
console.log(
  `16.4 E, tilted by 3.5: ${inWords(polarizationSkew({ station: hut, orbitalLongitudeDeg: 16.4, polarization: tilted }))}`,
);
const equator = { latitudeDeg: 0, longitudeDeg: 102, heightM: 40 };
console.log(
  `straight below: ${inWords(polarizationSkew({ station: equator, orbitalLongitudeDeg: 102 }))}`,
);
