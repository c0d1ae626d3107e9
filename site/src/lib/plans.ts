/** Worked solutions that several examples show beside their answer. */

import type { Working } from './example.js';
import type { Place } from './inputs/inputs.js';

/** Plans from a station towards a slot: `azimuth`, `elevation`, `slant-range`, `skew`. */
export function towards(
  plans: readonly string[],
  { latitudeDeg, longitudeDeg, heightM }: Place,
  orbitalLongitudeDeg: number,
): readonly Working[] {
  return plans.map((plan) => ({
    plan,
    givens: { latitudeDeg, longitudeDeg, heightM, orbitalLongitudeDeg },
  }));
}

/** The beamwidth and the gain of a reflector with an aperture efficiency of 0.65. */
export function reflector(diameterM: number, frequencyGHz: number): readonly Working[] {
  return [
    { plan: 'beamwidth', givens: { diameterM, frequencyGHz } },
    { plan: 'antenna-gain', givens: { diameterM, frequencyGHz, efficiencyPercent: 65 } },
  ];
}
