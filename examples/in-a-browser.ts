/** What a page does with its fields: text in, a sentence out, a refusal beside the field that is wrong. */

import { DomainError, lookAngles, textToCoordinates } from 'slantpath';

interface Fields {
  readonly place: string;
  readonly slot: string;
}

/**
 * Longitude of a slot as people type it: `16.4`, `16,4 E`, `58 W`, `-58`. The whole text must be understood: a
 * reader that stops at the first letter makes 58 west into 58 east.
 */
function slotLongitudeDeg(text: string): number {
  const parts = /^([+-])?\s*(\d{1,3}(?:[.,]\d+)?)\s*°?\s*(E|W|east|west)?$/i.exec(text.trim());
  const [, sign, digits = '', side] = parts ?? [];
  if (!parts || (sign !== undefined && side !== undefined))
    throw new DomainError({
      code: 'malformed',
      parameter: 'orbitalLongitudeDeg',
      received: text,
      allowed: 'degrees with E or W, such as 16.4 E',
    });
  const west = sign === '-' || side?.toUpperCase().startsWith('W');
  return (west ? -1 : 1) * Number(digits.replace(',', '.'));
}

/** The answer, or the field to mark and what to write beside it. */
function answer({ place, slot }: Fields): { text: string } | { field: string; refusal: string } {
  try {
    const { latitudeDeg, longitudeDeg } = textToCoordinates(place);
    const look = lookAngles({ latitudeDeg, longitudeDeg, heightM: 0 }, slotLongitudeDeg(slot));
    return { text: `${look.kind}, elevation ${look.elevationDeg.toFixed(1)}` };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const field = error.parameter === 'orbitalLongitudeDeg' ? 'slot' : 'place';
    return { field, refusal: error.message };
  }
}

console.log(JSON.stringify(answer({ place: '46°24′N 9°36′E', slot: '16.4' })));
for (const slot of ['16,4 E', '58 W', '-58', 'east', '16.4 O'])
  console.log(slot, JSON.stringify(answer({ place: '46.4, 9.6', slot })));
console.log(JSON.stringify(answer({ place: '116.4, 9.6', slot: '16.4' })));
