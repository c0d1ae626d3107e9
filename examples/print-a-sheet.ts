/** The job sheet of a job file for the printer, in two languages; the HTML goes into a file or a hidden frame. */

import { readFileSync } from 'node:fs';
import { parseJob, recordJob } from 'slantpath/job';
import { germanWords, jobSheet, jobSheetHtml } from 'slantpath/sheet';

const file = new URL('./job/tarnfell-lower-hut.json', import.meta.url);
const record = recordJob(parseJob(readFileSync(file, 'utf8')));
const html = jobSheetHtml(record, { visit: 'before' });
console.log(html.split('\n', 1)[0], html.includes('@page'));
for (const words of [undefined, germanWords])
  console.log(
    jobSheet(record, { visit: 'before', ...(words ? { words } : {}) })
      .split('\n')
      .filter((line) => line.trim() !== '')
      .slice(0, 3)
      .join('\n'),
  );
