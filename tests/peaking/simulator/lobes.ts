/** All lobes of the coverage table by name: round apertures, and wavefronts with errors. */

import { LOBES, type Lobe, type LobeName, lobeOf } from './aperture.js';
import { cutOf, WAVEFRONTS, type WavefrontName } from './wavefront.js';

export type AnyLobe = LobeName | WavefrontName;

const kept = new Map<WavefrontName, Lobe>();

/** The lobe of a name, tabulated at its first use; of a wavefront the cut along the first axis. */
export function anyLobe(name: AnyLobe): Lobe {
  if (name in LOBES) return lobeOf(name as LobeName);
  const lobe = kept.get(name as WavefrontName) ?? cutOf(WAVEFRONTS[name as WavefrontName], 0);
  kept.set(name as WavefrontName, lobe);
  return lobe;
}
