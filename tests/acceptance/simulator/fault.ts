/** A fault of the simulator: what it does to the true state of every channel, and what the checks would truly show. */

import type { CauseCarrier, CauseTestPoint, FaultCause } from 'slantpath/acceptance';

/**
 * How a visit goes: `usual` reads both outlets; in the `sparse` world one outlet is read and the other branch is not, few looks are taken,
 * and another satellite leaves half of the planned frequencies empty.
 */
export type World = 'usual' | 'sparse';

/** True effect on one carrier at one test point. */
export interface Effect {
  carrierDb: number;
  noiseRiseDb: number;
  unwanted: number;
  gainDb: number;
  rotationDeg: number;
  spoiltIsolation: number;
  foreign: number;
}

/** A fault drawn: its effect and what the checks would truly show. */
export interface DrawnFault {
  readonly cause: FaultCause;
  readonly location: string | null;
  readonly effect: (carrier: CauseCarrier, point: CauseTestPoint) => Partial<Effect>;
  readonly leanDeg?: number;
  readonly raining?: boolean;
  readonly sunSlot?: string;
  readonly obstacleSlots?: readonly string[];
  readonly badSegment?: string;
  readonly wrongSegment?: string;
  readonly unwantedCarrier?: boolean;
  readonly voltageV?: (testPoint: string) => number;
  readonly rotationOf?: (slot: string) => number;
  readonly riseDb?: (slot: string) => number;
  readonly recoversDb?: number;
}

/** A value that belongs to a name, drawn once. */
export function perName(draw: () => number): (name: string) => number {
  const values = new Map<string, number>();
  return (name) => {
    const known = values.get(name) ?? draw();
    values.set(name, known);
    return known;
  };
}
