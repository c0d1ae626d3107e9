/** What the command can add: batch functions of the library, with the fields they take and give. */

import { attenuationAtBatch, climateAtBatch } from '../../climate/index.js';
import { declinationBatch, trueToMagneticBearing } from '../../magnetic/index.js';
import { fieldsOutside, outsideStatedFields } from '../../numeric/rows/outsideFields.js';
import {
  lookAnglesAndSkewBatch,
  lookAnglesBatch,
  lookOutcomes,
  polarizationSkewBatch,
} from '../../pointing/index.js';
import { rainAttenuationBatch } from '../../propagation/index.js';
import { NETWORK_STEPS } from './networkSteps.js';
import { columnsOf, PLACE, type Step, type StepColumns, type StepInput } from './step.js';

/** For each number of a column `outsideStatedRange` the fields, with blanks between. */
const OUTSIDE = Array.from({ length: 2 ** outsideStatedFields.length }, (_, marks) =>
  fieldsOutside(marks).join(' '),
);

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
  lookAnglesAndSkew: {
    needs: [...PLACE, 'orbitalLongitudeDeg'],
    may: ['tiltDeg'],
    gives: {
      azimuthDeg: null,
      elevationDeg: null,
      slantRangeKm: null,
      skewDeg: null,
      outcome: lookOutcomes,
    },
    batch: (input) => columnsOf(lookAnglesAndSkewBatch(input as never)),
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
  ...NETWORK_STEPS,
};
