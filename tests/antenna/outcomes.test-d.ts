import { antennaGain, patternGain, powerDensity, type SafeDistance } from 'slantpath/antenna';
import { expectTypeOf, test } from 'vitest';

test('outcomes must be read by kind', () => {
  const gain = patternGain({ kind: 'S.465-6', diameterM: 1, frequencyGHz: 12 }, 3);
  // @ts-expect-error a pattern may say nothing there
  gain.gainDbi;
  if (gain.kind === 'gain') expectTypeOf(gain.gainDbi).toBeNumber();
  else expectTypeOf(gain.specifiedFromDeg).toBeNumber();
  const safe = {} as SafeDistance;
  // @ts-expect-error there may be no such distance
  safe.distanceM;
  if (safe.kind === 'distance') expectTypeOf(safe.distanceM).toBeNumber();
});

test('calls that do not compile', () => {
  // @ts-expect-error the frequency is in GHz
  () => antennaGain({ diameterM: 1, frequencyMHz: 12000 });
  // @ts-expect-error BO.1213-1 needs the gain on the axis
  () => patternGain({ kind: 'BO.1213-1', diameterM: 1, frequencyGHz: 12 }, 3);
  // @ts-expect-error a distance is needed
  () => powerDensity({ diameterM: 1, frequencyGHz: 12, powerW: 1 });
});
