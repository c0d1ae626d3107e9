/** Every text of a translated example has words in its language, whatever is put in. */

import { describe, expect, test } from 'vitest';
import type { Example } from '../../site/src/lib/example.js';
import { typedApart } from '../../site/src/lib/formulaApart.js';
import { renderHand, stepsOf } from '../../site/src/lib/hand.js';
import type { Input, Inputs } from '../../site/src/lib/inputs/inputs.js';
import { PRESETS } from '../../site/src/lib/inputs/places.js';
import {
  defaultsOf,
  fieldsOf,
  type Raw,
  rawOfValues,
  readValues,
} from '../../site/src/lib/inputs/state.js';
import {
  ENGLISH,
  finderOf,
  inLanguage,
  type Language,
  said,
} from '../../site/src/lib/language/language.js';
import { languageFor } from '../../site/src/lib/language/languages.js';
import { compassWords, longitudeText, shown, withUnit } from '../../site/src/lib/language/text.js';
import { renderForm, renderTop, renderView } from '../../site/src/lib/render.js';
import { renderWorkings, solutionsOf } from '../../site/src/lib/working.js';
import { DomainError } from '../../src/index.js';
import { SOLUTION_PLANS, workedSolution } from '../../src/teaching/index.js';
import { FULL_RUNS, runs } from '../support/runs.js';

const definitions = import.meta.glob<{ default: Example }>('../../site/src/examples/*.ts');
const pages = import.meta.glob('../../docs/*/examples/*.mdx');

/** Other values of one input that are worth a look. */
function variantsOf(name: string, input: Input): Raw[] {
  switch (input.kind) {
    case 'number':
    case 'optional-number':
      return [input.min, input.max, (input.value ?? 1) + input.step, -1e9, input.value]
        .filter((value) => value !== undefined)
        .map((value) => ({ [name]: String(value) }))
        .concat({ [name]: 'x' });
    case 'choice':
      return Object.keys(input.options).map((option) => ({ [name]: option }));
    case 'toggle':
      return [{ [name]: 'yes' }, { [name]: 'no' }];
    case 'several':
      return [{ [name]: '' }];
    case 'text':
      return [{ [name]: '' }, { [name]: '?' }];
    case 'place':
      return [...PRESETS, { latitudeDeg: 0, longitudeDeg: 16.4, heightM: 0 }].map((place) => {
        const [latitude = '', longitude = '', height = ''] = fieldsOf(name, input);
        return {
          [latitude]: String(place.latitudeDeg),
          [longitude]: String(place.longitudeDeg),
          [height]: String(place.heightM),
        };
      });
    case 'rows':
      return [{ [name]: '' }];
  }
}

/** States of the form: each input changed alone, each set, each action, and many inputs changed at once. */
function statesOf(example: Example): Raw[] {
  const defaults = defaultsOf(example.inputs);
  const inputs = Object.entries(example.inputs);
  const variants = inputs.map(([name, input]) => variantsOf(name, input));
  /** Each input changed alone, of those that a state shows. */
  const changedIn = (state: Raw) =>
    inputs.flatMap(([, input], index) => {
      const only = 'onlyFor' in input ? input.onlyFor : undefined;
      const shows = !only || only.values.includes({ ...defaults, ...state }[only.choice] ?? '');
      return shows ? (variants[index] ?? []) : [];
    });
  const alone = changedIn({});
  // Where not everything is run, every eleventh: the next example meets the others' words.
  const some = FULL_RUNS ? alone : alone.filter((_, index) => index % 11 === alone.length % 11);
  const sets = (example.presets?.sets ?? []).map(({ values }) =>
    rawOfValues(example.inputs, values),
  );
  const values = readValues(example.inputs, defaults);
  const actions = (example.actions ?? []).map(({ change }) =>
    rawOfValues(example.inputs, change(values)),
  );
  let seed = 7;
  const chance = (below: number) => {
    seed = (seed * 16807) % 2147483647;
    return seed % below;
  };
  const mixed = Array.from({ length: runs(60, 1) }, () =>
    Object.assign(
      {},
      ...variants.map((some) => (chance(3) === 0 ? some[chance(some.length)] : undefined)),
    ),
  ) as Raw[];
  const inSets = sets.flatMap((set) => changedIn(set).map((one) => ({ ...set, ...one })));
  // An example with many sets and fields would otherwise take longer than all others together.
  const step = Math.max(FULL_RUNS ? 7 : 53, Math.ceil(inSets.length / runs(300, 15)));
  return [
    {},
    ...some,
    ...sets,
    ...actions,
    ...inSets.filter((_, index) => index % step === 0),
    ...mixed,
  ].map((state) => ({ ...defaults, ...state }));
}

/** Draws everything that an example shows for a state. */
function draw(example: Example<Inputs>, raw: Raw, language: Language): void {
  try {
    const values = readValues(example.inputs, raw);
    const result = example.compute(values);
    const view = example.view(result, values);
    renderView(language.words, view).join('');
    renderTop(language.words, view);
    const solutions = solutionsOf(workedSolution, example.working?.(values, result) ?? []);
    renderWorkings(language.words, solutions);
    renderHand(
      [...stepsOf(solutions), ...(example.hand?.(values, result) ?? [])],
      example.handWaits,
    );
  } catch (error) {
    // An example never hands over a field that the library does not know.
    if (!(error instanceof DomainError) || error.code === 'unknown-field') throw error;
    said(typedApart(error.message).replace(error.parameter, 'X'));
  }
}

const translated = Object.keys(pages).map((path) => {
  const [name = '', , code = ''] = path.replace('.mdx', '').split('/').reverse();
  return { code, name };
});

describe('translated examples', () => {
  test.each(translated)('$code: $name', async ({ code, name }) => {
    const load = definitions[`../../site/src/examples/${name}.ts`];
    if (!load) throw new Error(`there is no example ${name}`);
    const example = (await load()).default;
    const language = await languageFor(code, name, true);
    expect(language.code).toBe(code);
    const missing = new Set<string>();
    inLanguage(
      language,
      () => {
        const { inputs, actions, presets, usual } = example;
        renderForm(language.words, name, inputs, defaultsOf(inputs), actions, presets, usual);
        for (const raw of statesOf(example)) draw(example, raw, language);
      },
      missing,
    );
    expect([...missing].slice(0, 200)).toEqual([]);
  });
});

/** Givens of a plan from its draws, and from far outside of them, where some have no answer. */
function givensOf({ givens }: (typeof SOLUTION_PLANS)[number]): Record<string, number>[] {
  let seed = 11;
  const chance = () => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  };
  return Array.from({ length: runs(400, 12) }, (_, index) =>
    Object.fromEntries(
      givens.map(({ name, draw: { from, to } }) => {
        const far = index > 1 && chance() < 0.5 ? 2 * (to - from) : 0;
        const value = Math.round(from - far + chance() * (to - from + 2 * far));
        // Once with nothing but zeros: straight overhead, no way between two places.
        return [name, index === 0 && !(from > 0) ? 0 : value];
      }),
    ),
  );
}

describe('translated workings', () => {
  const codes = Object.keys(import.meta.glob('../../site/src/words/*/working.ts')).map(
    (path) => path.split('/').at(-2) ?? '',
  );
  test.each(codes)('%s: every plan', async (code) => {
    const language = await languageFor(code, 'where-is-the-satellite', true);
    expect(language.code).toBe(code);
    const missing = new Set<string>();
    const reasons = new Set<string>();
    const draw = () => {
      for (const plan of SOLUTION_PLANS) {
        for (const { meaning, unit } of [...plan.givens, ...plan.constants, ...plan.steps])
          for (const text of [meaning, unit === 'deg' ? '°' : unit]) said(text);
        for (const givens of givensOf(plan)) {
          const solutions = solutionsOf(workedSolution, [{ plan: plan.name, givens }]);
          renderWorkings(language.words, solutions);
          for (const solution of solutions)
            if (solution.kind === 'no-answer') reasons.add(solution.reason);
        }
      }
    };
    inLanguage(language, draw, missing);
    expect([...missing]).toEqual([]);

    expect(reasons.size).toBeGreaterThanOrEqual(FULL_RUNS ? 12 : 8);
  });
});

describe('a language', () => {
  const find = finderOf({
    'The slot at {} is {}.': 'Die Position {} ist {}.',
    'From {} to {}': 'Nach {2}, von {1}',
    'from {} or below': 'ab {} oder darunter',
    east: 'Ost',
    E: 'O',
  });
  const language: Language = { ...ENGLISH, code: 'de', decimal: ',', find };
  const speak = <T>(draw: () => T, missing?: Set<string>) => inLanguage(language, draw, missing);

  test('fills the gaps of a sentence in its own order, each in its language', () => {
    expect(speak(() => said(`The slot at ${longitudeText(16.4)} is east.`))).toBe(
      'Die Position 16,4° O ist Ost.',
    );
    expect(speak(() => said('From 3.5 to east'))).toBe('Nach Ost, von 3,5');
  });

  test('writes numbers with its decimal sign, and leaves signs and units alone', () => {
    expect(speak(() => withUnit(shown(-3.456, 2), 'dB'))).toBe('−3,46 dB');
    const missing = new Set<string>();
    expect(speak(() => said('P.618-14, 3 GHz'), missing)).toBe('P.618-14, 3 GHz');
    expect(speak(() => said('-3.5 dB ± 0.1 dB'), missing)).toBe('-3,5 dB ± 0,1 dB');
    expect(missing.size).toBe(0);
  });

  test('keeps what it has no words for, and tells of it', () => {
    const missing = new Set<string>();
    expect(speak(() => said(compassWords(0)), missing)).toBe('north');
    expect([...missing]).toEqual(['north']);
    expect(said('north')).toBe('north');
  });
});
