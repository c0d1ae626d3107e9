/**
 * Recommendation ITU-R P.676-13, Annex 1, section 2.2: the air above a station in layers, with all that the
 * paths through it share whatever their frequency and elevation.
 */

import { inRange, oneOf } from '../../errors.js';
import { REFERENCE_ATMOSPHERES, type ReferenceAtmosphere } from '../p835-6/atmospheres.js';
import { atmosphereState, MEAN_SEA_LEVEL_DENSITY } from '../p835-6/referenceAtmosphere.js';
import { EARTH_RADIUS_KM, layersFrom, refractivityRatio } from './layers.js';
import { emptyLineState, type LineState, setOxygen, setVapour } from './lineState.js';
import { checkedVapourDensity, waterVapourPressureHpa } from './specific.js';

/** The air above a station. */
export interface AirAboveStation {
  /** Height of the station above mean sea level in metres, 0 to 10 000; 0 where not given. */
  readonly heightM?: number | undefined;
  /** Reference atmosphere of P.835-6; the global annual mean where not given. */
  readonly atmosphere?: ReferenceAtmosphere | undefined;
  /** Water vapour density at sea level in g/m3, for the global annual mean only; 7.5 where not given. */
  readonly seaLevelDensityGPerM3?: number | undefined;
}

/** Layers of air from a station to space. */
export interface GasColumn {
  /** How many layers. */
  readonly count: number;
  /** Thickness of each layer, km. */
  readonly thicknessKm: Float64Array;
  /** Radius of each layer's bottom, km. */
  readonly radiusKm: Float64Array;
  /** Refractive index less 1 of each layer. */
  readonly refractivity: Float64Array;
  /** Dry pressure of each layer, hPa. */
  readonly dryPressure: Float64Array;
  /** Vapour pressure of each layer, hPa. */
  readonly vapourPressure: Float64Array;
  /** 300 over the temperature of each layer. */
  readonly theta: Float64Array;
  /** The spectral lines in each layer. */
  readonly lines: LineState;
}

/** The column of air above a station; throws for a station or an atmosphere outside its domain. */
export function gasColumn(air: AirAboveStation): GasColumn {
  const bottomKm = inRange('heightM', air.heightM ?? 0, 0, 10000, 'is it in feet?') / 1000;
  const atmosphere = oneOf(
    'atmosphere',
    air.atmosphere ?? 'mean-annual-global',
    REFERENCE_ATMOSPHERES,
  );
  const seaLevelDensity = checkedVapourDensity(
    air.seaLevelDensityGPerM3 ?? MEAN_SEA_LEVEL_DENSITY,
    'seaLevelDensityGPerM3',
  );
  const { count, first, unitKm } = layersFrom(bottomKm);
  const column: GasColumn = {
    count,
    thicknessKm: new Float64Array(count),
    radiusKm: new Float64Array(count),
    refractivity: new Float64Array(count),
    dryPressure: new Float64Array(count),
    vapourPressure: new Float64Array(count),
    theta: new Float64Array(count),
    lines: emptyLineState(count),
  };
  const bottom = Math.exp((first - 1) / 100);
  for (let layer = 0; layer < count; layer++) {
    const growth = Math.exp((first - 1 + layer) / 100);
    const thicknessKm = unitKm * growth;
    const heightKm = bottomKm + (unitKm * (growth - bottom)) / (Math.exp(0.01) - 1);
    const middle = Math.min(100, heightKm + thicknessKm / 2);
    const state = atmosphereState(middle, atmosphere, seaLevelDensity);
    const e = waterVapourPressureHpa(state.waterVapourDensityGPerM3, state.temperatureK);
    const p = state.pressureHpa - e;
    const theta = 300 / state.temperatureK;
    column.thicknessKm[layer] = thicknessKm;
    column.radiusKm[layer] = EARTH_RADIUS_KM + heightKm;
    column.refractivity[layer] = refractivityRatio(p, e, state.temperatureK);
    column.dryPressure[layer] = p;
    column.vapourPressure[layer] = e;
    column.theta[layer] = theta;
    setOxygen(column.lines, layer, p, e, theta);
    setVapour(column.lines, layer, p, e, theta);
  }
  return column;
}
