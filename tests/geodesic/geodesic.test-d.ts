import { geodesicBetween } from 'slantpath/geodesic';
import { expectTypeOf, test } from 'vitest';

test('a bearing must be asked for', () => {
  const place = { latitudeDeg: 1, longitudeDeg: 2 };
  const line = geodesicBetween(place, place);
  expectTypeOf(line.distanceKm).toEqualTypeOf<number>();
  // @ts-expect-error the same place has no bearing
  line.azimuthDeg;
  // @ts-expect-error a pair of numbers is no place
  geodesicBetween([1, 2], place);
});
