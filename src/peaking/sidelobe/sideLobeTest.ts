/** Main lobe or side lobe: what width and level of a peak say, and the move that decides it. */

import { inRange, object, positive } from '../../errors.js';
import { type Keys, known, knownOnly } from '../../keys.js';
import { dbToRatio, ratioToDb } from '../../numeric/decibel.js';
import {
  APERTURE_LOBE_KEYS,
  type ApertureInput,
  type ApertureLobe,
  apertureLobes,
} from './apertureLobes.js';

/** A peak that was found, and what is expected of the main one. */
export interface SideLobeTestInput {
  /** The aperture, across the axis that was turned; or its lobes, from {@link apertureLobes}, to test many peaks. */
  readonly aperture: ApertureInput | readonly ApertureLobe[];
  /** Half-power beamwidth of the peak found, in degrees ({@link fitPeak} without a given width). */
  readonly beamwidthDeg: number;
  /** Its standard uncertainty in degrees, 0 or more. */
  readonly beamwidthStandardUncertaintyDeg: number;
  /** Level of the peak found in dBm, noise included; default not used. */
  readonly peakLevelDbm?: number;
  /** Level expected of the main peak in dBm; default not used. */
  readonly expectedLevelDbm?: number;
  /** Standard uncertainty of that expectation in dB; default 3 (receiving units differ by 5 dB and more). */
  readonly levelStandardUncertaintyDb?: number;
  /** Level without signal in dBm; default far below. */
  readonly noiseFloorDbm?: number;
  /** Probability of the main lobe before the test, above 0 and below 1; default 0.5. */
  readonly priorMainRatio?: number;
  /** Probability at which the test decides, 0.5 to 0.9999; default 0.95. */
  readonly decideAtRatio?: number;
}

const SIDE_LOBE_TEST_INPUT_KEYS = {
  aperture: true,
  beamwidthDeg: true,
  beamwidthStandardUncertaintyDeg: true,
  peakLevelDbm: true,
  expectedLevelDbm: true,
  levelStandardUncertaintyDb: true,
  noiseFloorDbm: true,
  priorMainRatio: true,
  decideAtRatio: true,
} satisfies Keys<SideLobeTestInput>;

/** One lobe that the peak could be. */
export interface LobeHypothesis {
  /** 0 main lobe, 1 first side lobe, 2 second. */
  readonly order: number;
  /** Width that it would have in degrees. */
  readonly beamwidthDeg: number;
  /** Level that it would have below the main peak in dB. */
  readonly belowMainDb: number;
  /** Standard deviations between its width and the one found, negative if found narrower. */
  readonly widthDeviations: number;
  /** Standard deviations between its level and the one found; `null` where no level was compared. */
  readonly levelDeviations: number | null;
  /** Probability after the test, 0 to 1. */
  readonly probabilityRatio: number;
}

/** What the test says; read `kind` first. */
export interface SideLobeTest {
  /** `neither`: no lobe of this aperture looks like that (all beyond four deviations). */
  readonly kind: 'main-lobe' | 'side-lobe' | 'undecided' | 'neither';
  /** Probability of the main lobe, 0 to 1. */
  readonly mainProbabilityRatio: number;
  /** Each lobe considered. */
  readonly hypotheses: readonly LobeHypothesis[];
  /** The move that decides: turn this far either way, in degrees on the sky. */
  readonly decidingMoveDeg: number;
  /** Change of level to expect there from the main lobe, in dB (a fall on both sides). */
  readonly changeIfMainDb: number;
  /** Change of level to expect from the first side lobe on the side of the main one, in dB (a rise). */
  readonly changeIfSideLobeDb: number;
}

/** Relative standard uncertainty of a lobe's width from an illumination that is not exactly known. */
const WIDTH_MODEL_RATIO = 0.07;

/** Standard uncertainty in dB of a side lobe's level from struts and surface. */
const SIDE_LEVEL_MODEL_DB = 3;

/** Share of the first side lobe among the side lobes that a peak may be. */
const FIRST_SIDE_SHARE = 0.7;

/** Deviations beyond which a lobe is excluded. */
const EXCLUDED = 4;

/**
 * Tests a peak against the main lobe and the first two side lobes of an aperture.
 *
 * Width: a side lobe is hardly half as wide as the main lobe, and no receiving unit changes that. Level: it is
 * 17 dB or more down, where the noise floor lets it be seen. Both are compared in standard deviations, illumination and
 * struts allowed for, and combined by Bayes' rule.
 *
 * @throws {@link DomainError} naming the field that is wrong.
 *
 * Source: widths and levels from {@link apertureLobes}; rates of false alarm and miss in the page on side lobes.
 * @example
 * ```ts
 * import { sideLobeTest } from 'slantpath/peaking';
 * const test = sideLobeTest({
 *   aperture: { diameterM: 0.9, frequencyGHz: 11.7 },
 *   beamwidthDeg: 0.8,
 *   beamwidthStandardUncertaintyDeg: 0.08,
 * });
 * test.kind; // => 'side-lobe'
 * test.decidingMoveDeg.toFixed(1); // => '2.9'
 * ```
 */
export function sideLobeTest(input: SideLobeTestInput): SideLobeTest {
  knownOnly('input', input, SIDE_LOBE_TEST_INPUT_KEYS);
  const lobes = lobesOf(input.aperture);
  const widthDeg = positive('beamwidthDeg', input.beamwidthDeg);
  const doubt =
    inRange('beamwidthStandardUncertaintyDeg', input.beamwidthStandardUncertaintyDeg, 0, 180) /
    widthDeg;
  const prior = inRange('priorMainRatio', input.priorMainRatio ?? 0.5, 1e-6, 1 - 1e-6);
  const decideAt = inRange('decideAtRatio', input.decideAtRatio ?? 0.95, 0.5, 0.9999);
  const level = levelOf(input);
  const logs = lobes.map((lobe) => {
    const spread = Math.hypot(doubt, WIDTH_MODEL_RATIO);
    const widthDeviations = Math.log(widthDeg / lobe.beamwidthDeg) / spread;
    const levelDeviations = level === undefined ? null : level(lobe.order, lobe.belowMainDb);
    const share =
      lobe.order === 0
        ? prior
        : (1 - prior) * (lobe.order === 1 ? FIRST_SIDE_SHARE : 1 - FIRST_SIDE_SHARE);
    const log =
      Math.log(share) -
      0.5 * widthDeviations ** 2 -
      (levelDeviations === null
        ? 0
        : 0.5 * levelDeviations.deviations ** 2 + Math.log(levelDeviations.spread));
    return { lobe, widthDeviations, levelDeviations: levelDeviations?.deviations ?? null, log };
  });
  const most = logs.reduce((a, b) => Math.max(a, b.log), Number.NEGATIVE_INFINITY);
  const sum = logs.reduce((a, b) => a + Math.exp(b.log - most), 0);
  const hypotheses = logs.map(({ lobe, widthDeviations, levelDeviations, log }) => ({
    order: lobe.order,
    beamwidthDeg: lobe.beamwidthDeg,
    belowMainDb: lobe.belowMainDb,
    widthDeviations,
    levelDeviations,
    probabilityRatio: Math.exp(log - most) / sum,
  }));
  const mainProbabilityRatio = hypotheses[0]?.probabilityRatio ?? 0;
  const excluded = hypotheses.every(
    ({ widthDeviations, levelDeviations }) =>
      Math.max(Math.abs(widthDeviations), Math.abs(levelDeviations ?? 0)) > EXCLUDED,
  );
  const side = lobes[1];
  return {
    kind: excluded
      ? 'neither'
      : mainProbabilityRatio >= decideAt
        ? 'main-lobe'
        : mainProbabilityRatio <= 1 - decideAt
          ? 'side-lobe'
          : 'undecided',
    mainProbabilityRatio,
    hypotheses,
    decidingMoveDeg: side?.offsetDeg ?? 0,
    changeIfMainDb: -(side?.belowMainDb ?? 0),
    changeIfSideLobeDb: side?.belowMainDb ?? 0,
  };
}

/** The main lobe and two side lobes, computed or as given. */
function lobesOf(aperture: SideLobeTestInput['aperture']): readonly ApertureLobe[] {
  object('aperture', aperture);
  if ('diameterM' in aperture || !Array.isArray(aperture))
    return apertureLobes(aperture as ApertureInput, 2);
  inRange('aperture.length', aperture.length, 3, 6, 'the main lobe and two side lobes are needed');
  return aperture.slice(0, 3).map((lobe: ApertureLobe, order) => {
    const path = `aperture[${order}]`;
    known(path, lobe, APERTURE_LOBE_KEYS);
    return {
      order,
      offsetDeg: inRange(`${path}.offsetDeg`, lobe.offsetDeg, 0, 90),
      belowMainDb: inRange(`${path}.belowMainDb`, lobe.belowMainDb, 0, 200),
      beamwidthDeg: inRange(`${path}.beamwidthDeg`, lobe.beamwidthDeg, 1e-4, 180),
    };
  });
}

/** Deviations of the level found from that of a lobe, or `undefined` where levels are not compared. */
function levelOf(input: SideLobeTestInput) {
  if (input.peakLevelDbm === undefined || input.expectedLevelDbm === undefined) return undefined;
  const foundDbm = inRange('peakLevelDbm', input.peakLevelDbm, -300, 300);
  const expectedDbm = inRange('expectedLevelDbm', input.expectedLevelDbm, -300, 300);
  const uncertainty = positive('levelStandardUncertaintyDb', input.levelStandardUncertaintyDb ?? 3);
  const floorDbm = inRange('noiseFloorDbm', input.noiseFloorDbm ?? -400, -400, 300);
  return (order: number, belowMainDb: number) => {
    const bareDbm = expectedDbm - belowMainDb;
    const predictedDbm = bareDbm + ratioToDb(1 + dbToRatio(Math.min(300, floorDbm - bareDbm)));
    const spread = Math.hypot(uncertainty, order === 0 ? 0 : SIDE_LEVEL_MODEL_DB);
    return { deviations: (foundDbm - predictedDbm) / spread, spread };
  };
}
