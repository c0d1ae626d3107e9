/** Records of many jobs, read one by one: EIRP by place, offsets of units and instruments, sites that fall. */

import { type ExperienceRecord, recordExperience } from 'slantpath/experience';

/** Twelve invented villages: the EIRP 0.8 dB above the plan, instrument B 1.5 dB too high in level, old units 2 dB less gain. */
const records = Array.from({ length: 12 }, (_, village): ExperienceRecord => {
  const deviationDb = ((village * 37) % 11) / 20 - 0.25;
  const ratioDb = 0.8 + deviationDb;
  const instrument = village % 2 === 0 ? 'A' : 'B';
  const verdict = {
    visit: 0,
    testPoint: 'antenna',
    slot: 'middle',
    carrier: 'news',
    standardUncertainty: 0.5,
    bound: null,
  };
  // The last village was read in the rain: it teaches nothing.
  const wet = village === 11;
  // The first has lost half a decibel a year.
  const visits = ['2024-05-01', '2025-05-01', '2026-05-01'].map((date, year) => ({
    date,
    instrument,
    weather: wet ? 'rain' : 'clear',
    readings: [
      {
        quantity: 'carrier-to-noise',
        testPoint: 'antenna',
        slot: 'middle',
        carrier: 'news',
        carrierToNoiseDb: 14 + ratioDb - (village === 0 ? 0.5 * year : 0),
      },
    ],
  }));
  return {
    job: {
      station: {
        name: `village ${village + 1}`,
        latitudeDeg: 45.6 + 0.3 * Math.floor(village / 4),
        longitudeDeg: 8.2 + 0.6 * (village % 4),
      },
      visits,
    },
    plan: {
      signals: [{ slot: 'middle', carrier: 'news', unit: village % 4 < 2 ? 'new LNB' : 'old LNB' }],
    },
    verdicts: [
      { ...verdict, quantity: 'carrier-to-noise', difference: ratioDb, wet },
      {
        ...verdict,
        quantity: 'level',
        difference: ratioDb + (instrument === 'B' ? 1.5 : 0) - (village % 4 < 2 ? 0 : 2),
        wet,
      },
    ],
  };
});

const learnt = recordExperience(records);
console.log(`${learnt.records} records, ${learnt.leftOut.wet} verdicts in rain left out`);
for (const { carrier, stations, correction } of learnt.carriers) {
  const here = correction.at({ latitudeDeg: 45.9, longitudeDeg: 8.9 });
  console.log(
    `${carrier}, read at ${stations} places: ${here.correctionDb.toFixed(1)} ± ${(2 * here.standardUncertaintyDb).toFixed(1)} dB on the planned EIRP`,
  );
}
const { offsets } = learnt;
if (offsets.kind === 'offsets') {
  for (const { unit, offsetDb } of offsets.units) console.log(`${unit}: ${offsetDb.toFixed(1)} dB`);
  for (const { site, departureDb } of offsets.sites)
    console.log(`instrument ${site}: ${departureDb.toFixed(1)} dB from the mean of both`);
}
for (const { station, drift } of learnt.drifts)
  if (drift.kind === 'drift') console.log(`${station}: ${drift.perYearDb.toFixed(2)} dB a year`);
