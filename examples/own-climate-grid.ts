/** Climate from the grid that is shipped, from one's own numbers, and from one's own grid. */

import { climateAt, climateFromGrid, SHIPPED_CLIMATE_GRID } from 'slantpath/climate';

const clinic = { latitudeDeg: -0.4, longitudeDeg: 102, heightM: 35 };

const shipped = climateAt(clinic);
console.log(`${shipped.rainSource}: ${shipped.rainRate001MmPerH.toFixed(1)} mm/h`);

const measured = climateAt(clinic, { measured: { rainRate001MmPerH: 104, years: 6 } });
console.log(`${measured.rainSource}: ${measured.rainRate001MmPerH.toFixed(1)} mm/h`);

// A grid of one's own is plain data of the same form; here the shipped one stands in for it.
const climateOf = climateFromGrid(JSON.parse(JSON.stringify(SHIPPED_CLIMATE_GRID)));
const own = climateOf(clinic);
console.log(`own grid: ${own.rainRate001MmPerH.toFixed(1)} mm/h`);
