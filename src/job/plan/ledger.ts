/** What a plan had to assume and what it could not say, collected while it is made. */

/** Something that the file did not give, and what was taken in its place. */
export interface Assumption {
  /** Field of the job file. */
  readonly field: string;
  /** The value taken: a number in `unit`, or a fixed word. */
  readonly taken: number | string;
  /** Unit of a number; empty for a word, a count or a ratio. */
  readonly unit: string;
}

/** A part of the job of which something can be said or not. */
export type JobSection =
  | 'north'
  | 'mount'
  | 'view'
  | 'rain'
  | 'promise'
  | 'tuning'
  | 'levels'
  | 'outlets'
  | 'supply'
  | 'pointing'
  | 'limits'
  | 'transmit';

/** What could not be said. */
export interface NotSaid {
  /** The part of the job. */
  readonly section: JobSection;
  /** The field that would let it be said. */
  readonly field: string;
  /** Slot concerned; `null` where all are. */
  readonly slot: string | null;
  /** Carrier concerned; `null` where all are. */
  readonly carrier: string | null;
}

/** A place within the job. */
interface At {
  readonly slot?: string;
  readonly carrier?: string;
}

/** Collects; each field once. */
export interface Ledger {
  /** The value of a field: as given, or the one taken in its place. */
  readonly number: (
    given: number | undefined,
    field: string,
    taken: number,
    unit: string,
  ) => number;
  /** The same for a fixed word. */
  readonly word: <T extends string>(given: T | undefined, field: string, taken: T) => T;
  /** Notes that something cannot be said for want of a field. */
  readonly miss: (section: JobSection, field: string, at?: At) => void;
  readonly assumptions: readonly Assumption[];
  readonly notSaid: readonly NotSaid[];
}

/** A new ledger. */
export function ledger(): Ledger {
  const assumptions = new Map<string, Assumption>();
  const notSaid = new Map<string, NotSaid>();
  return {
    number: (given, field, taken, unit) => {
      if (given !== undefined) return given;
      assumptions.set(field, { field, taken, unit });
      return taken;
    },
    word: (given, field, taken) => {
      if (given !== undefined) return given;
      assumptions.set(field, { field, taken, unit: '' });
      return taken;
    },
    miss: (section, field, { slot = null, carrier = null } = {}) => {
      const key = JSON.stringify([section, field, slot, carrier]);
      notSaid.set(key, { section, field, slot, carrier });
    },
    get assumptions() {
      return [...assumptions.values()];
    },
    get notSaid() {
      return [...notSaid.values()];
    },
  };
}
