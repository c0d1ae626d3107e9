/** One place as a plus code and an MGRS reference, and the cells that those stand for. */

import {
  coordinatesToMgrs,
  coordinatesToPlusCode,
  mgrsToCoordinates,
  plusCodeToCoordinates,
} from 'slantpath/gridref';

const hut = { latitudeDeg: 46.6, longitudeDeg: 10.3 };
const code = coordinatesToPlusCode(hut);
const reference = coordinatesToMgrs({ ...hut, digits: 4 });
console.log(code, reference);
for (const cell of [plusCodeToCoordinates(code), mgrsToCoordinates(reference)])
  console.log(
    `${cell.latitudeDeg.toFixed(6)} ${cell.longitudeDeg.toFixed(6)}, ` +
      `${(cell.latitudeSpanDeg * 111195).toFixed(1)} m from south to north`,
  );
