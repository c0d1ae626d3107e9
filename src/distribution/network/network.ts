/** Several sources that feed one tree by the inputs of its switches: satellite beside terrestrial, switches in a cascade. */

import { DomainError, inRange, object, objects } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { checkedFrequencyMHz } from '../cable/cable.js';
import { type OutletLevels, outletLevels } from '../levels/outletLevels.js';
import { compiledTree } from '../tree/compiledTree.js';
import type {
  AmplifierPart,
  CablePart,
  DistributionPart,
  DistributionSource,
  DistributionSystem,
  LossPart,
  SwitchPart,
} from '../tree/tree.js';
import { DISTRIBUTION_PART_KEYS } from '../tree/tree.js';
import { withChildren } from '../tree/withChildren.js';
import { forInput } from './forInput.js';

/** A part of the line from a source to its input: one way in, one way out. */
export type LinePart = Omit<CablePart, 'to'> | Omit<LossPart, 'to'> | Omit<AmplifierPart, 'to'>;

/** One source of a network: a unit's output, or an aerial. */
export interface NetworkSource extends DistributionSource {
  /** Name of the source, its own. */
  readonly name: string;
  /** Parts from the source to its input; none by default. */
  readonly line?: readonly LinePart[];
  /** Name of the switch that the line enters; the first part of the tree by default. */
  readonly into?: string;
  /** Name of the input there; needed where the switch tells its inputs apart. */
  readonly input?: string;
  /** Lowest frequency that it brings in MHz, 5 to 10000; default 950. */
  readonly lowestMHz?: number;
  /** Highest frequency that it brings in MHz, 5 to 10000; default 2150. */
  readonly highestMHz?: number;
}

const NETWORK_SOURCE_KEYS = {
  name: true,
  line: true,
  into: true,
  input: true,
  lowestMHz: true,
  highestMHz: true,
  levelDbuv: true,
  carrierToNoiseDb: true,
  bandwidthMHz: true,
  supply: true,
} satisfies Keys<NetworkSource>;

/** Sources, the tree that they feed, and the temperature of its cables. */
export interface DistributionNetwork {
  /** The sources, at most 64, each on an input of its own. */
  readonly sources: readonly NetworkSource[];
  /** The tree: as for one source, with `inputs` and `through` on its switches. */
  readonly tree: DistributionPart;
  /** Temperature of cables in degrees Celsius; 20 by default. */
  readonly temperatureC?: number;
}

const DISTRIBUTION_NETWORK_KEYS = {
  sources: true,
  tree: true,
  temperatureC: true,
} satisfies Keys<DistributionNetwork>;

/** Guards a network and gives its sources. */
export function checkedSources(network: DistributionNetwork): readonly NetworkSource[] {
  const { sources } = known('network', network, DISTRIBUTION_NETWORK_KEYS);
  if (!Array.isArray(sources) || sources.length === 0 || sources.length > 64)
    throw new DomainError({
      code: sources === undefined ? 'missing' : 'malformed',
      parameter: 'sources',
      received: sources,
      allowed: 'a list of 1 to 64 sources',
    });
  // What the recursions below rely on: parts of known kinds, none within itself.
  compiledTree({ source: { levelDbuv: 0 }, tree: network.tree });
  const names = new Set<string>();
  const taken = new Set<string>();
  (sources as readonly NetworkSource[]).forEach((source, index) => {
    const path = `sources[${index}]`;
    const { name, into, input } = known(path, source, NETWORK_SOURCE_KEYS);
    const refuse = (field: string, received: unknown, allowed: string) => {
      throw new DomainError({
        code: received === undefined ? 'missing' : 'inconsistent',
        parameter: `${path}.${field}`,
        received,
        allowed,
      });
    };
    objects<LinePart>(`${path}.line`, source.line ?? []).forEach((part, at) => {
      known(`${path}.line[${at}]`, part, DISTRIBUTION_PART_KEYS);
    });
    if (typeof name !== 'string' || names.has(name)) refuse('name', name, 'a name of its own');
    names.add(name);
    const place = JSON.stringify([into ?? null, input ?? null]);
    if (taken.has(place)) refuse('input', input, 'an input that no other source has');
    taken.add(place);
    const { lowestMHz, highestMHz } = rangeOf(source, path);
    if (highestMHz < lowestMHz) refuse('highestMHz', highestMHz, `at least ${lowestMHz}`);
  });
  return sources as readonly NetworkSource[];
}

/** Frequencies that a source brings. */
export function rangeOf(
  source: NetworkSource,
  path: string,
): { readonly lowestMHz: number; readonly highestMHz: number } {
  return {
    lowestMHz: checkedFrequencyMHz(`${path}.lowestMHz`, source.lowestMHz ?? 950),
    highestMHz: checkedFrequencyMHz(`${path}.highestMHz`, source.highestMHz ?? 2150),
  };
}

/** The part that a source enters: the switch of its name, else the first part. */
export function entered(network: DistributionNetwork, source: NetworkSource, path: string) {
  if (source.into === undefined) return network.tree;
  const found = switches(network.tree).find(({ name }) => name === source.into);
  if (found) return found;
  throw new DomainError({
    code: 'inconsistent',
    parameter: `${path}.into`,
    received: source.into,
    allowed: 'the name of a switch of the tree',
  });
}

/** All switches of a tree, parents before children. */
export function switches(tree: DistributionPart): readonly SwitchPart[] {
  const found: SwitchPart[] = [];
  const look = (part: DistributionPart): DistributionPart => {
    if (part.kind === 'switch') found.push(part);
    return withChildren(part, look);
  };
  look(tree);
  return found;
}

/**
 * The tree as one source of a network feeds it: its line, and behind it the switch that it enters with the figures of its input.
 *
 * @param network  Sources and tree.
 * @param source  Name of the source.
 * @returns A system for `outletLevels`, `amplifierLoads`, `supplyAlong` and the others.
 * @throws {@link DomainError} naming `source`, or the field of the network.
 * Source: definition. Accuracy: nothing is computed.
 * @example
 * ```ts
 * import { networkSystem } from 'slantpath/distribution';
 * const system = networkSystem(
 *   {
 *     sources: [{ name: 'H low', levelDbuv: 78, input: 'HL' }],
 *     tree: {
 *       kind: 'switch', lossDb: 2, inputs: [{ name: 'HL', lossDb: 3 }],
 *       outputs: [{ kind: 'outlet', name: 'class 1' }],
 *     },
 *   },
 *   'H low',
 * );
 * system.tree.kind === 'switch' ? system.tree.lossDb : 0; // => 3
 * ```
 */
export function networkSystem(network: DistributionNetwork, source: string): DistributionSystem {
  const sources = checkedSources(network);
  const index = sources.findIndex(({ name }) => name === source);
  if (index < 0)
    throw new DomainError({
      code: source === undefined ? 'missing' : 'inconsistent',
      parameter: 'source',
      received: source,
      allowed: `the name of a source (${sources.map(({ name }) => name).join(', ')})`,
    });
  return systemOf(network, sources, index);
}

/** The same by the place of the source in the list. */
export function systemOf(
  network: DistributionNetwork,
  sources: readonly NetworkSource[],
  index: number,
): DistributionSystem {
  const given = sources[index] as NetworkSource;
  const path = `sources[${index}]`;
  const { line = [], input } = given;
  const first = entered(network, given, path);
  if (first.kind === 'switch' && first.inputs !== undefined && input === undefined)
    throw new DomainError({
      code: 'missing',
      parameter: `${path}.input`,
      received: input,
      allowed: `one of ${first.inputs.map(({ name }) => name).join(', ')}`,
    });
  const tree = line.reduceRight<DistributionPart>(
    (to, part, at) => ({ ...object(`${path}.line[${at}]`, part), to }) as DistributionPart,
    forInput(first, input, 'tree'),
  );
  const {
    name: _n,
    line: _l,
    into: _into,
    input: _i,
    lowestMHz: _low,
    highestMHz: _h,
    ...source
  } = given;
  return {
    source,
    tree,
    ...(network.temperatureC === undefined
      ? {}
      : { temperatureC: inRange('temperatureC', network.temperatureC, -60, 90) }),
  };
}

/** Levels that one source brings. */
export interface SourceLevels {
  /** Name of the source. */
  readonly source: string;
  /** Its levels at every outlet and receiver that it reaches. */
  readonly outlets: readonly OutletLevels[];
}

/**
 * Levels, slope and noise of every source of a network at every outlet and receiver that it reaches.
 *
 * Each source is followed by itself at the ends of its band, and at frequencies in between if they are asked for: what the others bring stands in
 * other polarizations, bands or frequencies.
 *
 * @param network  Sources and tree.
 * @param frequenciesMHz  Frequencies in MHz, for sources that bring them; the ends of each source's band by default.
 * @throws {@link DomainError} naming the field.
 * Source: as `outletLevels`. Accuracy: as there.
 * @example
 * ```ts
 * import { networkLevels } from 'slantpath/distribution';
 * const [satellite, aerial] = networkLevels({
 *   sources: [
 *     { name: 'V low', levelDbuv: 80, input: 'VL' },
 *     { name: 'aerial', levelDbuv: 75, input: 'terrestrial', lowestMHz: 470, highestMHz: 694 },
 *   ],
 *   tree: {
 *     kind: 'switch', lossDb: 2,
 *     inputs: [{ name: 'VL' }, { name: 'terrestrial', lossDb: 18, alwaysThere: true }],
 *     outputs: [{ kind: 'outlet', name: 'class 1', lossDb: 1 }],
 *   },
 * });
 * satellite?.outlets[0]?.lowestDbuv; // => 77
 * aerial?.outlets[0]?.lowestDbuv; // => 56
 * ```
 */
export function networkLevels(
  network: DistributionNetwork,
  frequenciesMHz: ArrayLike<number> = [],
): readonly SourceLevels[] {
  const sources = checkedSources(network);
  const asked = Array.from(object('frequenciesMHz', frequenciesMHz), (value, index) =>
    checkedFrequencyMHz('frequenciesMHz', value, index),
  );
  return sources.map((source, index) => {
    const { lowestMHz, highestMHz } = rangeOf(source, `sources[${index}]`);
    const own = asked.filter((each) => each >= lowestMHz && each <= highestMHz);
    return {
      source: source.name,
      outlets: outletLevels(
        systemOf(network, sources, index),
        own.length > 0 ? own : [...new Set([lowestMHz, highestMHz])],
      ),
    };
  });
}
