/** What comes out of an output besides the input that it has chosen. */

import { outletLevels } from '../levels/outletLevels.js';
import { byFrequency } from '../tree/byFrequency.js';
import type { DistributionPart, SwitchInput } from '../tree/tree.js';
import {
  checkedSources,
  type DistributionNetwork,
  type NetworkSource,
  rangeOf,
  switches,
  systemOf,
} from './network.js';

/** A wanted source over one that was not chosen, at one outlet. */
export interface InputIsolation {
  /** Name of the outlet or receiver. */
  readonly outlet: string;
  /** Source that is chosen. */
  readonly wanted: string;
  /** Source that leaks in. */
  readonly unwanted: string;
  /** Frequency in MHz at which the wanted one stands least above the other, of the ends and the middle of what both bring. */
  readonly frequencyMHz: number;
  /** Wanted level less leaked level in dB. */
  readonly wantedAboveUnwantedDb: number;
}

/** Isolation of an input where its part gives none, dB (practice of the trade). */
const USUAL_ISOLATION_DB = 25;

/** Outlets and receivers behind the outputs of a switch itself, not of the next one in a cascade. */
function own(part: DistributionPart | null | undefined): readonly string[] {
  if (!part) return [];
  if (part.kind === 'receiver') return [part.name];
  if (part.kind === 'outlet') return [part.name, ...own(part.to)];
  if (part.kind === 'switch') return [];
  if (part.kind === 'splitter') return part.outputs.flatMap((each) => own(each));
  if (part.kind === 'tap') return [part.to, ...part.taps].flatMap((each) => own(each));
  return own(part.to);
}

/** Input by which a source comes to each outlet. */
function inputsAtOutlets(
  network: DistributionNetwork,
  source: NetworkSource,
): ReadonlyMap<string, SwitchInput> {
  const found = new Map<string, SwitchInput>();
  for (const each of switches(network.tree)) {
    const input = each.inputs?.find(({ name }) => name === source.input);
    if (input)
      for (const name of each.outputs.flatMap((output) => own(output))) found.set(name, input);
  }
  return found;
}

/**
 * How far the chosen source of each outlet stands above those that were not chosen, where both bring the same frequencies.
 *
 * The other one comes the same way, weaker by the isolation of its input at the switch that the outlet hangs on; what couples between the lines of a
 * cascade is not in it. Where one source is 15 dB stronger than another, so much less is left of the isolation.
 *
 * @throws {@link DomainError} naming the field of the network.
 * Source: addition of decibels; 25 dB where an input gives no isolation, practice of the trade. Accuracy: that of the parts' figures.
 * @example
 * ```ts
 * import { inputIsolation } from 'slantpath/distribution';
 * const [weak] = inputIsolation({
 *   sources: [
 *     { name: 'weak slot', levelDbuv: 68, input: 'A' },
 *     { name: 'strong slot', levelDbuv: 83, input: 'B' },
 *   ],
 *   tree: {
 *     kind: 'switch', lossDb: 2, inputs: [{ name: 'A' }, { name: 'B', isolationDb: 28 }],
 *     outputs: [{ kind: 'outlet', name: 'class 1' }],
 *   },
 * });
 * weak?.wantedAboveUnwantedDb; // => 13
 * ```
 */
export function inputIsolation(network: DistributionNetwork): readonly InputIsolation[] {
  const sources = checkedSources(network);
  const inputs = sources.map((source) => inputsAtOutlets(network, source));
  const levelsAt = (index: number, frequencies: readonly number[]) =>
    new Map(
      outletLevels(systemOf(network, sources, index), frequencies).map((each) => [each.name, each]),
    );
  const found: InputIsolation[] = [];
  sources.forEach((wanted, i) => {
    sources.forEach((unwanted, j) => {
      if (i === j) return;
      const a = rangeOf(wanted, `sources[${i}]`);
      const b = rangeOf(unwanted, `sources[${j}]`);
      const from = Math.max(a.lowestMHz, b.lowestMHz);
      const to = Math.min(a.highestMHz, b.highestMHz);
      if (from > to) return;
      const frequencies = [...new Set([from, (from + to) / 2, to])];
      const wantedLevels = levelsAt(i, frequencies);
      const otherLevels = levelsAt(j, frequencies);
      for (const [outlet, levels] of wantedLevels) {
        const other = otherLevels.get(outlet);
        const input = inputs[j]?.get(outlet);
        if (!other || !input || !inputs[i]?.has(outlet)) continue;
        const isolation =
          input.alwaysThere === true
            ? () => 0
            : byFrequency('isolationDb', input.isolationDb ?? USUAL_ISOLATION_DB, {
                minimum: 0,
                maximum: 200,
              });
        const margins = frequencies.map((frequencyMHz, at) => ({
          frequencyMHz,
          wantedAboveUnwantedDb:
            (levels.points[at]?.levelDbuv ?? 0) -
            (other.points[at]?.levelDbuv ?? 0) +
            isolation(frequencyMHz),
        }));
        const least = margins.reduce((x, y) =>
          y.wantedAboveUnwantedDb < x.wantedAboveUnwantedDb ? y : x,
        );
        found.push({ outlet, wanted: wanted.name, unwanted: unwanted.name, ...least });
      }
    });
  });
  return found;
}
