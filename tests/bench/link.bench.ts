/** Budgets: one station beside its bare arithmetic, a whole budget with availability, and 100,000 stations in columns. */

import {
  availabilityBatch,
  availabilityForMargin,
  dvbMode,
  linkBudget,
  linkBudgetWithAvailability,
  rainFade,
} from 'slantpath/link';
import { randomStream } from '../../src/numeric/random.js';
import { type BenchRow, measure } from './measure.js';

const LINK = {
  carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', '8PSK 3/5') },
  downlink: { eirpDbw: 52, frequencyGHz: 12, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
  receiver: { diameterM: 0.6, noiseFigureDb: 0.8 },
};
const PATH = {
  latitudeDeg: 46.4,
  heightM: 400,
  rainHeightKm: 2.9,
  rainRate001MmPerH: 45,
  elevationDeg: 36,
  tiltDeg: 0,
};
const WEATHER = {
  ...PATH,
  wetRefractivityNUnits: 45,
  gasDb: 0.1,
  cloudDb: 0.2,
};

export default function bench(): BenchRow[] {
  const each = 500;
  const repeated = (work: (row: number) => number) => () => {
    let sum = 0;
    for (let row = 0; row < each; row++) sum += work(row);
    return sum;
  };
  const eirpOf = (row: number) => ({
    ...LINK,
    downlink: { ...LINK.downlink, eirpDbw: 50 + (row % 40) / 10 },
  });
  const single = measure(
    'link, one station',
    each,
    [
      { name: 'linkBudget', run: repeated((row) => linkBudget(eirpOf(row)).marginDb) },
      {
        name: 'availabilityForMargin in rain',
        run: repeated((row) => {
          const fade = rainFade({ ...PATH, frequencyGHz: 12 });
          return availabilityForMargin({ link: eirpOf(row), fade }).exceededPercent;
        }),
      },
      {
        name: 'linkBudgetWithAvailability (budget under 1 ms)',
        run: repeated(
          (row) =>
            linkBudgetWithAvailability({ link: eirpOf(row), path: WEATHER }).availability
              .exceededPercent,
        ),
      },
    ],
    9,
  );

  const rows = 100_000;
  const random = randomStream(7);
  const column = (from: number, to: number) =>
    Float64Array.from({ length: rows }, () => from + (to - from) * random.uniform());
  const stations = {
    latitudeDeg: column(-60, 60),
    heightM: column(0, 2000),
    rainHeightKm: column(2.5, 5),
    rainRate001MmPerH: column(10, 110),
    elevationDeg: column(15, 80),
    tiltDeg: column(0, 90),
    slantRangeKm: column(36000, 40500),
    eirpDbw: column(46, 54),
    diameterM: column(0.45, 1.2),
  };
  const out = {
    marginDb: new Float64Array(rows),
    exceededPercent: new Float64Array(rows),
    outcome: new Uint8Array(rows),
  };
  const batch = measure(
    'link, 100,000 stations',
    rows,
    [
      {
        name: 'availabilityBatch',
        run: () => availabilityBatch({ link: LINK, stations }, out).exceededPercent[rows - 1] ?? 0,
      },
    ],
    3,
  );
  const perSecond = 1e9 / (batch[0]?.nanosecondsPerItem ?? 1);
  console.log(`link: ${Math.round(perSecond / 1000)} thousand stations a second in columns`);
  return [...single, ...batch];
}
