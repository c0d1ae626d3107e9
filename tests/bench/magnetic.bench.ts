/** Declination: the two evaluations of the model in its library, one call for each place, and columns. */

import geomagnetism from 'geomagnetism';
import { declinationBatch, magneticField } from 'slantpath/magnetic';
import { type BenchRow, measure } from './measure.js';

export default function bench(): BenchRow[] {
  const rows = 2000;
  const latitudeDeg = Float64Array.from({ length: rows }, (_, row) => -85 + (170 * row) / rows);
  const longitudeDeg = Float64Array.from({ length: rows }, (_, row) => ((row * 37) % 360) - 180);
  const out = declinationBatch({ latitudeDeg, longitudeDeg, heightM: 0, decimalYear: 2026 });
  const models = [2025, 2026].map((year) => geomagnetism.model(new Date(Date.UTC(year, 0, 1))));
  const sum = (value: (row: number) => number) => {
    let total = 0;
    for (let row = 0; row < rows; row++) total += value(row);
    return total;
  };
  return measure('declination', rows, [
    {
      name: 'the library, twice',
      run: () =>
        sum((row) =>
          models.reduce(
            (total, model) =>
              total + model.point([latitudeDeg[row] ?? 0, longitudeDeg[row] ?? 0, 0]).x,
            0,
          ),
        ),
    },
    {
      name: 'magneticField',
      budgetRatio: 1.3,
      run: () =>
        sum(
          (row) =>
            magneticField(
              {
                latitudeDeg: latitudeDeg[row] ?? 0,
                longitudeDeg: longitudeDeg[row] ?? 0,
                heightM: 0,
              },
              2026,
            ).declinationDeg,
        ),
    },
    {
      name: 'declinationBatch',
      budgetRatio: 1.2,
      run: () => {
        const input = { latitudeDeg, longitudeDeg, heightM: 0, decimalYear: 2026 };
        return declinationBatch(input, out).declinationDeg[rows - 1] ?? 0;
      },
    },
  ]);
}
