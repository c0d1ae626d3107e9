/** Second half of the job sheet: what was read and what it means. */

import type { PeakFit } from '../peaking/index.js';
import type { JobRecord } from './recordJob.js';
import type { FirstLook } from './sections/causes.js';
import type { PeakingResult } from './sections/peaking.js';
import type { ReadingVerdict } from './sections/verdicts.js';
import { detail, fixed, type SheetBlock, section, signed, table } from './sheetBlocks.js';

/** Lines of the results. */
export function resultBlocks(record: JobRecord): SheetBlock[] {
  const { job, plan } = record;
  const blocks: SheetBlock[] = [section('Peaking')];
  if (record.peaking.length === 0) blocks.push('No samples yet.');
  for (const result of record.peaking)
    blocks.push(...peakingBlocks(result, job.target.pointingLossDb));

  blocks.push(
    section('Expected at the outlets'),
    table(
      ['outlet', 'slot', 'carrier', 'MHz', 'loss dB', 'level dBuV', 'C/N dB'],
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
  );

  blocks.push(section('Readings'));
  if (record.verdicts.length === 0) blocks.push('No readings yet.');
  else
    blocks.push(
      table(
        ['test point', 'slot', 'carrier', 'reading', 'planned', 'off', 'limits', 'verdict'],
        record.verdicts.map((v) => [
          v.testPoint,
          v.slot,
          v.carrier,
          `${fixed(v.readingDb, 1)} ${unit(v)}`,
          fixed(v.expectedDb, 1),
          signed(v.deviationDb, 1),
          limits(v),
          verdict(v),
        ]),
        [0, 1, 2, 7],
      ),
      `Outcome: ${record.outcome.replace(/-/g, ' ')}.`,
    );
  if (record.firstLook) blocks.push(...firstLookBlocks(record.firstLook));
  return blocks;
}

/** What to look at first, in words. */
function firstLookBlocks({ kind, causes, next }: FirstLook): SheetBlock[] {
  const blocks: SheetBlock[] = [
    section('Look at first'),
    kind === 'cannot-tell'
      ? 'The readings so far do not tell one cause from another:'
      : 'Causes by how well they explain the pattern of all readings:',
    table(
      ['cause', 'probability', 'where'],
      causes.map(({ cause, probabilityRatio, location }) => [
        cause.replace(/-/g, ' '),
        `${fixed(100 * probabilityRatio, 0)} %`,
        location ?? 'whole antenna',
      ]),
      [0, 2],
    ),
  ];
  if (next) {
    const { kind: what, ...where } = next;
    const place = Object.values(where).join(', ');
    blocks.push(
      `Next, to separate the first two: ${what.replace(/-/g, ' ')}${place === '' ? '' : ` (${place})`}.`,
    );
  }
  return blocks;
}

function peakingBlocks(result: PeakingResult, targetDb: number): SheetBlock[] {
  const { axis, slot, carrier, bracket, fit, moveTurns } = result;
  const blocks: SheetBlock[] = [
    `${axis}, ${slot}, ${carrier}; half-power beamwidth ${fixed(result.halfPowerBeamwidthDeg, 2)} deg`,
  ];
  if (bracket)
    blocks.push(
      detail(
        `Bracketing: turn back ${fixed(bracket.moveBackTurns, 2)} turns; the peak is then within ${bracket.worstErrorTurns === null ? 'an unknown distance' : `${fixed(bracket.worstErrorTurns, 2)} turns`} (drop ${fixed(bracket.dropDb, 1)} dB, ${bracket.kind.replace(/-/g, ' ')}).`,
      ),
    );
  blocks.push(detail(fitText(fit)));
  if (fit.kind === 'peak')
    blocks.push(
      detail(
        `Pointing loss now ${fixed(fit.lossNowDb, 2)} dB, at most ${fixed(fit.lossNowUpper95Db, 2)} dB (95 %); target ${targetDb} dB: ${result.verdict.replace(/-/g, ' ')}. ${
          result.verdict === 'within-target'
            ? 'Leave it.'
            : `Move ${signed(moveTurns, 2)} turns, the last part from the usual side.`
        }`,
      ),
    );
  return blocks;
}

/** What a fit says, in words. */
function fitText(fit: PeakFit): string {
  switch (fit.kind) {
    case 'peak':
      return `Fit: peak at ${signed(fit.positionDeg, 2)} deg, 95 % between ${signed(fit.interval95Deg[0], 2)} and ${signed(fit.interval95Deg[1], 2)}; ${fixed(fit.peakLevelDbm, 1)} dBm.`;
    case 'edge':
      return `Fit: the level still rises at the ${fit.side} end; go on past ${fixed(fit.edgeDeg, 2)} deg.`;
    case 'flat':
      return 'Fit: no peak shows above the scatter; go further off on both sides.';
    case 'not-main-lobe':
      return `Fit: not a main lobe (${fit.reason}).`;
    case 'too-few':
      return `Fit: too few readings (${fit.readings} of ${fit.readingsNeeded}).`;
    case 'contradictory':
      return 'Fit: the readings contradict each other; take them again.';
  }
}

function unit(v: ReadingVerdict): string {
  return v.quantity === 'level' ? 'dBuV' : 'dB';
}

function limits(v: ReadingVerdict): string {
  if (!v.decision) return 'none';
  const { acceptance, guardBand } = v.decision;
  const from = acceptance.from === null ? '' : fixed(acceptance.from - guardBand, 1);
  const to = acceptance.to === null ? ' up' : `-${fixed(acceptance.to + guardBand, 1)}`;
  return `${from}${to}`;
}

function verdict(v: ReadingVerdict): string {
  const decided = v.decision?.verdict.replace(/-/g, ' ') ?? 'no limit';
  return v.underExpectation && decided === 'conforms' ? 'conforms, but low' : decided;
}
