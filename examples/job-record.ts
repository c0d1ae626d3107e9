import { readFileSync } from 'node:fs';
import { parseJob, recheckRecord, recordJob } from 'slantpath/job';

const file = new URL('./job/tarnfell-lower-hut.json', import.meta.url);
const record = recordJob(parseJob(readFileSync(file, 'utf8')));
console.log(
  record.plan.directions
    .map(({ slot, elevationDeg }) => `${slot} ${elevationDeg.toFixed(1)}`)
    .join(', '),
);
console.log(recheckRecord(JSON.stringify(record)).kind);

const tampered = JSON.stringify(record).replace(/"elevationDeg":36\.\d+/, '"elevationDeg":40');
const check = recheckRecord(tampered);
if (check.kind === 'differs') console.log(check.differences.map(({ path }) => path).join(', '));
