import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Ajv2020 from 'ajv/dist/2020.js';
import { DomainError } from 'slantpath';
import { parseJob } from 'slantpath/job';
import { describe, expect, test } from 'vitest';
import { jobJsonSchema } from '../../.ci/jobJsonSchema.js';

const text = readFileSync(
  fileURLToPath(new URL('./data/job-version-1.json', import.meta.url)),
  'utf8',
);
type Json = Record<string, unknown>;
const fresh = (): Json => JSON.parse(text) as Json;

/** The demo job with the value at a path replaced; `undefined` removes it. */
function changed(path: readonly (string | number)[], value: unknown): Json {
  const job = fresh();
  let at = job as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>;
  const last = path[path.length - 1] as string | number;
  if (value === undefined) delete at[last];
  else at[last] = value;
  return job;
}

function refused(input: unknown): DomainError {
  try {
    parseJob(input);
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error('was not refused');
}

test('reads version 1 in the terms of version 2, from text and from a value, and again what it gave', () => {
  const job = parseJob(text);
  const old = fresh() as { station: unknown; readings: unknown; antenna: { diameterM: number } };
  expect(job).toMatchObject({
    version: 2,
    station: old.station,
    mounts: [{ kind: 'fixed', reflector: { diameterM: old.antenna.diameterM } }],
    visits: [{ kind: 'installation', readings: old.readings }],
  });
  expect(parseJob(fresh())).toEqual(job);
  expect(parseJob(job)).toEqual(job);
  expect(parseJob(JSON.stringify(job))).toEqual(job);
});

describe('one clear error names the field by its path, the value and what was expected', () => {
  test.each([
    [['station', 'latitudeDeg'], 116.2, 'station.latitudeDeg', 'out-of-range', 'swapped'],
    [
      ['station', 'latitudeDeg'],
      undefined,
      'station.latitudeDeg',
      'missing',
      'a finite number, got undefined',
    ],
    [['limits'], undefined, 'limits', 'missing', 'a list'],
    [['station'], undefined, 'station', 'missing', 'an object'],
    [['date'], undefined, 'date', 'missing', 'a text'],
    [
      ['slots', 0, 'carriers', 0, 'polarization'],
      undefined,
      'slots[0].carriers[0].polarization',
      'missing',
      'horizontal',
    ],
    [['station', 'latitudeDeg'], '46.6', 'station.latitudeDeg', 'not-a-number', 'in quotes'],
    [['station', 'heightM'], null, 'station.heightM', 'missing', 'null'],
    [['station', 'latitude'], 46, 'station.latitude', 'unknown-field', 'left out'],
    [
      ['slots', 1, 'carriers', 0, 'frequencyGHz'],
      12518,
      'slots[1].carriers[0].frequencyGHz',
      'out-of-range',
      'in MHz',
    ],
    [
      ['slots', 0, 'carriers', 0, 'intermediateFrequencyMHz'],
      1.597,
      'slots[0].carriers[0].intermediateFrequencyMHz',
      'out-of-range',
      'in GHz',
    ],
    [
      ['slots', 0, 'carriers', 0, 'polarization'],
      'horiz',
      'slots[0].carriers[0].polarization',
      'not-an-option',
      'horizontal',
    ],
    [['slots'], [], 'slots', 'too-few', 'length 1 or more'],
    [['slots', 1, 'name'], 'West slot', 'slots[1].name', 'inconsistent', 'name of its own'],
    [['antenna', 'diameterM'], 90, 'antenna.diameterM', 'out-of-range', 'centimetres'],
    [
      ['antenna', 'apertureEfficiencyRatio'],
      65,
      'antenna.apertureEfficiencyRatio',
      'out-of-range',
      'per cent',
    ],
    [['rain', 'rainfallMm'], [1, 2], 'rain.rainfallMm', 'too-few', 'length 12'],
    [['rain', 'source'], 'guess', 'rain.source', 'not-an-option', 'guess'],
    [['date'], '14.7.2026', 'date', 'malformed', 'YYYY-MM-DD'],
    [['date'], '2026-02-30', 'date', 'malformed', '2026-02-30'],
    [['distribution', 'to', 'lengthM'], -3, 'distribution.to.lengthM', 'out-of-range', '0 or more'],
    [
      ['distribution', 'to', 'to', 'outputs', 1, 'kind'],
      'cabel',
      'distribution.to.to.outputs[1].kind',
      'not-an-option',
      'cabel',
    ],
    [['peaking', 0, 'slot'], 'North slot', 'peaking[0].slot', 'inconsistent', 'West slot'],
    [
      ['peaking', 1, 'samples', 'levelDbm'],
      [1, 2],
      'peaking[1].samples.levelDbm',
      'length-mismatch',
      '9',
    ],
    [
      ['limits', 1, 'minimumDbuv'],
      90,
      'limits[1].minimumDbuv',
      'inconsistent',
      'below maximumDbuv',
    ],
    [
      ['readings', 0, 'testPoint'],
      'dinning room',
      'readings[0].testPoint',
      'inconsistent',
      'dining room',
    ],
    [['readings', 0, 'testPoint'], 'outlets', 'readings[0].testPoint', 'inconsistent', 'antenna'],
    [
      ['limits', 1, 'testPoint'],
      'outlet',
      'limits[1].testPoint',
      'inconsistent',
      'antenna, outlets, dining room, bunk room',
    ],
    [['version'], 3, 'version', 'not-an-option', '1 or 2'],
  ] as const)('%j = %j', (path, value, parameter, code, word) => {
    const error = refused(changed(path, value));
    expect(error).toMatchObject({ parameter, code });
    expect(error.message).toContain(word);
    for (const line of error.message.split('\n')) expect(line.length).toBeLessThan(260);
  });

  test.each([
    ['{ "format": ', 'malformed'],
    ['', 'malformed'],
    ['[]', 'malformed'],
    ['null', 'missing'],
    ['3', 'malformed'],
  ])('the text %j', (input, code) => {
    expect(refused(input)).toMatchObject({ parameter: 'job', code });
  });

  test('a tree nested without end is refused, not walked', () => {
    let part: unknown = { kind: 'outlet', name: 'end' };
    for (let i = 0; i < 50_000; i++) part = { kind: 'connector', lossDb: 0, to: part };
    expect(refused(changed(['distribution'], part)).message).toContain('nested');
  });
});

test('takes test points behind taps, switches and another outlet', () => {
  const outlet = (name: string, to?: unknown) =>
    to === undefined ? { kind: 'outlet', name } : { kind: 'outlet', name, to };
  const distribution = {
    kind: 'tap',
    throughLossDb: 1,
    tapLossDb: 15,
    taps: [outlet('kitchen'), null],
    to: { kind: 'switch', lossDb: 3, outputs: [outlet('hall', outlet('stairs')), null] },
  };
  const [limit] = fresh()['limits'] as Json[];
  for (const testPoint of ['kitchen', 'hall', 'stairs'])
    expect(
      parseJob({ ...fresh(), distribution, readings: [], limits: [{ ...limit, testPoint }] })
        .limits,
    ).toHaveLength(1);
});

describe('the published JSON Schema', () => {
  const validate = new Ajv2020.default({ strict: true, formats: { date: true } }).compile(
    jobJsonSchema(1),
  );
  test('is the committed one', () => {
    const committed = fileURLToPath(
      new URL('../../docs/schemas/job-1.schema.json', import.meta.url),
    );
    expect(JSON.parse(readFileSync(committed, 'utf8'))).toEqual(jobJsonSchema(1));
  });
  test('takes the demo file and refuses what the parser refuses', () => {
    expect(validate(fresh())).toBe(true);
    expect(validate(changed(['station', 'latitudeDeg'], 116.2))).toBe(false);
    expect(validate(changed(['station', 'latitude'], 46))).toBe(false);
    expect(validate(changed(['slots'], []))).toBe(false);
    expect(validate(changed(['distribution', 'to', 'lengthM'], -3))).toBe(false);
  });
});
