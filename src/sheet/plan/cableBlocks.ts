/** Several receivers on one cable, terrestrial signals, and the inputs of switches. */

import { BLANK, type SheetBlock, section, tableOf } from '../paper/blocks.js';
import type { Speech } from '../paper/speech.js';
import { span } from './tuningBlocks.js';

/** User bands: who has which, what arrives there, and how long the cable may be. */
export function stackingBlocks(speech: Speech): readonly SheetBlock[] {
  const { plan, words, fixed, plain } = speech;
  const { columns } = words;
  const { stacking } = plan;
  if (!stacking) return [];
  if (stacking.kind === 'fixed-bands') return [section(words.sections.stacking), words.fixedBands];
  const [first] = stacking.requests;
  return [
    section(words.sections.stacking),
    tableOf(stacking.bands, [
      [columns.userBand, ({ userBand }) => String(userBand)],
      [columns.centreMHz, ({ centreMHz }) => plain(centreMHz)],
      [columns.widthMHz, ({ bandwidthMHz }) => fixed(bandwidthMHz, 0)],
      [columns.receiver, ({ receiver }) => receiver ?? '-', 'left'],
      [columns.lossDb, ({ lossDb }) => fixed(lossDb, 1)],
      [columns.slopeDb, ({ slopeDb }) => fixed(slopeDb, 1)],
      [columns.levelDbuv, ({ levelDbuv }) => fixed(levelDbuv, 1)],
      [columns.limits, (b) => span(speech, b.minimumDbuv, b.maximumDbuv)],
      [columns.cableM, ({ cableM }) => fixed(cableM, 0)],
      [
        columns.longestM,
        ({ longestM }) => fixed(longestM === null ? null : Math.floor(longestM), 0),
      ],
    ]),
    words.userBandSense,
    ...(first === undefined
      ? []
      : [
          tableOf(stacking.requests, [
            [columns.slot, ({ slot }) => slot, 'left'],
            [columns.carrier, ({ carrier }) => carrier, 'left'],
            [columns.userBand, ({ userBand }) => String(userBand)],
            [columns.tuningWord, ({ tuningWord }) => String(tuningWord)],
            [columns.message, ({ message }) => message, 'left'],
          ]),
        ]),
  ];
}

/** Terrestrial signals at the outlets, and what mains-fed switches give their units. */
export function inputBlocks(speech: Speech, toFill: boolean): readonly SheetBlock[] {
  const { plan, words, fixed } = speech;
  const { columns } = words;
  const { terrestrial, leaks, supplies } = plan.inputs;
  return [
    ...(terrestrial.length === 0
      ? []
      : [
          section(words.sections.terrestrial),
          tableOf(terrestrial, [
            [columns.outlet, ({ outlet }) => outlet, 'left'],
            [columns.lowEndDbuv, ({ lowEndDbuv }) => fixed(lowEndDbuv, 1)],
            [columns.highEndDbuv, ({ highEndDbuv }) => fixed(highEndDbuv, 1)],
            [columns.limits, (t) => span(speech, t.minimumDbuv, t.maximumDbuv)],
            toFill ? [columns.read, () => BLANK] : null,
          ]),
        ]),
    ...(leaks.length === 0
      ? []
      : [
          section(words.sections.leaks),
          tableOf(leaks, [
            [columns.slot, ({ slot }) => slot, 'left'],
            [columns.carrier, ({ carrier }) => carrier, 'left'],
            [columns.leakFrom, ({ unwanted }) => unwanted, 'left'],
            [columns.outlet, ({ outlet }) => outlet, 'left'],
            [columns.aboveDb, (l) => fixed(l.wantedAboveUnwantedDb, 1)],
            [columns.neededDb, ({ requiredDb }) => fixed(requiredDb, 1)],
          ]),
        ]),
    ...(supplies.length === 0
      ? []
      : [
          section(words.sections.inputSupply),
          tableOf(supplies, [
            [columns.input, (s) => [s.switch, s.source].filter(Boolean).join(' '), 'left'],
            [columns.currentA, ({ currentA }) => fixed(currentA, 2)],
            [columns.arrivesV, ({ voltageV }) => fixed(voltageV, 1)],
            [columns.verdict, ({ kind }) => words.codes.supplies[kind], 'left'],
          ]),
        ]),
  ];
}
