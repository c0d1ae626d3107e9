/** What other parts take from this one besides its public names. */

export { type AttenuationOver, attenuationOver } from './attenuationAt.js';
