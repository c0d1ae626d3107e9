import {
  attenuationAt,
  type Climate,
  climateAt,
  type RainSource,
  type RainZone,
  rainZoneRate,
} from 'slantpath/climate';
import { expectTypeOf, test } from 'vitest';

test('a climate says where its rain comes from', () => {
  expectTypeOf<Climate['rainSource']>().toEqualTypeOf<RainSource>();
  expectTypeOf<RainSource>().toEqualTypeOf<
    'measured' | 'monthly-normals' | 'climate-grid' | 'rain-zone'
  >();
  expectTypeOf(rainZoneRate).returns.toHaveProperty('superseded').toEqualTypeOf<true>();
});

test('refused calls', () => {
  const station = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
  // @ts-expect-error a station needs its height
  climateAt({ latitudeDeg: 46.4, longitudeDeg: 9.6 });
  // @ts-expect-error there is no zone I
  expectTypeOf<'I'>().toExtend<RainZone>();
  // @ts-expect-error a measured rate needs its years
  climateAt(station, { measured: { rainRate001MmPerH: 40 } });
  // @ts-expect-error a path needs its percentage
  attenuationAt(climateAt(station), { frequencyGHz: 12, elevationDeg: 36, tiltDeg: 0 });
});
