/** EIRP at places from two contours of a footprint, one of them across the date line. */

import { type Footprint, footprintLevelsAt } from 'slantpath/link';

const footprint: Footprint = {
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      properties: { eirpDbw: 48 },
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [165, -30],
            [-165, -30],
            [-160, 0],
            [170, 5],
            [165, -30],
          ],
        ],
      },
    },
    {
      type: 'Feature',
      properties: { eirpDbw: 51 },
      geometry: {
        type: 'Polygon',
        coordinates: [
          [
            [172, -22],
            [-174, -22],
            [-172, -8],
            [174, -6],
            [172, -22],
          ],
        ],
      },
    },
  ],
};
const places = { latitudeDeg: [-15, -15, -27, 20], longitudeDeg: [179, -168, 178, 178] };

footprintLevelsAt(footprint, places).forEach((result, row) => {
  const place = `${places.latitudeDeg[row]}, ${places.longitudeDeg[row]}`;
  switch (result.kind) {
    case 'between':
      console.log(`${place}: ${result.levelDb.toFixed(2)} dBW`);
      break;
    case 'highest':
      console.log(`${place}: at least ${result.levelDb} dBW`);
      break;
    case 'outside':
      console.log(`${place}: less than ${result.lowestLevelDb} dBW, outside`);
      break;
  }
});
