/** Faults between satellite and antenna: rain, Sun, obstruction, interference; and the receiving unit. */

import { sinDeg } from '../../numeric/angle.js';
import { type Change, noiseRiseDb } from './channel.js';
import type { CarrierContext, CauseContext } from './context.js';
import {
  DEEPEST_FADE_DB,
  INTERFERENCE,
  OBSTACLE,
  RAIN,
  REFERENCE_GHZ,
  type Spread,
  SUN,
  UNIT,
} from './faultFigures.js';
import { type Hypothesis, ratios } from './hypothesis.js';

const spread = ([constantDb, shareRatio]: Spread, effectDb: number): number =>
  constantDb + shareRatio * effectDb;

/** Rain: every slot fades, the more the higher the frequency and the lower the path, and the noise rises. */
export function rain(context: CauseContext): readonly Hypothesis[] {
  const fades = ratios(...RAIN.fadeAt12GHzDb);
  const highest = Math.max(
    ...context.slots.map((slot) => slot.elevationDeg),
    RAIN.lowestElevationDeg,
  );
  return fades.map((fadeAt12GHzDb): Hypothesis => {
    const fadeDb = (carrier: CarrierContext): number => {
      const elevationDeg = Math.max(
        RAIN.lowestElevationDeg,
        context.slots[carrier.slotIndex]?.elevationDeg ?? 90,
      );
      const path = sinDeg(highest) / sinDeg(elevationDeg);
      return (
        fadeAt12GHzDb * (carrier.frequencyGHz / REFERENCE_GHZ) ** RAIN.frequencyExponent * path
      );
    };
    const drop = fadeAt12GHzDb + noiseRiseDb(fadeAt12GHzDb, RAIN.mediumK, context.systemNoiseK);
    return {
      cause: 'rain',
      location: null,
      weight: 1 / fades.length,
      scatter: 'uneven',
      parameters: { fadeAt12GHzDb },
      change: (carrier) => {
        const fade = Math.min(DEEPEST_FADE_DB, fadeDb(carrier));
        return {
          carrierDb: -fade,
          noiseRiseDb: noiseRiseDb(fade, RAIN.mediumK, context.systemNoiseK),
          isolationDb: Math.max(
            RAIN.isolationLeastDb,
            RAIN.isolationAt1DbDb - RAIN.isolationFallDb * Math.log10(Math.max(1, fade)),
          ),
        };
      },
      check: (measurement) =>
        measurement.kind === 'rain-seen'
          ? { yes: RAIN.seenRatio }
          : measurement.kind === 'repeat-later'
            ? { mean: RAIN.goneLaterRatio * drop, deviation: spread(RAIN.laterSpread, drop) }
            : undefined,
    };
  });
}

/** The Sun behind a satellite: noise rises on one slot. */
export function sunOutage(context: CauseContext): readonly Hypothesis[] {
  const rises = ratios(...SUN.noiseRiseDb);
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
            ? { yes: measurement.slot === slot.name ? SUN.nearRatio : SUN.nearAnotherRatio }
            : measurement.kind === 'repeat-later'
              ? { mean: noiseDb, deviation: spread(SUN.laterSpread, noiseDb) }
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
  const losses = ratios(...OBSTACLE.lossDb);
  const exponents = OBSTACLE.frequencyExponents;
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
            const loss = Math.min(
              DEEPEST_FADE_DB,
              lossDb * (carrier.frequencyGHz / REFERENCE_GHZ) ** exponent,
            );
            return {
              carrierDb: -loss,
              noiseRiseDb: noiseRiseDb(loss, OBSTACLE.mediumK, context.systemNoiseK),
            };
          },
          check: (measurement) =>
            measurement.kind === 'obstacle-seen' && inGroup.has(measurement.slot)
              ? { yes: OBSTACLE.seenRatio }
              : measurement.kind === 'search' && inGroup.has(measurement.slot)
                ? { mean: OBSTACLE.searchRiseDb, deviation: OBSTACLE.searchDeviationDb }
                : undefined,
        }),
      ),
    );
  });
}

/** An unwanted carrier: through the antenna on one carrier, or into a cable at one frequency on every slot. */
export function interference(context: CauseContext): readonly Hypothesis[] {
  const ratiosToCarrier = ratios(...INTERFERENCE.unwantedRatio);
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
      Math.abs(other.frequencyMHz - carrier.frequencyMHz) < INTERFERENCE.sameChannelMHz;
    for (const segment of context.segments)
      places.push({
        location: `${carrier.frequencyMHz} MHz at ${segment}`,
        hit: (other, chain) => sameFrequency(other) && chain.has(segment),
      });
  }
  return places.flatMap(({ location, hit }) =>
    ratiosToCarrier.map((unwantedRatio): Hypothesis => {
      const change: Change = { unwantedRatio };
      const drop = 10 * Math.log10(1 + unwantedRatio * INTERFERENCE.carrierToNoiseRatio);
      return {
        cause: 'interference',
        location,
        weight: 1 / ratiosToCarrier.length,
        scatter: 'plan',
        parameters: { unwantedToCarrierDb: 10 * Math.log10(unwantedRatio) },
        change: (carrier, point) => (hit(carrier, point.chain) ? change : undefined),
        check: (measurement) =>
          measurement.kind === 'spectrum'
            ? { yes: INTERFERENCE.spectrumSeenRatio }
            : measurement.kind === 'repeat-later'
              ? {
                  mean: INTERFERENCE.goneLaterRatio * drop,
                  deviation: spread(INTERFERENCE.laterSpread, drop),
                }
              : undefined,
      };
    }),
  );
}

/** The receiving unit of a slot: too much noise, too little gain, or one band or polarization weak. */
export function unitOutOfTolerance(context: CauseContext): readonly Hypothesis[] {
  const noises = ratios(...UNIT.noiseRiseDb);
  const losses = ratios(...UNIT.lossDb);
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
          UNIT.noiseWeightRatio / noises.length,
          { noiseRiseDb: noiseDb },
          { noiseRiseDb: noiseDb },
          () => true,
          scatter,
        );
    for (const lossDb of losses)
      parts.forEach((concerns, index) => {
        // Less gain comes with more noise of the stages behind.
        for (const noiseShare of UNIT.noisePerLossRatios)
          add(
            (index === 0 ? UNIT.wholeWeightRatio : UNIT.partWeightRatio) / (2 * losses.length),
            { gainLossDb: lossDb },
            { gainDb: -lossDb, noiseRiseDb: noiseShare * lossDb },
            concerns,
          );
      });
    return found;
  });
}
