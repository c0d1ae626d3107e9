/** How much the margin moves with each input of a budget. */

import type { LinkBudgetInput } from './linkBudgetInput.js';
import { preparedLink, requiredDb, totalEsN0Db } from './preparedLink.js';

/** Effect of one input. */
export interface MarginSensitivity {
  /** Path of the input: `receiver.diameterM`. */
  readonly parameter: string;
  /** Its value, in the unit of its name. */
  readonly value: number;
  /** By how much it was raised, in the same unit. */
  readonly step: number;
  /** What that does to the margin, in dB. */
  readonly marginChangeDb: number;
}

type Change = (link: LinkBudgetInput, value: number) => LinkBudgetInput;

const downlink =
  (field: keyof LinkBudgetInput['downlink']): Change =>
  (link, value) => ({ ...link, downlink: { ...link.downlink, [field]: value } });
const receiver =
  (field: keyof LinkBudgetInput['receiver']): Change =>
  (link, value) => ({ ...link, receiver: { ...link.receiver, [field]: value } });

/** Input, value where it is not given, step. */
const DOWNLINK = [
  ['eirpDbw', 0, 1],
  ['slantRangeKm', 0, 100],
  ['clearAttenuationDb', 0, 0.1],
  ['rainDb', 0, 1],
  ['otherLossDb', 0, 0.1],
  ['meanRadiatingTemperatureK', 275, 5],
] as const;
const RECEIVER = [
  ['diameterM', 0, 0.05],
  ['efficiencyRatio', 0.65, 0.05],
  ['surfaceErrorMm', 0, 0.1],
  ['pointingOffsetDeg', 0, 0.1],
  ['pointingLossDb', 0, 0.1],
  ['polarizationLossDb', 0, 0.1],
  ['feedLossDb', 0, 0.1],
  ['noiseFigureDb', 0, 0.1],
  ['backEndNoiseK', 0, 10],
  ['groundShareRatio', 0.06, 0.02],
] as const;

/**
 * What a small step of each input does to the margin, largest effect first: where care is worth most.
 *
 * Steps: 1 dB of EIRP and rain, 0.1 dB of each other loss and of the noise figure, 5 cm of diameter, 5 points of
 * efficiency, 0.1 mm of surface, 0.1 degree of pointing, 100 km of distance, 10 K behind the block, 5 K of air, 2 points of ground. A gain from a data
 * sheet hides size, efficiency and surface.
 *
 * @throws {@link DomainError} naming the field that is missing or outside its interval.
 *
 * Source: finite steps of {@link linkBudget}. Accuracy: exact for the step.
 * @example
 * ```ts
 * import { dvbMode, marginSensitivity } from 'slantpath/link';
 * const effects = marginSensitivity({
 *   carrier: { symbolRateMBd: 27.5, mode: dvbMode('DVB-S2', '8PSK 2/3') },
 *   downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
 *   receiver: { diameterM: 0.9, noiseFigureDb: 0.7 },
 * });
 * effects[0]?.parameter; // => 'downlink.rainDb'
 * ```
 */
export function marginSensitivity(link: LinkBudgetInput): readonly MarginSensitivity[] {
  const margin = (changed: LinkBudgetInput): number => {
    const prepared = preparedLink(changed);
    return totalEsN0Db(prepared, prepared.weather) - requiredDb(prepared);
  };
  const before = margin(link);
  const effect = (parameter: string, value: number, step: number, change: Change) => {
    // An efficiency or a share near 1 has no room above: step down and turn the sign.
    const down = parameter.endsWith('Ratio') && value + step > 1;
    const moved = margin(change(link, down ? value - step : value + step)) - before;
    return { parameter, value: value + 0, step, marginChangeDb: (down ? -moved : moved) + 0 };
  };
  const effects = [
    ...DOWNLINK.map(([field, without, step]) =>
      effect(`downlink.${field}`, link.downlink[field] ?? without, step, downlink(field)),
    ),
    ...RECEIVER.map(([field, without, step]) =>
      effect(`receiver.${field}`, link.receiver[field] ?? without, step, receiver(field)),
    ),
  ];
  return effects.sort((a, b) => Math.abs(b.marginChangeDb) - Math.abs(a.marginChangeDb));
}
