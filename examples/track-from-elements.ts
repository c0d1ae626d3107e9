/** Look angles through a day from a two-line element set (of an invented satellite). */

import { satelliteTrack, tleToElements } from 'slantpath/orbit';
import { fixedAntennaLoss } from 'slantpath/pointing';

const elements =
  tleToElements(`1 99901U 26001A   26300.50000000  .00000000  00000-0  00000-0 0  9993
2 99901   3.0000  80.0000 0002000  90.0000  62.0000  1.00271000  1002`);
console.log(`epoch ${elements.epoch}, inclination ${elements.inclinationDeg} degrees`);

const track = satelliteTrack({
  elements,
  station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
  from: '2026-10-28T00:00:00Z',
  stepMin: 60,
});

if (track.kind === 'track') {
  for (const point of track.points.filter((_, index) => index % 6 === 0))
    console.log(
      `${point.instant.slice(0, 16)} azimuth ${point.azimuthDeg.toFixed(2)}, elevation ${point.elevationDeg.toFixed(2)}`,
    );
  const day = fixedAntennaLoss({ track: track.points, beamwidthDeg: 1.94 });
  console.log(
    `peak at ${track.points[day.bestIndex]?.instant.slice(11, 16)} UTC, not at ${track.points[day.worstIndex]?.instant.slice(11, 16)}`,
  );
}
