/** Writes the test vectors for the package: `tsx .ci/vectors.ts`, into `dist/vectors/`. */

import { unaccounted } from './vectors/build.js';
import { writeVectors } from './vectors/write.js';

const missing = unaccounted();
if (missing.length > 0) throw new Error(`neither vectors nor a reason: ${missing.join(', ')}`);
const { tables, rows } = writeVectors('dist/vectors');
console.log(`vectors: ${tables} tables, ${rows} rows`);
