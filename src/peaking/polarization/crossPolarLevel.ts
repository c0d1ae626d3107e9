/** The cross-polar level over the rotation of the feed, as the fit of the null has it. */

import { finite, inRange, positive } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { sinDeg } from '../../numeric/angle.js';
import { dbToRatio, ratioToDb } from '../../numeric/decibel.js';

const CROSS_POLAR_LEVEL_DBM_POLARIZATION_NULL_KEYS = {
  nullDeg: true,
  depthDb: true,
  topLevelDbm: true,
} satisfies Keys<Parameters<typeof crossPolarLevelDbm>[0]>;

/**
 * Cross-polar level in dBm at a rotation of the feed: sin^2 of the rotation from the null, plus a leak.
 *
 * @param polarizationNull  `nullDeg` rotation of the null; `depthDb` its depth below the level at right angles, above 0
 *   to 100; `topLevelDbm` the level at right angles. A fit of {@link fitNull} serves.
 * @param rotationDeg  Rotation in degrees, within 720.
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: projection of a linear field, the leak added as power.
 * @example
 * ```ts
 * import { crossPolarLevelDbm } from 'slantpath/peaking';
 * const polarizationNull = { nullDeg: 3, depthDb: 30, topLevelDbm: -40 };
 * crossPolarLevelDbm(polarizationNull, 3).toFixed(1); // => '-70.0'
 * crossPolarLevelDbm(polarizationNull, 93).toFixed(1); // => '-40.0'
 * ```
 */
export function crossPolarLevelDbm(
  polarizationNull: {
    readonly nullDeg: number;
    readonly depthDb: number;
    readonly topLevelDbm: number;
  },
  rotationDeg: number,
): number {
  const input = known(
    'polarizationNull',
    polarizationNull,
    CROSS_POLAR_LEVEL_DBM_POLARIZATION_NULL_KEYS,
  );
  const top = inRange('topLevelDbm', finite('topLevelDbm', input.topLevelDbm), -300, 300);
  const depth = inRange('depthDb', positive('depthDb', input.depthDb), 1e-6, 100);
  const at = inRange('nullDeg', finite('nullDeg', input.nullDeg), -720, 720);
  const rotation = inRange('rotationDeg', finite('rotationDeg', rotationDeg), -720, 720);
  const leak = 1 / (dbToRatio(depth) - 1);
  return top + ratioToDb((sinDeg(rotation - at) ** 2 + leak) / (1 + leak));
}
