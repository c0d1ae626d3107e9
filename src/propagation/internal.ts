/** What other parts take from this one besides its public names. */

export { betweenPercents, blend } from './mapsByPercent.js';
export { RAIN_PATH_KEYS } from './p618-14/rain.js';
export {
  attenuationAtPercentDb,
  latitudeExponent,
  latitudeTermDeg,
  percentTerms,
} from './p618-14/rainSteps.js';
export { combinedDb } from './p618-14/total.js';
export { rainCoefficients } from './p838-3/coefficients.js';
export { mapCell } from './p1144.js';
