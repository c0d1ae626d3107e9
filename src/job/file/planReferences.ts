/** References between slots, mounts, receiving units and transmitted carriers of a job. */

import type { DomainError } from '../../errors.js';
import { dvbMode } from '../../link/index.js';
import type { JobFile } from './jobFile.js';
import { type Fault, held, listed, unique } from './referenceChecks.js';

/** Slots and carriers: names of their own, modes that their standard has, units that the job has. */
export function slots(job: JobFile, fault: Fault, faults: DomainError[]): void {
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

/** Mounts: every slot on one of them, and no more slots than the kind takes. */
export function mounts(job: JobFile, fault: Fault): void {
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

/** Receiving units: slots that the job has, bands with the ends in order. */
export function units(job: JobFile, fault: Fault): void {
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

/** Transmitted carriers: names apart from received ones, limits and mask in order. */
export function transmits(job: JobFile, fault: Fault): void {
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
