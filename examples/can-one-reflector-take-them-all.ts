/** One 0.9 m reflector for the three slots of the Tarnfell huts: where it looks, where the feeds go and how they are turned, what it costs. */

import { reflectorFromRim, severalSlots } from 'slantpath/pointing';

const rim = reflectorFromRim({ widthM: 0.9, heightM: 0.985, depthM: 0.0856 });
console.log(
  `rim: focal length ${rim.focalLengthM.toFixed(3)} m, offset ${rim.offsetAngleDeg.toFixed(1)} degrees, ` +
    `strings ${rim.lowerEndToFocusM.toFixed(3)} and ${rim.upperEndToFocusM.toFixed(3)} m`,
);

const found = severalSlots({
  station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
  slots: [
    { orbitalLongitudeDeg: 7.2, frequenciesGHz: [11.7] },
    { orbitalLongitudeDeg: 16.4, frequenciesGHz: [11.7, 19.7] },
    { orbitalLongitudeDeg: 21.8, frequenciesGHz: [11.7] },
  ],
  reflector: rim,
});

if (found.kind === 'placed') {
  const { azimuthDeg, elevationDeg } = found.boresight;
  console.log(
    `boresight at azimuth ${azimuthDeg.toFixed(2)}, elevation ${elevationDeg.toFixed(2)}`,
  );
  console.log(
    `bar turned by ${found.tiltDeg.toFixed(1)} degrees, beam deviation factor ${found.beamDeviationFactorRatio.toFixed(3)}`,
  );
  for (const slot of found.slots) {
    const losses = slot.bands.map(
      (band) => `${band.lossDb.toFixed(2)} dB at ${band.frequencyGHz} GHz`,
    );
    const turn = slot.feedTurn.kind === 'linear' ? slot.feedTurn.turnDeg : 0;
    console.log(
      `${slot.orbitalLongitudeDeg} E: feed ${(1000 * slot.feed.rightM).toFixed(0)} mm right, ` +
        `${(1000 * slot.feed.upM).toFixed(0)} mm up, turned ${turn.toFixed(1)} degrees; ${losses.join(', ')}`,
    );
  }
}
