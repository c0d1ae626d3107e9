/** From records to a better plan: EIRP of a region, drift of a site, rain, and acceptance of a lot by sampling. */

import {
  acceptanceProbability,
  badRatioAccepted,
  samplingPlan,
  shareInterval,
} from 'slantpath/acceptance';
import { footprintCorrection, rainExperience, siteDrift } from 'slantpath/experience';

// A hundred invented records: twenty-five villages with four each, more than planned in the east.
const records = Array.from({ length: 100 }, (_, index) => {
  const village = index % 25;
  const latitudeDeg = 45.6 + 0.4 * Math.floor(village / 5) + 0.1 * (village % 3);
  const longitudeDeg = 8.2 + 0.6 * (village % 5) + 0.1 * (village % 2);
  const scatter = ((index * 37) % 11) / 10 - 0.5;
  const excessDb = 0.4 + 0.35 * (longitudeDeg - 9.4) - 0.2 * (latitudeDeg - 46.4) + scatter;
  return { latitudeDeg, longitudeDeg, excessDb, standardUncertaintyDb: 0.5 };
});
const learnt = footprintCorrection(records);
for (const place of [
  { latitudeDeg: 46.4, longitudeDeg: 9.6 },
  { latitudeDeg: 46.4, longitudeDeg: 14.6 },
]) {
  const { correctionDb, standardUncertaintyDb, nearestKm } = learnt.at(place);
  console.log(
    `at ${place.longitudeDeg} E: ${correctionDb.toFixed(1)} ± ${(2 * standardUncertaintyDb).toFixed(1)} dB, nearest record ${nearestKm.toFixed(0)} km`,
  );
}

const drift = siteDrift({
  visits: [
    { at: '2023-05-01', levelDb: 14.9 },
    { at: '2024-05-01', levelDb: 14.5 },
    { at: '2025-05-01', levelDb: 14.15 },
    { at: '2026-05-01', levelDb: 13.75 },
  ],
  allowedLossDb: 1.5,
});
console.log(
  `${drift.kind}: ${drift.perYearDb.toFixed(2)} ± ${drift.halfWidth95Db.toFixed(2)} dB a year`,
);

const years = [60, 150, 90, 200].map((observedMin) => ({ predictedMin: 100, observedMin }));
const rain = rainExperience({ years });
console.log(
  `rain: ${rain.observedOverPredictedRatio.toFixed(2)} of the prediction, ${rain.fromRatio.toFixed(2)} to ${rain.toRatio.toFixed(2)}`,
);

const plan = samplingPlan({ lotSize: 300, acceptableQualityPercent: 2.5 });
console.log(`look at ${plan.sampleSize}, accept with ${plan.acceptanceNumber} bad ones or fewer`);
for (const badRatio of [0.025, 0.05, 0.1, 0.15])
  console.log(
    `${(100 * badRatio).toFixed(1)} % bad: accepted with ${(100 * acceptanceProbability({ ...plan, badRatio })).toFixed(1)} %`,
  );
const risk = badRatioAccepted({ ...plan, probabilityRatio: 0.1 });
console.log(`${(100 * risk).toFixed(1)} % bad still pass one time in ten`);
const { fromRatio, toRatio } = shareInterval({ count: 1, of: plan.sampleSize });
console.log(
  `1 of ${plan.sampleSize} bad: ${(100 * fromRatio).toFixed(1)} to ${(100 * toRatio).toFixed(1)} % of the lot`,
);
