/** The line-up of a transmitting station, step by step, and the margin that uplink power control leaves. */

import { inRange, positive } from '../errors.js';
import { type Keys, known, knownOnly } from '../keys.js';
import { ratioToDb } from '../numeric/decibel.js';

/** What a station is lined up with. */
export interface LineUpInput {
  /** Power of the carrier at the amplifier in watts, above 0 to 1e6. */
  readonly powerW: number;
  /** Loss between amplifier and antenna in dB, 0 to 30; default 0. */
  readonly feedLossDb?: number;
  /** Gain of the antenna in dBi, -10 to 80. */
  readonly antennaGainDbi: number;
  /** Symbol rate in millions of symbols a second, above 0. */
  readonly symbolRateMBd: number;
  /** Reference bandwidth for densities in MHz; default 0.04 (40 kHz). */
  readonly referenceBandwidthMHz?: number;
  /** Largest EIRP that the operator allows in dBW; absent where none is stated. */
  readonly allowedEirpDbw?: number;
}

const LINE_UP_INPUT_KEYS = {
  powerW: true,
  feedLossDb: true,
  antennaGainDbi: true,
  symbolRateMBd: true,
  referenceBandwidthMHz: true,
  allowedEirpDbw: true,
} satisfies Keys<LineUpInput>;

/** Line-up of a station. */
export interface LineUp {
  /** Power at the flange in dBW. */
  readonly flangeDbw: number;
  /** EIRP in dBW. */
  readonly eirpDbw: number;
  /** EIRP density on the axis in dBW in the reference bandwidth. */
  readonly densityDbw: number;
  /** Allowed less present EIRP in dB, below 0 where it is too much; absent where no limit is stated. */
  readonly toAllowedDb?: number;
  /** Levels at which to stop and ask, in dBW of EIRP: first carrier, half way, full. */
  readonly stepsDbw: readonly number[];
}

/**
 * EIRP and density of a station, with the levels of a careful line-up: 20 dB below, 10 dB below, 3 dB below, full.
 *
 * Nobody transmits, at any level, before the operator's control centre has given its leave; each step waits for its word.
 *
 * @throws {@link DomainError} naming the field.
 * Source: EIRP = power - losses + gain; steps by common practice of the trade. Accuracy: rounding; the power meter's comes on top.
 * @example
 * ```ts
 * import { lineUp } from 'slantpath/transmit';
 * const line = lineUp({ powerW: 4, feedLossDb: 0.5, antennaGainDbi: 43.2, symbolRateMBd: 2 });
 * line.eirpDbw.toFixed(2); // => '48.72'
 * line.densityDbw.toFixed(2); // => '31.73'
 * ```
 */
export function lineUp(station: LineUpInput): LineUp {
  const given = known('station', station, LINE_UP_INPUT_KEYS);
  const powerW = inRange('powerW', positive('powerW', given.powerW), 0, 1e6, 'is it in watts?');
  const flangeDbw = ratioToDb(powerW) - inRange('feedLossDb', given.feedLossDb ?? 0, 0, 30);
  const eirpDbw = flangeDbw + inRange('antennaGainDbi', given.antennaGainDbi, -10, 80);
  const rate = positive('symbolRateMBd', given.symbolRateMBd);
  const reference = positive('referenceBandwidthMHz', given.referenceBandwidthMHz ?? 0.04);
  const line = {
    flangeDbw,
    eirpDbw,
    densityDbw: eirpDbw - ratioToDb(Math.max(1, rate / reference)),
    stepsDbw: [20, 10, 3, 0].map((below) => eirpDbw - below),
  };
  if (given.allowedEirpDbw === undefined) return line;
  const allowed = inRange('allowedEirpDbw', given.allowedEirpDbw, -100, 120);
  return { ...line, toAllowedDb: allowed - eirpDbw };
}

/** What power control can do about a fade. */
export interface PowerControlMargin {
  /** Fade that the control makes up for in dB, 0 or more. */
  readonly madeUpDb: number;
  /** Fade that is left at the satellite in dB, 0 or more. */
  readonly leftDb: number;
  /** Error of the control itself in dB that has to be kept free below the limit. */
  readonly keptFreeDb: number;
}

const UPLINK_POWER_CONTROL_CONTROL_KEYS = {
  fadeDb: true,
  amplifierReserveDb: true,
  allowedRiseDb: true,
  controlErrorDb: true,
} satisfies Keys<Parameters<typeof uplinkPowerControl>[0]>;

/**
 * What uplink power control makes up for: the fade, but not more than the amplifier and the operator's limit leave.
 *
 * @param control  Fade of the uplink in dB, 0 to 100; reserve of the amplifier above the clear-sky power in dB; how far the operator lets
 *   the EIRP rise in a fade in dB; error of the control in dB (the beacon's frequency scaling and delay), default 1.
 * @throws {@link DomainError} naming the field.
 * Source: common practice of the trade. Accuracy: the control's own error, which is kept free.
 * @example
 * ```ts
 * import { uplinkPowerControl } from 'slantpath/transmit';
 * const fade = { fadeDb: 8, amplifierReserveDb: 6, allowedRiseDb: 10 };
 * uplinkPowerControl(fade).leftDb; // => 3
 * ```
 */
export function uplinkPowerControl(control: {
  readonly fadeDb: number;
  readonly amplifierReserveDb: number;
  readonly allowedRiseDb: number;
  readonly controlErrorDb?: number;
}): PowerControlMargin {
  const given = knownOnly('control', control, UPLINK_POWER_CONTROL_CONTROL_KEYS);
  const fadeDb = inRange('fadeDb', given.fadeDb, 0, 100);
  const reserveDb = inRange('amplifierReserveDb', given.amplifierReserveDb, 0, 60);
  const riseDb = inRange('allowedRiseDb', given.allowedRiseDb, 0, 60);
  const keptFreeDb = inRange('controlErrorDb', given.controlErrorDb ?? 1, 0, 10);
  const madeUpDb = Math.max(0, Math.min(fadeDb, Math.min(reserveDb, riseDb) - keptFreeDb));
  return { madeUpDb, leftDb: fadeDb - madeUpDb, keptFreeDb };
}
