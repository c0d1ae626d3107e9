/** A year as a strip: twelve months side by side, a bar for each day on which something happens, and its hours below. */

import { linear } from '../drawing/scale.js';
import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure } from '../example.js';
import { shown } from '../language/text.js';

/** What happens on a day. */
interface StripEvent {
  /** Start, greatest and end, ISO-8601 text in UTC. */
  readonly startUtc: string;
  readonly peakUtc: string;
  readonly endUtc: string;
  /** Height of the day's bar. */
  readonly value: number;
}

/** A year of events. */
export interface CalendarStrip {
  readonly title: string;
  readonly year: number;
  readonly events: readonly StripEvent[];
  /** What the bars count, and in which unit. */
  readonly value: { readonly label: string; readonly unit: string };
}

const WIDTH = 440;
const LEFT = 46;
const RIGHT = WIDTH - 10;
const MONTHS = ['J', 'F', 'M', 'A', 'M', 'J', 'J', 'A', 'S', 'O', 'N', 'D'];
const DAY_MS = 86400000;
const dayOf = (utc: string) => Math.floor(Date.parse(utc) / DAY_MS);
const minuteOf = (utc: string) => (Date.parse(utc) % DAY_MS) / 60000;
const clock = (minutes: number) => {
  const ofDay = ((Math.round(minutes) % 1440) + 1440) % 1440;
  return `${String(Math.floor(ofDay / 60)).padStart(2, '0')}:${String(ofDay % 60).padStart(2, '0')}`;
};

/** The strip of the year: months, and a bar for each day. */
function strip(of: CalendarStrip): string[] {
  const first = Date.UTC(of.year, 0, 1) / DAY_MS;
  const days = Date.UTC(of.year + 1, 0, 1) / DAY_MS - first;
  const x = linear(0, days, LEFT, RIGHT);
  const highest = Math.max(1, ...of.events.map((event) => event.value));
  const y = linear(0, Math.ceil(highest), 96, 26, 3);
  const inner = y.ticks.flatMap((tick) => [
    tag('path', {
      class: 'grid',
      d: through([
        [LEFT, y(tick)],
        [RIGHT, y(tick)],
      ]),
    }),
    label(LEFT - 6, y(tick) + 4.5, String(tick), 'end'),
  ]);
  MONTHS.forEach((month, index) => {
    const from = Date.UTC(of.year, index, 1) / DAY_MS - first;
    const to = Date.UTC(of.year, index + 1, 1) / DAY_MS - first;
    inner.push(
      tag('path', {
        class: 'grid',
        d: through([
          [x(from), 26],
          [x(from), 114],
        ]),
      }),
      label((x(from) + x(to)) / 2, 112, month),
    );
  });
  inner.push(
    tag('path', {
      class: 'axis',
      d: through([
        [LEFT, 96],
        [RIGHT, 96],
      ]),
    }),
  );
  for (const event of of.events) {
    const day = x(dayOf(event.peakUtc) - first + 0.1);
    const top = y(event.value);
    inner.push(tag('rect', { class: 'object', x: day, y: top, width: 0.8, height: 96 - top }));
  }
  inner.push(label(LEFT, 17, `${of.value.label} / ${of.value.unit}`, 'start', 'name'));
  return inner;
}

/** The days that follow each other, each from start to end with its peak marked. */
function season(events: readonly StripEvent[], top: number, from: number, to: number): string[] {
  const days = events.map((event) => dayOf(event.peakUtc));
  const x = linear(Math.min(...days) - 0.5, Math.max(...days) + 0.5, from, to);
  // Near midnight the hours go on across it, so that neighbours stay together.
  const first = minuteOf(events[0]?.startUtc ?? '');
  const starts = events.map((event) => {
    const start = minuteOf(event.startUtc);
    return start - 1440 * Math.round((start - first) / 1440);
  });
  const ends = events.map(
    (event, index) =>
      (starts[index] ?? 0) + (Date.parse(event.endUtc) - Date.parse(event.startUtc)) / 60000,
  );
  const y = linear(Math.min(...starts) - 1, Math.max(...ends) + 1, top + 10, top + 122, 4);
  const inner = y.ticks.flatMap((tick) => [
    tag('path', {
      class: 'grid',
      d: through([
        [from, y(tick)],
        [to, y(tick)],
      ]),
    }),
    label(from - 5, y(tick) + 4.5, clock(tick), 'end'),
  ]);
  events.forEach((event, index) => {
    const day = x(days[index] ?? 0);
    const peak =
      (starts[index] ?? 0) + (Date.parse(event.peakUtc) - Date.parse(event.startUtc)) / 60000;
    inner.push(
      tag(
        'g',
        { class: 'series s0' },
        tag('path', {
          class: 'line',
          d: through([
            [day, y(starts[index] ?? 0)],
            [day, y(ends[index] ?? 0)],
          ]),
        }),
      ),
      tag('circle', { class: 'object', cx: day, cy: y(peak), r: 2.5 }),
    );
  });
  inner.push(
    tag('path', {
      class: 'axis',
      d: through([
        [from, top + 122],
        [to, top + 122],
      ]),
    }),
  );
  const named = events.length > 1 ? [events[0], events.at(-1)] : [events[0]];
  named.forEach((event, index) => {
    if (event)
      inner.push(
        label(
          index === 0 ? from : to,
          top + 139,
          new Date(event.peakUtc).toISOString().slice(5, 10),
          index === 0 ? 'start' : 'end',
        ),
      );
  });
  return inner;
}

/** Draws the year, and the hours of each run of days below it. */
export function calendarStrip(of: CalendarStrip): Figure {
  const runs: StripEvent[][] = [];
  for (const event of of.events) {
    const before = runs.at(-1)?.at(-1);
    if (before && dayOf(event.peakUtc) - dayOf(before.peakUtc) <= 2) runs.at(-1)?.push(event);
    else runs.push([event]);
  }
  const shownRuns = runs.slice(0, 2);
  const inner = strip(of);
  const half = (RIGHT - LEFT) / 2;
  shownRuns.forEach((run, index) => {
    const from = LEFT + 8 + index * (half + 6);
    inner.push(...season(run, 128, from, from + half - 46));
  });
  return {
    title: of.title,
    svg: picture(WIDTH, shownRuns.length > 0 ? 276 : 122, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['Day', 'Start UTC', 'Peak UTC', 'End UTC', `${of.value.label} / ${of.value.unit}`],
      rows: of.events.map((event) => [
        event.peakUtc.slice(0, 10),
        event.startUtc.slice(11, 19),
        event.peakUtc.slice(11, 19),
        event.endUtc.slice(11, 19),
        shown(event.value, 1),
      ]),
    },
  };
}
