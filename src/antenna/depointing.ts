/** How far an antenna points beside the satellite over time, and the loss that is exceeded for a share of it. */

import { inRange } from '../errors.js';
import { type Keys, knownOnly } from '../keys.js';
import { valueAt } from '../numeric/columns.js';
import { gaussianLobeLossDb, gaussianLobeOffsetDeg } from '../numeric/gaussianLobe.js';
import { gaussLegendre } from '../numeric/gaussLegendre.js';
import { normalProbability } from '../numeric/normal.js';
import { bracketedRoot } from '../numeric/root.js';
import { checkedBeamwidthDeg } from './guards.js';

/** What turns an antenna away from the satellite; all angles on the sky, in degrees. */
export interface Depointing {
  /** Half-power beamwidth in degrees. */
  readonly beamwidthDeg: number;
  /** Steady error along the arc (what peaking left), either sign, within 5; default 0. */
  readonly alongArcOffsetDeg?: number;
  /** Steady error across the arc, either sign, within 5; default 0. */
  readonly acrossArcOffsetDeg?: number;
  /** Standard deviation of the installation on each axis, over many installations, 0 to 5; default 0. */
  readonly installationStandardDeviationDeg?: number;
  /** Standard deviation that wind adds on each axis, 0 to 5; default 0. */
  readonly windStandardDeviationDeg?: number;
  /** Half-width of the satellite's box along the arc, 0 to 5; default 0. The satellite is anywhere in it alike. */
  readonly eastWestBoxDeg?: number;
  /** Half-width of the satellite's box across the arc, 0 to 5; default 0. */
  readonly northSouthBoxDeg?: number;
}

const DEPOINTING_KEYS = {
  beamwidthDeg: true,
  alongArcOffsetDeg: true,
  acrossArcOffsetDeg: true,
  installationStandardDeviationDeg: true,
  windStandardDeviationDeg: true,
  eastWestBoxDeg: true,
  northSouthBoxDeg: true,
} satisfies Keys<Depointing>;

/** Loss exceeded for a share of time. */
export interface DepointingLoss {
  /** Standard deviation on each axis of what is random, in degrees. */
  readonly standardDeviationDeg: number;
  /** Offset that is exceeded for that share, in degrees. */
  readonly offsetDeg: number;
  /** Loss that is exceeded for that share, in dB. */
  readonly lossDb: number;
  /** Mean of the loss in dB over all the time. */
  readonly meanLossDb: number;
}

interface Axis {
  readonly offset: number;
  readonly sigma: number;
  readonly box: number;
}

interface Checked {
  readonly along: Axis;
  readonly across: Axis;
  readonly beamwidthDeg: number;
}

function checked(depointing: Depointing): Checked {
  const input = knownOnly('depointing', depointing, DEPOINTING_KEYS);
  const part = (name: keyof Depointing, least: number): number =>
    inRange(name, input[name] ?? 0, least, 5, 'is the angle in degrees?');
  const together = Math.hypot(
    part('installationStandardDeviationDeg', 0),
    part('windStandardDeviationDeg', 0),
  );
  // A spread of less than a millionth of an arc second is none; its density could not be computed.
  const sigma = together < 1e-10 ? 0 : together;
  return {
    along: { offset: part('alongArcOffsetDeg', -5), sigma, box: part('eastWestBoxDeg', 0) },
    across: { offset: part('acrossArcOffsetDeg', -5), sigma, box: part('northSouthBoxDeg', 0) },
    beamwidthDeg: checkedBeamwidthDeg(input.beamwidthDeg),
  };
}

/** Integral of the normal probability: z P(z) + p(z). */
function normalIntegral(z: number): number {
  return z * normalProbability(z) + Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
}

/** Probability that an axis, a normal value plus an even one in the box, lies below x. */
function axisProbability({ offset, sigma, box }: Axis, x: number): number {
  const from = x - offset - box;
  const to = x - offset + box;
  if (sigma === 0) return box === 0 ? (to >= 0 ? 1 : 0) : Math.min(1, Math.max(0, to / (2 * box)));
  // A box much narrower than the spread would lose its digits in the difference below.
  if (box < 1e-3 * sigma) return normalProbability((x - offset) / sigma);
  return (sigma / (2 * box)) * (normalIntegral(to / sigma) - normalIntegral(from / sigma));
}

/** Density of an axis at x. */
function axisDensity({ offset, sigma, box }: Axis, x: number): number {
  const z = x - offset;
  if (box < 1e-3 * sigma)
    return Math.exp(-0.5 * (z / sigma) ** 2) / (sigma * Math.sqrt(2 * Math.PI));
  if (sigma === 0) return Math.abs(z) <= box ? 1 / (2 * box) : 0;
  return (normalProbability((z + box) / sigma) - normalProbability((z - box) / sigma)) / (2 * box);
}

/** Probability that the offset exceeds `radius`, both axes together. */
function exceedance({ along, across }: Checked, radius: number): number {
  const inside = (x: number): number => {
    const half = Math.sqrt(Math.max(0, radius * radius - x * x));
    return axisProbability(across, half) - axisProbability(across, -half);
  };
  if (along.sigma === 0 && along.box === 0)
    return Math.abs(along.offset) > radius ? 1 : 1 - inside(along.offset);
  const reach = 9 * along.sigma;
  const cuts = [-radius, radius];
  for (const edge of [along.offset - along.box, along.offset + along.box])
    for (const step of [-9, -5, -3, -1.5, 0, 1.5, 3, 5, 9]) cuts.push(edge + step * along.sigma);
  const low = along.offset - along.box - reach;
  const high = along.offset + along.box + reach;
  const points = cuts
    .filter((x) => x >= Math.max(low, -radius) && x <= Math.min(high, radius))
    .sort((a, b) => a - b);
  let probability = 0;
  for (let index = 1; index < points.length; index++) {
    // In the angle whose sine is x / radius the integrand is smooth at both ends.
    const from = Math.asin(valueAt(points, index - 1) / radius);
    const to = Math.asin(valueAt(points, index) / radius);
    probability += gaussLegendre(
      (angle) => {
        const x = radius * Math.sin(angle);
        return radius * Math.cos(angle) * axisDensity(along, x) * inside(x);
      },
      from,
      to,
    );
  }
  return Math.min(1, Math.max(0, 1 - probability));
}

/**
 * Share of time in percent for which the pointing loss exceeds `lossDb`.
 *
 * @param lossDb  0 to 60.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: as {@link depointingLoss}. Accuracy: 1e-6 percent.
 * @example
 * ```ts
 * import { depointingExceedance } from 'slantpath/antenna';
 * depointingExceedance({ beamwidthDeg: 2, windStandardDeviationDeg: 0.1 }, 0.3).toFixed(3); // => '0.674'
 * ```
 */
export function depointingExceedance(depointing: Depointing, lossDb: number): number {
  const parts = checked(depointing);
  const radius = gaussianLobeOffsetDeg(inRange('lossDb', lossDb, 0, 60), parts.beamwidthDeg);
  return radius === 0 ? 100 * exceedance(parts, 1e-12) : 100 * exceedance(parts, radius);
}

/**
 * Pointing loss that is exceeded for `exceededPercent` of the time, from installation, wind and the satellite's box.
 *
 * On each axis the error is a steady offset, plus a normal value (installation and wind by the root of their
 * squares), plus a value anywhere in the satellite's box alike. The loss follows from the offset by the Gaussian lobe.
 *
 * @param exceededPercent  Share of time in percent, 0.0001 to 99.9999.
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: own derivation; without offset and box it is the Rayleigh law, loss = -24 (s / beamwidth)^2 ln(p / 100).
 * Accuracy: 1e-6 of the probability. Wind is not normal in gusts, and a satellite is not anywhere alike: a model.
 * @example
 * ```ts
 * import { depointingLoss } from 'slantpath/antenna';
 * const mount = { beamwidthDeg: 2, installationStandardDeviationDeg: 0.08, windStandardDeviationDeg: 0.06, eastWestBoxDeg: 0.1 };
 * depointingLoss(mount, 1).lossDb.toFixed(2); // => '0.32'
 * ```
 */
export function depointingLoss(depointing: Depointing, exceededPercent: number): DepointingLoss {
  const parts = checked(depointing);
  const { along, across, beamwidthDeg } = parts;
  const share = inRange('exceededPercent', exceededPercent, 1e-4, 99.9999) / 100;
  const most =
    Math.hypot(Math.abs(along.offset) + along.box, Math.abs(across.offset) + across.box) +
    10 * along.sigma +
    1e-9;
  const offsetDeg =
    bracketedRoot((radius) => exceedance(parts, radius) - share, {
      from: 1e-12,
      to: most,
      tolerance: 1e-13,
    }) ?? 0;
  // Mean of a square: offset^2 + variance, where an even value within +-box has box^2 / 3.
  const meanSquare = [along, across].reduce(
    (sum, axis) => sum + axis.offset ** 2 + axis.sigma ** 2 + axis.box ** 2 / 3,
    0,
  );
  return {
    standardDeviationDeg: along.sigma,
    offsetDeg,
    lossDb: gaussianLobeLossDb(offsetDeg, beamwidthDeg),
    meanLossDb: (12 * meanSquare) / beamwidthDeg ** 2,
  };
}
