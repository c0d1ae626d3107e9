/** Aids for peaking, Sun outages to come, and what the plan rests on. */

import { halfPowerBeamwidth } from '../../antenna/index.js';
import type { Assumption, SignalPlan } from '../../job/index.js';
import { apertureLobes, usefulDrop } from '../../peaking/index.js';
import { type SunOutage, sunOutages } from '../../sun/index.js';
import { type SheetBlock, section, tableOf } from '../paper/blocks.js';
import type { Speech } from '../paper/speech.js';
import { carriersOf } from './mountBlocks.js';

/** Least diameter in wavelengths for which side lobes are told. */
const LEAST_WAVELENGTHS = 8;

/** Scatter of a level as it is read on a steady day, one standard deviation in dB (practice of the trade). */
const SCATTER_DB = 0.2;

/** Turns, drops and side lobes for peaking. */
export function peakingAidBlocks(speech: Speech): readonly SheetBlock[] {
  const { job, plan, words, fixed, severalMounts } = speech;
  const { columns } = words;
  const rows = plan.mounts.flatMap((mount) => {
    const diameterM = mount.reflector?.diameterM;
    if (diameterM === undefined) return [];
    return carriersOf(speech, mount.slots).map(({ slot, name, frequencyGHz }) => ({
      mount: mount.mount,
      slot,
      carrier: name,
      widthDeg: halfPowerBeamwidth({ diameterM, frequencyGHz }),
      lobe:
        (diameterM * frequencyGHz) / 0.299792458 >= LEAST_WAVELENGTHS
          ? apertureLobes({ diameterM, frequencyGHz }, 1)[1]
          : undefined,
    }));
  });
  if (rows.length === 0) return [];
  const turns = [
    ...new Map(
      job.visits
        .flatMap(({ peaking }) => peaking ?? [])
        .flatMap(({ axis, degPerTurn }) =>
          degPerTurn === undefined ? [] : [[axis, degPerTurn] as const],
        ),
    ),
  ];
  const wantedDb = (job.target?.pointingLossDb ?? 0.2) / 2;
  const drop = (levelStepDb: number) =>
    fixed(usefulDrop({ levelStepDb, standardDeviationDb: SCATTER_DB, wantedLossDb: wantedDb }), 1);
  return [
    section(words.sections.peakingAid),
    tableOf(rows, [
      severalMounts ? [columns.mount, ({ mount }) => mount, 'left'] : null,
      [columns.slot, ({ slot }) => slot, 'left'],
      [columns.carrier, ({ carrier }) => carrier, 'left'],
      [columns.beamwidth, ({ widthDeg }) => fixed(widthDeg, 2)],
      [columns.nextLobe, ({ lobe }) => fixed(lobe?.offsetDeg, 1)],
      [columns.lobeBelow, ({ lobe }) => fixed(lobe?.belowMainDb, 0)],
    ]),
    words.lobeSense,
    ...(turns.length > 0
      ? turns.map(([axis, degPerTurn]) =>
          words.turnsPerDegree(
            words.codes.axes[axis],
            fixed(1 / degPerTurn, 2),
            fixed(degPerTurn, 3),
          ),
        )
      : [words.turnsNotKnown]),
    words.usefulDrop(drop(0.1), drop(0.5), drop(1), fixed(SCATTER_DB, 1), fixed(wantedDb, 2)),
  ];
}

/** Noise temperature of the system in kelvins, from the line of the budget. */
function systemNoiseK({ terms }: SignalPlan): number {
  const line = terms.find(({ name }) => name === 'system-noise');
  return line ? 10 ** (-line.contributionDb / 10) : 150;
}

/** Days that are searched from the day of the job on: the two seasons of a year. */
const SEARCHED_DAYS = 366;
const DAY_MS = 86_400_000;

/** The seasons of Sun outages in the year from the day of the job, by each slot's carrier with the least margin. */
export function sunOutageBlocks(speech: Speech): readonly SheetBlock[] {
  const { job, plan, words, times, fixed } = speech;
  const { columns } = words;
  const date = plan.north?.date;
  if (date === undefined || plan.signals.length === 0) return [];
  const station = { heightM: 0, ...job.station };
  const rows = plan.directions.flatMap(({ slot, kind, orbitalLongitudeDeg }) => {
    const weakest = plan.signals
      .filter((signal) => signal.slot === slot)
      .reduce<SignalPlan | undefined>(
        (a, b) => (a && (a.clearMarginDb ?? 99) <= (b.clearMarginDb ?? 99) ? a : b),
        undefined,
      );
    const carrier = carriersOf(speech, [slot]).find(({ name }) => name === weakest?.carrier);
    const diameterM = plan.mounts.find(({ mount }) => mount === weakest?.mount)?.reflector
      ?.diameterM;
    if (!weakest || !carrier || diameterM === undefined || kind === 'below-horizon') return [];
    const found = sunOutages({
      station,
      orbitalLongitudeDeg,
      diameterM,
      frequencyGHz: carrier.frequencyGHz,
      systemNoiseK: systemNoiseK(weakest),
      from: date,
      to: new Date(Date.parse(date) + SEARCHED_DAYS * DAY_MS).toISOString().slice(0, 10),
      thresholdLossDb: Math.min(40, Math.max(0.1, weakest.clearMarginDb ?? 1)),
    });
    if (found.kind !== 'outages') return [];
    return seasons(found.events).map((events) => ({ slot, events }));
  });
  const [first] = rows;
  if (!first) return [section(words.sections.sunOutages), words.noSunOutages(date)];
  const ends = (events: readonly SunOutage[]) => [
    times.clock(earliest(events, times.clock)),
    times.clock(latest(events, times.clock)),
  ];
  return [
    section(words.sections.sunOutages),
    tableOf(rows, [
      [columns.slot, ({ slot }) => slot, 'left'],
      [columns.fromDay, ({ events }) => times.day(events[0]?.startUtc ?? date)],
      [columns.toDay, ({ events }) => times.day(events.at(-1)?.startUtc ?? date)],
      [columns.between, ({ events }) => ends(events).join('–')],
      [columns.clock, ({ events }) => times.offset(events[0]?.startUtc ?? date), 'left'],
      [
        columns.minutes,
        ({ events }) => fixed(Math.max(...events.map(({ durationMin }) => durationMin)), 0),
      ],
    ]),
    words.sunOutageSense(times.zone),
  ];
}

/** Events parted where more than a month lies between two. */
function seasons(events: readonly SunOutage[]): readonly (readonly SunOutage[])[] {
  const found: SunOutage[][] = [];
  for (const event of events) {
    const last = found.at(-1);
    const before = last?.at(-1);
    if (last && before && Date.parse(event.startUtc) - Date.parse(before.startUtc) < 30 * DAY_MS)
      last.push(event);
    else found.push([event]);
  }
  return found;
}

function earliest(events: readonly SunOutage[], clock: (instant: string) => string): string {
  return events.map(({ startUtc }) => startUtc).reduce((a, b) => (clock(b) < clock(a) ? b : a));
}

function latest(events: readonly SunOutage[], clock: (instant: string) => string): string {
  return events.map(({ endUtc }) => endUtc).reduce((a, b) => (clock(b) > clock(a) ? b : a));
}

/** Most assumptions and gaps that are listed one by one. */
const MOST_LISTED = 40;

/** What the file did not give: what was taken in its place, and what could not be said. */
export function assumptionBlocks(speech: Speech): readonly SheetBlock[] {
  const { plan, words } = speech;
  const blocks: SheetBlock[] = [];
  const taken = together(
    plan.assumptions.map((each) => [fieldName(speech, each.field), value(speech, each)]),
  );
  if (taken.length > 0) blocks.push(section(words.sections.assumptions), list(speech, taken));
  const missing = together(
    plan.notSaid.map(({ section: part, field, slot, carrier }) => [
      words.codes.sections[part],
      [fieldName(speech, field), slot, carrier].filter((name) => name !== null).join(', '),
    ]),
  );
  if (missing.length > 0) blocks.push(section(words.sections.notSaid), list(speech, missing));
  return blocks;
}

/** Lines that say the same once. */
function together(rows: readonly (readonly [string, string])[]): readonly string[] {
  return [...new Set(rows.map(([name, told]) => `${name}: ${told}`))];
}

function list({ words }: Speech, texts: readonly string[]): SheetBlock {
  const shown = texts.slice(0, MOST_LISTED);
  const rest = texts.length - shown.length;
  return {
    kind: 'detail',
    text: [...shown, ...(rest > 0 ? [words.andMore(rest)] : [])].join('; '),
  };
}

/** A field of the job file in words, or its path. */
export function fieldName({ words }: Speech, path: string): string {
  const last = path.split('.').at(-1) ?? path;
  const { fields } = words.codes;
  return Object.hasOwn(fields, last) ? (fields[last] ?? path) : path;
}

/** A number with its unit; the sign of degrees stands close. */
export function withUnit(text: string, unit: string): string {
  return unit === '°' ? `${text}°` : `${text} ${unit}`.trim();
}

function value({ words, plain }: Speech, { taken, unit }: Assumption): string {
  if (typeof taken === 'number') return withUnit(plain(taken), words.units[unit] ?? unit);
  return Object.hasOwn(words.codes.taken, taken) ? (words.codes.taken[taken] ?? taken) : taken;
}
