/** What the walk of bounds and defaults leaves out, each with its reason. */

/** Functions that are not walked, with the reason. */
export const SKIPPED: Readonly<Record<string, string>> = {
  jobSheet: 'takes a record that the library made',
  jobSheetHtml: 'takes a record that the library made',
  compareRecords: 'takes records that the library made',
  recheckRecord: 'takes a record that the library made',
  recordJob: 'takes a job that parseJob has checked',
  planJob: 'takes a job that parseJob has checked',
  networkSystem: 'returns the tree that it was given, for functions that hold the defaults',
  parseJob: 'its schema is compared with the types by a test of its own',
  afterReading: 'takes a state that the library made',
  afterMove: 'takes a state that the library made',
  beginPeakSearch: 'returns its settings as given',
};

/** Fields whose comment says something else than a plain bound or default, with the reason. */
export const KNOWN: Readonly<Record<string, string>> = {
  'marginForAvailability: toPercent':
    'the range of percentages is not of this call: its example hands on a common link',
  'judgeReadings: rule': 'the default is a rule with that risk, not a number',
  'safeDistance: frequencyGHz': 'each standard has its own interval, as told',
  'satelliteTrack: stepMin': 'the step is also bounded by the number of steps, as told',
  'spectralDensity: noiseBandwidthRatio': 'the default has more digits than the comment',
  'carrierPower: noiseBandwidthRatio': 'the default has more digits than the comment',
  'designDistribution: window': 'the default is a window, not a number',
  'designDistribution: system.tree.to.to.lossDb': 'of an outlet; the example has a splitter there',
  'supplyAlong: limitA': 'the interval is that of the trade, not a bound',
  'marginSensitivity: receiver.pointingOffsetDeg':
    'shifted by a step, which must stay inside as well',
  'bracketNull: secondDeg': 'counted from the first place',
  'lowElevationFade: steepGradientPercent': 'numbers of figures',
  'clearArc: profile.points.elevationDeg': 'checked where the profile was made',
  'horizonAt: points.elevationDeg': 'checked where the profile was made',
  'slotViews: profile.points.elevationDeg': 'checked where the profile was made',
  'viewClearance: points.elevationDeg': 'checked where the profile was made',
  'mastUnderWind: forceN': 'the lean must stay small as well, as told',
  'patternPointingLoss: frequencyGHz': 'not asked by the pattern of the example',
  'designDistribution: system.source.bandwidthMHz': 'the design repeats its input',
  'designDistribution: system.tree.to.cable.dielectricLossDbPer100m':
    'the design repeats its input',
  'designDistribution: system.tree.to.cable.temperaturePercentPerK': 'the design repeats its input',
  'designDistribution: system.temperatureC': 'the design repeats its input',
  'marginForAvailability: fromPercent':
    'of the range type; this function is asked at one percentage',
  'combinedAvailability: link.uplink.eirpDbw': 'the downlink that follows must stay inside as well',
  'transparentLink: uplink.eirpDbw': 'the downlink that follows must stay inside as well',
  'totalFade: elevationDeg': 'asked when the distribution is called',
  'totalFade: efficiencyRatio': 'asked when the distribution is called',
  'rainFade: heightM': 'asked when the distribution is called',
  'smallestReflector: receiver.diameterM': 'what is looked for; not read',
  'smallestReflector: receiver.antennaGainDbi': 'follows from the size looked for; not read',
  'smallestReflectorBatch: link.receiver.diameterM': 'what is looked for; not read',
  'smallestReflectorBatch: link.receiver.antennaGainDbi':
    'follows from the size looked for; not read',
  'marginSensitivity: downlink.eirpDbw': 'shifted by a step, which must stay inside as well',
  'marginSensitivity: receiver.backEndNoiseK': 'shifted by a step, which must stay inside as well',
  'marginSensitivity: receiver.diameterM': 'shifted by a step, which must stay inside as well',
  'drivenUplink: saturationFluxDensityDbwPerM2':
    'not read where the transponder is driven by power',
  'transponderState: carrierToIntermodulationDb': 'not read by this function',
  'apertureLevelDb: diameterM': 'must be eight wavelengths as well',
  'apertureLobes: diameterM': 'must be eight wavelengths as well',
  'sideLobeTest: aperture.diameterM': 'must be eight wavelengths as well',
  'simulatedReadings: lobe.diameterM': 'not read for the lobe of the example',
  'simulatedReadings: lobe.frequencyGHz': 'not read for the lobe of the example',
  'shownMer: standardUncertaintyDb': 'a field of the same name of another function',
};

/**
 * Functions each call of which is a simulation, with a field that is read after all others: a bound is tried beside a wrong value
 * there, which is named only if what was tried was taken. Their defaults are walked where everything is run.
 */
export const DEAR: Readonly<Record<string, string>> = { comparePlans: 'seed' };

/** Functions that are walked only where everything is run: many times the cost of the others. */
export const SLOW = ['comparePlans', 'rankCauses', 'worksheet', 'typicalOffsets'];
