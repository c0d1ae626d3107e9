import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { DomainError } from 'slantpath';
import { type JobFile, type JobFile1, type JobRecord, parseJob, recordJob } from 'slantpath/job';
import {
  englishWords,
  germanWords,
  jobSheet,
  jobSheetHtml,
  type SheetOptions,
  type SheetWords,
} from 'slantpath/sheet';
import { describe, expect, test } from 'vitest';
import { randomStream } from '../../src/numeric/random.js';
import { FULL_RUNS, runs, share } from '../support/runs.js';

const job = JSON.parse(
  readFileSync(fileURLToPath(new URL('../job/data/job-version-1.json', import.meta.url)), 'utf8'),
) as JobFile1;
const record = recordJob(job);
const [slot] = job.slots;
if (!slot) throw new Error('no slot');
const before: JobFile1 = { ...job, readings: [], peaking: [] };

/** Copies of a value, each with one leaf replaced. */
function everyField(value: unknown, by: string): readonly unknown[] {
  if (typeof value !== 'object' || value === null) return [by];
  return Object.entries(value).flatMap(([key, inner]) =>
    everyField(inner, by).map((changed) =>
      Array.isArray(value)
        ? value.map((old, at) => (at === Number(key) ? changed : old))
        : { ...value, [key]: changed },
    ),
  );
}

/** Both sheets of a record, as text. */
const VISITS = ['before', 'after'] as const;
const both = (of: JobRecord, options: Omit<SheetOptions, 'visit'> = {}) =>
  VISITS.map((visit) => jobSheet(of, { ...options, visit }));

/** The HTML of a sheet, or nothing where a word stands in the place of a number or a kind; then the error says so. */
function htmlOrNothing(received: unknown, index: number): string {
  try {
    // The sheet before the visit works out the Sun's way, so it is made of fewer of them.
    const visit = index % 15 === 0 ? 'before' : 'after';
    return jobSheetHtml(received as JobRecord, { visit });
  } catch (error) {
    expect(error).toBeInstanceOf(DomainError);
    return '';
  }
}

describe('before the visit', () => {
  const sheet = jobSheet(record, { visit: 'before' });

  test('tells the job in the order of the work', () => {
    const sections = [
      'Place and north',
      'Where the slots stand',
      'View',
      'North by the shadow of a plumb line',
      'Mount',
      'Tuning',
      'For peaking',
      'Expected at the antenna in clear sky',
      'Expected at the outlets in clear sky',
      'Rain and the promise',
      'Sun outages',
      'Assumed where the job file does not say',
    ];
    const places = sections.map((title) => sheet.indexOf(`\n${title}`));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
    for (const { apparentElevationDeg } of record.plan.directions)
      expect(sheet).toContain(apparentElevationDeg.toFixed(2));
  });

  test('has blanks to write in, at each expected value too', () => {
    expect(sheet.match(/_{6,}/g)?.length).toBeGreaterThan(
      2 * (record.plan.signals.length + record.plan.outlets.length),
    );
    expect(jobSheetHtml(record, { visit: 'before' })).toContain('<td class="blank"></td>');
  });

  test('a turn is an amount and a sense, never a sign, and nobody tilts twice', () => {
    expect(sheet).toContain('Row of feeds: 3.7° counter-clockwise from level');
    expect(sheet.replace(/\s+/g, ' ')).toContain('do not turn the row again');
    const mount = record.plan.mounts[0];
    if (mount?.kind !== 'several-slots') throw new Error('one reflector for three');
    for (const { turnDeg } of mount.feeds)
      expect(sheet).toContain(`${Math.abs(turnDeg ?? 0).toFixed(1)}° counter-clockwise`);
  });

  test('the feeds are drawn in the HTML with their names', () => {
    const html = jobSheetHtml(record, { visit: 'before' });
    expect(html.match(/<svg /g)?.length).toBe(1);
    for (const { name } of job.slots) expect(html).toContain(`>${name}</text>`);
  });

  test('every assumption that the file did not give is listed', () => {
    for (const { field } of record.plan.assumptions) {
      const last = field.split('.').at(-1) ?? '';
      expect(sheet.replace(/\s+/g, ' ')).toContain(englishWords.codes.fields[last]);
    }
  });

  test('times are local, with the zone named', () => {
    const there = recordJob({ ...record.job, timeZone: 'Europe/Zurich' });
    const utc = /boresight +(\d\d):(\d\d)/.exec(sheet);
    const local = /boresight +(\d\d):(\d\d)/.exec(jobSheet(there, { visit: 'before' }));
    expect(Number(local?.[1]) - Number(utc?.[1])).toBe(2);
    expect(local?.[2]).toBe(utc?.[2]);
    expect(jobSheet(there, { visit: 'before' })).toContain('Europe/Zurich (UTC+2)');
    const nowhere = recordJob({ ...record.job, timeZone: 'Nowhere/Such' } as never);
    expect(jobSheet(nowhere, { visit: 'before' })).toContain('local time UTC');
  });
});

test('a branch that was not read is named beside the causes, in both languages and forms', () => {
  const read = job.readings.filter(({ testPoint }) => testPoint !== 'dining room');
  expect(record.firstLook).not.toBeNull();
  const half = recordJob({ ...job, readings: read });
  const inOne = (text: string) => text.replace(/<[^>]+>|\s+/g, ' ').replace(/ +/g, ' ');
  const unseen = half.firstLook?.unseen ?? [];
  expect(unseen.length).toBeGreaterThan(record.firstLook?.unseen.length ?? 0);
  for (const words of [englishWords, germanWords]) {
    const [lead = ''] = words.unseen('|').split('|');
    const causes = [...new Set(unseen.map(({ cause }) => words.codes.causes[cause]))];
    for (const sheet of [jobSheet, jobSheetHtml]) {
      const told = inOne(sheet(half, { visit: 'after', words }));
      for (const cause of causes) expect(told.split(inOne(lead))[1]).toContain(`${cause} (`);
      expect(inOne(sheet(half, { visit: 'before', words }))).not.toContain(inOne(lead));
    }
  }
});

describe('after the visit', () => {
  const sheet = jobSheet(record, { visit: 'after' });

  test('begins with one line that says how the job stands, then the findings', () => {
    const outcomes = sheet.split('\n').filter((line) => line.startsWith('Outcome:'));
    expect(outcomes.length).toBe(1);
    expect(outcomes[0]).toContain(englishWords.codes.outcomes[record.outcome]);
    expect(sheet.indexOf('Outcome:')).toBeLessThan(sheet.indexOf('\nReadings\n'));
  });

  test('tells every finding once, by its words', () => {
    const flat = sheet.replace(/\s+/g, ' ').toLowerCase();
    for (const { code } of record.findings)
      expect(flat).toContain(englishWords.codes.findings[code].says.toLowerCase());
  });

  test('does not say to leave a side lobe', () => {
    const [first] = job.peaking;
    if (!first) throw new Error('no peaking');
    const positionDeg = [-0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6];
    // Half as wide as the main lobe of 0.9 m at 12.5 GHz: 12 (offset / 0.93 degree)^2 dB, read in tenths.
    const levelDbm = [-45, -42.2, -40.6, -40, -40.6, -42.2, -45];
    const lobe = jobSheet(
      recordJob({ ...job, peaking: [{ ...first, samples: { positionDeg, levelDbm } }] }),
    );
    expect(lobe).not.toContain('Leave it.');
    expect(lobe).toContain('not the main lobe');
    expect(lobe).toContain('too narrow');
  });
});

describe('whatever the record', () => {
  test('no line is longer than 84 characters, and nothing is NaN or undefined', () => {
    const long = 'A name that is as long as a job file lets a name be, which is eighty characters';
    const odd = recordJob({
      ...job,
      title: `${long} undefinedly`,
      station: { ...job.station, name: long },
      slots: job.slots.map((each, index) => ({ ...each, name: `${long}${index}`.slice(-80) })),
      readings: [],
      peaking: [],
    });
    for (const text of [...both(record), ...both(odd)]) {
      expect(text).not.toMatch(/NaN|undefined(?!ly)|Infinity|null|\[object/);
      for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(84);
    }
  });

  test('says what is not there', () => {
    const far = recordJob({ ...before, slots: [{ ...slot, orbitalLongitudeDeg: -120 }] });
    for (const text of both(far)) expect(text).toContain('(below');
    const under = recordJob({
      ...before,
      station: { ...job.station, latitudeDeg: 0, longitudeDeg: 7.2 },
      antenna: { ...job.antenna, offsetAngleDeg: 0 },
      slots: [slot],
    });
    for (const text of both(under)) expect(text).toContain('straight overhead');
    const bare = recordJob({
      format: 'slantpath-job',
      version: 2,
      station: { latitudeDeg: 46.6, longitudeDeg: 10.3 },
      slots: [{ orbitalLongitudeDeg: 16.4 }],
    });
    for (const text of both(bare)) expect(text).toMatch(/No day is given/);
    // Left out, the sheet is the one that the record has something for.
    expect(jobSheet(bare)).toContain('Before the visit');
    expect(jobSheet(record)).toContain('After the visit');
  });

  test('at low elevation the beam is set where the air bends it to, and the sheet says so', () => {
    const low = recordJob({
      ...before,
      station: { ...job.station, latitudeDeg: 76 },
      slots: [{ ...slot, orbitalLongitudeDeg: 10 }],
    });
    const [direction] = low.plan.directions;
    expect(direction?.elevationDeg).toBeLessThan(7);
    const [text] = both(low);
    expect(text).toContain(direction?.apparentElevationDeg.toFixed(2));
    expect(text).toContain('bends the beam');
  });

  test('tables keep words whole where a line holds them, in both languages', () => {
    const demo = recordJob(parseJob(readFileSync('examples/job/tarnfell-lower-hut.json', 'utf8')));
    const english = jobSheet(demo, { visit: 'after' });
    const german = jobSheet(demo, { visit: 'after', words: germanWords });
    for (const word of ['isolation', 'undecided', 'conforms']) expect(english).toContain(word);
    for (const word of ['Messpunkt', 'Entkopplung', 'unentschieden'])
      expect(german).toContain(word);
  });

  test('as HTML it carries no markup from the job file', () => {
    const title = '<script>alert(1)</script> & "more" \\ </style>';
    const evil = recordJob({ ...job, title });
    for (const visit of VISITS) {
      const html = jobSheetHtml(evil, { visit });
      expect(html).not.toContain('<script>');
      expect(html.match(/<\/style>/g)?.length).toBe(1);
      expect(html).toContain('&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;more&quot;');
    }
  });

  test('nor from any field of a record that came from elsewhere', () => {
    let made = 0;
    for (const html of share(everyField(record, '<b class="evil">'), 17).map(htmlOrNothing)) {
      if (html !== '') made++;
      expect(html).not.toContain('<b class');
    }
    expect(made).toBeGreaterThan(FULL_RUNS ? 100 : 6);
  });

  test('what is no record is refused by name', () => {
    for (const wrong of [
      null,
      3,
      'record',
      {},
      { ...record, plan: {} },
      { ...record, outcome: 'x' },
    ])
      for (const visit of VISITS) {
        try {
          jobSheet(wrong as never, { visit });
          // An outcome stands on the sheet after the visit only.
          expect(visit).toBe('before');
        } catch (error) {
          expect(error).toBeInstanceOf(DomainError);
          expect((error as DomainError).parameter).toBe('record');
        }
      }
    expect(() => jobSheet(record, { visit: 'during' as never })).toThrow(
      expect.objectContaining({ parameter: 'visit', code: 'not-an-option' }),
    );
  });

  test('the job’s name and the page’s number stand on every printed page', () => {
    const html = jobSheetHtml(recordJob({ ...job, title: 'Hut "1"' }), { visit: 'after' });
    expect(html).toContain('@top-left { content: "Hut \\22 1\\22 "; }');
    expect(html).toContain('counter(page)');
    expect(html).toContain('counter(pages)');
  });
});

describe('the words', () => {
  test('are an argument: every word and the decimal mark come from it', () => {
    const words: SheetWords = {
      ...englishWords,
      language: 'x',
      decimalMark: ',',
      outcome: (outcome) => `It ${outcome}.`,
    };
    expect(jobSheet(record, { words })).toContain('It does not conform.');
    expect(jobSheet(record, { words })).toContain(
      record.plan.directions[0]?.apparentElevationDeg.toFixed(2).replace('.', ','),
    );
    expect(jobSheetHtml(record, { words })).toContain('<html lang="x">');
  });
});

/** Every text of a value of words: functions are asked with marks in the place of what comes in. */
function texts(value: unknown, path = ''): readonly (readonly [path: string, text: string])[] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value === 'function')
    return [[path, String((value as (...given: unknown[]) => unknown)('1', '2', '3', '4', '5'))]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => texts(inner, `${path}.${key}`));
}

describe('the German words', () => {
  const functionsOfNumbers = /\.(percent|counted|edge)$/;
  const usable = (words: SheetWords) =>
    texts({ ...words, percent: '', counted: '' }).filter(
      ([path]) => !functionsOfNumbers.test(path),
    );

  test('have a text for each English one, and take up the same figures', () => {
    const german = new Map(usable(germanWords));
    for (const [path, text] of usable(englishWords)) {
      const other = german.get(path);
      expect(other, path).toBeDefined();
      if (text === '') expect(other, path).toBe('');
      else expect(other?.length, path).toBeGreaterThan(0);
      for (const figure of ['1', '2', '3', '4', '5'])
        if (new RegExp(`(^|[^\\d.,])${figure}($|[^\\d.,])`).test(text))
          expect(other, path).toContain(figure);
    }
    expect(german.size).toBe(usable(englishWords).length);
  });

  test('leave nothing in English on either sheet', () => {
    const long = new Set(
      usable(englishWords)
        .map(([, text]) => text)
        .filter((text) => text.length > 12 && !/\d/.test(text)),
    );
    const german = new Set(usable(germanWords).map(([, text]) => text));
    for (const text of both(record, { words: germanWords })) {
      const flat = text.replace(/\s+/g, ' ');
      for (const english of long) if (!german.has(english)) expect(flat).not.toContain(english);
      expect(text).not.toMatch(/NaN|undefined|null|\[object/);
      for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(84);
    }
  });

  test('write numbers with a comma and turns in words', () => {
    const [text] = both(record, { words: germanWords });
    expect(text).toContain('Feedreihe: 3,7° gegen den Uhrzeigersinn');
    expect(jobSheetHtml(record, { words: germanWords })).toContain('<html lang="de">');
    expect(jobSheet(record, { words: germanWords })).toContain('\nErgebnis: nicht konform');
  });
});

/** Every leaf of a document by its keys. */
function leavesOf(value: unknown, keys: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [keys];
  return Object.entries(value).flatMap(([key, inner]) => leavesOf(inner, [...keys, key]));
}

/** Changes a leaf of a document in place: takes it away, or changes a number. */
function changeLeaf(document: unknown, keys: readonly string[], by: number | null): void {
  let at = document as Record<string, unknown>;
  for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
  const last = keys.at(-1) ?? '';
  const old = at?.[last];
  if (at === undefined || old === undefined) return;
  if (by === null && !Array.isArray(at)) delete at[last];
  else if (typeof old === 'number' && by !== null) at[last] = old * by;
}

test(`${runs(400, 10)} changed jobs: each gives a sheet without NaN, undefined or a line too long`, () => {
  const stream = randomStream(20_261_127);
  const leaves = leavesOf(record.job);
  let made = 0;
  for (let i = 0; i < runs(400, 10); i++) {
    const changed = JSON.parse(JSON.stringify(record.job)) as JobFile;
    for (let change = 0; change < 1 + stream.integer(3); change++) {
      const factor = stream.uniform() < 0.5 ? 1 + 0.3 * stream.normal() : 3 * stream.normal();
      const keys = leaves[stream.integer(leaves.length)] ?? [];
      changeLeaf(changed, keys, stream.uniform() < 0.4 ? null : factor);
    }
    let answer: JobRecord;
    try {
      answer = recordJob(changed);
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      continue;
    }
    made++;
    const visit = made % 4 === 0 ? 'before' : 'after';
    const words = made % 2 === 0 ? englishWords : germanWords;
    const text = jobSheet(answer, { visit, words });
    expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(84);
    expect(jobSheetHtml(answer, { visit, words })).not.toMatch(/NaN|undefined|\[object/);
  }
  console.log(`changed jobs: ${made} of ${runs(400, 10)} give a record`);
  expect(made).toBeGreaterThan(runs(100, 2));
});
