/** What each stage comes to, in one line: what stands on it while it is closed. From the record alone. */

import type { JobRecord } from 'slantpath/job';
import type { SheetWords } from 'slantpath/sheet';
import { localNumber } from '../../lib/language/language.js';
import { longitudeText, shown } from '../../lib/language/text.js';
import { visitOf } from '../state/beside.js';
import type { StageName } from '../state/stages.js';
import { wantedAt } from '../state/wanted.js';
import type { Desk } from './desk.js';

const deg = (value: number | null, digits = 1) =>
  value === null ? '–' : `${shown(value, digits)}°`;

type Says = (record: JobRecord, desk: Desk, sheet: SheetWords) => string;

const place: Says = ({ plan, job }, { words }) => {
  const w = words.says;
  const below = plan.directions.find(({ kind }) => kind === 'below-horizon');
  if (below) return w.below(below.slot);
  const [first] = plan.directions;
  if (!first) return '';
  const compass =
    first.magneticBearingDeg === null ? '' : `, ${w.compass(deg(first.magneticBearingDeg))}`;
  const slots = job.slots.length === 1 ? `${longitudeText(first.orbitalLongitudeDeg)}: ` : '';
  return `${slots}${w.directions(plan.directions.length, deg(first.azimuthDeg), deg(first.elevationDeg))}${compass}`;
};

/** A turn in words, never a sign. */
export function turnWords({ words }: Pick<Desk, 'words'>, turnDeg: number | null): string {
  if (turnDeg === null) return '–';
  if (Math.abs(turnDeg) < 0.05) return words.tables.upright;
  const amount = shown(Math.abs(turnDeg), 1);
  return turnDeg > 0 ? words.tables.clockwise(amount) : words.tables.counter(amount);
}

const mount: Says = ({ plan }, { words }) => {
  const w = words.says;
  return plan.mounts
    .map((each) => {
      if (each.kind === 'polar') return w.polar;
      if (each.kind === 'tracking') return w.tracking;
      if (each.reflector === null || !('boresightAzimuthDeg' in each)) return w.noReflector;
      const lean = each.preset?.faceLeanDeg;
      return [
        w.mountOne(
          each.magneticBearingDeg === null
            ? deg(each.boresightAzimuthDeg)
            : w.compass(deg(each.magneticBearingDeg)),
          deg(each.boresightElevationDeg),
        ),
        lean === undefined ? '' : lean < 0 ? w.forward(deg(-lean)) : w.lean(deg(lean)),
        each.kind === 'several-slots' ? w.tilt(turnWords({ words }, each.tiltDeg)) : '',
      ]
        .filter(Boolean)
        .join(', ');
    })
    .join('; ');
};

const skyline: Says = ({ plan }, { words }, { codes }) => {
  const bad = plan.views.filter(({ kind }) => kind !== 'clear');
  if (bad.length > 0)
    return bad.map(({ slot, kind }) => `${slot}: ${codes.views[kind]}`).join(', ');
  const least = plan.views.reduce<(typeof plan.views)[number] | undefined>(
    (a, b) => (a && (a.clearanceDeg ?? 99) <= (b.clearanceDeg ?? 99) ? a : b),
    undefined,
  );
  return least ? words.says.clear(least.slot, deg(least.clearanceDeg)) : '';
};

const plan: Says = (record, { words }) => {
  const w = words.says;
  const tuned = record.plan.tuning.flatMap((each) => each.intermediateFrequencyMHz ?? []);
  const count = record.plan.tuning.length;
  if (count === 0) return w.noCarrier;
  if (tuned.length === 0) return w.carriers(count);
  return `${w.carriers(count)}, ${w.onCable(shown(Math.min(...tuned), 0), shown(Math.max(...tuned), 0))}`;
};

const rain: Says = (record, { words }) => {
  const w = words.says;
  const { signals } = record.plan;
  const promised = signals.filter(({ promise }) => promise !== null);
  const worst = promised.reduce<(typeof signals)[number] | undefined>(
    (a, b) => (a && (a.promise?.fadedMarginDb ?? 0) <= (b.promise?.fadedMarginDb ?? 0) ? a : b),
    undefined,
  );
  if (worst?.promise)
    return w.margin(
      worst.carrier,
      shown(worst.promise.fadedMarginDb, 1),
      localNumber(String(worst.promise.promisedPercent)),
    );
  const clear = signals.reduce<(typeof signals)[number] | undefined>(
    (a, b) => (a && (a.clearMarginDb ?? 99) <= (b.clearMarginDb ?? 99) ? a : b),
    undefined,
  );
  return clear && clear.clearMarginDb !== null
    ? w.clearMargin(clear.carrier, shown(clear.clearMarginDb, 1))
    : w.noMargin;
};

const outlets: Says = (record, { words }) => {
  const w = words.says;
  const weakest = record.plan.outlets.reduce<JobRecord['plan']['outlets'][number] | undefined>(
    (a, b) => (a && a.levelDbuv <= b.levelDbuv ? a : b),
    undefined,
  );
  if (weakest) return w.weakest(shown(weakest.levelDbuv, 1), weakest.carrier, weakest.outlet);
  return w.noOutlet;
};

const peak: Says = ({ peaking }, { words }) => {
  const w = words.says;
  if (peaking.length === 0) return w.notPeaked;
  return peaking
    .map(({ axis, lossDb }) => {
      const called = words.peak.axes[axis] ?? axis;
      return lossDb === null ? w.axisUnknown(called) : w.axis(called, shown(lossDb, 2));
    })
    .join('; ');
};

const readings: Says = (record, desk) => {
  const visit = visitOf(desk);
  const wanted = visit < 0 ? [] : wantedAt(desk.draft, visit, record);
  return desk.words.readings.counted(
    wanted.filter(({ index }) => index >= 0).length,
    wanted.length,
  );
};

const verdict: Says = (record, { words }, { codes, counted }) => {
  const counts = (['does-not-conform', 'undecided', 'incomplete'] as const).flatMap((severity) => {
    const count = record.findings.filter((each) => each.severity === severity).length;
    return count > 0 ? [counted(count, severity)] : [];
  });
  const [first] = record.firstLook?.causes ?? [];
  const look =
    first && record.firstLook?.kind === 'cause'
      ? `; ${words.says.looksLike(codes.causes[first.cause], first.location ?? '')}`
      : '';
  return `${words.outcomes[record.outcome]}${counts.length > 0 ? `: ${counts.join(', ')}` : ''}${look}`;
};

const SAYS: Readonly<Record<StageName, Says>> = {
  place,
  mount,
  skyline,
  plan,
  rain,
  outlets,
  peak,
  readings,
  verdict,
  sheet: (_record, { words }) => words.sheet.says,
};

/** The line of a stage; empty as long as nothing is computed. */
export function saysOf(stage: StageName, desk: Desk, sheet: SheetWords): string {
  return desk.record ? SAYS[stage](desk.record, desk, sheet) : '';
}
