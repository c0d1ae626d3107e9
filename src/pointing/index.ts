/**
 * Where a satellite stands in the sky and how the mount is preset for it.
 *
 * @module pointing
 */

export { type LookAngles, lookAngles } from './lookAngles.js';
