/** Recommendation ITU-R P.835-6 (12/2017), Annex 1: the names of the reference atmospheres. */

/** The reference atmospheres: the global annual mean, and five by latitude and season. */
export const REFERENCE_ATMOSPHERES = [
  'mean-annual-global',
  'low-latitude',
  'mid-latitude-summer',
  'mid-latitude-winter',
  'high-latitude-summer',
  'high-latitude-winter',
] as const;

/** Name of a reference atmosphere: low is below 22 degrees of latitude, mid 22 to 45, high above 45. */
export type ReferenceAtmosphere = (typeof REFERENCE_ATMOSPHERES)[number];
