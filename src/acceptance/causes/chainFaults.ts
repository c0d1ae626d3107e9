/** Faults behind the units: connectors, cable, parts, supply, overload. */

import type { Change } from './channel.js';
import type { CarrierContext, CauseContext, TestPointContext } from './context.js';
import { CABLE, CONNECTOR, LOST, OVERLOAD, PART, SUPPLY } from './faultFigures.js';
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
  const losses = ratios(...CONNECTOR.lossAt1GHzDb);
  const exponents = CONNECTOR.slopeExponents;
  const scatters = ['plan', 'ripple'] as const;
  return stretches(context).flatMap(({ location, holds }) => {
    const check: Hypothesis['check'] = (measurement) => {
      if (measurement.kind === 'connector-check' && measurement.segment === location)
        return { yes: CONNECTOR.seenRatio };
      return measurement.kind === 'supply-voltage'
        ? {
            mean: context.supplyVoltageV - CONNECTOR.supplyDropV,
            deviation: CONNECTOR.supplyDeviationV,
          }
        : undefined;
    };
    return losses.flatMap((lossAt1GHzDb) =>
      exponents.flatMap((slopeExponent) => {
        const change: Hypothesis['change'] = (carrier, point) =>
          holds(carrier, point)
            ? {
                gainDb: -Math.min(
                  -LOST.deadDb,
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
  const losses = ratios(...CABLE.excessAt1GHzDb);
  const shares = CABLE.dielectricShareRatios;
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
              return { yes: CABLE.seenRatio };
            return measurement.kind === 'supply-voltage'
              ? {
                  mean: context.supplyVoltageV - CABLE.supplyDropVPerDb * excessAt1GHzDb,
                  deviation: CABLE.supplyDeviationV,
                }
              : undefined;
          },
        }),
      ),
    ),
  );
}

/** A part failed or missing: flat and large, or exactly an amplifier's gain; a unit or one port of a switch dead. */
export function partFailed(context: CauseContext): readonly Hypothesis[] {
  const losses = steps(...PART.lossDb);
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
    const missing = gain > 0 ? steps(gain, gain + PART.beyondGainDb, PART.beyondGainCount) : [];
    for (const lossDb of losses)
      add(location, (gain > 0 ? 1 - PART.missingAmplifierRatio : 1) / losses.length, lossDb, holds);
    for (const lossDb of missing)
      add(location, PART.missingAmplifierRatio / missing.length, lossDb, holds);
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
  const fills = ratios(...SUPPLY.unwantedRatio);
  const places: readonly (string | null)[] = [
    ...(context.segments.length > 1 ? [null] : []),
    ...context.segments,
  ];
  const variants = [
    {
      voltageV: SUPPLY.polarizationLostV,
      lost: (c: CarrierContext) => c.polarization === 'horizontal',
    },
    { voltageV: SUPPLY.toneLostV, lost: (c: CarrierContext) => c.band === 'high' },
    { voltageV: SUPPLY.unitDeadV, lost: () => true },
  ];
  const dead = 2;
  return places.flatMap((location) =>
    variants.flatMap(({ voltageV, lost }, variant) =>
      (variant === dead ? [0] : fills).map((unwantedRatio): Hypothesis => {
        // A unit switched the wrong way delivers whatever stands there; one that is dead delivers nothing.
        const change: Change =
          variant === dead
            ? { gainDb: LOST.deadDb }
            : {
                carrierDb: LOST.carrierDb,
                unwantedRatio,
                foreignRatio: SUPPLY.foreignRatio,
                isolationDb: SUPPLY.isolationDb,
              };
        return {
          cause: 'supply-low',
          location,
          weight: 1 / (variants.length * (variant === dead ? 1 : fills.length)),
          scatter: variant === dead ? 'plan' : 'unknown-carriers',
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
              ? {
                  mean: voltageV,
                  deviation:
                    variant === dead ? SUPPLY.startingDeviationV : SUPPLY.switchingDeviationV,
                }
              : undefined,
        };
      }),
    ),
  );
}

/** Too much level: products of intermodulation fill the channels behind, gain falls a little. */
export function overloaded(context: CauseContext): readonly Hypothesis[] {
  const rises = steps(...OVERLOAD.riseDb);
  const products = ratios(...OVERLOAD.productsRatio);
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
          check: (measurement) =>
            measurement.kind === 'spectrum' ? { yes: OVERLOAD.spectrumSeenRatio } : undefined,
        };
      }),
    ),
  );
}
