/** Does your formula hold? A typed formula against the exact function over a region. */

import {
  compileFormula,
  FORMULA_SUBJECTS,
  type FormulaValues,
  type FormulaVerdict,
  formulaSubject,
  printedUnit,
  RULES_OF_THUMB,
  tryFormula,
} from 'slantpath/teaching';
import { defineExample, type Figure, literal } from '../lib/example.js';
import { formulaApart } from '../lib/formulaApart.js';
import { choice, type OptionalNumberInput, optionalNumber, text } from '../lib/inputs/inputs.js';
import { own, said, together } from '../lib/language/language.js';
import { withUnit } from '../lib/language/text.js';
import { brief, errorMap } from '../lib/pictures/errorMap.js';
import { linePlot } from '../lib/pictures/plot.js';

/** Endings of the variables' names, and their units as printed. */
const UNITS: readonly (readonly [ending: RegExp, unit: string])[] = [
  [/MmPerH$/, 'mm/h'],
  [/GHz$/, 'GHz'],
  [/MHz$/, 'MHz'],
  [/Percent$/, '%'],
  [/DbPerK$/, 'dB/K'],
  [/Dbi$/, 'dBi'],
  [/Dbw$/, 'dBW'],
  [/Dbm$/, 'dBm'],
  [/Deg$/, '°'],
  [/Db$/, 'dB'],
  [/Km$/, 'km'],
  [/Mm$/, 'mm'],
  [/M$/, 'm'],
  [/K$/, 'K'],
  [/W$/, 'W'],
  [/Ratio$/, 'to 1'],
];
/** Labels where the name without its unit is not what people say. */
const SAID: Readonly<Record<string, string>> = {
  offsetDeg: 'Pointing error',
  eirpDbw: 'Radiated power',
  figureOfMeritDbPerK: 'Figure of merit',
  rainRate001MmPerH: 'Rain rate',
};

/** Label and unit of a variable, from its name: `longitudeDifferenceDeg` is the longitude difference in degrees. */
function labelled(name: string): readonly [label: string, unit: string] {
  const [ending, unit] = UNITS.find(([end]) => end.test(name)) ?? [/$/, ''];
  const spaced = name.replace(ending, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return [SAID[name] ?? `${spaced[0]?.toUpperCase()}${spaced.slice(1)}`, unit];
}

/** Variables of all subjects: label and unit. The library lists them; nothing is registered here. */
const VARIABLES = new Map(
  FORMULA_SUBJECTS.flatMap(({ variables }) => variables).map(({ name }) => [name, labelled(name)]),
);
type End = `${string}${'From' | 'To'}`;

const of = (name: string) => VARIABLES.get(name) ?? labelled(name);
const axis = (name: string) => own(of(name).filter(Boolean).map(said).join(' / '));

/** Two fields for each variable, shown for the subjects that have it. */
const ENDS = Object.fromEntries(
  [...VARIABLES].flatMap(([name, [label, unit]]) =>
    (['From', 'To'] as const).map((end): [End, OptionalNumberInput] => [
      `${name}${end}`,
      optionalNumber({
        label: `${label} ${end.toLowerCase()}`,
        unit,
        step: 1,
        empty: 'usual',
        onlyFor: {
          choice: 'subject',
          values: FORMULA_SUBJECTS.filter(({ variables }) =>
            variables.some((variable) => variable.name === name),
          ).map((subject) => subject.name),
        },
      }),
    ]),
  ),
) as Record<End, OptionalNumberInput>;

/** What was typed for an end; its field is named after a variable of the library, so its type is told here. */
const endOf = (values: object, end: End) =>
  (values as Readonly<Record<End, number | undefined>>)[end];

const ABBREVIATED: Readonly<Record<string, string>> = {
  dbm: 'dBm',
  dbuv: 'dBµV',
  eirp: 'EIRP',
  fresnel: 'Fresnel',
};
const words = (name: string) =>
  name
    .split('-')
    .map((word) => ABBREVIATED[word] ?? word)
    .join(' ');
const capital = (text: string) => `${text[0]?.toUpperCase()}${text.slice(1)}`;
const SUBJECTS = Object.fromEntries(
  FORMULA_SUBJECTS.map(({ name }) => [name, words(name)]),
) as Record<string, string>;
const unitOf = printedUnit;
const percent = (ratio: number) => {
  const value = 100 * ratio;
  return `${value > 99 && value < 100 ? Math.floor(value * 10) / 10 : brief(value)} %`;
};
const small = (name: string) => of(name)[0].toLowerCase();
const place = (values: FormulaValues) =>
  own(
    Object.entries(values)
      .map(([name, value]) => `${said(small(name))} ${withUnit(brief(value), of(name)[1])}`)
      .join(', '),
  );

/** Lines such as `A1 = lat` as names with their meaning. */
function legendOf(lines: string): Record<string, string> {
  return Object.fromEntries(
    lines
      .split(/[\n;]/)
      .map((line) => /^\s*([^=:]+?)\s*[=:]\s*(.+?)\s*$/.exec(line))
      .flatMap((found) => (found ? [[found[1] ?? '', found[2] ?? '']] : [])),
  );
}

/** Remarks that begin with a name or number as it was typed. */
const OF_TYPED: readonly string[] = ['name', 'thousands', 'decimal-comma'];

interface Tried {
  readonly formula: string;
  readonly verdict: FormulaVerdict;
  /** Ends of the region by variable. */
  readonly region: Readonly<Record<string, readonly [number, number]>>;
}

function says({ verdict }: Tried): string {
  const { kind, worst, tolerance, withinToleranceRatio, brokenPlaces, firstBroken, places } =
    verdict;
  const unit = unitOf(verdict.unit);
  const limit = withUnit(brief(tolerance), unit);
  if (places + brokenPlaces === 0)
    return 'There is nothing to compare: in this region the satellite is below the horizon everywhere.';
  const off = !worst
    ? ''
    : worst.error === 0
      ? 'It is exact.'
      : `At worst it is off by ${withUnit(brief(worst.error), unit)}, at ${place(worst.values)}.`;
  const broken = firstBroken
    ? `At ${percent(brokenPlaces / (places + brokenPlaces))} of the places it has no value, for instance at ${place(firstBroken)}.`
    : '';
  const diagnosed = verdict.diagnoses.map(({ says: sentence }) => formulaApart(sentence));
  const within = percent(withinToleranceRatio);
  switch (kind) {
    case 'holds':
      return together(`It holds: within ${limit} everywhere in this region.`, off);
    case 'holds-in-part':
      return together(
        `It holds in part: ${within} of the places are within ${limit}.`,
        ...diagnosed,
        off,
        broken,
      );
    case 'holds-once-corrected':
      return together(
        'It is right but for one thing.',
        ...diagnosed,
        `As it stands, ${within} of the places are within ${limit}.`,
        off,
        broken,
      );
    case 'fails':
      return together(`It fails: only ${within} of the places are within ${limit}.`, off, broken);
  }
}

/** The error over two sides. */
function mapOf({ verdict, region }: Tried, map: NonNullable<FormulaVerdict['map']>): Figure {
  const { exact, variables } = formulaSubject(verdict.subject);
  const held = (xValue: number, yValue: number): FormulaValues =>
    Object.fromEntries(
      variables.map(({ name }) => [
        name,
        name === map.x ? xValue : name === map.y ? yValue : (region[name]?.[0] ?? 0),
      ]),
    );
  const rest = variables.filter(
    ({ name }) =>
      name !== map.x && name !== map.y && (region[name]?.[1] ?? 0) > (region[name]?.[0] ?? 0),
  );
  const over = own(rest.map(({ name }) => said(small(name))).join(` ${said('and')} `));
  const { worst } = verdict;
  const unit = unitOf(verdict.unit);
  return errorMap({
    title: `Error of the formula by ${small(map.x)} and ${small(map.y)}${rest.length > 0 ? `, the largest over all values of ${over}` : ''}; the ring is the worst place`,
    x: { label: axis(map.x), values: map.xValues },
    y: { label: axis(map.y), values: map.yValues },
    errors: map.errors.map((row, j) =>
      row.map((error, i) => {
        if (error !== null) return error;
        const answer = exact(held(map.xValues[i] ?? 0, map.yValues[j] ?? 0));
        return answer === null ? 'none' : 'broken';
      }),
    ),
    unit,
    tolerance: verdict.tolerance,
    ...(worst
      ? {
          worst: {
            x: worst.values[map.x] ?? 0,
            y: worst.values[map.y] ?? 0,
            label: withUnit(brief(worst.error), unit),
          },
        }
      : {}),
  });
}

/** Formula and exact answer over the one side that varies. */
function curves({ formula, verdict, region }: Tried): Figure[] {
  const { exact, variables } = formulaSubject(verdict.subject);
  const side = variables.find(({ name }) => (region[name]?.[1] ?? 0) > (region[name]?.[0] ?? 0));
  if (!side) return [];
  const [from, to] = region[side.name] ?? [0, 1];
  const own = compileFormula(
    verdict.read ?? formula,
    variables.map(({ symbol }) => symbol),
  );
  const points = Array.from({ length: 61 }, (_, step) => from + ((to - from) * step) / 60);
  const row = (value: number): FormulaValues =>
    Object.fromEntries(
      variables.flatMap(({ name, symbol }) => {
        const here = name === side.name ? value : (region[name]?.[0] ?? 0);
        return [
          [name, here],
          [symbol, here],
        ];
      }),
    );
  const right = points.map((x) => ({ x, y: exact(row(x)) ?? Number.NaN }));
  const typed = points.map((x) => ({ x, y: own(row(x)) }));
  const ends = right.map(({ y }) => y).filter(Number.isFinite);
  const span = Math.max(...ends) - Math.min(...ends) || 1;
  const shown = typed.filter(
    ({ y }) => y > Math.min(...ends) - 0.5 * span && y < Math.max(...ends) + 0.5 * span,
  );
  return [
    linePlot({
      title: `The formula and the exact answer by ${small(side.name)}`,
      x: { label: of(side.name)[0], unit: of(side.name)[1] },
      y: { label: capital(words(verdict.subject)), unit: unitOf(verdict.unit) },
      series: [
        { label: 'exact', points: right },
        { label: 'the formula', points: shown },
      ],
    }),
  ];
}

export default defineExample({
  usual: ['subject', 'formula', 'legend'],
  inputs: {
    subject: choice({
      label: 'What the formula gives',
      options: SUBJECTS,
      value: 'azimuth',
      hint: 'Its variables and their short names are listed under the answer.',
    }),
    formula: text({
      label: 'The formula',
      lines: 3,
      value: '180 - atan(tan(dlon) / sin(lat))',
      hint: 'As you have it: from a spreadsheet, a calculator, a program, a hand-out or LaTeX. How it was read is told under the answer.',
    }),
    legend: text({
      label: 'What its names mean',
      lines: 2,
      value: '',
      hint: 'Only for names that are not known, one on a line: A1 = lat',
    }),
    ...ENDS,
    tolerance: optionalNumber({
      label: 'Tolerance',
      step: 0.1,
      min: 0,
      empty: 'usual',
      hint: 'In the unit of the answer.',
    }),
  },
  presets: {
    label: 'Rules of thumb in use',
    own: 'A formula of my own',
    sets: RULES_OF_THUMB.map(({ name, subject, formula }) => ({
      label: `${words(subject)}: ${words(name)}`,
      values: { subject, formula },
    })),
  },
  compute: ({ subject, formula, legend, tolerance, ...ends }): Tried => {
    const region = Object.fromEntries(
      formulaSubject(subject).variables.map(({ name, from, to }) => [
        name,
        [endOf(ends, `${name}From`) ?? from, endOf(ends, `${name}To`) ?? to] as const,
      ]),
    );
    const trial = { subject, formula, legend: legendOf(legend), region };
    const verdict = tryFormula(tolerance === undefined ? trial : { ...trial, tolerance });
    return { formula, region, verdict };
  },
  view: (tried, { subject, formula }) => {
    const { verdict, region } = tried;
    const { meaning, variables } = formulaSubject(subject);
    const unit = unitOf(verdict.unit);
    const rule = RULES_OF_THUMB.find(
      (each) => each.subject === subject && each.formula === formula.trim(),
    );
    const { worst } = verdict;
    return {
      says: says(tried),
      outputs: [
        {
          label: 'Largest error',
          value: worst ? brief(worst.error) : 'none found',
          unit: worst ? unit : '',
          main: true,
        },
        {
          label: 'Within tolerance',
          value: percent(verdict.withinToleranceRatio),
          note: `of ${verdict.places + verdict.brokenPlaces} places, within ${withUnit(brief(verdict.tolerance), unit)}`,
          main: true,
        },
        ...(worst && worst.error > 0
          ? [
              { label: 'Worst place', value: place(worst.values) },
              {
                label: 'There the formula says',
                value: brief(worst.formula),
                unit,
                note: `exact: ${withUnit(brief(worst.exact), unit)}`,
              },
            ]
          : []),
        { label: 'Root mean square error', value: brief(verdict.rootMeanSquare), unit },
        ...(verdict.brokenPlaces > 0
          ? [{ label: 'Places without a value', value: verdict.brokenPlaces, digits: 0 }]
          : []),
      ],
      notes: [
        ...(rule ? [together(rule.told, '(Common practice of the trade.)')] : []),
        `Read as: ${own(verdict.read ?? formula)}`,
        ...verdict.remarks.map(({ code, says: sentence }) =>
          OF_TYPED.includes(code) ? formulaApart(sentence) : sentence,
        ),
        ...verdict.diagnoses.flatMap(({ corrected, area }) =>
          corrected === null
            ? []
            : [`${area === null ? 'It holds as' : 'Corrected'}: ${own(corrected)}`],
        ),
      ],
      figures: verdict.map ? [mapOf(tried, verdict.map)] : curves(tried),
      tables: [
        ...(verdict.areas.length > 0
          ? [
              {
                caption: 'By area',
                columns: ['Area', 'Within', `Largest error / ${unit}`],
                rows: verdict.areas.map((area) => [
                  area.area,
                  percent(area.withinToleranceRatio),
                  area.places > 0 ? brief(area.largestError) : 'no value',
                ]),
              },
            ]
          : []),
        {
          caption: `Compared with: ${meaning}`,
          columns: ['Variable', 'From', 'To'],
          rows: variables.map((variable) => [
            own(`${variable.symbol}: ${said(variable.meaning)}`),
            brief(region[variable.name]?.[0] ?? 0),
            brief(region[variable.name]?.[1] ?? 0),
          ]),
        },
      ],
    };
  },
  fieldOf: (parameter) => {
    const side = /^region\.(\w+)(?:\[([01])\])?$/.exec(parameter);
    return side ? `${side[1]}${side[2] === '1' ? 'To' : 'From'}` : undefined;
  },
  code: ({ subject, formula, legend, tolerance, ...ends }) => {
    const region = formulaSubject(subject).variables.flatMap(({ name, from, to }) => {
      const [low, high] = [endOf(ends, `${name}From`), endOf(ends, `${name}To`)];
      return low === undefined && high === undefined ? [] : [[name, [low ?? from, high ?? to]]];
    });
    const trial = {
      subject,
      formula: formula.trim().replace(/\s+/g, ' '),
      ...(legend.trim() === '' ? {} : { legend: legendOf(legend) }),
      ...(region.length > 0 ? { region: Object.fromEntries(region) } : {}),
      ...(tolerance === undefined ? {} : { tolerance }),
    };
    return `import { tryFormula } from 'slantpath/teaching';

const verdict = tryFormula(${literal(trial)});
console.log(verdict.kind, verdict.worst, verdict.areas);
`;
  },
});
