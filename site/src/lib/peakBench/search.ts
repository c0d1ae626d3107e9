/** The search for the peak over the notes so far, and its next move in words. */

import {
  afterMove,
  afterReading,
  beginPeakSearch,
  nextMove,
  type PeakSearch,
} from 'slantpath/peaking';
import { shown } from '../language/text.js';
import { FLOOR_DBM, lobeOf, METERS, type Meter, type Note, TARGET_DB } from './bench.js';

/** What a fit of the lobe says where it gives no place, and why a search stops. */
export const WITHOUT_PLACE: Readonly<Record<string, string>> = {
  edge: 'beyond the notes',
  flat: 'no lobe seen',
  'not-main-lobe': 'another lobe',
  'too-few': 'too few notes',
  contradictory: 'notes disagree',
  'end-stop': 'the thread ends',
  'no-lobe': 'no lobe seen',
  'too-many': 'too many notes',
};

/** The search after the notes so far, standing where the adjuster stands. */
export function searchOf(
  bench: number,
  meter: Meter,
  placeTurns: number,
  notes: readonly Note[],
): PeakSearch {
  const started = beginPeakSearch({
    beamwidthTurns: lobeOf(bench).widthTurns,
    targetLossDb: TARGET_DB,
    noiseFloorDbm: FLOOR_DBM,
    ...METERS[meter],
  });
  const read = notes.reduce(
    (search, note) =>
      afterReading(
        afterMove(search, { legsTurns: [], toTurns: note.placeTurns, toPeak: false }),
        note.levelDbm,
      ),
    started,
  );
  return afterMove(read, { legsTurns: [], toTurns: placeTurns, toPeak: false });
}

/** What a move asks for, in words. */
export function asked(search: PeakSearch): string {
  const move = nextMove(search);
  switch (move.kind) {
    case 'turn-and-read':
      return move.legsTurns.length === 0
        ? 'note the level where the adjuster stands'
        : `turn to ${shown(move.toTurns)} turns and note the level`;
    case 'go-to-peak':
      return `turn to ${shown(move.toTurns)} turns: that is the peak, with at most ${shown(move.lossUpper95Db, 3)} dB lost`;
    case 'done':
      return 'nothing more: the adjuster stands on the peak';
    case 'stop':
      return `stop (${WITHOUT_PLACE[move.reason]}): begin again, or take the next bench`;
  }
}
