/** A polar mount for the arc above 10 degrees at Tarnfell, in the three ways in which its axis may be set. */

import { polarMount } from 'slantpath/pointing';

const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };

for (const fit of ['polar-axis', 'apex-and-ends', 'least-worst'] as const) {
  const mount = polarMount({ station, minimumElevationDeg: 10, fit });
  if (mount.kind === 'mount')
    console.log(
      `${fit}: axis ${mount.axisElevationDeg.toFixed(2)}, declination ${mount.mountDeclinationDeg.toFixed(2)}, ` +
        `largest error ${mount.largestErrorDeg.toFixed(4)} degrees`,
    );
}

const mount = polarMount({
  station,
  minimumElevationDeg: 10,
  orbitalLongitudesDeg: [-30, 7.2, 16.4, 21.8, 60],
});
if (mount.kind === 'mount')
  for (const slot of mount.slots)
    console.log(
      `${slot.orbitalLongitudeDeg} E: turn ${slot.rotationEastDeg.toFixed(2)} degrees east, ` +
        `error ${slot.errorDeg.toFixed(4)}`,
    );
