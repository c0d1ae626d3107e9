/**
 * The bill of materials: what CycloneDX 1.6 asks of it (bom-1.6.schema.json: `required`, `enum` and `pattern` of the objects used here;
 * hash, licence and dependency from memory), and that it lists what the notices list and what is installed.
 */

import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { billOfMaterials } from '../../.ci/billOfMaterials.js';
import { BUNDLED } from '../../.ci/bundled.js';
import { notices } from '../../.ci/notices.js';

const LIBRARY = {
  type: 'object',
  required: ['type', 'name', 'version', 'purl', 'licenses', 'bom-ref'],
  additionalProperties: false,
  properties: {
    type: { const: 'library' },
    'bom-ref': { type: 'string', minLength: 1, pattern: '^(?!urn:cdx:)' },
    name: { type: 'string' },
    version: { type: 'string', maxLength: 1024 },
    description: { type: 'string' },
    scope: { enum: ['required', 'optional', 'excluded'] },
    hashes: {
      type: 'array',
      items: {
        type: 'object',
        required: ['alg', 'content'],
        additionalProperties: false,
        properties: {
          alg: { const: 'SHA-512' },
          content: { type: 'string', pattern: '^[a-fA-F0-9]{128}$' },
        },
      },
    },
    licenses: {
      type: 'array',
      minItems: 1,
      items: {
        type: 'object',
        required: ['license'],
        additionalProperties: false,
        properties: {
          license: {
            type: 'object',
            required: ['id'],
            additionalProperties: false,
            // Of the identifiers of SPDX those that are in use here.
            properties: { id: { enum: ['MIT', 'Apache-2.0'] } },
          },
        },
      },
    },
    purl: { type: 'string', pattern: '^pkg:npm/[^@/]+@[0-9]+\\.[0-9]+\\.[0-9]+$' },
  },
};
const SCHEMA = {
  type: 'object',
  required: ['bomFormat', 'specVersion'],
  additionalProperties: false,
  properties: {
    bomFormat: { enum: ['CycloneDX'] },
    specVersion: { const: '1.6' },
    serialNumber: {
      type: 'string',
      pattern: '^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$',
    },
    version: { type: 'integer', minimum: 1 },
    metadata: {
      type: 'object',
      required: ['component'],
      additionalProperties: false,
      properties: { component: LIBRARY },
    },
    components: { type: 'array', uniqueItems: true, items: LIBRARY },
    dependencies: {
      type: 'array',
      uniqueItems: true,
      items: {
        type: 'object',
        required: ['ref'],
        additionalProperties: false,
        properties: {
          ref: { type: 'string', minLength: 1 },
          dependsOn: { type: 'array', uniqueItems: true, items: { type: 'string' } },
        },
      },
    },
  },
};

const bill = billOfMaterials();

test('it has the form of CycloneDX 1.6', () => {
  const valid = new Ajv({ allErrors: true }).compile(SCHEMA);
  valid(bill);
  expect(valid.errors ?? []).toEqual([]);
});

test('every reference is unique and leads somewhere, and the package needs every library', () => {
  const refs = [bill.metadata.component, ...bill.components].map((one) => one['bom-ref']);
  expect(new Set(refs).size).toBe(refs.length);
  expect(bill.dependencies.map(({ ref }) => ref)).toEqual(refs);
  expect(bill.dependencies[0]?.dependsOn).toEqual(refs.slice(1));
});

test('names, versions and licences are those of the notices', () => {
  const told = [...notices().matchAll(/^### (\S+) (\S+) \((\S+)\)$/gm)].map(
    ([, name, version, license]) => ({ name, version, license }),
  );
  expect(told).toHaveLength(BUNDLED.length);
  expect(
    bill.components.map(({ name, version, licenses }) => ({
      name,
      version,
      license: licenses[0]?.license.id,
    })),
  ).toEqual(told);
});

test('two makings are the same to the last letter', () => {
  expect(JSON.stringify(billOfMaterials())).toBe(JSON.stringify(bill));
});

test('what is listed is what the lock file would install, and the tarball takes the list', () => {
  const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as {
    files: string[];
    devDependencies: Record<string, string>;
  };
  for (const { name, version } of bill.components)
    expect(manifest.devDependencies[name]).toBe(version);
  expect(manifest.files).toContain('sbom.cdx.json');
});
