/** The workers of a run: each part goes to the next that is free. */

import { Worker } from 'node:worker_threads';
import { DomainError, type DomainErrorJson } from '../../errors.js';
import type { ComputedPart, ReadColumn } from './computePart.js';
import type { ColumnsPlan } from './plan.js';

/** What a worker is asked. */
export interface PartQuestion {
  readonly part: number;
  readonly rows: number;
  readonly read: readonly ReadColumn[];
}

/** What it answers. */
export interface PartAnswer {
  readonly part: number;
  readonly computed?: ComputedPart;
  readonly refused?: DomainErrorJson;
}

/** Computes parts on other threads. */
export interface Workers {
  readonly compute: (question: PartQuestion) => Promise<ComputedPart>;
  readonly end: () => Promise<void>;
}

/** Starts `count` workers of the file `program`. */
export function startWorkers(program: URL, plan: ColumnsPlan, count: number): Workers {
  const waiting = new Map<
    number,
    { readonly done: (part: ComputedPart) => void; readonly failed: (error: unknown) => void }
  >();
  const fail = (error: unknown) => {
    for (const { failed } of waiting.values()) failed(error);
    waiting.clear();
  };
  const workers = Array.from({ length: count }, () => {
    const worker = new Worker(program, { workerData: plan });
    worker.on('error', fail);
    worker.on('message', ({ part, computed, refused }: PartAnswer) => {
      const asked = waiting.get(part);
      waiting.delete(part);
      if (computed) asked?.done(computed);
      else if (refused) asked?.failed(new DomainError(refused));
    });
    return worker;
  });
  return {
    compute: (question) =>
      new Promise((done, failed) => {
        waiting.set(question.part, { done, failed });
        const buffers = question.read.flatMap(({ values, missing }) =>
          missing ? [values.buffer, missing.buffer] : [values.buffer],
        ) as ArrayBuffer[];
        // Parts take about the same time each, so turns are as good as a queue.
        workers[question.part % count]?.postMessage(question, buffers);
      }),
    end: async () => {
      await Promise.all(workers.map((worker) => worker.terminate()));
    },
  };
}
