/** Inputs and words that the examples on links share. */

import { attenuationAt, climateAt, type SkyPath } from 'slantpath/climate';
import { type BudgetTerm, dvbMode, dvbModes, type LinkBudgetInput } from 'slantpath/link';
import { lookAngles } from 'slantpath/pointing';
import { totalAttenuation } from 'slantpath/propagation';
import type { Output, Working } from '../example.js';
import { choice, number, optionalNumber, type Place } from './inputs.js';

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

const fromMap = 'of the place';

/** What the air of a place does; each comes from the map of the climate unless it is put in. */
export const airInputs = {
  rainRate001MmPerH: optionalNumber({
    label: 'Rain rate exceeded for 0.01 % of the year',
    unit: 'mm/h',
    step: 1,
    min: 0,
    max: 150,
    empty: fromMap,
    hint: 'About 25 to 40 in temperate places, 80 to 120 in the wet tropics.',
  }),
  rainHeightKm: optionalNumber({
    label: 'Rain height above sea level',
    unit: 'km',
    step: 0.1,
    min: 0,
    max: 6,
    empty: fromMap,
    hint: 'The 0 °C isotherm plus 0.36 km.',
  }),
  gasDb: optionalNumber({
    label: 'Gas at 5 % of the time',
    unit: 'dB',
    step: 0.1,
    min: 0,
    empty: fromMap,
  }),
  cloudDb: optionalNumber({
    label: 'Cloud at 5 % of the time',
    unit: 'dB',
    step: 0.1,
    min: 0,
    empty: fromMap,
  }),
  wetRefractivityNUnits: optionalNumber({
    label: 'Wet refractivity',
    unit: 'N-units',
    step: 5,
    min: 0,
    max: 150,
    empty: fromMap,
  }),
} as const;

type Air = { readonly [name in keyof typeof airInputs]: number };

/** The air over a place for a path through it: what was put in, the climate of the place for the rest. */
export function airOf(
  station: Place,
  path: Omit<SkyPath, 'exceededPercent'>,
  typed: { readonly [name in keyof Air]?: number | undefined },
): Air {
  const climate = climateAt(station);
  const { gasDb, cloudDb } = attenuationAt(climate, { ...path, exceededPercent: 5 });
  return {
    rainRate001MmPerH: typed.rainRate001MmPerH ?? climate.rainRate001MmPerH,
    rainHeightKm: typed.rainHeightKm ?? climate.rainHeightKm,
    gasDb: typed.gasDb ?? gasDb,
    cloudDb: typed.cloudDb ?? cloudDb,
    wetRefractivityNUnits: typed.wetRefractivityNUnits ?? climate.wetRefractivityNUnits,
  };
}

/** The air as figures of an answer. */
export const airOutputs = (air: Air): Output[] => [
  { label: 'Rain rate taken', value: air.rainRate001MmPerH, unit: 'mm/h', digits: 1 },
  { label: 'Rain height taken', value: air.rainHeightKm, unit: 'km' },
  { label: 'Gas and cloud taken', value: air.gasDb + air.cloudDb, unit: 'dB' },
];

/** The worked solutions of a fade that is exceeded for a part of the year. */
export function fadeWorking(
  { latitudeDeg, heightM }: Place,
  air: Air,
  path: Omit<SkyPath, 'exceededPercent'>,
  exceededPercent: number,
): Working[] {
  const { frequencyGHz, elevationDeg, tiltDeg } = path;
  const { gasDb, cloudDb, rainRate001MmPerH, rainHeightKm } = air;
  const { rainDb, scintillationDb } = totalAttenuation({
    ...path,
    ...air,
    latitudeDeg,
    heightM,
    exceededPercent,
  });
  const rain = {
    latitudeDeg,
    rainRate001MmPerH,
    rainHeightKm,
    heightM,
    elevationDeg,
    exceededPercent,
    frequencyGHz,
    tiltDeg,
  };
  return [
    ...(rainDb > 0 ? [{ plan: 'rain-attenuation', givens: rain }] : []),
    { plan: 'total-attenuation', givens: { rainDb, cloudDb, scintillationDb, gasDb } },
  ];
}

/** Lines of a program that say the air: a figure that was put in, or the climate's own. */
export function airCode(typed: { readonly [name in keyof Air]?: number | undefined }): string {
  const line = (name: keyof Air, own: string) =>
    typed[name] === undefined ? own : `${name}: ${typed[name]},`;
  return [
    line('rainRate001MmPerH', 'rainRate001MmPerH: climate.rainRate001MmPerH,'),
    line('rainHeightKm', 'rainHeightKm: climate.rainHeightKm,'),
    line('gasDb', 'gasDb: air.gasDb,'),
    line('cloudDb', 'cloudDb: air.cloudDb,'),
    line('wetRefractivityNUnits', 'wetRefractivityNUnits: climate.wetRefractivityNUnits,'),
  ].join('\n  ');
}

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
