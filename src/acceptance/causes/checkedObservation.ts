/** Guards of what was read on site. */

import { DomainError, finite, inRange, oneOf } from '../../errors.js';
import { known } from '../../keys.js';
import { type CauseContext, unknownName } from './context.js';
import {
  CAUSE_OBSERVATION_KEYS,
  type CauseMeasurement,
  type CauseObservation,
  DEFAULT_UNCERTAINTY,
  OBSERVATION_KINDS,
  YES_NO_KINDS,
} from './observation.js';

/** A numeric result with its uncertainty, a yes or no, or what was received. */
export type Result =
  | { readonly kind: 'number'; readonly value: number; readonly uncertainty: number }
  | { readonly kind: 'yes-no'; readonly seen: boolean }
  | { readonly kind: 'reception'; readonly received: 'wanted' | 'other' | 'nothing' };

/** Fields that tell one measurement from another. */
export function measurementKey(measurement: CauseMeasurement): string {
  const { kind, carrier, testPoint, slot, segment } = measurement as unknown as Readonly<
    Record<string, string | undefined>
  >;
  return `${kind}\n${carrier ?? slot ?? segment ?? ''}\n${testPoint ?? ''}`;
}

/** Guards one observation and gives its result. */
export function checkedObservation(
  context: CauseContext,
  observation: CauseObservation,
  path: string,
): Result {
  known(path, observation, CAUSE_OBSERVATION_KEYS);
  oneOf(`${path}.kind`, observation.kind, OBSERVATION_KINDS);
  checkNames(context, observation, path);
  if (isYesNo(observation)) {
    if (typeof observation.seen !== 'boolean')
      throw new DomainError({
        code: observation.seen === undefined ? 'missing' : 'malformed',
        parameter: `${path}.seen`,
        received: observation.seen,
        allowed: 'true or false',
      });
    return { kind: 'yes-no', seen: observation.seen };
  }
  if (observation.kind === 'reception') {
    oneOf(`${path}.received`, observation.received, ['wanted', 'other', 'nothing']);
    return { kind: 'reception', received: observation.received };
  }
  return checkedNumber(observation, path);
}

type NumericKind = keyof typeof DEFAULT_UNCERTAINTY;

/** For each kind that is answered by a number: its field, the field of its uncertainty, and what an instrument can show. */
const NUMBERS: {
  readonly [kind in NumericKind]: readonly [
    field: string,
    uncertaintyField: string,
    from: number,
    to: number,
  ];
} = {
  level: ['levelDbuv', 'standardUncertaintyDb', -60, 150],
  'carrier-to-noise': ['carrierToNoiseDb', 'standardUncertaintyDb', -30, 60],
  isolation: ['isolationDb', 'standardUncertaintyDb', -60, 60],
  'polarization-null': ['turnDeg', 'standardUncertaintyDeg', -90, 90],
  search: ['riseDb', 'standardUncertaintyDb', -5, 60],
  'supply-voltage': ['voltageV', 'standardUncertaintyV', 0, 60],
  'mast-lean': ['leanDeg', 'standardUncertaintyDeg', 0, 45],
  'repeat-later': ['changeDb', 'standardUncertaintyDb', -60, 60],
};

function checkedNumber(
  observation: Extract<CauseObservation, { readonly kind: NumericKind }>,
  path: string,
): Result {
  const [field, uncertaintyField, from, to] = NUMBERS[observation.kind];
  const given = observation as unknown as Readonly<Record<string, number | undefined>>;
  const usual = DEFAULT_UNCERTAINTY[observation.kind];
  return {
    kind: 'number',
    value: inRange(
      `${path}.${field}`,
      finite(`${path}.${field}`, given[field] as number),
      from,
      to,
    ),
    uncertainty: inRange(`${path}.${uncertaintyField}`, given[uncertaintyField] ?? usual, 0.01, 50),
  };
}

function isYesNo(
  observation: CauseObservation,
): observation is Extract<CauseObservation, { readonly seen: boolean }> {
  return (YES_NO_KINDS as readonly string[]).includes(observation.kind);
}

function checkNames(context: CauseContext, observation: CauseObservation, path: string): void {
  if ('carrier' in observation || 'testPoint' in observation) {
    const point = context.testPoints.find((candidate) => candidate.name === observation.testPoint);
    if (!point) throw unknownName(`${path}.testPoint`, observation.testPoint, 'the test points');
    if (observation.kind === 'supply-voltage') return;
    const carrier = context.carriers.find((candidate) => candidate.name === observation.carrier);
    if (!carrier) throw unknownName(`${path}.carrier`, observation.carrier, 'the carriers');
    if (point.slot !== undefined && point.slot !== carrier.slot)
      throw new DomainError({
        code: 'inconsistent',
        parameter: `${path}.testPoint`,
        received: observation.testPoint,
        allowed: `the unit of slot ${carrier.slot} or a point behind the units`,
      });
    return;
  }
  const needsCarrier = ['level', 'carrier-to-noise', 'isolation', 'reception', 'supply-voltage'];
  if (needsCarrier.includes(observation.kind))
    throw unknownName(`${path}.testPoint`, undefined, 'the test points');
  const needsSlot = ['polarization-null', 'search', 'sun-near', 'obstacle-seen'];
  const { slot, segment } = observation as { readonly slot?: string; readonly segment?: string };
  if (needsSlot.includes(observation.kind) && !context.slots.some((s) => s.name === slot))
    throw unknownName(`${path}.slot`, slot, 'the slots');
  if (
    ['connector-check', 'cable-check'].includes(observation.kind) &&
    !knownSegment(context, segment)
  )
    throw unknownName(`${path}.segment`, segment, 'the segments');
}

/** Segments by name: each shared test point, and the lead of each unit where there are several. */
export function segmentNames(context: CauseContext): readonly string[] {
  if (context.slots.length === 1) return context.segments;
  return [...context.segments, ...context.slots.map((slot) => `lead of ${slot.name}`)];
}

function knownSegment(context: CauseContext, segment: string | undefined): boolean {
  return segment !== undefined && segmentNames(context).includes(segment);
}
