/** Limits, and what was read, peaked and turned at each visit, against what the job has. */

import { DomainError } from '../../errors.js';
import { instantToEpochMs } from '../../numeric/instant.js';
import type { JobFile, JobVisit } from './jobFile.js';
import { type Fault, FIXED_POINTS, held, listed, outletNames } from './referenceChecks.js';

/** Limits: of test points and slots of the job, one for each, with the ends in order. */
export function limits(job: JobFile, fault: Fault): void {
  const known = [...FIXED_POINTS, ...outletNames(job)];
  const slotNames = job.slots.map(({ name }) => name);
  const seen = new Map<string, number>();
  job.limits?.forEach((limit, at) => {
    const path = `limits[${at}]`;
    if (!known.includes(limit.testPoint))
      fault(`${path}.testPoint`, limit.testPoint, `a test point of the job (${listed(known)})`);
    if (limit.slot !== undefined && !slotNames.includes(limit.slot))
      fault(`${path}.slot`, limit.slot, `the name of a slot (${listed(slotNames)})`);
    const key = JSON.stringify([limit.testPoint, limit.slot ?? null, limit.quantity]);
    const before = seen.get(key);
    if (before !== undefined)
      fault(
        path,
        limit.quantity,
        `one limit for this test point and quantity (limits[${before}] is another)`,
      );
    seen.set(key, at);
    if (limit.quantity === 'level') {
      const { minimumDbuv, maximumDbuv } = limit;
      if (minimumDbuv === undefined && maximumDbuv === undefined)
        fault(`${path}.minimumDbuv`, undefined, 'given where no maximumDbuv is');
      if (minimumDbuv !== undefined && maximumDbuv !== undefined && minimumDbuv >= maximumDbuv)
        fault(`${path}.minimumDbuv`, minimumDbuv, `below maximumDbuv (${maximumDbuv})`);
    }
    if (limit.quantity === 'supply-voltage') {
      const { minimumV, maximumV } = limit;
      if (minimumV === undefined && maximumV === undefined)
        fault(`${path}.minimumV`, undefined, 'given where no maximumV is');
      if (minimumV !== undefined && maximumV !== undefined && minimumV >= maximumV)
        fault(`${path}.minimumV`, minimumV, `below maximumV (${maximumV})`);
    }
  });
}

/** Visits: days in order, and what was done at each. */
export function visits(job: JobFile, fault: Fault, faults: DomainError[]): void {
  if (job.date !== undefined)
    held(
      faults,
      () => 'date',
      () => {
        instantToEpochMs('date', job.date as string);
      },
    );
  job.visits.forEach((visit, at) => {
    const path = `visits[${at}]`;
    held(
      faults,
      () => `${path}.date`,
      () => {
        instantToEpochMs('date', visit.date);
      },
    );
    const before = job.visits[at - 1]?.date;
    if (before !== undefined && visit.date < before)
      fault(`${path}.date`, visit.date, `not before the visit before it (${before})`);
    oneVisit(job, visit, path, fault, faults);
  });
}

function oneVisit(
  job: JobFile,
  visit: JobVisit,
  path: string,
  fault: Fault,
  faults: DomainError[],
): void {
  const slotNames = job.slots.map(({ name }) => name);
  const carrierNames = (slot: string): readonly string[] => [
    ...(job.slots.find(({ name }) => name === slot)?.carriers ?? []).map(({ name }) => name),
    ...(job.transmit ?? []).filter((sent) => sent.slot === slot).map(({ name }) => name),
  ];
  const refer = (
    at: string,
    { slot, carrier }: { readonly slot?: string; readonly carrier?: string },
  ) => {
    if (slot !== undefined && !slotNames.includes(slot))
      return fault(`${at}.slot`, slot, `the name of a slot (${listed(slotNames)})`);
    if (carrier === undefined) return;
    if (slot === undefined) return fault(`${at}.slot`, slot, 'given where a carrier is');
    if (!carrierNames(slot).includes(carrier))
      fault(`${at}.carrier`, carrier, `a carrier of ${slot} (${listed(carrierNames(slot))})`);
  };
  const twice = (at: string, key: readonly unknown[], seen: Map<string, string>, what: string) => {
    const text = JSON.stringify(key);
    const before = seen.get(text);
    if (before !== undefined)
      fault(
        at,
        key.filter((part) => part !== null).join(', '),
        `${what} once in a visit (${before} is another)`,
      );
    seen.set(text, before ?? at);
  };
  const points = ['antenna', ...outletNames(job)];
  const seenReadings = new Map<string, string>();
  visit.readings?.forEach((reading, index) => {
    const at = `${path}.readings[${index}]`;
    if (!points.includes(reading.testPoint))
      fault(
        `${at}.testPoint`,
        reading.testPoint,
        `a test point of the job (${listed(points)})`,
        points.find((point) => point.toLowerCase() === reading.testPoint.trim().toLowerCase())
          ? 'is it upper and lower case?'
          : undefined,
      );
    refer(at, reading);
    twice(
      at,
      [reading.testPoint, reading.slot ?? null, reading.carrier ?? null, reading.quantity],
      seenReadings,
      'read',
    );
  });
  const seenPeaking = new Map<string, string>();
  visit.peaking?.forEach((peaking, index) => {
    const at = `${path}.peaking[${index}]`;
    refer(at, peaking);
    twice(at, [peaking.axis, peaking.slot, peaking.carrier], seenPeaking, 'peaked');
    const { samples } = peaking;
    if (samples && samples.positionDeg.length !== samples.levelDbm.length)
      faults.push(
        new DomainError({
          code: 'length-mismatch',
          parameter: `${at}.samples.levelDbm`,
          received: samples.levelDbm,
          allowed: `as many levels as positions (${samples.positionDeg.length})`,
        }),
      );
    if (!samples && !peaking.bracketing)
      fault(`${at}.samples`, undefined, 'given where no bracketing is');
  });
  const seenTurns = new Map<string, string>();
  visit.feedTurns?.forEach((turn, index) => {
    const at = `${path}.feedTurns[${index}]`;
    refer(at, turn);
    twice(at, [turn.slot], seenTurns, 'told');
  });
}
