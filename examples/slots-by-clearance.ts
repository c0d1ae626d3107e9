/** Slots in the order of their clearance over a measured skyline: which of them can this place receive at all? */

import { horizonProfile, slotViews } from 'slantpath/survey';

const profile = horizonProfile({
  sightings: [
    { azimuthDeg: 130, elevationDeg: 18 },
    { azimuthDeg: 152, elevationDeg: 38 },
    { azimuthDeg: 164, elevationDeg: 37 },
    { azimuthDeg: 168, elevationDeg: 30 },
    { azimuthDeg: 190, elevationDeg: 12 },
    { azimuthDeg: 207, elevationDeg: 31 },
    { azimuthDeg: 225, elevationDeg: 30 },
  ],
});
const views = slotViews({
  station: { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
  profile,
  orbitalLongitudesDeg: [-12.6, 3.1, 7.2, 16.4, 21.8, 98.2],
  requiredClearanceDeg: 1.5,
});
const clearance = (view: (typeof views)[number]) =>
  'clearanceDeg' in view ? view.clearanceDeg : Number.NEGATIVE_INFINITY;
for (const view of [...views].sort((a, b) => clearance(b) - clearance(a))) {
  const margin = 'clearanceDeg' in view ? `, ${view.clearanceDeg.toFixed(1)} degrees` : '';
  console.log(`${view.orbitalLongitudeDeg}: ${view.kind}${margin}`);
}
