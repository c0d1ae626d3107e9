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
  const slotDeg = read('slot', () => numberIn('slot', form.slot));
  const diameterM = read('diameterM', () => numberIn('diameterM', form.diameterM));
  const frequencyGHz = read('frequencyGHz', () => numberIn('frequencyGHz', form.frequencyGHz));
  const beam =
    diameterM !== undefined && frequencyGHz !== undefined
      ? read('diameterM', () => halfPowerBeamwidth({ diameterM, frequencyGHz }))
      : undefined;
  if (!place || slotDeg === undefined || beam === undefined) return errors;
  const { latitudeDeg, longitudeDeg } = place;
  const look = lookAngles({ latitudeDeg, longitudeDeg, heightM: 0 }, slotDeg);
  return `${look.kind}, elevation ${look.elevationDeg.toFixed(1)}, beamwidth ${beam.toFixed(2)}`;
}

const form: Form = { place: '46.6, 10.3', slot: '16,4', diameterM: '0,9', frequencyGHz: '11.7' };
console.log(submitted(form));
console.log(
  JSON.stringify(submitted({ ...form, place: '116, 10.3', diameterM: '', frequencyGHz: '12 GHz' })),
);
