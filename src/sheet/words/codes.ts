/** The codes of a record for which a sheet has words. */

import type { CauseMeasurement, FaultCause } from '../../acceptance/index.js';
import type {
  CautionTopic,
  ChangeMeaning,
  DirectionPlan,
  FindingAction,
  FindingCode,
  FirstLook,
  InputsPlan,
  JobCarrier,
  JobSection,
  JobVisit,
  NorthPlan,
  Outcome,
  PeakingResult,
  RainPlan,
  ReadingQuantity,
  Severity,
  SupplyPlan,
  TransmitPlan,
  TuningPlan,
  ViewPlan,
} from '../../job/index.js';
import type { Bracket, IntervalCoverage, PeakFit } from '../../peaking/index.js';
import type { CommissioningStep } from '../../transmit/index.js';

/** Words for each code of a list. */
type Words<Code extends string> = Readonly<Record<Code, string>>;

/** What a finding says, and what its number and its limit are called; empty where it has none. */
export interface FindingWords {
  readonly says: string;
  readonly amount?: string;
  readonly limit?: string;
}

/** Words for all codes of a record. */
export interface CodeWords {
  readonly cautions: Words<CautionTopic>;
  readonly causes: Words<FaultCause>;
  readonly measurements: Words<CauseMeasurement['kind']>;
  readonly verdicts: Words<'conforms' | 'does-not-conform' | 'undecided'>;
  readonly outcomes: Words<Outcome>;
  readonly severities: Words<Severity>;
  readonly findings: Readonly<Record<FindingCode, FindingWords>>;
  readonly actions: Words<FindingAction>;
  readonly quantities: Words<ReadingQuantity>;
  readonly polarizations: Words<JobCarrier['polarization']>;
  readonly sections: Words<JobSection>;
  readonly views: Words<ViewPlan['kind']>;
  readonly directions: Words<DirectionPlan['kind']>;
  readonly rainSources: Words<RainPlan['source']>;
  readonly compass: Words<NorthPlan['compassZone']>;
  readonly brackets: Words<Bracket['kind']>;
  readonly lobes: Words<Extract<PeakFit, { kind: 'not-main-lobe' }>['reason']>;
  /** What an interval says of itself; empty where it can be relied on. */
  readonly coverages: Words<IntervalCoverage>;
  readonly mainLobes: Words<PeakingResult['mainLobe']>;
  readonly pointing: Words<PeakingResult['verdict']>;
  readonly meanings: Words<ChangeMeaning>;
  /** The same in a few words, as they stand in a finding. */
  readonly meaningShort: Readonly<Record<string, string>>;
  readonly firstLook: Words<FirstLook['kind']>;
  readonly axes: Words<PeakingResult['axis']>;
  readonly supplies: Words<SupplyPlan['kind'] | InputsPlan['supplies'][number]['kind']>;
  /** Steps of commissioning. */
  readonly steps: Words<CommissioningStep['step']>;
  /** Who says yes before a step. */
  readonly leaveOf: Words<CommissioningStep['leaveOf']>;
  readonly inRange: Words<NonNullable<TuningPlan['inRange']>>;
  readonly exposureGroups: Words<TransmitPlan['exposureGroup']>;
  readonly visits: Words<JobVisit['kind']>;
  readonly weather: Words<NonNullable<JobVisit['weather']>>;
  /** Fields of the job file by their last name; a field without words stands with its path. */
  readonly fields: Readonly<Record<string, string>>;
  /** Fixed words that stand for a field not given. */
  readonly taken: Readonly<Record<string, string>>;
}
