import {
  type AllowedMastLean,
  type FeedsInput,
  type LookAngles,
  lookAngles,
  type PolarizationSkew,
  type PolarMount,
  polarizationSkew,
  type SeveralSlots,
  type VisibleArc,
} from 'slantpath/pointing';
import { expectTypeOf, test } from 'vitest';

const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 0 };

test('no azimuth is read before the kind', () => {
  const look = lookAngles(station, 16.4);
  expectTypeOf(look).toEqualTypeOf<LookAngles>();
  // @ts-expect-error overhead has no azimuth
  look.azimuthDeg;
  if (look.kind !== 'overhead') expectTypeOf(look.azimuthDeg).toBeNumber();
});

test('a union must be read: skew, arc, mount, several slots, lean', () => {
  expectTypeOf<PolarizationSkew['kind']>().toEqualTypeOf<
    'visible' | 'below-horizon' | 'overhead' | 'circular'
  >();
  expectTypeOf<VisibleArc['kind']>().toEqualTypeOf<'arc' | 'none'>();
  expectTypeOf<PolarMount['kind']>().toEqualTypeOf<'mount' | 'none'>();
  expectTypeOf<SeveralSlots['kind']>().toEqualTypeOf<'placed' | 'below-horizon'>();
  expectTypeOf<AllowedMastLean['kind']>().toEqualTypeOf<'limited' | 'unlimited'>();
});

test('wrong calls are refused by the compiler', () => {
  // @ts-expect-error positional coordinates
  lookAngles(46.4, 9.6, 16.4);
  // @ts-expect-error a station without its height
  lookAngles({ latitudeDeg: 46.4, longitudeDeg: 9.6 }, 16.4);
  // @ts-expect-error a linear polarization needs its tilt
  polarizationSkew({ station, orbitalLongitudeDeg: 16.4, polarization: { kind: 'linear' } });
  // @ts-expect-error a rigid assembly needs its places
  const feeds: FeedsInput = { kind: 'rigid' };
  expectTypeOf(feeds).not.toBeAny();
});

test('results are read-only', () => {
  const look = lookAngles(station, 16.4);
  // @ts-expect-error read-only
  look.elevationDeg = 3;
});
