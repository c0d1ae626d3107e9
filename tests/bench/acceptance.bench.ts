/** Ranking of causes: preparing an installation once, then each visit; and the plain decision beside its formula. */

import { causeRanker, decideConformity } from 'slantpath/acceptance';
import { randomStream } from '../../src/numeric/random.js';
import { drawFault } from '../acceptance/simulator/faults.js';
import { drawNuisances, openVisit } from '../acceptance/simulator/job.js';
import { firstRound } from '../acceptance/simulator/run.js';
import { drawScene } from '../acceptance/simulator/scene.js';
import { type BenchRow, measure } from './measure.js';

export default function bench(): BenchRow[] {
  const random = randomStream(5);
  const scene = drawScene(random, 3);
  const fault = drawFault('bad-connector', scene, random);
  const visit = openVisit(scene, fault, drawNuisances(random), random);
  const observations = firstRound(scene, visit, random);
  const rank = causeRanker({ installation: scene.installation });
  const each = 2000;
  return [
    ...measure('acceptance, one decision', each, [
      {
        name: 'exponential of the squared distance',
        run: () => {
          let sum = 0;
          for (let i = 0; i < each; i++) sum += Math.exp(-0.5 * ((48 + i / each - 47) / 0.8) ** 2);
          return sum;
        },
      },
      {
        name: 'decideConformity',
        run: () => {
          let sum = 0;
          for (let i = 0; i < each; i++)
            sum += decideConformity({
              reading: 48 + i / each,
              standardUncertainty: 0.8,
              lowerLimit: 47,
            }).conformityProbabilityRatio;
          return sum;
        },
      },
    ]),
    ...measure(
      'acceptance, causes of a visit with three slots',
      1,
      [
        {
          name: 'a prepared ranker',
          run: () => rank(observations).ranking[0]?.probabilityRatio ?? 0,
        },
        {
          name: 'preparing it anew',
          run: () =>
            causeRanker({ installation: scene.installation })(observations).ranking[0]
              ?.probabilityRatio ?? 0,
        },
      ],
      9,
    ),
  ];
}
