/** References inside a distribution: names of test points and switches, units of lines, trees that can be computed. */

import {
  type DistributionPart,
  type DistributionSystem,
  outletLevels,
} from '../../distribution/index.js';
import type { DomainError } from '../../errors.js';
import type { JobFile } from './jobFile.js';
import { partNames } from './partNames.js';
import { type Fault, FIXED_POINTS, held, listed, unique } from './referenceChecks.js';

/** Trees, lines and terrestrial feed. */
export function distribution(job: JobFile, fault: Fault, faults: DomainError[]): void {
  const { trees = [], lines = [], terrestrial } = job.distribution ?? {};
  const names = new Set<string>();
  const switches: string[] = [];
  trees.forEach((tree, at) => {
    for (const { path, name, kind } of partNames(tree, `distribution.trees[${at}]`)) {
      if (kind === 'switch' && name !== undefined) switches.push(name);
      if (kind !== 'outlet' && kind !== 'receiver') continue;
      if (name === undefined) continue;
      if ((FIXED_POINTS as readonly string[]).includes(name))
        fault(`${path}.name`, name, `another name: ${name} is a test point of every job`);
      if (names.has(name)) fault(`${path}.name`, name, 'a name of its own');
      names.add(name);
    }
    held(
      faults,
      (parameter) => parameter.replace(/^(tree|input|system)/, `distribution.trees[${at}]`),
      () => {
        outletLevels(probe(tree), [1000]);
      },
    );
  });
  unique(
    () => 'distribution.trees',
    switches,
    (path, received) => fault(path, received, 'of switches with names of their own'),
  );
  const known = (job.units ?? []).map(({ name }) => name);
  lines.forEach((line, at) => {
    const path = `distribution.lines[${at}]`;
    const unit = job.units?.find(({ name }) => name === line.unit);
    if (!unit) fault(`${path}.unit`, line.unit, `the name of a receiving unit (${listed(known)})`);
    if (line.band !== undefined && unit && !unit.bands?.some(({ name }) => name === line.band))
      fault(
        `${path}.band`,
        line.band,
        `a band of ${unit.name} (${listed((unit.bands ?? []).map(({ name }) => name))})`,
      );
    if (line.into !== undefined && !switches.includes(line.into))
      fault(`${path}.into`, line.into, `the name of a switch (${listed(switches)})`);
    const places: string[] = [];
    const chain = (line.parts ?? []).reduceRight<DistributionPart>(
      (to, part) => ({ ...part, to }) as DistributionPart,
      { kind: 'outlet', name: 'end' },
    );
    held(
      faults,
      (parameter) =>
        parameter.replace(/^tree((?:\.to)*)/, (_, steps: string) => {
          places.push(steps);
          return `${path}.parts[${steps.length / 3}]`;
        }),
      () => {
        outletLevels(probe(chain), [1000]);
      },
    );
  });
  if (terrestrial && !switches.includes(terrestrial.into))
    fault(
      'distribution.terrestrial.into',
      terrestrial.into,
      `the name of a switch (${listed(switches)})`,
    );
}

/** A source before a tree, to see whether the tree can be computed. */
const probe = (tree: DistributionPart): DistributionSystem => ({
  source: { levelDbuv: 75, carrierToNoiseDb: 15 },
  tree,
});
