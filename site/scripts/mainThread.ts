/**
 * How long an answer keeps the main thread: `npx tsx site/scripts/mainThread.ts BASE [--pages=REGEX] [--repeats=3] [--write=FILE.md] [--parts]`.
 *
 * Each example of BASE (the built site, served by `serve.ts`, or a dev server) is opened in Chromium; the first focus, then changes of up to
 * five of its inputs are made as a reader makes them. Of every change the longest task of the main thread is taken, style, layout and
 * paint included. Told is four times the processor time of that task: what four times CPU throttling makes of it on a machine that does
 * nothing else. (The throttling itself counts what other programs take as well.) The shortest of the repeats counts.
 * `--parts` tells besides what the longest task of each step consists of: script, style, layout, paint and so on.
 */
import { readdirSync, writeFileSync } from 'node:fs';
import { chromium, type Page } from '@playwright/test';

const base = process.argv[2];
if (!base || base.startsWith('--')) throw new Error('usage: mainThread.ts BASE [--pages=REGEX]');
const option = (name: string, otherwise = '') =>
  process.argv.find((word) => word.startsWith(`--${name}=`))?.slice(name.length + 3) ?? otherwise;
const wanted = new RegExp(option('pages', '.'));
const repeats = Number(option('repeats', '3'));
const tells = process.argv.includes('--parts');
const SLOWER = 4;

interface TraceEvent {
  readonly name: string;
  readonly cat: string;
  readonly tid: number;
  readonly ts: number;
  /** Processor time of the thread, in microseconds. */
  readonly tdur?: number;
  readonly dur?: number;
}

/** What a task consists of: processor time of its own of each kind of work within it, times four. */
function partsOf(task: TraceEvent, trace: readonly TraceEvent[]): string {
  const end = task.ts + (task.dur ?? 0);
  const inside = trace
    .filter(
      ({ tid, ts, dur = 0, tdur = 0 }) =>
        tid === task.tid && tdur > 0 && ts >= task.ts && ts + dur <= end,
    )
    .sort((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0));
  const own = new Map<string, number>();
  const open: TraceEvent[] = [];
  const add = (name: string, ms: number) => own.set(name, (own.get(name) ?? 0) + ms);
  for (const event of inside) {
    while (open.length > 0 && event.ts >= (open.at(-1)?.ts ?? 0) + (open.at(-1)?.dur ?? 0))
      open.pop();
    const around = open.at(-1);
    const ms = (SLOWER * (event.tdur ?? 0)) / 1000;
    add(event.name, ms);
    if (around) add(around.name, -ms);
    open.push(event);
  }
  return [...own]
    .filter(([, ms]) => ms > 2)
    .sort((a, b) => b[1] - a[1])
    .map(([name, ms]) => `${name} ${Math.round(ms)}`)
    .join(', ');
}

/** The longest task in ms on the thread of the page, for each step by its mark. */
function longestTasks(trace: Buffer): Map<string, number> {
  const { traceEvents } = JSON.parse(trace.toString()) as { traceEvents: TraceEvent[] };
  const marks = traceEvents.filter(
    ({ cat, name }) => cat.includes('blink.user_timing') && name.startsWith('step:'),
  );
  const thread = marks[0]?.tid;
  const tasks = traceEvents.filter(({ name, tid }) => name.endsWith('RunTask') && tid === thread);
  return new Map(
    marks.map(({ name, ts }, at) => {
      const end = marks[at + 1]?.ts ?? Number.POSITIVE_INFINITY;
      const inside = tasks.filter((task) => task.ts >= ts && task.ts < end);
      const longest = inside.reduce<TraceEvent | undefined>(
        (most, task) => ((task.tdur ?? 0) > (most?.tdur ?? 0) ? task : most),
        undefined,
      );
      if (longest && tells) console.log(`  ${name.slice(5)}: ${partsOf(longest, traceEvents)}`);
      return [name.slice(5), (SLOWER * (longest?.tdur ?? 0)) / 1000];
    }),
  );
}

/** Changes an input as a reader does, and says which; `at` counts the fields that can be changed. */
const change = (page: Page, at: number, back: boolean) =>
  page.evaluate(
    ([place, undo]) => {
      const form = document.querySelector('worked-example .ex-form');
      const controls = [
        ...(form?.querySelectorAll<HTMLElement>('input:not([role]), select:not([data-preset])') ??
          []),
      ].filter((one) => one.checkVisibility() && !one.closest('.ex-towns'));
      const control = controls[place as number];
      if (!control) return undefined;
      const label = (
        control.getAttribute('aria-label') ??
        (control as HTMLInputElement).labels?.[0]?.firstChild?.textContent ??
        control.id
      ).trim();
      const act = () => {
        if (control instanceof HTMLSelectElement) {
          const now = control.selectedIndex;
          const was = Number(control.dataset['was'] ?? now);
          control.dataset['was'] = String(now);
          control.selectedIndex = undo ? was : (now + 1) % control.options.length;
          control.dispatchEvent(new Event('input', { bubbles: true }));
        } else if (control instanceof HTMLInputElement && /checkbox|radio/.test(control.type))
          control.click();
        else if (control instanceof HTMLInputElement) {
          const step = Number(control.dataset['number']);
          if (Number.isFinite(step) && step > 0)
            control.dispatchEvent(
              new KeyboardEvent('keydown', {
                key: undo ? 'ArrowDown' : 'ArrowUp',
                bubbles: true,
                cancelable: true,
              }),
            );
          else control.dispatchEvent(new Event('input', { bubbles: true }));
        }
      };
      // A task of its own, as after a key.
      setTimeout(() => {
        performance.mark(`step:${place}${undo ? ' back' : ''} ${label}`);
        act();
      }, 30);
      return label;
    },
    [at, back] as const,
  );

/** Longest task of each step of one example. */
async function measured(page: Page, name: string): Promise<Map<string, number>> {
  // The loader names functions through a helper that the page does not have.
  await page.addInitScript('globalThis.__name = (one) => one');
  await page.goto(`${base?.replace(/\/$/, '')}/examples/${name}/`, {
    waitUntil: 'load',
    timeout: 120_000,
  });
  await page.waitForSelector('worked-example[data-ready]');
  await page.waitForTimeout(300);
  await browser.startTracing(page, {
    categories: [
      'toplevel',
      'disabled-by-default-devtools.timeline',
      'devtools.timeline',
      'blink.user_timing',
    ],
  });
  const settle = () => page.waitForTimeout(500);
  await page.evaluate(() => {
    setTimeout(() => {
      performance.mark('step:first focus');
      document.querySelector<HTMLElement>('worked-example .ex-form :is(input, select)')?.focus();
    }, 30);
  });
  await settle();
  await page.waitForTimeout(700);
  for (let at = 0; at < 5; at += 1) {
    if ((await change(page, at, false)) === undefined) break;
    await settle();
    await change(page, at, true);
    await settle();
  }
  const trace = await browser.stopTracing();
  return longestTasks(trace);
}

const names = readdirSync('docs/examples')
  .map((file) => file.replace(/\.mdx$/, ''))
  .filter((name) => wanted.test(name))
  .sort();
const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
  args: ['--disable-gpu'],
});
const rows: string[] = [];
for (const name of names) {
  const best = new Map<string, number>();
  for (let run = 0; run < repeats; run += 1) {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    try {
      for (const [step, ms] of await measured(page, name))
        best.set(step, Math.min(ms, best.get(step) ?? Number.POSITIVE_INFINITY));
    } catch (error) {
      console.log(`${name}: ${String(error).slice(0, 120)}`);
      await browser.stopTracing().catch(() => undefined);
    }
    await page.close();
  }
  const focus = best.get('first focus') ?? 0;
  best.delete('first focus');
  const [[worst, ms] = ['', 0], ...rest] = [...best].sort((a, b) => b[1] - a[1]);
  const middle = rest[Math.floor(rest.length / 2)]?.[1] ?? ms;
  const row = `| ${name} | ${Math.round(focus)} | ${Math.round(ms)} | ${worst.replace(/^\d+ (back )?/, '')} | ${Math.round(middle)} |`;
  console.log(row);
  rows.push(row);
}
await browser.close();
const table = [
  '| Example | First focus / ms | Longest of the changes / ms | on changing | Middle of the changes / ms |',
  '| --- | ---: | ---: | --- | ---: |',
  ...rows,
];
const file = option('write');
if (file) writeFileSync(file, `${table.join('\n')}\n`);
