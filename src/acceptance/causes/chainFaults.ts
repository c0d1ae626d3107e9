/** Faults behind the units: connectors, cable, parts, supply, overload. */

import type { Change } from './channel.js';
import type { CarrierContext, CauseContext, TestPointContext } from './context.js';
import { type Hypothesis, ratios, steps } from './hypothesis.js';

/** A stretch of the chain that one fault can lie in. */
interface Stretch {
  readonly location: string;
  readonly holds: (carrier: CarrierContext, point: TestPointContext) => boolean;
}

/** Segments of the shared chain, and the lead of each unit where there are several. */
function stretches(context: CauseContext): readonly Stretch[] {
  const shared = context.segments.map(
    (segment): Stretch => ({
      location: segment,
      holds: (_, point) => point.chain.has(segment),
    }),
  );
  if (context.slots.length === 1) return shared;
  const leads = context.slots.map(
    (slot): Stretch => ({
      location: `lead of ${slot.name}`,
      holds: (carrier, point) => carrier.slot === slot.name && point.slot === undefined,
    }),
  );
  return [...shared, ...leads];
}

/** A wet, loose or badly made connector: loss of any slope over frequency, with ripple. */
export function badConnector(context: CauseContext): readonly Hypothesis[] {
  const losses = ratios(1.2, 28, 18);
  const exponents = [-1.1, -0.65, -0.3, 0, 0.4, 0.9, 1.4];
  const scatters = ['plan', 'ripple'] as const;
  return stretches(context).flatMap(({ location, holds }) => {
    const check: Hypothesis['check'] = (measurement) => {
      if (measurement.kind === 'connector-check' && measurement.segment === location)
        return { yes: 0.92 };
      return measurement.kind === 'supply-voltage'
        ? { mean: context.supplyVoltageV - 0.7, deviation: 1.2 }
        : undefined;
    };
    return losses.flatMap((lossAt1GHzDb) =>
      exponents.flatMap((slopeExponent) => {
        const change: Hypothesis['change'] = (carrier, point) =>
          holds(carrier, point)
            ? {
                gainDb: -Math.min(
                  45,
                  lossAt1GHzDb * (carrier.frequencyMHz / 1000) ** slopeExponent,
                ),
              }
            : undefined;
        return scatters.map(
          (scatter): Hypothesis => ({
            cause: 'bad-connector',
            location,
            weight: 1 / (losses.length * exponents.length * scatters.length),
            scatter,
            parameters: { lossAt1GHzDb, slopeExponent },
            change,
            check,
          }),
        );
      }),
    );
  });
}

/** Cable too long or of a lossier type: the excess follows the root of the frequency. */
export function wrongCable(context: CauseContext): readonly Hypothesis[] {
  const losses = ratios(1, 22, 20);
  const shares = [0, 0.12];
  return stretches(context).flatMap(({ location, holds }) =>
    losses.flatMap((excessAt1GHzDb) =>
      shares.map(
        (share): Hypothesis => ({
          cause: 'wrong-cable',
          location,
          weight: 1 / (losses.length * shares.length),
          scatter: 'plan',
          parameters: { excessAt1GHzDb },
          change: (carrier, point) => {
            if (!holds(carrier, point)) return undefined;
            const f = carrier.frequencyMHz / 1000;
            return { gainDb: -excessAt1GHzDb * ((1 - share) * Math.sqrt(f) + share * f) };
          },
          check: (measurement) => {
            if (measurement.kind === 'cable-check' && measurement.segment === location)
              return { yes: 0.95 };
            return measurement.kind === 'supply-voltage'
              ? { mean: context.supplyVoltageV - 0.07 * excessAt1GHzDb, deviation: 0.7 }
              : undefined;
          },
        }),
      ),
    ),
  );
}

/** A part failed or missing: flat and large, or exactly an amplifier's gain; a unit or one port of a switch dead. */
export function partFailed(context: CauseContext): readonly Hypothesis[] {
  const losses = steps(12, 46, 12);
  const found: Hypothesis[] = [];
  const add = (
    location: string,
    weight: number,
    lossDb: number,
    holds: (carrier: CarrierContext, point: TestPointContext) => boolean,
  ): void => {
    const change: Change = { gainDb: -lossDb };
    found.push({
      cause: 'part-failed',
      location,
      weight,
      scatter: 'plan',
      parameters: { lossDb },
      change: (carrier, point) => (holds(carrier, point) ? change : undefined),
    });
  };
  for (const { location, holds } of stretches(context)) {
    const point = context.testPoints.find((candidate) => candidate.name === location);
    const gain = point?.amplifierGainDb ?? 0;
    // An amplifier that is missing or unpowered takes its gain away, and a little more when in the way.
    const missing = gain > 0 ? steps(gain, gain + 10, 6) : [];
    for (const lossDb of losses) add(location, (gain > 0 ? 0.5 : 1) / losses.length, lossDb, holds);
    for (const lossDb of missing) add(location, 0.5 / missing.length, lossDb, holds);
  }
  for (const slot of context.slots) {
    for (const lossDb of losses)
      add(`unit of ${slot.name}`, 1 / losses.length, lossDb, (c) => c.slot === slot.name);
    for (const band of ['low', 'high'] as const)
      for (const polarization of ['horizontal', 'vertical'] as const) {
        const concerned = context.carriers.some(
          (c) => c.slot === slot.name && c.band === band && c.polarization === polarization,
        );
        if (!concerned) continue;
        for (const lossDb of losses)
          add(
            `port ${slot.name} ${polarization} ${band}`,
            1 / losses.length,
            lossDb,
            (c, point) =>
              point.slot === undefined &&
              c.slot === slot.name &&
              c.band === band &&
              c.polarization === polarization,
          );
      }
  }
  return found;
}

/** Supply too low at the unit: the higher voltage or the tone is not understood, or the unit does not start. */
export function supplyLow(context: CauseContext): readonly Hypothesis[] {
  const fills = ratios(0.005, 1.2, 5);
  const places: readonly (string | null)[] = [
    ...(context.segments.length > 1 ? [null] : []),
    ...context.segments,
  ];
  const variants = [
    { voltageV: 14.2, lost: (c: CarrierContext) => c.polarization === 'horizontal' },
    { voltageV: 15.5, lost: (c: CarrierContext) => c.band === 'high' },
    { voltageV: 9.5, lost: () => true },
  ];
  return places.flatMap((location) =>
    variants.flatMap(({ voltageV, lost }, variant) =>
      (variant === 2 ? [0] : fills).map((unwantedRatio): Hypothesis => {
        // A unit switched the wrong way delivers whatever stands there; one that is dead delivers nothing.
        const change: Change =
          variant === 2
            ? { gainDb: -45 }
            : { carrierDb: -30, unwantedRatio, foreignRatio: 0.5, isolationDb: -5 };
        return {
          cause: 'supply-low',
          location,
          weight: 1 / (3 * (variant === 2 ? 1 : fills.length)),
          scatter: variant === 2 ? 'plan' : 'unknown-carriers',
          group: String(variant),
          parameters: { voltageV },
          change: (carrier, point) =>
            point.slot === undefined &&
            (location === null || point.name === location) &&
            lost(carrier)
              ? change
              : undefined,
          check: (measurement) =>
            measurement.kind === 'supply-voltage' &&
            (location === null || measurement.testPoint === location)
              ? { mean: voltageV, deviation: variant === 2 ? 3 : 1.3 }
              : undefined,
        };
      }),
    ),
  );
}

/** Too much level: products of intermodulation fill the channels behind, gain falls a little. */
export function overloaded(context: CauseContext): readonly Hypothesis[] {
  const rises = steps(2, 16, 8);
  const products = ratios(0.01, 0.5, 8);
  return context.segments.flatMap((segment) =>
    rises.flatMap((riseDb) =>
      products.map((unwantedRatio): Hypothesis => {
        const change: Change = { gainDb: riseDb, unwantedRatio };
        return {
          cause: 'overloaded',
          location: segment,
          weight: 1 / (rises.length * products.length),
          scatter: 'uneven',
          parameters: { riseDb, productsDb: 10 * Math.log10(unwantedRatio) },
          change: (_, point) => (point.chain.has(segment) ? change : undefined),
          check: (measurement) => (measurement.kind === 'spectrum' ? { yes: 0.25 } : undefined),
        };
      }),
    ),
  );
}
