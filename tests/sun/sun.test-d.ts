import { type SunOutages, shadowInstants, sunDirection } from 'slantpath/sun';
import { expectTypeOf, test } from 'vitest';

test('unions must be read', () => {
  const station = { latitudeDeg: 1, longitudeDeg: 2, heightM: 0 };
  const sun = sunDirection(station, { instant: '2026-01-01' });
  expectTypeOf(sun.elevationDeg).toEqualTypeOf<number>();
  // @ts-expect-error overhead there is no azimuth
  sun.azimuthDeg;
  const outages = {} as SunOutages;
  // @ts-expect-error there may be none
  outages.events;
  if (outages.kind === 'outages')
    expectTypeOf(outages.events[0]?.lossDb).toEqualTypeOf<number | undefined>();
  // @ts-expect-error a day is a date as text
  shadowInstants({ station, azimuthDeg: 1, day: 0 });
});
