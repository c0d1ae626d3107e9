/** First half of the job sheet: what was planned. */

import type { JobRecord, MountPlan, SignalPlan } from '../job/index.js';
import { caution, type SheetBlock, section, table } from './blocks.js';
import { type Numbers, numbersOf } from './numbers.js';
import type { SheetWords } from './words/en.js';

/** Lines of the plan. */
export function planBlocks(record: JobRecord, words: SheetWords): SheetBlock[] {
  const { codes, sections } = words;
  const numbers = numbersOf(words);
  return [
    section(sections.cautions),
    ...record.plan.cautions.map(({ topic }) => caution(codes.cautions[topic])),
    ...stationBlocks(record, words, numbers),
    ...slotBlocks(record, words, numbers),
    ...mountBlocks(record, words, numbers),
    ...viewBlocks(record, words, numbers),
    ...rainBlocks(record, words, numbers),
    ...antennaBlocks(record, words, numbers),
  ];
}

function stationBlocks(
  { job: { station }, plan: { north } }: JobRecord,
  words: SheetWords,
  { fixed, signed, latitude, longitude }: Numbers,
): SheetBlock[] {
  const sentences =
    north === null
      ? []
      : [
          words.declination(
            signed(north.declinationDeg, 1),
            fixed(north.declinationStandardUncertaintyDeg, 1),
            north.model,
            north.validity !== 'valid',
          ),
          words.magneticBearing(
            north.declinationDeg >= 0,
            fixed(Math.abs(north.declinationDeg), 1),
          ),
          words.codes.compass[north.compassZone],
        ];
  return [
    section(words.sections.station),
    `${station.name}: ${latitude(station.latitudeDeg, 4)}, ${longitude(station.longitudeDeg, 4)}, ${fixed(station.heightM ?? 0, 0)} m`,
    sentences.join(' ').trim(),
  ];
}

function slotBlocks({ plan }: JobRecord, words: SheetWords, numbers: Numbers): SheetBlock[] {
  const { columns, codes } = words;
  const { fixed, signed, longitude } = numbers;
  return [
    section(words.sections.slots),
    table(
      [
        columns.slot,
        columns.longitude,
        columns.azimuthTrue,
        columns.magnetic,
        columns.elevation,
        columns.rangeKm,
        columns.skew,
      ],
      plan.directions.map((d) => [
        d.kind === 'visible' ? d.slot : `${d.slot} (${codes.directions[d.kind]})`,
        longitude(d.orbitalLongitudeDeg, 1),
        fixed(d.azimuthDeg, 2),
        fixed(d.magneticBearingDeg, 1),
        fixed(d.elevationDeg, 2),
        fixed(d.slantRangeKm, 0),
        signed(d.skewDeg, 1),
      ]),
    ),
    words.skewSense,
  ];
}

function mountBlocks(
  { plan: { mounts } }: JobRecord,
  words: SheetWords,
  numbers: Numbers,
): SheetBlock[] {
  return [
    section(words.sections.mount),
    ...mounts.flatMap((mount) => oneMount(mount, words, numbers)),
  ];
}

function oneMount(mount: MountPlan, words: SheetWords, { fixed, signed }: Numbers): SheetBlock[] {
  const { columns } = words;
  if (mount.kind !== 'one-slot' && mount.kind !== 'several-slots') return [words.noSlot];
  const blocks: SheetBlock[] = [
    words.boresight(
      fixed(mount.boresightAzimuthDeg, 2),
      fixed(mount.magneticBearingDeg, 1),
      fixed(mount.boresightElevationDeg, 2),
    ),
    ...(mount.preset
      ? [
          words.face(
            fixed(Math.abs(mount.preset.faceLeanDeg), 1),
            mount.preset.faceLeanDeg < 0,
            fixed(mount.reflector?.offsetAngleDeg ?? null, 1),
          ),
        ]
      : []),
    words.arm(turn(mount.tiltDeg, words, fixed)),
  ];
  if (mount.feeds.length > 1)
    blocks.push(
      table(
        [columns.feedFor, columns.acrossMm, columns.upMm, columns.lossDb],
        mount.feeds.map((feed) => [
          feed.slot,
          signed(feed.acrossMm, 0),
          signed(feed.upMm, 0),
          fixed(
            Math.max(0, ...mount.losses.filter((l) => l.slot === feed.slot).map((l) => l.lossDb)),
            2,
          ),
        ]),
      ),
      words.feedPlaces,
    );
  return blocks;
}

/** A turn in words: the amount, then the sense. */
function turn(turnDeg: number, words: SheetWords, fixed: Numbers['fixed']): string {
  const amount = fixed(Math.abs(turnDeg), 1);
  const none = Math.abs(turnDeg) < 0.05;
  return words.turn(amount, none ? 'none' : turnDeg > 0 ? 'clockwise' : 'counter-clockwise');
}

function viewBlocks(
  { plan }: JobRecord,
  words: SheetWords,
  { fixed, signed }: Numbers,
): SheetBlock[] {
  const { columns } = words;
  return [
    section(words.sections.view),
    table(
      [columns.slot, columns.skyline, columns.clearance, columns.wanted, columns.verdict],
      plan.views.map((v) => [
        v.slot,
        fixed(v.skylineElevationDeg, 1),
        signed(v.clearanceDeg, 1),
        fixed(v.edgeClearanceM, 1),
        words.codes.views[v.kind],
      ]),
      [0, 4],
    ),
  ];
}

function rainBlocks(
  { job, plan: { rain, signals } }: JobRecord,
  words: SheetWords,
  { fixed, digits, plain }: Numbers,
): SheetBlock[] {
  const { columns } = words;
  if (rain === null) return [];
  const source = `${words.codes.rainSources[rain.source]}; ${rain.editions.join(', ')}`;
  return [
    section(words.sections.rain),
    `${words.rain(
      fixed(rain.rainRate001MmPerH, 1),
      fixed(100 * rain.rainRateStandardUncertaintyRatio, 0),
      fixed(rain.rainHeightKm, 2),
      source,
    )} ${words.promise(plain(job.target?.exceededPercent ?? 0))}`,
    table(
      [
        columns.slot,
        columns.carrier,
        columns.rainDb,
        columns.allDb,
        '±',
        columns.marginClear,
        columns.marginFaded,
        columns.failsPercent,
        columns.hoursAYear,
      ],
      signals.map((s) => [
        s.slot,
        s.carrier,
        fixed(s.promise?.fade.rainDb, 2),
        fixed(s.promise?.fade.attenuationDb, 2),
        fixed(s.promise?.fade.standardUncertaintyDb, 2),
        fixed(s.clearMarginDb, 1),
        fixed(s.promise?.fadedMarginDb, 1),
        failing(s, words, (percent) => digits(percent, 2)),
        failing(s, words, (percent) => fixed(percent * 87.66, 1)),
      ]),
      [0, 1],
    ),
  ];
}

/** Share of the year in the sheet's unit; the model ends at 0.001 and 50 per cent. A year has 8766 hours. */
function failing(
  signal: SignalPlan,
  words: SheetWords,
  told: (exceededPercent: number) => string,
): string {
  if (!signal.promise) return '-';
  const text = told(signal.promise.exceededPercent);
  if (signal.promise.availability === 'better-than') return words.under(text);
  return signal.promise.availability === 'worse-than' ? words.over(text) : text;
}

function antennaBlocks(
  { job, plan }: JobRecord,
  words: SheetWords,
  { fixed }: Numbers,
): SheetBlock[] {
  const { columns } = words;
  return [
    section(words.sections.antenna),
    table(
      [
        columns.slot,
        columns.carrier,
        columns.levelDbuv,
        columns.carrierToNoiseDb,
        columns.neededDb,
        columns.mode,
      ],
      plan.signals.map((s) => [
        s.slot,
        s.carrier,
        fixed(s.levelDbuv, 1),
        fixed(s.carrierToNoiseDb, 1),
        fixed(s.requiredDb, 1),
        job.slots
          .find(({ name }) => name === s.slot)
          ?.carriers?.find(({ name }) => name === s.carrier)?.mode ?? '-',
      ]),
      [0, 1, 5],
    ),
  ];
}
