/** What other parts take from this one besides its public names. */

export { checkedDiameterM, checkedFrequencyGHz, checkedLossDb } from './guards.js';
export { apertureField, checkedIllumination } from './illumination.js';
