/** How each stage stands: what is done, what is missing, what does not conform. From the library's findings alone. */

import type { Finding, JobRecord, Outcome } from 'slantpath/job';
import type { Prepared } from './prepared.js';
import {
  STAGES,
  type StageName,
  type StageState,
  stageOfField,
  stageOfFinding,
  stateOfFinding,
  worstState,
} from './stages.js';

/** How one stage stands. */
export interface Standing {
  readonly stage: StageName;
  readonly state: StageState;
  /** The library's findings of this stage, the worst first. */
  readonly findings: readonly Finding[];
}

/** How the whole job stands. */
export interface JobStanding {
  /** The library's outcome; `null` as long as there is no record. */
  readonly outcome: Outcome | null;
  readonly stages: readonly Standing[];
  /** The first stage that is not done. */
  readonly next: StageName | null;
}

/** Stages that have a state of their own: the verdict is the outcome, the sheet only prints it. */
const OWN = STAGES.filter((stage) => stage !== 'verdict' && stage !== 'sheet');

/** How a job stands by its record. */
export function standingOf(ready: Prepared, record: JobRecord | null): JobStanding {
  const findings = record?.findings ?? [];
  const of = (stage: StageName): Standing => {
    const own = findings.filter((finding) => stageOfFinding(finding) === stage);
    const states = own.map(stateOfFinding);
    if (ready.faults.some(({ path }) => stageOfField(path) === stage))
      states.push('cannot-be-read');
    if (ready.waiting.some(({ path }) => stageOfField(path) === stage)) states.push('missing');
    if (!record) states.push(stage === 'place' ? 'missing' : 'not-begun');
    return { stage, state: worstState(states), findings: own };
  };
  const stages = STAGES.map(of);
  const verdict: Standing = {
    stage: 'verdict',
    state: record ? stateOfOutcome(record.outcome) : 'not-begun',
    findings,
  };
  const sheet: Standing = { stage: 'sheet', state: record ? 'done' : 'not-begun', findings: [] };
  return {
    outcome: record?.outcome ?? null,
    stages: stages.map((each) =>
      each.stage === 'verdict' ? verdict : each.stage === 'sheet' ? sheet : each,
    ),
    next:
      OWN.find((stage) => stages.find((each) => each.stage === stage)?.state !== 'done') ?? null,
  };
}

const stateOfOutcome = (outcome: Outcome): StageState =>
  outcome === 'conforms' ? 'done' : outcome === 'incomplete' ? 'missing' : outcome;
