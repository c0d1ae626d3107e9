/** What other parts take from this one besides its public names. */

export type { Result } from './causes/checkedObservation.js';
export type { Hypothesis } from './causes/hypothesis.js';
export { checkLogLikelihood } from './causes/likelihood.js';
export { causeRanges, causeShares, logPriors } from './causes/posterior.js';
