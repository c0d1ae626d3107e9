/** A class from its pasted codes: marks of each learner, how each exercise went, and which slips were made how often. */

import { objects, text } from '../../errors.js';
import { mostMarksOf } from '../exercise/marks.js';
import type { Worksheet } from '../exercise/worksheet.js';
import { SLIPS } from '../slips/index.js';
import { type ExerciseMarks, exerciseMarks } from './exerciseMarks.js';
import { type HandIn, readHandIn } from './handIn.js';

/** One learner. */
export interface LearnerMarks {
  /** What stood before the code; may be empty. */
  readonly name: string;
  readonly form: 'A' | 'B';
  /** One for each exercise of the sheet. */
  readonly exercises: readonly ExerciseMarks[];
  /** Marks earned and the most that can be. */
  readonly marks: number;
  readonly mostMarks: number;
}

/** How one exercise went. */
export interface ExerciseReport {
  /** Name of the plan and its title. */
  readonly plan: string;
  readonly title: string;
  /** Learners who typed an answer, and of these, whose answer was right. */
  readonly answered: number;
  readonly right: number;
  /** Mean of the marks of all learners, over the most that can be. */
  readonly meanRatio: number;
}

/** A slip in the class. */
export interface SlipReport {
  /** Name of the slip, and what went wrong in a sentence. */
  readonly name: string;
  readonly explanation: string;
  /** Answers that it would explain. An answer that several slips explain counts for each. */
  readonly times: number;
  /** Numbers of the exercises, from 1. */
  readonly exerciseNumbers: readonly number[];
  /** Who, by name. */
  readonly learners: readonly string[];
}

/** A pasted line that did not count. */
export interface UnreadLine {
  /** Number of the line, from 1, and its text. */
  readonly line: number;
  readonly text: string;
  /** Why: as {@link readHandIn}, or `replaced` by a later line of the same name. */
  readonly kind: Exclude<HandIn['kind'], 'read'> | 'replaced';
}

/** Outcome of {@link classReport}. */
export interface ClassReport {
  readonly learners: readonly LearnerMarks[];
  readonly exercises: readonly ExerciseReport[];
  /** The most frequent first. */
  readonly slips: readonly SlipReport[];
  readonly unread: readonly UnreadLine[];
}

interface Line {
  readonly line: number;
  readonly text: string;
}

/** The lines that say something; a code that a mail program broke after a hyphen is put together again. */
function linesOf(pasted: string): readonly Line[] {
  const lines: { line: number; text: string }[] = [];
  pasted.split(/\r\n?|\n/).forEach((text, at) => {
    const before = lines.at(-1);
    if (before && /-\s*$/.test(before.text)) before.text += text.trim();
    else if (text.trim() !== '') lines.push({ line: at + 1, text: text.trim() });
  });
  return lines;
}

/**
 * A class from the codes that learners handed in.
 *
 * Each exercise has one mark for each step. The answer alone earns its share of them (`checkAnswer`); typed steps earn their
 * own marks (`checkSteps`), and the larger of both counts. If a name hands in twice, the later line counts.
 *
 * @param sheets  The sheets that were answered: forms A and B of one, with the same kinds in the same order.
 * @param pasted  Lines with a name and a code each, as they come.
 *
 * Source: `checkAnswer`, `checkSteps`. Accuracy: theirs.
 * @example
 * ```ts
 * import { classReport, handInCode, worksheet } from 'slantpath/teaching';
 * const sheet = worksheet({ seed: 3, count: 1, plans: ['free-space-loss'] });
 * const [only] = sheet.exercises;
 * const code = handInCode(sheet, [{ answer: (only?.answer ?? 0).toFixed(2) }]);
 * const { learners, unread } = classReport([sheet], `Mara: ${code}\nJon: forgot mine`);
 * learners.map(({ name, marks }) => [name, marks]); // => [['Mara', 3]]
 * unread.map(({ line, kind }) => [line, kind]); // => [[2, 'no-code']]
 * ```
 */
export function classReport(sheets: readonly Worksheet[], pasted: string): ClassReport {
  const unread: UnreadLine[] = [];
  const byName = new Map<string, { readonly at: Line; readonly marks: LearnerMarks }>();
  objects('sheets', sheets);
  for (const at of linesOf(text('pasted', pasted))) {
    const handIn = readHandIn(at.text, sheets);
    const sheet = handIn.kind === 'read' && sheets.find(({ form }) => form === handIn.form);
    if (handIn.kind !== 'read' || !sheet) {
      if (handIn.kind !== 'read') unread.push({ ...at, kind: handIn.kind });
      continue;
    }
    const key = handIn.name === '' ? `line ${at.line}` : handIn.name.toLowerCase();
    const before = byName.get(key);
    if (before) unread.push({ ...before.at, kind: 'replaced' });
    byName.delete(key);
    byName.set(key, { at, marks: learnerMarks(sheet, handIn) });
  }
  const learners = [...byName.values()].map(({ marks }) => marks);
  return {
    learners,
    exercises: (sheets[0]?.exercises ?? []).map((exercise, index) => {
      const all = learners.flatMap(({ exercises }) => exercises[index] ?? []);
      const sum = all.reduce((total, { marks }) => total + marks, 0);
      return {
        plan: exercise.plan,
        title: exercise.solution.title,
        answered: all.filter(({ outcome }) => outcome !== 'empty').length,
        right: all.filter(({ outcome }) => outcome === 'right').length,
        meanRatio: all.length === 0 ? 0 : sum / (all.length * mostMarksOf(exercise)),
      };
    }),
    slips: slipsOf(learners),
    unread: unread.sort((a, b) => a.line - b.line),
  };
}

function learnerMarks(
  sheet: Worksheet,
  { name, form, answers }: HandIn & { readonly kind: 'read' },
): LearnerMarks {
  const exercises = sheet.exercises.map((exercise, at) =>
    exerciseMarks(exercise, answers[at] ?? { answer: '' }),
  );
  return {
    name,
    form,
    exercises,
    marks: exercises.reduce((sum, { marks }) => sum + marks, 0),
    mostMarks: exercises.reduce((sum, { mostMarks }) => sum + mostMarks, 0),
  };
}

/** The slips of all learners together. */
function slipsOf(learners: readonly LearnerMarks[]): readonly SlipReport[] {
  const made = learners.flatMap(({ name: learner, exercises }) =>
    exercises.flatMap(({ slips }, at) =>
      slips.map(({ name }) => ({ name, learner, exerciseNumber: at + 1 })),
    ),
  );
  return [...new Set(made.map(({ name }) => name))]
    .map((name) => {
      const own = made.filter((each) => each.name === name);
      return {
        name,
        explanation: SLIPS.find((slip) => slip.name === name)?.explanation ?? '',
        times: own.length,
        exerciseNumbers: [...new Set(own.map(({ exerciseNumber }) => exerciseNumber))].sort(
          (a, b) => a - b,
        ),
        learners: [...new Set(own.map(({ learner }) => learner))],
      };
    })
    .sort((a, b) => b.times - a.times || a.name.localeCompare(b.name));
}
