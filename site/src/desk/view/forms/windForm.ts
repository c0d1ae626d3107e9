/** The form of what the wind moves: mast, base, and the wind of the place. */

import type { Desk } from '../desk.js';
import { choice, number, type Part } from '../parts.js';

/** Fields of a mount's mast and base. */
export function mastFields({ words }: Desk, mount: string): readonly Part[] {
  const w = words.mount;
  const [mast, base] = [`${mount}.mast`, `${mount}.base`];
  return [
    {
      kind: 'fold',
      name: mast,
      title: w.mast,
      parts: [
        number(`${mast}.lengthM`, w.mastLength, 'm'),
        number(`${mast}.outsideDiameterM`, w.mastOutside, 'm', { empty: w.notTold }),
        number(`${mast}.wallM`, w.mastWall, 'm', { empty: w.notTold }),
        choice(`${mast}.material`, w.material, w.materials),
        number(`${mast}.eccentricityM`, w.eccentricity, 'm', { empty: '0' }),
      ],
    },
    {
      kind: 'fold',
      name: base,
      title: w.base,
      parts: [
        number(`${base}.widthM`, w.baseWidth, 'm'),
        number(`${base}.leverM`, w.baseLever, 'm', { empty: w.baseLeverEmpty }),
        number(`${base}.frictionRatio`, w.friction, '', { empty: '0.4' }),
        number(`${base}.safetyRatio`, w.safety, '', { empty: '1.5' }),
      ],
    },
  ];
}

/** Fields of the wind of the place. */
export function windFields({ words }: Desk): Part {
  const w = words.mount;
  return {
    kind: 'fold',
    name: 'wind',
    title: w.wind,
    parts: [
      { kind: 'note', text: w.windNote },
      number('wind.basicSpeedMPerS', w.windSpeed, 'm/s'),
      choice('wind.terrain', w.terrain, w.terrains),
      number('wind.heightM', w.windHeight, 'm'),
      number('wind.meanSpeedMPerS', w.meanSpeed, 'm/s', { empty: w.notTold }),
      number('wind.workingSpeedMPerS', w.workingSpeed, 'm/s', { empty: '15' }),
      number('wind.forceCoefficientRatio', w.force, '', { empty: '1.3' }),
    ],
  };
}
