/** The edition of the recommendation that this room computes: every result names it. */

/** ITU-R P.835-6. */
export const EDITION = 'P.835-6';
