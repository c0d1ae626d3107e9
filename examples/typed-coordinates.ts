/** Coordinates as people type them, written back in each notation; and what is refused. */

import { DomainError } from 'slantpath';
import { coordinatesToMaidenhead, coordinatesToText, textToCoordinates } from 'slantpath/earth';

for (const text of ['46.4, 9.6', "46° 24.0' N 9° 36.0' E", '46,4 N; 9,6 E']) {
  const { latitudeDeg, longitudeDeg, notation } = textToCoordinates(text);
  console.log(`${latitudeDeg.toFixed(5)} ${longitudeDeg.toFixed(5)}  ${notation}: ${text}`);
}
const hut = textToCoordinates('46.4, 9.6');
console.log(coordinatesToText({ ...hut, notation: 'degrees-minutes' }));
console.log(coordinatesToText({ ...hut, notation: 'degrees-minutes-seconds' }));
console.log(coordinatesToMaidenhead(hut));
for (const text of ['9.6 E', '46,4', '146.4, 9.6'])
  try {
    textToCoordinates(text);
  } catch (error) {
    if (error instanceof DomainError) console.log(error.message);
  }
