/** Worked examples opened with the values of the job, and what comes back from them. The names are those of their inputs. */

import type { JobRecord } from 'slantpath/job';
import { joinRows } from '../../lib/inputs/state.js';
import { type Beside, visitOf } from './beside.js';
import type { Draft } from './draft.js';
import { FROM_JOB } from './fromJob.js';
import { listAt, valueAt, withValue } from './paths.js';
import type { StageName } from './stages.js';

type Query = Readonly<Record<string, string | number | undefined>>;

const stationOf = ({ job: { station } }: JobRecord): Query => ({
  latitudeDeg: station.latitudeDeg,
  longitudeDeg: station.longitudeDeg,
  heightM: station.heightM ?? 0,
});

/** The carrier with the least margin, or the first. */
function carrierOf({ job, plan }: JobRecord) {
  const worst = plan.signals.reduce<(typeof plan.signals)[number] | undefined>(
    (a, b) => (a && (a.clearMarginDb ?? 99) <= (b.clearMarginDb ?? 99) ? a : b),
    undefined,
  );
  const slot = job.slots.find(({ name }) => name === worst?.slot) ?? job.slots[0];
  const carrier =
    slot?.carriers?.find(({ name }) => name === worst?.carrier) ?? slot?.carriers?.[0];
  return { slot, carrier };
}

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
  const { slot, carrier } = carrierOf(record);
  const mount = job.mounts.find(({ slots }) => slot && slots.includes(slot.name));
  return {
    ...stationOf(record),
    orbitalLongitudeDeg: slot?.orbitalLongitudeDeg,
    frequencyGHz: carrier?.frequencyGHz,
    diameterM: mount?.reflector?.diameterM,
    exceededPercent: job.target?.exceededPercent,
    rainRate001MmPerH: job.rain?.source === 'measured' ? job.rain.rainRate001MmPerH : undefined,
  };
}

const slotQuery = (record: JobRecord): Query => ({
  ...stationOf(record),
  orbitalLongitudeDeg: record.job.slots[0]?.orbitalLongitudeDeg,
});

/** Examples of a stage, with what the job puts into them. */
const EXAMPLES: Readonly<
  Partial<Record<StageName, readonly (readonly [string, (record: JobRecord) => Query])[]>>
> = {
  place: [
    ['where-is-the-satellite', slotQuery],
    ['north-by-the-sun', stationOf],
    ['sun-outages', slotQuery],
  ],
  mount: [['how-far-to-turn-the-feed', slotQuery]],
  skyline: [['is-the-view-clear', skylineQuery]],
  rain: [['how-much-rain-margin', rainQuery]],
  peak: [['half-way-back', () => ({})]],
};

/** Addresses of a stage's examples, filled with the values of the job. */
export function examplesFor(
  stage: StageName,
  record: JobRecord,
  lang = 'en',
): readonly [string, string][] {
  const folder = lang === 'en' ? '' : `/${lang}`;
  return (EXAMPLES[stage] ?? []).map(([name, query]) => {
    const filled = Object.entries(query(record)).flatMap(([field, value]): [string, string][] =>
      value === undefined ? [] : [[field, String(value)]],
    );
    const search = new URLSearchParams(filled).toString();
    return [name, `${folder}/examples/${name}/${search === '' ? '' : `?${search}`}${FROM_JOB}`];
  });
}

const numberAt = (values: unknown, name: string): number | undefined => {
  const value = valueAt(values, name);
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
};

/** The draft with what an example was filled with in the end; `undefined` where the job has no place for it. */
export function withExample(
  held: { readonly draft: Draft; readonly beside: Beside },
  name: string,
  values: unknown,
): Draft | undefined {
  const { draft } = held;
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
      return undefined;
  }
}
