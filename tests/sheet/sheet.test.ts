import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type JobFile1, type JobRecord, recordJob } from 'slantpath/job';
import { englishWords, jobSheet, jobSheetHtml, type SheetWords } from 'slantpath/sheet';
import { describe, expect, test } from 'vitest';

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

/** The HTML, or nothing where a word stands in the place of a number or a kind: no sheet, no harm. */
function htmlOrNothing(received: unknown): string {
  try {
    return jobSheetHtml(received as JobRecord);
  } catch {
    return '';
  }
}

describe('the sheet', () => {
  test('tells the job in the order of the work, and only what the record holds', () => {
    const sheet = jobSheet(record);
    const sections = [
      'Cautions',
      'Station',
      'Slots',
      'Mount',
      'View',
      'Rain and availability',
      'Expected at the antenna',
      'Peaking',
      'Expected at the outlets',
      'Readings',
      'Look at first',
    ];
    const places = sections.map((title) => sheet.indexOf(`\n${title}`));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
    for (const { elevationDeg } of record.plan.directions)
      expect(sheet).toContain(elevationDeg.toFixed(2));
    expect(sheet).not.toMatch(/NaN|undefined|Infinity|null/);
    for (const line of sheet.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  test('as HTML carries no markup from the job file', () => {
    const evil = recordJob({ ...job, title: '<script>alert(1)</script> & "more"' });
    expect(jobSheetHtml(evil)).not.toContain('<script>');
    expect(jobSheetHtml(evil)).toContain(
      '&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;more&quot;',
    );
  });

  test('nor from the format and version of a record that came from elsewhere', () => {
    const evil = { ...record, format: '<script>1</script>', version: '<b>' } as never;
    expect(jobSheetHtml(evil)).not.toMatch(/<script>|<b>/);
  });

  test('carries no markup from any field of a record that came from elsewhere', () => {
    let made = 0;
    for (const html of everyField(record, '<b class="evil">').map(htmlOrNothing)) {
      if (html !== '') made++;
      expect(html).not.toContain('<b class');
    }
    expect(made).toBeGreaterThan(100);
  });

  test('does not say to leave a side lobe', () => {
    const [first] = job.peaking;
    if (!first) throw new Error('no peaking');
    const positionDeg = [-0.6, -0.4, -0.2, 0, 0.2, 0.4, 0.6];
    // Half as wide as the main lobe of 0.9 m at 12.5 GHz: 12 (offset / 0.93 degree)^2 dB, read in tenths.
    const levelDbm = [-45, -42.2, -40.6, -40, -40.6, -42.2, -45];
    const sheet = jobSheet(
      recordJob({ ...job, peaking: [{ ...first, samples: { positionDeg, levelDbm } }] }),
    );
    expect(sheet).not.toContain('Leave it.');
    expect(sheet).toContain('not the main lobe: too narrow');
  });

  test('says what is not there', () => {
    const far = recordJob({ ...before, slots: [{ ...slot, orbitalLongitudeDeg: -120 }] });
    expect(jobSheet(far)).toContain('below horizon');
    const under = recordJob({
      ...before,
      station: { ...job.station, latitudeDeg: 0, longitudeDeg: 7.2 },
      antenna: { ...job.antenna, offsetAngleDeg: 0 },
      slots: [slot],
    });
    expect(jobSheet(under)).not.toMatch(/NaN|null|undefined/);
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
    expect(jobSheet(record, words)).toContain('It does not conform.');
    expect(jobSheet(record, words)).toContain(
      record.plan.directions[0]?.elevationDeg.toFixed(2).replace('.', ','),
    );
    expect(jobSheetHtml(record, words)).toContain('<html lang="x">');
  });

  test('a turn is an amount and a sense, never a sign', () => {
    expect(jobSheet(record)).toContain('Tilt of the feed arm: 3.7° counter-clockwise');
  });
});
