/** Faults of connectors, cables, parts, supply and units, drawn from ranges. */

import type { CauseCarrier, CauseTestPoint } from 'slantpath/acceptance';
import type { RandomStream } from '../../../src/numeric/random.js';
import { type DrawnFault, perName } from './fault.js';
import { seriesLossDb, shuntLossDb } from './physics.js';
import { between, oneFrom, type Scene } from './scene.js';

/** Whether a point lies behind a stretch. */
export function behind(segment: string, point: CauseTestPoint): boolean {
  return point.slot === undefined && (point.name === segment || point.behind === segment);
}

/** Shared segments, and leads where there are several units. */
function drawStretch(scene: Scene, random: RandomStream) {
  const { slots } = scene.installation;
  const lead = slots.length > 1 && random.uniform() < 0.4;
  const location = lead
    ? `lead of ${oneFrom(random, slots).name}`
    : oneFrom(random, ['head', 'outlet 1', 'outlet 2']);
  return {
    location,
    holds: (carrier: CauseCarrier, point: CauseTestPoint): boolean =>
      lead
        ? point.slot === undefined && location === `lead of ${carrier.slot}`
        : behind(location, point),
  };
}

export function connectorFault(scene: Scene, random: RandomStream): DrawnFault {
  const { location, holds } = drawStretch(scene, random);
  const type = random.integer(3);
  const resistance = between(random, 5, 120);
  const capacitancePf = Math.exp(between(random, Math.log(0.1), Math.log(1.5)));
  const conductance = Math.exp(between(random, Math.log(0.01), Math.log(0.15)));
  const shuntPf = between(random, 0.5, 5);
  const soaked = between(random, 3, 14);
  const soakedExponent = between(random, 0.7, 1.4);
  const reflection = between(random, 0.05, 0.2);
  const echoMHz = between(random, 5, 60);
  const phase = between(random, 0, 2 * Math.PI);
  const lossDb = (frequencyMHz: number): number => {
    const w = 2 * Math.PI * frequencyMHz * 1e6;
    const ripple =
      20 * Math.log10(1 + reflection * Math.cos(phase + (2 * Math.PI * frequencyMHz) / echoMHz));
    if (type === 0) return seriesLossDb(resistance, -1e12 / (w * capacitancePf)) - ripple;
    if (type === 1) return shuntLossDb(conductance, w * shuntPf * 1e-12) - ripple;
    return soaked * (frequencyMHz / 1000) ** soakedExponent - ripple;
  };
  const drop = between(random, 0, 2);
  return {
    cause: 'bad-connector',
    location,
    effect: (carrier, point) =>
      holds(carrier, point) ? { gainDb: -lossDb(carrier.frequencyMHz) } : {},
    badSegment: location,
    voltageV: (point) => (location === point || location === 'head' ? 17 - drop : 17),
  };
}

export function cableFault(scene: Scene, random: RandomStream): DrawnFault {
  const { location, holds } = drawStretch(scene, random);
  const lengthM = between(random, 15, 70);
  const skin = between(random, 17, 30);
  const dielectric = between(random, 0.3, 3);
  const lossDb = (frequencyMHz: number): number => {
    const f = frequencyMHz / 1000;
    return ((skin * Math.sqrt(f) + dielectric * f) * lengthM) / 100;
  };
  const ohms = between(random, 3, 12);
  return {
    cause: 'wrong-cable',
    location,
    effect: (carrier, point) =>
      holds(carrier, point) ? { gainDb: -lossDb(carrier.frequencyMHz) } : {},
    wrongSegment: location,
    voltageV: (point) =>
      location === point || location === 'head' ? 17 - (0.15 * ohms * lengthM) / 100 : 17,
  };
}

export function partFault(scene: Scene, random: RandomStream): DrawnFault {
  const { slots, testPoints, carriers } = scene.installation;
  const amplified = testPoints.find((point) => (point.amplifierGainDb ?? 0) > 0);
  const slope = between(random, -3, 3);
  const tilt = (frequencyMHz: number): number => slope * (frequencyMHz / 1000 - 1.5);
  const type = random.integer(amplified ? 4 : 3);
  if (type === 3 && amplified) {
    const loss = (amplified.amplifierGainDb ?? 0) + between(random, 0, 9);
    return {
      cause: 'part-failed',
      location: amplified.name,
      effect: (carrier, point) =>
        behind(amplified.name, point) ? { gainDb: -loss - tilt(carrier.frequencyMHz) } : {},
    };
  }
  const loss = between(random, 14, 42);
  if (type === 0) {
    const segment = oneFrom(random, ['head', 'outlet 1', 'outlet 2']);
    return {
      cause: 'part-failed',
      location: segment,
      effect: (carrier, point) =>
        behind(segment, point) ? { gainDb: -loss - tilt(carrier.frequencyMHz) } : {},
    };
  }
  if (type === 1) {
    const slot = oneFrom(random, slots).name;
    return {
      cause: 'part-failed',
      location: `unit of ${slot}`,
      effect: (carrier) => (carrier.slot === slot ? { gainDb: -between(random, 28, 45) } : {}),
    };
  }
  const port = oneFrom(random, carriers);
  return {
    cause: 'part-failed',
    location: `port ${port.slot} ${port.polarization} ${port.band}`,
    effect: (carrier, point) =>
      point.slot === undefined &&
      carrier.slot === port.slot &&
      carrier.band === port.band &&
      carrier.polarization === port.polarization
        ? { gainDb: -loss - tilt(carrier.frequencyMHz) }
        : {},
  };
}

export function supplyFault(_scene: Scene, random: RandomStream): DrawnFault {
  const place = oneFrom(random, [null, 'outlet 1', 'outlet 2']);
  const type = random.integer(5);
  const voltage =
    type < 2
      ? between(random, 12.2, 15.2)
      : type < 4
        ? between(random, 13.5, 17.2)
        : between(random, 3, 11);
  const other = perName(() => (random.uniform() < 0.25 ? 0 : 10 ** (between(random, -6, 2) / 10)));
  const foreign = perName(() => between(random, 0.2, 0.8));
  return {
    cause: 'supply-low',
    location: place,
    effect: (carrier, point) => {
      if (point.slot !== undefined || (place !== null && point.name !== place)) return {};
      if (type >= 4) return { gainDb: -between(random, 32, 50) };
      const lost = type < 2 ? carrier.polarization === 'horizontal' : carrier.band === 'high';
      if (!lost) return {};
      return {
        carrierDb: -between(random, 20, 32),
        unwanted: other(carrier.name),
        foreign: foreign(carrier.name),
        spoiltIsolation: 3,
      };
    },
    voltageV: (point) => (place === null || place === point ? voltage : 17),
  };
}

export function unitFault(scene: Scene, random: RandomStream): DrawnFault {
  const slot = oneFrom(random, scene.installation.slots).name;
  const type = random.integer(4);
  const noise = between(random, 2, 8);
  const lost = between(random, 4, 16);
  const half = oneFrom(random, ['low', 'high', 'horizontal', 'vertical']);
  const noiseShare = between(random, 0, 0.35);
  const clipped = perName(() => between(random, 1.5, 6));
  return {
    cause: 'unit-out-of-tolerance',
    location: slot,
    effect: (carrier) => {
      if (carrier.slot !== slot) return {};
      if (type === 0) return { noiseRiseDb: noise + between(random, -0.4, 0.4) };
      // An oscillator off its frequency: the filter of the receiver cuts each carrier differently.
      if (type === 1)
        return { unwanted: 10 ** ((clipped(carrier.name) - carrier.carrierToNoiseDb) / 10) };
      const hit = type === 2 || carrier.band === half || carrier.polarization === half;
      return hit
        ? {
            gainDb: -lost - 2 * (carrier.frequencyMHz / 1000 - 1.5),
            noiseRiseDb: noiseShare * lost,
          }
        : {};
    },
  };
}
