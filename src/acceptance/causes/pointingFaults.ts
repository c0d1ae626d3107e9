/** Faults of the antenna's attitude: mispointed, mast leaning, side lobe, wrong slot, polarization rotated. */

import { cosDeg, sinDeg } from '../../numeric/angle.js';
import { valueAt } from '../../numeric/columns.js';
import { gaussianLobeLossDb } from '../../numeric/gaussianLobe.js';
import type { Change } from './channel.js';
import type { CarrierContext, CauseContext, SlotFrame, Vector } from './context.js';
import { ATTITUDE, LOST, OTHER_SLOT, SIDE_LOBE, TURN } from './faultFigures.js';
import { type Hypothesis, ratios, steps } from './hypothesis.js';

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** How a small turn of the whole antenna (axis times degrees) moves the beam of a slot, and rolls it. */
function beamShift(
  turnDeg: Vector,
  slot: SlotFrame,
): { readonly offsetDeg: number; readonly rollDeg: number } {
  return {
    offsetDeg: Math.hypot(dot(turnDeg, slot.upward), dot(turnDeg, slot.right)),
    rollDeg: dot(turnDeg, slot.toward),
  };
}

/** Effect of a turn of the whole antenna. */
function turned(
  context: CauseContext,
  turnDeg: Vector,
): Pick<Hypothesis, 'change'> & { readonly lossDb: (slot: number) => number } {
  const shifts = context.slots.map((slot) => beamShift(turnDeg, slot));
  const loss = (carrier: CarrierContext): number =>
    Math.min(
      ATTITUDE.lobeFloorDb,
      gaussianLobeLossDb(shifts[carrier.slotIndex]?.offsetDeg ?? 0, carrier.beamwidthDeg),
    );
  return {
    change: (carrier) => ({
      carrierDb: -loss(carrier),
      rotationDeg: shifts[carrier.slotIndex]?.rollDeg ?? 0,
    }),
    lossDb: (slot) =>
      Math.max(0, ...context.carriers.filter((c) => c.slotIndex === slot).map(loss)),
  };
}

/** A search around the present place finds the lost level again. */
const foundAgain =
  (context: CauseContext, lossDb: (slot: number) => number): NonNullable<Hypothesis['check']> =>
  (measurement) =>
    measurement.kind === 'search'
      ? {
          mean: lossDb(context.slots.findIndex((slot) => slot.name === measurement.slot)),
          deviation: ATTITUDE.searchDeviationDb,
        }
      : undefined;

/** The antenna has turned about the vertical and across its line of sight. */
export function mispointed(context: CauseContext): readonly Hypothesis[] {
  const middle = context.slots[Math.floor((context.slots.length - 1) / 2)] as SlotFrame;
  const radii = steps(...ATTITUDE.offsetBeamwidths);
  const angles = steps(...ATTITUDE.offsetDirectionDeg);
  return radii.flatMap((radius) =>
    angles.map((angle): Hypothesis => {
      const rightDeg = radius * context.widestBeamDeg * sinDeg(angle);
      const upDeg = radius * context.widestBeamDeg * cosDeg(angle);
      const vertical = -rightDeg / Math.max(ATTITUDE.leastCosine, cosDeg(middle.elevationDeg));
      const turnDeg: Vector = [upDeg * middle.right[0], upDeg * middle.right[1], vertical];
      const { change, lossDb } = turned(context, turnDeg);
      return {
        cause: 'mispointed',
        location: null,
        weight: 1 / (radii.length * angles.length),
        scatter: 'plan',
        parameters: { rightDeg, upDeg },
        change,
        check: foundAgain(context, lossDb),
      };
    }),
  );
}

/** The mast leans: the whole antenna has turned about a horizontal axis. */
export function mastLeaning(context: CauseContext): readonly Hypothesis[] {
  const leans = steps(...ATTITUDE.leanBeamwidths);
  const directions = steps(...ATTITUDE.leanDirectionDeg);
  return leans.flatMap((lean) =>
    directions.map((leanTowardDeg): Hypothesis => {
      const leanDeg = lean * context.widestBeamDeg;
      // Leaning towards a bearing is a turn about the axis to the left of it, right hand rule.
      const turnDeg: Vector = [
        -leanDeg * cosDeg(leanTowardDeg),
        leanDeg * sinDeg(leanTowardDeg),
        0,
      ];
      const { change, lossDb } = turned(context, turnDeg);
      const found = foundAgain(context, lossDb);
      return {
        cause: 'mast-leaning',
        location: null,
        weight: 1 / (leans.length * directions.length),
        scatter: 'plan',
        parameters: { leanDeg, leanTowardDeg },
        change,
        check: (measurement) =>
          measurement.kind === 'mast-lean'
            ? { mean: leanDeg, deviation: ATTITUDE.leanDeviationDeg }
            : found(measurement),
      };
    }),
  );
}

/** The antenna was peaked on a side lobe. */
export function sideLobe(): readonly Hypothesis[] {
  const drops = steps(...SIDE_LOBE.dropDb);
  const isolations = SIDE_LOBE.isolationDb;
  return drops.flatMap((dropDb) =>
    isolations.map(
      (isolationDb): Hypothesis => ({
        cause: 'side-lobe',
        location: null,
        weight: 1 / (drops.length * isolations.length),
        scatter: 'uneven',
        parameters: { dropDb },
        change: () => ({ carrierDb: -dropDb, isolationDb }),
        check: (measurement) =>
          measurement.kind === 'search'
            ? { mean: dropDb, deviation: SIDE_LOBE.searchDeviationDb }
            : undefined,
      }),
    ),
  );
}

/** Where the other satellite has no carrier, only its noise stands. */
const EMPTY: Change = {
  carrierDb: LOST.carrierDb,
  unwantedRatio: OTHER_SLOT.emptyRatio,
  foreignRatio: OTHER_SLOT.emptyForeignRatio,
};

/**
 * Which of `count` frequencies the other satellite uses, with the chance of each pattern: all, all but one, one alone, none.
 * Up to three frequencies these are all the patterns there are; beyond, the halves between them are left to their neighbours.
 */
function usePatterns(
  count: number,
): readonly { readonly used: readonly boolean[]; readonly weight: number }[] {
  const all = Array.from({ length: count }, () => true);
  const only = (index: number, value: boolean) => all.map((_, i) => (i === index) === value);
  const patterns = [
    all,
    ...(count > 1 ? all.map((_, index) => only(index, false)) : []),
    ...(count > 2 ? all.map((_, index) => only(index, true)) : []),
    all.map(() => false),
  ];
  const weights = patterns.map((used) =>
    used.reduce(
      (chance, here) =>
        chance * (here ? OTHER_SLOT.frequencyInUseRatio : 1 - OTHER_SLOT.frequencyInUseRatio),
      1,
    ),
  );
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return patterns.map((used, i) => ({ used, weight: valueAt(weights, i) / sum }));
}

/** The antenna looks at another satellite: at each planned frequency it has a carrier of its own, or none. */
export function wrongSlot(context: CauseContext): readonly Hypothesis[] {
  const foreign = ratios(...OTHER_SLOT.foreignRatio);
  // Carriers at one frequency and polarization are one place in the other satellite's plan; a dozen places are as good as each.
  const places = context.carriers.slice(0, OTHER_SLOT.mostPlaces).map((carrier) => carrier.name);
  return foreign.flatMap((unwantedRatio) => {
    const occupied: Change = {
      carrierDb: LOST.carrierDb,
      unwantedRatio,
      foreignRatio: OTHER_SLOT.occupiedForeignRatio,
    };
    return usePatterns(places.length).map(({ used, weight }): Hypothesis => {
      const empty = new Set(places.filter((_, index) => !used[index]));
      return {
        cause: 'wrong-slot',
        location: null,
        weight: weight / foreign.length,
        scatter: 'unknown-carriers',
        parameters: {
          foreignLevelDb: 10 * Math.log10(unwantedRatio),
          emptyFrequencies: empty.size,
        },
        change: ({ name }) => (empty.has(name) ? EMPTY : occupied),
        check: (measurement) =>
          measurement.kind === 'search'
            ? { mean: OTHER_SLOT.searchRiseDb, deviation: OTHER_SLOT.searchDeviationDb }
            : undefined,
      };
    });
  });
}

/** A feed, or the whole antenna, is turned about the line of sight. */
export function polarizationRotated(context: CauseContext): readonly Hypothesis[] {
  const sizes = ratios(...TURN.rotationDeg);
  const places = [
    ...(context.slots.length > 1 ? [null] : []),
    ...context.slots.map((slot) => slot.name),
  ];
  return places.flatMap((location) =>
    sizes.flatMap((size) =>
      [size, -size].map((rotationDeg): Hypothesis => {
        const concerns = (slot: string): boolean => location === null || location === slot;
        const change: Change = { rotationDeg };
        return {
          cause: 'polarization-rotated',
          location,
          weight: 1 / (2 * sizes.length),
          scatter: 'by-carrier',
          parameters: { rotationDeg },
          change: (carrier) => (concerns(carrier.slot) ? change : undefined),
          check: (measurement) =>
            measurement.kind === 'polarization-null' && concerns(measurement.slot)
              ? { mean: -rotationDeg, deviation: Math.abs(rotationDeg) * TURN.nullDeviationRatio }
              : undefined,
        };
      }),
    ),
  );
}
