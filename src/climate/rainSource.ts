/** Which figure for rain is used: the better the source, the earlier it is taken. */

import { DomainError, inRange, oneOf } from '../errors.js';
import { type Keys, known } from '../keys.js';
import { type MonthlyNormals, rainRate } from '../propagation/p837-7.js';
import { type RainZone, rainZoneRate } from './rainZone.js';

/** Where a rain rate comes from, best first. */
export type RainSource = 'measured' | 'monthly-normals' | 'climate-grid' | 'rain-zone';

const SOURCES: readonly RainSource[] = ['measured', 'monthly-normals', 'climate-grid', 'rain-zone'];

/** Rain measured at the place. */
export interface MeasuredRain {
  /** Rain rate exceeded for 0.01 % of the time, one-minute integration, mm/h, 0 to 500. */
  readonly rainRate001MmPerH: number;
  /** Years of measurement behind it, 0.5 to 200. */
  readonly years: number;
}

const MEASURED_RAIN_KEYS = { rainRate001MmPerH: true, years: true } satisfies Keys<MeasuredRain>;

/** What is known of the rain at a place besides the grid. */
export interface LocalRain {
  /** Rain measured there: taken first. */
  readonly measured?: MeasuredRain | undefined;
  /** Monthly normals of a weather station nearby: taken second, through P.837-7. */
  readonly monthlyNormals?: MonthlyNormals | undefined;
  /** Historical zone of P.837-1, superseded: taken only where `use` asks for it. */
  readonly rainZone?: RainZone | undefined;
  /** The source to use instead of the best one, to compare. */
  readonly use?: RainSource | undefined;
}

export const LOCAL_RAIN_KEYS = {
  measured: true,
  monthlyNormals: true,
  rainZone: true,
  use: true,
} satisfies Keys<LocalRain>;

/** The rain figures of a source; probability where the source knows it. */
export interface RainFigures {
  readonly source: RainSource;
  readonly rainRate001MmPerH: number;
  readonly rainProbabilityPercent: number | undefined;
  readonly years: number | undefined;
}

/** Figures of the best source at hand, or of the one asked for; undefined means the grid. */
export function localRainFigures(local: LocalRain): RainFigures | undefined {
  const { measured, monthlyNormals, rainZone, use } = known('local', local, LOCAL_RAIN_KEYS);
  if (use !== undefined) oneOf('use', use, SOURCES);
  const source =
    use ?? (measured ? 'measured' : monthlyNormals ? 'monthly-normals' : 'climate-grid');
  if (source === 'climate-grid') return undefined;
  if (source === 'measured') {
    const { rainRate001MmPerH, years } = known(
      'measured',
      given('measured', measured),
      MEASURED_RAIN_KEYS,
    );
    return {
      source,
      rainRate001MmPerH: inRange('measured.rainRate001MmPerH', rainRate001MmPerH, 0, 500),
      rainProbabilityPercent: undefined,
      years: inRange('measured.years', years, 0.5, 200),
    };
  }
  if (source === 'monthly-normals') {
    const normals = given('monthlyNormals', monthlyNormals);
    const { rainRateMmPerH, rainProbabilityPercent } = rainRate({
      ...normals,
      exceededPercent: 0.01,
    });
    return { source, rainRate001MmPerH: rainRateMmPerH, rainProbabilityPercent, years: undefined };
  }
  const zone = given('rainZone', rainZone);
  return {
    source,
    rainRate001MmPerH: rainZoneRate({ zone, exceededPercent: 0.01 }).rainRateMmPerH,
    rainProbabilityPercent: undefined,
    years: undefined,
  };
}

function given<T>(parameter: string, value: T | undefined): T {
  if (value !== undefined) return value;
  throw new DomainError({
    code: 'missing',
    parameter,
    received: value,
    allowed: 'given, because source asks for it',
  });
}
