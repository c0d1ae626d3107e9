import {
  type Availability,
  adjacentSatellites,
  type FootprintLevel,
  linkBudget,
  rainFade,
  type SmallestReflector,
} from 'slantpath/link';
import type { rainAttenuation, totalAttenuation } from 'slantpath/propagation';
import { expectTypeOf, test } from 'vitest';
import type { FadeDistribution, PathFade } from '../../src/link/index.js';

test('outcomes must be read by kind', () => {
  const choice = {} as SmallestReflector;
  // @ts-expect-error there may be none
  choice.diameterM;
  if (choice.kind === 'found') expectTypeOf(choice.diameterM).toBeNumber();
  else expectTypeOf(choice.shortfallDb).toBeNumber();
  const level = {} as FootprintLevel;
  // @ts-expect-error the place may lie outside
  level.levelDb;
  if (level.kind === 'outside') expectTypeOf(level.toNearestDeg).toBeNumber();
  const interference = adjacentSatellites({} as never);
  // @ts-expect-error the pattern may say nothing there
  interference.carrierToImpairmentDb;
  expectTypeOf<Availability['kind']>().toEqualTypeOf<'available' | 'better-than' | 'worse-than'>();
});

test('results of the recommendations are fades', () => {
  expectTypeOf<ReturnType<typeof rainAttenuation>>().toExtend<PathFade>();
  expectTypeOf<ReturnType<typeof totalAttenuation>>().toExtend<PathFade>();
  expectTypeOf(rainFade).returns.toEqualTypeOf<FadeDistribution>();
});

test('calls that do not compile', () => {
  const link = {
    carrier: { symbolRateMBd: 1, mode: { esN0Db: 1, bitsPerSymbol: 1 } },
    downlink: { eirpDbw: 50, frequencyGHz: 12, slantRangeKm: 38000 },
    receiver: { diameterM: 1, noiseFigureDb: 1 },
  };
  const downlink = { eirpDbw: 50, frequencyMHz: 12000, slantRangeKm: 38000 };
  // @ts-expect-error the frequency is in GHz
  () => linkBudget({ ...link, downlink });
  // @ts-expect-error the noise figure is needed
  () => linkBudget({ ...link, receiver: { diameterM: 1 } });
});
