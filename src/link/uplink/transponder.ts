/** A transparent transponder: how far it is driven, and what comes out. */

import { checkedLossDb } from '../../antenna/internal.js';
import { DomainError, inRange, object, oneOf } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import { inRow, valueAt } from '../../numeric/columns.js';
import { checkedFlux } from './uplink.js';

/** How the output back-off follows from the input back-off of all carriers together. */
export type OutputBackOff =
  | {
      readonly kind: 'fixed';
      /** Output back-off in dB, 0 or more, whatever the drive. */
      readonly outputBackOffDb: number;
    }
  | {
      readonly kind: 'linear';
      /** Input back-off less output back-off in the linear region, in dB, 0 to 20: about 5 for a travelling-wave tube. */
      readonly compressionDb: number;
    }
  | {
      readonly kind: 'table';
      /** Input back-offs in dB, strictly increasing, at least two. */
      readonly inputBackOffDb: readonly number[];
      /** Output back-off at each, in dB, 0 or more. */
      readonly outputBackOffDb: readonly number[];
    };

const OUTPUT_BACK_OFF_KEYS = {
  kind: true,
  outputBackOffDb: true,
  compressionDb: true,
  inputBackOffDb: true,
} satisfies Keys<OutputBackOff>;

/** A transparent transponder. */
export interface Transponder {
  /** Flux density that saturates it, in dBW/m2. */
  readonly saturationFluxDensityDbwPerM2: number;
  /** EIRP towards the terminal at saturation in dBW, -50 to 100. */
  readonly saturatedEirpDbw: number;
  /** Input back-off of all carriers together in dB, 0 or more; default that of the one carrier, which is then alone. */
  readonly totalInputBackOffDb?: number;
  /** How the output follows the input. */
  readonly outputBackOff: OutputBackOff;
  /** Carrier over intermodulation in dB in the symbol-rate bandwidth, -50 to 100; default none. */
  readonly carrierToIntermodulationDb?: number;
}

const TRANSPONDER_KEYS = {
  saturationFluxDensityDbwPerM2: true,
  saturatedEirpDbw: true,
  totalInputBackOffDb: true,
  outputBackOff: true,
  carrierToIntermodulationDb: true,
} satisfies Keys<Transponder>;

/** Where a carrier stands in a transponder. */
export interface TransponderState {
  /** Flux density of the carrier in dBW/m2. */
  readonly fluxDensityDbwPerM2: number;
  /** Input back-off of the carrier in dB; negative where it drives the transponder beyond saturation. */
  readonly carrierInputBackOffDb: number;
  /** Input back-off of all carriers in dB. */
  readonly totalInputBackOffDb: number;
  /** Output back-off of all carriers in dB. */
  readonly totalOutputBackOffDb: number;
  /** Output back-off of the carrier in dB: the total's, plus what it has less than the total at the input. */
  readonly carrierOutputBackOffDb: number;
  /** EIRP of the carrier towards the terminal in dBW. */
  readonly eirpDbw: number;
}

function outputBackOffDb(law: OutputBackOff, inputDb: number): number {
  knownOnly('outputBackOff', law, OUTPUT_BACK_OFF_KEYS);
  oneOf('outputBackOff.kind', law.kind, ['fixed', 'linear', 'table']);
  if (law.kind === 'fixed') return checkedLossDb('outputBackOffDb', law.outputBackOffDb);
  if (law.kind === 'linear')
    return Math.max(0, inputDb - inRange('compressionDb', law.compressionDb, 0, 20));
  const inputs = object('outputBackOff.inputBackOffDb', law.inputBackOffDb);
  const outputs = object('outputBackOff.outputBackOffDb', law.outputBackOffDb);
  if (!(inputs.length >= 2) || outputs.length !== inputs.length)
    throw new DomainError({
      code: outputs.length === inputs.length ? 'too-few' : 'length-mismatch',
      parameter: 'outputBackOff.outputBackOffDb',
      received: outputs,
      allowed: 'at least two values, as many as input back-offs',
    });
  for (let index = 0; index < inputs.length; index++) {
    const name = `outputBackOff.inputBackOffDb[${index}]`;
    const least = index === 0 ? -50 : valueAt(inputs, index - 1) + 1e-9;
    inRange(name, inRow(inputs, index), least, 100, 'must the back-offs increase?');
    inRange(`outputBackOff.outputBackOffDb[${index}]`, inRow(outputs, index), 0, 100);
  }
  const at = (list: readonly number[], index: number): number => valueAt(list, index);
  const last = inputs.length - 1;
  if (inputDb <= at(inputs, 0)) return at(outputs, 0);
  // Beyond the table the transponder is linear.
  if (inputDb >= at(inputs, last)) return at(outputs, last) + inputDb - at(inputs, last);
  let index = 0;
  while (at(inputs, index + 1) < inputDb) index++;
  const share = (inputDb - at(inputs, index)) / (at(inputs, index + 1) - at(inputs, index));
  return at(outputs, index) + share * (at(outputs, index + 1) - at(outputs, index));
}

/**
 * Where a carrier stands in a transparent transponder, and with what power it leaves.
 *
 * Carrier back-off = saturation flux density - flux density. The output back-off of all carriers follows from that
 * of the input; each carrier keeps its share.
 *
 * @param transponder  The transponder.
 * @param fluxDensityDbwPerM2  Flux density of the carrier at the satellite, -250 to 50 dBW/m2.
 * @throws {@link DomainError} naming the field that is missing or outside its interval; `inconsistent` where the
 *   carrier alone is stronger than all together.
 *
 * Source: D. Roddy, Satellite Communications, 3rd ed., sections 12.7 and 12.8. Accuracy: that of the law of the output.
 * @example
 * ```ts
 * import { transponderState } from 'slantpath/link';
 * const state = transponderState(
 *   {
 *     saturationFluxDensityDbwPerM2: -90,
 *     saturatedEirpDbw: 50,
 *     outputBackOff: { kind: 'linear', compressionDb: 5 },
 *   },
 *   -101,
 * );
 * state.eirpDbw; // => 44
 * ```
 */
export function transponderState(
  transponder: Transponder,
  fluxDensityDbwPerM2: number,
): TransponderState {
  const input = knownOnly('transponder', transponder, TRANSPONDER_KEYS);
  const flux = checkedFlux(fluxDensityDbwPerM2, 'fluxDensityDbwPerM2');
  const carrierInputDb = checkedFlux(input.saturationFluxDensityDbwPerM2) - flux;
  const saturatedDbw = inRange('saturatedEirpDbw', input.saturatedEirpDbw, -50, 100);
  const totalInputDb =
    input.totalInputBackOffDb === undefined
      ? carrierInputDb
      : checkedLossDb('totalInputBackOffDb', input.totalInputBackOffDb);
  if (carrierInputDb < totalInputDb - 1e-9)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'totalInputBackOffDb',
      received: totalInputDb,
      allowed: `at most the carrier's own back-off, ${carrierInputDb.toFixed(2)} dB`,
      slip: 'is the carrier stronger than all carriers together?',
    });
  const totalOutputDb = outputBackOffDb(input.outputBackOff, totalInputDb);
  const carrierOutputDb = totalOutputDb + (carrierInputDb - totalInputDb);
  return {
    fluxDensityDbwPerM2: flux,
    carrierInputBackOffDb: carrierInputDb,
    totalInputBackOffDb: totalInputDb,
    totalOutputBackOffDb: totalOutputDb,
    carrierOutputBackOffDb: carrierOutputDb,
    eirpDbw: saturatedDbw - carrierOutputDb,
  };
}
