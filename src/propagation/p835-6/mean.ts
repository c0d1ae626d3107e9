/**
 * Recommendation ITU-R P.835-6, Annex 1, section 1: the mean annual global reference atmosphere, which is
 * the U.S. Standard Atmosphere 1976 with water vapour added.
 */

/** Layers by geopotential height: from (km'), temperature there (K), lapse (K/km'), pressure there (hPa). */
const LAYERS: readonly (readonly [from: number, kelvin: number, lapse: number, hpa: number])[] = [
  [0, 288.15, -6.5, 1013.25],
  [11, 216.65, 0, 226.3226],
  [20, 216.65, 1, 54.7498],
  [32, 228.65, 2.8, 8.680422],
  [47, 270.65, 0, 1.109106],
  [51, 270.65, -2.8, 0.6694167],
  [71, 214.65, -2, 0.03956649],
];

/** Hydrostatic constant g M / R in kelvin per geopotential kilometre. */
const HYDROSTATIC = 34.1632;

/** Geometric height at which the formulas change from geopotential to geometric height, km. */
const TOP_KM = 86;

function layerAt(geopotentialKm: number): readonly [number, number, number, number] {
  let index = LAYERS.length - 1;
  while (index > 0 && geopotentialKm <= (LAYERS[index]?.[0] ?? 0)) index--;
  return LAYERS[index] as readonly [number, number, number, number];
}

function geopotential(heightKm: number): number {
  return (6356.766 * heightKm) / (6356.766 + heightKm);
}

/** Temperature in kelvin at a geometric height of 0 to 100 km. */
export function meanAnnualTemperatureK(heightKm: number): number {
  if (heightKm < TOP_KM) {
    const height = geopotential(heightKm);
    const [from, kelvin, lapse] = layerAt(height);
    return kelvin + lapse * (height - from);
  }
  if (heightKm <= 91) return 186.8673;
  const ratio = (heightKm - 91) / 19.9429;
  return 263.1905 - 76.3232 * Math.sqrt(1 - ratio * ratio);
}

/** Total pressure in hPa at a geometric height of 0 to 100 km. */
export function meanAnnualPressureHpa(heightKm: number): number {
  if (heightKm < TOP_KM) {
    const height = geopotential(heightKm);
    const [from, kelvin, lapse, hpa] = layerAt(height);
    return lapse === 0
      ? hpa * Math.exp((-HYDROSTATIC * (height - from)) / kelvin)
      : hpa * (kelvin / (kelvin + lapse * (height - from))) ** (HYDROSTATIC / lapse);
  }
  const h = heightKm;
  return Math.exp(
    95.571899 + h * (-4.011801 + h * (6.424731e-2 + h * (-4.78966e-4 + h * 1.340543e-6))),
  );
}
