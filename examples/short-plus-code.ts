/** A short plus code needs a place near it; a longer code is a smaller cell. */

import { DomainError } from 'slantpath';
import { coordinatesToPlusCode, plusCodeToCoordinates } from 'slantpath/gridref';

const village = { latitudeDeg: 46.7, longitudeDeg: 10.4 };
const full = coordinatesToPlusCode({ latitudeDeg: 46.6, longitudeDeg: 10.3, length: 11 });
const short = full.slice(4);
const found = plusCodeToCoordinates(short, village);
console.log(`${full}, near the village ${short}`);
console.log(`${found.latitudeDeg.toFixed(6)} ${found.longitudeDeg.toFixed(6)}`);
try {
  plusCodeToCoordinates(short);
} catch (error) {
  if (error instanceof DomainError) console.log(error.message);
}
