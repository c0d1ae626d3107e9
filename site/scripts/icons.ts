/** Draws the icons in site/public/ from favicon.svg; run by hand when that changes. */

import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

const folder = new URL('../public/', import.meta.url);
const drawing = await readFile(new URL('favicon.svg', folder));
const path = (name: string) => fileURLToPath(new URL(name, folder));

for (const size of [192, 512])
  await sharp(drawing, { density: 72 * (size / 32) })
    .resize(size)
    .png({ compressionLevel: 9 })
    .toFile(path(`icon-${size}.png`));
// The icon on the start screen of a phone: it may have no transparent corners.
await sharp(drawing, { density: 72 * (180 / 32) })
  .resize(180)
  .flatten({ background: '#14495c' })
  .png({ compressionLevel: 9 })
  .toFile(path('icon-touch-180.png'));
await sharp(drawing, { density: 72 * 12 })
  .resize(384)
  .extend({ top: 64, bottom: 64, left: 64, right: 64, background: '#14495c' })
  .png({ compressionLevel: 9 })
  .toFile(path('icon-maskable-512.png'));
