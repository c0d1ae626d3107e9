import {
  beamClearance,
  type HorizonAt,
  horizonProfile,
  type SlotView,
  type YearsClear,
} from 'slantpath/survey';
import { expectTypeOf, test } from 'vitest';

test('unions must be read', () => {
  const at = {} as HorizonAt;
  // @ts-expect-error nothing is known in a gap
  at.elevationDeg;
  const view = {} as SlotView;
  // @ts-expect-error a hidden slot has no clearance
  view.clearanceDeg;
  if (view.kind === 'clear') expectTypeOf(view.spareDeg).toEqualTypeOf<number>();
  const years = {} as YearsClear;
  // @ts-expect-error it may last for ever
  years.years;
  const beam = beamClearance({ obstacles: [], azimuthDeg: 0, elevationDeg: 0, diameterM: 0 });
  // @ts-expect-error nothing may stand there
  beam.edgeClearanceM;
});

test('refused sightings', () => {
  horizonProfile({ sightings: [{ azimuthDeg: 1, elevationDeg: 2 }] });
  // @ts-expect-error one direction, not two
  horizonProfile({ sightings: [{ azimuthDeg: 1, magneticBearingDeg: 1, elevationDeg: 2 }] });
  // @ts-expect-error an angle or a distance with a height, not both
  horizonProfile({ sightings: [{ azimuthDeg: 1, elevationDeg: 2, distanceM: 3 }] });
  // @ts-expect-error a distance needs a height
  horizonProfile({ sightings: [{ azimuthDeg: 1, distanceM: 3 }] });
});
