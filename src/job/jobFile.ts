/** The job file: what a technician knows and has read, as one JSON document. */

import type { DistributionPart } from '../distribution/index.js';

/** Where the antenna stands. */
export interface JobStation {
  /** Name of the place on the sheet. */
  readonly name: string;
  /** Geodetic latitude in degrees, north positive, -90 to 90. */
  readonly latitudeDeg: number;
  /** Longitude in degrees, east positive, any turn. */
  readonly longitudeDeg: number;
  /** Height above sea level in metres, -1000 to 9000. */
  readonly heightM: number;
}

/** The reflector. */
export interface JobAntenna {
  /** Diameter of the aperture in metres, 0.2 to 15. */
  readonly diameterM: number;
  /** Aperture efficiency, 0.3 to 0.9. */
  readonly apertureEfficiencyRatio: number;
  /** Offset angle in degrees, 0 for a centre-fed reflector, up to 40. */
  readonly offsetAngleDeg: number;
  /** Focal length in metres; 0.6 of the diameter by default. */
  readonly focalLengthM?: number;
  /** Surface error, r.m.s., in millimetres; 0 by default. */
  readonly surfaceErrorMm?: number;
}

/** The outdoor receiving unit. */
export interface JobReceiver {
  /** Noise figure in dB, 0.1 to 10. */
  readonly noiseFigureDb: number;
  /** Gain in dB, 20 to 90. */
  readonly gainDb: number;
  /** Loss between aperture and unit in dB; 0 by default. */
  readonly feedLossDb?: number;
}

/** A carrier that is to be received. */
export interface JobCarrier {
  /** Name on the sheet. */
  readonly name: string;
  /** Frequency in GHz, 1 to 60. */
  readonly frequencyGHz: number;
  /** Polarization at the satellite. */
  readonly polarization: 'horizontal' | 'vertical' | 'right' | 'left';
  /** EIRP towards the station in dBW, 0 to 90. */
  readonly eirpDbw: number;
  /** Symbol rate in megabaud, 0.01 to 500. */
  readonly symbolRateMBd: number;
  /** Mode of DVB-S2 as the standard writes it: `QPSK 3/4`. */
  readonly mode: string;
  /** Loss of the demodulator against the standard's ideal threshold in dB; 0.8 by default. */
  readonly implementationLossDb?: number;
  /** Frequency on the cable in MHz, 5 to 3000. */
  readonly intermediateFrequencyMHz: number;
}

/** An orbital slot and its carriers. */
export interface JobSlot {
  /** Name on the sheet. */
  readonly name: string;
  /** Longitude of the slot in degrees, east positive. */
  readonly orbitalLongitudeDeg: number;
  /** Tilt of the satellite's own polarization in degrees, clockwise seen from behind the antenna; 0 by default. */
  readonly polarizationTiltDeg?: number;
  /** Its carriers, at least one. */
  readonly carriers: readonly JobCarrier[];
}

/** The horizon as sighted. */
export interface JobHorizon {
  /** Whether bearings were taken from true or from magnetic north. */
  readonly north: 'true' | 'magnetic';
  /** Sightings; between them the profile runs straight, before the first and behind the last it is open. */
  readonly samples: readonly {
    /** Bearing in degrees, clockwise from the stated north. */
    readonly azimuthDeg: number;
    /** Elevation of the skyline in degrees, -10 to 90. */
    readonly elevationDeg: number;
  }[];
}

/** Where the rain statistics come from. */
export type JobRain = {
  /** Mean height of the 0 degree isotherm in kilometres above sea level, 0 to 7; from the climate grid by default. */
  readonly isothermHeightKm?: number;
} & (
  | {
      /** From the embedded climate grid. */
      readonly source: 'climate-grid';
    }
  | {
      /** Measured: rain rate at 0.01 % of the average year. */
      readonly source: 'measured';
      /** Rain rate exceeded for 0.01 % in mm/h, 0 to 250. */
      readonly rainRate001MmPerH: number;
      /** Years of measurement behind it, 0.5 to 200. */
      readonly years: number;
    }
  | {
      /** Twelve monthly normals, January first; the rain rate follows from P.837-7. */
      readonly source: 'monthly-normals';
      /** Mean monthly rainfall in mm. */
      readonly rainfallMm: readonly number[];
      /** Mean monthly temperature in degrees Celsius. */
      readonly temperatureC: readonly number[];
    }
);

/** What was promised. */
export interface JobTarget {
  /** Share of the average year in per cent for which reception may fail, 0.001 to 5. */
  readonly exceededPercent: number;
  /** Largest pointing loss left after peaking in dB. */
  readonly pointingLossDb: number;
}

/** Samples and bracketing taken on one axis while peaking. */
export interface JobPeaking {
  /** Axis that was turned. */
  readonly axis: 'azimuth' | 'elevation';
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier that was watched. */
  readonly carrier: string;
  /** Where the axis was left, in degrees of the samples' scale. */
  readonly restDeg: number;
  /** Degrees of the axis per turn of its adjuster. */
  readonly degPerTurn: number;
  /** Equal-level bracketing, where it was done. */
  readonly bracketing?: {
    /** Turns off the peak until the reference level. */
    readonly turnsOut: number;
    /** Turns back, through the peak, until the same level returned. */
    readonly turnsBack: number;
    /** Drop below the highest level seen in dB. */
    readonly dropDb: number;
    /** Step of the level display in dB. */
    readonly resolutionDb: number;
  };
  /** Positions in degrees and the levels read there. */
  readonly samples: {
    /** Positions of the axis in degrees, at least three. */
    readonly positionDeg: readonly number[];
    /** Levels in dBm, one per position. */
    readonly levelDbm: readonly number[];
  };
}

/** One reading. */
export type JobReading = {
  /** `antenna` or the name of an outlet. */
  readonly testPoint: string;
  /** Name of the slot. */
  readonly slot: string;
  /** Name of the carrier. */
  readonly carrier: string;
  /** Expanded uncertainty (k = 2) of the instrument in dB, above 0. */
  readonly expandedUncertaintyDb: number;
} & (
  | {
      readonly quantity: 'level';
      /** Level per carrier in dBuV at 75 ohm. */
      readonly levelDbuv: number;
    }
  | {
      readonly quantity: 'carrier-to-noise';
      /** Carrier-to-noise ratio in the symbol rate's bandwidth in dB. */
      readonly carrierToNoiseDb: number;
    }
);

/** A limit at a test point. */
export type JobLimit = {
  /** `antenna`, the name of an outlet, or `outlets` for all of them. */
  readonly testPoint: string;
} & (
  | {
      readonly quantity: 'level';
      /** Lowest level that conforms in dBuV. */
      readonly minimumDbuv: number;
      /** Highest level that conforms in dBuV. */
      readonly maximumDbuv: number;
    }
  | {
      readonly quantity: 'carrier-to-noise';
      /** Lowest ratio that conforms in dB. */
      readonly minimumDb: number;
    }
);

/** A job file, version 1. */
export interface JobFile {
  /** What the document is. */
  readonly format: 'slantpath-job';
  /** Version of the format. */
  readonly version: 1;
  /** Title of the sheet. */
  readonly title: string;
  /** Day of the work, `YYYY-MM-DD`; the declination is that of this day. */
  readonly date: string;
  /** Where the antenna stands. */
  readonly station: JobStation;
  /** The reflector. */
  readonly antenna: JobAntenna;
  /** The outdoor receiving unit. */
  readonly receiver: JobReceiver;
  /** The slots, at least one. */
  readonly slots: readonly JobSlot[];
  /** The horizon as sighted. */
  readonly horizon: JobHorizon;
  /** Where the rain statistics come from. */
  readonly rain: JobRain;
  /** What was promised. */
  readonly target: JobTarget;
  /** The tree behind the receiving unit. */
  readonly distribution: DistributionPart;
  /** What was read while peaking; may be empty before the visit. */
  readonly peaking: readonly JobPeaking[];
  /** Readings; may be empty before the visit. */
  readonly readings: readonly JobReading[];
  /** Limits, at least one. */
  readonly limits: readonly JobLimit[];
}
