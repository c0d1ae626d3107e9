/** The home page's answer: what is set on site for one slot and one reflector. Pure; the same at build and in the browser. */

import { DomainError } from 'slantpath';
import { textToCoordinates } from 'slantpath/earth';
import { magneticField } from 'slantpath/magnetic';
import {
  lookAngles,
  offsetAngleFromRim,
  offsetReflectorPreset,
  polarizationSkew,
} from 'slantpath/pointing';
import type { Figure } from './example.js';
import type { Place } from './inputs/inputs.js';
import { compassWords, escapeHtml, longitudeText, shown, typed } from './language/text.js';
import { arcOver } from './pictures/arc.js';
import { type Direction, sky, skyPlaces } from './pictures/sky.js';

/** What stands in the three fields. */
export interface HomeInput {
  readonly place: Place;
  readonly slotDeg: number;
  readonly offsetAngleDeg: number;
}

export const HOME_DEFAULTS = { place: '46.4, 9.6', slot: '16.4', reflector: '90 × 99' };

/** A slot as it is spoken of: `16.4`, `16.4 E`, `30W`, `-30`. */
export function readSlot(line: string): number {
  const [, number = '', side = ''] = /^\s*(.+?)\s*°?\s*([EeWwOo]?)\s*$/.exec(line) ?? [];
  const value = typed(number);
  if (!Number.isFinite(value) || Math.abs(value) > 360)
    throw new DomainError({
      code: 'malformed',
      parameter: 'slot',
      received: line,
      allowed: 'a longitude such as 16.4 E or 30 W',
    });
  return /w/i.test(side) ? -value : value;
}

/** The offset angle from the rim's width and height in centimetres, or the angle itself with a degree sign. */
export function readReflector(line: string): number {
  const angle = /^\s*([\d.,]+)\s*°\s*$/.exec(line);
  if (angle) return typed(angle[1] ?? '');
  const [, width = '', height = ''] =
    /^\s*([\d.,]+)\s*(?:cm)?\s*[x×*/ ]\s*([\d.,]+)\s*(?:cm)?\s*$/i.exec(line) ?? [];
  const [w, h] = [typed(width), typed(height)];
  if (!(w > 0) || !(h > 0))
    throw new DomainError({
      code: 'malformed',
      parameter: 'reflector',
      received: line,
      allowed: 'width × height in cm, or an offset angle with °',
    });
  return offsetAngleFromRim({ widthM: w / 100, heightM: h / 100 }).offsetAngleDeg;
}

/** A place typed as coordinates; `undefined` where it is not coordinates (a name, perhaps). */
export function readPlace(line: string): Place | undefined {
  try {
    const { latitudeDeg, longitudeDeg } = textToCoordinates(line);
    return { latitudeDeg, longitudeDeg, heightM: 0 };
  } catch {
    return undefined;
  }
}

/** One thing that is set. */
interface Setting {
  readonly label: string;
  readonly value: string;
  readonly what: string;
  readonly second?: string;
  readonly secondWhat?: string;
}

/** Everything the home page shows. */
export interface HomeAnswer {
  readonly says: string;
  readonly visible: boolean;
  readonly settings: readonly Setting[];
  readonly centreDeg: number;
  readonly topDeg: number;
  readonly mark: Direction;
  readonly arc: readonly (Direction & { readonly slotDeg: number })[];
}

/** The answer for a decimal year, which the declination needs. */
export function homeAnswer(
  { place, slotDeg, offsetAngleDeg }: HomeInput,
  year: number,
): HomeAnswer {
  const look = lookAngles(place, slotDeg);
  const skew = polarizationSkew({ station: place, orbitalLongitudeDeg: slotDeg });
  const { declinationDeg, declinationStandardUncertaintyDeg } = magneticField(place, year);
  const name = longitudeText(slotDeg);
  const centreDeg = place.latitudeDeg >= 0 ? 180 : 0;
  const arc = arcOver(place);
  const azimuthDeg = look.kind === 'overhead' ? centreDeg : look.azimuthDeg;
  const highest = Math.max(20, ...arc.map(({ elevationDeg }) => elevationDeg));
  const visible = look.kind !== 'below-horizon';
  const compass = (((azimuthDeg - declinationDeg) % 360) + 360) % 360;
  const preset = visible
    ? offsetReflectorPreset({ elevationDeg: look.elevationDeg, offsetAngleDeg })
    : undefined;
  const turned = 'skewDeg' in skew ? skew.skewDeg : undefined;
  const side = declinationDeg >= 0 ? 'east' : 'west';
  return {
    says: visible
      ? `The slot at ${name} stands ${look.kind === 'overhead' ? 'overhead' : `in the ${compassWords(azimuthDeg)}`}, ${shown(look.elevationDeg, 1)}° up.`
      : `The slot at ${name} is hidden by the Earth here, ${shown(-look.elevationDeg, 1)}° below the horizon.`,
    visible,
    settings: visible
      ? [
          {
            label: 'Bearing',
            value: `${shown(azimuthDeg, 1)}°`,
            what: 'from true north',
            second: `${shown(compass, 1)}°`,
            secondWhat: `by compass: its needle points ${shown(Math.abs(declinationDeg), 1)}° ${side} of true here, ± ${shown(declinationStandardUncertaintyDeg, 1)}°`,
          },
          {
            label: 'Elevation',
            value: `${shown(look.elevationDeg, 1)}°`,
            what: 'of the beam, on a bracket marked in elevation',
            second: `${shown(preset?.scaleReadingDeg ?? 0, 1)}°`,
            secondWhat: `on an inclinometer laid on the face: it leans ${preset && preset.faceLeanDeg < 0 ? 'forwards' : 'back'}, offset ${shown(offsetAngleDeg, 1)}° counted off`,
          },
          {
            label: 'Feed',
            value:
              turned === undefined ? 'by the ground bearing' : `${shown(Math.abs(turned), 1)}°`,
            what:
              turned === undefined || Math.abs(turned) < 0.05
                ? 'upright'
                : `${turned > 0 ? 'clockwise' : 'counter-clockwise'}, seen from behind the antenna`,
          },
        ]
      : [],
    centreDeg,
    topDeg: Math.min(90, Math.ceil((highest + 12) / 10) * 10),
    mark: { azimuthDeg, elevationDeg: look.elevationDeg },
    arc: arc.map((direction, index) => ({
      ...direction,
      slotDeg: (direction as { orbitalLongitudeDeg?: number }).orbitalLongitudeDeg ?? index,
    })),
  };
}

/** The directions of whole ten degrees of slots, for the marks along the arc. */
function tens(place: Place, slotDeg: number) {
  const first = Math.ceil((place.longitudeDeg - 80) / 10) * 10;
  return Array.from({ length: 17 }, (_, i) => first + 10 * i).flatMap((slot) => {
    const look = lookAngles(place, slot);
    return look.kind === 'visible' && look.elevationDeg > 6 && Math.abs(slot - slotDeg) > 4.5
      ? [{ ...look, label: longitudeText(slot, 0) }]
      : [];
  });
}

/** The sky with the slot on its arc. */
export function homeSky(
  input: HomeInput,
  answer: HomeAnswer,
  size: { width: number; height: number },
): Figure {
  const name = longitudeText(input.slotDeg);
  return sky({
    title: `The slot at ${name} on the arc of all slots`,
    objects: [{ label: name, ...answer.mark }],
    arc: answer.arc,
    ...(size.width > 600 ? { ticks: tens(input.place, input.slotDeg) } : {}),
    centreDeg: answer.centreDeg,
    widthDeg: 180,
    topDeg: answer.topDeg,
    size,
  });
}

/** Where the mark lies on that picture, in shares of its width and height. */
export const markPlace = (answer: HomeAnswer, size: { width: number; height: number }) =>
  skyPlaces({ centreDeg: answer.centreDeg, topDeg: answer.topDeg, size })(answer.mark);

/** HTML of what is set. */
export const renderSettings = (answer: HomeAnswer) =>
  answer.settings
    .map(
      ({ label, value, what, second, secondWhat }) =>
        `<div><dt>${escapeHtml(label)}</dt><dd><output>${escapeHtml(value)}</output> <small>${escapeHtml(what)}</small></dd>${second ? `<dd><output>${escapeHtml(second)}</output> <small>${escapeHtml(secondWhat ?? '')}</small></dd>` : ''}</div>`,
    )
    .join('');
