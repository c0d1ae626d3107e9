/** The arc of slots over a station, for drawings of the sky. */

import { lookAngles } from 'slantpath/pointing';
import type { Place } from '../inputs/inputs.js';
import type { Direction } from './sky.js';

/** The slots that stand above the horizon, every degree of longitude, from west to east. */
export function arcOver(station: Place): Direction[] {
  const arc: Direction[] = [];
  for (let difference = -82; difference <= 82; difference += 1) {
    const look = lookAngles(station, station.longitudeDeg + difference);
    if (look.kind === 'visible') arc.push(look);
  }
  return arc;
}
