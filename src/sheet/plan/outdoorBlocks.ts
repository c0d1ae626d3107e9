/** Commissioning of what is sent, in the order of the work, and the wind. */

import type { CommissioningPlan, WindPlan } from '../../job/index.js';
import { BLANK, type SheetBlock, section, tableOf } from '../paper/blocks.js';
import type { Speech } from '../paper/speech.js';

/** Line-up, masks, power control, cross-polar test, hazard at the feed, and the steps with their stops. */
export function commissioningBlocks(speech: Speech, toFill: boolean): readonly SheetBlock[] {
  const { job, plan, words, fixed } = speech;
  const { columns, codes } = words;
  const work = plan.commissioning;
  if (!work) return [];
  const [first] = work.carriers;
  const asked = job.transmit?.map(({ askBefore }) => askBefore) ?? [];
  const named = (who: 'controlCentre' | 'siteOwner') =>
    asked.find((each) => each?.[who] !== undefined)?.[who] ?? null;
  return [
    ...(first === undefined ? [] : lineUpBlocks(speech, work.carriers)),
    section(words.sections.order),
    words.askBefore(named('controlCentre'), named('siteOwner')),
    tableOf(work.steps, [
      [columns.step, ({ step }) => codes.steps[step], 'left'],
      [columns.askFirst, ({ leaveOf }) => codes.leaveOf[leaveOf], 'left'],
      [columns.sends, ({ radiates }) => (radiates ? words.yes : '-'), 'left'],
      toFill ? [columns.done, () => BLANK] : null,
    ]),
    ...new Set(
      work.carriers.map((each) =>
        words.feedHazard(
          fixed(each.feedWPerM2, 0),
          fixed(each.reflectorWPerM2, 1),
          fixed(each.exposureLimitWPerM2, 0),
        ),
      ),
    ),
  ];
}

function lineUpBlocks(
  speech: Speech,
  carriers: readonly CommissioningPlan[],
): readonly SheetBlock[] {
  const { words, fixed, plain, signed } = speech;
  const { columns } = words;
  const masks = carriers.flatMap((each) =>
    each.masks.map((mask) => ({ ...mask, carrier: each.carrier })),
  );
  const name: readonly [string, (each: { readonly carrier: string }) => string, 'left'] = [
    columns.carrier,
    ({ carrier }) => carrier,
    'left',
  ];
  return [
    section(words.sections.lineUp),
    tableOf(carriers, [
      name,
      [columns.transmitMHz, (each) => plain(each.intermediateFrequencyMHz)],
      [columns.plannedDbm, (each) => fixed(each.plannedOutputDbm, 1)],
      [columns.driveDbm, (each) => fixed(each.driveOutputDbm, 1)],
      [columns.compressedDbm, (each) => fixed(each.compression?.outputDbm, 1)],
      [columns.stopsDbw, (each) => each.stepsDbw.map((step) => fixed(step, 1)).join(' / ')],
    ]),
    ...(carriers.some(({ inverted }) => inverted) ? [words.transmitInverted] : []),
    ...(masks.length === 0
      ? []
      : [
          tableOf(masks, [
            name,
            [columns.maskName, (m) => `${m.name}${m.status === 'from-memory' ? ' ?' : ''}`, 'left'],
            [columns.marginDb, ({ marginDb }) => signed(marginDb, 1)],
            [columns.atDeg, ({ offAxisDeg }) => fixed(offAxisDeg, 1)],
          ]),
          words.maskSense(fixed(Math.max(...carriers.map((each) => each.mispointingDeg)), 2)),
        ]),
    ...(carriers.some((each) => each.powerControl !== null || each.crossPolar !== null)
      ? [
          tableOf(carriers, [
            name,
            [columns.uplinkFadeDb, (each) => fixed(each.powerControl?.fadeDb, 1)],
            [columns.madeUpDb, (each) => fixed(each.powerControl?.madeUpDb, 1)],
            [columns.leftDb, (each) => fixed(each.powerControl?.leftDb, 1)],
            [columns.isolationDb, (each) => isolation(speech, each), 'left'],
          ]),
        ]
      : []),
  ];
}

/** Isolation with its doubt, or the least one. */
function isolation({ words, fixed }: Speech, { crossPolar }: CommissioningPlan): string {
  if (!crossPolar) return '-';
  const { kind, isolationDb, standardUncertaintyDb } = crossPolar;
  return kind === 'at-least'
    ? words.atLeast(fixed(isolationDb, 1))
    : `${fixed(isolationDb, 1)} ± ${fixed(2 * (standardUncertaintyDb ?? 0), 1)}`;
}

type Load = Extract<WindPlan, { kind: 'load' }>;

/** Load, moment, ballast and pointing in the wind; what is for an engineer is said to be. */
export function windBlocks(speech: Speech): readonly SheetBlock[] {
  const { plan, words, fixed, digits, plain } = speech;
  const { columns } = words;
  if (plan.wind.length === 0) return [];
  const loads = plan.wind.filter((each): each is Load => each.kind === 'load');
  const refused = plan.wind.flatMap((each) =>
    each.kind === 'load' ? [] : [words.windRefused(each.mount, each.field)],
  );
  const [first] = loads;
  if (!first) return [section(words.sections.wind), ...refused];
  return [
    section(words.sections.wind),
    tableOf(loads, [
      [columns.mount, ({ mount }) => mount, 'left'],
      [columns.pressurePa, ({ pressurePa }) => fixed(pressurePa, 0)],
      [columns.forceN, ({ forceN }) => fixed(forceN, 0)],
      [columns.momentNm, ({ footMomentNm }) => fixed(footMomentNm, 0)],
      [columns.slidingKg, ({ ballast }) => fixed(ballast?.slidingKg, 0)],
      [columns.overturningKg, ({ ballast }) => fixed(ballast?.overturningKg, 0)],
      [columns.stressMPa, ({ footStressMPa }) => fixed(footStressMPa, 0)],
    ]),
    ...(loads.some(({ pointing }) => pointing !== null)
      ? [
          tableOf(loads, [
            [columns.mount, ({ mount }) => mount, 'left'],
            [columns.windSpeed, ({ pointing }) => plain(pointing?.windSpeedMPerS)],
            [columns.windLossDb, ({ pointing }) => fixed(pointing?.lossDb, 2)],
            [columns.yearPercent, ({ pointing }) => digits(pointing?.exceededPercent, 2)],
          ]),
        ]
      : []),
    ...refused,
    words.windSense(plain(first.forceCoefficientRatio)),
  ];
}
