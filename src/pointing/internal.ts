/** What other parts take from this one besides its public names. */

export { direction, lineOfSight } from './look/lookAngles.js';
