/** Horizontal share of the line of sight below which azimuth is noise: 1e-9 degree from the zenith. */
export const OVERHEAD_RATIO = 1.75e-11;
