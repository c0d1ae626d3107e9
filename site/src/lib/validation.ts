/** The published checks as the last test run left them in `tests/.validation/`; read when the site is built. */

/** One check: a table of values from outside against the library's. */
export interface Check {
  readonly part: string;
  readonly quantity: string;
  readonly unit: string;
  readonly source: string;
  readonly status: 'published' | 'recomputed' | 'practice';
  readonly limit: number;
  readonly reason: string;
  readonly relative?: boolean;
  readonly count: number;
  readonly rows: readonly {
    readonly name: string;
    readonly expected: number;
    readonly got: number;
    readonly error: number;
    readonly limit?: number;
  }[];
}

const files = import.meta.glob<Check>('../../../tests/.validation/*.json', {
  eager: true,
  import: 'default',
});

/** The parts in the order of the job. */
const ORDER = [
  'earth',
  'magnetic',
  'geodesic',
  'gridref',
  'pointing',
  'orbit',
  'antenna',
  'sun',
  'survey',
  'peaking',
  'propagation',
  'climate',
  'link',
  'distribution',
  'acceptance',
  'job',
  'teaching',
  'numeric',
];

const place = (part: string) => (ORDER.includes(part) ? ORDER.indexOf(part) : ORDER.length);

/** A site with a failed check is not built. */
function refuseFailure(check: Check): void {
  const failed = check.rows.find(({ error, limit }) => !(error <= (limit ?? check.limit)));
  if (failed && import.meta.env.PROD && !process.env['TOLERATE_FAILED_CHECKS'])
    throw new Error(
      `${check.part}, ${check.quantity}: ${failed.name} is off by ${failed.error}. If the tests pass, the figures are old: build with --fresh.`,
    );
}

/** All checks by part. */
export function checksByPart(): [string, Check[]][] {
  const parts = new Map<string, Check[]>();
  for (const check of Object.values(files)) {
    refuseFailure(check);
    parts.set(check.part, [...(parts.get(check.part) ?? []), check]);
  }
  return [...parts].sort(([a], [b]) => place(a) - place(b) || a.localeCompare(b));
}

/** The largest error of a check and the case where it is. */
export function worstOf({ rows }: Check): { readonly error: number; readonly name: string } {
  return rows.reduce((a, b) => (b.error > a.error ? b : a), { error: 0, name: '' });
}

const SHOWN = 20;

/** The rows of a short check; of a long one those with the largest errors, largest first. */
export function shownRows({ rows }: Check): Check['rows'] {
  if (rows.length <= SHOWN) return rows;
  return [...rows].sort((a, b) => b.error - a.error).slice(0, SHOWN);
}

/** All cases of some checks as CSV. */
export function casesCsv(checks: readonly Check[]): string {
  const cell = (value: string | number) =>
    typeof value === 'string' ? `"${value.replaceAll('"', '""')}"` : String(value);
  const lines = checks.flatMap((check) =>
    check.rows.map((row) => [
      check.quantity,
      check.source,
      STATUS[check.status],
      check.unit,
      row.name,
      row.expected,
      row.got,
      row.error,
      row.limit ?? check.limit,
      check.relative ? 'relative' : 'absolute',
    ]),
  );
  const names = 'quantity,source,status,unit,case,expected,got,error,limit,kind_of_error';
  return [names, ...lines.map((line) => line.map(cell).join(','))].join('\r\n');
}

/** A small number in few signs: `2.2e−7`, `0.005`. */
export function small(value: number): string {
  if (value === 0) return '0';
  const text =
    value >= 1e-4 && value < 1e5 ? String(Number(value.toPrecision(3))) : value.toExponential(1);
  return text.replaceAll('-', '−');
}

/** An error or a limit with its unit, `relative` in per cent-free words. */
export function withUnitOf(check: Check, value: number): string {
  const text = small(value);
  if (check.relative) return `${text} rel.`;
  return check.unit ? `${text} ${check.unit}` : text;
}

/** Where the expected values come from, in a word. */
export const STATUS: Readonly<Record<Check['status'], string>> = {
  published: 'read in the document',
  recomputed: 'computed by other means',
  practice: 'practice of the trade',
};
