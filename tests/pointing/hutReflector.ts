/** The reflector of a hut for several slots, and what its tests ask of an answer. */

import type { severalSlots } from 'slantpath/pointing';

export const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
export const reflector = { diameterM: 0.9, focalLengthM: 0.54, offsetAngleDeg: 24 };
/** A slot received in the Ku band. */
export const ku = (orbitalLongitudeDeg: number, weightRatio = 1) => ({
  orbitalLongitudeDeg,
  frequenciesGHz: [11.7],
  weightRatio,
});

/** The worst weighted loss in dB; NaN where a slot is hidden. */
export const worst = (found: ReturnType<typeof severalSlots>): number =>
  found.kind === 'placed' ? found.worstWeightedLossDb : Number.NaN;
/** How the losses were found: from ray lengths or, beyond 3 dB, from fields. */
export const lossesOf = (found: ReturnType<typeof severalSlots>): 'rays' | 'fields' =>
  found.kind === 'placed' && found.slots.some(({ bands }) => bands.some((b) => b.beyondModel))
    ? 'fields'
    : 'rays';
