/** Where the inputs of the worked examples stand in a job: by these an example is filled from a job, and hands its inputs back. */

import type { JobRecord } from 'slantpath/job';
import type { Draft } from './draft.js';
import { valueAt, withValue } from './paths.js';
import type { StageName } from './stages.js';

/** Paths by the names of inputs. `{slot}`, `{carrier}`, `{mount}`, `{unit}` stand for the ones that the example was opened for. */
type Tie = Readonly<Record<string, string>>;

const PLACE: Tie = {
  latitudeDeg: 'station.latitudeDeg',
  longitudeDeg: 'station.longitudeDeg',
  heightM: 'station.heightM',
};
const SLOT: Tie = { ...PLACE, orbitalLongitudeDeg: '{slot}.orbitalLongitudeDeg' };
const DISH: Tie = {
  diameterM: '{mount}.reflector.diameterM',
  frequencyGHz: '{carrier}.frequencyGHz',
};
const CARRIER: Tie = {
  frequencyGHz: '{carrier}.frequencyGHz',
  eirpDbw: '{carrier}.eirpDbw',
  symbolRateMBd: '{carrier}.symbolRateMBd',
  implementationLossDb: '{carrier}.implementationLossDb',
  noiseFigureDb: '{unit}.noiseFigureDb',
};
const PROMISE: Tie = { exceededPercent: 'target.exceededPercent' };

/** The inputs of each example that a job holds. */
export const TIES: Readonly<Record<string, Tie>> = {
  'where-is-the-satellite': SLOT,
  'north-by-the-sun': SLOT,
  'sun-outages': { ...SLOT, ...DISH },
  'how-far-to-turn-the-feed': { ...SLOT, tiltDeg: '{slot}.polarizationTiltDeg' },
  'what-does-a-leaning-mast-do': SLOT,
  'when-to-peak-on-a-moving-satellite': { ...SLOT, inclinationDeg: '{slot}.inclinationDeg' },
  'can-one-reflector-take-them-all': {
    ...PLACE,
    diameterM: '{mount}.reflector.diameterM',
    focalLengthM: '{mount}.reflector.focalLengthM',
    offsetAngleDeg: '{mount}.reflector.offsetAngleDeg',
  },
  'how-is-a-polar-mount-set': PLACE,
  'do-the-neighbours-disturb': {
    ...SLOT,
    ...DISH,
    efficiencyRatio: '{mount}.reflector.efficiencyRatio',
  },
  'main-lobe-or-side-lobe': { ...DISH, edgeTaperDb: '{mount}.reflector.edgeTaperDb' },
  'does-the-link-close': { ...SLOT, ...DISH, ...CARRIER, feedLossDb: '{unit}.feedLossDb' },
  'which-mode-when': { ...SLOT, ...DISH, ...CARRIER },
  'which-reflector': { ...SLOT, ...CARRIER, ...PROMISE },
  'how-is-a-two-way-terminal-lined-up': {
    diameterM: '{mount}.reflector.diameterM',
    symbolRateMBd: 'transmit.symbolRateMBd',
    frequencyGHz: 'transmit.frequencyGHz',
    feedLossDb: 'transmit.feedLossDb',
    mispointingDeg: 'transmit.mispointingDeg',
    allowedRiseDb: 'transmit.allowedRiseDb',
    coPolarDbm: 'transmit.crossPolarTest.coPolarDbm',
    crossPolarDbm: 'transmit.crossPolarTest.crossPolarDbm',
    noiseDbm: 'transmit.crossPolarTest.noiseDbm',
  },
  'how-far-is-safe': {
    diameterM: '{mount}.reflector.diameterM',
    frequencyGHz: 'transmit.frequencyGHz',
  },
  'how-much-ballast-does-a-flat-roof-need': {
    diameterM: '{mount}.reflector.diameterM',
    basicSpeedMPerS: 'wind.basicSpeedMPerS',
    heightM: 'wind.heightM',
    meanSpeedMPerS: 'wind.meanSpeedMPerS',
    forceCoefficientRatio: 'wind.forceCoefficientRatio',
    leverM: '{mount}.base.leverM',
    baseM: '{mount}.base.widthM',
    frictionRatio: '{mount}.base.frictionRatio',
    safetyRatio: '{mount}.base.safetyRatio',
  },
};

/** Examples of a stage that are tied. */
export const TIED_BY_STAGE: Readonly<Partial<Record<StageName, readonly string[]>>> = {
  place: [
    'where-is-the-satellite',
    'north-by-the-sun',
    'sun-outages',
    'when-to-peak-on-a-moving-satellite',
  ],
  mount: [
    'how-far-to-turn-the-feed',
    'can-one-reflector-take-them-all',
    'how-is-a-polar-mount-set',
    'what-does-a-leaning-mast-do',
    'how-much-ballast-does-a-flat-roof-need',
  ],
  rain: ['does-the-link-close', 'which-reflector', 'which-mode-when', 'do-the-neighbours-disturb'],
  peak: ['main-lobe-or-side-lobe', 'how-far-is-safe', 'how-is-a-two-way-terminal-lined-up'],
};

/** Places in the lists of a job: slot, its carrier, the mount and the unit that serve them. */
export interface Chosen {
  readonly slot: number;
  readonly carrier: number;
  readonly mount: number;
  readonly unit: number;
}

/** The carrier with the least margin, or the first; with what serves it. */
export function chosenOf({ job, plan }: JobRecord): Chosen {
  const worst = plan.signals.reduce<(typeof plan.signals)[number] | undefined>(
    (a, b) => (a && (a.clearMarginDb ?? 99) <= (b.clearMarginDb ?? 99) ? a : b),
    undefined,
  );
  const at = (index: number) => Math.max(0, index);
  const slot = at(job.slots.findIndex(({ name }) => name === worst?.slot));
  const { name, carriers = [] } = job.slots[slot] ?? {};
  const carrier = at(carriers.findIndex((one) => one.name === worst?.carrier));
  const unitName = carriers[carrier]?.unit;
  return {
    slot,
    carrier,
    mount: at(job.mounts.findIndex(({ slots }) => name !== undefined && slots.includes(name))),
    unit: at(
      (job.units ?? []).findIndex((one) =>
        unitName === undefined
          ? name !== undefined && one.slots?.includes(name)
          : one.name === unitName,
      ),
    ),
  };
}

/** The choice as it travels in an address: `0.1.0.0`. */
export const chosenText = ({ slot, carrier, mount, unit }: Chosen): string =>
  [slot, carrier, mount, unit].join('.');

/** The choice of an address; the first of each where it says none. */
export function chosenIn(text: string): Chosen {
  const [slot = 0, carrier = 0, mount = 0, unit = 0] = /^\d+(\.\d+){3}$/.test(text)
    ? text.split('.').map(Number)
    : [];
  return { slot, carrier, mount, unit };
}

const pathIn = (path: string, { slot, carrier, mount, unit }: Chosen) =>
  path
    .replace('{slot}', `slots[${slot}]`)
    .replace('{carrier}', `slots[${slot}].carriers[${carrier}]`)
    .replace('{mount}', `mounts[${mount}]`)
    .replace('{unit}', `units[${unit}]`);

/** What an example is filled with: the inputs that the job has. */
export function tiedQuery(name: string, job: unknown, chosen: Chosen): Record<string, string> {
  return Object.fromEntries(
    Object.entries(TIES[name] ?? {}).flatMap(([input, path]) => {
      const value = valueAt(job, pathIn(path, chosen));
      return typeof value === 'number' ? [[input, String(value)]] : [];
    }),
  );
}

/** The value of an input: latitude, longitude and height of a place stand together in a group of their own. */
function inputIn(values: unknown, input: string): unknown {
  const groups = Object.values(values as object).filter(
    (group) => typeof group === 'object' && group !== null && !Array.isArray(group),
  );
  return [values, ...groups]
    .map((group) => valueAt(group, input))
    .find((value) => value !== undefined);
}

/**
 * The draft with the inputs of an example that were changed in it. What the job does not have and the example leaves at what it
 * begins with stays out: an example's own figure is nobody's finding. Nothing is put into a group that the job does not have.
 */
export function withTied(
  draft: Draft,
  name: string,
  values: unknown,
  defaults: Readonly<Record<string, string>>,
  chosen: Chosen,
): Draft {
  return Object.entries(TIES[name] ?? {}).reduce<Draft>((held, [input, path]) => {
    const where = pathIn(path, chosen);
    const [value, before] = [inputIn(values, input), valueAt(held, where)];
    if (typeof value !== 'number' || !Number.isFinite(value) || value === before) return held;
    if (before === undefined && Number(defaults[input]) === value) return held;
    const group = where.slice(0, where.lastIndexOf('.'));
    if (group !== 'target' && typeof valueAt(held, group) !== 'object') return held;
    return withValue(held, where, value);
  }, draft);
}
