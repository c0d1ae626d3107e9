/**
 * Recommendation ITU-R P.618-14, section 2.2.1.1: the steps of the rain prediction, one small function
 * each, shared by the scalar and the batch call so that both give the same bits.
 *
 * Symbols: hR rain height, hs station height, R rain rate at 0.01 %, f frequency, gamma specific attenuation.
 */

/** Effective Earth radius of step 2, km. */
const EFFECTIVE_EARTH_RADIUS_KM = 8500;

/** Height of rain above the station in km; a hair's breadth (a micrometre) counts as none. */
export function rainAbove(rainHeightKm: number, heightM: number): number {
  const aboveKm = rainHeightKm - heightM / 1000;
  return aboveKm > 1e-9 ? aboveKm : 0;
}

/** Step 2: slant path below the rain height for a height difference above zero; equations (1) and (2). */
export function slantPathKm(rainAboveKm: number, elevationDeg: number, sinElevation: number) {
  if (elevationDeg >= 5) return rainAboveKm / sinElevation;
  const curved = (2 * rainAboveKm) / EFFECTIVE_EARTH_RADIUS_KM;
  return (2 * rainAboveKm) / (Math.sqrt(sinElevation * sinElevation + curved) + sinElevation);
}

/** Step 6: horizontal reduction factor at 0.01 %; equation (5). */
export function horizontalReduction(projectionKm: number, gamma: number, frequencyGHz: number) {
  return (
    1 /
    (1 +
      0.78 * Math.sqrt((projectionKm * gamma) / frequencyGHz) -
      0.38 * (1 - Math.exp(-2 * projectionKm)))
  );
}

/**
 * Step 7, first half: slant length of the path through the rain cell, whose slope decides. Equation (6)
 * compares angles; their tangents, multiplied out, decide alike and hold at the zenith.
 */
export function cellPathKm(
  rainAboveKm: number,
  reducedProjectionKm: number,
  sinElevation: number,
  cosElevation: number,
): number {
  return rainAboveKm * cosElevation > reducedProjectionKm * sinElevation
    ? reducedProjectionKm / cosElevation
    : rainAboveKm / sinElevation;
}

/** Step 7, chi: how far the latitude lies inside 36 degrees. */
export function latitudeTermDeg(latitudeDeg: number): number {
  return Math.max(0, 36 - Math.abs(latitudeDeg));
}

/** Step 7, second half: vertical adjustment factor at 0.01 %. */
export function verticalAdjustment(
  latitudeTerm: number,
  elevationDeg: number,
  sinElevation: number,
  cellKm: number,
  gamma: number,
  frequencyGHz: number,
): number {
  const bracket =
    (31 * (1 - Math.exp(-elevationDeg / (1 + latitudeTerm))) * Math.sqrt(cellKm * gamma)) /
      (frequencyGHz * frequencyGHz) -
    0.45;
  return 1 / (1 + Math.sqrt(sinElevation) * bracket);
}

/** Step 10, beta: how latitude and elevation bend the dependence on the percentage. */
export function latitudeExponent(
  exceededPercent: number,
  latitudeTerm: number,
  elevationDeg: number,
  sinElevation: number,
): number {
  if (exceededPercent >= 1 || latitudeTerm === 0) return 0;
  return elevationDeg >= 25
    ? 0.005 * latitudeTerm
    : 0.005 * latitudeTerm + 1.8 - 4.25 * sinElevation;
}

/** Step 10, what the percentage alone decides: ln p and ln(p / 0.01). */
export interface PercentTerms {
  /** The percentage p. */
  readonly percent: number;
  /** ln p. */
  readonly log: number;
  /** ln(p / 0.01). */
  readonly distance: number;
}

/** Terms of a percentage above zero. */
export function percentTerms(percent: number): PercentTerms {
  return { percent, log: Math.log(percent), distance: Math.log(percent / 0.01) };
}

/** Step 10: attenuation at a percentage from that at 0.01 %, which must be above zero; equation (8). */
export function attenuationAtPercentDb(
  attenuation001Db: number,
  { percent, log, distance }: PercentTerms,
  beta: number,
  sinElevation: number,
): number {
  const exponent =
    0.655 + 0.033 * log - 0.045 * Math.log(attenuation001Db) - beta * (1 - percent) * sinElevation;
  return attenuation001Db * Math.exp(-exponent * distance);
}
