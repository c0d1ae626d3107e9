/** Section of the plan: where each slot stands, true and magnetic, and how the feed is turned. */

import { within } from '../../errors.js';
import {
  instantToDecimalYear,
  magneticField,
  trueToMagneticBearing,
} from '../../magnetic/index.js';
import { lookAngles, polarizationSkew } from '../../pointing/index.js';
import type { JobFile } from '../jobFile.js';

/** Magnetic north on the day of the work. */
export interface NorthPlan {
  /** Declination in degrees, east positive. */
  readonly declinationDeg: number;
  /** Its standard uncertainty in degrees. */
  readonly declinationStandardUncertaintyDeg: number;
  /** The model. */
  readonly model: string;
  /** Whether the day lies inside the model's validity. */
  readonly validity: 'valid' | 'before-model' | 'after-model';
  /** Whether a compass can be trusted here. */
  readonly compassZone: 'usable' | 'caution' | 'blackout';
}

/** Direction of one slot. */
export interface DirectionPlan {
  /** Name of the slot. */
  readonly slot: string;
  /** Longitude of the slot in degrees, east positive. */
  readonly orbitalLongitudeDeg: number;
  /** `visible`, `below-horizon`, or `overhead`, where azimuth has no meaning. */
  readonly kind: 'visible' | 'below-horizon' | 'overhead';
  /** Azimuth in degrees from true north, [0, 360); `null` overhead. */
  readonly azimuthDeg: number | null;
  /** The same from magnetic north. */
  readonly magneticBearingDeg: number | null;
  /** Geometric elevation in degrees. */
  readonly elevationDeg: number;
  /** Slant range in kilometres. */
  readonly slantRangeKm: number;
  /** Rotation of the feed in degrees, clockwise seen from behind the antenna; `null` for circular polarization and overhead. */
  readonly skewDeg: number | null;
}

/** Magnetic north for the job. */
export function northPlan(job: JobFile): NorthPlan {
  const year = within('date', () => instantToDecimalYear(`${job.date}T12:00:00Z`));
  const field = within('station', () => magneticField(job.station, year));
  return {
    declinationDeg: field.declinationDeg,
    declinationStandardUncertaintyDeg: field.declinationStandardUncertaintyDeg,
    model: field.model,
    validity: field.validity,
    compassZone: field.compassZone,
  };
}

/** Directions of the job's slots. */
export function directionPlans(job: JobFile, north: NorthPlan): readonly DirectionPlan[] {
  return job.slots.map((slot, index) =>
    within(`slots[${index}]`, () => {
      const { orbitalLongitudeDeg } = slot;
      const look = lookAngles(job.station, orbitalLongitudeDeg);
      const linear = slot.carriers.some(({ polarization }) => isLinear(polarization));
      const skew = polarizationSkew({
        station: job.station,
        orbitalLongitudeDeg,
        polarization: linear
          ? { kind: 'linear', tiltDeg: slot.polarizationTiltDeg ?? 0 }
          : { kind: 'circular' },
      });
      const azimuthDeg = look.kind === 'overhead' ? null : look.azimuthDeg;
      return {
        slot: slot.name,
        orbitalLongitudeDeg,
        kind: look.kind,
        azimuthDeg,
        magneticBearingDeg:
          azimuthDeg === null ? null : trueToMagneticBearing(azimuthDeg, north.declinationDeg),
        elevationDeg: look.elevationDeg,
        slantRangeKm: look.slantRangeKm,
        skewDeg: 'skewDeg' in skew ? skew.skewDeg : null,
      };
    }),
  );
}

/** Whether a polarization is linear. */
export function isLinear(polarization: string): boolean {
  return polarization === 'horizontal' || polarization === 'vertical';
}
