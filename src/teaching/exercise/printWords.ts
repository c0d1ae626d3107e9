/** The words of a printed sheet in a language. */

import { englishNotes, type FormulaNoteWords } from '../print/notes.js';

/** What stands on a printed sheet beside the exercises. */
export interface PrintWords extends FormulaNoteWords {
  /** As in the attribute `lang`. */
  readonly code: string;
  readonly decimalSign: '.' | ',';
  readonly name: string;
  readonly date: string;
  readonly marks: string;
  /** Between the marks earned and the most that can be. */
  readonly of: string;
  readonly oneMark: string;
  /** `{}` is the number of marks. */
  readonly someMarks: string;
  readonly answer: string;
  /** `{unit}` is the unit; the second where there is none. */
  readonly answerInUnit: string;
  readonly answerPlain: string;
  readonly toWholeNumber: string;
  readonly toOneDecimal: string;
  /** `{}` is the number of decimals. */
  readonly toDecimals: string;
  readonly roundEarth: string;
  /** Beside an answer of the round Earth: `{}` is the answer. */
  readonly byRoundEarth: string;
  readonly key: string;
  readonly question: string;
  readonly rightWithin: string;
  /** `{}` is the number of marks of the whole sheet. */
  readonly marksInAll: string;
  readonly workedSolutions: string;
  /** `{}` is the code. */
  readonly foot: string;
  readonly normalTable: string;
  readonly studentTable: string;
  /** Title of a sheet without one of its own: `{}` is the seed and the form. */
  readonly worksheet: string;
  /** Titles, meanings and units of the plans in the language; as they are by default. */
  readonly translate?: (text: string) => string;
}

/** English. */
export const englishPrint: PrintWords = {
  ...englishNotes,
  code: 'en',
  decimalSign: '.',
  name: 'Name',
  date: 'Date',
  marks: 'Marks',
  of: 'of',
  oneMark: '1 mark',
  someMarks: '{} marks',
  answer: 'Answer:',
  answerInUnit: 'Answer in {unit} {to}.',
  answerPlain: 'Answer {to}.',
  toWholeNumber: 'to a whole number',
  toOneDecimal: 'to 1 decimal',
  toDecimals: 'to {} decimals',
  roundEarth: 'The formulas of the round Earth will do.',
  byRoundEarth: '{} (round Earth)',
  key: '{}: key',
  question: 'Question',
  rightWithin: 'Right within',
  marksInAll:
    '{} in all: one for each step. If one step is wrong and the later ones follow from it correctly, those keep their marks.',
  workedSolutions: 'Worked solutions',
  foot: 'Code {}: it makes this sheet and its key again.',
  normalTable: 'Normal distribution: percent below z; below −z it is 100 less that.',
  studentTable: 'Student’s t: percent below t by degrees of freedom; below −t it is 100 less that.',
  worksheet: 'Worksheet {}',
};

/** German. */
export const germanPrint: PrintWords = {
  quadrant: 'den Quadranten geben die Vorzeichen: Zähler wie der Sinus, Nenner wie der Kosinus',
  turned: '{period}° addieren oder abziehen, bis der Winkel ab {from}° und unter {below}° liegt',
  normal: 'Φ aus der Tafel der Normalverteilung',
  student: 'S aus der Tafel der Student-t-Verteilung',
  code: 'de',
  decimalSign: ',',
  name: 'Name',
  date: 'Datum',
  marks: 'Punkte',
  of: 'von',
  oneMark: '1 Punkt',
  someMarks: '{} Punkte',
  answer: 'Antwort:',
  answerInUnit: 'Antwort in {unit} {to}.',
  answerPlain: 'Antwort {to}.',
  toWholeNumber: 'als ganze Zahl',
  toOneDecimal: 'auf 1 Nachkommastelle',
  toDecimals: 'auf {} Nachkommastellen',
  roundEarth: 'Die Formeln der runden Erde genügen.',
  byRoundEarth: '{} (runde Erde)',
  key: '{}: Lösungen',
  question: 'Aufgabe',
  rightWithin: 'Richtig innerhalb',
  marksInAll:
    '{} insgesamt: einer je Schritt. Ein Schritt, der aus einem falschen richtig weiterrechnet, behält seinen Punkt.',
  workedSolutions: 'Rechenwege',
  foot: 'Code {}: damit entstehen dieses Blatt und seine Lösungen wieder.',
  normalTable: 'Normalverteilung: Prozent unter z; unter −z sind es 100 minus diesen Wert.',
  studentTable:
    'Student-t: Prozent unter t je Freiheitsgrad; unter −t sind es 100 minus diesen Wert.',
  worksheet: 'Aufgabenblatt {}',
};
