/** Section of the plan: what the wind does to a mount. Loads and moments; whether anything bears them is for a structural engineer. */

import { halfPowerBeamwidth } from '../../antenna/index.js';
import { DomainError } from '../../errors.js';
import {
  type Ballast,
  ballast,
  type LeftToEngineer,
  mastUnderWind,
  peakVelocityPressure,
  reflectorLoad,
  velocityPressure,
  windExceededPercent,
  windPointingLoss,
} from '../../wind/index.js';
import type { JobFile, JobMount } from '../file/jobFile.js';

/** Loss of pointing at one speed of the wind. */
export interface WindPointingPlan {
  /** Speed of the wind in metres a second, as a mean over ten minutes. */
  readonly windSpeedMPerS: number;
  /** Slope of the mast's head in degrees. */
  readonly slopeDeg: number;
  /** Twist of the mast's head in degrees. */
  readonly twistDeg: number;
  /** Loss in dB at the highest frequency that the mount receives or sends. */
  readonly lossDb: number;
  /** Share of the year in which the wind is stronger, in per cent; `null` without the mean speed of the place. */
  readonly exceededPercent: number | null;
}

/** What the wind does to one mount; read `kind` first. */
export type WindPlan = { readonly mount: string } & (
  | {
      readonly kind: 'load';
      /** Peak pressure in pascals. */
      readonly pressurePa: number;
      /** Force on the reflector along the wind in newtons. */
      readonly forceN: number;
      /** Moment at the foot of the mast in newton metres; `null` without the mast's length. */
      readonly footMomentNm: number | null;
      /** Force coefficient that was used. */
      readonly forceCoefficientRatio: number;
      /** Total mass against sliding and overturning; `null` without a free-standing base. */
      readonly ballast: Pick<Ballast, 'slidingKg' | 'overturningKg' | 'neededKg'> | null;
      /** Bending stress at the foot of the mast in megapascals, for the engineer; `null` without the tube. */
      readonly footStressMPa: number | null;
      /** `null` without the tube, or where it leans further than the formula holds for. */
      readonly pointing: WindPointingPlan | null;
      /** What is not in it and is for a structural engineer. */
      readonly leftToEngineer: readonly LeftToEngineer[];
    }
  /** Outside what the coefficients hold for: no load is told. */
  | { readonly kind: 'outside-stated-range'; readonly field: string }
);

/** Where assumptions are noted. */
interface Notes {
  readonly number: (
    given: number | undefined,
    field: string,
    taken: number,
    unit: string,
  ) => number;
}

/** Mean speed at which pointing is told where the job names none, in metres a second: fresh to strong wind, 7 on Beaufort's scale. */
const WORKING_SPEED_M_PER_S = 15;

/** Frequency for the beam where a mount has no carriers, in GHz. */
const USUAL_GHZ = 12.5;

/** Wind on every mount with a reflector; empty where the job says nothing of the wind. */
export function windPlans(
  job: JobFile,
  elevationDeg: (slot: string) => number,
  notes: Notes,
): readonly WindPlan[] {
  if (job.wind === undefined) return [];
  return job.mounts.flatMap((mount, index): WindPlan[] => {
    if (!mount.reflector) return [];
    try {
      return [windPlan(job, mount, `mounts[${index}]`, elevationDeg, notes)];
    } catch (error) {
      // The coefficients do not hold there: the sheet says so, and who is to be asked.
      if (error instanceof DomainError)
        return [{ mount: mount.name, kind: 'outside-stated-range', field: error.parameter }];
      throw error;
    }
  });
}

type Load = Extract<WindPlan, { kind: 'load' }>;

function windPlan(
  job: JobFile,
  mount: JobMount,
  path: string,
  elevationDeg: (slot: string) => number,
  notes: Notes,
): Load {
  const wind = job.wind as NonNullable<JobFile['wind']>;
  const diameterM = mount.reflector?.diameterM ?? 0;
  const { mast, base } = mount;
  const { peakPressurePa } = peakVelocityPressure({
    basicSpeedMPerS: wind.basicSpeedMPerS,
    terrain: wind.terrain,
    heightM: wind.heightM,
  });
  const forceCoefficientRatio = notes.number(
    wind.forceCoefficientRatio,
    'wind.forceCoefficientRatio',
    1.3,
    '',
  );
  const load = reflectorLoad({
    diameterM,
    pressurePa: peakPressurePa,
    heightAboveFootM: mast?.lengthM ?? 0,
    forceCoefficientRatio,
  });
  const held =
    base === undefined
      ? null
      : ballast({
          forceN: load.forceN,
          leverM: base.leverM ?? mast?.lengthM ?? diameterM / 2,
          baseM: base.widthM,
          frictionRatio: notes.number(base.frictionRatio, `${path}.base.frictionRatio`, 0.4, ''),
          safetyRatio: notes.number(base.safetyRatio, `${path}.base.safetyRatio`, 1.5, ''),
        });
  const tube = tubeOf(mast);
  return {
    mount: mount.name,
    kind: 'load',
    pressurePa: peakPressurePa,
    forceN: load.forceN,
    footMomentNm: mast === undefined ? null : load.footMomentNm,
    forceCoefficientRatio: load.forceCoefficientRatio,
    ballast:
      held === null
        ? null
        : {
            slidingKg: held.slidingKg,
            overturningKg: held.overturningKg,
            neededKg: held.neededKg,
          },
    footStressMPa: tube === null ? null : footStress(tube, load.forceN),
    pointing:
      tube === null
        ? null
        : pointingOf(job, mount, tube, forceCoefficientRatio, elevationDeg, notes),
    leftToEngineer: load.leftToEngineer,
  };
}

type Tube = Parameters<typeof mastUnderWind>[0];

/** Moduli in gigapascals: handbook values, from memory. */
const MODULI = {
  steel: { youngGPa: 210, shearGPa: 81 },
  aluminium: { youngGPa: 70, shearGPa: 26 },
} as const;

function tubeOf(mast: JobMount['mast']): Omit<Tube, 'forceN'> | null {
  if (mast?.outsideDiameterM === undefined || mast.wallM === undefined) return null;
  return {
    outsideDiameterM: mast.outsideDiameterM,
    wallM: mast.wallM,
    lengthM: mast.lengthM,
    eccentricityM: mast.eccentricityM ?? 0,
    ...MODULI[mast.material ?? 'steel'],
  };
}

/** Stress at the foot in the peak of the wind; `null` where the tube would lean beyond what the formula holds for. */
function footStress(tube: Omit<Tube, 'forceN'>, forceN: number): number | null {
  try {
    return mastUnderWind({ ...tube, forceN }).footStressMPa;
  } catch (error) {
    if (error instanceof DomainError && error.parameter === 'forceN') return null;
    throw error;
  }
}

function pointingOf(
  job: JobFile,
  mount: JobMount,
  tube: Omit<Tube, 'forceN'>,
  forceCoefficientRatio: number,
  elevationDeg: (slot: string) => number,
  notes: Notes,
): WindPointingPlan | null {
  const wind = job.wind as NonNullable<JobFile['wind']>;
  const diameterM = mount.reflector?.diameterM ?? 0;
  const windSpeedMPerS = notes.number(
    wind.workingSpeedMPerS,
    'wind.workingSpeedMPerS',
    WORKING_SPEED_M_PER_S,
    'm/s',
  );
  const { forceN } = reflectorLoad({
    diameterM,
    pressurePa: velocityPressure({ windSpeedMPerS }),
    forceCoefficientRatio,
  });
  const frequencies = [
    ...job.slots
      .filter(({ name }) => mount.slots.includes(name))
      .flatMap(({ carriers = [] }) => carriers),
    ...(job.transmit ?? []).filter(({ slot }) => mount.slots.includes(slot)),
  ].map(({ frequencyGHz }) => frequencyGHz);
  const frequencyGHz = frequencies.length > 0 ? Math.max(...frequencies) : USUAL_GHZ;
  // The twist counts most where the satellite stands lowest.
  const lowest = Math.min(...mount.slots.map(elevationDeg), 90);
  try {
    const { slopeDeg, twistDeg } = mastUnderWind({ ...tube, forceN });
    const { lossDb } = windPointingLoss({
      slopeDeg,
      twistDeg: Math.min(10, twistDeg),
      beamwidthDeg: halfPowerBeamwidth({ diameterM, frequencyGHz }),
      elevationDeg: Math.max(0, lowest),
    });
    return {
      windSpeedMPerS,
      slopeDeg,
      twistDeg,
      lossDb,
      exceededPercent:
        wind.meanSpeedMPerS === undefined
          ? null
          : windExceededPercent({ windSpeedMPerS, meanSpeedMPerS: wind.meanSpeedMPerS }),
    };
  } catch (error) {
    if (error instanceof DomainError && error.parameter === 'forceN') return null;
    throw error;
  }
}
