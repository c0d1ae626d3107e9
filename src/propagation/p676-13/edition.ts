/** The edition of the recommendation that this room computes: every result names it. */

/** ITU-R P.676-13. */
export const EDITION = 'P.676-13';
