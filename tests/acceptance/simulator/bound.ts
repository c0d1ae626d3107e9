/**
 * The best that can be made of what was observed: causes ranked by a search that knows the simulator's own faults, chances and
 * uncertainties. Faults and what is not linear are drawn from the generator; tolerances in decibels are integrated in closed form, and up to
 * two readings may be wild. Its own error is that of so many draws, so the true bound lies a little higher.
 */

import type { CauseObservation, FaultCause } from 'slantpath/acceptance';
import { normalProbability } from '../../../src/numeric/normal.js';
import { randomStream } from '../../../src/numeric/random.js';
import type { DrawnFault, World } from './fault.js';
import { drawFault } from './faults.js';
import { CHANCES, drawNuisances, type Nuisances, openVisit, truth } from './job.js';
import type { Scene } from './scene.js';

/** What decibels of a channel hang on linearly, by name of a tolerance; level readings hang on the calibration too. */
const tolerancesOf = (carrier: string, slot: string, point: string): readonly string[] => [
  `eirp ${slot}`,
  `carrier ${carrier}`,
  `gain ${slot}`,
  `noise ${slot}`,
  `cable ${point}`,
  `flat ${point}`,
  `floor ${point}`,
];

/** A channel of a draw: its means, and by how much one standard deviation of each tolerance moves them. */
interface DrawnChannel {
  readonly levelDbuv: number;
  readonly ratioDb: number;
  readonly isolationDb: number;
  readonly foreign: number;
  readonly levelMoves: Moves;
  readonly ratioMoves: Moves;
}

/** What tolerances do to a reading, by their number; most do nothing. */
interface Moves {
  readonly by: Float64Array;
  readonly touches: readonly number[];
}

/** One fault drawn, with the channels that were asked for so far. */
interface Draw {
  readonly fault: DrawnFault;
  readonly nuisances: Nuisances;
  readonly channels: Map<string, DrawnChannel>;
  readonly values: Map<string, number>;
  /** Numbers of the tolerances of the installation. */
  readonly numbers: Map<string, number>;
}

/** Faults of one cause as the simulator would show them: those that can be noticed. */
function drawsOf(
  scene: Scene,
  cause: FaultCause,
  count: number,
  world: World,
  numbers: Map<string, number>,
): readonly Draw[] {
  const outlets = scene.installation.testPoints.filter((point) => point.slot === undefined);
  const draws: Draw[] = [];
  for (let number = 1; draws.length < count && number < 40 * count; number++) {
    const random = randomStream(900_001 * number + cause.length * 17 + cause.charCodeAt(0));
    const drawn = drawFault(cause, scene, random, world);
    const effects = new Map<string, ReturnType<DrawnFault['effect']>>();
    // Some effects draw anew when asked, so each is asked once.
    const fault: DrawnFault = {
      ...drawn,
      effect: (carrier, point) => {
        const key = `${carrier.name}/${point.name}`;
        const known = effects.get(key) ?? drawn.effect(carrier, point);
        effects.set(key, known);
        return known;
      },
    };
    const nuisances = drawNuisances(random);
    const visit = openVisit(scene, fault, nuisances, random);
    if (cause !== 'nothing' && visit.noticeableDb(outlets) < 2.5) continue;
    draws.push({ fault, nuisances, channels: new Map(), values: new Map(), numbers });
  }
  return draws;
}

/** Most tolerances of an installation, and the number of the one that all levels share. */
const MOST_TOLERANCES = 64;
const CALIBRATION = 0;

/** Number of a tolerance in an installation, given when it is first asked for. */
function numberOf(numbers: Map<string, number>, name: string): number {
  const number = numbers.get(name) ?? numbers.size + 1;
  if (number >= MOST_TOLERANCES) throw new Error('more tolerances than there is room for');
  numbers.set(name, number);
  return number;
}

function channelOf(scene: Scene, draw: Draw, carrierName: string, pointName: string): DrawnChannel {
  const key = `${carrierName}/${pointName}`;
  const known = draw.channels.get(key);
  if (known) return known;
  const carrier = scene.installation.carriers.find(({ name }) => name === carrierName);
  const point = scene.installation.testPoints.find(({ name }) => name === pointName);
  if (!carrier || !point) throw new Error(`no channel ${key}`);
  const names = tolerancesOf(carrier.name, carrier.slot, point.name);
  const effect = draw.fault.effect(carrier, point);
  const at = (moved: string | undefined) =>
    truth(carrier, point, effect, {
      shift: (name, deviation) =>
        names.includes(name)
          ? name === moved
            ? deviation
            : 0
          : draw.nuisances.shift(name, deviation),
    });
  const middle = at(undefined);
  const touches = [CALIBRATION, ...names.map((name) => numberOf(draw.numbers, name))];
  const levelMoves = { by: new Float64Array(MOST_TOLERANCES), touches };
  const ratioMoves = { by: new Float64Array(MOST_TOLERANCES), touches };
  levelMoves.by[CALIBRATION] = 0.5;
  names.forEach((name, i) => {
    const moved = at(name);
    const number = touches[i + 1] as number;
    levelMoves.by[number] = moved.levelDbuv - middle.levelDbuv;
    ratioMoves.by[number] = moved.ratioDb - middle.ratioDb;
  });
  const made = { ...middle, levelMoves, ratioMoves };
  draw.channels.set(key, made);
  return made;
}

const logNormal = (away: number, deviation: number): number =>
  -0.5 * (away / deviation) ** 2 - Math.log(deviation) - 0.5 * Math.log(2 * Math.PI);

/** Share of wild readings and their extra spread: between -5 and 3 dB. */
const WILD = { share: 0.02, mean: -1, variance: 64 / 12 };

/** Logarithm of the density of readings with up to two wild ones among them. */
function logReadings(away: Float64Array, covariance: readonly Float64Array[]): number {
  const n = away.length;
  if (n === 0) return 0;
  // Inverse and determinant by Gauss-Jordan; a covariance needs no pivoting.
  const inverse = covariance.map((row) => Float64Array.from(row));
  let logDeterminant = 0;
  for (let k = 0; k < n; k++) {
    const own = inverse[k] as Float64Array;
    const pivot = own[k] as number;
    logDeterminant += Math.log(pivot);
    own[k] = 1;
    for (let j = 0; j < n; j++) own[j] = (own[j] as number) / pivot;
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const row = inverse[i] as Float64Array;
      const share = row[k] as number;
      row[k] = 0;
      for (let j = 0; j < n; j++) row[j] = (row[j] as number) - share * (own[j] as number);
    }
  }
  const pulled = Float64Array.from(inverse, (row) =>
    row.reduce((sum, value, j) => sum + value * (away[j] as number), 0),
  );
  const square = pulled.reduce((sum, value, i) => sum + value * (away[i] as number), 0);
  const sound = -0.5 * square - 0.5 * logDeterminant - 0.5 * n * Math.log(2 * Math.PI);
  const odds = Math.log(WILD.share / (1 - WILD.share));
  /** What is gained where reading i is wild: from its place by the others, sure to `variance`, to a wide one. */
  const gain = (variance: number, off: number) =>
    odds +
    logNormal(off - WILD.mean, Math.sqrt(variance + WILD.variance)) -
    logNormal(off, Math.sqrt(variance));
  const gains: number[] = [];
  let best = 0;
  for (let i = 0; i < n; i++) {
    const own = (inverse[i] as Float64Array)[i] as number;
    gains.push(gain(1 / own, (pulled[i] as number) / own));
    if ((gains[i] as number) > (gains[best] as number)) best = i;
  }
  // With the likeliest wild one out, each of the others as a second.
  const out = inverse[best] as Float64Array;
  const outOwn = out[best] as number;
  let more = 1 + gains.reduce((sum, value) => sum + Math.exp(value), 0);
  for (let j = 0; j < n; j++) {
    if (j === best) continue;
    const cross = out[j] as number;
    const own = ((inverse[j] as Float64Array)[j] as number) - (cross * cross) / outOwn;
    const pull = (pulled[j] as number) - (cross * (pulled[best] as number)) / outOwn;
    more += Math.exp((gains[best] as number) + gain(1 / own, pull / own));
  }
  return sound + n * Math.log(1 - WILD.share) + Math.log(more);
}

const logChance = (seen: boolean, chance: number): number =>
  Math.log(Math.max(1e-9, seen ? chance : 1 - chance));

/** Value of a draw that the simulator may draw anew whenever it is asked. */
function once(draw: Draw, key: string, value: () => number): number {
  const known = draw.values.get(key) ?? value();
  draw.values.set(key, known);
  return known;
}

/** Logarithm of the chance of a look or of the density of a check. */
function logCheck(seen: CauseObservation, draw: Draw): number {
  const { fault, nuisances } = draw;
  switch (seen.kind) {
    case 'rain-seen':
      return logChance(seen.seen, CHANCES.rain[fault.raining ? 0 : 1]);
    case 'sun-near':
      return logChance(seen.seen, fault.sunSlot === seen.slot ? 1 : CHANCES.sunElsewhere);
    case 'obstacle-seen':
      return logChance(
        seen.seen,
        CHANCES.obstacle[fault.obstacleSlots?.includes(seen.slot) ? 0 : 1],
      );
    case 'spectrum':
      return logChance(seen.seen, CHANCES.spectrum[fault.unwantedCarrier ? 0 : 1]);
    case 'connector-check':
      return logChance(seen.seen, CHANCES.connector[fault.badSegment === seen.segment ? 0 : 1]);
    case 'cable-check':
      return logChance(seen.seen, CHANCES.cable[fault.wrongSegment === seen.segment ? 0 : 1]);
    case 'polarization-null': {
      const turn =
        -(fault.rotationOf?.(seen.slot) ?? 0) + nuisances.shift(`feed ${seen.slot}`, 0.8);
      return logNormal(seen.turnDeg - turn, 1.2);
    }
    case 'search': {
      const rise = once(draw, `rise ${seen.slot}`, () => fault.riseDb?.(seen.slot) ?? 0);
      const above = seen.riseDb - rise;
      // Half a normal distribution, its start rounded to a tenth.
      return above < -0.05 ? -30 : Math.log(2) + logNormal(above, 0.41);
    }
    case 'supply-voltage':
      return logNormal(
        seen.voltageV - (fault.voltageV?.(seen.testPoint) ?? 17),
        Math.hypot(0.4, 0.2),
      );
    case 'mast-lean': {
      const lean = fault.leanDeg ?? Math.abs(nuisances.shift('lean', 0.2));
      return Math.log(
        Math.exp(logNormal(seen.leanDeg - lean, 0.155)) +
          Math.exp(logNormal(seen.leanDeg + lean, 0.155)),
      );
    }
    case 'repeat-later':
      return logNormal(seen.changeDb - (fault.recoversDb ?? 0), 0.5);
    default:
      return 0;
  }
}

const UNMOVED: Moves = { by: new Float64Array(MOST_TOLERANCES), touches: [] };

/** Logarithm of how likely a draw makes all that was observed. */
function logLikelihood(
  scene: Scene,
  observations: readonly CauseObservation[],
  draw: Draw,
  hopeless: number,
): number {
  let log = 0;
  const away: number[] = [];
  const noises: number[] = [];
  const moves: Moves[] = [];
  const ratiosRead = new Set(
    observations.flatMap((seen) =>
      seen.kind === 'carrier-to-noise' ? [`${seen.carrier}/${seen.testPoint}`] : [],
    ),
  );
  for (const seen of observations) log += logCheck(seen, draw);
  // Looks that rule a draw out leave nothing to weigh.
  if (log < hopeless) return Number.NEGATIVE_INFINITY;
  for (const seen of observations) {
    if (!('carrier' in seen)) continue;
    const shown = channelOf(scene, draw, seen.carrier, seen.testPoint);
    if (seen.kind === 'level') {
      away.push(seen.levelDbuv - shown.levelDbuv);
      noises.push(0.5 ** 2);
      moves.push(shown.levelMoves);
    } else if (seen.kind === 'carrier-to-noise') {
      away.push(seen.carrierToNoiseDb - shown.ratioDb);
      noises.push(0.4 ** 2);
      moves.push(shown.ratioMoves);
    } else if (seen.kind === 'isolation') {
      away.push(seen.isolationDb - shown.isolationDb);
      noises.push(1.5 ** 2 + 0.02);
      moves.push(UNMOVED);
    } else if (seen.kind === 'reception') {
      // Where the ratio itself was read, it says the rest.
      if (ratiosRead.has(`${seen.carrier}/${seen.testPoint}`)) continue;
      let variance = 0.25;
      for (const move of shown.ratioMoves.by) variance += move * move;
      const wanted = normalProbability((shown.ratioDb - 6) / Math.sqrt(variance));
      log += logChance(seen.received === 'wanted', wanted);
      if (seen.received !== 'wanted') log += logChance(seen.received === 'other', shown.foreign);
    }
  }
  const covariance = moves.map((a, i) =>
    Float64Array.from(moves, (b, j) => {
      let sum = i === j ? (noises[i] as number) : 0;
      for (const number of a.touches) sum += (a.by[number] as number) * (b.by[number] as number);
      return sum;
    }),
  );
  return log + logReadings(Float64Array.from(away), covariance);
}

/** Ranks causes by the simulator's own truth; each cause is as likely as the others before anything is read. */
export function truthRanker(
  scene: Scene,
  causes: readonly FaultCause[],
  options: { readonly draws: number; readonly world: World },
): (observations: readonly CauseObservation[]) => readonly FaultCause[] {
  const numbers = new Map<string, number>();
  const drawn = causes.map((cause) => drawsOf(scene, cause, options.draws, options.world, numbers));
  return (observations) => {
    const scores = drawn.map((draws, index) => {
      let best = -200;
      const logs = draws.map((draw) => {
        const log = logLikelihood(scene, observations, draw, best - 15);
        best = Math.max(best, log);
        return log;
      });
      const sum = logs.reduce((total, log) => total + Math.exp(log - best), 0);
      return { cause: causes[index] as FaultCause, log: best + Math.log(sum / draws.length) };
    });
    return scores.sort((a, b) => b.log - a.log).map(({ cause }) => cause);
  };
}
