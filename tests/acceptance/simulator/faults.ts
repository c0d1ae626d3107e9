/** Faults of the simulator, drawn from ranges: the sky, the antenna, and by reference the chain behind. */

import type { CauseCarrier, FaultCause } from 'slantpath/acceptance';
import { specificRainAttenuation } from 'slantpath/propagation';
import type { RandomStream } from '../../../src/numeric/random.js';
import {
  behind,
  cableFault,
  connectorFault,
  partFault,
  supplyFault,
  unitFault,
} from './chainFaults.js';
import { type DrawnFault, perName, type World } from './fault.js';
import { apertureLossDb, beamAfter } from './physics.js';
import { between, oneFrom, type Scene } from './scene.js';

const noiseRise = (lossDb: number, mediumK: number, systemK: number): number =>
  10 * Math.log10(1 + (mediumK * (1 - 10 ** (-lossDb / 10))) / systemK);

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

/** Draws a fault of a cause. */
export function drawFault(
  cause: FaultCause,
  scene: Scene,
  random: RandomStream,
  world: World = 'usual',
): DrawnFault {
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
      // In the sparse world the other satellite has one level for all that it sends, and half of the frequencies empty.
      const common = between(random, -9, 3);
      const found = perName(() => {
        if (world === 'sparse')
          return random.uniform() < 0.5 ? 0 : 10 ** ((common + 0.7 * random.normal()) / 10);
        return random.uniform() < 0.25 ? 0 : 10 ** (between(random, -9, 3) / 10);
      });
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
          const { specificAttenuationDbPerKm } = specificRainAttenuation({
            frequencyGHz: carrier.frequencyGHz,
            elevationDeg: slot?.elevationDeg ?? 30,
            tiltDeg: carrier.polarization === 'vertical' ? 80 : 10,
            rainRateMmPerH: rate,
          });
          const path = pathKm * share(carrier.slot) * Math.sin(Math.PI / 5);
          const slant = path / Math.sin(((slot?.elevationDeg ?? 30) * Math.PI) / 180);
          return [carrier.name, specificAttenuationDbPerKm * slant + wetDb] as const;
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
