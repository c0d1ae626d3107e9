/**
 * Reflectors: gain, beamwidth, patterns, losses, and the safe distance in front of a transmitting one.
 *
 * @module antenna
 */

export { type BeamwidthInput, halfPowerBeamwidth } from './beamwidth.js';
export { type AntennaGain, type AntennaGainInput, antennaGain } from './gain.js';
export { pointingLoss, pointingOffset } from './pointing.js';
export { surfaceLoss } from './surface.js';
