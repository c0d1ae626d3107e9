/** Relative permittivity of liquid water: the double-Debye model of ITU-R P.840-9, equations (5) to (11). */

/** Real and imaginary part at a frequency in GHz and a temperature in kelvin, from checked values. */
export function waterPermittivity(
  f: number,
  temperatureK: number,
): { readonly real: number; readonly imaginary: number } {
  const a = 300 / temperatureK - 1;
  const principal = 20.2 + a * (-146 + 316 * a);
  const secondary = 39.8 * principal;
  const e0 = 77.66 + 103.3 * a;
  const e1 = 0.0671 * e0;
  const e2 = 3.52;
  const one = 1 + (f / principal) ** 2;
  const two = 1 + (f / secondary) ** 2;
  return {
    real: (e0 - e1) / one + (e1 - e2) / two + e2,
    imaginary: (f * (e0 - e1)) / (principal * one) + (f * (e1 - e2)) / (secondary * two),
  };
}
