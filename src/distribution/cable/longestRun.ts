/** The longest run of cable that still works: by level, by slope, by carrier-to-noise ratio and by supply. */

import { DomainError, inRange } from '../../errors.js';
import { type Keys, knownOnly } from '../../keys.js';
import {
  type CableType,
  checkedCable,
  checkedFrequencyMHz,
  checkedTemperatureC,
  runLossDb,
} from './cable.js';

/** A run of cable and what must hold at its far end. */
export interface LongestRunQuestion {
  /** The cable. */
  readonly cable: CableType;
  /** Level at the near end in dBuV, at the highest frequency. */
  readonly levelDbuv: number;
  /** Lowest level at the far end in dBuV. */
  readonly lowestLevelDbuv: number;
  /** Highest frequency in MHz; 2150 by default. */
  readonly highestFrequencyMHz?: number;
  /** Lowest frequency in MHz; 950 by default; counts for the slope only. */
  readonly lowestFrequencyMHz?: number;
  /** Largest slope over the band in dB that the receiver takes; left out, the slope does not limit. */
  readonly largestSlopeDb?: number;
  /** Other losses of the run (connectors, outlet) in dB; 0 by default. */
  readonly otherLossDb?: number;
  /** Temperature of the cable in degrees Celsius; 20 by default. */
  readonly temperatureC?: number;
  /** Supply through the run; left out, the supply does not limit. */
  readonly supply?: {
    /** Voltage at the feeding end in volts. */
    readonly voltageV: number;
    /** Current in amperes. */
    readonly currentA: number;
    /** Least voltage at the other end in volts. */
    readonly minimumVoltageV: number;
    /** Other drops (diodes) in volts; 0 by default. */
    readonly otherDropV?: number;
  };
}

const LONGEST_RUN_QUESTION_KEYS = {
  cable: true,
  levelDbuv: true,
  lowestLevelDbuv: true,
  highestFrequencyMHz: true,
  lowestFrequencyMHz: true,
  largestSlopeDb: true,
  otherLossDb: true,
  temperatureC: true,
  supply: true,
} satisfies Keys<LongestRunQuestion>;

/** Longest runs in metres; `null` where that does not limit. */
export interface LongestRun {
  /** The longest run in metres, 0 or more; `null` where nothing limits. */
  readonly lengthM: number | null;
  /** What limits it; `nothing` with `null`. */
  readonly limitedBy: 'level' | 'slope' | 'supply' | 'nothing';
  /** By the level at the highest frequency. */
  readonly byLevelM: number | null;
  /** By the slope between the two frequencies. */
  readonly bySlopeM: number | null;
  /** By the voltage. */
  readonly bySupplyM: number | null;
}

/** Length at which a quantity that grows in proportion uses up what there is. */
function lengthFor(budget: number, perMetre: number): number | null {
  if (budget < 0) return 0;
  return perMetre > 0 ? budget / perMetre : null;
}

/**
 * Longest run of cable at whose end level, slope and supply voltage still hold.
 *
 * @throws {@link DomainError} naming the field; `inconsistent` for swapped frequencies.
 * Source: cable loss s sqrt(f) + d f, Ohm's law.
 * Accuracy: that of the cable's figures.
 * @example
 * ```ts
 * import { genericCable, longestRun } from 'slantpath/distribution';
 * const run = longestRun({
 *   cable: genericCable('series-6'),
 *   levelDbuv: 75,
 *   lowestLevelDbuv: 53,
 *   supply: { voltageV: 17, currentA: 0.2, minimumVoltageV: 16 },
 * });
 * run.limitedBy; // => 'level'
 * run.lengthM?.toFixed(0); // => '68'
 * ```
 */
export function longestRun(question: LongestRunQuestion): LongestRun {
  knownOnly('question', question, LONGEST_RUN_QUESTION_KEYS);
  const cable = checkedCable('cable', question.cable);
  const high = checkedFrequencyMHz('highestFrequencyMHz', question.highestFrequencyMHz ?? 2150);
  const low = checkedFrequencyMHz(
    'lowestFrequencyMHz',
    question.lowestFrequencyMHz ?? Math.min(950, high),
  );
  if (low > high)
    throw new DomainError({
      code: 'inconsistent',
      parameter: 'lowestFrequencyMHz',
      received: low,
      allowed: `at most highestFrequencyMHz (${high})`,
      slip: 'were the frequencies swapped?',
    });
  const temperatureC = checkedTemperatureC(question.temperatureC);
  const budgetDb =
    inRange('levelDbuv', question.levelDbuv, -50, 150) -
    inRange('lowestLevelDbuv', question.lowestLevelDbuv, -50, 150) -
    inRange('otherLossDb', question.otherLossDb ?? 0, 0, 200);
  const atHigh = runLossDb(cable, 1, high, temperatureC);
  const atLow = runLossDb(cable, 1, low, temperatureC);
  const byLevelM = lengthFor(budgetDb, atHigh);
  const bySlopeM =
    question.largestSlopeDb === undefined
      ? null
      : lengthFor(inRange('largestSlopeDb', question.largestSlopeDb, 0, 100), atHigh - atLow);
  const bySupplyM = question.supply ? supplyLengthM(question.supply, cable) : null;
  const limits = [
    { limitedBy: 'level', lengthM: byLevelM },
    { limitedBy: 'slope', lengthM: bySlopeM },
    { limitedBy: 'supply', lengthM: bySupplyM },
  ] as const;
  let shortest: Pick<LongestRun, 'limitedBy' | 'lengthM'> = { limitedBy: 'nothing', lengthM: null };
  for (const limit of limits)
    if (limit.lengthM !== null && (shortest.lengthM === null || limit.lengthM < shortest.lengthM))
      shortest = limit;
  return { ...shortest, byLevelM, bySlopeM, bySupplyM };
}

const SUPPLY_LENGTH_M_SUPPLY_KEYS = {
  voltageV: true,
  currentA: true,
  minimumVoltageV: true,
  otherDropV: true,
} satisfies Keys<Parameters<typeof supplyLengthM>[0]>;

function supplyLengthM(
  supply: NonNullable<LongestRunQuestion['supply']>,
  cable: ReturnType<typeof checkedCable>,
): number | null {
  knownOnly('supply', supply, SUPPLY_LENGTH_M_SUPPLY_KEYS);
  const budgetV =
    inRange('supply.voltageV', supply.voltageV, 0, 60) -
    inRange('supply.minimumVoltageV', supply.minimumVoltageV, 0, 60) -
    inRange('supply.otherDropV', supply.otherDropV ?? 0, 0, 20);
  const currentA = inRange('supply.currentA', supply.currentA, 0, 20, 'is it given in mA?');
  return lengthFor(budgetV, (currentA * cable.loopResistanceOhmPer100m) / 100);
}
