/** What remains of a mast's lean after peaking, and how much lean a loss budget allows. */

import { finite, inRange, positive } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { tanDeg } from '../../numeric/angle.js';
import { gaussianLobeOffsetDeg } from '../../numeric/gaussianLobe.js';
import { bracketedRoot } from '../../numeric/root.js';
import { azimuthOfDeg, type EastNorthUp, elevationOfDeg, skyVector } from '../look/sightLine.js';
import {
  beamError,
  checkedLean,
  leanTurn,
  type MastLean,
  type MastLeanError,
  rollDeg,
  SKY_DIRECTION_KEYS,
  type SkyDirection,
} from './mastLean.js';

/** What {@link mastLeanAfterPeaking} is asked. */
export interface MastLeanAfterPeakingInput extends MastLean {
  /** Direction on which the antenna was peaked. */
  readonly peaked: SkyDirection;
  /** Direction to which it is then turned by the difference of the scales. */
  readonly target: SkyDirection;
}

const MAST_LEAN_AFTER_PEAKING_INPUT_KEYS = {
  peaked: true,
  target: true,
  leanDeg: true,
  leanAzimuthDeg: true,
} satisfies Keys<MastLeanAfterPeakingInput>;

/** What remains after peaking. */
export interface MastLeanAfterPeaking
  extends Pick<
    MastLeanError,
    'elevationErrorDeg' | 'azimuthErrorDeg' | 'acrossErrorDeg' | 'offsetDeg'
  > {
  /** Skew error on the peaked direction in degrees, clockwise positive as seen from behind; peaking does not touch it. */
  readonly skewErrorPeakedDeg: number;
  /** Skew error on the target in degrees, clockwise positive as seen from behind. */
  readonly skewErrorTargetDeg: number;
}

function checkedDirection(name: string, direction: SkyDirection): EastNorthUp {
  const { azimuthDeg, elevationDeg } = known(name, direction, SKY_DIRECTION_KEYS);
  return skyVector(
    finite(`${name}.azimuthDeg`, azimuthDeg),
    inRange(`${name}.elevationDeg`, elevationDeg, -5, 90),
  );
}

/**
 * What remains of a mast's lean after the antenna was peaked on one direction and then turned to another by the
 * difference of the scales (a second slot, a motor, a second box on the same bar).
 *
 * On the peaked direction itself the beam is right whatever the lean; only its skew is off.
 *
 * @throws {@link DomainError} naming the bad field, `peaked.elevationDeg` for instance.
 *
 * Source: own derivation (rotation of a frame).
 * Accuracy: rounding only.
 * @example
 * ```ts
 * import { mastLeanAfterPeaking } from 'slantpath/pointing';
 * const rest = mastLeanAfterPeaking({
 *   leanDeg: 2,
 *   leanAzimuthDeg: 90,
 *   peaked: { azimuthDeg: 183.3, elevationDeg: 36.6 },
 *   target: { azimuthDeg: 163.4, elevationDeg: 35.3 },
 * });
 * rest.offsetDeg < 1; // => true
 * ```
 */
export function mastLeanAfterPeaking(input: MastLeanAfterPeakingInput): MastLeanAfterPeaking {
  const given = knownOnly('input', input, MAST_LEAN_AFTER_PEAKING_INPUT_KEYS);
  const lean = checkedLean(given);
  const peaked = checkedDirection('peaked', given.peaked);
  const target = checkedDirection('target', given.target);
  return afterPeaking(lean, peaked, target);
}

function afterPeaking(
  lean: MastLean,
  peaked: EastNorthUp,
  target: EastNorthUp,
): MastLeanAfterPeaking {
  const turn = leanTurn(lean);
  const back = leanTurn({ ...lean, leanDeg: -lean.leanDeg });
  const scale = back(peaked);
  const turned = skyVector(
    azimuthOfDeg(scale) + azimuthOfDeg(target) - azimuthOfDeg(peaked),
    elevationOfDeg(scale) + elevationOfDeg(target) - elevationOfDeg(peaked),
  );
  return {
    ...beamError(turn(turned), target),
    skewErrorPeakedDeg: rollDeg(scale, turn),
    skewErrorTargetDeg: rollDeg(back(target), turn),
  };
}

/** What {@link allowedMastLean} is asked. */
export interface AllowedMastLeanInput {
  /** Loss that the lean may cost in dB, above 0 to 10. */
  readonly lossDb: number;
  /** Half-power beamwidth of the antenna in degrees, above 0 to 90. */
  readonly beamwidthDeg: number;
  /** Direction on which the antenna is peaked; left out where it is only preset by its scales. */
  readonly peaked?: SkyDirection;
  /** Direction to which it is then turned by the scales; needed with `peaked`. */
  readonly target?: SkyDirection;
}

const ALLOWED_MAST_LEAN_INPUT_KEYS = {
  lossDb: true,
  beamwidthDeg: true,
  peaked: true,
  target: true,
} satisfies Keys<AllowedMastLeanInput>;

/** The lean that a loss budget allows; read `kind` first. */
export type AllowedMastLean =
  | {
      /** `limited`: a larger lean may cost more than the budget. */
      readonly kind: 'limited';
      /** Largest lean in degrees whose loss keeps within the budget whichever way it goes, up to 20. */
      readonly allowedLeanDeg: number;
      /** The same as a plumb line shows it: millimetres aside for each metre down. */
      readonly allowedLeanMmPerM: number;
      /** Azimuth in degrees of the lean that costs most; 0 where all cost the same. */
      readonly worstLeanAzimuthDeg: number;
      /** Offset of the beam in degrees that uses up the budget. */
      readonly allowedOffsetDeg: number;
    }
  | {
      /** `unlimited`: no lean up to 20 degrees uses up the budget. */
      readonly kind: 'unlimited';
      /** Offset of the beam in degrees that would use up the budget. */
      readonly allowedOffsetDeg: number;
    };

/**
 * How much lean of the mast a loss budget allows.
 *
 * Preset only: the beam may be off by the whole lean (towards it and away from it), so the lean may be as large as the
 * offset sqrt(loss / 12) x half-power beamwidth. Peaked on one direction and turned to another: the lean at which the
 * remaining offset, for the worst direction of lean, uses up the budget.
 *
 * @throws {@link DomainError} naming the bad field; `missing` for one of `peaked` and `target` without the other.
 *
 * Source: Gaussian main lobe; {@link mastLeanAfterPeaking}.
 * Accuracy: 1e-6 degree for the Gaussian lobe; the worst azimuth of lean is searched in steps of 1 degree.
 * @example
 * ```ts
 * import { allowedMastLean } from 'slantpath/pointing';
 * const preset = allowedMastLean({ lossDb: 0.3, beamwidthDeg: 2 });
 * preset.kind === 'limited' && preset.allowedLeanDeg.toFixed(3); // => '0.316'
 * ```
 */
export function allowedMastLean(input: AllowedMastLeanInput): AllowedMastLean {
  const given = knownOnly('input', input, ALLOWED_MAST_LEAN_INPUT_KEYS);
  const lossDb = inRange('lossDb', positive('lossDb', given.lossDb), 0, 10);
  const widthDeg = inRange('beamwidthDeg', positive('beamwidthDeg', given.beamwidthDeg), 0, 90);
  const allowedOffsetDeg = gaussianLobeOffsetDeg(lossDb, widthDeg);
  const limited = (leanDeg: number, worstLeanAzimuthDeg: number): AllowedMastLean => ({
    kind: 'limited',
    allowedLeanDeg: leanDeg,
    allowedLeanMmPerM: 1000 * tanDeg(leanDeg),
    worstLeanAzimuthDeg,
    allowedOffsetDeg,
  });
  if (given.peaked === undefined && given.target === undefined)
    return allowedOffsetDeg <= 20
      ? limited(allowedOffsetDeg, 0)
      : { kind: 'unlimited', allowedOffsetDeg };
  const peaked = checkedDirection('peaked', given.peaked as SkyDirection);
  const target = checkedDirection('target', given.target as SkyDirection);
  const worst = (leanDeg: number): { readonly offsetDeg: number; readonly azimuthDeg: number } => {
    let most = { offsetDeg: -1, azimuthDeg: 0 };
    for (let azimuthDeg = 0; azimuthDeg < 360; azimuthDeg++) {
      const lean = { leanDeg, leanAzimuthDeg: azimuthDeg };
      const { offsetDeg } = afterPeaking(lean, peaked, target);
      if (offsetDeg > most.offsetDeg) most = { offsetDeg, azimuthDeg };
    }
    return most;
  };
  const leanDeg = bracketedRoot((lean) => worst(lean).offsetDeg - allowedOffsetDeg, {
    from: 0,
    to: 20,
    tolerance: 1e-7,
  });
  return leanDeg === undefined
    ? { kind: 'unlimited', allowedOffsetDeg }
    : limited(leanDeg, worst(leanDeg).azimuthDeg);
}
