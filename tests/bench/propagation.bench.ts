/**
 * Rain in batch and gases line by line, beside NumPy references in the same run where Python with NumPy is at hand;
 * otherwise beside the figures last measured, printed as such.
 */

import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import {
  gasSlantAttenuation,
  gasSlantAttenuationBatch,
  rainAttenuation,
  rainAttenuationBatch,
} from '../../src/propagation/index.js';
import { type BenchRow, measure } from './measure.js';

/** What a reference printed: a value that must agree, and nanoseconds of one item. */
interface Reference {
  readonly value: number;
  readonly nanoseconds: number;
  readonly live: boolean;
}

function reference(
  script: string,
  args: readonly string[],
  last: Omit<Reference, 'live'>,
): Reference {
  try {
    const path = fileURLToPath(new URL(`./reference/${script}`, import.meta.url));
    const [value = Number.NaN, nanoseconds = Number.NaN] = execFileSync(
      'python3',
      [path, ...args],
      {
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'ignore'],
      },
    )
      .trim()
      .split(' ')
      .map(Number);
    return { value, nanoseconds, live: true };
  } catch {
    return { ...last, live: false };
  }
}

/** Sites by the rule that the reference uses too. */
function sites(count: number) {
  const column = (rule: (i: number) => number) =>
    Float64Array.from({ length: count }, (_, i) => rule(i));
  return {
    latitudeDeg: column((i) => -60 + ((i * 7.31) % 120)),
    heightM: column((i) => (i * 13.7) % 1200),
    rainHeightKm: column((i) => 2 + ((i * 0.0371) % 3)),
    rainRate001MmPerH: column((i) => 10 + ((i * 1.73) % 100)),
    elevationDeg: column((i) => 6 + ((i * 3.77) % 80)),
    frequencyGHz: 20,
    tiltDeg: 45,
    exceededPercent: 0.01,
  };
}

function agree(what: string, got: number, expected: number): void {
  if (!(Math.abs(got / expected - 1) < 1e-9))
    throw new Error(`${what}: ${got} where the reference gives ${expected}`);
}

function besideReference(
  name: string,
  row: BenchRow,
  { nanoseconds, live }: Reference,
  budgetTimes?: number,
): BenchRow {
  const ratio = row.nanosecondsPerItem / nanoseconds;
  return {
    ...row,
    name: `${name}, ${(1 / ratio).toFixed(1)} x faster than NumPy's ${nanoseconds.toFixed(0)} ns${live ? '' : ' (last measured)'}`,
    ratio,
    ...(budgetTimes === undefined ? {} : { budgetRatio: 1 / budgetTimes }),
  };
}

export default function bench(): BenchRow[] {
  const rows: BenchRow[] = [];

  for (const [count, last, loop] of [
    [30, { value: 0, nanoseconds: 2700 }, false],
    [1000, { value: 23157.533369570125, nanoseconds: 177 }, false],
    [100_000, { value: 2344641.3067453867, nanoseconds: 170 }, false],
    [1000, { value: 23157.533369570125, nanoseconds: 25_000 }, true],
  ] as const) {
    const input = sites(count);
    const out = new Float64Array(count);
    const numpy = reference('p618_numpy.py', [String(count), ...(loop ? ['per-site'] : [])], last);
    const repeats = Math.ceil(20_000 / count);
    const [row] = measure('P.618 rain', count * repeats, [
      {
        name: 'batch',
        run: () => {
          let sum = 0;
          for (let i = 0; i < repeats; i++)
            sum += rainAttenuationBatch(input, { attenuationDb: out }).attenuationDb[0] as number;
          return sum;
        },
      },
    ]);
    if (numpy.live)
      agree(
        'rain',
        rainAttenuationBatch(input).attenuationDb.reduce((sum, db) => sum + db, 0),
        numpy.value,
      );
    if (row)
      rows.push(
        besideReference(
          `batch of ${count} sites ${loop ? '(NumPy site by site)' : '(NumPy in columns)'}`,
          row,
          numpy,
          loop ? 10 : undefined,
        ),
      );
  }

  const alternating = {
    ...sites(1000),
    frequencyGHz: Float64Array.from({ length: 1000 }, (_, i) => 12 + (i % 4)),
  };
  const out = new Float64Array(1000);
  const times = (input: Parameters<typeof rainAttenuationBatch>[0]) => () => {
    let sum = 0;
    for (let i = 0; i < 20; i++)
      sum += rainAttenuationBatch(input, { attenuationDb: out }).attenuationDb[0] as number;
    return sum;
  };
  rows.push(
    ...measure('P.618 rain', 20_000, [
      { name: 'batch, one frequency', run: times(sites(1000)) },
      { name: 'batch, four frequencies in turn', budgetRatio: 1.6, run: times(alternating) },
    ]),
  );

  const few = sites(1000);
  const single = Array.from({ length: 1000 }, (_, i) => ({
    ...few,
    latitudeDeg: few.latitudeDeg[i] as number,
    heightM: few.heightM[i] as number,
    rainHeightKm: few.rainHeightKm[i] as number,
    rainRate001MmPerH: few.rainRate001MmPerH[i] as number,
    elevationDeg: few.elevationDeg[i] as number,
  }));
  rows.push(
    ...measure('P.618 rain', 1000, [
      {
        name: 'single calls',
        run: () => single.reduce((sum, site) => sum + rainAttenuation(site).attenuationDb, 0),
      },
    ]),
  );

  const numpy = reference('p676_numpy.py', ['28', '30'], {
    value: 0.4708117347298409,
    nanoseconds: 28_000_000,
  });
  agree(
    'gas',
    gasSlantAttenuation({ frequencyGHz: 28, elevationDeg: 30 }).attenuationDb,
    numpy.value,
  );
  const frequencyGHz = Float64Array.from({ length: 100 }, (_, i) => 10 + i / 2);
  const [one] = measure(
    'P.676 slant path, 922 layers',
    1,
    [
      {
        name: 'single',
        run: () => gasSlantAttenuation({ frequencyGHz: 28, elevationDeg: 30 }).attenuationDb,
      },
    ],
    15,
  );
  const [many] = measure(
    'P.676 slant path, 922 layers',
    100,
    [
      {
        name: 'batch',
        run: () =>
          gasSlantAttenuationBatch({ frequencyGHz, elevationDeg: 30 }).attenuationDb[50] as number,
      },
    ],
    9,
  );
  if (one) rows.push(besideReference('single call', one, numpy));
  if (many) rows.push(besideReference('batch of 100 frequencies', many, numpy, 50));
  return rows;
}
