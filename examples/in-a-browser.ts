/** What a page does with its fields: text in, a sentence out, a refusal beside the field that is wrong. */

import { DomainError, lookAngles, textToCoordinates } from 'slantpath';

interface Fields {
  readonly place: string;
  readonly slot: string;
}

/** The answer, or the field to mark and what to write beside it. */
function answer({ place, slot }: Fields): { text: string } | { field: string; refusal: string } {
  try {
    const { latitudeDeg, longitudeDeg } = textToCoordinates(place);
    const look = lookAngles({ latitudeDeg, longitudeDeg, heightM: 0 }, Number.parseFloat(slot));
    return { text: `${look.kind}, elevation ${look.elevationDeg.toFixed(1)}` };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const field = error.parameter === 'orbitalLongitudeDeg' ? 'slot' : 'place';
    return { field, refusal: error.message };
  }
}

console.log(JSON.stringify(answer({ place: '46°24′N 9°36′E', slot: '16.4' })));
console.log(JSON.stringify(answer({ place: '46.4, 9.6', slot: 'east' })));
console.log(JSON.stringify(answer({ place: '116.4, 9.6', slot: '16.4' })));
