/** What a mains-fed switch gives the units on its inputs: voltage that arrives, current for each, and all of them together. */

import { inRange, objects, within } from '../../errors.js';
import { checkedCable } from '../cable/cable.js';
import { checkedNeed } from '../tree/partGuards.js';
import { checkedSources, type DistributionNetwork, entered } from './network.js';

/** Supply of one source by the input that it feeds; read `kind` first. */
export interface InputSupply {
  /**
   * `enough`: the unit and the amplifiers of its line get their voltage, and the input gives the current. `too-low`: one gets too little.
   * `too-much-current`: the input cannot give what is asked. `blocked`: a part of the line lets no direct current through. `not-fed`: the
   * input gives no supply, so that receivers or a supply of its own must.
   */
  readonly kind: 'enough' | 'too-low' | 'too-much-current' | 'blocked' | 'not-fed';
  /** Name of the source. */
  readonly source: string;
  /** Name of the switch; `null` where it has none. */
  readonly switch: string | null;
  /** Name of the input; `null` where the switch does not tell its inputs apart. */
  readonly input: string | null;
  /** Current that the input gives in amperes. */
  readonly currentA: number;
  /** Voltage that arrives at the source in volts; `null` where nothing does. */
  readonly voltageV: number | null;
}

/**
 * Supply that the switches of a network feed up the lines of their inputs.
 *
 * @returns One entry for each source that takes supply or has a powered amplifier on its line.
 * @throws {@link DomainError} naming the field of the network.
 * Source: Ohm's law with the loop resistance of the cable. Accuracy: exact for the figures given.
 * @example
 * ```ts
 * import { genericCable, inputSupply } from 'slantpath/distribution';
 * const [fed] = inputSupply({
 *   sources: [
 *     {
 *       name: 'V low', levelDbuv: 78, input: 'VL', supply: { currentA: 0.2, minimumVoltageV: 11.5 },
 *       line: [{ kind: 'cable', cable: genericCable('series-6'), lengthM: 40 }],
 *     },
 *   ],
 *   tree: {
 *     kind: 'switch', lossDb: 2, inputs: [{ name: 'VL', feed: { voltageV: 13, limitA: 0.4 } }],
 *     outputs: [{ kind: 'outlet', name: 'class 1' }],
 *   },
 * });
 * fed?.voltageV?.toFixed(2); // => '12.67'
 * ```
 */
export function inputSupply(network: DistributionNetwork): readonly InputSupply[] {
  return checkedSources(network).flatMap((source, index): InputSupply[] => {
    const path = `sources[${index}]`;
    const part = entered(network, source, path);
    const input =
      part.kind === 'switch' ? part.inputs?.find(({ name }) => name === source.input) : undefined;
    const feed = input?.feed;
    const own =
      source.supply === undefined ? undefined : checkedNeed(`${path}.supply`, source.supply);
    const line = objects(`${path}.line`, source.line ?? []);
    const needs = line.map((each, at) =>
      each.kind === 'amplifier' && each.supply !== undefined
        ? checkedNeed(`${path}.line[${at}].supply`, each.supply)
        : undefined,
    );
    if (own === undefined && needs.every((need) => need === undefined)) return [];
    const head = {
      source: source.name,
      switch: part.kind === 'switch' ? (part.name ?? null) : null,
      input: input?.name ?? null,
    };
    let currentA = own?.currentA ?? 0;
    for (const need of needs) currentA += need?.currentA ?? 0;
    if (feed === undefined) return [{ ...head, kind: 'not-fed', currentA: 0, voltageV: null }];
    // From the switch up the line: each amplifier takes its own, so that less flows beyond it.
    let voltage = feed.voltageV;
    let flows = currentA;
    let low = false;
    let blocked = false;
    for (let at = line.length - 1; at >= 0 && !blocked; at -= 1) {
      const each = line[at];
      const need = needs[at];
      if (need) {
        low ||= voltage < need.minimumVoltageV;
        flows -= need.currentA;
      }
      if (each?.kind === 'cable') {
        const cable = within(path, () => checkedCable(`line[${at}].cable`, each.cable));
        voltage -=
          (flows *
            cable.loopResistanceOhmPer100m *
            inRange(`${path}.line[${at}].lengthM`, each.lengthM, 0, 10_000)) /
          100;
      } else blocked = flows > 0 && each?.passesSupply === false;
    }
    const voltageV = blocked ? null : Math.max(0, voltage);
    low ||= own !== undefined && voltageV !== null && voltageV < own.minimumVoltageV;
    const kind = blocked
      ? 'blocked'
      : low
        ? 'too-low'
        : currentA > feed.limitA
          ? 'too-much-current'
          : 'enough';
    return [{ ...head, kind, currentA, voltageV }];
  });
}
