/** The edition of the recommendation that this room computes: every result names it. */

/** ITU-R P.618-14. */
export const EDITION = 'P.618-14';
