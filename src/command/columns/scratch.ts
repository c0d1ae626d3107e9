/** The folder beside the output in which a run keeps what it has done, so that one that was stopped goes on. */

import {
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { extname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import type { ColumnsPlan } from './plan.js';
import { refuse } from './refuse.js';
import type { FileForm } from './source.js';

/** What a run is: another plan, or a file that has changed, is another run. */
export interface RunFacts {
  readonly input: string;
  readonly bytes: number;
  readonly changedAt: number;
  readonly partRows: number;
  readonly form: FileForm;
  readonly plan: ColumnsPlan;
}

/** Facts of a file for {@link RunFacts}. */
export function fileFacts(path: string): Pick<RunFacts, 'bytes' | 'changedAt'> {
  const { size, mtimeMs } = statSync(path);
  return { bytes: size, changedAt: Math.round(mtimeMs) };
}

/** The scratch folder of an output file. */
export interface Scratch {
  readonly folder: string;
  readonly database: string;
  readonly partPath: (part: number) => string;
  readonly badPath: (part: number) => string;
}

export function scratchOf(output: string): Scratch {
  const folder = `${output}.parts`;
  const number = (part: number) => String(part).padStart(7, '0');
  return {
    folder,
    database: join(folder, 'source.duckdb'),
    partPath: (part) => join(folder, `part-${number(part)}${extname(output)}`),
    badPath: (part) => join(folder, `bad-${number(part)}.csv`),
  };
}

/** Opens the folder; what lies in it must be of the same run. */
export function openScratch({ folder }: Scratch, facts: RunFacts): { readonly goesOn: boolean } {
  const path = join(folder, 'run.json');
  const told = JSON.stringify(facts);
  if (existsSync(path)) {
    if (readFileSync(path, 'utf8') !== told)
      refuse(
        'output',
        folder,
        'a folder of the same run, with the same input and words',
        'was it left by an earlier run that is not wanted any more? Then delete it',
      );
    return { goesOn: true };
  }
  mkdirSync(folder, { recursive: true });
  writeFileSync(path, told);
  return { goesOn: false };
}

/** Puts files end to end, behind a beginning. */
export async function joinFiles(
  paths: readonly string[],
  output: string,
  beginning = '',
): Promise<void> {
  async function* all() {
    yield beginning;
    for (const path of paths) yield* createReadStream(path);
  }
  await pipeline(all, createWriteStream(`${output}.new`));
  renameSync(`${output}.new`, output);
}

/** Removes the folder of a run that has ended. */
export function closeScratch({ folder }: Scratch): void {
  rmSync(folder, { recursive: true, force: true });
}
