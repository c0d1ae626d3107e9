/** What the package carries inside instead of asking for it; docs/decisions/entries-and-dependencies.md says why. */

/** Libraries that src imports, each with where its licence stands: a file of its folder, or the head of one. */
export const BUNDLED = [
  { name: 'astronomy-engine', license: 'MIT', head: 'esm/astronomy.js' },
  { name: 'geographiclib-geodesic', license: 'MIT', file: 'LICENSE.txt' },
  { name: 'jsep', license: 'MIT', file: 'LICENSE' },
  { name: 'mgrs', license: 'MIT', file: 'license.md' },
  { name: 'open-location-code-typescript', license: 'Apache-2.0', file: 'LICENSE' },
  { name: 'satellite.js', license: 'MIT', file: 'LICENSE.md' },
  { name: 'valibot', license: 'MIT', file: 'LICENSE.md' },
] as const;
