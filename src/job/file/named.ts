/** A job in which slots, mounts and station have their names, each slot its mount. */

import type { JobFile, JobFile2, JobMount } from './jobFile.js';

/** Longitude of a slot as its name: `16.4 E`. */
function slotName(orbitalLongitudeDeg: number): string {
  const turn = ((((orbitalLongitudeDeg + 180) % 360) + 360) % 360) - 180;
  const shown = String(Number(Math.abs(turn).toFixed(3)));
  return shown === '0' ? '0' : `${shown} ${turn < 0 ? 'W' : 'E'}`;
}

function coordinate(angleDeg: number, plus: string, minus: string): string {
  return `${Math.abs(angleDeg).toFixed(4)} ${angleDeg < 0 ? minus : plus}`;
}

/** The job with everything named that the rest of the library refers to by name. */
export function namedJob(job: JobFile2): JobFile {
  const { station } = job;
  const name =
    station.name ??
    `${coordinate(station.latitudeDeg, 'N', 'S')}, ${coordinate(station.longitudeDeg, 'E', 'W')}`;
  const slots = job.slots.map((slot) => ({
    ...slot,
    name: slot.name ?? slotName(slot.orbitalLongitudeDeg),
  }));
  const given = job.mounts ?? [{ kind: 'fixed' as const }];
  const taken = new Set(given.flatMap((mount) => mount.slots ?? []));
  const free = slots.map((slot) => slot.name).filter((slot) => !taken.has(slot));
  const open = given.findIndex((mount) => mount.slots === undefined);
  const mounts = given.map(
    (mount, index): JobMount => ({
      ...mount,
      name: mount.name ?? `mount ${index + 1}`,
      slots: mount.slots ?? (index === open ? free : []),
    }),
  );
  return {
    ...job,
    title: job.title ?? name,
    station: { ...station, name },
    slots,
    mounts,
    visits: job.visits ?? [],
  };
}
