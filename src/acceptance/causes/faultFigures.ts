/**
 * The figures of the fault models, in one place: name with its unit, value, and where it comes from.
 *
 * Each row says its origin first. *practice*: common practice of the trade, no publication stands behind it; such a figure may
 * be moved if the causes of simulated jobs are then found at least as well. *derivation*: follows from what the row names.
 * *search*: what is tried, its ends by practice.
 * A grid is [from, to, count]; whether its steps are even or geometric is said where it is used.
 */

/** From, to, count. */
type Grid = readonly [from: number, to: number, count: number];
/** A standard deviation that is a constant in dB and a share of the effect. */
export type Spread = readonly [constantDb: number, shareRatio: number];

/** What a channel is like that delivers nothing of its own any more. */
export const LOST = {
  /** practice: what is left of a carrier that the unit does not select or the antenna does not see. */
  carrierDb: -30,
  /** practice: what leaks through a unit or connection that is dead. */
  deadDb: -45,
} as const;

/** A bad connector. */
export const CONNECTOR = {
  /** search: dB at 1 GHz, from hardly noticed to nearly open. */
  lossAt1GHzDb: [1.2, 28, 18] satisfies Grid,
  /** search: exponent of the frequency; a series gap falls with it (-1), a shunt or water rises (1 and more). */
  slopeExponents: [-1.1, -0.65, -0.3, 0, 0.4, 0.9, 1.4],
  /** practice: chance that a look at the connector shows it. */
  seenRatio: 0.92,
  /** practice: V that it takes from the supply, and how unlike connectors are. */
  supplyDropV: 0.7,
  supplyDeviationV: 1.2,
} as const;

/** A cable too long or too lossy. */
export const CABLE = {
  /** search: dB at 1 GHz above the plan. */
  excessAt1GHzDb: [1, 22, 20] satisfies Grid,
  /** derivation: share of the loss that goes with the frequency (dielectric); the rest goes with its root (skin effect). */
  dielectricShareRatios: [0, 0.12],
  /** practice: chance that a look at length and marking shows it. */
  seenRatio: 0.95,
  /** practice: V of supply lost for each dB of excess at 1 GHz; a longer cable has more of both. */
  supplyDropVPerDb: 0.07,
  supplyDeviationV: 0.7,
} as const;

/** A part that failed or is missing. */
export const PART = {
  /** search: dB, flat over frequency. */
  lossDb: [12, 46, 12] satisfies Grid,
  /** search: dB that a dead amplifier takes beyond its gain, and how many values are tried. */
  beyondGainDb: 10,
  beyondGainCount: 6,
  /** practice: share of dead amplifiers that lose exactly their gain and a little. */
  missingAmplifierRatio: 0.5,
} as const;

/** Supply too low. */
export const SUPPLY = {
  /** practice: V at the unit at which it no longer takes the higher voltage (nominal 13 and 18 V). */
  polarizationLostV: 14.2,
  /** practice: V read with a tone too weak to be understood. */
  toneLostV: 15.5,
  /** practice: V at which a unit does not start. */
  unitDeadV: 9.5,
  /** practice: V by which units differ in that, switching and starting. */
  switchingDeviationV: 1.3,
  startingDeviationV: 3,
  /** search: power that stands at the planned frequency in the wrong band or polarization, over the carrier. */
  unwantedRatio: [0.005, 1.2, 5] satisfies Grid,
  /** practice: chance that a service is received there. */
  foreignRatio: 0.5,
  /** practice: isolation shown by what stands in the other polarization, dB. */
  isolationDb: -5,
} as const;

/** Too much level. */
export const OVERLOAD = {
  /** search: dB of level above the plan. */
  riseDb: [2, 16, 8] satisfies Grid,
  /** search: products of intermodulation in a channel, over its carrier. */
  productsRatio: [0.01, 0.5, 8] satisfies Grid,
  /** practice: chance that a spectrum shows a carrier that does not belong there. */
  spectrumSeenRatio: 0.25,
} as const;

/** Models of loss that grows with the radio frequency hold at this one. */
export const REFERENCE_GHZ = 12;
/** practice: dB; deeper fades read the same, namely nothing. */
export const DEEPEST_FADE_DB = 60;

/** Rain. */
export const RAIN = {
  /** search: dB at 12 GHz on the highest path. */
  fadeAt12GHzDb: [0.7, 14, 14] satisfies Grid,
  /** derivation: slope of the specific attenuation of ITU-R P.838-3 from 10.7 to 12.7 GHz at some 40 mm/h. */
  frequencyExponent: 2.1,
  /** practice: K, physical temperature of rain. */
  mediumK: 275,
  /** practice: degrees; below, the path through rain no longer grows with 1 / sin. */
  lowestElevationDeg: 5,
  /** derivation: dB, discrimination at 1 dB of fade and its fall per decade: ITU-R P.618-14, section 4.1, at 12 GHz. */
  isolationAt1DbDb: 32,
  isolationFallDb: 20,
  /** practice: dB, no rain leaves less. */
  isolationLeastDb: 12,
  /** practice: chance that rain is seen when it is the cause. */
  seenRatio: 0.95,
  /** practice: share of the drop that is gone at a second look, and how unsure that is. */
  goneLaterRatio: 0.7,
  laterSpread: [0.5, 0.35] satisfies Spread,
} as const;

/** The Sun behind a satellite. */
export const SUN = {
  /** search: dB of noise. */
  noiseRiseDb: [0.8, 14, 12] satisfies Grid,
  /** practice: chance that the Sun is found near the slot concerned, and near another one by accident. */
  nearRatio: 0.97,
  nearAnotherRatio: 0.05,
  /** derivation: the Sun moves on, so the whole rise is gone later; practice: how unsure that is. */
  laterSpread: [0.5, 0.2] satisfies Spread,
} as const;

/** Something in the view. */
export const OBSTACLE = {
  /** search: dB at 12 GHz. */
  lossDb: [0.8, 18, 13] satisfies Grid,
  /** search: exponent of the frequency: walls 0, leaves up to 0.5. */
  frequencyExponents: [0, 0.5],
  /** practice: K, physical temperature of what stands there. */
  mediumK: 290,
  /** practice: chance that it is seen. */
  seenRatio: 0.9,
  /** practice: dB that a search beside it gains, and how unsure that is. */
  searchRiseDb: 0.5,
  searchDeviationDb: 0.8,
} as const;

/** An unwanted carrier. */
export const INTERFERENCE = {
  /** search: unwanted power over the carrier's. */
  unwantedRatio: [0.02, 5, 10] satisfies Grid,
  /** practice: MHz; carriers nearer than a channel are hit together. */
  sameChannelMHz: 25,
  /** derivation: noise of a sound channel is about 13 dB down, hence a rise of 1 + 20 times the unwanted ratio. */
  carrierToNoiseRatio: 20,
  /** practice: chance that a spectrum shows it. */
  spectrumSeenRatio: 0.85,
  /** practice: share of the drop that is gone at a second look, and how unsure that is. */
  goneLaterRatio: 0.3,
  laterSpread: [0.5, 0.5] satisfies Spread,
} as const;

/** A unit out of tolerance. */
export const UNIT = {
  /** search: dB of noise. */
  noiseRiseDb: [0.8, 10, 10] satisfies Grid,
  /** search: dB of gain lost. */
  lossDb: [2, 20, 8] satisfies Grid,
  /** practice: dB of noise for each dB of gain lost, from the stages behind: none, or a quarter. */
  noisePerLossRatios: [0, 0.25],
  /** practice: share of noise and of an unsteady oscillator among such faults, of the whole unit weak, of each band or polarization weak. */
  noiseWeightRatio: 0.25,
  wholeWeightRatio: 0.3,
  partWeightRatio: 0.05,
} as const;

/** The antenna looks beside the satellite, or its mast leans. */
export const ATTITUDE = {
  /** practice: dB; beyond this the lobe has ended and side lobes take over. */
  lobeFloorDb: 18,
  /** search: offset in half-power beamwidths, and its direction in degrees. */
  offsetBeamwidths: [0.2, 1.15, 10] satisfies Grid,
  offsetDirectionDeg: [0, 330, 12] satisfies Grid,
  /** derivation: ratio; a turn in azimuth moves the beam by its cosine of elevation, held off 0 near the zenith. */
  leastCosine: 0.1,
  /** search: lean in half-power beamwidths, and its direction in degrees. */
  leanBeamwidths: [0.2, 1.3, 10] satisfies Grid,
  leanDirectionDeg: [0, 337.5, 16] satisfies Grid,
  /** practice: dB and degrees, how well a search finds the loss again and a level shows the lean. */
  searchDeviationDb: 0.7,
  leanDeviationDeg: 0.15,
} as const;

/** Peaked on a side lobe. */
export const SIDE_LOBE = {
  /** search: dB below the main lobe. */
  dropDb: [12, 28, 9] satisfies Grid,
  /** practice: dB of isolation, poor on side lobes. */
  isolationDb: [4, 9, 14],
  /** practice: dB, how well a search finds the main lobe's level. */
  searchDeviationDb: 2,
} as const;

/** The antenna looks at another satellite. */
export const OTHER_SLOT = {
  /** search: power of a carrier of the other satellite over the planned one. */
  foreignRatio: [0.02, 2, 6] satisfies Grid,
  /** practice: chance that it has a carrier at a planned frequency; most of the band is in use. */
  frequencyInUseRatio: 0.7,
  /** practice: power without a carrier there, its noise alone, over the planned carrier. */
  emptyRatio: 0.003,
  /** practice: chance that another service is received with a carrier there, and without one. */
  occupiedForeignRatio: 0.65,
  emptyForeignRatio: 0.02,
  /** search: planned frequencies that are looked at one by one. */
  mostPlaces: 8,
  /** practice: dB that a search beside it gains, and how unsure that is. */
  searchRiseDb: 0.7,
  searchDeviationDb: 2,
} as const;

/** A feed, or the whole antenna, turned about the line of sight. */
export const TURN = {
  /** search: degrees, to both sides. */
  rotationDeg: [4, 70, 12] satisfies Grid,
  /** practice: share of the rotation by which the null found differs from it. */
  nullDeviationRatio: 0.15,
} as const;
