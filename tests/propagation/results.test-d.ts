import {
  approximateGasAttenuation,
  type ExceededPercent,
  gasSlantAttenuation,
  lowElevationFade,
  rainAttenuation,
  rainAttenuationBatch,
  rainExceedance,
  specificRainAttenuation,
} from 'slantpath/propagation';
import { expectTypeOf, test } from 'vitest';

const path = {
  latitudeDeg: 46.4,
  heightM: 1900,
  rainHeightKm: 2.9,
  rainRate001MmPerH: 35,
  frequencyGHz: 20,
  elevationDeg: 36,
  tiltDeg: 45,
} as const;

test('the edition is part of the type', () => {
  expectTypeOf(
    rainAttenuation({ ...path, exceededPercent: 0.01 }).edition,
  ).toEqualTypeOf<'P.618-14'>();
  expectTypeOf(
    specificRainAttenuation({ ...path, rainRateMmPerH: 35 }).edition,
  ).toEqualTypeOf<'P.838-3'>();
});

test('an exceeded percentage is read through its kind', () => {
  const found: ExceededPercent = rainExceedance(path, 5);
  // @ts-expect-error the percentage exists on one kind only
  found.exceededPercent;
  if (found.kind === 'exceeded') expectTypeOf(found.exceededPercent).toBeNumber();
  else expectTypeOf(found.kind).toEqualTypeOf<'rarer' | 'more-often'>();
});

test('columns and single numbers mix', () => {
  expectTypeOf(
    rainAttenuationBatch({ ...path, latitudeDeg: [46, 47], exceededPercent: 0.01 }).attenuationDb,
  ).toEqualTypeOf<Float64Array>();
});

test('calls that lack a field or name a foreign unit are refused', () => {
  // @ts-expect-error the percentage of time is missing
  () => rainAttenuation(path);
  // @ts-expect-error a height in metres is another field
  () => gasSlantAttenuation({ frequencyGHz: 20, elevationDeg: 36, stationHeightM: 1900 });
  // @ts-expect-error no such atmosphere
  () => gasSlantAttenuation({ frequencyGHz: 20, elevationDeg: 36, atmosphere: 'arctic' });
  // @ts-expect-error dry pressure is not the barometer's
  () => approximateGasAttenuation({ frequencyGHz: 20, elevationDeg: 36, dryPressureHpa: 1000 });
  // @ts-expect-error a period is a year or its worst month
  () => lowElevationFade({ ...path, period: 'month' });
  const result = rainAttenuation({ ...path, exceededPercent: 0.01 });
  // @ts-expect-error results are read-only
  result.attenuationDb = 0;
});
