/** Section of the plan: what the supply along the cable brings to switches, amplifiers and receiving units. */

import { type SupplyAlong, supplyAlong, understoodCommand } from '../../distribution/index.js';
import { within } from '../../errors.js';
import type { JobFile } from '../file/jobFile.js';
import { partNames } from '../file/partNames.js';
import { branchesOf } from './branches.js';
import type { Ledger } from './ledger.js';
import { servedBy, switchedPolarization } from './tuning.js';

/** Supply from one outlet or receiver for one choice of unit and polarization. */
export interface SupplyPlan {
  /** Outlet or receiver that feeds. */
  readonly testPoint: string;
  /** Receiving unit. */
  readonly unit: string;
  /** Voltage at the feed in volts. */
  readonly voltageV: 13 | 18;
  /** As in `supplyAlong`; `misread`: the voltage that arrives means the other polarization, or none. */
  readonly kind: SupplyAlong['kind'] | 'misread';
  /** Part concerned; `null` where none is. */
  readonly at: string | null;
  /** Current drawn from the feed in amperes. */
  readonly currentA: number;
  /** Voltage that arrives at the unit in volts; `null` where the way ends before it. */
  readonly unitVoltageV: number | null;
}

/** Supplies, where something on the way takes current. */
export function supplyPlans(job: JobFile, notes: Ledger): readonly SupplyPlan[] {
  if (!job.distribution) return [];
  const found = new Map<string, SupplyPlan>();
  // A unit that stacks channels is told by messages; its voltage chooses nothing.
  const byCommand = job.distribution.stacking?.kind === 'user-bands';
  for (const slot of job.slots)
    for (const carrier of slot.carriers ?? []) {
      const served = servedBy(job, slot, carrier);
      const { unit } = served;
      if (!unit) continue;
      const polarization = switchedPolarization(carrier);
      const voltageV = polarization === 'vertical' ? 13 : 18;
      for (const branch of branchesOf(job, carrier, served)) {
        const parts = partNames(branch.tree, '');
        const needed =
          unit.supply !== undefined ||
          parts.some(({ part }) => 'supply' in part && part.supply !== undefined);
        if (!needed) {
          notes.miss('supply', `units[${job.units?.indexOf(unit)}].supply`);
          continue;
        }
        for (const { name, kind, part } of parts) {
          // An outlet with a receiver behind it does not feed; its receiver does.
          const feeds = kind === 'receiver' || (kind === 'outlet' && !('to' in part && part.to));
          if (!feeds || name === undefined) continue;
          const key = JSON.stringify([name, unit.name, voltageV]);
          if (found.has(key)) continue;
          const along = within('distribution', () =>
            supplyAlong(
              {
                source: {
                  levelDbuv: 75,
                  ...(unit.supply === undefined ? {} : { supply: unit.supply }),
                },
                tree: branch.tree,
              },
              { from: name, voltageV },
            ),
          );
          const last = along.points.at(-1);
          const unitVoltageV = last?.name === 'source' ? last.voltageV : null;
          found.set(key, {
            testPoint: name,
            unit: unit.name,
            voltageV,
            kind:
              along.kind === 'enough' &&
              unit.switchedByVoltage === true &&
              !byCommand &&
              unitVoltageV !== null &&
              !understands(unitVoltageV, polarization)
                ? 'misread'
                : along.kind,
            at: along.at,
            currentA: along.currentA,
            unitVoltageV,
          });
        }
      }
    }
  return [...found.values()];
}

function understands(voltageV: number, polarization: 'vertical' | 'horizontal'): boolean {
  const command = understoodCommand({ voltageV });
  return command.kind === 'understood' && command.polarization === polarization;
}
