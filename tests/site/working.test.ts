/** The working beside an example ends in a figure that the page shows. */

import { workedSolution } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import acceptOrNot from '../../site/src/examples/accept-or-not.js';
import bothAxesInTurn from '../../site/src/examples/both-axes-in-turn.js';
import findThePeak from '../../site/src/examples/find-the-peak.js';
import howMuchRainMargin from '../../site/src/examples/how-much-rain-margin.js';
import levelsAtEveryOutlet from '../../site/src/examples/levels-at-every-outlet.js';
import whatIsWrongHere from '../../site/src/examples/what-is-wrong-here.js';
import whereIsTheNull from '../../site/src/examples/where-is-the-null.js';
import type { Example, View } from '../../site/src/lib/example.js';
import type { Inputs, Values } from '../../site/src/lib/inputs/inputs.js';
import { defaultsOf, readValues } from '../../site/src/lib/inputs/state.js';
import { shown } from '../../site/src/lib/language/text.js';
import { solutionsOf } from '../../site/src/lib/working.js';

/** A figure of the page: an output by its label, or a cell of a table by its first cell and column. */
type Place = { readonly output: string } | { readonly row: string; readonly column: number };

function printedAt({ outputs, tables }: View, place: Place): string | undefined {
  if ('output' in place) {
    const output = outputs.find(({ label }) => label === place.output);
    return typeof output?.value === 'number' ? shown(output.value, output.digits) : output?.value;
  }
  return tables?.flatMap(({ rows }) => rows).find(([head]) => head === place.row)?.[place.column];
}

/** Plans of the working, the values of their answers, and what the page prints. */
function worked<I extends Inputs, R>(example: Example<I, R>, changes: Partial<Values<I>> = {}) {
  const values = { ...readValues(example.inputs, defaultsOf(example.inputs)), ...changes };
  const result = example.compute(values);
  const asked = example.working?.(values, result) ?? [];
  const solutions = solutionsOf(workedSolution, asked);
  // None may be left out for givens outside the plan.
  expect(solutions.length).toBe(asked.length);
  const view = example.view(result, values);
  const solved = (plan: string) => {
    const solution = solutions.filter(({ name }) => name === plan).at(-1);
    if (solution?.kind !== 'solved') throw new Error(`${plan}: not solved`);
    return solution;
  };
  return {
    plans: asked.map(({ plan }) => plan),
    answer: (plan: string) => solved(plan).answer.value,
    step: (plan: string, symbol: string) =>
      solved(plan).steps.find((step) => step.symbol === symbol)?.value ?? Number.NaN,
    printed: (place: Place) => printedAt(view, place),
  };
}

/** Holds a value of the working to the page's figure, to the digits printed there. */
function expectShown(value: number, printed: string | undefined): void {
  expect(printed).toBeDefined();
  const digits = /[.]/.test(printed ?? '') ? (printed?.split('.')[1]?.length ?? 0) : 0;
  expect(shown(value, digits)).toBe(printed);
}

describe('find the peak', () => {
  test('says nothing before the lobe is shown', () => {
    expect(worked(findThePeak).plans).toEqual([]);
    expect(worked(findThePeak, { hint: true }).plans).toEqual([]);
  });
  test('two notes: the peak of the known lobe, and the loss where the adjuster stands', () => {
    const page = worked(findThePeak, { shown: true });
    expect(page.plans).toEqual([
      'signal-over-noise-floor',
      'signal-over-noise-floor',
      'peak-from-two-flanks',
      'pointing-loss',
    ]);
    expectShown(
      page.answer('peak-from-two-flanks'),
      page.printed({ row: 'a lobe of the known width', column: 1 }),
    );
    expectShown(page.answer('pointing-loss'), page.printed({ output: 'Loss where you stand' }));
  });
  test('three notes equally spaced: the peak of the lobe of free width', () => {
    const notes = [
      { placeTurns: 0.5, levelDbm: -42 },
      { placeTurns: 1.5, levelDbm: -38.5 },
      { placeTurns: 2.5, levelDbm: -40 },
    ];
    const page = worked(findThePeak, { shown: true, notes });
    expect(page.plans.slice(3)).toEqual(['peak-from-three-readings', 'pointing-loss']);
    expectShown(
      page.answer('peak-from-three-readings'),
      page.printed({ row: 'a lobe of free width', column: 1 }),
    );
  });
  test('no notes, or more than it has a plan for: the loss alone', () => {
    expect(worked(findThePeak, { shown: true, notes: [] }).plans).toEqual(['pointing-loss']);
  });
});

describe('both axes in turn', () => {
  test('coupling, loss now, loss after both', () => {
    const page = worked(bothAxesInTurn);
    expect(page.plans).toEqual(['axis-coupling', 'loss-after-both-axes']);
    expectShown(
      page.answer('axis-coupling'),
      page.printed({ output: 'Loss after each further peaking' }),
    );
    expectShown(page.step('axis-coupling', 'c'), page.printed({ output: 'Coupling of the axes' }));
    expectShown(page.step('loss-after-both-axes', 'L0'), page.printed({ output: 'Loss now' }));
    expectShown(
      page.answer('loss-after-both-axes'),
      page.printed({ row: '2. elevation', column: 3 }),
    );
  });
  test('too few readings, no working', () => {
    expect(
      worked(bothAxesInTurn, { readings: [{ firstDeg: 0, secondDeg: 0, levelDbm: -40 }] }).plans,
    ).toEqual([]);
  });
});

describe('where is the null', () => {
  test.each([
    {},
    { firstDeg: 30, secondDeg: -11.5, levelStepDb: 0.5, standardDeviationDb: 0.3 },
    { firstDeg: -80, secondDeg: 80, levelStepDb: 3, standardDeviationDb: 3 },
    { levelStepDb: 0, standardDeviationDb: 0 },
  ])('%j', (changes) => {
    const page = worked(whereIsTheNull, changes);
    expectShown(page.answer('null-half-way'), page.printed({ output: 'Null, bracketed' }));
    expectShown(page.step('null-isolation', 'd'), page.printed({ output: 'Largest error' }));
    expectShown(page.answer('null-isolation'), page.printed({ output: 'Isolation left at least' }));
  });
});

describe('what is wrong here', () => {
  test.each([
    {},
    { leanDeg: 1.1 },
    { leanDeg: 0.2 },
    { riseDb: 4, rain: 'unknown' as const },
    { segment: 'hall' as const, connector: 'yes' as const },
  ])('%j', (changes) => {
    const page = worked(whatIsWrongHere, changes);
    expectShown(page.answer('two-suspects'), page.printed({ output: 'Probability' }));
  });
  test('the missing level as a pointing error, as far as pointing is in question', () => {
    const page = worked(whatIsWrongHere);
    expect(page.plans).toEqual(['beamwidth', 'offset-from-loss', 'two-suspects']);
  });
  test('a hidden answer stays hidden', () => {
    expect(worked(whatIsWrongHere, { hide: true }).plans).toEqual([]);
  });
});

describe('how much rain margin', () => {
  const riverine = { latitudeDeg: -0.4, longitudeDeg: 102, heightM: 35 };
  const school = { latitudeDeg: -30, longitudeDeg: 25, heightM: 1100 };
  test.each([
    {},
    { frequencyGHz: 12, tiltDeg: 0, exceededPercent: 0.3 },
    { frequencyGHz: 30.5, tiltDeg: 90, rainRate001MmPerH: 60 },
    { station: riverine, orbitalLongitudeDeg: 98, frequencyGHz: 14.2, tiltDeg: 10 },
    { station: riverine, orbitalLongitudeDeg: 170, exceededPercent: 2 },
    { station: school, orbitalLongitudeDeg: -25, frequencyGHz: 11 },
  ])('%j', (changes) => {
    const page = worked(howMuchRainMargin, changes);
    expect(page.plans).toEqual(['elevation', 'rain-attenuation', 'total-attenuation']);
    expectShown(page.answer('rain-attenuation'), page.printed({ output: 'Rain' }));
    expectShown(page.answer('total-attenuation'), page.printed({ output: 'Margin needed' }));
  });
  test('rarely enough for no rain: the sum alone', () => {
    const page = worked(howMuchRainMargin, { exceededPercent: 10 });
    expect(page.plans).toEqual(['elevation', 'total-attenuation']);
    expectShown(page.answer('total-attenuation'), page.printed({ output: 'Margin needed' }));
  });
});

describe('levels at every outlet', () => {
  const taps = `head: amplifier 12 6
  lead: series-6 20
    eq: equaliser 4 0.5
      tap 1: tap 14 1.8
        drop 1: series-6 20
          class 1: outlet 1
        *drop 2: series-7 35
          class 2: outlet 1.5`;
  test.each([{}, { temperatureC: 45, band: 'wide' as const }, { parts: taps }])('%j', (changes) => {
    const page = worked(levelsAtEveryOutlet, changes);
    expectShown(page.answer('outlet-budget'), page.printed({ output: 'Lowest level' }));
    expect(page.plans.at(-1)).toBe('outlet-budget');
    expect(page.plans.filter((plan) => plan === 'cable-run').length).toBeGreaterThan(0);
  });
});

describe('accept or not', () => {
  test.each([
    {},
    { readings: [{ reading: 47.9 }] },
    { readings: [{ reading: 47.2 }, { reading: 46.8 }] },
    { rule: 'guard-band' as const, guardBandRatio: 0.8 },
    { rule: 'simple' as const, upperLimit: undefined },
  ])('%j', (changes) => {
    const page = worked(acceptOrNot, changes);
    expectShown(page.step('guard-band', 'w'), page.printed({ output: 'Guard band' }));
    const last = page.plans.at(-1) ?? '';
    expect(last).toMatch(/^conformity-/);
    expectShown(page.answer(last), page.printed({ output: 'Probability that it conforms' }));
  });
  test('three readings: mean and uncertainty too', () => {
    const page = worked(acceptOrNot);
    expectShown(page.step('mean-of-three-readings', 'm'), page.printed({ output: 'Mean' }));
    expectShown(
      page.answer('mean-of-three-readings'),
      page.printed({ output: 'Standard uncertainty' }),
    );
  });
  test('an upper limit that counts, or no lower one: no probability by one limit', () => {
    expect(worked(acceptOrNot, { upperLimit: 49 }).plans.at(-1)).toBe('guard-band');
    expect(worked(acceptOrNot, { lowerLimit: undefined }).plans).toEqual([
      'mean-of-three-readings',
    ]);
  });
});
