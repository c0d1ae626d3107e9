/** Inputs and words that the examples on links share. */

import { type BudgetTerm, dvbMode, dvbModes, type LinkBudgetInput } from 'slantpath/link';
import { lookAngles } from 'slantpath/pointing';
import { choice, number, type Place } from './inputs.js';

/** A slot on the arc. */
export const slot = (value = 16.4) =>
  number({
    label: 'Orbital longitude of the slot',
    unit: '° east',
    value,
    step: 0.1,
    min: -180,
    max: 180,
  });

/** Radio frequency. */
export const frequency = (value: number) =>
  number({ label: 'Frequency', unit: 'GHz', value, step: 0.1, min: 3, max: 40 });

/** A loss in decibels. */
export const loss = (label: string, value: number, hint?: string) =>
  number({ label, unit: 'dB', value, step: 0.1, min: 0, ...(hint ? { hint } : {}) });

/** The reflector's size. */
export const diameter = (value = 0.9) =>
  number({ label: 'Diameter of the reflector', unit: 'm', value, step: 0.05, min: 0.3, max: 5 });

/** Symbol rate. */
export const symbolRate = (value: number) =>
  number({ label: 'Symbol rate', unit: 'MBd', value, step: 0.5, min: 0.1 });

/** A mode of DVB-S2. */
export const mode = (value: string) =>
  choice({
    label: 'Mode (DVB-S2)',
    options: Object.fromEntries(
      dvbModes('DVB-S2').map(({ name, esN0Db }) => [name, `${name}, ${esN0Db.toFixed(2)} dB`]),
    ),
    value,
  });

/** The rain of a place. */
export const rainInputs = {
  rainRate001MmPerH: number({
    label: 'Rain rate exceeded for 0.01 % of the year',
    unit: 'mm/h',
    value: 35,
    step: 1,
    min: 0,
    max: 150,
    hint: 'About 25 to 40 in temperate places, 80 to 120 in the wet tropics.',
  }),
  rainHeightKm: number({
    label: 'Rain height above sea level',
    unit: 'km',
    value: 2.9,
    step: 0.1,
    min: 0,
    max: 6,
    hint: 'The 0 °C isotherm plus 0.36 km.',
  }),
} as const;

/** Elevation and distance of a slot from a station; a hidden slot is an error of the slot's field. */
export function sight(station: Place, orbitalLongitudeDeg: number) {
  const { elevationDeg, slantRangeKm } = lookAngles(station, orbitalLongitudeDeg);
  return { elevationDeg, slantRangeKm, hidden: elevationDeg < 0 };
}

/** What the shared fields come to. */
export interface LinkFields {
  readonly symbolRateMBd: number;
  readonly modeName: string;
  readonly implementationLossDb: number;
  readonly eirpDbw: number;
  readonly frequencyGHz: number;
  readonly slantRangeKm: number;
  readonly clearAttenuationDb: number;
  readonly diameterM: number;
  readonly noiseFigureDb: number;
  readonly pointingOffsetDeg: number;
}

/** The link that the fields describe. */
export function linkOf(fields: LinkFields): LinkBudgetInput {
  return {
    carrier: {
      symbolRateMBd: fields.symbolRateMBd,
      mode: dvbMode('DVB-S2', fields.modeName),
      implementationLossDb: fields.implementationLossDb,
    },
    downlink: {
      eirpDbw: fields.eirpDbw,
      frequencyGHz: fields.frequencyGHz,
      slantRangeKm: fields.slantRangeKm,
      clearAttenuationDb: fields.clearAttenuationDb,
    },
    receiver: {
      diameterM: fields.diameterM,
      noiseFigureDb: fields.noiseFigureDb,
      pointingOffsetDeg: fields.pointingOffsetDeg,
    },
  };
}

/** A budget line's name in words. */
export function termWords({ name }: Pick<BudgetTerm, 'name'>): string {
  const words: Readonly<Record<string, string>> = {
    'satellite-eirp': 'EIRP of the satellite',
    'free-space-loss': 'free-space loss',
    'system-noise': 'system noise (10 log T)',
    boltzmann: 'Boltzmann’s constant',
    'symbol-rate': 'symbol rate (10 log Rs)',
    threshold: 'threshold of the mode',
    'adjacent-satellites': 'adjacent satellites',
  };
  return words[name] ?? name.replaceAll('-', ' ');
}
