/** The edition of the recommendation that this room computes: every result names it. */

/** ITU-R P.840-9. */
export const EDITION = 'P.840-9';
