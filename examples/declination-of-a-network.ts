/** Declination of a whole network in columns; places where no compass can be trusted are named. */

import { declinationBatch } from 'slantpath/magnetic';

const names = ['Tarnfell hut 1', 'Riverine clinic 3', 'Station School 2', 'an arctic cabin'];
const { declinationDeg, declinationStandardUncertaintyDeg, horizontalIntensityNt } =
  declinationBatch({
    latitudeDeg: [46.6, -0.4, -29.2, 83],
    longitudeDeg: [10.3, 102, 139.8, -70],
    heightM: [1480, 40, 60, 10],
    decimalYear: 2026.44,
  });
names.forEach((name, row) => {
  const declination = declinationDeg[row] ?? 0;
  const horizontal = horizontalIntensityNt[row] ?? 0;
  console.log(
    `${name}: ${declination.toFixed(2)} +- ${(declinationStandardUncertaintyDeg[row] ?? 0).toFixed(2)}` +
      `${horizontal < 6000 ? ', compass not to be trusted' : ''}`,
  );
});
