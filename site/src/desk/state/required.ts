/** Rows that are begun and not yet whole: they wait outside the job that is computed, and the page says what they lack. */

import type { Draft } from './draft.js';
import { keysOf, listAt, pathOf, valueAt } from './paths.js';

/** Something that waits. */
export interface Waiting {
  /** Where it stands in the draft. */
  readonly path: string;
  /** The first field that it lacks; its own path where what it belongs to waits. */
  readonly lacks: string;
}

/** What a row of a list, or a group, must have before it counts. `*` stands for every row. */
const RULES: readonly (readonly [path: string, fields: readonly string[]])[] = [
  ['slots[*]', ['orbitalLongitudeDeg', 'name']],
  ['slots[*].carriers[*]', ['name', 'frequencyGHz', 'polarization']],
  ['mounts[*].reflector', ['diameterM']],
  ['mounts[*].feeds', ['kind']],
  ['mounts[*].mast', ['lengthM']],
  ['mounts[*].base', ['widthM']],
  ['wind', ['basicSpeedMPerS', 'terrain', 'heightM']],
  ['rain', ['source']],
  ['units[*]', ['name']],
  ['units[*].bands[*]', ['name', 'fromGHz', 'toGHz', 'localOscillatorGHz']],
  ['units[*].supply', ['currentA', 'minimumVoltageV']],
  ['horizon.samples[*]', ['azimuthDeg', 'elevationDeg']],
  ['limits[*]', ['testPoint', 'quantity']],
  ['transmit[*]', ['name', 'slot', 'frequencyGHz', 'polarization', 'saturatedPowerW']],
  ['transmit[*].offAxisMask[*]', ['offAxisDeg', 'maximumDensityDbwPer40KHz']],
  ['transmit[*].measuredPairs[*]', ['inputDbm', 'outputDbm']],
  ['transmit[*].crossPolarTest', ['coPolarDbm', 'crossPolarDbm', 'noiseDbm']],
  ['distribution.stacking', ['kind']],
  ['distribution.stacking.userBands[*]', ['centreMHz']],
  ['distribution.terrestrial', ['into', 'levelDbuv']],
  ['instruments[*]', ['name']],
  ['visits[*]', ['kind', 'date']],
  ['visits[*].readings[*]', ['quantity', 'testPoint']],
  ['visits[*].peaking[*]', ['axis', 'slot', 'carrier', 'restDeg']],
  ['visits[*].feedTurns[*]', ['slot', 'turnDeg']],
];

/** Lists that the format takes with rows or not at all. */
const NEVER_EMPTY = new Set(['offAxisMask', 'measuredPairs', 'userBands']);

/** The field that holds the value of a reading. */
export const VALUE_FIELD: Readonly<Record<string, string>> = {
  level: 'levelDbuv',
  'noise-level': 'noiseLevelDbuv',
  'carrier-to-noise': 'carrierToNoiseDb',
  'modulation-error-ratio': 'modulationErrorRatioDb',
  'cross-polar-isolation': 'isolationDb',
  'bit-error-ratio': 'bitErrorRatio',
  'supply-voltage': 'voltageV',
};

/** The fields of a limit, one of which must be given. */
export const LIMIT_FIELDS: Readonly<Record<string, readonly string[]>> = {
  level: ['minimumDbuv', 'maximumDbuv'],
  'noise-level': ['maximumDbuv'],
  'carrier-to-noise': ['minimumDb'],
  'modulation-error-ratio': ['minimumDb'],
  'cross-polar-isolation': ['minimumDb'],
  'bit-error-ratio': ['maximumRatio'],
  'supply-voltage': ['minimumV', 'maximumV'],
};

const isGiven = (value: unknown) => value !== undefined && value !== null && value !== '';

/** What a row lacks beyond the rules above. */
function lackOf(rule: string, row: unknown): string | undefined {
  const field = (name: string) => valueAt(row, name);
  if (rule === 'visits[*].readings[*]') {
    const name = VALUE_FIELD[String(field('quantity'))];
    return name !== undefined && !isGiven(field(name)) ? name : undefined;
  }
  if (rule === 'limits[*]') {
    const names = LIMIT_FIELDS[String(field('quantity'))] ?? [];
    return names.length > 0 && !names.some((name) => isGiven(field(name))) ? names[0] : undefined;
  }
  if (rule === 'rain') {
    if (field('source') === 'measured')
      return ['rainRate001MmPerH', 'years'].find((name) => !isGiven(field(name)));
    if (field('source') === 'monthly-normals')
      return ['rainfallMm', 'temperatureC']
        .flatMap((name) => listAt(row, name).map((_, month) => `${name}[${month}]`))
        .find((name) => !isGiven(field(name)));
  }
  if (rule === 'visits[*].peaking[*]')
    return listAt(row, 'samples.positionDeg').length === 0 && !isGiven(field('bracketing'))
      ? 'samples'
      : undefined;
  return undefined;
}

/** All paths that a rule means. */
function places(draft: unknown, rule: string): readonly string[] {
  const [head = '', ...tails] = rule.split('[*]');
  return tails.reduce<readonly string[]>(
    (paths, tail) =>
      paths.flatMap((path) => listAt(draft, path).map((_, index) => `${path}[${index}]${tail}`)),
    [head],
  );
}

/** Everything that waits, outer rows before the rows in them. */
export function waitingOf(draft: Draft): readonly Waiting[] {
  const found: Waiting[] = [];
  for (const [rule, fields] of RULES)
    for (const path of places(draft, rule)) {
      const row = valueAt(draft, path);
      if (row === undefined || found.some((each) => path.startsWith(`${each.path}.`))) continue;
      const lacks =
        fields.find((field) => !isGiven(valueAt(row, field))) ?? lackOf(rule, row) ?? undefined;
      if (lacks !== undefined) found.push({ path, lacks: `${path}.${lacks}` });
    }
  return [...found, ...orphans(draft, found)];
}

/** Rows that refer to something that waits. */
function orphans(draft: Draft, waiting: readonly Waiting[]): readonly Waiting[] {
  const waits = (path: string) => waiting.some((each) => each.path === path);
  const slots = new Map<unknown, ReadonlySet<unknown>>();
  listAt(draft, 'slots').forEach((slot, at) => {
    if (waits(`slots[${at}]`)) return;
    const carriers = listAt(slot, 'carriers').flatMap((carrier, index) =>
      waits(`slots[${at}].carriers[${index}]`) ? [] : [valueAt(carrier, 'name')],
    );
    slots.set(valueAt(slot, 'name'), new Set(carriers));
  });
  listAt(draft, 'transmit').forEach((sent, index) => {
    if (waits(`transmit[${index}]`)) return;
    const slot = valueAt(sent, 'slot');
    slots.set(slot, new Set([...(slots.get(slot) ?? []), valueAt(sent, 'name')]));
  });
  const lists = [
    'limits[*]',
    'visits[*].readings[*]',
    'visits[*].peaking[*]',
    'visits[*].feedTurns[*]',
  ];
  return lists
    .flatMap((rule) => places(draft, rule))
    .filter(
      (path) => !waiting.some((each) => path === each.path || path.startsWith(`${each.path}.`)),
    )
    .flatMap((path): Waiting[] => {
      const row = valueAt(draft, path);
      const slot = valueAt(row, 'slot');
      const carrier = valueAt(row, 'carrier');
      const known =
        slot === undefined ||
        (slots.has(slot) && (carrier === undefined || slots.get(slot)?.has(carrier)));
      return known ? [] : [{ path, lacks: `${path}.${slots.has(slot) ? 'carrier' : 'slot'}` }];
    });
}

/** The job without what waits, and the way back from its paths to those of the draft. */
export function withoutWaiting(
  draft: Draft,
  waiting: readonly Waiting[],
): { readonly job: Draft; readonly pathBack: (path: string) => string } {
  const gone = new Set(waiting.map(({ path }) => path));
  const kept = new Map<string, readonly number[]>();
  const copy = (value: unknown, from: string, to: string): unknown => {
    if (Array.isArray(value)) {
      const rows = value.map((_, index) => index).filter((row) => !gone.has(`${from}[${row}]`));
      if (rows.length < value.length) kept.set(to, rows);
      return rows.map((row, index) => copy(value[row], `${from}[${row}]`, `${to}[${index}]`));
    }
    if (typeof value !== 'object' || value === null) return value;
    const at = (base: string, key: string) => (base === '' ? key : `${base}.${key}`);
    // A list of which all rows wait is left out where the format refuses an empty one.
    const empty = (key: string, inner: unknown) =>
      NEVER_EMPTY.has(key) &&
      Array.isArray(inner) &&
      inner.every((_, row) => gone.has(`${at(from, key)}[${row}]`));
    return Object.fromEntries(
      Object.entries(value)
        .filter(([key, inner]) => !gone.has(at(from, key)) && !empty(key, inner))
        .map(([key, inner]) => [key, copy(inner, at(from, key), at(to, key))]),
    );
  };
  const job = copy(draft, '', '') as Draft;
  const pathBack = (path: string) => {
    const told: (string | number)[] = [];
    const asked: (string | number)[] = [];
    for (const key of keysOf(path)) {
      told.push(typeof key === 'number' ? (kept.get(pathOf(asked))?.[key] ?? key) : key);
      asked.push(key);
    }
    return pathOf(told);
  };
  return { job: tidied(job), pathBack };
}

/** Names of slots that wait are left out of lists of names; empty lists that the format refuses are left out too. */
function tidied(job: Draft): Draft {
  const names = new Set((job.slots ?? []).map(({ name }) => name));
  const known = (slots: readonly string[] | undefined) =>
    slots?.filter((name) => names.has(name)) ?? [];
  const { units, transmit, mounts, ...rest } = job;
  const kept = (mounts ?? []).filter(
    (mount) => mount.slots === undefined || known(mount.slots).length > 0,
  );
  return {
    ...rest,
    ...(kept.length > 0
      ? {
          mounts: kept.map((mount) =>
            mount.slots === undefined ? mount : { ...mount, slots: known(mount.slots) },
          ),
        }
      : {}),
    ...(units && units.length > 0
      ? {
          units: units.map(({ slots, bands, polarizations, ...unit }) => ({
            ...unit,
            ...(known(slots).length > 0 ? { slots: known(slots) } : {}),
            ...(bands && bands.length > 0 ? { bands } : {}),
            ...(polarizations && polarizations.length > 0 ? { polarizations } : {}),
          })),
        }
      : {}),
    ...(transmit && transmit.length > 0 ? { transmit } : {}),
  } as Draft;
}
