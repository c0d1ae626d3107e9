/** Runs simulated visits through the search of causes and counts what it finds. */

import {
  type CauseObservation,
  type CauseRanking,
  causeRanker,
  type FaultCause,
} from 'slantpath/acceptance';
import { type RandomStream, randomStream } from '../../../src/numeric/random.js';
import type { DrawnFault, World } from './fault.js';
import { drawFault } from './faults.js';
import { drawNuisances, openVisit, type Visit } from './job.js';
import { drawScene, type Scene } from './scene.js';

/** The causes that are simulated. */
export const SIMULATED: readonly FaultCause[] = [
  'rain',
  'sun-outage',
  'interference',
  'obstructed',
  'wrong-slot',
  'side-lobe',
  'mispointed',
  'mast-leaning',
  'polarization-rotated',
  'unit-out-of-tolerance',
  'supply-low',
  'bad-connector',
  'wrong-cable',
  'part-failed',
  'overloaded',
];

/** What a technician has looked at and read before asking. */
export function firstRound(
  scene: Scene,
  visit: Visit,
  random: RandomStream,
  world: World = 'usual',
): CauseObservation[] {
  const sparse = world === 'sparse';
  const { carriers, slots, testPoints } = scene.installation;
  const observations: CauseObservation[] = [];
  const take = (observation: CauseObservation | undefined): void => {
    if (observation) observations.push(observation);
  };
  const chosen = testPoints.filter(
    (point) =>
      (sparse ? point.name === 'outlet 1' : point.name.startsWith('outlet')) ||
      random.uniform() <
        (sparse ? (point.name === 'outlet 2' ? 0 : 0.3) : point.slot === undefined ? 0.6 : 0.4),
  );
  for (const point of chosen)
    for (const carrier of carriers)
      if (point.slot === undefined || point.slot === carrier.slot)
        observations.push(...visit.readCarrier(carrier, point));
  take(visit.read({ kind: 'rain-seen' }));
  if (random.uniform() < (sparse ? 0.2 : 0.7)) take(visit.read({ kind: 'mast-lean' }));
  for (const slot of slots) {
    take(visit.read({ kind: 'sun-near', slot: slot.name }));
    if (random.uniform() < 0.7) take(visit.read({ kind: 'obstacle-seen', slot: slot.name }));
    const carrier = carriers.find((c) => c.slot === slot.name);
    if (carrier && random.uniform() < 0.5)
      take(visit.read({ kind: 'isolation', carrier: carrier.name, testPoint: 'head' }));
  }
  return observations;
}

/** One simulated job with its rankings, before and after the measurements that the search asked for. */
export interface SimulatedJob {
  readonly scene: Scene;
  readonly fault: DrawnFault;
  /** All that was observed, and how much of it before anything was asked for. */
  readonly observations: readonly CauseObservation[];
  readonly before: number;
  readonly first: CauseRanking;
  readonly last: CauseRanking;
  readonly asked: number;
}

/** Runs `count` jobs over `sceneCount` installations. */
export function simulate(options: {
  readonly seed: number;
  readonly sceneCount: number;
  readonly count: number;
  readonly causes: readonly FaultCause[];
  readonly mostAsked: number;
  readonly world?: World;
  /** Whether the search is told that something is wrong, as who is called to a fault knows. */
  readonly told?: boolean;
}): readonly SimulatedJob[] {
  const sceneRandom = randomStream(options.seed);
  const scenes = Array.from({ length: options.sceneCount }, (_, i) => {
    const scene = drawScene(sceneRandom, [3, 2, 3, 1][i % 4] ?? 3);
    return {
      scene,
      rank: causeRanker({
        installation: scene.installation,
        ...(options.told ? { priorWeights: { nothing: 0 } } : {}),
      }),
    };
  });
  const jobs: SimulatedJob[] = [];
  // Each job has a stream of its own, so that what is asked in one does not change the next.
  for (let number = 1; jobs.length < options.count; number++) {
    const random = randomStream(options.seed * 1_000_003 + number);
    const { scene, rank } = scenes[jobs.length % scenes.length] as (typeof scenes)[0];
    const cause = options.causes[
      Math.floor(jobs.length / scenes.length) % options.causes.length
    ] as FaultCause;
    const fault = drawFault(cause, scene, random, options.world);
    const visit = openVisit(scene, fault, drawNuisances(random), random);
    // Nobody is called for a fault that cannot be seen.
    const outlets = scene.installation.testPoints.filter((point) => point.slot === undefined);
    if (cause !== 'nothing' && visit.noticeableDb(outlets) < 2.5) continue;
    const observations = firstRound(scene, visit, random, options.world);
    const before = observations.length;
    const first = rank(observations);
    let last = first;
    let asked = 0;
    while (last.kind === 'cannot-tell' && last.next && asked < options.mostAsked) {
      const more = visit.read(last.next.measurement);
      asked++;
      if (!more) break;
      observations.push(more);
      last = rank(observations);
    }
    jobs.push({ scene, fault, observations, before, first, last, asked });
  }
  return jobs;
}

/** Share of jobs whose true cause is among the first `places`. */
export function shareWithin(
  jobs: readonly SimulatedJob[],
  places: number,
  stage: 'first' | 'last',
): number {
  const right = jobs.filter((job) =>
    job[stage].ranking.slice(0, places).some(({ cause }) => cause === job.fault.cause),
  );
  return right.length / jobs.length;
}
