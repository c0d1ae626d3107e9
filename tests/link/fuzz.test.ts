/** Any number in any field: a clear error or finite numbers, never NaN. */

import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  antennaGain,
  crossPolarIsolation,
  depointingLoss,
  halfPowerBeamwidth,
  illuminatedAperture,
  patternGain,
  pointingLoss,
  powerDensity,
  safeDistance,
} from 'slantpath/antenna';
import {
  adaptiveModes,
  adjacentChannel,
  adjacentSatellites,
  antennaNoise,
  availabilityForMargin,
  carrierRatios,
  crossPolarInterference,
  drivenUplink,
  dvbModes,
  freeSpaceLoss,
  groundShare,
  linkBudget,
  marginForAvailability,
  marginSensitivity,
  outages,
  smallestReflector,
  systemNoise,
  transparentLink,
  transponderState,
  uplinkBudget,
} from 'slantpath/link';
import { slotSeparation } from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

/** Usual numbers, edges and rubbish. */
const any = fc.oneof(
  { weight: 12, arbitrary: fc.double({ min: 0, max: 60, noNaN: true }) },
  { weight: 4, arbitrary: fc.double({ min: -200, max: 200, noNaN: true }) },
  { weight: 2, arbitrary: fc.constantFrom(0, -0, 1, 90, 180, 1e-300, 1e300, 36000) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      undefined,
      null,
      {},
      [],
      [3],
      '3',
      '',
      true,
    ) as fc.Arbitrary<unknown>,
  },
) as fc.Arbitrary<number>;

function holdsOnlyFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value === 'object' && value !== null)
    return Object.values(value).every(holdsOnlyFinite);
  return true;
}

/** Calls with numbers taken from `n`, most of them near what the call expects. */
const CALLS: readonly ((n: (usual?: number) => number) => unknown)[] = [
  (n) =>
    antennaGain({
      diameterM: n(1),
      frequencyGHz: n(12),
      efficiencyRatio: n(0.6),
      surfaceErrorMm: n(0.5),
      ohmicLossDb: n(0.1),
    }),
  (n) => halfPowerBeamwidth({ diameterM: n(1), frequencyGHz: n(12), beamwidthFactorDeg: n(70) }),
  (n) => pointingLoss({ offsetDeg: n(1), beamwidthDeg: n(2) }),
  (n) => illuminatedAperture({ edgeTaperDb: n(10) }),
  (n) => patternGain({ kind: 'S.1428-1', diameterM: n(1), frequencyGHz: n(12) }, n(5)),
  (n) =>
    patternGain(
      { kind: 'BO.1213-1', diameterM: n(1), frequencyGHz: n(12), peakGainDbi: n(40) },
      n(5),
    ),
  (n) => patternGain({ kind: 'gaussian', peakGainDbi: n(40), beamwidthDeg: n(2) }, n(5)),
  (n) =>
    patternGain(
      {
        kind: 'illuminated',
        diameterM: n(1),
        frequencyGHz: n(12),
        peakGainDbi: n(40),
        edgeTaperDb: n(10),
      },
      n(5),
    ),
  (n) => patternGain({ kind: 'table', offAxisDeg: [n(0), n(1)], gainDbi: [n(40), n(30)] }, n(0.5)),
  (n) =>
    depointingLoss(
      {
        beamwidthDeg: n(2),
        windStandardDeviationDeg: n(0.1),
        alongArcOffsetDeg: n(0.1),
        eastWestBoxDeg: n(0.1),
      },
      n(1),
    ),
  (n) => powerDensity({ diameterM: n(1), frequencyGHz: n(14), powerW: n(4) }, n(10)),
  (n) =>
    safeDistance(
      { diameterM: n(1), frequencyGHz: n(14), powerW: n(4), antennaGainDbi: n(40) },
      { standard: 'ICNIRP 2020 local', group: 'public' },
    ),
  (n) =>
    crossPolarIsolation({
      kind: 'linear',
      rotationErrorDeg: n(2),
      antennaIsolationDb: n(30),
      waveIsolationDb: n(30),
    }),
  (n) => freeSpaceLoss({ frequencyGHz: n(12), slantRangeKm: n(38000) }),
  (n) =>
    antennaNoise({
      absorptionDb: n(3),
      meanRadiatingTemperatureK: n(275),
      groundShareRatio: n(0.1),
    }),
  (n) => systemNoise({ antennaNoiseK: n(40), feedLossDb: n(0.3), receiverNoiseK: n(60) }),
  (n) =>
    carrierRatios(
      { esN0Db: n(8) },
      { symbolRateMBd: n(30), bitsPerSymbol: n(2), noiseBandwidthMHz: n(33) },
    ),
  (n) => linkBudget(link(n)),
  (n) => marginSensitivity(link(n)),
  (n) => smallestReflector(link(n), { targetMarginDb: n(3), diametersM: [n(1), n(2)] }),
  (n) => availabilityForMargin({ link: link(n), fade: fade(n), marginDb: n(3) }),
  (n) => marginForAvailability({ link: link(n), fade: fade(n), exceededPercent: n(0.1) }),
  (n) => adaptiveModes({ link: link(n), fade: fade(n), modes: dvbModes('DVB-S') }),
  (n) =>
    outages({
      exceededPercent: n(0.1),
      frequencyGHz: n(20),
      elevationDeg: n(30),
      attenuationDb: n(5),
    }),
  (n) => uplinkBudget(uplink(n)),
  (n) =>
    drivenUplink({
      saturationFluxDensityDbwPerM2: n(-90),
      inputBackOffDb: n(5),
      frequencyGHz: n(14),
      figureOfMeritDbPerK: n(0),
    }),
  (n) => transponderState(transponder(n), n(-95)),
  (n) => transparentLink({ ...link(n), uplink: uplink(n), transponder: transponder(n) }),
  (n) =>
    slotSeparation({
      station: { latitudeDeg: n(46), longitudeDeg: n(9), heightM: n(100) },
      fromLongitudeDeg: n(10),
      toLongitudeDeg: n(13),
    }),
  (n) =>
    adjacentSatellites({
      pattern: { kind: 'S.465-6', diameterM: n(1), frequencyGHz: n(12) },
      wantedGainDbi: n(40),
      eirpDensityDbwPerMHz: n(30),
      neighbours: [{ separationDeg: n(3), eirpDensityDbwPerMHz: n(30) }],
    }),
  (n) =>
    adjacentChannel({
      wanted: { symbolRateMBd: n(30), rollOffRatio: n(0.2) },
      other: { symbolRateMBd: n(20), rollOffRatio: n(0.3) },
      spacingMHz: n(30),
    }),
  (n) => crossPolarInterference({ isolationsDb: [n(30), n(25)], wantedLessOtherDb: n(1) }),
  (n) =>
    groundShare({
      pattern: { kind: 'RR-AP8', diameterM: n(1), frequencyGHz: n(12) },
      elevationDeg: n(30),
    }),
];

type Pick = (usual?: number) => number;
const link = (n: Pick) => ({
  carrier: { symbolRateMBd: n(30), mode: { esN0Db: n(6), bitsPerSymbol: n(2) } },
  downlink: {
    eirpDbw: n(50),
    frequencyGHz: n(12),
    slantRangeKm: n(38000),
    clearAttenuationDb: n(0.2),
    rainDb: n(1),
  },
  receiver: { diameterM: n(1), noiseFigureDb: n(1), feedLossDb: n(0.2), pointingOffsetDeg: n(0.1) },
  impairments: [{ name: 'any', carrierToImpairmentDb: n(25) }],
});
const fade = (n: Pick) => {
  const scale = n(2);
  return (percent: number) => ({ attenuationDb: scale / percent ** 0.3 });
};
const uplink = (n: Pick) => ({
  eirpDbw: n(70),
  frequencyGHz: n(14),
  slantRangeKm: n(38000),
  figureOfMeritDbPerK: n(2),
});
const transponder = (n: Pick) => ({
  saturationFluxDensityDbwPerM2: n(-90),
  saturatedEirpDbw: n(50),
  outputBackOff: { kind: 'linear', compressionDb: n(4) } as const,
});

test('either a DomainError or finite numbers, in 10,000 calls', () => {
  let answered = 0;
  let refused = 0;
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: CALLS.length - 1 }),
      fc.array(any, { minLength: 30, maxLength: 30 }),
      // One field in eight is replaced, so that many calls get through to the formulas.
      fc.array(fc.integer({ min: 0, max: 7 }), { minLength: 30, maxLength: 30 }),
      (call, values, dice) => {
        let index = 0;
        const next: Pick = (usual = 1) => {
          const at = index++ % 30;
          return dice[at] === 0 ? (values[at] as number) : usual * (0.5 + (dice[at] ?? 0) / 7);
        };
        try {
          const result = CALLS[call]?.(next);
          answered++;
          expect(holdsOnlyFinite(result), `call ${call}: ${JSON.stringify(result)}`).toBe(true);
        } catch (error) {
          if (!(error instanceof DomainError)) throw error;
          refused++;
        }
      },
    ),
    { numRuns: runs(10_000) },
  );
  console.log(`${answered} calls answered, ${refused} refused`);
  expect(answered).toBeGreaterThan(runs(2_500));
  expect(refused).toBeGreaterThan(runs(1_000));
});
