/** The tree guarded once and laid flat, parents before children. */

import { DomainError, inRange, oneOf } from '../../errors.js';
import { known } from '../../keys.js';
import { checkedCable, checkedTemperatureC, runLossDb } from '../cable/cable.js';
import { byFrequency } from './byFrequency.js';
import { checkedNeed, checkPart } from './partGuards.js';
import type { DecibelsByFrequency, DistributionPart, DistributionSystem } from './tree.js';
import {
  DISTRIBUTION_PART_KEYS,
  DISTRIBUTION_SOURCE_KEYS,
  DISTRIBUTION_SYSTEM_KEYS,
} from './tree.js';

/** One passage through a part: from its input to one of its ports. */
export interface Stage {
  readonly part: DistributionPart;
  /** Name on the drawing or kind and number. */
  readonly name: string;
  /** Where it stands in the input, for messages. */
  readonly path: string;
  /** Index of the stage that feeds it; -1 for the first. */
  readonly parent: number;
  /** Port of the parent that it hangs on: 0 for the only output or the through port, then the taps. */
  readonly port: number;
  /** Gain in dB from the input of the part to one of its ports; a loss is negative. */
  readonly gainDb: (frequencyMHz: number, port: number) => number;
}

const MOST_PARTS = 2000;
const DEEPEST = 200;
const LOSS = { minimum: 0, maximum: 200 };
const KINDS = [
  'cable',
  'connector',
  'attenuator',
  'equaliser',
  'splitter',
  'tap',
  'switch',
  'amplifier',
  'outlet',
  'receiver',
] as const;

/** Children of a part by port; closed ports are `null`. */
function childrenOf(part: DistributionPart): readonly (DistributionPart | null)[] {
  switch (part.kind) {
    case 'splitter':
      return part.outputs;
    case 'switch':
      // The way on to the next switch of a cascade counts as the port after the outputs.
      return part.through === undefined ? part.outputs : [...part.outputs, part.through];
    case 'tap':
      return [part.to, ...part.taps];
    case 'receiver':
      return [];
    case 'outlet':
      return part.to === undefined ? [] : [part.to];
    default:
      return [part.to];
  }
}

/** Guards a tree and lays it flat. */
export function compiledTree(system: DistributionSystem): readonly Stage[] {
  known('system', system, DISTRIBUTION_SYSTEM_KEYS);
  const temperatureC = checkedTemperatureC(system.temperatureC);
  known('source', system.source, DISTRIBUTION_SOURCE_KEYS);
  if (system.source.supply !== undefined) checkedNeed('source.supply', system.source.supply);
  const stages: Stage[] = [];
  const counts = new Map<string, number>();
  const names = new Set<string>();
  // Depth first, parents before children: whoever reads the list can carry a level or a temperature along in one pass.
  const visit = (
    part: DistributionPart,
    path: string,
    parent: number,
    port: number,
    depth: number,
  ): void => {
    known(path, part, DISTRIBUTION_PART_KEYS);
    oneOf(`${path}.kind`, part.kind, KINDS);
    // A part that contains itself would recurse without end.
    if (depth > DEEPEST || stages.length >= MOST_PARTS)
      throw new DomainError({
        code: 'out-of-range',
        parameter: path,
        received: part,
        allowed: `at most ${DEEPEST} parts deep and ${MOST_PARTS} parts in all`,
        slip: 'does a part contain itself?',
      });
    // Parts without a name are numbered by kind in the order of the drawing, so that messages can name them.
    const count = (counts.get(part.kind) ?? 0) + 1;
    counts.set(part.kind, count);
    const name = nameOf(part, path, count, names);
    const index = stages.length;
    // The gain is a function made here, with its guards done, because levels ask it for each frequency.
    stages.push({ part, name, path, parent, port, gainDb: gainOf(part, path, temperatureC) });
    checkPorts(part, path);
    checkPart(part, path);
    childrenOf(part).forEach((child, childPort) => {
      // A closed port has nothing behind it; it still counts as a port, so the numbers of the others stay.
      if (child !== null)
        visit(child, `${path}.${portPath(part, childPort)}`, index, childPort, depth + 1);
    });
  };
  visit(system.tree, 'tree', -1, 0, 0);
  if (!stages.some(({ part }) => part.kind === 'outlet' || part.kind === 'receiver'))
    throw new DomainError({
      code: 'empty',
      parameter: 'tree',
      received: system.tree,
      allowed: 'a tree with at least one outlet or receiver',
    });
  return stages;
}

function portPath(part: DistributionPart, port: number): string {
  if (part.kind === 'switch' && port === part.outputs.length) return 'through';
  if (part.kind === 'splitter' || part.kind === 'switch') return `outputs[${port}]`;
  return part.kind === 'tap' && port > 0 ? `taps[${port - 1}]` : 'to';
}

function nameOf(part: DistributionPart, path: string, count: number, names: Set<string>): string {
  // Outlets and receivers are what a result speaks of, so only they must be told apart by name.
  const named = part.name !== undefined || part.kind === 'outlet' || part.kind === 'receiver';
  if (named && (typeof part.name !== 'string' || part.name.trim() === ''))
    throw new DomainError({
      code: part.name === undefined ? 'missing' : 'malformed',
      parameter: `${path}.name`,
      received: part.name,
      allowed: 'a name',
    });
  const name = part.name ?? `${part.kind} ${count}`;
  if (named && names.has(name))
    throw new DomainError({
      code: 'inconsistent',
      parameter: `${path}.name`,
      received: name,
      allowed: 'a name that no other part of the tree has',
    });
  names.add(name);
  return name;
}

function checkPorts(part: DistributionPart, path: string): void {
  const list =
    part.kind === 'splitter' || part.kind === 'switch'
      ? { field: 'outputs', ports: part.outputs }
      : part.kind === 'tap'
        ? { field: 'taps', ports: part.taps }
        : undefined;
  if (list === undefined) return;
  if (!Array.isArray(list.ports) || list.ports.length === 0)
    throw new DomainError({
      code: list.ports === undefined ? 'missing' : 'empty',
      parameter: `${path}.${list.field}`,
      received: list.ports,
      allowed: 'a list of at least one port',
    });
}

/** Gain of a part from its input to each port. */
function gainOf(
  part: DistributionPart,
  path: string,
  temperatureC: number,
): (frequencyMHz: number, port: number) => number {
  const loss = (field: string, value: DecibelsByFrequency, limits = LOSS) => {
    const lossDb = byFrequency(`${path}.${field}`, value, limits);
    return (frequencyMHz: number) => -lossDb(frequencyMHz);
  };
  switch (part.kind) {
    case 'cable': {
      const cable = checkedCable(`${path}.cable`, part.cable);
      const lengthM = inRange(`${path}.lengthM`, part.lengthM, 0, 10_000);
      return (frequencyMHz) => 0 - runLossDb(cable, lengthM, frequencyMHz, temperatureC);
    }
    case 'amplifier':
      return byFrequency(`${path}.gainDb`, part.gainDb, { minimum: -20, maximum: 80 });
    case 'tap': {
      const through = loss('throughLossDb', part.throughLossDb);
      const tap = loss('tapLossDb', part.tapLossDb);
      return (frequencyMHz, port) => (port === 0 ? through : tap)(frequencyMHz);
    }
    case 'switch': {
      // A switch may amplify, which is a negative loss here.
      const across = loss('lossDb', part.lossDb, { minimum: -40, maximum: 200 });
      if (part.through === undefined) return across;
      const along = loss('throughLossDb', part.throughLossDb ?? 0);
      return (frequencyMHz, port) => (port === part.outputs?.length ? along : across)(frequencyMHz);
    }
    case 'splitter': {
      checkPorts(part, path);
      // A passive splitter cannot lose less than it shares out; 0.05 dB are left to the rounding of data sheets.
      const least = 10 * Math.log10(part.outputs.length) - 0.05;
      return loss('lossDb', part.lossDb, { minimum: Math.max(0, least), maximum: 200 });
    }
    case 'outlet':
      return loss('lossDb', part.lossDb ?? 0);
    case 'receiver':
      return () => 0;
    default:
      return loss('lossDb', part.lossDb);
  }
}
