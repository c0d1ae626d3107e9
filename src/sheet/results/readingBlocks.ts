/** What was read, what peaking gave, and what changed between visits. */

import type { PeakingResult, ReadingVerdict } from '../../job/index.js';
import type { PeakFit } from '../../peaking/index.js';
import { detail, type SheetBlock, section, tableOf } from '../paper/blocks.js';
import type { Speech } from '../paper/speech.js';
import { span } from '../plan/tuningBlocks.js';

/** Most rows of a table of results. */
const MOST_ROWS = 120;

/** Each reading against limit and plan. */
export function readingBlocks(speech: Speech): readonly SheetBlock[] {
  const { record, words, fixed, signed, job } = speech;
  const { columns, codes } = words;
  if (record.verdicts.length === 0) return [section(words.sections.readings), words.noReadings];
  const shown = record.verdicts.slice(0, MOST_ROWS);
  const rest = record.verdicts.length - shown.length;
  const plain = (v: ReadingVerdict) =>
    v.quantity === 'bit-error-ratio'
      ? words.power(fixed(v.reading / 10, 1))
      : `${fixed(v.reading, 1)} ${words.units[v.unit] ?? v.unit}`;
  const value = (v: ReadingVerdict) =>
    v.bound === 'at-most'
      ? words.atMost(plain(v))
      : v.bound === 'at-least'
        ? words.atLeast(plain(v))
        : plain(v);
  const corrected = record.verdicts.some(({ correctionDb }) => correctionDb !== 0);
  return [
    section(words.sections.readings),
    tableOf<ReadingVerdict>(shown, [
      [columns.testPoint, (v) => (v.testPoint === 'antenna' ? words.antenna : v.testPoint), 'left'],
      // Slot and carrier share a column, so that words of any language fit on the paper whole.
      [columns.carrier, ({ slot, carrier }) => named(slot, carrier), 'left'],
      [columns.quantity, ({ quantity }) => codes.quantities[quantity], 'left'],
      [columns.reading, value],
      corrected
        ? [columns.corrected, (v) => (v.correctionDb === 0 ? '-' : signed(v.correctionDb, 1))]
        : null,
      [columns.planned, ({ expected }) => fixed(expected, 1)],
      [columns.off, ({ difference }) => signed(difference, 1)],
      [columns.limits, (v) => limits(speech, v)],
      [columns.verdict, (v) => verdict(speech, v), 'left'],
    ]),
    ...(rest > 0 ? [words.andMore(rest)] : []),
    ...(corrected ? [words.corrected] : []),
    words.readingSense(fixed(uncertainty(record.verdicts), 1)),
    ...job.visits.flatMap((_, index) =>
      visitText(speech, index) === '' ? [] : [visitText(speech, index)],
    ),
  ];
}

/** What a reading was taken of, slot first. */
function named(slot: string | null, carrier: string | null): string {
  return [slot, carrier].filter((name) => name !== null).join(', ') || '-';
}

/** Largest expanded uncertainty in dB among the readings. */
function uncertainty(verdicts: readonly ReadingVerdict[]): number {
  return Math.max(
    0,
    ...verdicts.filter(({ unit }) => unit !== 'V').map((v) => 2 * v.standardUncertainty),
  );
}

/** Who read what and when. */
function visitText({ job, words }: Speech, index: number): string {
  const visit = job.visits[index];
  if (!visit) return '';
  const said = [
    words.codes.visits[visit.kind],
    [visit.date, visit.time].filter(Boolean).join(' '),
    visit.person,
    visit.instrument,
    visit.weather && words.codes.weather[visit.weather],
  ];
  return said.filter((part): part is string => typeof part === 'string' && part !== '').join(', ');
}

function limits(speech: Speech, { decision, quantity }: ReadingVerdict): string {
  if (!decision) return '-';
  const { acceptance, guardBand } = decision;
  const scale = quantity === 'bit-error-ratio' ? 0.1 : 1;
  const from = acceptance.from === null ? null : (acceptance.from - guardBand) * scale;
  const to = acceptance.to === null ? null : (acceptance.to + guardBand) * scale;
  return span(
    speech,
    from,
    to,
    quantity === 'supply-voltage' || quantity === 'bit-error-ratio' ? 1 : 0,
  );
}

function verdict({ words }: Speech, v: ReadingVerdict): string {
  if (v.wet) return words.readInRain;
  if (!v.decision) return v.finding === 'below' ? words.noLimitButLow : words.noLimit;
  const { verdict: decided } = v.decision;
  if (decided !== 'conforms') return words.codes.verdicts[decided];
  if (v.finding === 'below') return words.conformsButLow;
  return v.finding === 'above' ? words.conformsButHigh : words.codes.verdicts.conforms;
}

/** What the samples of each axis say. */
export function peakingBlocks(speech: Speech): readonly SheetBlock[] {
  const { record, words } = speech;
  if (record.peaking.length === 0) return [];
  return [
    section(words.sections.peaking),
    ...record.peaking.flatMap((result) => axisBlocks(speech, result)),
  ];
}

function axisBlocks(speech: Speech, result: PeakingResult): readonly SheetBlock[] {
  const { words, fixed, signed, plain, job, severalMounts } = speech;
  const { codes } = words;
  const { bracket, fit, lossDb, lossUpper95Db, moveDeg, moveTurns } = result;
  const head = [
    ...(severalMounts ? [result.mount] : []),
    codes.axes[result.axis],
    result.slot,
    result.carrier,
  ].join(', ');
  const width =
    result.theoreticalBeamwidthDeg === null
      ? ''
      : words.widths(
          result.measuredBeamwidthDeg === null ? null : fixed(result.measuredBeamwidthDeg, 2),
          fixed(result.theoreticalBeamwidthDeg, 2),
          codes.mainLobes[result.mainLobe],
        );
  const blocks: SheetBlock[] = [`${head}${width === '' ? '' : `: ${width}`}`];
  if (bracket)
    blocks.push(
      detail(
        words.bracketing(
          fixed(bracket.moveBackTurns, 2),
          bracket.worstErrorTurns === null ? null : fixed(bracket.worstErrorTurns, 2),
          fixed(bracket.dropDb, 1),
          codes.brackets[bracket.kind],
        ),
      ),
    );
  if (fit) blocks.push(detail(fitText(speech, fit)));
  if (lossDb !== null) {
    const target = job.target?.pointingLossDb;
    const loss = words.pointingLoss(
      fixed(lossDb, 2),
      lossUpper95Db === null ? null : fixed(lossUpper95Db, 2),
      target === undefined ? null : `${plain(target)} dB: ${codes.pointing[result.verdict]}`,
    );
    const move =
      result.verdict === 'within-target'
        ? words.leaveIt
        : moveTurns !== null
          ? words.moveTurns(signed(moveTurns, 2))
          : moveDeg !== null
            ? words.moveDeg(signed(moveDeg, 2))
            : '';
    blocks.push(detail(`${loss} ${move}`.trim()));
  }
  return blocks;
}

/** What a fit says, in words. */
function fitText({ words, fixed, signed }: Speech, fit: PeakFit): string {
  switch (fit.kind) {
    case 'peak': {
      const found = words.fit.peak(
        signed(fit.positionDeg, 2),
        signed(fit.interval95Deg[0], 2),
        signed(fit.interval95Deg[1], 2),
        fixed(fit.peakLevelDbm, 1),
      );
      return `${found} ${words.codes.coverages[fit.coverage]}`.trim();
    }
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

/** How the feeds were left. */
export function feedTurnBlocks(speech: Speech): readonly SheetBlock[] {
  const { job, plan, words, turn } = speech;
  const { columns } = words;
  const left = job.visits.flatMap(({ feedTurns }) => feedTurns ?? []);
  if (left.length === 0) return [];
  const planned = (slot: string) =>
    plan.mounts
      .flatMap((mount) => ('feeds' in mount ? mount.feeds : []))
      .find((f) => f.slot === slot)?.turnDeg ?? null;
  return [
    section(words.sections.feeds),
    tableOf(
      [...new Map(left.map((each) => [each.slot, each])).values()],
      [
        [columns.slot, ({ slot }) => slot, 'left'],
        [columns.leftAt, ({ turnDeg }) => turn(turnDeg), 'left'],
        [columns.planned, ({ slot }) => turn(planned(slot)), 'left'],
      ],
    ),
  ];
}

/** What changed since the visit before. */
export function changeBlocks(speech: Speech): readonly SheetBlock[] {
  const { record, words, fixed, signed, job } = speech;
  const { columns, codes } = words;
  return record.changes.flatMap((change): readonly SheetBlock[] => {
    const moved = change.readings.filter(({ significant }) => significant).slice(0, 40);
    return [
      section(words.changes(change.visit + 1, job.visits[change.visit]?.date ?? '')),
      codes.meanings[change.meaning],
      ...change.pooled
        .filter(({ significant }) => significant)
        .map(({ quantity, count, meanDb, standardUncertaintyDb }) =>
          words.pooled(
            codes.quantities[quantity],
            String(count),
            signed(meanDb, 1),
            fixed(2 * standardUncertaintyDb, 1),
          ),
        ),
      ...(moved.length > 0
        ? [
            tableOf(moved, [
              [
                columns.testPoint,
                (c) => (c.testPoint === 'antenna' ? words.antenna : c.testPoint),
                'left',
              ],
              [columns.slot, ({ slot }) => slot ?? '-', 'left'],
              [columns.carrier, ({ carrier }) => carrier ?? '-', 'left'],
              [columns.quantity, ({ quantity }) => codes.quantities[quantity], 'left'],
              [columns.before, (c) => `${fixed(c.before, 1)} ${words.units[c.unit] ?? c.unit}`],
              [columns.after, (c) => `${fixed(c.after, 1)} ${words.units[c.unit] ?? c.unit}`],
              [
                columns.change,
                (c) => `${signed(c.change, 1)} ± ${fixed(2 * c.standardUncertainty, 1)}`,
              ],
            ]),
          ]
        : []),
      ...(change.notRepeated.length > 0
        ? [words.notRepeated(String(change.notRepeated.length))]
        : []),
    ];
  });
}

/** Notes of the job and of its visits. */
export function noteBlocks({ job, words }: Speech): readonly SheetBlock[] {
  const notes = [
    ...(job.notes ?? []),
    ...job.visits.flatMap(({ date, notes: own }) => (own ?? []).map((note) => `${date}: ${note}`)),
  ];
  return notes.length === 0 ? [] : [section(words.sections.notes), ...notes];
}
