/** The figures of the stages as tables. Names come from the job: they are marked as the user's own, so that no language looks them up. */

import type { JobRecord } from 'slantpath/job';
import type { SheetWords } from 'slantpath/sheet';
import type { Table } from '../../lib/example.js';
import { own } from '../../lib/language/language.js';
import { shown } from '../../lib/language/text.js';
import type { StageName } from '../state/stages.js';
import type { Desk } from './desk.js';
import { turnWords } from './says.js';

const figure = (value: number | null | undefined, digits = 1) =>
  value === null || value === undefined ? '–' : shown(value, digits);

type Tables = (record: JobRecord, desk: Desk, sheet: SheetWords) => readonly Table[];

const place: Tables = ({ plan }, desk) => {
  const w = desk.words.tables;
  return [
    {
      caption: w.directions,
      columns: [w.slot, w.trueBearing, w.compass, w.elevation, w.turn],
      rows: plan.directions.map((each) => [
        own(each.slot),
        figure(each.azimuthDeg),
        figure(each.magneticBearingDeg),
        figure(each.elevationDeg),
        turnWords(desk, each.skewDeg),
      ]),
    },
  ];
};

const mount: Tables = ({ plan }, desk) => {
  const w = desk.words.tables;
  const set = plan.mounts.flatMap((each) =>
    'boresightElevationDeg' in each
      ? [
          [
            own(each.mount),
            figure(each.boresightAzimuthDeg),
            figure(each.magneticBearingDeg),
            figure(each.boresightElevationDeg),
            figure(each.preset?.faceLeanDeg),
          ],
        ]
      : [],
  );
  const feeds = plan.mounts.flatMap((each) => ('feeds' in each ? each.feeds : []));
  return [
    {
      caption: w.settings,
      columns: [w.mount, w.trueBearing, w.compass, w.elevation, w.lean],
      rows: set,
    },
    {
      caption: w.feeds,
      columns: [w.feed, w.across, w.upward, w.feedTurn],
      rows: feeds.map(({ slot, acrossMm, upMm, turnDeg }) => [
        own(slot),
        figure(acrossMm, 0),
        figure(upMm, 0),
        turnWords(desk, turnDeg),
      ]),
    },
  ];
};

const skyline: Tables = ({ plan }, { words }, { codes }) => [
  {
    caption: words.tables.views,
    columns: [words.tables.slot, words.tables.over, words.tables.edge, words.tables.view],
    rows: plan.views.map((each) => [
      own(each.slot),
      figure(each.clearanceDeg),
      figure(each.edgeClearanceM, 2),
      codes.views[each.kind],
    ]),
  },
];

const plan: Tables = (record, { words }) => {
  const w = words.tables;
  return [
    {
      caption: w.tuning,
      columns: [w.carrier, w.slot, w.unit, w.megahertz, w.commands],
      rows: record.plan.tuning.map((each) => [
        own(each.carrier),
        own(each.slot),
        [each.unit ? own(each.unit) : each.unit, each.band].filter(Boolean).join(', ') || '–',
        figure(each.intermediateFrequencyMHz),
        [each.voltageV === null ? '' : w.volts(String(each.voltageV)), each.tone ? w.tone : '']
          .filter(Boolean)
          .join(', ') || '–',
      ]),
    },
  ];
};

const rain: Tables = (record, { words }) => {
  const w = words.tables;
  return [
    {
      caption: w.margin,
      columns: [w.carrier, w.inClear, w.inRain, w.fails],
      rows: record.plan.signals.map(({ carrier, clearMarginDb, promise }) => [
        own(carrier),
        figure(clearMarginDb),
        figure(promise?.fadedMarginDb),
        figure(promise?.exceededPercent, 3),
      ]),
    },
  ];
};

const outlets: Tables = (record, { words }) => {
  const w = words.tables;
  return [
    {
      caption: w.levels,
      columns: [w.outlet, w.carrier, w.level, w.ratio],
      rows: record.plan.outlets.map((each) => [
        own(each.outlet),
        own(each.carrier),
        figure(each.levelDbuv),
        figure(each.carrierToNoiseDb),
      ]),
    },
  ];
};

const verdict: Tables = (record, { words }, { codes }) => {
  const look = record.firstLook;
  const w = words.verdict;
  return look
    ? [
        {
          caption: w.firstLook,
          columns: [w.cause, w.where, w.probability],
          rows: look.causes
            .slice(0, 6)
            .map(({ cause, location, probabilityRatio }) => [
              codes.causes[cause],
              location ? own(location) : w.whole,
              `${shown(100 * probabilityRatio, 0)} %`,
            ]),
        },
      ]
    : [];
};

const TABLES: Readonly<Partial<Record<StageName, Tables>>> = {
  place,
  mount,
  skyline,
  plan,
  rain,
  outlets,
  verdict,
};

/** Tables of a stage; those without a row are left out. */
export function tablesOf(stage: StageName, desk: Desk, sheet: SheetWords): readonly Table[] {
  if (!desk.record) return [];
  const tables = TABLES[stage]?.(desk.record, desk, sheet) ?? [];
  return tables.filter(({ rows }) => rows.length > 0);
}
