/** Clearance over obstructions: bare trigonometry, one call for each, and columns. */

import { obstructionClearance, obstructionClearanceBatch } from 'slantpath/survey';
import { type BenchRow, measure } from './measure.js';

export default function bench(): BenchRow[] {
  const rows = 5000;
  const distanceM = Float64Array.from({ length: rows }, (_, row) => 3 + row * 0.01);
  const elevationDeg = Float64Array.from({ length: rows }, (_, row) => 10 + ((row * 7) % 70));
  const fixed = { topHeightM: 9, centreHeightM: 2, diameterM: 0.9 };
  const out = obstructionClearanceBatch({ ...fixed, distanceM, elevationDeg });
  return measure('obstruction clearance', rows, [
    {
      name: 'bare trigonometry',
      run: () => {
        let total = 0;
        for (let row = 0; row < rows; row++) {
          const elevation = ((elevationDeg[row] ?? 0) * Math.PI) / 180;
          const distance = distanceM[row] ?? 0;
          const axis = distance * Math.sin(elevation) - 7 * Math.cos(elevation);
          total += axis + Math.atan2(7, distance) + 9 + (0.45 - axis) / Math.cos(elevation);
        }
        return total;
      },
    },
    {
      name: 'obstructionClearance',
      budgetRatio: 8,
      run: () => {
        let total = 0;
        for (let row = 0; row < rows; row++)
          total += obstructionClearance({
            topHeightM: 9,
            centreHeightM: 2,
            diameterM: 0.9,
            distanceM: distanceM[row] ?? 0,
            elevationDeg: elevationDeg[row] ?? 0,
          }).edgeClearanceM;
        return total;
      },
    },
    {
      name: 'obstructionClearanceBatch',
      budgetRatio: 10,
      run: () =>
        obstructionClearanceBatch({ ...fixed, distanceM, elevationDeg }, out).edgeClearanceM[7] ??
        0,
    },
  ]);
}
