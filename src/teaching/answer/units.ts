/** Units of answers: the same unit in other letters, and right answers in another unit than the one asked for. */

import { printedUnit } from '../print/units.js';

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

/** 0 dBm at 75 ohm in dBuV: 90 + 10 log 75. */
const DBUV_AT_75_OHM = 90 + 10 * Math.log10(75);

const ratio: OtherUnit = { unit: 'power ratio', convert: (value) => 10 ** (value / 10) };

const TABLE: Readonly<Record<string, readonly OtherUnit[]>> = {
  deg: [scaled('rad', Math.PI / 180), scaled('minutes of arc', 60)],
  km: [scaled('m', 1000)],
  m: [scaled('mm', 1000), scaled('cm', 100), scaled('km', 0.001)],
  mm: [scaled('m', 0.001), scaled('cm', 0.1)],
  GHz: [scaled('MHz', 1000)],
  MHz: [scaled('GHz', 0.001), scaled('kHz', 1000)],
  K: [{ unit: 'degrees Celsius', convert: (value) => value - 273.15 }],
  dB: [ratio],
  dBi: [ratio],
  dBW: [{ unit: 'dBm', convert: (value) => value + 30 }],
  dBm: [
    { unit: 'dBW', convert: (value) => value - 30 },
    { unit: 'dBuV', convert: (value) => value + DBUV_AT_75_OHM },
  ],
  dBuV: [
    { unit: 'dBm', convert: (value) => value - DBUV_AT_75_OHM },
    // As people convert who know the number of 50 ohm.
    { unit: 'dBm', convert: (value) => value - 107 },
  ],
  percent: [scaled('ratio', 0.01)],
  '': [scaled('percent', 100)],
  turns: [scaled('degrees of the adjuster', 360), scaled('deg', 360)],
  kg: [scaled('g', 1000)],
  'N m': [scaled('kN m', 0.001)],
};

/** Units that an answer in `unit` may have been given in instead. */
export function otherUnits(unit: string): readonly OtherUnit[] {
  return TABLE[unit] ?? [];
}

/** Ways to write a unit beside its own, in small letters. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  deg: ['°', 'º', 'degree', 'degrees', 'grad'],
  rad: ['radian', 'radians', 'radiant'],
  'minutes of arc': ['′', "'", 'arcmin', 'minutes', 'minuten', 'bogenminuten'],
  m: ['metre', 'metres', 'meter', 'meters'],
  mm: ['millimetre', 'millimetres', 'millimeter'],
  cm: ['centimetre', 'centimetres', 'zentimeter'],
  km: ['kilometre', 'kilometres', 'kilometer', 'kilometers'],
  percent: ['%', 'pct', 'per cent', 'prozent'],
  turns: ['turn', 'umdrehung', 'umdrehungen', 'u', 'revolutions', 'rev'],
  K: ['kelvin'],
  'degrees Celsius': ['°c', 'c', 'celsius'],
  // A gain in decibels is understood over an isotropic antenna.
  dBi: ['db'],
  dBuV: ['dbµv', 'dbμv', 'db(uv)', 'db(µv)'],
  dBHz: ['db hz', 'db-hz', 'db(hz)'],
  'dB/K': ['db/kelvin', 'db k-1', 'db(1/k)'],
  'N m': ['nm', 'n·m', 'newton metres', 'newtonmeter'],
  kg: ['kilogram', 'kilograms', 'kilogramm'],
  'dB/km': ['db per km', 'db je km'],
  ratio: ['share', 'anteil'],
  V: ['volt', 'volts'],
};

const plain = (text: string) => text.trim().replace(/\s+/g, ' ').replace(/\.$/, '').toLowerCase();

/** Whether a text is a unit, in its own or in other letters. */
export function isUnit(text: string, unit: string): boolean {
  const said = plain(text);
  return (
    [unit, printedUnit(unit)].map(plain).includes(said) || (SPELLINGS[unit] ?? []).includes(said)
  );
}
