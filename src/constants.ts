/**
 * Physical and geodetic constants, each with its source. Units are in the names.
 */

/** Semi-major axis of the WGS 84 ellipsoid. Source: NGA.STND.0036 (WGS 84), defining parameter. */
export const WGS84_SEMI_MAJOR_AXIS_KM = 6378.137;

/** Flattening of the WGS 84 ellipsoid (ratio). Source: NGA.STND.0036 (WGS 84), defining parameter. */
export const WGS84_FLATTENING_RATIO = 1 / 298.257223563;

/** First eccentricity squared of the WGS 84 ellipsoid (ratio): f (2 - f). */
export const WGS84_ECCENTRICITY_SQUARED_RATIO =
  WGS84_FLATTENING_RATIO * (2 - WGS84_FLATTENING_RATIO);

/**
 * Radius of the nominal geostationary orbit: (GM / w^2)^(1/3) for one turn in a mean sidereal day of
 * 86164.0905 s and the Earth's GM of 3.986004418e14 m^3/s^2 (WGS 84). Real satellites keep within
 * about 37 km of it for an eccentricity below 0.0009.
 */
export const GEOSTATIONARY_RADIUS_KM = 42164.169;

/** Speed of light in vacuum. Source: SI, exact. */
export const SPEED_OF_LIGHT_M_PER_S = 299792458;

/** Boltzmann's constant. Source: SI, exact. */
export const BOLTZMANN_J_PER_K = 1.380649e-23;

/** Boltzmann's constant in decibels, dBW per kelvin and hertz: 10 log10 k = -228.599. */
export const BOLTZMANN_DBW_PER_K_HZ = 10 * Math.log10(BOLTZMANN_J_PER_K);

/** Standard noise reference temperature. Source: IEEE definition of noise figure, 290 K. */
export const REFERENCE_TEMPERATURE_K = 290;

/** Cosmic background temperature as rounded by ITU-R P.618 for sky noise. */
export const COSMIC_BACKGROUND_K = 2.7;
