/** Interference: other satellites beside the wanted one, the other polarization, the next channel. */

import { checkedLossDb } from '../../antenna/internal.js';
import { patternGain } from '../../antenna/patterns/pattern.js';
import type { AntennaPattern } from '../../antenna/patterns/patternTypes.js';
import { DomainError, inRange, object } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { inRow } from '../../numeric/columns.js';
import { combinedDb } from './combine.js';

/** A satellite beside the wanted one that sends in the same band. */
export interface Neighbour {
  /** Angle on the sky between it and the wanted satellite in degrees, above 0 up to 180: `slotSeparation` of `slantpath/pointing` gives it. */
  readonly separationDeg: number;
  /** What it sends towards the station per megahertz, in dBW/MHz, -100 to 100. */
  readonly eirpDensityDbwPerMHz: number;
  /** How much the other polarization helps in dB, 0 or more; default 0 (same polarization). */
  readonly polarizationIsolationDb?: number;
}

const NEIGHBOUR_KEYS = {
  separationDeg: true,
  eirpDensityDbwPerMHz: true,
  polarizationIsolationDb: true,
} satisfies Keys<Neighbour>;

/** Input of {@link adjacentSatellites}. */
export interface AdjacentSatellitesInput {
  /** Pattern of the receiving antenna. */
  readonly pattern: AntennaPattern;
  /** Gain of the receiving antenna towards the wanted satellite in dBi, -50 to 100. */
  readonly wantedGainDbi: number;
  /** What the wanted satellite sends per megahertz in dBW/MHz, -100 to 100. */
  readonly eirpDensityDbwPerMHz: number;
  /** The neighbours, at least one. */
  readonly neighbours: readonly Neighbour[];
  /** Pointing error towards the neighbours in degrees, 0 to 5, taken off each separation; default 0. */
  readonly pointingOffsetDeg?: number;
}

const ADJACENT_SATELLITES_INPUT_KEYS = {
  pattern: true,
  wantedGainDbi: true,
  eirpDensityDbwPerMHz: true,
  neighbours: true,
  pointingOffsetDeg: true,
} satisfies Keys<AdjacentSatellitesInput>;

/** Interference of one neighbour. */
export interface NeighbourInterference {
  /** Off-axis angle that counts, in degrees. */
  readonly offAxisDeg: number;
  /** Gain towards it in dBi. */
  readonly gainDbi: number;
  /** Carrier over its interference in dB. */
  readonly carrierToInterferenceDb: number;
}

/** Outcome of {@link adjacentSatellites}. */
export type AdjacentSatellites =
  | {
      readonly kind: 'interference';
      /** Each neighbour in the order given. */
      readonly neighbours: readonly NeighbourInterference[];
      /** Carrier over all of them in dB: an impairment of the budget. */
      readonly carrierToInterferenceDb: number;
    }
  | {
      /** The pattern says nothing at the angle of one of them. */
      readonly kind: 'not-specified';
      /** Index of that neighbour. */
      readonly neighbour: number;
      /** First angle in degrees at which the pattern says something. */
      readonly specifiedFromDeg: number;
    };

/**
 * Carrier over interference from satellites beside the wanted one.
 *
 * C/I = (wanted density - neighbour's density) + (wanted gain - gain towards the neighbour) + isolation; the neighbours
 * add as powers.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval; `empty` for no neighbour.
 *
 * Source: A. K. Maini and V. Agrawal, Satellite Communication (Wiley India, 2010), Example 7.9. Accuracy: that of the pattern.
 * @example
 * ```ts
 * import { adjacentSatellites } from 'slantpath/link';
 * const result = adjacentSatellites({
 *   pattern: { kind: 'S.465-6', diameterM: 0.9, frequencyGHz: 11.7 },
 *   wantedGainDbi: 38.98,
 *   eirpDensityDbwPerMHz: 35,
 *   neighbours: [{ separationDeg: 3.3, eirpDensityDbwPerMHz: 35 }],
 * });
 * result.kind === 'interference' && result.carrierToInterferenceDb.toFixed(2); // => '19.94'
 * ```
 */
export function adjacentSatellites(input: AdjacentSatellitesInput): AdjacentSatellites {
  const { neighbours, ...rest } = knownOnly('input', input, ADJACENT_SATELLITES_INPUT_KEYS);
  if (!(object('neighbours', neighbours).length > 0))
    throw new DomainError({
      code: 'empty',
      parameter: 'neighbours',
      received: neighbours,
      allowed: 'at least one neighbour',
    });
  const wantedDb =
    inRange('wantedGainDbi', rest.wantedGainDbi, -50, 100) +
    inRange('eirpDensityDbwPerMHz', rest.eirpDensityDbwPerMHz, -100, 100);
  const offsetDeg = inRange('pointingOffsetDeg', rest.pointingOffsetDeg ?? 0, 0, 5);
  const list: NeighbourInterference[] = [];
  for (let index = 0; index < neighbours.length; index++) {
    const name = `neighbours[${index}]`;
    const neighbour = known(name, neighbours[index] as Neighbour, NEIGHBOUR_KEYS);
    const separationDeg = inRange(`${name}.separationDeg`, neighbour.separationDeg, 1e-6, 180);
    const offAxisDeg = Math.max(0, separationDeg - offsetDeg);
    const density = inRange(
      `${name}.eirpDensityDbwPerMHz`,
      neighbour.eirpDensityDbwPerMHz,
      -100,
      100,
    );
    const isolation = checkedLossDb(
      `${name}.polarizationIsolationDb`,
      neighbour.polarizationIsolationDb ?? 0,
    );
    const gain = patternGain(rest.pattern, offAxisDeg);
    if (gain.kind === 'not-specified')
      return {
        kind: 'not-specified',
        neighbour: index,
        specifiedFromDeg: gain.specifiedFromDeg,
      };
    list.push({
      offAxisDeg,
      gainDbi: gain.gainDbi,
      carrierToInterferenceDb: wantedDb - density - gain.gainDbi + isolation,
    });
  }
  return {
    kind: 'interference',
    neighbours: list,
    carrierToInterferenceDb: combinedDb(
      list.map(({ carrierToInterferenceDb }) => carrierToInterferenceDb),
    ),
  };
}

const CROSS_POLAR_INTERFERENCE_INPUT_KEYS = {
  isolationsDb: true,
  wantedLessOtherDb: true,
} satisfies Keys<Parameters<typeof crossPolarInterference>[0]>;

/**
 * Carrier over interference in dB from the other polarization of the same satellite: isolation of satellite, air and
 * antenna combined as powers, plus what the wanted carrier is stronger.
 *
 * @param input  `isolationsDb` each isolation on the way in dB, 0 to 200, at least one (see `crossPolarIsolation`);
 *   `wantedLessOtherDb` level of the wanted less that of the other carrier, default 0.
 * @throws {@link DomainError} naming the bad field.
 *
 * Source: definition; leaks with unknown phases add as powers. Accuracy: rounding only.
 * @example
 * ```ts
 * import { crossPolarInterference } from 'slantpath/link';
 * crossPolarInterference({ isolationsDb: [33, 27] }).toFixed(2); // => '26.03'
 * ```
 */
export function crossPolarInterference(input: {
  readonly isolationsDb: readonly number[];
  readonly wantedLessOtherDb?: number;
}): number {
  const { isolationsDb, wantedLessOtherDb } = knownOnly(
    'input',
    input,
    CROSS_POLAR_INTERFERENCE_INPUT_KEYS,
  );
  if (!(object('isolationsDb', isolationsDb).length > 0))
    throw new DomainError({
      code: 'empty',
      parameter: 'isolationsDb',
      received: isolationsDb,
      allowed: 'at least one isolation',
    });
  for (let index = 0; index < isolationsDb.length; index++)
    inRange('isolationsDb', inRow(isolationsDb, index), 0, 200, undefined, index);
  return combinedDb(isolationsDb) + inRange('wantedLessOtherDb', wantedLessOtherDb ?? 0, -100, 100);
}
