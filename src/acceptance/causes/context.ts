/** An installation guarded once, with what every forward model needs of it. */

import { byFrequency } from '../../distribution/internal.js';
import { DomainError, inRange, oneOf } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { cosDeg, sinDeg } from '../../numeric/angle.js';
import { dbToRatio } from '../../numeric/decibel.js';
import type { CauseCarrier, CauseInstallation, CauseSlot, CauseTestPoint } from './installation.js';
import { CAUSE_INSTALLATION_KEYS } from './installation.js';

/** A direction or an axis: east, north, up. */
export type Vector = readonly [east: number, north: number, up: number];

/** A slot with the axes of its line of sight. */
export interface SlotFrame extends CauseSlot {
  /** Towards the slot. */
  readonly toward: Vector;
  /** To the right along the sky. */
  readonly right: Vector;
  /** Upwards along the sky. */
  readonly upward: Vector;
}

/** A carrier with its slot and the beamwidth at its frequency. */
export interface CarrierContext extends CauseCarrier {
  readonly index: number;
  readonly slotIndex: number;
  readonly beamwidthDeg: number;
  readonly thresholdDb: number;
}

/** A test point with the names of those that feed it. */
export interface TestPointContext extends CauseTestPoint {
  readonly index: number;
  /** This point and every point before it. */
  readonly chain: ReadonlySet<string>;
  readonly noise: number;
  /** Loss from the unit at each carrier, in the order of carriers. */
  readonly lossesDb: readonly number[];
}

/** The guarded installation. */
export interface CauseContext {
  readonly slots: readonly SlotFrame[];
  readonly carriers: readonly CarrierContext[];
  readonly testPoints: readonly TestPointContext[];
  readonly systemNoiseK: number;
  readonly supplyVoltageV: number;
  /** What the antenna lets over from the other polarization, as a ratio of voltages. */
  readonly crossPolarVoltageRatio: number;
  /** Segments of cable, each named by the test point at its end. */
  readonly segments: readonly string[];
  /** Beamwidth at the lowest frequency in degrees. */
  readonly widestBeamDeg: number;
}

/** Guards an installation. */
export function causeContext(installation: CauseInstallation): CauseContext {
  known('installation', installation, CAUSE_INSTALLATION_KEYS);
  const diameterM = inRange('diameterM', installation.diameterM, 0.2, 40, 'is it in centimetres?');
  const slots = named('slots', installation.slots, SLOT_KEYS).map((slot, index) =>
    slotFrame(slot, index),
  );
  const carriers = named('carriers', installation.carriers, CARRIER_KEYS).map((carrier, index) =>
    carrierContext(carrier, index, slots, diameterM),
  );
  const testPoints = testPointContexts(
    named('testPoints', installation.testPoints, TEST_POINT_KEYS),
    carriers,
    slots,
  );
  return {
    slots,
    carriers,
    testPoints,
    systemNoiseK: inRange('systemNoiseK', installation.systemNoiseK ?? 120, 10, 10000),
    supplyVoltageV: inRange('supplyVoltageV', installation.supplyVoltageV ?? 17, 5, 30),
    crossPolarVoltageRatio: dbToRatio(
      -inRange('crossPolarIsolationDb', installation.crossPolarIsolationDb ?? 27, 10, 60) / 2,
    ),
    segments: testPoints.filter((point) => point.slot === undefined).map((point) => point.name),
    widestBeamDeg: Math.max(...carriers.map((carrier) => carrier.beamwidthDeg)),
  };
}

const SLOT_KEYS = { name: true, azimuthDeg: true, elevationDeg: true } satisfies Keys<
  CauseInstallation['slots'][number]
>;

const CARRIER_KEYS = {
  name: true,
  slot: true,
  polarization: true,
  band: true,
  frequencyGHz: true,
  frequencyMHz: true,
  levelDbuv: true,
  carrierToNoiseDb: true,
  thresholdDb: true,
} satisfies Keys<CauseInstallation['carriers'][number]>;

const TEST_POINT_KEYS = {
  name: true,
  behind: true,
  slot: true,
  lossDb: true,
  amplifierGainDb: true,
  noiseDbuv: true,
} satisfies Keys<CauseInstallation['testPoints'][number]>;

/** Guards a list of things with unlike names. */
function named<T extends { readonly name: string }>(
  parameter: string,
  list: readonly T[],
  keys: Keys<T>,
): readonly T[] {
  if (!Array.isArray(list) || list.length === 0 || list.length > 200)
    throw new DomainError({
      code:
        list === undefined
          ? 'missing'
          : !Array.isArray(list)
            ? 'malformed'
            : list.length === 0
              ? 'empty'
              : 'out-of-range',
      parameter,
      received: list,
      allowed: 'a list of 1 to 200 entries',
    });
  const names = new Set<string>();
  list.forEach((entry: T, index) => {
    known(`${parameter}[${index}]`, entry, keys);
    if (typeof entry.name !== 'string' || entry.name === '' || names.has(entry.name))
      throw new DomainError({
        code: entry.name === undefined ? 'missing' : 'malformed',
        parameter: `${parameter}[${index}].name`,
        received: entry.name,
        allowed: 'a name that no other entry of the list has',
      });
    names.add(entry.name);
  });
  return list;
}

function slotFrame(slot: CauseSlot, index: number): SlotFrame {
  const azimuthDeg = inRange(`slots[${index}].azimuthDeg`, slot.azimuthDeg, 0, 360);
  const elevationDeg = inRange(`slots[${index}].elevationDeg`, slot.elevationDeg, 0, 90);
  const sinA = sinDeg(azimuthDeg);
  const cosA = cosDeg(azimuthDeg);
  const sinE = sinDeg(elevationDeg);
  const cosE = cosDeg(elevationDeg);
  return {
    name: slot.name,
    azimuthDeg,
    elevationDeg,
    toward: [cosE * sinA, cosE * cosA, sinE],
    right: [cosA, -sinA, 0],
    upward: [-sinE * sinA, -sinE * cosA, cosE],
  };
}

function carrierContext(
  carrier: CauseCarrier,
  index: number,
  slots: readonly SlotFrame[],
  diameterM: number,
): CarrierContext {
  const path = `carriers[${index}]`;
  const slotIndex = slots.findIndex((slot) => slot.name === carrier.slot);
  if (slotIndex < 0) throw unknownName(`${path}.slot`, carrier.slot, 'the slots');
  oneOf(`${path}.polarization`, carrier.polarization, ['horizontal', 'vertical']);
  oneOf(`${path}.band`, carrier.band, ['low', 'high']);
  const frequencyGHz = inRange(
    `${path}.frequencyGHz`,
    carrier.frequencyGHz,
    1,
    100,
    'was the frequency given in MHz?',
  );
  inRange(`${path}.frequencyMHz`, carrier.frequencyMHz, 5, 10000, 'was it given in GHz?');
  inRange(`${path}.levelDbuv`, carrier.levelDbuv, 0, 130);
  inRange(`${path}.carrierToNoiseDb`, carrier.carrierToNoiseDb, -10, 60);
  return {
    ...carrier,
    index,
    slotIndex,
    // 70 lambda / D, the usual figure for a tapered reflector.
    beamwidthDeg: (70 * 0.299792458) / (frequencyGHz * diameterM),
    thresholdDb: inRange(`${path}.thresholdDb`, carrier.thresholdDb ?? 6, -10, 40),
  };
}

/** The error for a name that belongs to no entry of a list. */
export function unknownName(parameter: string, received: unknown, list: string): DomainError {
  return new DomainError({
    code: received === undefined ? 'missing' : 'inconsistent',
    parameter,
    received,
    allowed: `the name of one of ${list}`,
  });
}

function testPointContexts(
  points: readonly CauseTestPoint[],
  carriers: readonly CarrierContext[],
  slots: readonly SlotFrame[],
): readonly TestPointContext[] {
  const byName = new Map(points.map((point) => [point.name, point]));
  return points.map((point, index) => {
    const path = `testPoints[${index}]`;
    if (point.slot !== undefined && !slots.some((slot) => slot.name === point.slot))
      throw unknownName(`${path}.slot`, point.slot, 'the slots');
    const loss = byFrequency(`${path}.lossDb`, point.lossDb, { minimum: -80, maximum: 120 });
    inRange(`${path}.amplifierGainDb`, point.amplifierGainDb ?? 0, 0, 60);
    const chain = new Set<string>();
    for (let at: CauseTestPoint | undefined = point; at; ) {
      if (chain.has(at.name))
        throw new DomainError({
          code: 'inconsistent',
          parameter: `${path}.behind`,
          received: at.name,
          allowed: 'a chain that ends at the units',
          slip: 'do two test points feed each other?',
        });
      chain.add(at.name);
      if (at.behind === undefined) break;
      const before: CauseTestPoint | undefined = byName.get(at.behind);
      if (before === undefined) throw unknownName(`${path}.behind`, at.behind, 'the test points');
      at = before;
    }
    return {
      ...point,
      index,
      chain,
      noise: dbToRatio(inRange(`${path}.noiseDbuv`, point.noiseDbuv ?? 20, -20, 80)),
      lossesDb: carriers.map((carrier) => loss(carrier.frequencyMHz)),
    };
  });
}
