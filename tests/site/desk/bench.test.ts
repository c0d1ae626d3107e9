/** Peaking on the page: whoever does what it says ends with nothing undecided about the pointing. */

import { recordJobWith } from 'slantpath/job';
import { expect, test } from 'vitest';
import { benchOf, nextPositionDeg, withSample } from '../../../site/src/desk/state/bench.js';
import { newBeside } from '../../../site/src/desk/state/beside.js';
import { type Draft, emptyDraft, type LoosePeaking } from '../../../site/src/desk/state/draft.js';

const job: Draft = {
  ...emptyDraft('Job', '2026-07-14'),
  station: { latitudeDeg: 46.6, longitudeDeg: 10.3 },
  slots: [
    {
      name: 'slot',
      orbitalLongitudeDeg: 16.4,
      carriers: [{ name: 'news', frequencyGHz: 11.347, polarization: 'horizontal' }],
    },
  ],
  mounts: [{ kind: 'fixed', name: 'mount', slots: ['slot'], reflector: { diameterM: 0.9 } }],
  target: { pointingLossDb: 0.3 },
};

const recordWith = (peaking: readonly LoosePeaking[]) => {
  const visits = [{ kind: 'installation', date: '2026-07-14', peaking }];
  return recordJobWith(JSON.stringify({ ...job, visits }), { climate: null });
};

/** Width of the beam as each scale shows it: 70 wavelengths over the diameter, round the mast wider by the cosine of 36.1 degrees. */
const WIDTH_DEG = { azimuth: 2.54, elevation: 2.06 };
const PEAK_DEG = 0.13;

/** Does what the page says on one axis until it says no more, on a lobe read in tenths of a decibel. */
function peaked(axis: 'azimuth' | 'elevation', before: readonly LoosePeaking[]): LoosePeaking {
  let entry: LoosePeaking = { axis, slot: 'slot', carrier: 'news', restDeg: 0 };
  for (let step = 0; step < 30; step += 1) {
    // An axis without a reading is no part of the job yet.
    const record = recordWith(entry.samples ? [...before, entry] : before);
    const bench = benchOf(entry, record, newBeside.display);
    if (!bench) throw new Error('no bench');
    const at = nextPositionDeg(bench);
    if (bench.move.kind === 'turn-and-read' || bench.proveAtDeg !== null) {
      const level = -28.7 - 12 * ((at - PEAK_DEG) / WIDTH_DEG[axis]) ** 2;
      entry = withSample(entry, at, Number(level.toFixed(1)));
    } else if (bench.move.kind === 'go-to-peak') entry = { ...entry, restDeg: at };
    else return entry;
  }
  throw new Error('no end');
}

test('both axes in turn, one instruction at a time', () => {
  const azimuth = peaked('azimuth', []);
  const elevation = peaked('elevation', [azimuth]);
  const { findings, peaking } = recordWith([azimuth, elevation]);
  const codes = findings.map(({ code }) => code);
  expect(codes.filter((code) => /^(pointing|peak-|axis-|main-lobe|not-main)/.test(code))).toEqual(
    [],
  );
  for (const axis of [azimuth, elevation])
    expect(Math.abs(Number(axis.restDeg) - PEAK_DEG)).toBeLessThan(0.1);
  expect(peaking.every(({ mainLobe }) => mainLobe === 'proven')).toBe(true);
});
