/** The smallest reflector of a list for columns of stations. */

import { checkedLossDb } from '../../antenna/internal.js';
import { inRange, within, withinRow } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import {
  type Column,
  entryAt,
  inRow,
  outBytes,
  outColumn,
  rowCount,
  valueAt,
} from '../../numeric/columns.js';
import { freeSpaceLoss } from '../budget/freeSpaceLoss.js';
import type { LinkBudgetInput } from '../budget/linkBudgetInput.js';
import { requiredDb, totalEsN0Db, type Weather } from '../budget/preparedLink.js';
import { fadeWeather, type PathFade } from './fade.js';
import { type ReflectorTarget, reflectorsToTry } from './smallestReflector.js';

/** What a number in a column `outcome` of {@link smallestReflectorBatch} says: the `kind` of `smallestReflector`. */
export const reflectorOutcomes = ['found', 'none'] as const;

/** Stations of {@link smallestReflectorBatch}: a list with one number per station, or one number for all. */
export interface ReflectorStations {
  /** EIRP towards the station in dBW; default that of the link. */
  readonly eirpDbw?: Column;
  /** Distance in kilometres; default that of the link. */
  readonly slantRangeKm?: Column;
  /** Clear attenuation in dB; default that of the link. */
  readonly clearAttenuationDb?: Column;
  /** Fade that the margin is kept in, in dB, such as the column of that name from `attenuationAtBatch`; default none. */
  readonly attenuationDb?: Column;
  /** Gas within that fade in dB; as in `PathFade`. */
  readonly gasDb?: Column;
  /** Rain within it in dB. */
  readonly rainDb?: Column;
  /** Cloud within it in dB. */
  readonly cloudDb?: Column;
}

const REFLECTOR_STATIONS_KEYS = {
  eirpDbw: true,
  slantRangeKm: true,
  clearAttenuationDb: true,
  attenuationDb: true,
  gasDb: true,
  rainDb: true,
  cloudDb: true,
} satisfies Keys<ReflectorStations>;

const SMALLEST_REFLECTOR_BATCH_KEYS = {
  link: true,
  stations: true,
  targetMarginDb: true,
  diametersM: true,
  impairmentsAt: true,
} satisfies Keys<Parameters<typeof smallestReflectorBatch>[0]>;

/** Columns of {@link smallestReflectorBatch}. */
export interface ReflectorColumns {
  /** Diameter of the smallest reflector that keeps the margin, in metres; where none does, of the one that comes nearest. */
  readonly diameterM: Float64Array;
  /** Margin of that reflector in dB, in the fade where one is given. */
  readonly marginDb: Float64Array;
  /** What became of the row: the place of its word in {@link reflectorOutcomes}. */
  readonly outcome: Uint8Array;
}

const SMALLEST_REFLECTOR_BATCH_OUT_KEYS = {
  diameterM: true,
  marginDb: true,
  outcome: true,
} satisfies Keys<NonNullable<Parameters<typeof smallestReflectorBatch>[1]>>;

/**
 * Smallest reflector of a list that keeps a margin, for columns of stations.
 *
 * Each row equals `smallestReflector` bit for bit, with the row's values in the link and its fade: `diameterM`, and that
 * reflector's `marginDb`; without one that keeps the margin `outcome` is `none`, and the shortfall is `targetMarginDb` less `marginDb`.
 *
 * @param batch  `link` the link of all stations; `stations` the columns; what to keep, as for `smallestReflector`.
 * @param out  Columns to write into, exactly as long; new ones where not given.
 * @throws {@link DomainError} naming the column, with the row's index for a bad value.
 *
 * Source: as `smallestReflector`. Accuracy: as `smallestReflector`.
 * @example
 * ```ts
 * import { dvbMode, reflectorOutcomes, smallestReflectorBatch } from 'slantpath/link';
 * const link = {
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * };
 * const stations = { eirpDbw: [50, 44, 50], attenuationDb: [1.2, 1.2, 40] };
 * const choice = smallestReflectorBatch({ link, stations });
 * [...choice.diameterM]; // => [0.45, 0.75, 7.3]
 * [...choice.outcome].map((place) => reflectorOutcomes[place]); // => ['found', 'found', 'none']
 * ```
 */
export function smallestReflectorBatch(
  batch: Omit<ReflectorTarget, 'fade' | 'exceededPercent'> & {
    readonly link: LinkBudgetInput;
    readonly stations: ReflectorStations;
  },
  out: Partial<ReflectorColumns> = {},
): ReflectorColumns {
  const { link, stations, ...target } = knownOnly('batch', batch, SMALLEST_REFLECTOR_BATCH_KEYS);
  const { targetDb, reflectors } = reflectorsToTry(link, target);
  const columns = withDefaults(known('stations', stations, REFLECTOR_STATIONS_KEYS), link);
  const rows = rowCount(columns);
  const given = known('out', out, SMALLEST_REFLECTOR_BATCH_OUT_KEYS);
  const diameters = outColumn('out.diameterM', given.diameterM, rows);
  const margins = outColumn('out.marginDb', given.marginDb, rows);
  const outcome = outBytes('out.outcome', given.outcome, rows);
  const needed = reflectors.map(({ prepared }) => requiredDb(prepared));
  for (let row = 0; row < rows; row++) {
    const { eirpDbw, freeSpaceDb, weather } = withinRow(row, () => pathInRow(link, columns, row));
    let best = -1;
    let marginDb = Number.NEGATIVE_INFINITY;
    // The first that keeps it is the smallest; only where none does, all are tried.
    for (let index = 0; index < reflectors.length && !(marginDb >= targetDb); index++) {
      const { prepared } = entryAt(reflectors, index);
      const here =
        totalEsN0Db({ ...prepared, eirpDbw, freeSpaceDb }, weather) - valueAt(needed, index);
      if (!(here > marginDb)) continue;
      best = index;
      marginDb = here;
    }
    diameters[row] = entryAt(reflectors, best).diameterM;
    margins[row] = marginDb;
    outcome[row] = marginDb >= targetDb ? 0 : 1;
  }
  return { diameterM: diameters, marginDb: margins, outcome };
}

type Always = 'eirpDbw' | 'slantRangeKm' | 'clearAttenuationDb';
type PathColumns = { readonly [Name in Always]: Column } & {
  readonly [Name in keyof Omit<ReflectorStations, Always>]: Column;
};

/** Columns for what the link has a number for itself; parts of a fade only where they are given. */
function withDefaults(stations: ReflectorStations, { downlink }: LinkBudgetInput): PathColumns {
  const fade = Object.entries({
    attenuationDb: stations.attenuationDb,
    gasDb: stations.gasDb,
    rainDb: stations.rainDb,
    cloudDb: stations.cloudDb,
  }).filter(([, column]) => column !== undefined);
  return {
    eirpDbw: stations.eirpDbw ?? downlink.eirpDbw,
    slantRangeKm: stations.slantRangeKm ?? downlink.slantRangeKm,
    clearAttenuationDb: stations.clearAttenuationDb ?? downlink.clearAttenuationDb ?? 0,
    // The fade as a whole is asked for where a part of it is given.
    ...(fade.length > 0 ? { attenuationDb: stations.attenuationDb as Column } : {}),
    ...Object.fromEntries(fade),
  };
}

/** What of the way down differs from station to station, checked. */
function pathInRow({ downlink }: LinkBudgetInput, columns: PathColumns, row: number) {
  const { rainDb = 0, scintillationDb = 0 } = downlink;
  const clearDb = checkedLossDb('clearAttenuationDb', inRow(columns.clearAttenuationDb, row));
  const at = (column: Column | undefined, name: keyof PathFade) =>
    column === undefined ? {} : { [name]: inRow(column, row) };
  const weather: Weather =
    columns.attenuationDb === undefined
      ? { clearDb, rainDb, scintillationDb }
      : within(
          '',
          () =>
            fadeWeather(
              {
                attenuationDb: inRow(columns.attenuationDb as Column, row),
                ...at(columns.gasDb, 'gasDb'),
                ...at(columns.rainDb, 'rainDb'),
                ...at(columns.cloudDb, 'cloudDb'),
              },
              clearDb,
            ),
          { fade: '' },
        );
  return {
    eirpDbw: inRange('eirpDbw', inRow(columns.eirpDbw, row), -50, 100, 'is the EIRP in dBW?'),
    freeSpaceDb: freeSpaceLoss({
      frequencyGHz: downlink.frequencyGHz,
      slantRangeKm: inRow(columns.slantRangeKm, row),
    }).lossDb,
    weather,
  };
}
