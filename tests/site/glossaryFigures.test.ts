/** Figures of the glossary, computed again with the library. */

import { readFileSync } from 'node:fs';
import { fadeDuration } from 'slantpath/propagation';
import { expect, test } from 'vitest';

/** The entry of an outage: shares of the number and of the time. */
const CLAIMS = [
  [
    'docs/reference/glossary.mdx',
    /At least (two thirds) of all rain outages are shorter than a minute, but the longest (quarter) of them makes up at least (\d+) % of the time/,
  ],
  [
    'docs/de/reference/glossary.mdx',
    /Mindestens (zwei Drittel) aller Regenausfälle sind kürzer als eine Minute, doch das längste (Viertel) macht mindestens (\d+) % der Zeit aus/,
  ],
] as const;

test.each(CLAIMS)('%s: number and time of outages', (path, claim) => {
  const percent = Number(claim.exec(readFileSync(path, 'utf8'))?.[3]);
  let [leastShort, leastTime] = [1, 1];
  for (const frequencyGHz of [10, 12, 14, 20, 30, 50])
    for (const elevationDeg of [5, 10, 20, 40, 60])
      for (const attenuationDb of [1, 3, 10, 30]) {
        const longer = (durationS: number) =>
          fadeDuration({
            frequencyGHz,
            elevationDeg,
            attenuationDb,
            durationS,
            totalFadeTimeS: 15_000,
          });
        const all = longer(1).fades;
        leastShort = Math.min(leastShort, 1 - longer(60).fades / all);
        let durationS = 1;
        while (longer(durationS).fades > all / 4) durationS *= 1.02;
        leastTime = Math.min(leastTime, longer(durationS).longerTimeRatio);
      }
  expect(leastShort).toBeGreaterThanOrEqual(2 / 3);
  // The worst cell is meant, so that the figure is not far below it either.
  expect(100 * leastTime).toBeGreaterThanOrEqual(percent);
  expect(100 * leastTime).toBeLessThan(percent + 2);
});
