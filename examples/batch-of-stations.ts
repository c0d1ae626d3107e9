/** One slot over a grid of places, in columns: the same numbers as one call for each, and reused memory. */

import { DomainError, lookAngles, lookAnglesBatch } from 'slantpath';

const rows = 61 * 121;
const latitudeDeg = new Float64Array(rows);
const longitudeDeg = new Float64Array(rows);
for (let row = 0; row < rows; row++) {
  latitudeDeg[row] = -60 + 2 * Math.floor(row / 121);
  longitudeDeg[row] = -60 + (row % 121);
}

const question = { latitudeDeg, longitudeDeg, heightM: 0, orbitalLongitudeDeg: 16.4 };
const first = lookAnglesBatch(question);
const visible = first.elevationDeg.filter((elevationDeg) => elevationDeg > 10).length;
console.log(`${rows} places, ${visible} see the slot above 10 degrees`);

const alone = lookAngles({ latitudeDeg: 46, longitudeDeg: 10, heightM: 0 }, 16.4);
const row = 121 * 53 + 70;
console.log(`equal to the single call: ${first.elevationDeg[row] === alone.elevationDeg}`);

const again = lookAnglesBatch({ ...question, orbitalLongitudeDeg: 21.8 }, first);
console.log(`memory reused: ${again.elevationDeg === first.elevationDeg}`);

latitudeDeg[1234] = 95;
try {
  lookAnglesBatch(question);
} catch (error) {
  if (error instanceof DomainError) console.log(error.message);
}
