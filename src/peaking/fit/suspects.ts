/** Whether one of the readings of a fit looks foreign. */

import { valueAt } from '../../numeric/columns.js';
import { studentExceedance } from '../../numeric/student.js';

/** Chance of suspecting one where none is foreign. */
const FALSE_ALARM = 0.05;

/**
 * Tests the residual that stands out most, each divided by its own standard deviation without it, against Student's t and the number of
 * readings (Bonferroni).
 *
 * Source: R. D. Cook and S. Weisberg, Residuals and Influence in Regression (1982), ch. 2.
 *
 * @param toldDb  Standard deviation of a reading, where it is known.
 */
export function foreignSuspected(
  fit: {
    readonly residuals: ArrayLike<number>;
    readonly leverages: ArrayLike<number>;
    readonly standardDeviationDb: number;
    readonly spare: number;
  },
  told: boolean,
): boolean {
  const { residuals, leverages, standardDeviationDb, spare } = fit;
  const n = residuals.length;
  let most = 0;
  for (let i = 0; i < n; i++) {
    const rest = Math.max(1e-6, 1 - valueAt(leverages, i));
    const square = valueAt(residuals, i) ** 2 / rest / standardDeviationDb ** 2;
    // Without the reading the scatter is less, by its share of the sum of squares.
    const own = told ? square : (square * (spare - 1)) / Math.max(1e-9, spare - square);
    most = Math.max(most, own);
  }
  if (!told && spare < 2) return false;
  return (
    2 * n * studentExceedance(Math.sqrt(most), told ? Number.POSITIVE_INFINITY : spare - 1) <
    FALSE_ALARM
  );
}
