/** Invented installations for the simulation of faults, drawn from ranges. */

import type { CauseCarrier, CauseInstallation, CauseTestPoint } from 'slantpath/acceptance';
import { lookAngles } from 'slantpath/pointing';
import type { RandomStream } from '../../../src/numeric/random.js';

/** Uniform between two values. */
export const between = (random: RandomStream, from: number, to: number): number =>
  from + (to - from) * random.uniform();

/** One of a list. */
export function oneFrom<T>(random: RandomStream, list: readonly T[]): T {
  return list[random.integer(list.length)] as T;
}

/** An installation with what the plan knows of its cables. */
export interface Scene {
  readonly installation: CauseInstallation;
  /** Cable length in metres to each test point from the one before, by name. */
  readonly lengthsM: Readonly<Record<string, number>>;
}

/** Loss per 100 m at 1 GHz of the cable that the plan assumes. */
const PLANNED = { skin: 20, dielectric: 1.3 };

const plannedLoss = (lengthM: number, frequencyMHz: number): number => {
  const f = frequencyMHz / 1000;
  return ((PLANNED.skin * Math.sqrt(f) + PLANNED.dielectric * f) * lengthM) / 100;
};

/** Draws an installation with `slotCount` slots. */
export function drawScene(random: RandomStream, slotCount: number): Scene {
  const station = { latitudeDeg: between(random, 30, 56), longitudeDeg: 10, heightM: 300 };
  const start = between(random, -14, 14);
  const slots = Array.from({ length: slotCount }, (_, i) => {
    const longitude = 10 + start + i * between(random, 5, 9);
    const look = lookAngles(station, longitude);
    if (look.kind !== 'visible') throw new Error('a simulated slot must be visible');
    return { name: `S${i + 1}`, azimuthDeg: look.azimuthDeg, elevationDeg: look.elevationDeg };
  });
  const carriers: CauseCarrier[] = slots.flatMap((slot) => {
    const combinations = (['low', 'high'] as const).flatMap((band) =>
      (['horizontal', 'vertical'] as const).map((polarization) => ({ band, polarization })),
    );
    // Few carriers, as one reads on a visit: both bands and both polarizations in two of them, or more.
    const first = random.integer(2);
    const kept = { 1: [0, 1, 2, 3], 2: [first, 3 - first, 2 - first], 3: [first, 3 - first] }[
      slotCount
    ] ?? [0, 3];
    return combinations
      .filter((_, i) => kept.includes(i))
      .map(({ band, polarization }): CauseCarrier => {
        const frequencyMHz = Math.round(
          band === 'low' ? between(random, 970, 1930) : between(random, 1120, 2130),
        );
        return {
          name: `${slot.name} ${polarization} ${band}`,
          slot: slot.name,
          polarization,
          band,
          frequencyGHz: frequencyMHz / 1000 + (band === 'low' ? 9.75 : 10.6),
          frequencyMHz,
          levelDbuv: between(random, 72, 80),
          carrierToNoiseDb: between(random, 11, 16),
        };
      });
  });
  const amplifierGainDb = random.uniform() < 0.4 ? 20 : 0;
  const lengthsM: Record<string, number> = { head: between(random, 3, 15) };
  const flat: Record<string, number> = { head: between(random, 2, 6) };
  const testPoints: CauseTestPoint[] = slots.map((slot) => ({
    name: `unit ${slot.name}`,
    slot: slot.name,
    lossDb: 0,
    noiseDbuv: 20,
  }));
  testPoints.push({
    name: 'head',
    lossDb: points(lengthsM['head'] ?? 0, flat['head'] ?? 0),
    noiseDbuv: 20,
  });
  for (const name of ['outlet 1', 'outlet 2']) {
    const lengthM = between(random, 15, amplifierGainDb > 0 ? 60 : 40);
    lengthsM[name] = lengthM;
    const own = between(random, 4, 10) - (name === 'outlet 2' ? amplifierGainDb : 0);
    testPoints.push({
      name,
      behind: 'head',
      lossDb: points(lengthM + (lengthsM['head'] ?? 0), own + (flat['head'] ?? 0)),
      noiseDbuv: 20,
      ...(name === 'outlet 2' && amplifierGainDb > 0 ? { amplifierGainDb } : {}),
    });
  }
  return {
    installation: { diameterM: between(random, 0.75, 1.2), slots, carriers, testPoints },
    lengthsM,
  };
}

function points(
  lengthM: number,
  flatDb: number,
): readonly { readonly frequencyMHz: number; readonly valueDb: number }[] {
  return [950, 1150, 1400, 1700, 2000, 2200].map((frequencyMHz) => ({
    frequencyMHz,
    valueDb: plannedLoss(lengthM, frequencyMHz) + flatDb,
  }));
}
