/** Section of the plan: what comes by the inputs of switches, terrestrial beside satellite, and what leaks from one to another. */

import {
  type DistributionNetwork,
  type DistributionPart,
  type InputSupply,
  inputIsolation,
  inputSupply,
  type NetworkSource,
  outletLevels,
} from '../../distribution/index.js';
import { forInput } from '../../distribution/internal.js';
import type { JobFile, JobLine } from '../file/jobFile.js';
import { partNames } from '../file/partNames.js';
import type { SignalPlan } from './signals.js';
import { linesOf, servedBy, type TuningPlan } from './tuning.js';

/** Terrestrial signals at one outlet. */
export interface TerrestrialPlan {
  /** Name of the outlet or receiver. */
  readonly outlet: string;
  /** Level at the lowest frequency that the aerial brings, in dBuV. */
  readonly lowEndDbuv: number;
  /** Level at the highest one. */
  readonly highEndDbuv: number;
  /** Limits of the job in dBuV; `null` where none is set. */
  readonly minimumDbuv: number | null;
  readonly maximumDbuv: number | null;
  /** Both ends against the limits; `null` where there are none. */
  readonly kind: 'inside' | 'too-low' | 'too-high' | null;
}

/** A carrier of one input over what another input leaks, at the outlet where it stands least above it. */
export interface InputLeakPlan {
  readonly outlet: string;
  readonly slot: string;
  readonly carrier: string;
  /** Input that leaks. */
  readonly unwanted: string;
  /** Wanted level less leaked level in dB. */
  readonly wantedAboveUnwantedDb: number;
  /** Ratio that the mode of the carrier needs in dB; `null` without a mode. */
  readonly requiredDb: number | null;
}

/** What comes by the inputs of switches. */
export interface InputsPlan {
  readonly terrestrial: readonly TerrestrialPlan[];
  readonly leaks: readonly InputLeakPlan[];
  /** Supply that mains-fed switches give the units on their inputs. */
  readonly supplies: readonly InputSupply[];
}

/** Frequencies of terrestrial television where the job does not say, in MHz: ITU Region 1 after the 700 MHz band went to mobile radio. */
const TERRESTRIAL_MHZ = { lowest: 470, highest: 694 };

/** Everything about the inputs of the switches of a job. */
export function inputsPlan(
  job: JobFile,
  signals: readonly SignalPlan[],
  tuning: readonly TuningPlan[],
): InputsPlan {
  const networks = networksOf(job, signals, tuning);
  return {
    terrestrial: terrestrialPlans(job),
    leaks: networks.flatMap(leaksOf),
    supplies: networks.flatMap(({ network }) => inputSupply(network)),
  };
}

function terrestrialPlans(job: JobFile): readonly TerrestrialPlan[] {
  const aerial = job.distribution?.terrestrial;
  const found = (job.distribution?.trees ?? [])
    .flatMap((tree) => partNames(tree, ''))
    .find(({ kind, name }) => kind === 'switch' && name === aerial?.into)?.part;
  if (!aerial || found?.kind !== 'switch') return [];
  const input = aerial.input ?? found.inputs?.find(({ alwaysThere }) => alwaysThere)?.name;
  const { minimumDbuv = null, maximumDbuv = null } = aerial;
  const frequencies = [
    aerial.lowestMHz ?? TERRESTRIAL_MHZ.lowest,
    aerial.highestMHz ?? TERRESTRIAL_MHZ.highest,
  ];
  return outletLevels(
    {
      source: { levelDbuv: aerial.levelDbuv },
      tree: forInput(found, input, 'tree'),
      temperatureC: job.distribution?.temperatureC ?? 20,
    },
    frequencies,
  ).map(({ name, points, lowestDbuv, highestDbuv }) => ({
    outlet: name,
    lowEndDbuv: points[0]?.levelDbuv ?? lowestDbuv,
    highEndDbuv: points[1]?.levelDbuv ?? highestDbuv,
    minimumDbuv,
    maximumDbuv,
    kind:
      minimumDbuv === null && maximumDbuv === null
        ? null
        : minimumDbuv !== null && lowestDbuv < minimumDbuv
          ? 'too-low'
          : maximumDbuv !== null && highestDbuv > maximumDbuv
            ? 'too-high'
            : 'inside',
  }));
}

/** One carrier on its line. */
interface OnLine {
  readonly signal: SignalPlan;
  readonly source: NetworkSource;
}

/** One switch with the carriers that its lines bring, each a source of its own on its line's input. */
interface SwitchNetwork {
  readonly network: DistributionNetwork;
  /** Carriers by the input. */
  readonly carriers: ReadonlyMap<string, readonly OnLine[]>;
}

function networksOf(
  job: JobFile,
  signals: readonly SignalPlan[],
  tuning: readonly TuningPlan[],
): readonly SwitchNetwork[] {
  const { lines = [], trees = [], temperatureC = 20 } = job.distribution ?? {};
  const parts = trees.flatMap((tree) => partNames(tree, ''));
  const byPart = new Map<DistributionPart, JobLine[]>();
  for (const line of lines) {
    const part =
      line.into === undefined ? parts[0]?.part : parts.find(({ name }) => name === line.into)?.part;
    if (part?.kind === 'switch' && part.inputs !== undefined && line.input !== undefined)
      byPart.set(part, [...(byPart.get(part) ?? []), line]);
  }
  return [...byPart].map(([tree, into]): SwitchNetwork => {
    const carriers = new Map(
      into.map((line) => [line.input ?? '', carriersOf(job, line, signals, tuning)] as const),
    );
    const taken = new Set<string>();
    const sources = into.flatMap((line): NetworkSource[] => {
      const { input = '' } = line;
      if (taken.has(input)) return [];
      taken.add(input);
      const on = carriers.get(input) ?? [];
      const supply = job.units?.find(({ name }) => name === line.unit)?.supply;
      const levels = on.map(({ signal }) => signal.levelDbuv);
      return [
        {
          name: input,
          input,
          levelDbuv: levels.length > 0 ? Math.max(...levels) : 75,
          ...(supply === undefined ? {} : { supply }),
          line: (line.parts ?? []) as NonNullable<NetworkSource['line']>,
        },
      ];
    });
    return { network: { sources, tree, temperatureC }, carriers };
  });
}

/** Carriers that a line brings, with level and frequency. */
function carriersOf(
  job: JobFile,
  line: JobLine,
  signals: readonly SignalPlan[],
  tuning: readonly TuningPlan[],
): readonly OnLine[] {
  return job.slots.flatMap((slot) =>
    (slot.carriers ?? []).flatMap((carrier): OnLine[] => {
      if (!linesOf(job, carrier, servedBy(job, slot, carrier)).includes(line)) return [];
      const same = (each: { readonly slot: string; readonly carrier: string }) =>
        each.slot === slot.name && each.carrier === carrier.name;
      const signal = signals.find(same);
      const frequencyMHz = tuning.find(same)?.intermediateFrequencyMHz ?? null;
      if (!signal || frequencyMHz === null || frequencyMHz < 5 || frequencyMHz > 3000) return [];
      return [
        {
          signal,
          source: {
            name: line.input ?? '',
            input: line.input ?? '',
            levelDbuv: signal.levelDbuv,
            line: (line.parts ?? []) as NonNullable<NetworkSource['line']>,
            lowestMHz: frequencyMHz,
            highestMHz: frequencyMHz,
          },
        },
      ];
    }),
  );
}

/** Each carrier against the strongest carrier of every other input, at its own frequency: the worst outlet. */
function leaksOf({ network, carriers }: SwitchNetwork): readonly InputLeakPlan[] {
  const found: InputLeakPlan[] = [];
  for (const [input, on] of carriers)
    for (const { signal, source } of on)
      for (const other of network.sources) {
        if (other.name === input || (carriers.get(other.name) ?? []).length === 0) continue;
        const rows = inputIsolation({
          ...network,
          sources: [source, { ...other, lowestMHz: 5, highestMHz: 3000 }],
        }).filter(({ wanted }) => wanted === input);
        const worst = rows.reduce<(typeof rows)[number] | null>(
          (least, row) =>
            least === null || row.wantedAboveUnwantedDb < least.wantedAboveUnwantedDb ? row : least,
          null,
        );
        if (worst)
          found.push({
            outlet: worst.outlet,
            slot: signal.slot,
            carrier: signal.carrier,
            unwanted: other.name,
            wantedAboveUnwantedDb: worst.wantedAboveUnwantedDb,
            requiredDb: signal.requiredDb,
          });
      }
  return found;
}
