/** Names of a job that point at each other, and values that must agree: every fault, by its path. */

import {
  type DistributionPart,
  type DistributionSystem,
  outletLevels,
} from '../../distribution/index.js';
import { DomainError } from '../../errors.js';
import { dvbMode } from '../../link/index.js';
import { instantToEpochMs } from '../../numeric/instant.js';
import type { JobFile, JobVisit } from './jobFile.js';
import { partNames } from './partNames.js';

type Fault = (parameter: string, received: unknown, allowed: string, slip?: string) => void;

/** Test points that every job has. */
const FIXED_POINTS = ['antenna', 'outlets'] as const;

const listed = (names: Iterable<string>): string => {
  // In a file that is half wrong a name may be anything.
  const all = [...names].filter((name) => typeof name === 'string');
  return all.length > 12
    ? `${all.slice(0, 12).join(', ')} and ${all.length - 12} more`
    : all.join(', ');
};

/**
 * All faults of the references.
 *
 * @param sound  Whether the schema found nothing wrong; otherwise what cannot be checked is left out.
 */
export function referenceFaults(job: JobFile, sound: boolean): readonly DomainError[] {
  const faults: DomainError[] = [];
  const fault: Fault = (parameter, received, allowed, slip) => {
    faults.push(new DomainError({ code: 'inconsistent', parameter, received, allowed, slip }));
  };
  const checks = [slots, mounts, units, distribution, transmits, limits, visits];
  for (const check of checks)
    try {
      check(job, fault, faults);
    } catch (error) {
      if (error instanceof DomainError) faults.push(error);
      else if (sound) throw error;
    }
  return faults;
}

/** Refuses a name that stands twice in a list. */
function unique(path: (index: number) => string, names: readonly string[], fault: Fault): void {
  const seen = new Set<string>();
  names.forEach((name, index) => {
    if (seen.has(name)) fault(path(index), name, 'a name of its own');
    seen.add(name);
  });
}

/** Runs a computation whose errors are faults of the file at a path. */
function held(faults: DomainError[], rename: (parameter: string) => string, run: () => void): void {
  try {
    run();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const { code, received, allowed, slip } = error;
    const row = error.index === undefined ? '' : `[${error.index}]`;
    faults.push(
      new DomainError({
        code,
        parameter: `${rename(error.parameter)}${row}`,
        received,
        allowed,
        slip,
      }),
    );
  }
}

function slots(job: JobFile, fault: Fault, faults: DomainError[]): void {
  unique(
    (index) => `slots[${index}].name`,
    job.slots.map(({ name }) => name),
    fault,
  );
  job.slots.forEach((slot, at) => {
    const carriers = slot.carriers ?? [];
    unique(
      (index) => `slots[${at}].carriers[${index}].name`,
      carriers.map(({ name }) => name),
      fault,
    );
    carriers.forEach(({ mode, standard, unit }, index) => {
      const path = `slots[${at}].carriers[${index}]`;
      if (mode !== undefined)
        held(
          faults,
          () => `${path}.mode`,
          () => {
            dvbMode(standard ?? 'DVB-S2', mode);
          },
        );
      const known = (job.units ?? []).map(({ name }) => name);
      if (unit !== undefined && !known.includes(unit))
        fault(`${path}.unit`, unit, `the name of a receiving unit (${listed(known)})`);
    });
  });
}

function mounts(job: JobFile, fault: Fault): void {
  const known = job.slots.map(({ name }) => name);
  unique(
    (index) => `mounts[${index}].name`,
    job.mounts.map(({ name }) => name),
    fault,
  );
  const taken = new Map<string, number>();
  job.mounts.forEach((mount, at) => {
    const path = `mounts[${at}]`;
    if (mount.slots.length === 0) fault(`${path}.slots`, [], 'given: every slot has another mount');
    mount.slots.forEach((slot, index) => {
      if (!known.includes(slot))
        fault(`${path}.slots[${index}]`, slot, `the name of a slot (${listed(known)})`);
      const before = taken.get(slot);
      if (before !== undefined)
        fault(
          `${path}.slots[${index}]`,
          slot,
          `a slot of one mount only (mounts[${before}] has it)`,
        );
      taken.set(slot, at);
    });
    if (mount.kind === 'fixed' && mount.feeds?.kind === 'rigid')
      if (mount.feeds.placesM.length !== mount.slots.length)
        fault(
          `${path}.feeds.placesM`,
          mount.feeds.placesM,
          `as many places as slots (${mount.slots.length})`,
        );
    if (mount.kind === 'fixed' && mount.slots.length > 16)
      fault(`${path}.slots`, mount.slots, 'at most 16 slots on one reflector');
    if (mount.kind === 'tracking' && mount.slots.length !== 1)
      fault(`${path}.slots`, mount.slots, 'one slot: a schedule follows one satellite');
  });
  job.slots.forEach(({ name }, index) => {
    if (!taken.has(name)) fault(`slots[${index}].name`, name, 'a slot of one of the mounts');
  });
}

function units(job: JobFile, fault: Fault): void {
  const list = job.units ?? [];
  const known = job.slots.map(({ name }) => name);
  const { lowestMHz = 950, highestMHz = 2150 } = job.tuner ?? {};
  if (lowestMHz >= highestMHz)
    fault('tuner.lowestMHz', lowestMHz, `below tuner.highestMHz (${highestMHz})`);
  unique(
    (index) => `units[${index}].name`,
    list.map(({ name }) => name),
    fault,
  );
  list.forEach((unit, at) => {
    const path = `units[${at}]`;
    unit.slots?.forEach((slot, index) => {
      if (!known.includes(slot))
        fault(`${path}.slots[${index}]`, slot, `the name of a slot (${listed(known)})`);
    });
    const bands = unit.bands ?? [];
    unique(
      (index) => `${path}.bands[${index}].name`,
      bands.map(({ name }) => name),
      fault,
    );
    bands.forEach(({ fromGHz, toGHz }, index) => {
      if (fromGHz >= toGHz)
        fault(
          `${path}.bands[${index}].fromGHz`,
          fromGHz,
          `below toGHz (${toGHz})`,
          'were the ends swapped?',
        );
    });
  });
}

function distribution(job: JobFile, fault: Fault, faults: DomainError[]): void {
  const { trees = [], lines = [], terrestrial } = job.distribution ?? {};
  const names = new Set<string>();
  const switches: string[] = [];
  trees.forEach((tree, at) => {
    for (const { path, name, kind } of partNames(tree, `distribution.trees[${at}]`)) {
      if (kind === 'switch' && name !== undefined) switches.push(name);
      if (kind !== 'outlet' && kind !== 'receiver') continue;
      if (name === undefined) continue;
      if ((FIXED_POINTS as readonly string[]).includes(name))
        fault(`${path}.name`, name, `another name: ${name} is a test point of every job`);
      if (names.has(name)) fault(`${path}.name`, name, 'a name of its own');
      names.add(name);
    }
    held(
      faults,
      (parameter) => parameter.replace(/^(tree|input|system)/, `distribution.trees[${at}]`),
      () => {
        outletLevels(probe(tree), [1000]);
      },
    );
  });
  unique(
    () => 'distribution.trees',
    switches,
    (path, received) => fault(path, received, 'of switches with names of their own'),
  );
  const known = (job.units ?? []).map(({ name }) => name);
  lines.forEach((line, at) => {
    const path = `distribution.lines[${at}]`;
    const unit = job.units?.find(({ name }) => name === line.unit);
    if (!unit) fault(`${path}.unit`, line.unit, `the name of a receiving unit (${listed(known)})`);
    if (line.band !== undefined && unit && !unit.bands?.some(({ name }) => name === line.band))
      fault(
        `${path}.band`,
        line.band,
        `a band of ${unit.name} (${listed((unit.bands ?? []).map(({ name }) => name))})`,
      );
    if (line.into !== undefined && !switches.includes(line.into))
      fault(`${path}.into`, line.into, `the name of a switch (${listed(switches)})`);
    const places: string[] = [];
    const chain = (line.parts ?? []).reduceRight<DistributionPart>(
      (to, part) => ({ ...part, to }) as DistributionPart,
      { kind: 'outlet', name: 'end' },
    );
    held(
      faults,
      (parameter) =>
        parameter.replace(/^tree((?:\.to)*)/, (_, steps: string) => {
          places.push(steps);
          return `${path}.parts[${steps.length / 3}]`;
        }),
      () => {
        outletLevels(probe(chain), [1000]);
      },
    );
  });
  if (terrestrial && !switches.includes(terrestrial.into))
    fault(
      'distribution.terrestrial.into',
      terrestrial.into,
      `the name of a switch (${listed(switches)})`,
    );
}

const probe = (tree: DistributionPart): DistributionSystem => ({
  source: { levelDbuv: 75, carrierToNoiseDb: 15 },
  tree,
});

function transmits(job: JobFile, fault: Fault): void {
  const list = job.transmit ?? [];
  unique(
    (index) => `transmit[${index}].name`,
    list.map(({ slot, name }) => `${slot}, ${name}`),
    fault,
  );
  list.forEach((sent, at) => {
    const path = `transmit[${at}]`;
    const slot = job.slots.find(({ name }) => name === sent.slot);
    if (!slot)
      fault(
        `${path}.slot`,
        sent.slot,
        `the name of a slot (${listed(job.slots.map(({ name }) => name))})`,
      );
    if (slot?.carriers?.some(({ name }) => name === sent.name))
      fault(`${path}.name`, sent.name, `another name than a received carrier of ${slot.name}`);
    const { minimumEirpDbw, maximumEirpDbw } = sent;
    if (
      minimumEirpDbw !== undefined &&
      maximumEirpDbw !== undefined &&
      minimumEirpDbw >= maximumEirpDbw
    )
      fault(`${path}.minimumEirpDbw`, minimumEirpDbw, `below maximumEirpDbw (${maximumEirpDbw})`);
    sent.offAxisMask?.forEach(({ offAxisDeg }, index, mask) => {
      const before = mask[index - 1]?.offAxisDeg;
      if (before !== undefined && offAxisDeg <= before)
        fault(`${path}.offAxisMask[${index}].offAxisDeg`, offAxisDeg, `above ${before}`);
    });
  });
}

/** Names of outlets and receivers of the job. */
function outletNames(job: JobFile): readonly string[] {
  return (job.distribution?.trees ?? []).flatMap((tree) =>
    partNames(tree, '').flatMap(({ kind, name }) =>
      (kind === 'outlet' || kind === 'receiver') && name !== undefined ? [name] : [],
    ),
  );
}

function limits(job: JobFile, fault: Fault): void {
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

function visits(job: JobFile, fault: Fault, faults: DomainError[]): void {
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
