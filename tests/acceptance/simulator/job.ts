/** A simulated visit: the true state of every channel, nuisances of plan and instrument, and readings on demand. */

import type {
  CauseCarrier,
  CauseMeasurement,
  CauseObservation,
  CauseTestPoint,
} from 'slantpath/acceptance';
import type { RandomStream } from '../../../src/numeric/random.js';
import type { DrawnFault, Effect } from './fault.js';
import { between, type Scene } from './scene.js';

const NONE: Effect = {
  carrierDb: 0,
  noiseRiseDb: 0,
  unwanted: 0,
  gainDb: 0,
  rotationDeg: 0,
  spoiltIsolation: 0,
  foreign: 0.02,
};

/** True state of a channel. */
interface Truth {
  readonly levelDbuv: number;
  readonly ratioDb: number;
  readonly isolationDb: number;
  readonly foreign: number;
}

/** Nuisances of one visit, drawn once. */
export interface Nuisances {
  readonly shift: (name: string, deviation: number) => number;
}

/** Draws what the plan does not know. */
export function drawNuisances(random: RandomStream): Nuisances {
  const values = new Map<string, number>();
  return {
    shift: (name, deviation) => {
      const known = values.get(name) ?? random.normal();
      values.set(name, known);
      return known * deviation;
    },
  };
}

/** Chances that a look shows something: where it is the cause, and where it is not. */
const CHANCES = {
  rain: [0.94, 0.1],
  sunElsewhere: 0.01,
  obstacle: [0.85, 0.08],
  spectrum: [0.8, 0.05],
  connector: [0.88, 0.1],
  cable: [0.92, 0.06],
} as const;

/** The true channel. */
function truth(
  carrier: CauseCarrier,
  point: CauseTestPoint,
  effect: Partial<Effect>,
  { shift }: Nuisances,
): Truth {
  const e = { ...NONE, ...effect };
  const eirp = shift(`eirp ${carrier.slot}`, 0.6) + shift(`carrier ${carrier.name}`, 0.55);
  const gain = shift(`gain ${carrier.slot}`, 1.2);
  const figure = shift(`noise ${carrier.slot}`, 0.35);
  const loss = lossAt(point, carrier.frequencyMHz);
  const cable = loss * shift(`cable ${point.name}`, 0.05) + shift(`flat ${point.name}`, 0.6);
  const ripple =
    0.5 *
    Math.sin(
      carrier.frequencyMHz / (9 + 3 * shift(`echo ${point.name}`, 1)) +
        shift(`phase ${point.name}`, 3),
    );
  const rest = shift(`aim ${carrier.slot}`, 0.15) ** 2;
  const line = 10 ** ((carrier.levelDbuv + gain - loss - cable + ripple + e.gainDb) / 10);
  const rotation = ((e.rotationDeg + shift(`feed ${carrier.slot}`, 0.8)) * Math.PI) / 180;
  const co = Math.cos(rotation) ** 2;
  // The other polarization is not always in use, and seldom as strong.
  const otherDb = shift(`other ${carrier.name}`, 1.5) - 0.7;
  const other = shift(`used ${carrier.name}`, 1) > -1.3 ? 10 ** (otherDb / 10) : 0;
  const arriving = line * 10 ** ((eirp - rest + e.carrierDb) / 10);
  const power = arriving * co;
  const crossed = arriving * (1 - co) * other;
  const noise =
    line * 10 ** ((e.noiseRiseDb + figure - carrier.carrierToNoiseDb) / 10) +
    10 ** (((point.noiseDbuv ?? 20) + shift(`floor ${point.name}`, 1)) / 10);
  const disturbed = noise + crossed + line * e.unwanted;
  const feed = Math.abs(Math.tan(rotation)) + 10 ** (-(27 + shift(`feed ${carrier.name}`, 2)) / 20);
  const isolation =
    -10 * Math.log10((feed + e.spoiltIsolation) ** 2 + noise / Math.max(power, 1e-9));
  // Demodulators do not show ratios above their own implementation noise.
  const ratio = 1 / (disturbed / power + 10 ** -2.3);
  return {
    levelDbuv: 10 * Math.log10(power + disturbed),
    ratioDb: 10 * Math.log10(ratio),
    isolationDb: isolation,
    foreign: e.foreign,
  };
}

function lossAt(point: CauseTestPoint, frequencyMHz: number): number {
  if (typeof point.lossDb === 'number') return point.lossDb;
  const points = point.lossDb;
  const above = Math.max(
    1,
    points.findIndex((entry) => entry.frequencyMHz >= frequencyMHz),
  );
  const a = points[above - 1];
  const b = points[above];
  if (!a || !b) return points[points.length - 1]?.valueDb ?? 0;
  const share = (frequencyMHz - a.frequencyMHz) / (b.frequencyMHz - a.frequencyMHz);
  return a.valueDb + share * (b.valueDb - a.valueDb);
}

/** A visit from which readings can be taken. */
export interface Visit {
  /** Readings of one carrier at one point: level, reception and, where received, the ratio. */
  readonly readCarrier: (carrier: CauseCarrier, point: CauseTestPoint) => CauseObservation[];
  /** Any one measurement; `undefined` where nothing could be read. */
  readonly read: (measurement: CauseMeasurement) => CauseObservation | undefined;
  /** Largest true change by the fault over these points, in dB. */
  readonly noticeableDb: (points: readonly CauseTestPoint[]) => number;
}

/** Opens a visit. */
export function openVisit(
  scene: Scene,
  fault: DrawnFault,
  nuisances: Nuisances,
  random: RandomStream,
): Visit {
  const { carriers, testPoints } = scene.installation;
  const states = new Map<string, Truth>();
  const stateOf = (carrier: CauseCarrier, point: CauseTestPoint): Truth => {
    const key = `${carrier.name}/${point.name}`;
    const known = states.get(key) ?? truth(carrier, point, fault.effect(carrier, point), nuisances);
    states.set(key, known);
    return known;
  };
  const calibration = nuisances.shift('calibration', 0.5);
  const rounded = (value: number, step: number): number => Math.round(value / step) * step;
  const noisy = (value: number, deviation: number): number => {
    // One reading in fifty is wild: a loose adaptor, a wrong key.
    const wild = random.uniform() < 0.02 ? between(random, -5, 3) : 0;
    return value + deviation * random.normal() + wild;
  };
  const level = (carrier: CauseCarrier, point: CauseTestPoint): CauseObservation => ({
    kind: 'level',
    carrier: carrier.name,
    testPoint: point.name,
    levelDbuv: rounded(noisy(stateOf(carrier, point).levelDbuv + calibration, 0.5), 0.1),
  });
  const ratio = (carrier: CauseCarrier, point: CauseTestPoint): CauseObservation => ({
    kind: 'carrier-to-noise',
    carrier: carrier.name,
    testPoint: point.name,
    carrierToNoiseDb: rounded(noisy(stateOf(carrier, point).ratioDb, 0.4), 0.1),
  });
  const received = new Map<string, 'wanted' | 'other' | 'nothing'>();
  const reception = (carrier: CauseCarrier, point: CauseTestPoint) => {
    const key = `${carrier.name}/${point.name}`;
    const state = stateOf(carrier, point);
    const known =
      received.get(key) ??
      (state.ratioDb > 6 + 0.5 * random.normal()
        ? 'wanted'
        : random.uniform() < state.foreign
          ? 'other'
          : 'nothing');
    received.set(key, known);
    return known;
  };
  const yes = (chance: number): boolean => random.uniform() < chance;
  const read = (m: CauseMeasurement): CauseObservation | undefined => {
    switch (m.kind) {
      case 'level':
      case 'carrier-to-noise':
      case 'isolation':
      case 'reception': {
        const carrier = carriers.find((c) => c.name === m.carrier);
        const point = testPoints.find((p) => p.name === m.testPoint);
        if (!carrier || !point) return undefined;
        if (m.kind === 'level') return level(carrier, point);
        const got = reception(carrier, point);
        if (m.kind === 'reception')
          return { kind: 'reception', carrier: m.carrier, testPoint: m.testPoint, received: got };
        if (got !== 'wanted') return undefined;
        if (m.kind === 'carrier-to-noise') return ratio(carrier, point);
        const isolationDb = rounded(noisy(stateOf(carrier, point).isolationDb, 1.5), 0.5);
        return { kind: 'isolation', carrier: m.carrier, testPoint: m.testPoint, isolationDb };
      }
      case 'polarization-null':
        return {
          ...m,
          turnDeg: rounded(
            -(fault.rotationOf?.(m.slot) ?? 0) +
              nuisances.shift(`feed ${m.slot}`, 0.8) +
              1.2 * random.normal(),
            0.5,
          ),
        };
      case 'search':
        return {
          ...m,
          riseDb: rounded((fault.riseDb?.(m.slot) ?? 0) + Math.abs(0.4 * random.normal()), 0.1),
        };
      case 'supply-voltage':
        return {
          ...m,
          voltageV: rounded(
            (fault.voltageV?.(m.testPoint) ?? 17) +
              nuisances.shift('supply', 0.4) +
              0.2 * random.normal(),
            0.1,
          ),
        };
      case 'mast-lean':
        return {
          ...m,
          leanDeg: Math.abs(
            rounded(
              (fault.leanDeg ?? Math.abs(nuisances.shift('lean', 0.2))) + 0.15 * random.normal(),
              0.1,
            ),
          ),
        };
      case 'repeat-later':
        return { ...m, changeDb: rounded((fault.recoversDb ?? 0) + 0.5 * random.normal(), 0.1) };
      case 'rain-seen':
        return { ...m, seen: yes(CHANCES.rain[fault.raining ? 0 : 1]) };
      case 'sun-near':
        return { ...m, seen: fault.sunSlot === m.slot || yes(CHANCES.sunElsewhere) };
      case 'obstacle-seen':
        return { ...m, seen: yes(CHANCES.obstacle[fault.obstacleSlots?.includes(m.slot) ? 0 : 1]) };
      case 'spectrum':
        return { ...m, seen: yes(CHANCES.spectrum[fault.unwantedCarrier ? 0 : 1]) };
      case 'connector-check':
        return { ...m, seen: yes(CHANCES.connector[fault.badSegment === m.segment ? 0 : 1]) };
      case 'cable-check':
        return { ...m, seen: yes(CHANCES.cable[fault.wrongSegment === m.segment ? 0 : 1]) };
    }
  };
  return {
    read,
    readCarrier: (carrier, point) => {
      const got = reception(carrier, point);
      return [
        level(carrier, point),
        { kind: 'reception', carrier: carrier.name, testPoint: point.name, received: got },
        ...(got === 'wanted' ? [ratio(carrier, point)] : []),
      ];
    },
    noticeableDb: (points) => {
      let largest = 0;
      for (const point of points)
        for (const carrier of carriers) {
          if (point.slot !== undefined && point.slot !== carrier.slot) continue;
          const with_ = stateOf(carrier, point);
          const without = truth(carrier, point, {}, nuisances);
          largest = Math.max(
            largest,
            Math.abs(with_.levelDbuv - without.levelDbuv),
            Math.abs(with_.ratioDb - without.ratioDb),
          );
        }
      return largest;
    },
  };
}
