import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  type CompiledFormula,
  compileFormula,
  FORMULA_SUBJECTS,
  formulaSubject,
  RULES_OF_THUMB,
  tryFormula,
} from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';

describe('expressions', () => {
  test.each([
    ['1 + 2 * 3', 7],
    ['2^3^2', 512],
    ['-(2^2)', -4],
    ['10^(-x/10)', 10 ** -0.3],
    ['sin(30) + cos(60)', 1],
    ['atan2(1, -1)', 135],
    ['sinRad(pi/2)', 1],
    ['log(1000) + ln(e)', 4],
    ['mod(-10, 360)', 350],
    // Tables of the normal distribution and of Student's t: 95 % points.
    ['normal(0)', 0.5],
    ['normal(1.6448536269514722)', 0.95],
    ['student(6.313751514675037, 1)', 0.95],
    ['student(4.302652729749462, 2)', 0.975],
    ['70 × 0.3 · x − 1', 62],
    // Products without a sign, a decimal comma, and a minus before a power as on paper.
    ['2x', 6],
    ['x(3)', 9],
    ['3,5 * x', 10.5],
    ['-x^2', -9],
    ['√(x+1) x²', 18],
    ['=-x^2', 9],
    ['12° 30′', 12.5],
    ['|1 − x|', 2],
  ])('%s is %d', (text, value) => {
    expect(compileFormula(text, ['x'])({ x: 3 })).toBeCloseTo(value, 12);
  });

  test.each([
    'constructor',
    'x.constructor',
    'x["constructor"]("return 1")()',
    'this',
    'globalThis',
    'process.exit(1)',
    'import("fs")',
    'eval("1")',
    'Function("return 1")()',
    'sin.constructor(1)',
    '(() => 1)()',
    '`1`',
    '"a"',
    'x = 3',
    'x; x',
    'x, x',
    '{a: 1}',
    'x ? 1 : 2',
    'x && 1',
    'x | 1',
    '!x',
    '~x',
    'x++',
    '__proto__',
    'toString(1)',
    'hasOwnProperty(1)',
    'valueOf()',
    'true',
    'null',
    'new Date()',
    '1 2',
    'sin',
    'sin()',
    'sin(1, 2)',
    'y',
    '(',
    '',
    '   ',
    '1'.repeat(401),
    `${'('.repeat(200)}x${')'.repeat(199)}`,
    '😀',
    '\u0000',
    '1e999',
  ])('refuses %j', (text) => {
    expect(() => compileFormula(text, ['x'])).toThrow(DomainError);
  });

  test('any text is either arithmetic or refused with a DomainError, and touches nothing', () => {
    const words = fc.constantFrom(
      'x',
      '1',
      '.5',
      '+',
      '-',
      '*',
      '/',
      '^',
      '(',
      ')',
      'sin(',
      'log(',
      ',',
      '.',
      '[',
      ']',
      'this',
      '=',
      '"',
      '`',
      '$',
      '{',
      '}',
      '=>',
      'constructor',
      '__proto__',
      ';',
      '!',
      '?',
      ':',
      ' ',
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 14 }), (parts) => {
        try {
          expect(typeof compileFormula(parts.join(''), ['x'])({ x: 2 })).toBe('number');
        } catch (error) {
          expect(error).toBeInstanceOf(DomainError);
        }
      }),
      { numRuns: runs(5000), seed: 4 },
    );
    expect(({} as Record<string, unknown>)['x']).toBeUndefined();
  });

  test('names the likely slip', () => {
    const slip = (text: string) => {
      try {
        compileFormula(text, ['x']);
      } catch (error) {
        if (error instanceof DomainError) return error.slip;
      }
      return undefined;
    };
    expect(slip('sin')).toContain('brackets');
    expect(slip('1 2')).toContain('missing');
    expect(slip('x)')).toContain('one bracket too many');
    expect(slip('y + 1')).toContain('say what it stands for');
  });
});

describe('a formula that is exact', () => {
  test.each(FORMULA_SUBJECTS.map((subject) => [subject.name, subject] as const))(
    '%s holds against itself everywhere with no error',
    (_name, subject) => {
      const exact: CompiledFormula = (values) => subject.exact(values) ?? Number.NaN;
      const verdict = tryFormula({ subject, formula: exact });
      expect(verdict).toMatchObject({ kind: 'holds', brokenPlaces: 0, withinToleranceRatio: 1 });
      expect(verdict.worst?.error).toBe(0);
      expect(verdict.places).toBeGreaterThan(1000);
    },
  );
});

describe('ten formulas broken on purpose', () => {
  // The exact function with a bump of known height at a known place: the worst case is the planted one.
  const planted: readonly (readonly [
    subject: string,
    place: Record<string, number>,
    width: Record<string, number>,
    height: number,
  ])[] = [
    [
      'elevation',
      { latitudeDeg: 33.3, longitudeDifferenceDeg: 17.7 },
      { latitudeDeg: 3, longitudeDifferenceDeg: 3 },
      2,
    ],
    [
      'elevation',
      { latitudeDeg: -55, longitudeDifferenceDeg: -41.2 },
      { latitudeDeg: 2, longitudeDifferenceDeg: 4 },
      -5,
    ],
    [
      'azimuth',
      { latitudeDeg: 8.1, longitudeDifferenceDeg: -30.5 },
      { latitudeDeg: 4, longitudeDifferenceDeg: 2 },
      11,
    ],
    [
      'skew',
      { latitudeDeg: 61.9, longitudeDifferenceDeg: 12.3 },
      { latitudeDeg: 5, longitudeDifferenceDeg: 5 },
      -25,
    ],
    [
      'slant-range',
      { latitudeDeg: 47, longitudeDifferenceDeg: 0.4 },
      { latitudeDeg: 2.5, longitudeDifferenceDeg: 2.5 },
      300,
    ],
    [
      'beamwidth',
      { diameterM: 1.234, frequencyGHz: 11.7 },
      { diameterM: 0.1, frequencyGHz: 1 },
      0.7,
    ],
    [
      'antenna-gain',
      { diameterM: 0.9, frequencyGHz: 20.2 },
      { diameterM: 0.1, frequencyGHz: 1.5 },
      -3,
    ],
    [
      'pointing-loss',
      { offsetDeg: 0.31, diameterM: 0.97, frequencyGHz: 14.2 },
      { offsetDeg: 0.1, diameterM: 0.3, frequencyGHz: 5 },
      4,
    ],
    [
      'rain-attenuation',
      { rainRate001MmPerH: 42, frequencyGHz: 19.7, elevationDeg: 33 },
      { rainRate001MmPerH: 15, frequencyGHz: 4, elevationDeg: 9 },
      9,
    ],
    ['noise-temperature', { noiseFigureDb: 0.777 }, { noiseFigureDb: 0.02 }, 30],
  ];
  test.each(planted)('%s at %j', (name, place, width, height) => {
    const subject = formulaSubject(name);
    const formula: CompiledFormula = (values) => {
      const exact = subject.exact(values);
      if (exact === null) return Number.NaN;
      let square = 0;
      for (const [key, middle] of Object.entries(place))
        square += (((values[key] as number) - middle) / (width[key] as number)) ** 2;
      return exact + height * Math.exp(-square);
    };
    const { worst } = tryFormula({ subject, formula });
    expect(Math.abs((worst?.error ?? 0) / Math.abs(height) - 1)).toBeLessThan(0.01);
    for (const [key, middle] of Object.entries(place)) {
      const side = subject.variables.find((variable) => variable.name === key);
      const span = (side?.to ?? 0) - (side?.from ?? 0);
      expect(Math.abs((worst?.values[key] ?? 0) - middle) / span).toBeLessThan(0.01);
    }
  });
});

describe('verdicts', () => {
  test('the one-argument arctangent breaks in the other hemisphere, and the trial says so', () => {
    const verdict = tryFormula({
      subject: 'azimuth',
      formula: '180 + atan(tan(-dlon) / sin(lat))',
    });
    expect(verdict.kind).toBe('holds-in-part');
    const share = (area: string) =>
      verdict.areas.find((a) => a.area === area)?.withinToleranceRatio;
    expect(share('northern hemisphere')).toBe(1);
    expect(share('southern hemisphere')).toBe(0);
  });

  test('a line has no head: +90 and -90 of skew are one', () => {
    const verdict = tryFormula({ subject: 'skew', formula: 'atan(-sin(dlon) / tan(lat))' });
    expect(verdict.worst?.error).toBeLessThan(0.4);
  });

  test('places without a value are counted and shown', () => {
    const verdict = tryFormula({ subject: 'beamwidth', formula: 'sqrt(1 - d) * 0' });
    expect(verdict.brokenPlaces).toBeGreaterThan(0);
    expect(verdict.firstBroken?.['diameterM']).toBeGreaterThan(1);
    expect(verdict.kind).not.toBe('holds');
  });

  test('the map has a value where both answers exist', () => {
    const { map } = tryFormula({ subject: 'elevation', formula: '90 - abs(lat)' });
    expect(map?.errors.length).toBe(map?.yValues.length);
    expect(map?.errors[0]?.length).toBe(map?.xValues.length);
    expect(map?.errors.flat().some((error) => error !== null && error > 10)).toBe(true);
  });

  test.each([
    [{ subject: 'altitude', formula: 'lat' }, 'subject'],
    [{ subject: 'elevation', formula: 'lat', region: { lat: [60, 30] } }, 'region.latitudeDeg'],
    [{ subject: 'elevation', formula: 'lat', region: { lat: [0, 91] } }, 'region.latitudeDeg[1]'],
    [{ subject: 'elevation', formula: 'lat', region: { height: 3 } }, 'region.height'],
    [{ subject: 'elevation', formula: 'lat', tolerance: 0 }, 'tolerance'],
    [{ subject: 'elevation', formula: 7 as unknown as string }, 'formula'],
  ] as const)('refuses %j', (trial, parameter) => {
    expect(() => tryFormula(trial as never)).toThrow(expect.objectContaining({ parameter }));
  });
});

test('every rule of thumb gets its verdict, and not all of them hold', () => {
  const verdicts = RULES_OF_THUMB.map((rule) => {
    const { kind, worst, withinToleranceRatio } = tryFormula(rule);
    console.log(
      `${rule.name}: ${kind}, worst ${worst?.error.toPrecision(3)}, within ${(100 * withinToleranceRatio).toFixed(1)} %`,
    );
    return kind;
  });
  expect(verdicts.filter((kind) => kind === 'holds').length).toBeGreaterThan(5);
  expect(verdicts).toContain('holds-in-part');
});
