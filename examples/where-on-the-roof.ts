/** A chimney and a ridge: which place on the roof sees all slots, how high the others must go, and how trees grow. */

import {
  clearPlaces,
  obstacleCorner,
  obstructionClearance,
  rowSpacing,
  yearsClear,
} from 'slantpath/survey';

const ridge = {
  corners: [
    obstacleCorner({ azimuthDeg: 140, distanceM: 9, heightAboveEyeM: 6 }),
    obstacleCorner({ azimuthDeg: 215, distanceM: 9, heightAboveEyeM: 6 }),
  ],
};
const chimney = {
  corners: [obstacleCorner({ azimuthDeg: 168, distanceM: 4, heightAboveEyeM: 4 })],
};
const places = [0, 2, 4].map((northM) => ({ eastM: 1.5, northM, upM: 0 }));
clearPlaces({
  station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
  obstacles: [ridge, chimney],
  orbitalLongitudesDeg: [7.2, 16.4, 21.8],
  diameterM: 0.9,
  places,
}).forEach((view, index) => {
  const where = `${places[index]?.northM} m north`;
  console.log(
    view.kind === 'blocked'
      ? `${where}: raise by ${view.raiseM.toFixed(2)} m`
      : `${where}: ${view.kind}`,
  );
});
const tree = {
  distanceM: 14,
  topHeightM: 9,
  centreHeightM: 2,
  elevationDeg: 36.2,
  diameterM: 0.9,
  growthMPerYear: 0.4,
};
const left = yearsClear(tree);
console.log(
  `tree: ${obstructionClearance(tree).edgeClearanceM.toFixed(2)} m below the beam's edge now`,
);
console.log(left.kind === 'until' ? `for ${left.years.toFixed(1)} years` : left.kind);
const directions = [{ azimuthDeg: 163.4, elevationDeg: 35.3 }];
console.log(
  `rows ${rowSpacing({ diameterM: 0.9, directions, rowAzimuthDeg: 180 }).spacingM.toFixed(2)} m apart`,
);
