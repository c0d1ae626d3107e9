/** A job file of version 1 as one of version 2, and a path of the second as it is called in the first. */

import type { JobFile1, JobFile2 } from './jobFile.js';

/** Name of the one receiving unit of a version 1 file. */
const ONE_UNIT = 'outdoor unit';

/** The same job in the terms of version 2. */
export function upgraded(job: JobFile1): JobFile2 {
  const { apertureEfficiencyRatio, ...antenna } = job.antenna;
  return {
    format: 'slantpath-job',
    version: 2,
    title: job.title,
    date: job.date,
    station: job.station,
    slots: job.slots,
    mounts: [
      {
        kind: 'fixed',
        slots: job.slots.map(({ name }) => name),
        reflector: { ...antenna, efficiencyRatio: apertureEfficiencyRatio },
      },
    ],
    units: [{ name: ONE_UNIT, ...job.receiver }],
    horizon: job.horizon,
    rain: job.rain,
    target: job.target,
    distribution: { trees: [job.distribution] },
    limits: job.limits,
    visits:
      job.peaking.length + job.readings.length === 0
        ? []
        : [
            {
              kind: 'installation',
              date: job.date,
              peaking: job.peaking,
              readings: job.readings,
            },
          ],
  };
}

const PLACES: readonly (readonly [RegExp, string])[] = [
  [/^visits\[0\]\.(peaking|readings)/, '$1'],
  [/^distribution\.trees\[0\]/, 'distribution'],
  [/^mounts\[0\]\.reflector/, 'antenna'],
  [/^units\[0\]/, 'receiver'],
  [/^visits\[0\]\.date/, 'date'],
  [/\.efficiencyRatio$/, '.apertureEfficiencyRatio'],
];

/** What a path of version 2 is called in a file of version 1. */
export function pathInVersion1(path: string): string {
  return PLACES.reduce((told, [place, name]) => told.replace(place, name), path);
}
