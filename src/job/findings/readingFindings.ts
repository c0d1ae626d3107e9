/** Findings on what was read, what was not, and what changed. */

import type { JobFile } from '../file/jobFile.js';
import { limitFor, terminals } from '../plan/limits.js';
import type { JobPlan } from '../plan/planJob.js';
import { EXPECTATION } from '../plan/signals.js';
import type { FirstLook } from '../results/causes.js';
import type { Changes } from '../results/changes.js';
import type { ReadingQuantity, ReadingVerdict } from '../results/verdicts.js';
import { amount, type Finding, type FindingPlace, finding } from './finding.js';

function placeOf(verdict: ReadingVerdict): FindingPlace {
  return {
    testPoint: verdict.testPoint,
    ...(verdict.slot === null ? {} : { slot: verdict.slot }),
    ...(verdict.carrier === null ? {} : { carrier: verdict.carrier }),
    quantity: verdict.quantity,
    visit: verdict.visit,
  };
}

/** Findings on each reading. */
export function readingFindings(verdicts: readonly ReadingVerdict[]): readonly Finding[] {
  return verdicts.flatMap((verdict): Finding[] => {
    const where = placeOf(verdict);
    const { decision, difference, unit, standardUncertainty } = verdict;
    const found: Finding[] = [];
    if (!decision)
      found.push(
        finding(
          'reading-without-limit',
          verdict.expected === null ? 'incomplete' : 'note',
          { ...where, field: 'limits' },
          null,
          'set-a-limit',
        ),
      );
    else if (decision.verdict !== 'conforms') {
      const limit = nearerLimit(verdict);
      if (verdict.wet)
        found.push(
          finding(
            'reading-in-rain',
            'undecided',
            where,
            amount(verdict.reading, unit, limit, standardUncertainty),
            'read-again',
          ),
        );
      else if (decision.verdict === 'does-not-conform')
        found.push(
          finding(
            'reading-outside-limit',
            'does-not-conform',
            where,
            amount(verdict.reading, unit, limit, standardUncertainty),
            'find-the-cause',
          ),
        );
      else
        found.push(
          finding(
            'reading-undecided',
            'undecided',
            where,
            verdict.bound === null ? amount(decision.conformityProbabilityRatio, '', 0.95) : null,
            'read-again',
          ),
        );
    }
    if (verdict.aboveCeiling)
      found.push(
        finding(
          'reading-above-ceiling',
          'undecided',
          where,
          amount(verdict.reading, unit),
          'check-instrument-and-carrier',
        ),
      );
    const offPlan = amount(difference ?? 0, unit === 'dBuV' ? 'dB' : unit, 0, standardUncertainty);
    if (verdict.finding === 'below' && decision?.verdict !== 'does-not-conform')
      found.push(finding('reading-below-plan', 'undecided', where, offPlan, 'find-the-cause'));
    if (verdict.finding === 'above')
      found.push(
        finding('reading-above-plan', 'undecided', where, offPlan, 'check-instrument-and-carrier'),
      );
    return found;
  });
}

/** The limit that the reading is nearest to, or outside of. */
function nearerLimit({ decision, reading }: ReadingVerdict): number | null {
  if (!decision) return null;
  const { acceptance, guardBand } = decision;
  const lower = acceptance.from === null ? null : acceptance.from - guardBand;
  const upper = acceptance.to === null ? null : acceptance.to + guardBand;
  if (lower === null || upper === null) return lower ?? upper;
  return Math.abs(reading - lower) <= Math.abs(reading - upper) ? lower : upper;
}

/** Common standard uncertainty of a plan in dB: what all its expectations have wrong together. */
const COMMON_DB: Readonly<Partial<Record<ReadingQuantity, number>>> = {
  level: EXPECTATION.levelDb,
  'carrier-to-noise': 0.5,
};

/** Least number of readings that are pooled. */
const LEAST_POOLED = 3;

/** Readings that each stand within their doubt, and all together do not. */
export function pooledFindings(verdicts: readonly ReadingVerdict[]): readonly Finding[] {
  return (['level', 'carrier-to-noise'] as const).flatMap((quantity): Finding[] => {
    const of = verdicts.filter(
      (verdict) => verdict.quantity === quantity && verdict.finding !== null,
    );
    if (of.length < LEAST_POOLED || of.some((verdict) => verdict.finding !== 'as-expected'))
      return [];
    const mean = of.reduce((sum, { difference }) => sum + (difference ?? 0), 0) / of.length;
    const own = Math.sqrt(of.reduce((sum, { standardUncertainty: u }) => sum + u * u, 0));
    const standardUncertainty = Math.hypot(COMMON_DB[quantity] ?? 0, own / of.length);
    if (Math.abs(mean) <= 2 * standardUncertainty) return [];
    return [
      finding(
        'readings-all-off-plan',
        'undecided',
        { quantity },
        amount(mean, 'dB', 0, standardUncertainty),
        mean < 0 ? 'find-the-cause' : 'check-instrument-and-carrier',
      ),
    ];
  });
}

/** Findings on the search of causes and on what changed since the visit before. */
export function changeFindings(
  firstLook: FirstLook | null,
  changes: readonly (Changes & { readonly visit: number })[],
): readonly Finding[] {
  const found: Finding[] = [];
  if (firstLook?.reason === 'no-cause-fits')
    found.push(
      finding('no-cause-fits', 'undecided', { mount: firstLook.mount }, null, 'find-the-cause'),
    );
  const last = changes.at(-1);
  if (last && last.meaning !== 'unchanged' && last.meaning !== 'no-common-readings') {
    const pooled = last.pooled.find(({ significant }) => significant);
    const fell =
      last.meaning !== 'all-higher-alike' &&
      (last.readings.some(({ significant, change }) => significant && change < 0) ||
        (pooled !== undefined && pooled.meanDb < 0));
    found.push(
      finding(
        'changed-since-last-visit',
        // What rose was mended, or another instrument was used; what fell asks for its cause.
        fell ? 'undecided' : 'note',
        { visit: last.visit, names: [last.meaning] },
        pooled ? amount(pooled.meanDb, 'dB', 0, pooled.standardUncertaintyDb) : null,
        fell ? 'find-the-cause' : 'none',
      ),
    );
  }
  return found;
}

/** Quantities of one carrier at a test point that a limit can ask for. */
const AT_CARRIER = [
  'level',
  'carrier-to-noise',
  'modulation-error-ratio',
  'bit-error-ratio',
  'cross-polar-isolation',
  'noise-level',
] as const satisfies readonly ReadingQuantity[];

/** What nobody has read, at a place. */
const missing = (where: FindingPlace): Finding =>
  finding('reading-missing', 'incomplete', where, null, 'read-it');

/**
 * What the limits ask to be read and nobody has: each test point, slot, polarization, band and quantity once, by any carrier of
 * theirs.
 */
export function coverageFindings(
  job: JobFile,
  plan: JobPlan,
  verdicts: readonly ReadingVerdict[],
): readonly Finding[] {
  const points = ['antenna', ...terminals(job).flatMap(({ name }) => name ?? [])];
  const seen = job.slots.filter(
    ({ name }) => plan.directions.find(({ slot }) => slot === name)?.kind !== 'below-horizon',
  );
  const readings = points.flatMap((testPoint) => [
    ...seen.flatMap((slot) =>
      carrierGroups(plan, slot, testPoint).flatMap((group) =>
        missingOfGroup(job, verdicts, group, { testPoint, slot: slot.name }),
      ),
    ),
    ...missingSupply(job, verdicts, testPoint),
  ]);
  const all = [...readings, ...missingTests(job, verdicts)];
  return verdicts.length === 0 && readings.length === 0 ? [...all, missing({})] : all;
}

/** Carriers of a slot that one reading stands for. */
interface CarrierGroup {
  readonly carriers: readonly string[];
  readonly polarization: string;
}

/** Carriers of a slot that come to a test point, those of one unit, band and polarization together. */
function carrierGroups(
  plan: JobPlan,
  slot: JobFile['slots'][number],
  testPoint: string,
): readonly CarrierGroup[] {
  const groups = new Map<string, { carriers: string[]; polarization: string }>();
  for (const { name, frequencyGHz, polarization } of slot.carriers ?? []) {
    if (testPoint !== 'antenna' && !reaches(plan, testPoint, slot.name, name)) continue;
    const tuned = plan.tuning.find((each) => each.slot === slot.name && each.carrier === name);
    const band =
      tuned?.band ?? (frequencyGHz < 11.7 ? 'low' : frequencyGHz < 13 ? 'high' : 'above');
    const key = JSON.stringify([tuned?.unit, band, polarization]);
    const group = groups.get(key) ?? { carriers: [], polarization };
    group.carriers.push(name);
    groups.set(key, group);
  }
  return [...groups.values()];
}

/** Quantities of a group that have a limit at a place and were not read of any of its carriers. */
function missingOfGroup(
  job: JobFile,
  verdicts: readonly ReadingVerdict[],
  { carriers, polarization }: CarrierGroup,
  { testPoint, slot }: { readonly testPoint: string; readonly slot: string },
): readonly Finding[] {
  const [carrier, ...others] = carriers;
  const whose = carrier !== undefined && others.length === 0 ? { carrier } : { names: carriers };
  return AT_CARRIER.flatMap((quantity) => {
    const read = verdicts.some(
      (verdict) =>
        verdict.testPoint === testPoint &&
        verdict.slot === slot &&
        verdict.carrier !== null &&
        carriers.includes(verdict.carrier) &&
        verdict.quantity === quantity,
    );
    return read || !limitFor(job, quantity, testPoint, slot)
      ? []
      : [missing({ testPoint, slot, polarization, ...whose, quantity })];
  });
}

/** The supply voltage, which belongs to the test point alone. */
function missingSupply(
  job: JobFile,
  verdicts: readonly ReadingVerdict[],
  testPoint: string,
): readonly Finding[] {
  const quantity = 'supply-voltage';
  const read = verdicts.some((each) => each.testPoint === testPoint && each.quantity === quantity);
  return read || !limitFor(job, quantity, testPoint, undefined)
    ? []
    : [missing({ testPoint, quantity })];
}

/** The line-up test of each transmitted carrier. */
function missingTests(job: JobFile, verdicts: readonly ReadingVerdict[]): readonly Finding[] {
  const quantity = 'cross-polar-isolation';
  return (job.transmit ?? []).flatMap(({ slot, name, crossPolarTest }) =>
    crossPolarTest !== undefined ||
    verdicts.some(
      (each) => each.slot === slot && each.carrier === name && each.quantity === quantity,
    )
      ? []
      : [
          finding(
            'transmit-test-missing',
            'incomplete',
            { slot, carrier: name, quantity },
            null,
            'read-it',
          ),
        ],
  );
}

/** Whether a carrier comes to an outlet: by the plan, or as far as is known. */
function reaches(plan: JobPlan, testPoint: string, slot: string, carrier: string): boolean {
  const planned = plan.outlets.filter((each) => each.slot === slot && each.carrier === carrier);
  return planned.length === 0 || planned.some(({ outlet }) => outlet === testPoint);
}

/** Test points of the job for which no limit of level, ratio or error is set. */
export function limitFindings(job: JobFile): readonly Finding[] {
  if ((job.limits ?? []).length === 0) return [];
  return terminals(job).flatMap(({ name, kind, behindOutlet }): Finding[] => {
    if (name === undefined || (kind === 'receiver' && behindOutlet)) return [];
    // A receiver has its own window of levels.
    if (kind === 'receiver') return [];
    const limited = AT_CARRIER.some((quantity) =>
      job.slots.some((slot) => limitFor(job, quantity, name, slot.name) !== undefined),
    );
    return limited
      ? []
      : [
          finding(
            'field-not-given',
            'incomplete',
            { testPoint: name, field: 'limits' },
            null,
            'set-a-limit',
          ),
        ];
  });
}
