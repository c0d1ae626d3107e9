/** Links that the tests share. */

import fc from 'fast-check';
import { dvbMode, type LinkBudgetInput } from 'slantpath/link';

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
      carrierRatioDb: within(10, 40),
    }),
    { maxLength: 3 },
  ),
});
