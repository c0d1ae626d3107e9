/** The full-resolution maps that may lie beside the checkout (`../shared/climate`); tests must pass without them. */

import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Maps, mapsOf } from '../../.ci/climate/maps.js';

const folder = fileURLToPath(new URL('../../../shared/climate', import.meta.url));

/** The maps by name, or `undefined` where they are not there. */
export function sharedMaps(): Maps | undefined {
  return existsSync(`${folder}/manifest.json`) ? mapsOf(folder) : undefined;
}
