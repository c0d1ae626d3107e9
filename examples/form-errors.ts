/** A form that shows every error at once: each field has its own reader, and an error is kept under the field's name. */

import { DomainError, halfPowerBeamwidth, lookAngles, textToCoordinates } from 'slantpath';

type Form = Readonly<Record<'place' | 'slot' | 'diameterM' | 'frequencyGHz', string>>;

/** A number with a point or a comma and nothing else, so that `12 GHz` and `0,9 m` are refused and not cut off. */
function numberIn(field: keyof Form, text: string): number {
  const plain = text.trim().replace(',', '.').replace('−', '-');
  if (/^-?\d+(\.\d+)?$/.test(plain)) return Number(plain);
  throw new DomainError({
    code: plain === '' ? 'missing' : 'malformed',
    parameter: field,
    received: text,
    allowed: 'a number without a unit',
  });
}

/**
 * Longitude of a slot as people type it: `16,4`, `58W`, `58° W`, `-58`. The whole text must be understood; a reader that stops
 * at the first letter makes 58 west into 58 east.
 */
function slotIn(text: string): number {
  const [, sign = '', digits = '', side = ''] =
    /^([+−-]?)\s*(\d+(?:[.,]\d+)?)\s*°?\s*([EW]?)$/i.exec(text.trim()) ?? [];
  if (digits === '' || (sign !== '' && side !== ''))
    throw new DomainError({
      code: text.trim() === '' ? 'missing' : 'malformed',
      parameter: 'slot',
      received: text,
      allowed: 'degrees with E or W, such as 16.4 E',
    });
  const west = sign === '-' || sign === '−' || side.toUpperCase() === 'W';
  return (west ? -1 : 1) * Number(digits.replace(',', '.'));
}

function submitted(form: Form): string | Readonly<Record<string, string>> {
  const errors: Record<string, string> = {};
  const read = <T>(field: keyof Form, compute: () => T): T | undefined => {
    try {
      return compute();
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      errors[field] = error.message;
      return undefined;
    }
  };
  const place = read('place', () => textToCoordinates(form.place));
  const slotDeg = read('slot', () => slotIn(form.slot));
  const diameterM = read('diameterM', () => numberIn('diameterM', form.diameterM));
  const frequencyGHz = read('frequencyGHz', () => numberIn('frequencyGHz', form.frequencyGHz));
  const beam =
    diameterM !== undefined && frequencyGHz !== undefined
      ? read('diameterM', () => halfPowerBeamwidth({ diameterM, frequencyGHz }))
      : undefined;
  if (!place || slotDeg === undefined || beam === undefined) return errors;
  const { latitudeDeg, longitudeDeg } = place;
  const look = lookAngles({ latitudeDeg, longitudeDeg, heightM: 0 }, slotDeg);
  return `slot ${slotDeg}: ${look.kind}, elevation ${look.elevationDeg.toFixed(1)}, beamwidth ${beam.toFixed(2)}`;
}

const form: Form = { place: '46.6, 10.3', slot: '16,4', diameterM: '0,9', frequencyGHz: '11.7' };
for (const slot of ['16,4', '58W', '58° W', '-58']) console.log(submitted({ ...form, slot }));
console.log(
  JSON.stringify(
    submitted({ ...form, place: '116, 10.3', slot: '58 O', diameterM: '', frequencyGHz: '12 GHz' }),
  ),
);
