/** Section of the plan: where each slot stands, true and magnetic, and how its wave is turned. */

import type { Station } from '../../earth/index.js';
import { within } from '../../errors.js';
import {
  instantToDecimalYear,
  magneticField,
  trueToMagneticBearing,
} from '../../magnetic/index.js';
import { apparentElevation, lookAngles, polarizationSkew } from '../../pointing/index.js';
import type { JobFile } from '../file/jobFile.js';
import type { Ledger } from './ledger.js';

/** Magnetic north on the day of the work. */
export interface NorthPlan {
  /** Day for which it holds. */
  readonly date: string;
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
  /** The same from magnetic north; `null` overhead and where the job has no day. */
  readonly magneticBearingDeg: number | null;
  /** Geometric elevation in degrees. */
  readonly elevationDeg: number;
  /** Elevation at which the beam must point, with the refraction of the air, in degrees. */
  readonly apparentElevationDeg: number;
  /** Slant range in kilometres. */
  readonly slantRangeKm: number;
  /** Turn of the wave in degrees, clockwise seen from behind the antenna; `null` for circular polarization and overhead. */
  readonly skewDeg: number | null;
}

/** The station with its height. */
export function stationOf(job: JobFile, notes: Ledger): Station {
  const { latitudeDeg, longitudeDeg, heightM } = job.station;
  return { latitudeDeg, longitudeDeg, heightM: notes.number(heightM, 'station.heightM', 0, 'm') };
}

/** Day for which the job is planned. */
function dayOf(job: JobFile): string | undefined {
  return job.date ?? job.visits[0]?.date;
}

/** Magnetic north for the job; `null` where it has no day. */
export function northPlan(job: JobFile, station: Station, notes: Ledger): NorthPlan | null {
  const date = dayOf(job);
  if (date === undefined) {
    notes.miss('north', 'date');
    return null;
  }
  const year = within('date', () => instantToDecimalYear(`${date}T12:00:00Z`));
  const field = within('station', () => magneticField(station, year));
  return {
    date,
    declinationDeg: field.declinationDeg,
    declinationStandardUncertaintyDeg: field.declinationStandardUncertaintyDeg,
    model: field.model,
    validity: field.validity,
    compassZone: field.compassZone,
  };
}

/** Elevation with refraction, where the formula holds. */
export function apparentDeg(elevationDeg: number, { heightM }: Station): number {
  if (elevationDeg < -2) return elevationDeg;
  return apparentElevation(elevationDeg, Math.max(-500, heightM)).apparentElevationDeg;
}

/** Directions of the job's slots. */
export function directionPlans(
  job: JobFile,
  station: Station,
  north: NorthPlan | null,
): readonly DirectionPlan[] {
  return job.slots.map((slot, index) =>
    within(`slots[${index}]`, () => {
      const { orbitalLongitudeDeg } = slot;
      const look = lookAngles(station, orbitalLongitudeDeg);
      const carriers = slot.carriers ?? [];
      const linear =
        carriers.length === 0 || carriers.some(({ polarization }) => isLinear(polarization));
      const skew = polarizationSkew({
        station,
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
          azimuthDeg === null || north === null
            ? null
            : trueToMagneticBearing({ azimuthDeg, declinationDeg: north.declinationDeg }),
        elevationDeg: look.elevationDeg,
        apparentElevationDeg: apparentDeg(look.elevationDeg, station),
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
