/** A spring of sun outages at a hut: start, peak, end, loss; and one of them minute by minute. */

import { sunOutageCourse, sunOutages } from 'slantpath/sun';

const reception = {
  station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
  orbitalLongitudeDeg: 16.4,
  diameterM: 0.9,
  frequencyGHz: 11.7,
  systemNoiseK: 120,
};
const outages = sunOutages({
  ...reception,
  thresholdLossDb: 3,
  from: '2026-01-01',
  to: '2026-07-01',
});
if (outages.kind === 'outages') {
  for (const { startUtc, peakUtc, endUtc, lossDb } of outages.events)
    console.log(
      `${startUtc.slice(0, 10)}  ${[startUtc, peakUtc, endUtc].map((utc) => utc.slice(11, 19)).join('  ')}  ${lossDb.toFixed(1)} dB`,
    );
  const near = outages.events[3]?.peakUtc;
  if (near !== undefined)
    for (const moment of sunOutageCourse({ ...reception, near, halfSpanMin: 6, stepS: 120 }))
      console.log(`${moment.instantUtc.slice(11, 19)}  ${moment.lossDb.toFixed(2)} dB`);
}
