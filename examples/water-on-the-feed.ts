/** What a film of water or ice takes where it lies: little on the reflector, decibels on the cover of the feed. */

import { layerLoss } from 'slantpath/propagation';

// Three frequencies, the same film of a tenth of a millimetre after a shower.
for (const frequencyGHz of [4, 12, 20])
  for (const on of ['reflector', 'cover'] as const) {
    const film = layerLoss({ frequencyGHz, on, layer: 'water', thicknessMm: 0.1 });
    if (film.kind === 'loss')
      console.log(
        `${frequencyGHz} GHz, film on the ${on}: ${film.lossDb.toFixed(1)} dB, ${film.leastDb.toFixed(0)} to ${film.mostDb.toFixed(1)} dB`,
      );
  }

const ice = layerLoss({ frequencyGHz: 12, on: 'cover', layer: 'dry-ice', thicknessMm: 2 });
if (ice.kind === 'loss')
  console.log(`12 GHz, 2 mm of dry ice on the cover: ${ice.lossDb.toFixed(1)} dB`);

const snow = layerLoss({ frequencyGHz: 12, on: 'reflector', layer: 'wet-snow', thicknessMm: 30 });
if (snow.kind === 'not-known') console.log('wet snow: not to be computed; take it off');
