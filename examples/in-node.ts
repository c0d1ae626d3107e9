/** A job file from disk to its plan. */

import { readFileSync } from 'node:fs';
import { parseJob, planJob } from 'slantpath/job';
import { englishWords } from 'slantpath/sheet';

const file = new URL('./job/tarnfell-lower-hut.json', import.meta.url);
const plan = planJob(parseJob(readFileSync(file, 'utf8')));

for (const { slot, azimuthDeg, elevationDeg } of plan.directions)
  console.log(`${slot}: azimuth ${azimuthDeg?.toFixed(1)}, elevation ${elevationDeg.toFixed(1)}`);
for (const caution of plan.cautions.slice(0, 1))
  console.log(englishWords.codes.cautions[caution.topic]);
