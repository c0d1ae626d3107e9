/** Links that the tests share. */

import fc from 'fast-check';
import { dvbMode, type LinkBudgetInput, type TransparentLinkInput } from 'slantpath/link';

/** A hut's link to an invented slot at 16.4 E. */
export const LINK = {
  carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
  downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
  receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
} satisfies LinkBudgetInput;

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any link, in clear weather, pointed well. */
export const anyLink: fc.Arbitrary<LinkBudgetInput> = fc.record({
  carrier: fc.record({
    symbolRateMBd: within(0.1, 60),
    mode: fc.record({ esN0Db: within(-10, 20), bitsPerSymbol: within(0.1, 6) }),
    implementationLossDb: within(0, 3),
  }),
  downlink: fc.record({
    eirpDbw: within(30, 65),
    frequencyGHz: within(3.4, 31),
    slantRangeKm: within(35786, 41700),
    clearAttenuationDb: within(0, 1),
    otherLossDb: within(0, 1),
  }),
  receiver: fc.record({
    diameterM: within(0.4, 5),
    efficiencyRatio: within(0.5, 0.8),
    polarizationLossDb: within(0, 0.5),
    feedLossDb: within(0, 0.5),
    noiseFigureDb: within(0.2, 3),
    groundShareRatio: within(0, 0.2),
  }),
  impairments: fc.array(
    fc.record({
      name: fc.constantFrom('uplink-noise', 'intermodulation', 'adjacent-satellites'),
      carrierToImpairmentDb: within(10, 40),
    }),
    { maxLength: 3 },
  ),
});

/** The hut's path through rain. */
export const PATH = {
  latitudeDeg: 46.4,
  heightM: 1900,
  rainHeightKm: 2.9,
  rainRate001MmPerH: 35,
  frequencyGHz: 11.7,
  elevationDeg: 36,
  tiltDeg: 0,
};

/** Fades of A = a ln(100 / p) dB, exponential in time: P(A > x) = exp(-x / a). They add no noise. */
export const exponential = (scaleDb: number) => (percent: number) => ({
  attenuationDb: scaleDb * Math.log(100 / percent),
  rainDb: 0,
});

/** Up and down through a transponder that passes on what it gets. */
export const TRANSPARENT: TransparentLinkInput = {
  carrier: { symbolRateMBd: 30, mode: { esN0Db: 6, bitsPerSymbol: 2 } },
  uplink: { eirpDbw: 70, frequencyGHz: 14.25, slantRangeKm: 38000, figureOfMeritDbPerK: 60 },
  transponder: {
    saturationFluxDensityDbwPerM2: -80,
    saturatedEirpDbw: 60,
    outputBackOff: { kind: 'linear', compressionDb: 3 },
  },
  downlink: { frequencyGHz: 11.7, slantRangeKm: 38000 },
  receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
};
