/** Which tap values, amplifier gain and equaliser bring every outlet into its window. */

import { DomainError, inRange } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { valueAt } from '../../numeric/columns.js';
import { type OutletLevels, outletLevels } from '../levels/outletLevels.js';
import { outletLimits } from '../levels/outletLimits.js';
import {
  againstWindow,
  checkedWindow,
  type LevelWindow,
  type WindowCheck,
} from '../levels/windowChecks.js';
import type { DistributionSystem } from '../tree/tree.js';
import { DISTRIBUTION_SYSTEM_KEYS } from '../tree/tree.js';
import { type DesignChange, designChanges } from './designChanges.js';
import { checkChoices, type DesignChoice, type PartValues, systemWith } from './designChoices.js';

/** What is to be designed. */
export interface DesignQuestion {
  /** The tree with any values at the open parts. */
  readonly system: DistributionSystem;
  /** Open parts and their values. */
  readonly choices: readonly DesignChoice[];
  /** Frequencies in MHz. */
  readonly frequenciesMHz: ArrayLike<number>;
  /** Window of every outlet and receiver; 47 to 77 dBuV by default. */
  readonly window?: LevelWindow;
  /** Largest slope in dB, either way; left out, the slope is free. */
  readonly largestSlopeDb?: number;
}

const DESIGN_QUESTION_KEYS = {
  system: true,
  choices: true,
  frequenciesMHz: true,
  window: true,
  largestSlopeDb: true,
} satisfies Keys<DesignQuestion>;

/** The values of one open part. */
export interface ChosenPart {
  /** Name of the part. */
  readonly part: string;
  /** Index of the option. */
  readonly option: number;
  /** Its values. */
  readonly values: PartValues;
}

/** The best design; read `kind` first. */
export type DistributionDesign = {
  /** `fits`: every outlet is in its window. `none-fits`: no combination brings them all in; the nearest is given. */
  readonly kind: 'fits' | 'none-fits';
  /** Chosen values, in the order of the choices. */
  readonly chosen: readonly ChosenPart[];
  /** The tree with these values. */
  readonly system: DistributionSystem;
  /** Smallest margin to any end of a window (or to the slope) over all outlets, in dB; negative where none fits. */
  readonly smallestMarginDb: number;
  /** Every outlet against the window. */
  readonly outlets: readonly WindowCheck[];
  /** How many combinations fit. */
  readonly fitting: number;
  /** How many combinations there are; every one was tried. */
  readonly tried: number;
  /** What to change where none fits; empty otherwise. */
  readonly changes: readonly DesignChange[];
};

const MOST_COMBINATIONS = 20000;

/**
 * Tries every combination of the open values and gives the one with the largest smallest margin.
 *
 * Of equal ones the first counts, so list the preferred values first. Where none fits, `changes` says by how much
 * level, slope or balance miss.
 *
 * @throws {@link DomainError} naming the choice, or `choices` where there are over 20,000 combinations.
 * Source: exhaustive search over {@link outletLevels}.
 * Accuracy: exact: the best of all combinations.
 * @example
 * ```ts
 * import { designDistribution, genericCable } from 'slantpath/distribution';
 * const design = designDistribution({
 *   system: {
 *     source: { levelDbuv: 68 },
 *     tree: {
 *       kind: 'amplifier', name: 'line amplifier', gainDb: 0, noiseFigureDb: 6,
 *       to: { kind: 'cable', cable: genericCable('series-6'), lengthM: 80, to: { kind: 'outlet', name: 'classroom' } },
 *     },
 *   },
 *   choices: [{ part: 'line amplifier', options: [{ gainDb: 10 }, { gainDb: 15 }, { gainDb: 20 }] }],
 *   frequenciesMHz: [950, 2150],
 * });
 * design.chosen[0]?.values; // => { gainDb: 15 }
 * ```
 */
export function designDistribution(question: DesignQuestion): DistributionDesign {
  knownOnly('question', question, DESIGN_QUESTION_KEYS);
  const { system, choices } = question;
  known('system', system, DISTRIBUTION_SYSTEM_KEYS);
  checkChoices(system, choices);
  const window = checkedWindow('window', question.window ?? outletLimits('satellite-if'));
  const largestSlopeDb =
    question.largestSlopeDb === undefined
      ? undefined
      : inRange('largestSlopeDb', question.largestSlopeDb, 0, 100);
  const tried = choices.reduce((product, choice) => product * choice.options.length, 1);
  if (tried > MOST_COMBINATIONS)
    throw new DomainError({
      code: 'out-of-range',
      parameter: 'choices',
      received: tried,
      allowed: `at most ${MOST_COMBINATIONS} combinations`,
    });
  let best: { readonly options: readonly number[]; readonly marginDb: number } | undefined;
  let fitting = 0;
  for (let number = 0; number < tried; number++) {
    const options = combination(choices, number);
    const levels = levelsOf(question, options);
    const marginDb = Math.min(...levels.map((outlet) => marginOf(outlet, window, largestSlopeDb)));
    if (marginDb >= 0) fitting++;
    if (best === undefined || marginDb > best.marginDb + 1e-9) best = { options, marginDb };
  }
  const { options, marginDb } = best as { options: readonly number[]; marginDb: number };
  const levels = levelsOf(question, options);
  const outlets = levels.map((outlet) => againstWindow(outlet, window));
  return {
    kind: marginDb >= 0 ? 'fits' : 'none-fits',
    chosen: choices.map((choice, index) => {
      const option = valueAt(options, index);
      return { part: choice.part, option, values: choice.options[option] as PartValues };
    }),
    system: systemWith(system, chosenMap(choices, options)),
    smallestMarginDb: marginDb,
    outlets,
    fitting,
    tried,
    changes: marginDb >= 0 ? [] : designChanges(outlets, largestSlopeDb),
  };
}

/** Options of the combination with a running number. */
function combination(choices: readonly DesignChoice[], number: number): readonly number[] {
  let rest = number;
  return choices.map(({ options }) => {
    const option = rest % options.length;
    rest = Math.floor(rest / options.length);
    return option;
  });
}

function chosenMap(
  choices: readonly DesignChoice[],
  options: readonly number[],
): ReadonlyMap<string, PartValues> {
  return new Map(
    choices.map((choice, index) => [
      choice.part,
      choice.options[valueAt(options, index)] as PartValues,
    ]),
  );
}

function levelsOf(
  { system, choices, frequenciesMHz }: DesignQuestion,
  options: readonly number[],
): readonly OutletLevels[] {
  return outletLevels(systemWith(system, chosenMap(choices, options)), frequenciesMHz);
}

function marginOf(
  outlet: OutletLevels,
  window: LevelWindow,
  largestSlopeDb: number | undefined,
): number {
  const { marginLowDb, marginHighDb } = againstWindow(outlet, window);
  const slope =
    largestSlopeDb === undefined
      ? Number.POSITIVE_INFINITY
      : largestSlopeDb - Math.abs(outlet.slopeDb);
  return Math.min(marginLowDb, marginHighDb, slope);
}
