import { type MagneticField, magneticField, trueToMagneticBearing } from 'slantpath/magnetic';
import { expectTypeOf, test } from 'vitest';

test('the zone and the validity are words', () => {
  expectTypeOf<MagneticField['compassZone']>().toEqualTypeOf<'usable' | 'caution' | 'blackout'>();
  expectTypeOf<MagneticField['validity']>().toEqualTypeOf<
    'valid' | 'before-model' | 'after-model'
  >();
});

test('refused calls', () => {
  // @ts-expect-error a station has a height
  magneticField({ latitudeDeg: 1, longitudeDeg: 2 }, 2026);
  // @ts-expect-error a date is a decimal year
  magneticField({ latitudeDeg: 1, longitudeDeg: 2, heightM: 0 }, '2026-07-01');
  // @ts-expect-error the declination is needed
  trueToMagneticBearing({ azimuthDeg: 10 });
  // @ts-expect-error two numbers could be taken one for the other
  trueToMagneticBearing(10, 3);
});
