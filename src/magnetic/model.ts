/** The World Magnetic Model 2025 as a vector at a point, through the library `geomagnetism`. */

import geomagnetism from 'geomagnetism';

/** Decimal years that are taken at all; the model itself is valid from 2025.0 to 2030.0. */
export const FIRST_YEAR = 1990;
export const LAST_YEAR = 2100;

/** Field components in nanotesla and their change per year. */
export interface FieldVector {
  readonly north: number;
  readonly east: number;
  readonly down: number;
  readonly northRate: number;
  readonly eastRate: number;
  readonly downRate: number;
}

// The coefficients of the model are linear in time and the field is linear in the coefficients. So two
// evaluations one year apart give the rates exactly, and with them the field at any date; the library's
// own handling of dates, which ends before the model does, is not needed.
const AT_2025 = geomagnetism.model(new Date(Date.UTC(2025, 0, 1)));
const AT_2026 = geomagnetism.model(new Date(Date.UTC(2026, 0, 1)));

/** Field at a geodetic place (degrees, kilometres above the ellipsoid) and decimal year, unchecked. */
export function fieldVector(
  latitudeDeg: number,
  longitudeDeg: number,
  heightKm: number,
  decimalYear: number,
): FieldVector {
  const place = [latitudeDeg, longitudeDeg, heightKm];
  const first = AT_2025.point(place);
  const second = AT_2026.point(place);
  const years = decimalYear - 2025;
  const northRate = second.x - first.x;
  const eastRate = second.y - first.y;
  const downRate = second.z - first.z;
  return {
    north: first.x + years * northRate,
    east: first.y + years * eastRate,
    down: first.z + years * downRate,
    northRate,
    eastRate,
    downRate,
  };
}
