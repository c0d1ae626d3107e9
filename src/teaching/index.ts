/**
 * Teaching with the same numbers: worked solutions, exercises, answers checked with the slip named, and formulas tried
 * against the exact functions.
 *
 * @module teaching
 */

export {
  type AnswerCheck,
  checkAnswer,
  type NamedSlip,
  type Question,
} from './answer/checkAnswer.js';
export { checkSteps, type StepCheck, type StepsCheck } from './answer/checkSteps.js';
export { likelySlips } from './answer/likelySlips.js';
export { type Exercise, type ExerciseInput, exercise } from './exercise/exercise.js';
export { type CsvOptions, worksheetCsv } from './exercise/exportCsv.js';
export { worksheetGift } from './exercise/exportGift.js';
export { worksheetMoodle } from './exercise/exportMoodle.js';
export { type PackageFile, worksheetQti } from './exercise/exportQti.js';
export { type PrintOptions, worksheetHtml } from './exercise/printable.js';
export { englishPrint, germanPrint, type PrintWords } from './exercise/printWords.js';
export {
  type Worksheet,
  type WorksheetInput,
  worksheet,
  worksheetOfCode,
} from './exercise/worksheet.js';
export { compileFormula } from './formula/expression.js';
export {
  type CompiledFormula,
  FORMULA_FUNCTIONS,
  type FormulaValues,
} from './formula/functions.js';
export type { FormulaRemark } from './formula/remarks.js';
export { RULES_OF_THUMB, type RuleOfThumb } from './formula/rulesOfThumb.js';
export type { FormulaArea, FormulaSubject, FormulaVariable } from './formula/subject.js';
export { FORMULA_SUBJECTS, formulaSubject } from './formula/subjects.js';
export {
  type ClassReport,
  classReport,
  type ExerciseReport,
  type LearnerMarks,
  type SlipReport,
  type UnreadLine,
} from './handIn/classReport.js';
export type { ExerciseMarks } from './handIn/exerciseMarks.js';
export { type HandedAnswer, type HandIn, handInCode, readHandIn } from './handIn/handIn.js';
export { SOLUTION_PLANS } from './plans/index.js';
export type {
  PlanStep,
  SolutionConstant,
  SolutionGiven,
  SolutionPlan,
  SolutionValues,
} from './plans/plan.js';
export { printedUnit } from './print/units.js';
export { SLIPS } from './slips/index.js';
export type { Slip, SlipGroup } from './slips/slip.js';
export {
  type SolutionQuantity,
  type SolutionStep,
  type WorkedSolution,
  workedSolution,
} from './solution/workedSolution.js';
export type { FormulaDiagnosis, FormulaFault } from './trial/diagnosis.js';
export {
  type AreaAgreement,
  type FormulaTrial,
  type FormulaVerdict,
  tryFormula,
} from './trial/tryFormula.js';
