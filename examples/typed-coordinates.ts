/** Coordinates as people type them, written back in each notation; and what is refused. */

import { DomainError } from 'slantpath';
import { coordinatesToMaidenhead, coordinatesToText, textToCoordinates } from 'slantpath/earth';

for (const text of ['46.6185, 10.3472', "46° 37.11' N 10° 20.83' E", '46,6185 N; 10,3472 E']) {
  const { latitudeDeg, longitudeDeg, notation } = textToCoordinates(text);
  console.log(`${latitudeDeg.toFixed(5)} ${longitudeDeg.toFixed(5)}  ${notation}: ${text}`);
}
const hut = textToCoordinates('46.6185, 10.3472');
console.log(coordinatesToText({ ...hut, notation: 'degrees-minutes' }));
console.log(coordinatesToText({ ...hut, notation: 'degrees-minutes-seconds' }));
console.log(coordinatesToMaidenhead(hut));
for (const text of ['10.3472 E', '46,6', '146.6, 10.3'])
  try {
    textToCoordinates(text);
  } catch (error) {
    if (error instanceof DomainError) console.log(error.message);
  }
