/** The form of peaking: each axis with one instruction at a time. */

import { dbmToDbuv } from 'slantpath/distribution';
import { shown } from '../../../lib/language/text.js';
import { type Bench, benchOf, nextPositionDeg, samplesOf } from '../../state/bench.js';
import { visitOf } from '../../state/beside.js';
import type { LoosePeaking } from '../../state/draft.js';
import type { DeskWords } from '../../words/words.js';
import type { Desk } from '../desk.js';
import { asOptions, choice, number, type Part } from '../parts.js';
import { slotOptions } from './mountForm.js';

/** A way in turns or degrees, in words. */
function way(words: DeskWords, { inTurns, degPerUnit, search }: Bench, toTurns: number): string {
  const w = words.peak;
  const by = toTurns - search.placeTurns;
  const amount = inTurns
    ? w.turns(shown(Math.abs(by), 2))
    : w.degrees(shown(Math.abs(by * degPerUnit), 2));
  return by < 0 ? w.down(amount) : w.up(amount);
}

/** What to do next, as one sentence. */
function instruction(words: DeskWords, bench: Bench): string {
  const w = words.peak;
  const { move } = bench;
  const place = (turns: number) => w.degrees(shown(turns * bench.degPerUnit, 2));
  if (bench.proveAtDeg !== null) {
    const turns = bench.proveAtDeg / bench.degPerUnit;
    return `${w.prove} ${w.turnTo(way(words, bench, turns), place(turns))}`;
  }
  switch (move.kind) {
    case 'turn-and-read': {
      const here = Math.abs(move.toTurns - bench.search.placeTurns) < 1e-9;
      const says = here
        ? w.readHere
        : w.turnTo(way(words, bench, move.toTurns), place(move.toTurns));
      return move.purpose === 'other-lobe' ? `${w.otherLobe} ${says}` : says;
    }
    case 'go-to-peak':
      return w.toPeak(
        way(words, bench, move.toTurns),
        place(move.toTurns),
        shown(move.lossUpper95Db, 2),
      );
    case 'done':
      return w.done(shown(move.lossUpper95Db, 2));
    case 'stop':
      return w.stop[move.reason];
  }
}

/** A level as it is read on the display. */
const levelShown = (levelDbm: number, unit: 'dBm' | 'dBuV'): number =>
  Number((unit === 'dBm' ? levelDbm : dbmToDbuv(levelDbm)).toFixed(2));

function benchParts(desk: Desk, entry: LoosePeaking, path: string): readonly Part[] {
  const { words, beside, record } = desk;
  const w = words.peak;
  const bench = benchOf(entry, record, beside.display);
  const unit = beside.display.unit === 'dBm' ? 'dBm' : 'dBµV';
  if (!bench) return [{ kind: 'note', text: w.needs }];
  const { move } = bench;
  return [
    { kind: 'note', text: instruction(words, bench), strong: true },
    ...(move.kind === 'turn-and-read' || bench.proveAtDeg !== null
      ? [
          {
            kind: 'own',
            name: `level:${path}`,
            label: `${w.level} (${w.degrees(shown(nextPositionDeg(bench), 2))})`,
            unit,
            value: '',
            signed: unit === 'dBm',
          } as const,
          { kind: 'buttons', buttons: [{ what: 'note-level', at: path, label: w.note }] } as const,
        ]
      : []),
    ...(move.kind === 'go-to-peak'
      ? [{ kind: 'buttons', buttons: [{ what: 'at-peak', at: path, label: w.atPeak }] } as const]
      : []),
  ];
}

function axisRow(desk: Desk, entry: LoosePeaking, path: string, index: number, list: string): Part {
  const { words, draft, beside } = desk;
  const w = words.peak;
  const slot = draft.slots?.find((each) => each.name === entry.slot);
  const axis = w.axes[entry.axis ?? 'azimuth'] ?? '';
  const samples = samplesOf(entry);
  const carriers = [
    ...(slot?.carriers ?? []),
    ...(draft.transmit ?? []).filter((sent) => sent.slot === entry.slot),
  ];
  const lines = samples
    .map(
      ({ positionDeg, levelDbm }) =>
        `${shown(positionDeg, 2)}\t${shown(levelShown(levelDbm, beside.display.unit), 1)}`,
    )
    .join('\n');
  return {
    kind: 'group',
    legend: `${axis}, ${entry.slot ?? ''}`,
    remove: { list, index, what: `${axis}, ${entry.slot ?? ''}` },
    parts: [
      choice(`${path}.axis`, w.axis, w.axes),
      choice(`${path}.slot`, w.slot, slotOptions(desk)),
      choice(`${path}.carrier`, w.carrier, asOptions(carriers.map((carrier) => carrier.name))),
      number(`${path}.degPerTurn`, w.turn, '°', { empty: w.turnEmpty }),
      ...benchParts(desk, entry, path),
      {
        kind: 'fold',
        name: `samples-${path}`,
        title: w.paste,
        says: w.samples(samples.length),
        parts: [
          { kind: 'own', name: `samples:${path}`, label: w.pasteHint, value: lines, lines: 5 },
          {
            kind: 'buttons',
            buttons: [
              { what: 'paste-samples', at: path, label: w.pasteGo },
              ...(samples.length > 0 ? [{ what: 'anew', at: path, label: w.anew }] : []),
            ],
          },
          number(`${path}.restDeg`, w.rest, '°', { signed: true }),
          ...(entry.axis === 'azimuth'
            ? [choice(`${path}.azimuthReference`, w.reference, w.references)]
            : []),
        ],
      },
      {
        kind: 'fold',
        name: `bracketing-${path}`,
        title: w.bracketing,
        parts: [
          number(`${path}.bracketing.turnsOut`, w.turnsOut, ''),
          number(`${path}.bracketing.turnsBack`, w.turnsBack, ''),
          number(`${path}.bracketing.dropDb`, w.drop, 'dB'),
          number(`${path}.bracketing.resolutionDb`, w.step, 'dB', { empty: '0' }),
        ],
      },
    ],
  };
}

/** Axes of the visit, and how the feeds were left. */
export function peakForm(desk: Desk): readonly Part[] {
  const { draft, words, beside } = desk;
  const w = words.peak;
  const visit = visitOf(desk);
  const head: readonly Part[] = [number('target.pointingLossDb', w.target, 'dB', { wide: true })];
  if (visit < 0)
    return [
      ...head,
      { kind: 'note', text: w.noVisit },
      {
        kind: 'buttons',
        buttons: [{ what: 'visit', label: words.plus(words.readings.newVisit) }],
      },
    ];
  const list = `visits[${visit}].peaking`;
  const feeds = `visits[${visit}].feedTurns`;
  const entries = draft.visits?.[visit]?.peaking ?? [];
  return [
    ...head,
    {
      kind: 'group',
      parts: [
        {
          kind: 'own',
          name: 'display-unit',
          label: w.unit,
          value: beside.display.unit,
          options: { dBuV: 'dBµV', dBm: 'dBm' },
        },
        {
          kind: 'own',
          name: 'display-flicker',
          label: w.flicker,
          unit: 'dB',
          value: String(beside.display.standardDeviationDb),
        },
        {
          kind: 'own',
          name: 'display-step',
          label: w.step,
          unit: 'dB',
          value: String(beside.display.levelStepDb),
        },
      ],
    },
    ...entries.map((entry, index) => axisRow(desk, entry, `${list}[${index}]`, index, list)),
    { kind: 'buttons', buttons: [{ what: 'axis', at: list, label: words.plus(w.newAxis) }] },
    {
      kind: 'fold',
      name: 'feeds',
      title: w.feeds,
      says: String(draft.visits?.[visit]?.feedTurns?.length ?? 0),
      parts: [
        { kind: 'note', text: w.feedHint },
        ...(draft.visits?.[visit]?.feedTurns ?? []).map(
          (_, index): Part => ({
            kind: 'group',
            legend: `${w.feed} ${index + 1}`,
            remove: { list: feeds, index, what: `${w.feed} ${index + 1}` },
            parts: [
              choice(`${feeds}[${index}].slot`, w.slot, slotOptions(desk)),
              number(`${feeds}[${index}].turnDeg`, w.turnedTo, '°', { signed: true }),
              number(`${feeds}[${index}].standardUncertaintyDeg`, w.within, '°', { empty: '1.5' }),
            ],
          }),
        ),
        {
          kind: 'buttons',
          buttons: [{ what: 'add', at: feeds, label: words.plus(words.inside(w.feed)) }],
        },
      ],
    },
  ];
}
