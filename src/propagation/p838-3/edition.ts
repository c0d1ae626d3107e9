/** The edition of the recommendation that this room computes: every result names it. */

/** ITU-R P.838-3. */
export const EDITION = 'P.838-3';
