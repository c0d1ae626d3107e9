import fc from 'fast-check';
import { markBadRows } from 'slantpath';
import { reflectorOutcomes, smallestReflector, smallestReflectorBatch } from 'slantpath/link';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';
import { anyLink, LINK } from './links.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const station = fc.record({
  eirpDbw: within(30, 62),
  slantRangeKm: within(35786, 41700),
  clearAttenuationDb: within(0, 1),
  attenuationDb: within(2, 30),
  gasDb: within(0, 0.5),
  rainDb: within(0, 1.2),
  cloudDb: within(0, 0.3),
});
const FADE = ['attenuationDb', 'gasDb', 'rainDb', 'cloudDb'] as const;

test('each row is what the single function gives for its link and its fade', () => {
  fc.assert(
    fc.property(
      anyLink,
      fc.array(station, { minLength: 1, maxLength: 6 }),
      within(-5, 15),
      fc.constantFrom(0, 1, 4),
      (link, rows, targetMarginDb, fadeFields) => {
        const fields = [
          'eirpDbw',
          'slantRangeKm',
          'clearAttenuationDb',
          ...FADE.slice(0, fadeFields),
        ] as const;
        const stations = Object.fromEntries(
          fields.map((field) => [field, rows.map((values) => values[field])]),
        );
        const impairmentsAt = (diameterM: number) => [
          { name: 'adjacent-satellites', carrierToImpairmentDb: 10 + 5 * diameterM },
        ];
        const target = { targetMarginDb, diametersM: [1.2, 0.6, 3, 0.9], impairmentsAt };
        const batch = smallestReflectorBatch({ link, stations, ...target });
        rows.forEach((values, row) => {
          const { eirpDbw, slantRangeKm, clearAttenuationDb } = values;
          const fade = {
            attenuationDb: values.attenuationDb,
            ...Object.fromEntries(FADE.slice(1, fadeFields).map((field) => [field, values[field]])),
          };
          const single = smallestReflector(
            { ...link, downlink: { ...link.downlink, eirpDbw, slantRangeKm, clearAttenuationDb } },
            { ...target, ...(fadeFields > 0 ? { fade: () => fade } : {}) },
          );
          expect(reflectorOutcomes[batch.outcome[row] ?? -1]).toBe(single.kind);
          const best = Math.max(...single.tried.map(({ marginDb }) => marginDb));
          const chosen = single.tried.find(({ diameterM, marginDb }) =>
            single.kind === 'found' ? diameterM === single.diameterM : marginDb === best,
          );
          expect(batch.diameterM[row]).toBe(chosen?.diameterM);
          expect(batch.marginDb[row]).toBe(chosen?.marginDb);
          if (single.kind === 'none')
            expect(targetMarginDb - (batch.marginDb[row] ?? 0)).toBe(single.shortfallDb);
        });
      },
    ),
    { numRuns: runs(500) },
  );
});

test('a pointing error can make a larger reflector worse; one row without columns', () => {
  const link = { ...LINK, receiver: { ...LINK.receiver, pointingOffsetDeg: 1 } };
  const { diameterM, outcome } = smallestReflectorBatch({ link, stations: {}, targetMarginDb: 90 });
  const single = smallestReflector(link, { targetMarginDb: 90 });
  const best = [...single.tried].sort((a, b) => b.marginDb - a.marginDb)[0]?.diameterM;
  expect([...diameterM]).toEqual([best]);
  expect(best).toBeLessThan(7);
  expect([...outcome]).toEqual([1]);
});

test('names the row of a bad value, marks it, and refuses a part of no fade', () => {
  const stations = { eirpDbw: [50, 500, 50], attenuationDb: [1, 1, -1] };
  expect(() => smallestReflectorBatch({ link: LINK, stations })).toThrow(
    expect.objectContaining({ parameter: 'eirpDbw', index: 1 }),
  );
  const marked = markBadRows(
    (given: typeof stations) => smallestReflectorBatch({ link: LINK, stations: given }),
    stations,
  );
  expect(marked.badRows.map(({ parameter, index }) => [parameter, index])).toEqual([
    ['eirpDbw', 1],
    ['attenuationDb', 2],
  ]);
  expect(() => smallestReflectorBatch({ link: LINK, stations: { rainDb: [1, 2] } })).toThrow(
    expect.objectContaining({ code: 'missing', parameter: 'attenuationDb' }),
  );
  expect(() => smallestReflectorBatch({ link: LINK, stations: {}, diametersM: [] })).toThrow(
    expect.objectContaining({ code: 'empty', parameter: 'diametersM' }),
  );
});
