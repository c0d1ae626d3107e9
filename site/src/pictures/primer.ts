/** The two pictures of the primer, with the numbers of its hut. */

import { halfPowerBeamwidth, pointingLoss } from 'slantpath/antenna';
import { lookAngles } from 'slantpath/pointing';
import type { Plot } from '../lib/pictures/plot.js';
import type { Direction, Sky } from '../lib/pictures/sky.js';

const HUT = { latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 };
const SLOT_DEG = 16.4;
const DISH = { diameterM: 0.9, frequencyGHz: 12 };

/** The satellite over the hut and the arc on which all of them stand. */
export function skyOf(): Sky {
  const directionOf = (orbitalLongitudeDeg: number): readonly Direction[] => {
    const look = lookAngles(HUT, orbitalLongitudeDeg);
    return look.kind === 'visible'
      ? [{ azimuthDeg: look.azimuthDeg, elevationDeg: look.elevationDeg }]
      : [];
  };
  const slots = Array.from({ length: 37 }, (_, step) => HUT.longitudeDeg - 72 + 4 * step);
  return {
    title: 'The satellite over the hut and the arc on which all slots lie',
    objects: directionOf(SLOT_DEG).map((direction) => ({ ...direction, label: '16.4° E' })),
    arc: slots.flatMap(directionOf),
    centreDeg: 180,
  };
}

/** Words of the second picture. */
const LOBE_WORDS = {
  title: 'Main lobe of a dish of 0.9 m at 12 GHz',
  off: 'Off the middle',
  level: 'Level',
  half: 'half the power',
};

/** The main lobe of the dish: what is lost beside its middle. */
export function lobeOf(words = LOBE_WORDS): Plot {
  const beamwidthDeg = halfPowerBeamwidth(DISH);
  const points = Array.from({ length: 49 }, (_, step) => {
    const x = (step - 24) / 20;
    return { x, y: 0 - pointingLoss({ offsetDeg: Math.abs(x), beamwidthDeg }) };
  });
  return {
    title: words.title,
    x: { label: words.off, unit: '°' },
    y: { label: words.level, unit: 'dB' },
    series: [{ label: words.level, points }],
    rules: [{ axis: 'y', at: -3, label: words.half }],
  };
}
