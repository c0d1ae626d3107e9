/** A worker: takes the columns of a part, gives the columns that are added; nothing is copied on the way. */

import { parentPort, workerData } from 'node:worker_threads';
import { isDomainError } from '../../errors.js';
import { computePart } from './computePart.js';
import type { ColumnsPlan } from './plan.js';
import type { PartAnswer, PartQuestion } from './workers.js';

const plan = workerData as ColumnsPlan;

parentPort?.on('message', ({ part, rows, read }: PartQuestion) => {
  try {
    const computed = computePart(plan, rows, read);
    const answer: PartAnswer = { part, computed };
    parentPort?.postMessage(
      answer,
      computed.columns.map(({ buffer }) => buffer as ArrayBuffer),
    );
  } catch (error) {
    // What no row alone is to blame for: a number of the command line that is out of range.
    if (!isDomainError(error)) throw error;
    const answer: PartAnswer = { part, refused: error.toJSON() };
    parentPort?.postMessage(answer);
  }
});
