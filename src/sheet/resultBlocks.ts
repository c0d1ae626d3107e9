/** Second half of the job sheet: what was read and what it means. */

import type { FirstLook, JobRecord, PeakingResult, ReadingVerdict } from '../job/index.js';
import type { PeakFit } from '../peaking/index.js';
import { detail, type SheetBlock, section, table } from './blocks.js';
import { type Numbers, numbersOf } from './numbers.js';
import type { SheetWords } from './words/en.js';

/** Lines of the results. */
export function resultBlocks(record: JobRecord, words: SheetWords): SheetBlock[] {
  const { job, plan } = record;
  const { columns, sections } = words;
  const numbers = numbersOf(words);
  const { fixed } = numbers;
  return [
    section(sections.peaking),
    ...(record.peaking.length === 0
      ? [words.noSamples]
      : record.peaking.flatMap((result) =>
          peakingBlocks(result, job.target?.pointingLossDb ?? null, words, numbers),
        )),
    section(sections.outlets),
    table(
      [
        columns.outlet,
        columns.slot,
        columns.carrier,
        columns.frequencyMHz,
        columns.lossDb,
        columns.levelDbuv,
        columns.carrierToNoiseDb,
      ],
      plan.outlets.map((o) => [
        o.outlet,
        o.slot,
        o.carrier,
        fixed(o.intermediateFrequencyMHz, 0),
        fixed(o.lossDb, 1),
        fixed(o.levelDbuv, 1),
        fixed(o.carrierToNoiseDb, 1),
      ]),
      [0, 1, 2],
    ),
    section(sections.readings),
    ...readingBlocks(record, words, numbers),
    ...(record.firstLook ? firstLookBlocks(record.firstLook, words, numbers) : []),
  ];
}

function readingBlocks(record: JobRecord, words: SheetWords, numbers: Numbers): SheetBlock[] {
  if (record.verdicts.length === 0) return [words.noReadings];
  const { columns } = words;
  const { fixed, signed } = numbers;
  return [
    table(
      [
        columns.testPoint,
        columns.slot,
        columns.carrier,
        columns.reading,
        columns.planned,
        columns.off,
        columns.limits,
        columns.verdict,
      ],
      record.verdicts.map((v) => [
        v.testPoint,
        v.slot ?? '-',
        v.carrier ?? '-',
        `${fixed(v.reading, 1)} ${v.unit === 'dBuV' ? 'dBµV' : v.unit}`,
        fixed(v.expected, 1),
        signed(v.difference, 1),
        limits(v, words, numbers),
        verdict(v, words),
      ]),
      [0, 1, 2, 7],
    ),
    words.outcome(words.codes.outcomes[record.outcome]),
  ];
}

/** What to look at first, in words. */
function firstLookBlocks(
  { kind, causes, next }: FirstLook,
  words: SheetWords,
  { fixed }: Numbers,
): SheetBlock[] {
  const { columns, codes } = words;
  const blocks: SheetBlock[] = [
    section(words.sections.firstLook),
    codes.firstLook[kind],
    table(
      [columns.cause, columns.probability, columns.where],
      causes.map(({ cause, probabilityRatio, location }) => [
        codes.causes[cause],
        `${fixed(100 * probabilityRatio, 0)} %`,
        location ?? words.wholeAntenna,
      ]),
      [0, 2],
    ),
  ];
  if (next) {
    const { kind: what, ...where } = next;
    blocks.push(words.next(codes.measurements[what], Object.values(where).join(', ')));
  }
  return blocks;
}

function peakingBlocks(
  result: PeakingResult,
  targetDb: number | null,
  words: SheetWords,
  numbers: Numbers,
): SheetBlock[] {
  const { axis, slot, carrier, bracket, fit, moveTurns } = result;
  const { fixed, signed, plain } = numbers;
  const blocks: SheetBlock[] = [
    words.beamwidth(words.axes[axis], slot, carrier, fixed(result.theoreticalBeamwidthDeg, 2)),
  ];
  if (bracket)
    blocks.push(
      detail(
        words.bracketing(
          fixed(bracket.moveBackTurns, 2),
          bracket.worstErrorTurns === null ? null : fixed(bracket.worstErrorTurns, 2),
          fixed(bracket.dropDb, 1),
          words.codes.brackets[bracket.kind],
        ),
      ),
    );
  if (fit) blocks.push(detail(fitText(fit, words, numbers)));
  if (fit?.kind === 'peak')
    blocks.push(
      detail(
        `${words.pointingLoss(
          fixed(fit.lossNowDb, 2),
          fixed(fit.lossNowUpper95Db, 2),
          targetDb === null ? '-' : plain(targetDb),
          words.codes.pointing[result.verdict],
        )} ${result.verdict === 'within-target' ? words.leaveIt : words.move(signed(moveTurns, 2))}`,
      ),
    );
  return blocks;
}

/** What a fit says, in words. */
function fitText(fit: PeakFit, words: SheetWords, { fixed, signed }: Numbers): string {
  switch (fit.kind) {
    case 'peak':
      return words.fit.peak(
        signed(fit.positionDeg, 2),
        signed(fit.interval95Deg[0], 2),
        signed(fit.interval95Deg[1], 2),
        fixed(fit.peakLevelDbm, 1),
      );
    case 'edge':
      return words.fit.edge(fit.side, fixed(fit.edgeDeg, 2));
    case 'flat':
      return words.fit.flat;
    case 'not-main-lobe':
      return words.fit.notMainLobe(words.codes.lobes[fit.reason]);
    case 'too-few':
      return words.fit.tooFew(String(fit.readings), String(fit.readingsNeeded));
    case 'contradictory':
      return words.fit.contradictory;
  }
}

function limits(v: ReadingVerdict, words: SheetWords, { fixed }: Numbers): string {
  if (!v.decision) return words.noLimits;
  const { acceptance, guardBand } = v.decision;
  const from = acceptance.from === null ? '' : fixed(acceptance.from - guardBand, 1);
  if (acceptance.to === null) return words.upwards(from);
  return `${from}-${fixed(acceptance.to + guardBand, 1)}`;
}

function verdict(v: ReadingVerdict, words: SheetWords): string {
  if (!v.decision) return words.noLimit;
  const { verdict: decided } = v.decision;
  return v.hiddenFault ? words.conformsButLow : words.codes.verdicts[decided];
}
