/** Which steps by hand lead from the notes to the peak. */

import { pointingLoss } from 'slantpath/antenna';
import type { PeakFound } from 'slantpath/peaking';
import type { Working } from '../example.js';
import { FLOOR_DBM, LOSS_SEEN_DB, lobeOf, type Meter, type Note } from './bench.js';
import { methods } from './methods.js';

/** The notes, and where the adjuster stands. */
interface Standing {
  readonly bench: number;
  readonly meter: Meter;
  readonly placeTurns: number;
  readonly notes: readonly Note[];
}

/** The steps by hand once the lobe is shown: its peak, and the loss where the adjuster stands. */
export function benchWorking(
  { bench, meter, placeTurns, notes }: Standing,
  { peakTurns, lossHereDb }: { readonly peakTurns: number; readonly lossHereDb: number },
): Working[] {
  const { widthTurns } = lobeOf(bench);
  const own = [...notes].sort((a, b) => a.placeTurns - b.placeTurns);
  const [first, second, third] = own;
  const { known, free } = first && second ? methods(bench, meter, notes) : {};
  const noiseFloorDbm = FLOOR_DBM;
  const signals = own.map(
    ({ levelDbm }): Working => ({
      plan: 'signal-over-noise-floor',
      givens: { levelDbm, noiseFloorDbm },
    }),
  );
  /** Level on a lobe that goes through every note: what is left of a note without the noise. */
  const on = (lobe: PeakFound, note: Note) =>
    lobe.peakLevelDbm -
    pointingLoss({
      offsetDeg: note.placeTurns - lobe.positionDeg,
      beamwidthDeg: lobe.beamwidthDeg,
    });
  const found: Working[] = [];
  if (known?.kind === 'peak' && first && second && own.length === 2)
    found.push(...signals, {
      plan: 'peak-from-two-flanks',
      givens: {
        firstTurns: first.placeTurns,
        firstLevelDbm: on(known, first),
        secondTurns: second.placeTurns,
        secondLevelDbm: on(known, second),
        beamwidthTurns: widthTurns,
      },
    });
  const spacingTurns = first && second ? second.placeTurns - first.placeTurns : 0;
  if (
    free?.kind === 'peak' &&
    free.outliers.length === 0 &&
    first &&
    second &&
    third &&
    own.length === 3 &&
    Math.abs(third.placeTurns - second.placeTurns - spacingTurns) < 1e-9
  )
    found.push(...signals, {
      plan: 'peak-from-three-readings',
      givens: {
        middleTurns: second.placeTurns,
        spacingTurns,
        lowerLevelDbm: on(free, first),
        middleLevelDbm: on(free, second),
        upperLevelDbm: on(free, third),
      },
    });
  if (lossHereDb <= LOSS_SEEN_DB)
    found.push({
      plan: 'pointing-loss',
      givens: {
        offsetDeg: placeTurns - peakTurns,
        beamwidthDeg: widthTurns,
      },
    });
  return found;
}
