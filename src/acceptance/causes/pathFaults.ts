/** Faults between satellite and antenna: rain, Sun, obstruction, interference; and the receiving unit. */

import { sinDeg } from '../../numeric/angle.js';
import { type Change, noiseRiseDb } from './channel.js';
import type { CarrierContext, CauseContext } from './context.js';
import { type Hypothesis, ratios } from './hypothesis.js';

const RAIN_K = 275;
const GROUND_K = 290;

/** Rain: every slot fades, the more the higher the frequency and the lower the path, and the noise rises. */
export function rain(context: CauseContext): readonly Hypothesis[] {
  const fades = ratios(0.7, 14, 14);
  const highest = Math.max(...context.slots.map((slot) => slot.elevationDeg), 5);
  return fades.map((fadeAt12GHzDb): Hypothesis => {
    const fadeDb = (carrier: CarrierContext): number => {
      const elevationDeg = Math.max(5, context.slots[carrier.slotIndex]?.elevationDeg ?? 90);
      const path = sinDeg(highest) / sinDeg(elevationDeg);
      return fadeAt12GHzDb * (carrier.frequencyGHz / 12) ** 2.1 * path;
    };
    const drop = fadeAt12GHzDb + noiseRiseDb(fadeAt12GHzDb, RAIN_K, context.systemNoiseK);
    return {
      cause: 'rain',
      location: null,
      weight: 1 / fades.length,
      scatter: 'uneven',
      parameters: { fadeAt12GHzDb },
      change: (carrier) => {
        const fade = Math.min(60, fadeDb(carrier));
        return {
          carrierDb: -fade,
          noiseRiseDb: noiseRiseDb(fade, RAIN_K, context.systemNoiseK),
          isolationDb: Math.max(12, 32 - 20 * Math.log10(Math.max(1, fade))),
        };
      },
      check: (measurement) =>
        measurement.kind === 'rain-seen'
          ? { yes: 0.95 }
          : measurement.kind === 'repeat-later'
            ? { mean: 0.7 * drop, deviation: 0.5 + 0.35 * drop }
            : undefined,
    };
  });
}

/** The Sun behind a satellite: noise rises on one slot. */
export function sunOutage(context: CauseContext): readonly Hypothesis[] {
  const rises = ratios(0.8, 14, 12);
  return context.slots.flatMap((slot) =>
    rises.map((noiseDb): Hypothesis => {
      const change: Change = { noiseRiseDb: noiseDb };
      return {
        cause: 'sun-outage',
        location: slot.name,
        weight: 1 / rises.length,
        scatter: 'plan',
        parameters: { noiseRiseDb: noiseDb },
        change: (carrier) => (carrier.slot === slot.name ? change : undefined),
        check: (measurement) =>
          measurement.kind === 'sun-near'
            ? { yes: measurement.slot === slot.name ? 0.97 : 0.05 }
            : measurement.kind === 'repeat-later'
              ? { mean: noiseDb, deviation: 0.5 + 0.2 * noiseDb }
              : undefined,
      };
    }),
  );
}

/** Neighbouring slots that one obstacle can hide: each alone, runs from either end, all. */
function obstacleGroups(context: CauseContext): readonly (readonly string[])[] {
  const order = [...context.slots].sort((a, b) => a.azimuthDeg - b.azimuthDeg).map((s) => s.name);
  const groups = order.map((name) => [name]);
  for (let size = 2; size <= order.length; size++) {
    groups.push(order.slice(0, size));
    if (size < order.length) groups.push(order.slice(-size));
  }
  return groups;
}

/** Something stands in the view: loss nearly the same at all frequencies, and its warmth as noise. */
export function obstructed(context: CauseContext): readonly Hypothesis[] {
  const losses = ratios(0.8, 18, 13);
  const exponents = [0, 0.5];
  return obstacleGroups(context).flatMap((group) => {
    const inGroup = new Set(group);
    return losses.flatMap((lossDb) =>
      exponents.map(
        (exponent): Hypothesis => ({
          cause: 'obstructed',
          location: group.join(', '),
          weight: 1 / (losses.length * exponents.length),
          scatter: 'uneven',
          parameters: { lossDb },
          change: (carrier) => {
            if (!inGroup.has(carrier.slot)) return undefined;
            const loss = Math.min(60, lossDb * (carrier.frequencyGHz / 12) ** exponent);
            return {
              carrierDb: -loss,
              noiseRiseDb: noiseRiseDb(loss, GROUND_K, context.systemNoiseK),
            };
          },
          check: (measurement) =>
            measurement.kind === 'obstacle-seen' && inGroup.has(measurement.slot)
              ? { yes: 0.9 }
              : measurement.kind === 'search' && inGroup.has(measurement.slot)
                ? { mean: 0.5, deviation: 0.8 }
                : undefined,
        }),
      ),
    );
  });
}

/** An unwanted carrier: through the antenna on one carrier, or into a cable at one frequency on every slot. */
export function interference(context: CauseContext): readonly Hypothesis[] {
  const ratiosToCarrier = ratios(0.02, 5, 10);
  const places: {
    readonly location: string;
    readonly hit: (c: CarrierContext, chain: ReadonlySet<string>) => boolean;
  }[] = [];
  for (const carrier of context.carriers) {
    places.push({
      location: carrier.name,
      hit: (other) => other.index === carrier.index,
    });
    const sameFrequency = (other: CarrierContext): boolean =>
      Math.abs(other.frequencyMHz - carrier.frequencyMHz) < 25;
    for (const segment of context.segments)
      places.push({
        location: `${carrier.frequencyMHz} MHz at ${segment}`,
        hit: (other, chain) => sameFrequency(other) && chain.has(segment),
      });
  }
  return places.flatMap(({ location, hit }) =>
    ratiosToCarrier.map((unwantedRatio): Hypothesis => {
      const change: Change = { unwantedRatio };
      const drop = 10 * Math.log10(1 + unwantedRatio * 20);
      return {
        cause: 'interference',
        location,
        weight: 1 / ratiosToCarrier.length,
        scatter: 'plan',
        parameters: { unwantedToCarrierDb: 10 * Math.log10(unwantedRatio) },
        change: (carrier, point) => (hit(carrier, point.chain) ? change : undefined),
        check: (measurement) =>
          measurement.kind === 'spectrum'
            ? { yes: 0.85 }
            : measurement.kind === 'repeat-later'
              ? { mean: 0.3 * drop, deviation: 0.5 + 0.5 * drop }
              : undefined,
      };
    }),
  );
}

/** The receiving unit of a slot: too much noise, too little gain, or one band or polarization weak. */
export function unitOutOfTolerance(context: CauseContext): readonly Hypothesis[] {
  const noises = ratios(0.8, 10, 10);
  const losses = ratios(2, 20, 8);
  const parts: readonly ((carrier: CarrierContext) => boolean)[] = [
    () => true,
    (carrier) => carrier.band === 'low',
    (carrier) => carrier.band === 'high',
    (carrier) => carrier.polarization === 'horizontal',
    (carrier) => carrier.polarization === 'vertical',
  ];
  return context.slots.flatMap((slot) => {
    const found: Hypothesis[] = [];
    const add = (
      weight: number,
      parameters: Hypothesis['parameters'],
      change: Change,
      concerns: (carrier: CarrierContext) => boolean,
      scatter: Hypothesis['scatter'] = 'plan',
    ): void => {
      found.push({
        cause: 'unit-out-of-tolerance',
        location: slot.name,
        weight,
        scatter,
        parameters,
        change: (carrier) => (carrier.slot === slot.name && concerns(carrier) ? change : undefined),
      });
    };
    // An oscillator off its frequency acts like noise, but on each carrier by its width.
    for (const scatter of ['plan', 'by-carrier'] as const)
      for (const noiseDb of noises)
        add(
          0.25 / noises.length,
          { noiseRiseDb: noiseDb },
          { noiseRiseDb: noiseDb },
          () => true,
          scatter,
        );
    for (const lossDb of losses)
      parts.forEach((concerns, index) => {
        // Less gain comes with more noise of the stages behind.
        for (const noiseShare of [0, 0.25])
          add(
            (index === 0 ? 0.3 : 0.05) / (2 * losses.length),
            { gainLossDb: lossDb },
            { gainDb: -lossDb, noiseRiseDb: noiseShare * lossDb },
            concerns,
          );
      });
    return found;
  });
}
