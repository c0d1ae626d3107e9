import { readFileSync } from 'node:fs';
import { DomainError } from 'slantpath';
import { tryFormula } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';

const rows = readFileSync(new URL('../reference/teaching/formulas.tsv', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'))
  .map((line) => {
    const [subject = '', formula = '', legend = '', kind = '', faults = ''] = line.split('\t');
    const names = legend
      .split(', ')
      .filter(Boolean)
      .map((each) => each.split(': '));
    return { subject, formula, legend: Object.fromEntries(names), kind, faults: faults.split(',') };
  });

describe('formulas as they are handed around', () => {
  test('there are enough of them, right ones and wrong ones', () => {
    expect(rows.length).toBeGreaterThan(120);
    expect(rows.filter(({ kind }) => kind === 'holds').length).toBeGreaterThan(50);
  });

  test.each(rows.map((row) => [`${row.subject}: ${row.formula}`, row] as const))(
    '%s',
    (_name, row) => {
      const { subject, formula, legend, kind, faults } = row;
      const verdict = tryFormula({ subject, formula, legend });
      const [first] = verdict.diagnoses;
      expect(verdict.kind).toBe(kind);
      if (kind === 'holds') expect(verdict.diagnoses).toEqual([]);
      if (faults[0] !== '-') expect(faults).toContain(first?.fault);
      for (const { corrected, area } of verdict.diagnoses)
        if (corrected !== null && area === null && verdict.diagnoses.length === 1)
          expect(tryFormula({ subject, formula: corrected }).withinToleranceRatio).toBeGreaterThan(
            0.95,
          );
    },
  );
});

describe('what cannot be read is refused in words', () => {
  test.each([
    ['sin(', 'at its end a number, a name or a bracket is expected'],
    ['(lat + dlon', "or the closing bracket ')' is expected"],
    ['lat + * dlon', "after 'lat +' (character 7) a number, a name or a bracket is expected"],
    ['lat + foo', "'foo' is unknown; say what it stands for"],
    ['lat + 3 4', 'an operator is expected'],
    ['sin', "what 'sin' is taken of is expected"],
    ['sin(lat, dlon)', 'one angle or ratio in brackets is expected'],
    ['atan2(lat)', 'two sides in brackets is expected'],
    ['lat # 2', "after 'lat' (character 5) a number, a name, an operator or a bracket is expected"],
    ['lat = 3', 'lat on the left is a variable of the trial'],
    ['lat)', 'is there one bracket too many?'],
  ])('%s', (formula, says) => {
    let message = '';
    try {
      tryFormula({ subject: 'elevation', formula });
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      message = (error as Error).message;
    }
    expect(message).toContain(says);
    expect(message).not.toMatch(/Unexpected|token|Expected|Identifier|Literal|Compound/);
  });
});

test('what is ambiguous is told', () => {
  const told = (subject: string, formula: string) =>
    tryFormula({ subject, formula }).remarks.map(({ code }) => code);
  expect(told('free-space-loss', '92,45 + 20 log(f d)')).toEqual(
    expect.arrayContaining(['decimal-comma', 'logarithm']),
  );
  expect(
    told('azimuth', '=MOD(DEGREES(ATAN2(-SIN(RADIANS(lat)),TAN(RADIANS(dlon)))),360)'),
  ).toEqual(expect.arrayContaining(['angles', 'arctangent-order']));
  expect(told('beamwidth', '21/fD')).toContain('product-after-slash');
  expect(told('slant-range', '35,786 + 0 lat')).toContain('thousands');
  expect(told('noise-temperature', '-nf^2')).toContain('minus-before-power');
  expect(told('skew', '-atan(sin(λ)/tan(L))')).toContain('name');
});
