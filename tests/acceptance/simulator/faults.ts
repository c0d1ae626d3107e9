/** Faults of the simulator, drawn from ranges: what each does to the true state of every channel. */

import type { CauseCarrier, CauseTestPoint, FaultCause } from 'slantpath/acceptance';
import { specificRainAttenuation } from 'slantpath/propagation';
import type { RandomStream } from '../../../src/numeric/random.js';
import { apertureLossDb, beamAfter, seriesLossDb, shuntLossDb } from './physics.js';
import { between, oneFrom, type Scene } from './scene.js';

/** True effect on one carrier at one test point. */
export interface Effect {
  carrierDb: number;
  noiseRiseDb: number;
  unwanted: number;
  gainDb: number;
  rotationDeg: number;
  spoiltIsolation: number;
  foreign: number;
}

/** A fault drawn: its effect and what the checks would truly show. */
export interface DrawnFault {
  readonly cause: FaultCause;
  readonly location: string | null;
  readonly effect: (carrier: CauseCarrier, point: CauseTestPoint) => Partial<Effect>;
  readonly leanDeg?: number;
  readonly raining?: boolean;
  readonly sunSlot?: string;
  readonly obstacleSlots?: readonly string[];
  readonly badSegment?: string;
  readonly wrongSegment?: string;
  readonly unwantedCarrier?: boolean;
  readonly voltageV?: (testPoint: string) => number;
  readonly rotationOf?: (slot: string) => number;
  readonly riseDb?: (slot: string) => number;
  readonly recoversDb?: number;
}

const noiseRise = (lossDb: number, mediumK: number, systemK: number): number =>
  10 * Math.log10(1 + (mediumK * (1 - 10 ** (-lossDb / 10))) / systemK);

/** A value that belongs to a name, drawn once. */
function perName(draw: () => number): (name: string) => number {
  const values = new Map<string, number>();
  return (name) => {
    const known = values.get(name) ?? draw();
    values.set(name, known);
    return known;
  };
}

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

function turnedFault(
  cause: 'mispointed' | 'mast-leaning',
  scene: Scene,
  random: RandomStream,
): DrawnFault {
  const { slots, diameterM } = scene.installation;
  const width = 20 / (11.5 * diameterM);
  const turns: [axis: [number, number, number], angleDeg: number][] = [];
  let leanDeg = Math.abs(0.15 * random.normal());
  if (cause === 'mispointed') {
    const middle = slots[Math.floor((slots.length - 1) / 2)];
    const angle = between(random, 0, 2 * Math.PI);
    const size = between(random, 0.3, 1.0) * width;
    const a = ((middle?.azimuthDeg ?? 0) * Math.PI) / 180;
    const e = ((middle?.elevationDeg ?? 0) * Math.PI) / 180;
    turns.push([[0, 0, 1], (size * Math.cos(angle)) / Math.cos(e)]);
    turns.push([[Math.cos(a), -Math.sin(a), 0], size * Math.sin(angle)]);
  } else {
    leanDeg = between(random, 0.35, 1.2) * width;
    const toward = between(random, 0, 2 * Math.PI);
    turns.push([[-Math.cos(toward), Math.sin(toward), 0], leanDeg]);
  }
  const after = new Map(
    slots.map((slot) => {
      let offset = { offsetDeg: 0, rollDeg: 0 };
      const [first, second] = turns;
      if (first && !second) offset = beamAfter(slot.azimuthDeg, slot.elevationDeg, ...first);
      else if (first && second) {
        const one = beamAfter(slot.azimuthDeg, slot.elevationDeg, ...first);
        const two = beamAfter(slot.azimuthDeg, slot.elevationDeg, ...second);
        // The two turns are about axes that move the beam at right angles.
        offset = {
          offsetDeg: Math.hypot(one.offsetDeg, two.offsetDeg),
          rollDeg: one.rollDeg + two.rollDeg,
        };
      }
      return [slot.name, offset] as const;
    }),
  );
  const loss = (slot: string, frequencyGHz: number): number =>
    apertureLossDb(after.get(slot)?.offsetDeg ?? 0, diameterM, frequencyGHz);
  return {
    cause,
    location: null,
    effect: (carrier) => ({
      carrierDb: -loss(carrier.slot, carrier.frequencyGHz),
      rotationDeg: after.get(carrier.slot)?.rollDeg ?? 0,
    }),
    leanDeg,
    riseDb: (slot) => loss(slot, 11.7),
  };
}

function connectorFault(scene: Scene, random: RandomStream): DrawnFault {
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

function cableFault(scene: Scene, random: RandomStream): DrawnFault {
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

function partFault(scene: Scene, random: RandomStream): DrawnFault {
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

function supplyFault(_scene: Scene, random: RandomStream): DrawnFault {
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

function unitFault(scene: Scene, random: RandomStream): DrawnFault {
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

/** Draws a fault of a cause. */
export function drawFault(cause: FaultCause, scene: Scene, random: RandomStream): DrawnFault {
  const { slots, carriers, diameterM } = scene.installation;
  const systemK = between(random, 90, 160);
  switch (cause) {
    case 'mispointed':
    case 'mast-leaning':
      return turnedFault(cause, scene, random);
    case 'bad-connector':
      return connectorFault(scene, random);
    case 'wrong-cable':
      return cableFault(scene, random);
    case 'part-failed':
      return partFault(scene, random);
    case 'supply-low':
      return supplyFault(scene, random);
    case 'unit-out-of-tolerance':
      return unitFault(scene, random);
    case 'polarization-rotated': {
      const place = slots.length > 1 && random.uniform() < 0.3 ? null : oneFrom(random, slots).name;
      const size = between(random, 9, 70) * (random.uniform() < 0.5 ? -1 : 1);
      const rotation = (slot: string): number => (place === null || place === slot ? size : 0);
      return {
        cause,
        location: place,
        effect: (carrier) => ({ rotationDeg: rotation(carrier.slot) }),
        rotationOf: rotation,
      };
    }
    case 'wrong-slot': {
      const found = perName(() =>
        random.uniform() < 0.25 ? 0 : 10 ** (between(random, -9, 3) / 10),
      );
      return {
        cause,
        location: null,
        effect: (carrier) => ({
          carrierDb: -between(random, 24, 34),
          unwanted: found(carrier.name),
          foreign: found(carrier.name) > 0 ? 0.75 : 0.02,
        }),
        riseDb: () => Math.max(0, 1.2 * random.normal()),
      };
    }
    case 'side-lobe': {
      const offset = between(random, 1.55, 1.9) * (20 / (11.5 * diameterM));
      const excess = between(random, -3, 6);
      const uneven = perName(() => 1.2 * random.normal());
      const isolation = between(random, 3, 16);
      const drop = (carrier: CauseCarrier): number =>
        Math.max(
          10,
          apertureLossDb(offset, diameterM, carrier.frequencyGHz) - excess + uneven(carrier.name),
        );
      return {
        cause,
        location: null,
        effect: (carrier) => ({
          carrierDb: -drop(carrier),
          spoiltIsolation: 10 ** (-isolation / 20),
        }),
        riseDb: () => apertureLossDb(offset, diameterM, 11.7) - excess,
      };
    }
    case 'obstructed': {
      const order = [...slots].sort((a, b) => a.azimuthDeg - b.azimuthDeg).map((slot) => slot.name);
      const from = random.integer(order.length);
      const hidden = new Set(
        from === 0 ? order.slice(0, 1 + random.integer(order.length)) : order.slice(from),
      );
      const lossDb = between(random, 1.5, 16);
      const exponent = between(random, 0, 0.6);
      const share = perName(() => Math.exp(0.12 * random.normal()));
      const mediumK = between(random, 270, 300);
      const swaying = perName(() => 0.5 * random.normal());
      return {
        cause,
        location: [...hidden].join(', '),
        effect: (carrier) => {
          if (!hidden.has(carrier.slot)) return {};
          const loss = Math.max(
            0,
            lossDb * share(carrier.slot) * (carrier.frequencyGHz / 11.7) ** exponent +
              swaying(carrier.name),
          );
          return { carrierDb: -loss, noiseRiseDb: noiseRise(loss, mediumK, systemK) };
        },
        obstacleSlots: [...hidden],
        riseDb: (slot) => (hidden.has(slot) ? between(random, 0, 1.5) : 0),
      };
    }
    case 'rain': {
      const rate = Math.exp(between(random, Math.log(8), Math.log(70)));
      const pathKm = between(random, 2, 6);
      const share = perName(() => Math.exp(0.2 * random.normal()));
      const wetDb = between(random, 0.2, 0.8);
      const mediumK = between(random, 260, 285);
      const fades = new Map(
        carriers.map((carrier) => {
          const slot = slots.find((candidate) => candidate.name === carrier.slot);
          const { attenuationDbPerKm } = specificRainAttenuation({
            frequencyGHz: carrier.frequencyGHz,
            elevationDeg: slot?.elevationDeg ?? 30,
            tiltDeg: carrier.polarization === 'vertical' ? 80 : 10,
            rainRateMmPerH: rate,
          });
          const path = pathKm * share(carrier.slot) * Math.sin(Math.PI / 5);
          const slant = path / Math.sin(((slot?.elevationDeg ?? 30) * Math.PI) / 180);
          return [carrier.name, attenuationDbPerKm * slant + wetDb] as const;
        }),
      );
      const worst = Math.max(...fades.values());
      return {
        cause,
        location: null,
        effect: (carrier) => {
          const fade = (fades.get(carrier.name) ?? 0) + 0.2 * random.normal();
          return {
            carrierDb: -fade,
            noiseRiseDb: Math.max(0, noiseRise(Math.max(0, fade), mediumK, systemK)),
            spoiltIsolation: 10 ** (-(33 - 20 * Math.log10(Math.max(1, fade))) / 20),
          };
        },
        raining: true,
        recoversDb: worst * between(random, 0.4, 1.4),
      };
    }
    case 'sun-outage': {
      const slot = oneFrom(random, slots).name;
      const sunK = between(random, 60, 3000);
      return {
        cause,
        location: slot,
        effect: (carrier) =>
          carrier.slot === slot
            ? {
                noiseRiseDb:
                  10 * Math.log10(1 + (sunK * (carrier.frequencyGHz / 11.7) ** -0.6) / systemK),
              }
            : {},
        sunSlot: slot,
        recoversDb: 10 * Math.log10(1 + sunK / systemK),
      };
    }
    case 'interference': {
      const victim = oneFrom(random, carriers);
      const ingress =
        random.uniform() < 0.5 ? oneFrom(random, ['head', 'outlet 1', 'outlet 2']) : null;
      const strength = 10 ** (between(random, -11, 5) / 10);
      const overlap = perName(() => between(random, 0.6, 1));
      return {
        cause,
        location: ingress === null ? victim.name : `${victim.frequencyMHz} MHz at ${ingress}`,
        effect: (carrier, point) => {
          const hit =
            ingress === null
              ? carrier.name === victim.name
              : Math.abs(carrier.frequencyMHz - victim.frequencyMHz) < 22 && behind(ingress, point);
          return hit ? { unwanted: strength * overlap(carrier.name) } : {};
        },
        unwantedCarrier: true,
        recoversDb: random.uniform() < 0.4 ? between(random, 1, 8) : 0,
      };
    }
    case 'overloaded': {
      const segment = oneFrom(random, ['head', 'outlet 1', 'outlet 2']);
      const rise = between(random, 3, 14);
      const compression = between(random, 0, 0.25) * rise;
      const products = between(random, -17, -5);
      const uneven = perName(() => 1.5 * random.normal());
      return {
        cause,
        location: segment,
        effect: (carrier, point) =>
          behind(segment, point)
            ? {
                gainDb: rise - compression,
                unwanted: 10 ** ((products + uneven(carrier.name)) / 10),
              }
            : {},
      };
    }
    default:
      return { cause: 'nothing', location: null, effect: () => ({}) };
  }
}
