/** How often, how long and in which month rain takes a hut off the air, and how loud the sky then is. */

import {
  fadeDuration,
  rainAttenuation,
  rainExceedance,
  skyNoise,
  worstMonthPercent,
} from 'slantpath/propagation';

const path = {
  latitudeDeg: 46.4,
  heightM: 600,
  rainHeightKm: 2.9,
  rainRate001MmPerH: 35,
  frequencyGHz: 20,
  elevationDeg: 36,
  tiltDeg: 45,
};

for (const exceededPercent of [1, 0.1, 0.01]) {
  const { attenuationDb } = rainAttenuation({ ...path, exceededPercent });
  console.log(`Exceeded for ${exceededPercent} % of the year: ${attenuationDb.toFixed(2)} dB`);
}

const marginDb = 6;
const outage = rainExceedance(path, marginDb);
if (outage.kind === 'exceeded') {
  const secondsOfYear = 365.25 * 86_400 * (outage.exceededPercent / 100);
  const worst = worstMonthPercent(outage.exceededPercent);
  console.log(
    `\nA margin of ${marginDb} dB is too small for ${outage.exceededPercent.toFixed(3)} % of the year, ` +
      `${(secondsOfYear / 3600).toFixed(1)} hours`,
  );
  console.log(`In the worst month: ${worst.worstMonthPercent.toFixed(3)} % of the time`);
  for (const durationS of [10, 60, 300, 1800]) {
    const fade = fadeDuration({
      ...path,
      attenuationDb: marginDb,
      durationS,
      totalFadeTimeS: secondsOfYear,
    });
    console.log(
      `Fades longer than ${String(durationS).padStart(4)} s: ${fade.fades.toFixed(1).padStart(6)} a year, ` +
        `${(100 * fade.longerTimeRatio).toFixed(0)} % of the outage`,
    );
  }
  console.log(`Sky noise during such a fade: ${skyNoise(marginDb).skyNoiseK.toFixed(0)} K`);
}
