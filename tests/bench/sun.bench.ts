/** The Sun: the library's own two calls against sunDirection, and a year of outages as so many of them. */

import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import { sunDirection, sunOutages } from 'slantpath/sun';
import { type BenchRow, measure } from './measure.js';

const STATION = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const START_MS = Date.UTC(2026, 0, 1);

export default function bench(): BenchRow[] {
  const instants = 500;
  const observer = new Observer(STATION.latitudeDeg, STATION.longitudeDeg, STATION.heightM);
  const sum = (value: (epochMs: number) => number) => {
    let total = 0;
    for (let index = 0; index < instants; index++) total += value(START_MS + index * 61234567);
    return total;
  };
  const directions = measure('direction of the Sun', instants, [
    {
      name: 'the library: Equator and Horizon',
      run: () =>
        sum((epochMs) => {
          const date = new Date(epochMs);
          const { ra, dec } = Equator(Body.Sun, date, observer, true, true);
          return Horizon(date, observer, ra, dec).altitude;
        }),
    },
    {
      name: 'sunDirection',
      budgetRatio: 1.1,
      run: () => sum((instant) => sunDirection(STATION, { instant }).elevationDeg),
    },
  ]);
  const year = {
    station: STATION,
    orbitalLongitudeDeg: 16.4,
    diameterM: 0.9,
    frequencyGHz: 11.7,
    systemNoiseK: 120,
    from: START_MS,
    to: START_MS + 365 * 86400000,
  };
  const outages = measure('a year of sun outages', 1, [
    {
      name: '500 directions of the Sun',
      run: () => sum((instant) => sunDirection(STATION, { instant }).elevationDeg),
    },
    {
      name: 'sunOutages',
      budgetRatio: 2,
      run: () => {
        const found = sunOutages(year);
        return found.kind === 'outages' ? found.events.length : 0;
      },
    },
  ]);
  return [...directions, ...outages];
}
