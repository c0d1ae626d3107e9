/** The published JSON Schemas: written from the definitions, every field explained, and of one mind with the parser. */

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Ajv2020 from 'ajv/dist/2020.js';
import { parseJob } from 'slantpath/job';
import { describe, expect, test } from 'vitest';
import { JOB_VERSIONS, jobJsonSchema } from '../../.ci/jobJsonSchema.js';
import * as good from './support/goodJobs.js';

const file = (path: string): unknown =>
  JSON.parse(readFileSync(fileURLToPath(new URL(path, import.meta.url)), 'utf8'));

type Tree = Readonly<Record<string, unknown>>;
const isTree = (value: unknown): value is Tree => typeof value === 'object' && value !== null;

/** Fields of a schema with their paths and definitions. */
function fields(schema: unknown, path = ''): { path: string; field: Tree; required: boolean }[] {
  if (!isTree(schema)) return [];
  const properties = isTree(schema['properties']) ? schema['properties'] : {};
  const required = (schema['required'] ?? []) as readonly string[];
  return [
    ...Object.entries(properties).flatMap(([name, field]) => {
      const inner = path === '' ? name : `${path}.${name}`;
      return [
        { path: inner, field: field as Tree, required: required.includes(name) },
        ...fields(field, inner),
      ];
    }),
    ...fields(schema['items'], `${path}[]`),
    ...(['anyOf', 'oneOf', 'allOf'] as const).flatMap((key) =>
      ((schema[key] ?? []) as readonly unknown[]).flatMap((one) => fields(one, path)),
    ),
    ...Object.entries(isTree(schema['$defs']) ? schema['$defs'] : {}).flatMap(([name, one]) =>
      fields(one, name),
    ),
  ];
}

describe.each(JOB_VERSIONS)('version %i', (version) => {
  const schema = jobJsonSchema(version);
  const all = fields(schema);

  test('is the committed one', () => {
    expect(file(`../../docs/schemas/job-${version}.schema.json`)).toEqual(schema);
  });

  test('explains every field, every default and every fixed word', () => {
    expect(all.length).toBeGreaterThan(60);
    for (const { path, field, required } of all) {
      // What follows in a tree is a part like any other.
      if ('$ref' in field || path.endsWith('.to') || path === 'distribution') continue;
      const description = String(field['description'] ?? '');
      expect(description.length, path).toBeGreaterThan(8);
      for (const word of (field['enum'] ?? []) as readonly string[])
        expect(description, path).toContain(`\`${word}\``);
      const isUnset = /default|without|not said|none/i.test(description);
      const tells = required || isUnset || /supply$|name$/.test(path);
      expect(tells ? '' : `${path}: ${description}`).toBe('');
    }
  });
});

describe('of one mind with the parser', () => {
  const validate = new Ajv2020.default({ strict: true, formats: { date: true } }).compile(
    jobJsonSchema(2),
  );
  test.each([
    ['hut', () => file('../../examples/job/tarnfell-lower-hut.json')],
    ['clinic', () => file('../../examples/job/riverine-clinic.json')],
    ['school', () => file('../../examples/job/station-school.json')],
    ...Object.entries(good)
      .filter(([name]) =>
        ['oneSlot', 'severalRigid', 'separate', 'polar', 'tracking', 'twoWay'].includes(name),
      )
      .map(([name, make]) => [name, make as () => unknown] as const),
  ] as const)('takes the %s', (_, make) => {
    const job = make();
    expect(validate(job), JSON.stringify(validate.errors)).toBe(true);
    expect(() => parseJob(job)).not.toThrow();
  });

  test('only a station and one slot are required', () => {
    const least = {
      format: 'slantpath-job',
      version: 2,
      station: { latitudeDeg: -31.4, longitudeDeg: -62.8 },
      slots: [{ orbitalLongitudeDeg: -61.2 }],
    };
    expect(validate(least)).toBe(true);
    expect(parseJob(least)).toMatchObject({
      slots: [{ name: '61.2 W' }],
      mounts: [{ kind: 'fixed', name: 'mount 1', slots: ['61.2 W'] }],
      visits: [],
    });
  });
});
