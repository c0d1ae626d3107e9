/** Which local oscillator a receiving unit runs on for each part of the radio band, as data. */

/** How sure a figure of a plan is. */
export type PlanStatus =
  /** Read in an open text that carries it. */
  | 'read'
  /** Common practice of the trade; the standard that would say so is not open and was not read. */
  | 'practice'
  /** Written down from memory. */
  | 'from-memory';

/** One part of a unit's radio band with the oscillator that serves it. */
export interface ConverterBand {
  /** Lowest radio frequency in GHz. */
  readonly fromGHz: number;
  /** Highest radio frequency in GHz. */
  readonly toGHz: number;
  /** Local oscillator in GHz. */
  readonly localOscillatorGHz: number;
  /** Whether the receiver asks for this band by the 22 kHz tone; absent where the unit takes no notice of it. */
  readonly tone?: boolean;
  /** Only this polarization comes this way; absent where both do, chosen by the supply voltage. */
  readonly polarization?: 'vertical' | 'horizontal';
}

/** A plan of local oscillators. */
export interface ConverterPlan {
  /** Name in kebab-case. */
  readonly name: ConverterPlanName;
  /** Bands in rising frequency; where two meet, the lower one holds the meeting point. */
  readonly bands: readonly ConverterBand[];
  /** How sure the plan is. */
  readonly status: PlanStatus;
}

/** Names of the plans in `converterPlans`. */
export type ConverterPlanName =
  | 'ku-universal'
  | 'ku-10000'
  | 'ku-10700'
  | 'ku-10750'
  | 'ku-11250'
  | 'ku-11300'
  | 'ku-10678'
  | 'ku-stacked'
  | 'ku-wideband-10400'
  | 'ku-wideband-10410'
  | 'c-5150'
  | 'c-extended-5150'
  | 'c-stacked'
  | 'ka-18750'
  | 'ka-19250'
  | 'ka-20250';

/** A plan with one band. */
const single = (
  name: ConverterPlanName,
  fromGHz: number,
  toGHz: number,
  localOscillatorGHz: number,
  status: PlanStatus,
): ConverterPlan => ({ name, bands: [{ fromGHz, toGHz, localOscillatorGHz }], status });

/**
 * Plans of receiving units that are in use, by name.
 *
 * The oscillators of the Ku and C plans were read in an open general-purpose receiver library; the plans that are
 * marked `practice` or `from-memory` differ from unit to unit, so read the unit's label. At exactly 11.7 GHz the
 * universal Ku unit is taken in its low band; some receivers switch there already.
 *
 * Source: see `status` of each; EN 61319-1 (voltage and tone) is not open and was not read.
 */
export const converterPlans: readonly ConverterPlan[] = [
  {
    name: 'ku-universal',
    bands: [
      { fromGHz: 10.7, toGHz: 11.7, localOscillatorGHz: 9.75, tone: false },
      { fromGHz: 11.7, toGHz: 12.75, localOscillatorGHz: 10.6, tone: true },
    ],
    status: 'read',
  },
  single('ku-10000', 10.945, 11.45, 10, 'read'),
  single('ku-10700', 11.75, 12.75, 10.7, 'read'),
  single('ku-10750', 11.7, 12.2, 10.75, 'read'),
  single('ku-11250', 12.2, 12.7, 11.25, 'read'),
  single('ku-11300', 12.25, 12.75, 11.3, 'read'),
  single('ku-10678', 11.71, 12.751, 10.678, 'read'),
  {
    name: 'ku-stacked',
    bands: [
      { fromGHz: 12.2, toGHz: 12.7, localOscillatorGHz: 11.25, polarization: 'vertical' },
      { fromGHz: 12.2, toGHz: 12.7, localOscillatorGHz: 14.35, polarization: 'horizontal' },
    ],
    status: 'read',
  },
  single('ku-wideband-10400', 10.7, 12.75, 10.4, 'from-memory'),
  single('ku-wideband-10410', 10.7, 12.75, 10.41, 'from-memory'),
  single('c-5150', 3.7, 4.2, 5.15, 'read'),
  single('c-extended-5150', 3.4, 4.2, 5.15, 'practice'),
  {
    name: 'c-stacked',
    bands: [
      { fromGHz: 3.7, toGHz: 4.2, localOscillatorGHz: 5.15, polarization: 'vertical' },
      { fromGHz: 3.7, toGHz: 4.2, localOscillatorGHz: 5.75, polarization: 'horizontal' },
    ],
    status: 'read',
  },
  single('ka-18750', 19.7, 20.2, 18.75, 'practice'),
  single('ka-19250', 20.2, 21.2, 19.25, 'practice'),
  single('ka-20250', 21.4, 22, 20.25, 'from-memory'),
];
