/** Worked examples opened with the values of the job, and what comes back from them. The names are those of their inputs. */

import type { JobRecord } from 'slantpath/job';
import { joinRows } from '../../lib/inputs/state.js';
import { type Beside, visitOf } from './beside.js';
import type { Draft } from './draft.js';
import { FROM_JOB } from './fromJob.js';
import { listAt, valueAt, withValue } from './paths.js';
import type { StageName } from './stages.js';
import {
  type Chosen,
  chosenOf,
  chosenText,
  TIED_BY_STAGE,
  TIES,
  tiedQuery,
  withTied,
} from './ties.js';

type Query = Readonly<Record<string, string | number | undefined>>;

const stationOf = ({ job: { station } }: JobRecord): Query => ({
  latitudeDeg: station.latitudeDeg,
  longitudeDeg: station.longitudeDeg,
  heightM: station.heightM ?? 0,
});

function skylineQuery(record: JobRecord): Query {
  const { horizon, slots } = record.job;
  const [year = 2026, month = 1] = (record.plan.north?.date ?? '').split('-').map(Number);
  const samples = horizon?.samples ?? [];
  return {
    ...stationOf(record),
    ...(samples.length === 0
      ? {}
      : {
          sightings: joinRows(
            samples.map(({ azimuthDeg, elevationDeg }) => [
              String(azimuthDeg),
              String(elevationDeg),
            ]),
          ),
          bearings: horizon?.north ?? 'magnetic',
        }),
    ...(record.plan.north ? { decimalYear: Number((year + (month - 0.5) / 12).toFixed(1)) } : {}),
    orbitalLongitudesDeg: joinRows(slots.map((slot) => [String(slot.orbitalLongitudeDeg)])),
  };
}

function rainQuery(record: JobRecord): Query {
  const { job } = record;
  const chosen = chosenOf(record);
  const slot = job.slots[chosen.slot];
  const carrier = slot?.carriers?.[chosen.carrier];
  const mount = job.mounts[chosen.mount];
  return {
    ...stationOf(record),
    orbitalLongitudeDeg: slot?.orbitalLongitudeDeg,
    frequencyGHz: carrier?.frequencyGHz,
    diameterM: mount?.reflector?.diameterM,
    exceededPercent: job.target?.exceededPercent,
    rainRate001MmPerH: job.rain?.source === 'measured' ? job.rain.rainRate001MmPerH : undefined,
  };
}

/** The longitudes of all slots, as rows of an example. */
const slotRows = ({ job }: JobRecord) =>
  joinRows(job.slots.map((slot) => [String(slot.orbitalLongitudeDeg)]));

/** All slots with the frequency of their first carrier, equal in weight. */
const weightedSlots = ({ job }: JobRecord) =>
  joinRows(
    job.slots.map(({ orbitalLongitudeDeg, carriers }) =>
      [orbitalLongitudeDeg, carriers?.[0]?.frequencyGHz ?? 11.7, 1].map(String),
    ),
  );

/** What goes into an example besides what it is tied by. */
const BESIDES: Readonly<Record<string, (record: JobRecord) => Query>> = {
  'is-the-view-clear': skylineQuery,
  'how-much-rain-margin': rainQuery,
  'how-is-a-polar-mount-set': (record) => ({ orbitalLongitudesDeg: slotRows(record) }),
  'can-one-reflector-take-them-all': (record) => ({ slots: weightedSlots(record) }),
};

/** Examples of a stage that have more than what they are tied by. */
const OWN: Readonly<Partial<Record<StageName, readonly string[]>>> = {
  skyline: ['is-the-view-clear'],
  rain: ['how-much-rain-margin'],
  peak: ['half-way-back'],
};

/** Addresses of a stage's examples, filled with the values of the job. */
export function examplesFor(
  stage: StageName,
  record: JobRecord,
  lang = 'en',
): readonly [string, string][] {
  const folder = lang === 'en' ? '' : `/${lang}`;
  const chosen = chosenOf(record);
  return [...(OWN[stage] ?? []), ...(TIED_BY_STAGE[stage] ?? [])].map((name) => {
    const query = { ...tiedQuery(name, record.job, chosen), ...BESIDES[name]?.(record) };
    const filled = Object.entries(query).flatMap(([field, value]): [string, string][] =>
      value === undefined ? [] : [[field, String(value)]],
    );
    const search = new URLSearchParams(filled).toString();
    const mark = `${FROM_JOB}=${chosenText(chosen)}`;
    return [name, `${folder}/examples/${name}/${search === '' ? '' : `?${search}`}${mark}`];
  });
}

const numberAt = (values: unknown, name: string): number | undefined => {
  const value = valueAt(values, name);
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
};

/** Inputs that are rows of slots, the longitude in their first column. */
const LONGITUDES: Readonly<Record<string, string>> = {
  'how-is-a-polar-mount-set': 'orbitalLongitudesDeg',
  'can-one-reflector-take-them-all': 'slots',
};

/** The slots moved to the longitudes of an example's rows, new ones behind them; none is taken away. */
const withLongitudes = (draft: Draft, name: string, values: unknown): Draft =>
  listAt(values, LONGITUDES[name] ?? '').reduce<Draft>((held, row, index) => {
    const orbitalLongitudeDeg = numberAt(row, 'orbitalLongitudeDeg');
    const before = valueAt(held, `slots[${index}].orbitalLongitudeDeg`);
    return orbitalLongitudeDeg === undefined || orbitalLongitudeDeg === before
      ? held
      : withValue(held, `slots[${index}].orbitalLongitudeDeg`, orbitalLongitudeDeg);
  }, draft);

/** The draft with what an example was filled with in the end; `undefined` where the job has no place for it. */
export function withExample(
  held: { readonly draft: Draft; readonly beside: Beside },
  name: string,
  values: unknown,
  {
    defaults,
    chosen,
  }: { readonly defaults: Readonly<Record<string, string>>; readonly chosen: Chosen },
): Draft | undefined {
  const draft = withLongitudes(withTied(held.draft, name, values, defaults, chosen), name, values);
  switch (name) {
    case 'is-the-view-clear':
      return withValue(draft, 'horizon', {
        ...draft.horizon,
        north: valueAt(values, 'bearings') === 'true' ? 'true' : 'magnetic',
        samples: listAt(values, 'sightings').map((row) => ({
          azimuthDeg: numberAt(row, 'bearingDeg'),
          elevationDeg: numberAt(row, 'elevationDeg'),
        })),
      });
    case 'how-much-rain-margin': {
      const rate = numberAt(values, 'rainRate001MmPerH');
      const promised = withValue(
        draft,
        'target.exceededPercent',
        numberAt(values, 'exceededPercent'),
      );
      // How many years lie behind the rate the example does not ask: the job does.
      return rate === undefined
        ? promised
        : withValue(promised, 'rain', {
            years: '',
            ...draft.rain,
            source: 'measured',
            rainRate001MmPerH: rate,
          });
    }
    case 'half-way-back': {
      const visit = visitOf(held);
      const index = (draft.visits?.[visit]?.peaking?.length ?? 0) - 1;
      const [peak, low] = ['peakLevelDbm', 'referenceLevelDbm'].map((each) =>
        numberAt(values, each),
      );
      if (index < 0 || peak === undefined || low === undefined) return undefined;
      return withValue(draft, `visits[${visit}].peaking[${index}].bracketing`, {
        turnsOut: numberAt(values, 'turnsOut'),
        turnsBack: numberAt(values, 'turnsBack'),
        dropDb: Number((peak - low).toFixed(2)),
        resolutionDb: numberAt(values, 'levelStepDb'),
      });
    }
    default:
      return name in TIES ? draft : undefined;
  }
}
