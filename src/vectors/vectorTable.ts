/** The form of a table of test vectors: reference values for anybody's formulas, in any language. */

/** A value of a vector: a number, or a text such as an instant or a grid reference; `null` where the source has none. */
export type VectorValue = number | string | null;

/** An expected field of a table. */
export interface VectorField {
  /** Name of the field, with its unit. */
  readonly name: string;
  /** Largest error allowed, from the digits of the source, 0 or more; in the unit of the field, or a ratio where `compare` is `relative`. */
  readonly tolerance: number;
  /** How the error is measured: `absolute`, `relative` to what is expected, as a `direction` through a full turn, or as a `text` that must be the same. */
  readonly compare: 'absolute' | 'relative' | 'direction' | 'text';
}

/** A table of test vectors, as the JSON files of `slantpath/vectors/` have it. */
export interface VectorTable {
  /** Name: `pointing/look-angles-random`. */
  readonly name: string;
  /** The function of the library that answers it, or what is to be computed, in words. */
  readonly calls: string;
  /** Document, edition and table, and how the values were obtained. */
  readonly source: string;
  /** `published` (read in a document), `recomputed` (independently of the library) or `practice` (of the trade). */
  readonly status: 'published' | 'recomputed' | 'practice';
  /** On which terms the values may be used. */
  readonly licence: string;
  /** What one who tests a formula must know besides. */
  readonly note?: string;
  /** Names of the inputs, with their units, in the order of a row. */
  readonly inputs: readonly string[];
  /** Expected fields, in the order of a row behind the inputs. */
  readonly expected: readonly VectorField[];
  /** Rows: inputs, then expected values. */
  readonly rows: readonly (readonly VectorValue[])[];
}

/** What is asked of a formula under test: the inputs of a row by name. */
export type VectorQuestion = Readonly<Record<string, VectorValue>>;

/** What it answers: fields by name; nothing where it has no answer. */
export type VectorAnswer = Readonly<Record<string, unknown>> | null | undefined;
