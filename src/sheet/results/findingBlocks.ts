/** The outcome and the findings behind it, the worst first. */

import type { FaultCause } from '../../acceptance/index.js';
import type { Finding, FindingAmount, FindingPlace, FirstLook, Severity } from '../../job/index.js';
import { type SheetBlock, section } from '../paper/blocks.js';
import type { Speech } from '../paper/speech.js';
import { fieldName, withUnit } from '../plan/aidBlocks.js';

/** Most findings of one weight that are told one by one. */
const MOST_TOLD = 20;

const WEIGHTS: readonly Severity[] = ['does-not-conform', 'undecided', 'incomplete', 'note'];

/** The one line that says how the job stands. */
export function outcomeBlock(speech: Speech): SheetBlock {
  const { record, words } = speech;
  const { outcome, findings } = record;
  const counts = WEIGHTS.flatMap((severity) => {
    const count = findings.filter((each) => each.severity === severity).length;
    return count > 0 && severity !== 'note' ? [words.counted(count, severity)] : [];
  });
  return {
    kind: 'outcome',
    outcome,
    text: words.outcome(words.codes.outcomes[outcome], counts.join(', ')),
  };
}

/** The findings, the worst first. */
export function findingBlocks(speech: Speech): readonly SheetBlock[] {
  const { record, words } = speech;
  return WEIGHTS.flatMap((severity): readonly SheetBlock[] => {
    const of = grouped(record.findings.filter((each) => each.severity === severity));
    if (of.length === 0) return [];
    const told = of.slice(0, MOST_TOLD);
    return [
      section(words.codes.severities[severity]),
      ...told.map(
        (each): SheetBlock => ({ kind: 'finding', severity, ...sentenceOf(speech, each) }),
      ),
      ...(of.length > told.length ? [words.andMore(of.length - told.length)] : []),
    ];
  });
}

/** Findings that say the same of several places, without a number of their own, are told once with all the places. */
function grouped(findings: readonly Finding[]): readonly Finding[] {
  const groups = new Map<string, Finding[]>();
  for (const each of findings) {
    const {
      slot: _slot,
      carrier: _carrier,
      names: _names,
      polarization: _,
      ...common
    } = each.where;
    const joins = each.amount === null && each.where.slot !== undefined;
    const key = JSON.stringify(joins ? [each.code, each.action, common] : [each.code, groups.size]);
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  return [...groups.values()].map((group): Finding => {
    const [first] = group as [Finding];
    if (group.length === 1) return first;
    const { slot: _slot, carrier: _carrier, polarization: _, ...common } = first.where;
    return { ...first, where: { ...common, names: group.map(({ where }) => slotText(where)) } };
  });
}

/** Slot and carrier in a word or two. */
function slotText({ slot, carrier, names }: FindingPlace): string {
  return [slot, carrier ?? names?.join(' / ')].filter(Boolean).join(', ');
}

/** A finding as a sentence, and what to do. */
export function sentenceOf(speech: Speech, found: Finding): { text: string; action: string } {
  const { words } = speech;
  const { says, amount: called, limit } = words.codes.findings[found.code];
  const where = placeText(speech, found.where);
  const size = found.amount ? amountText(speech, found.amount, called, limit) : '';
  const text = `${where === '' ? says : `${where}: ${says}`}${size === '' ? '' : ` (${size})`}.`;
  return {
    text: text.charAt(0).toUpperCase() + text.slice(1),
    action: words.codes.actions[found.action],
  };
}

/** Most names of a kind that are listed. */
const MOST_NAMES = 6;

/** Where a finding belongs, in words. */
function placeText(speech: Speech, where: FindingPlace): string {
  const { words, severalMounts, job } = speech;
  const { codes } = words;
  const names = where.names ?? [];
  const shown = names.slice(0, MOST_NAMES).map((name) => codes.meaningShort[name] ?? name);
  if (names.length > shown.length) shown.push(words.andMore(names.length - shown.length));
  const polarization = where.polarization as keyof typeof codes.polarizations | undefined;
  return [
    where.testPoint === 'antenna' ? words.antenna : where.testPoint,
    where.slot,
    where.carrier,
    polarization && where.carrier === undefined
      ? (codes.polarizations[polarization] ?? polarization)
      : undefined,
    where.quantity && codes.quantities[where.quantity],
    where.axis && codes.axes[where.axis],
    severalMounts || where.slot === undefined ? where.mount : undefined,
    where.unit || undefined,
    where.part,
    where.visit !== undefined && job.visits.length > 1
      ? words.visit(where.visit + 1, job.visits[where.visit]?.date ?? '')
      : undefined,
    where.field === undefined || where.field === 'limits'
      ? undefined
      : fieldName(speech, where.field),
    shown.length > 0 ? shown.join('; ') : undefined,
  ]
    .filter((part): part is string => typeof part === 'string' && part !== '')
    .join(', ');
}

/** How bad, in words. */
function amountText(
  { words, fixed, signed }: Speech,
  { value, unit, limit, standardUncertainty }: FindingAmount,
  called = '',
  limitCalled = '',
): string {
  const ratio = unit === '';
  const decimals = ratio || unit === 'MHz' || unit === 'mm' ? 0 : unit === 'A' ? 2 : 1;
  const scale = ratio ? 100 : 1;
  const tell = unit === 'dB' && limit === 0 && value !== 0 ? signed : fixed;
  const told = (of: number) =>
    unit === '%'
      ? words.percent(of)
      : withUnit(tell(scale * of, decimals), ratio ? '%' : (words.units[unit] ?? unit));
  const about =
    standardUncertainty === null ? '' : ` ± ${fixed(2 * scale * standardUncertainty, decimals)}`;
  const first = `${called} ${told(value)}${about}`.trim();
  return limit === null || limitCalled === '' ? first : `${first}, ${limitCalled} ${told(limit)}`;
}

/** What to look at first. */
export function firstLookBlocks(speech: Speech): readonly SheetBlock[] {
  const { record, words, fixed, severalMounts } = speech;
  const look = record.firstLook;
  if (!look) return [];
  const { columns, codes } = words;
  const blocks: SheetBlock[] = [
    section(words.sections.firstLook),
    `${severalMounts ? `${look.mount}: ` : ''}${codes.firstLook[look.kind]}`,
    {
      kind: 'table',
      header: [columns.cause, columns.probability, columns.where],
      rows: look.causes
        .slice(0, 6)
        .map(({ cause, probabilityRatio, location }) => [
          codes.causes[cause],
          `${fixed(100 * probabilityRatio, 0)} %`,
          location ?? words.wholeAntenna,
        ]),
      left: [0, 2],
    },
  ];
  if (look.next) {
    const { kind, ...where } = look.next;
    const places = Object.values(where).filter((part) => typeof part === 'string');
    blocks.push(words.next(codes.measurements[kind], places.join(', ')));
  }
  if (look.unseen.length > 0) blocks.push(words.unseen(unseenText(speech, look.unseen)));
  return blocks;
}

/** Most places of a cause that are told by name. */
const MOST_PLACES = 4;

/** Causes that no reading bears on, each with its places. */
function unseenText({ words }: Speech, unseen: FirstLook['unseen']): string {
  const places = new Map<FaultCause, string[]>();
  for (const { cause, location } of unseen) {
    const known = places.get(cause) ?? [];
    known.push(location ?? words.wholeAntenna);
    places.set(cause, known);
  }
  return [...places]
    .map(([cause, all]) => {
      const rest = all.length - MOST_PLACES;
      const told = all.slice(0, MOST_PLACES).join(', ');
      return `${words.codes.causes[cause]} (${told}${rest > 0 ? `; ${words.andMore(rest)}` : ''})`;
    })
    .join('; ');
}
