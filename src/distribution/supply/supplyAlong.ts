/** Voltage and current of the supply that runs from a receiver up the cable. */

import { DomainError, inRange } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { checkedCable } from '../cable/cable.js';
import { compiledTree, type Stage } from '../tree/compiledTree.js';
import { checkedNeed } from '../tree/partGuards.js';
import type { DistributionSystem, SupplyNeed } from '../tree/tree.js';

/** Where the supply is fed in. */
export interface SupplyFeed {
  /** Name of the outlet or receiver that feeds. */
  readonly from: string;
  /** Voltage there in volts. */
  readonly voltageV: number;
  /** Highest current that it can give in amperes; 0.35 by default (practice of the trade, 0.35 to 0.5). */
  readonly limitA?: number;
}

const SUPPLY_FEED_KEYS = { from: true, voltageV: true, limitA: true } satisfies Keys<SupplyFeed>;

/** Supply at one part on the way, in the order from the feed to the source. */
export interface SupplyPoint {
  /** Name of the part; `source` for the outdoor unit. */
  readonly name: string;
  /** Voltage at the side of the part that faces the feed, in volts. */
  readonly voltageV: number;
  /** Current that flows into it from the feed, in amperes. */
  readonly currentA: number;
  /** Voltage lost across the part in volts. */
  readonly dropV: number;
  /** What the part itself needs; `null` for a part that takes nothing. */
  readonly need: SupplyNeed | null;
  /** Voltage less the least that it needs, in volts; `null` for a part that takes nothing. */
  readonly marginV: number | null;
}

/** The supply along a way; read `kind` first. */
export type SupplyAlong = {
  /**
   * `enough`: every powered part gets its voltage and the feed its limit. `too-low`: a part gets too little.
   * `too-much-current`: the feed cannot give what is asked. `blocked`: a part lets no direct current through, and
   * something behind it needs it. `self-powered`: a mains-fed switch feeds the source.
   */
  readonly kind: 'enough' | 'too-low' | 'too-much-current' | 'blocked' | 'self-powered';
  /** Part concerned: the first with too little, the one that blocks, the mains-fed switch; else `null`. */
  readonly at: string | null;
  /** Current drawn from the feed in amperes. */
  readonly currentA: number;
  /** Parts from the feed to the source or to where the way ends. */
  readonly points: readonly SupplyPoint[];
};

function needOf(stage: Stage): SupplyNeed | undefined {
  const { part, path } = stage;
  if (part.kind !== 'switch' && part.kind !== 'amplifier') return undefined;
  return part.supply === undefined ? undefined : checkedNeed(`${path}.supply`, part.supply);
}

/** Whether direct current passes a part from one of its ports towards the source. */
function passes({ part }: Stage, port: number): boolean {
  switch (part.kind) {
    case 'splitter':
      return part.passesSupply?.[port] ?? true;
    case 'tap':
      // Taps usually block direct current, through ports usually pass it: what is not said is taken so.
      return port === 0 ? (part.passesSupply ?? true) : (part.tapsPassSupply ?? false);
    case 'connector':
    case 'attenuator':
    case 'equaliser':
    case 'amplifier':
      return part.passesSupply ?? true;
    default:
      return true;
  }
}

/** Resistance in ohms and fixed drop in volts of a part. */
function obstacle({ part, path }: Stage): { readonly ohms: number; readonly volts: number } {
  if (part.kind === 'cable') {
    const { loopResistanceOhmPer100m } = checkedCable(`${path}.cable`, part.cable);
    // Loop resistance has core and braid in it, so the length counts once.
    return { ohms: (loopResistanceOhmPer100m * part.lengthM) / 100, volts: 0 };
  }
  if (part.kind === 'splitter')
    return { ohms: 0, volts: inRange(`${path}.diodeDropV`, part.diodeDropV ?? 0.7, 0, 5) };
  return { ohms: 0, volts: 0 };
}

/**
 * Voltage and current at each part on the way from a feeding outlet or receiver up to the source.
 *
 * Each part draws its own constant current; a cable loses I R (both ways), a splitter the drop of its diode. One feed
 * is looked at; the diodes of splitters keep the others out while theirs is no higher.
 *
 * @param system  The distribution; `source.supply`, and `supply` of switches and amplifiers, say what is needed.
 * @param feed  Which outlet or receiver feeds, at which voltage.
 * @throws {@link DomainError} naming `from` for a name that is no outlet or receiver, or a field.
 * Source: Ohm's law with the loop resistance of the cable; 0.7 V diode by practice of the trade.
 * Accuracy: exact to rounding for the figures given; braids differ by construction.
 * @example
 * ```ts
 * import { genericCable, supplyAlong } from 'slantpath/distribution';
 * const supply = supplyAlong(
 *   {
 *     source: { levelDbuv: 75, supply: { currentA: 0.15, minimumVoltageV: 16 } },
 *     tree: { kind: 'cable', cable: genericCable('series-6'), lengthM: 60, to: { kind: 'receiver', name: 'set' } },
 *   },
 *   { from: 'set', voltageV: 18 },
 * );
 * supply.points.at(-1)?.voltageV.toFixed(2); // => '17.63'
 * ```
 */
export function supplyAlong(system: DistributionSystem, feed: SupplyFeed): SupplyAlong {
  const stages = compiledTree(system);
  known('feed', feed, SUPPLY_FEED_KEYS);
  const start = stages.findIndex(
    ({ part, name }) => name === feed.from && (part.kind === 'outlet' || part.kind === 'receiver'),
  );
  if (start < 0)
    throw new DomainError({
      code: feed.from === undefined ? 'missing' : 'inconsistent',
      parameter: 'from',
      received: feed.from,
      allowed: 'the name of an outlet or receiver of the tree',
    });
  const voltageV = inRange('voltageV', feed.voltageV, 0, 60, 'is it given in mV?');
  const limitA = inRange('limitA', feed.limitA ?? 0.35, 0, 20, 'is it given in mA?');
  // The source stands outside the tree and so is no stage; it is joined to the end of the way.
  const sourceNeed =
    system.source.supply === undefined
      ? undefined
      : checkedNeed('source.supply', system.source.supply);
  const way = wayToSource(stages, start);
  // From the source downwards each part adds what it draws.
  let current = way.end === 'source' ? (sourceNeed?.currentA ?? 0) : 0;
  const currents: number[] = [];
  // Currents first, against the voltages' direction: what a cable carries is known only from what hangs above it.
  for (const stage of [...way.stages].reverse()) {
    current += needOf(stage)?.currentA ?? 0;
    currents.unshift(current);
  }
  const points: SupplyPoint[] = [];
  let voltage = voltageV;
  way.stages.forEach((stage, i) => {
    const { ohms, volts } = obstacle(stage);
    const currentA = valueAt(currents, i);
    const own = needOf(stage);
    // A diode without current drops nothing; a fixed drop there would blame a way that is merely idle.
    const dropV = ohms * currentA + (currentA > 0 ? volts : 0);
    // Loads draw constant current however low the voltage, so a long way could reckon below 0; no meter shows that.
    points.push(pointOf(stage.name, Math.max(0, voltage), currentA, dropV, own));
    voltage -= dropV;
  });
  if (way.end === 'source')
    points.push(pointOf('source', Math.max(0, voltage), sourceNeed?.currentA ?? 0, 0, sourceNeed));
  const short = points.find((point) => point.marginV !== null && point.marginV < 0);
  const currentA = currents[0] ?? current;
  // A part that blocks is a fault only where something beyond it needs supply.
  const blocked = way.end === 'blocked' && needsBeyond(stages, way.last, sourceNeed);
  // The order is that of the repair: where nothing arrives, too little voltage or too much current says nothing.
  const kind = blocked
    ? 'blocked'
    : short
      ? 'too-low'
      : currentA > limitA
        ? 'too-much-current'
        : way.end === 'mains'
          ? 'self-powered'
          : 'enough';
  const at = blocked || kind === 'self-powered' ? (way.last?.name ?? null) : (short?.name ?? null);
  return { kind, at, currentA, points };
}

function pointOf(
  name: string,
  voltageV: number,
  currentA: number,
  dropV: number,
  need: SupplyNeed | undefined,
): SupplyPoint {
  return {
    name,
    voltageV,
    currentA,
    dropV,
    need: need ?? null,
    marginV: need ? voltageV - need.minimumVoltageV : null,
  };
}

interface Way {
  readonly stages: readonly Stage[];
  readonly end: 'source' | 'blocked' | 'mains';
  /** The part that ends the way early. */
  readonly last: Stage | undefined;
}

/** Parts from the feed upwards to the source, or to the part at which the supply ends. */
function wayToSource(stages: readonly Stage[], start: number): Way {
  const list: Stage[] = [];
  // Upwards there is one way only: every part has one parent.
  for (let at = start, from = 0; at >= 0; ) {
    const stage = stages[at] as Stage;
    list.push(stage);
    if (!passes(stage, from)) return { stages: list, end: 'blocked', last: stage };
    if (stage.part.kind === 'switch' && stage.part.feedsSource === true)
      return { stages: list, end: 'mains', last: stage };
    from = stage.port;
    at = stage.parent;
  }
  return { stages: list, end: 'source', last: undefined };
}

/** Whether something between a blocking part and the source asks for supply. */
function needsBeyond(
  stages: readonly Stage[],
  last: Stage | undefined,
  sourceNeed: SupplyNeed | undefined,
): boolean {
  for (let at = last?.parent ?? -1; at >= 0; ) {
    const stage = stages[at] as Stage;
    if (needOf(stage)) return true;
    // A mains-fed switch feeds whatever stands above it, so nothing beyond it hangs on this feed.
    if (stage.part.kind === 'switch' && stage.part.feedsSource === true) return false;
    at = stage.parent;
  }
  return sourceNeed !== undefined;
}
