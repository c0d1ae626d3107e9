/** The ways from a receiving unit to the outlets: lines into switches joined with the trees behind them. */

import type { DistributionPart } from '../../distribution/index.js';
import { forInput } from '../../distribution/internal.js';
import type { JobCarrier, JobFile } from '../file/jobFile.js';
import { type PartName, partNames } from '../file/partNames.js';
import { linesOf, type Served } from './tuning.js';

/** One tree as a unit feeds it, and where errors of its parts belong in the file. */
export interface Branch {
  readonly tree: DistributionPart;
  /** Path in the job file of a parameter of the joined tree. */
  readonly pathOf: (parameter: string) => string;
}

/** Branches that a carrier's unit feeds; none where the job has lines and no line carries it. */
export function branchesOf(job: JobFile, carrier: JobCarrier, served: Served): readonly Branch[] {
  const { distribution } = job;
  if (!distribution) return [];
  if (!distribution.lines)
    return distribution.trees.map((tree, index) => ({
      tree,
      pathOf: (parameter) => parameter.replace(/^tree/, `distribution.trees[${index}]`),
    }));
  const parts = distribution.trees.flatMap((tree, index) =>
    partNames(tree, `distribution.trees[${index}]`),
  );
  return linesOf(job, carrier, served).flatMap((line): Branch[] => {
    const at = distribution.lines?.indexOf(line) ?? 0;
    const end: PartName | undefined =
      line.into === undefined
        ? parts[0]
        : parts.find(({ kind, name }) => kind === 'switch' && name === line.into);
    if (!end) return [];
    const chain = line.parts ?? [];
    const tree = chain.reduceRight<DistributionPart>(
      (to, part) => ({ ...part, to }) as DistributionPart,
      forInput(end.part, line.input, 'tree'),
    );
    return [
      {
        tree,
        pathOf: (parameter) => {
          const steps = /^tree((?:\.to)*)/.exec(parameter);
          if (!steps) return parameter;
          const depth = Math.min((steps[1] ?? '').length / 3, chain.length);
          const rest = parameter.slice('tree'.length + 3 * depth);
          return depth < chain.length
            ? `distribution.lines[${at}].parts[${depth}]${rest}`
            : `${end.path}${rest}`;
        },
      },
    ];
  });
}
