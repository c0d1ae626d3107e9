import {
  type DistributionDesign,
  type DistributionPart,
  outletLevels,
  type SupplyAlong,
  supplyAlong,
  type UnderstoodCommand,
  understoodCommand,
} from 'slantpath/distribution';
import { expectTypeOf, test } from 'vitest';

test('unions are read by kind', () => {
  const command = understoodCommand({ voltageV: 13 });
  expectTypeOf(command).toEqualTypeOf<UnderstoodCommand>();
  // @ts-expect-error the polarization is there only where the command is understood
  command.polarization;
  if (command.kind === 'understood') expectTypeOf(command.band).toEqualTypeOf<'low' | 'high'>();
  expectTypeOf<SupplyAlong['kind']>().toEqualTypeOf<
    'enough' | 'too-low' | 'too-much-current' | 'blocked' | 'self-powered'
  >();
  expectTypeOf<DistributionDesign['kind']>().toEqualTypeOf<'fits' | 'none-fits'>();
});

test('wrong calls are refused', () => {
  const part: DistributionPart = { kind: 'outlet', name: 'x' };
  const cable: DistributionPart = {
    kind: 'cable',
    cable: { skinLossDbPer100m: 1 },
    // @ts-expect-error a length needs its unit in the name
    length: 3,
    to: part,
  };
  // @ts-expect-error an amplifier without a noise figure
  const amplifier: DistributionPart = { kind: 'amplifier', gainDb: 3, to: part };
  // @ts-expect-error level in dBm where dBuV is meant
  outletLevels({ source: { levelDbm: -50 }, tree: part }, [950]);
  // @ts-expect-error a voltage by position
  supplyAlong({ source: { levelDbuv: 70 }, tree: part }, 18);
  void cable;
  void amplifier;
});
