/**
 * Bill of materials of the package, CycloneDX 1.6 in JSON (ECMA-424): the libraries inside `dist`, each with version, licence and the
 * hash by which the lock file fetched it. Nothing in it depends on when or where it is made.
 */

import { createHash } from 'node:crypto';
import { BUNDLED } from './bundled.js';
import { read } from './notices.js';

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly description: string;
  readonly license: string;
}

/** Package URL of a package from npm. */
const purl = (name: string, version: string) => `pkg:npm/${name.replace('@', '%40')}@${version}`;

/** A library inside the package; one that needs others is refused, since they would be inside too and in no list. */
function component({ name, license }: (typeof BUNDLED)[number]) {
  const manifest = JSON.parse(read(`node_modules/${name}/package.json`)) as Manifest & {
    readonly dependencies?: Readonly<Record<string, string>>;
  };
  const needs = Object.keys(manifest.dependencies ?? {});
  if (needs.length > 0) throw new Error(`${name} needs ${needs.join(', ')}, which no list has`);
  const { packages } = JSON.parse(read('package-lock.json')) as {
    readonly packages: Readonly<Record<string, { version: string; integrity: string }>>;
  };
  const locked = packages[`node_modules/${name}`];
  if (locked?.version !== manifest.version)
    throw new Error(
      `${name} ${manifest.version} is installed, the lock file has ${locked?.version}`,
    );
  const [algorithm, hash = ''] = locked.integrity.split('-');
  if (algorithm !== 'sha512') throw new Error(`hash of ${name}: ${algorithm}`);
  return {
    type: 'library',
    'bom-ref': purl(name, manifest.version),
    name,
    version: manifest.version,
    scope: 'required',
    hashes: [{ alg: 'SHA-512', content: Buffer.from(hash, 'base64').toString('hex') }],
    licenses: [{ license: { id: license } }],
    purl: purl(name, manifest.version),
  };
}

/** The bill of materials of the package as it is in this tree. */
export function billOfMaterials() {
  const { name, version, description, license } = JSON.parse(read('package.json')) as Manifest;
  const components = BUNDLED.map(component);
  const own = purl(name, version);
  const digest = createHash('sha256')
    .update(JSON.stringify([own, components]))
    .digest('hex');
  // A UUID of version 8 (RFC 9562): what is in it is ours to choose, here the digest of the list.
  const uuid = digest.replace(
    /^(.{8})(.{4}).(.{3}).(.{3})(.{12}).*$/,
    (_, a, b, c, d, e) => `${a}-${b}-8${c}-a${d}-${e}`,
  );
  return {
    bomFormat: 'CycloneDX',
    specVersion: '1.6',
    serialNumber: `urn:uuid:${uuid}`,
    version: 1,
    metadata: {
      component: {
        type: 'library',
        'bom-ref': own,
        name,
        version,
        description,
        licenses: [{ license: { id: license } }],
        purl: own,
      },
    },
    components,
    dependencies: [
      { ref: own, dependsOn: components.map((one) => one['bom-ref']) },
      ...components.map((one) => ({ ref: one['bom-ref'], dependsOn: [] })),
    ],
  };
}
