/** The arc of slots over a station, for drawings of the sky. */

import { lookAngles } from 'slantpath/pointing';
import type { Place } from '../inputs/inputs.js';
import type { Direction } from './sky.js';

/** The slot whose place on the arc lies nearest, to a tenth of a degree; `far` measures from the pointer. */
export function nearestSlot(station: Place, far: (from: Direction) => number): number | undefined {
  const distance = (slotDeg: number) => {
    const look = lookAngles(station, slotDeg);
    return look.kind === 'visible' ? far(look) : Number.POSITIVE_INFINITY;
  };
  const nearest = (slots: readonly number[]) =>
    slots.reduce((a, b) => (distance(b) < distance(a) ? b : a));
  const whole = nearest(
    Array.from({ length: 163 }, (_, i) => Math.round(station.longitudeDeg) - 81 + i),
  );
  const fine = nearest(Array.from({ length: 21 }, (_, i) => whole - 1 + i / 10));
  return Number.isFinite(distance(fine)) ? wrapped(fine) : undefined;
}

/** A slot some tenths further along the arc as the viewer sees it, to the right; the same where it would set. */
export function slotBeside(station: Place, slotDeg: number, tenths: number): number {
  // To the right is west in the northern sky, east in the southern.
  const beside = wrapped(slotDeg + (station.latitudeDeg < 0 ? tenths : -tenths) / 10);
  return lookAngles(station, beside).kind === 'below-horizon' ? slotDeg : beside;
}

const wrapped = (deg: number) => Math.round(10 * ((((deg + 180) % 360) + 360) % 360) - 1800) / 10;

/** The slots that stand above the horizon, every degree of longitude, from west to east. */
export function arcOver(station: Place): Direction[] {
  const arc: Direction[] = [];
  for (let difference = -82; difference <= 82; difference += 1) {
    const look = lookAngles(station, station.longitudeDeg + difference);
    if (look.kind === 'visible') arc.push(look);
  }
  return arc;
}
