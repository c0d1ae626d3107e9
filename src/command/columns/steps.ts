/** What the command can add: batch functions of the library, with the fields they take and give. */

import { attenuationAtBatch, climateAtBatch } from '../../climate/index.js';
import { availabilityBatch, type LinkBudgetInput } from '../../link/index.js';
import { declinationBatch, trueToMagneticBearing } from '../../magnetic/index.js';
import { fieldsOutside, outsideStatedFields } from '../../numeric/rows/outsideFields.js';
import { lookAnglesBatch, polarizationSkewBatch } from '../../pointing/index.js';
import { rainAttenuationBatch } from '../../propagation/index.js';

/** Input of a step: a column of the rows, or one number for all. */
export type StepInput = Readonly<Record<string, number | ArrayLike<number>>>;
/** Columns that a step gives, by name. */
type StepColumns = Readonly<Record<string, Float64Array | Uint8Array>>;

/** One function that the command adds columns with. */
export interface Step {
  /** Fields that must come from somewhere. */
  readonly needs: readonly string[];
  /** Fields that are taken where a word names the step: `polarizationSkew.tiltDeg=3`. */
  readonly may?: readonly string[];
  /** Columns that it gives, in their order; for a column of codes the word of each. */
  readonly gives: Readonly<Record<string, readonly string[] | null>>;
  /** Left out in rows in which the satellite is below the horizon. */
  readonly aboveHorizon?: boolean;
  /** Whether it needs the link of `--link`. */
  readonly link?: boolean;
  readonly batch: (input: StepInput, link: LinkBudgetInput | undefined) => StepColumns;
}

/** For each number of a column `outsideStatedRange` the fields, with blanks between. */
const OUTSIDE = Array.from({ length: 2 ** outsideStatedFields.length }, (_, marks) =>
  fieldsOutside(marks).join(' '),
);

const PLACE = ['latitudeDeg', 'longitudeDeg', 'heightM'];

/** The columns of a batch as a record; nothing is copied. */
const columnsOf = (result: object): StepColumns => ({ ...result }) as StepColumns;

/** Reads a field in a row. */
const at = (input: StepInput, field: string, row: number) => {
  const column = input[field];
  return typeof column === 'number' ? column : (column?.[row] ?? Number.NaN);
};

/** Magnetic bearing of each row's azimuth; there is no batch of it because it is one subtraction. */
function magneticBearings(input: StepInput): StepColumns {
  const rows = Math.max(
    ...Object.values(input).map((column) => (typeof column === 'number' ? 1 : column.length)),
  );
  return {
    magneticBearingDeg: Float64Array.from({ length: rows }, (_, row) =>
      trueToMagneticBearing({
        azimuthDeg: at(input, 'azimuthDeg', row),
        declinationDeg: at(input, 'declinationDeg', row),
      }),
    ),
  };
}

/** The steps by the name of their function, without `Batch`. */
export const STEPS: Readonly<Record<string, Step>> = {
  lookAngles: {
    needs: [...PLACE, 'orbitalLongitudeDeg'],
    gives: { azimuthDeg: null, elevationDeg: null, slantRangeKm: null },
    batch: (input) => columnsOf(lookAnglesBatch(input as never)),
  },
  polarizationSkew: {
    needs: [...PLACE, 'orbitalLongitudeDeg'],
    may: ['tiltDeg'],
    gives: { skewDeg: null },
    batch: (input) => columnsOf(polarizationSkewBatch(input as never)),
  },
  declination: {
    needs: [...PLACE, 'decimalYear'],
    gives: {
      declinationDeg: null,
      declinationStandardUncertaintyDeg: null,
      horizontalIntensityNt: null,
      outsideStatedRange: OUTSIDE,
    },
    batch: (input) => columnsOf(declinationBatch(input as never)),
  },
  trueToMagneticBearing: {
    needs: ['azimuthDeg', 'declinationDeg'],
    gives: { magneticBearingDeg: null },
    batch: magneticBearings,
  },
  rainAttenuation: {
    needs: [
      'latitudeDeg',
      'heightM',
      'rainHeightKm',
      'rainRate001MmPerH',
      'frequencyGHz',
      'elevationDeg',
      'tiltDeg',
      'exceededPercent',
    ],
    gives: { rainDb: null, outsideStatedRange: OUTSIDE },
    aboveHorizon: true,
    batch: (input) => {
      const { attenuationDb, outsideStatedRange } = rainAttenuationBatch(input as never);
      return { rainDb: attenuationDb, outsideStatedRange };
    },
  },
  climateAt: {
    needs: PLACE,
    gives: {
      rainRate001MmPerH: null,
      rainProbabilityPercent: null,
      isothermHeightKm: null,
      rainHeightKm: null,
      meanTemperatureK: null,
      wetRefractivityNUnits: null,
      groundHeightM: null,
    },
    batch: (input) => columnsOf(climateAtBatch(input as never)),
  },
  attenuationAt: {
    needs: [...PLACE, 'frequencyGHz', 'elevationDeg', 'tiltDeg', 'diameterM', 'exceededPercent'],
    may: ['efficiencyRatio'],
    gives: {
      rainRate001MmPerH: null,
      rainHeightKm: null,
      rainDb: null,
      gasDb: null,
      cloudDb: null,
      attenuationDb: null,
      outsideStatedRange: OUTSIDE,
    },
    aboveHorizon: true,
    batch: (input) => columnsOf(attenuationAtBatch(input as never)),
  },
  availability: {
    needs: [
      'latitudeDeg',
      'heightM',
      'rainHeightKm',
      'rainRate001MmPerH',
      'elevationDeg',
      'tiltDeg',
    ],
    may: ['slantRangeKm', 'eirpDbw', 'clearAttenuationDb', 'diameterM'],
    gives: {
      marginDb: null,
      exceededPercent: null,
      outcome: ['available', 'better-than', 'worse-than'],
    },
    aboveHorizon: true,
    link: true,
    batch: (input, link) =>
      columnsOf(availabilityBatch({ link: link as LinkBudgetInput, stations: input as never })),
  },
};
