/** Right answers in another unit than the one asked for. */

/** A unit that an answer may have been given in instead. */
export interface OtherUnit {
  /** The unit. */
  readonly unit: string;
  /** The asked value in that unit. */
  readonly convert: (value: number) => number;
}

const scaled = (unit: string, factor: number): OtherUnit => ({
  unit,
  convert: (value) => value * factor,
});

const TABLE: Readonly<Record<string, readonly OtherUnit[]>> = {
  deg: [scaled('rad', Math.PI / 180), scaled('minutes of arc', 60)],
  km: [scaled('m', 1000)],
  m: [scaled('mm', 1000), scaled('cm', 100), scaled('km', 0.001)],
  mm: [scaled('m', 0.001), scaled('cm', 0.1)],
  GHz: [scaled('MHz', 1000)],
  MHz: [scaled('GHz', 0.001), scaled('kHz', 1000)],
  K: [{ unit: 'degrees Celsius', convert: (value) => value - 273.15 }],
  dB: [{ unit: 'power ratio', convert: (value) => 10 ** (value / 10) }],
  dBi: [{ unit: 'power ratio', convert: (value) => 10 ** (value / 10) }],
  dBW: [{ unit: 'dBm', convert: (value) => value + 30 }],
  dBm: [{ unit: 'dBW', convert: (value) => value - 30 }],
  dBuV: [{ unit: 'dBm at 75 ohm', convert: (value) => value - 108.750613 }],
  percent: [scaled('ratio', 0.01)],
  '': [scaled('percent', 100)],
  turns: [scaled('degrees of the adjuster', 360)],
};

/** Units that an answer in `unit` may have been given in instead. */
export function otherUnits(unit: string): readonly OtherUnit[] {
  return TABLE[unit] ?? [];
}
