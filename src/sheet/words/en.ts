/** The sheet in English. */

import type { CauseMeasurement, FaultCause } from '../../acceptance/index.js';
import type {
  CautionTopic,
  DirectionPlan,
  FirstLook,
  JobRecord,
  NorthPlan,
  PeakingResult,
  RainPlan,
  RecordComparison,
  ViewPlan,
} from '../../job/index.js';
import type { Bracket, PeakFit } from '../../peaking/index.js';

/** Words for each code of a list. */
type Words<Code extends string> = Readonly<Record<Code, string>>;

const cautions: Words<CautionTopic> = {
  'local-codes':
    'Local building, electrical and radio rules decide. Where they ask for a licensed person, have one do the work.',
  'rf-lock-out':
    'Lock the transmitter out before anyone reaches the feed or steps into the beam: switch it off, take the plug or key along, and tell who else could switch it on.',
  'work-at-height':
    'Work on roofs and masts only secured against a fall, with a second person present; keep people out from below.',
  'falling-objects':
    'Tie tools and reflector to a line until they are bolted on: what falls from a roof kills.',
  'power-lines':
    'Keep mast, ladder and reflector further from overhead power lines than they could reach in falling.',
  weather: 'Stop in wind, ice or when thunder can be heard. A reflector in the hands is a sail.',
  'drilling-and-roof-load':
    'Ask who knows the building before drilling (cables, pipes, roof skin) and before a roof or wall carries a mast: its load in wind is for the qualified to judge.',
  'lightning-and-bonding':
    'Bond mast and cable screens and protect against lightning as the local code says, before the cable is connected.',
  'foreign-voltage':
    'In a shared building measure for voltage between a cable screen and the bonding before touching both: a fault in another household can stand on it.',
  sun: 'Never look at the Sun to find a direction; use the shadow of a plumb line.',
  'burning-mirror':
    'A bare or shiny reflector turned to the Sun burns at its focus: keep it covered or turned away, hands and eyes out.',
  mains:
    'Amplifiers and switches fed from the mains are opened and connected by a licensed person only.',
};

const causes: Words<FaultCause> = {
  nothing: 'nothing wrong',
  mispointed: 'mispointed',
  'mast-leaning': 'leaning mast',
  'polarization-rotated': 'polarization rotated',
  'wrong-slot': 'wrong slot',
  'side-lobe': 'side lobe',
  obstructed: 'view obstructed',
  'bad-connector': 'bad connector',
  'wrong-cable': 'wrong cable',
  'part-failed': 'failed part',
  'supply-low': 'supply too low',
  'unit-out-of-tolerance': 'unit out of tolerance',
  overloaded: 'overloaded',
  interference: 'interference',
  rain: 'rain',
  'sun-outage': 'Sun outage',
};

const measurements: Words<CauseMeasurement['kind']> = {
  level: 'read the level',
  'carrier-to-noise': 'read the carrier-to-noise ratio',
  isolation: 'read the cross-polar isolation',
  reception: 'see which service is received',
  'polarization-null': 'turn the feed to the null and note by how much',
  search: 'search around for a stronger peak',
  'sun-near': 'see whether the Sun stands behind the satellite',
  'obstacle-seen': 'look along the beam for an obstacle',
  'connector-check': 'open and check the connectors',
  'cable-check': 'read the print on the cable and step off its length',
  'supply-voltage': 'read the supply voltage',
  'mast-lean': 'hold a level to the mast',
  'rain-seen': 'see whether it rains towards the satellite',
  spectrum: 'look at the spectrum',
  'repeat-later': 'read again later',
};

const verdicts: Words<'conforms' | 'does-not-conform' | 'undecided'> = {
  conforms: 'conforms',
  'does-not-conform': 'does not conform',
  undecided: 'undecided',
};

const outcomes: Words<JobRecord['outcome']> = { ...verdicts, incomplete: 'incomplete' };

const views: Words<ViewPlan['kind']> = {
  clear: 'clear',
  doubtful: 'doubtful',
  'distance-needed': 'clear if far enough',
  blocked: 'blocked',
  'not-sighted': 'not sighted',
  'below-horizon': 'below horizon',
};

const directions: Words<DirectionPlan['kind']> = {
  visible: 'visible',
  'below-horizon': 'below horizon',
  overhead: 'overhead',
};

const rainSources: Words<RainPlan['source']> = {
  'climate-grid': 'climate grid',
  measured: 'measured',
  'monthly-normals': 'monthly normals',
  'rain-zone': 'rain zone',
};

const compass: Words<NorthPlan['compassZone']> = {
  usable: '',
  caution: 'The compass points badly here; check it.',
  blackout: 'Do not trust a compass here.',
};

const brackets: Words<Bracket['kind']> = {
  bracketed: 'bracketed',
  'not-far-enough': 'not far enough',
  blind: 'step of the display too coarse',
};

const lobes: Words<Extract<PeakFit, { kind: 'not-main-lobe' }>['reason']> = {
  dip: 'the level dips in the middle; go on to both sides',
  'too-narrow': 'too narrow, as side lobes are; search on to both sides for a higher level',
  'too-wide': 'too wide; read again, and check the diameter and the degrees per turn',
};

const pointing: Words<PeakingResult['verdict']> = {
  'within-target': 'within target',
  'over-target': 'over target',
  'not-known': 'not known',
};

const meanings: Words<RecordComparison['meaning']> = {
  'no-common-readings': 'No reading was taken at both visits, so nothing can be compared.',
  unchanged: 'No reading changed by more than its uncertainty.',
  'all-lower-alike':
    'Every reading fell by about the same: look at what all share, the reflector, its pointing, the outdoor unit and the first cable.',
  'all-higher-alike':
    'Every reading rose by about the same: compare the instruments, or see what was repaired in between.',
  'one-slot-lower':
    'Only one slot fell: look at its feed and its view (growing trees, new buildings) before the cable.',
  'one-test-point-lower':
    'Only one test point fell: look at the cable, connectors and outlet that only it uses.',
  mixed: 'Readings changed in different ways: repeat them, then search for the cause slot by slot.',
};

const firstLook: Words<FirstLook['kind']> = {
  cause: 'Causes by how well they explain the pattern of all readings:',
  'cannot-tell': 'The readings so far do not tell one cause from another:',
  'nothing-wrong': 'The pattern of all readings is as planned:',
};

/** The English words of the sheet, and the pattern for any other language: a value of the type {@link SheetWords}. */
export const englishWords = {
  /** Language tag of the HTML. */
  language: 'en',
  /** Decimal mark. */
  decimalMark: '.',
  /** Letters of the hemispheres: north, south, east, west. */
  hemispheres: { north: 'N', south: 'S', east: 'E', west: 'W' },
  /** Words for the codes of the record. */
  codes: {
    cautions,
    causes,
    measurements,
    verdicts,
    outcomes,
    views,
    directions,
    rainSources,
    compass,
    brackets,
    lobes,
    pointing,
    meanings,
    firstLook,
  },
  /** Head of the sheet. */
  head: {
    title: (title: string) => `Job sheet: ${title}`,
    day: (date: string, format: string) => `Day of the work ${date}, record format ${format}`,
    doneBy: 'Done by, date',
    seenBy: 'Seen by, date',
  },
  /** Headings of the sections. */
  sections: {
    cautions: 'Cautions',
    station: 'Station',
    slots: 'Slots',
    mount: 'Mount',
    view: 'View',
    rain: 'Rain and availability',
    antenna: 'Expected at the antenna, clear sky',
    peaking: 'Peaking',
    outlets: 'Expected at the outlets',
    readings: 'Readings',
    firstLook: 'Look at first',
  },
  /** Headings of the columns. */
  columns: {
    slot: 'slot',
    carrier: 'carrier',
    longitude: 'longitude',
    azimuthTrue: 'azimuth true',
    magnetic: 'magnetic',
    elevation: 'elevation',
    rangeKm: 'range km',
    skew: 'skew',
    feedFor: 'feed for',
    acrossMm: 'across mm',
    upMm: 'up mm',
    lossDb: 'loss dB',
    skyline: 'skyline',
    clearance: 'clearance',
    wanted: 'wanted',
    verdict: 'verdict',
    rainDb: 'rain dB',
    allDb: 'all dB',
    marginClear: 'margin clear',
    marginFaded: 'faded',
    failsPercent: 'fails for %',
    hoursAYear: 'hours a year',
    levelDbuv: 'level dBµV',
    carrierToNoiseDb: 'C/N dB',
    neededDb: 'needed dB',
    mode: 'mode',
    outlet: 'outlet',
    frequencyMHz: 'MHz',
    testPoint: 'test point',
    reading: 'reading',
    planned: 'planned',
    off: 'off',
    limits: 'limits',
    cause: 'cause',
    probability: 'probability',
    where: 'where',
  },
  /** Where the magnetic needle points. */
  declination: (declination: string, uncertainty: string, model: string, outOfDate: boolean) =>
    `Magnetic declination ${declination}° (±${uncertainty}°, ${model}${outOfDate ? ', outside its dates' : ''}).`,
  /** How a bearing for the compass is made. */
  magneticBearing: (subtract: boolean, amount: string) =>
    `Magnetic bearing = true azimuth ${subtract ? '-' : '+'} ${amount}°.`,
  skewSense: 'Degrees; skew turns the feed clockwise, seen from behind the antenna.',
  noSlot: 'No slot stands above the horizon: nothing to preset.',
  boresight: (azimuth: string, magnetic: string, elevation: string) =>
    `Boresight: azimuth ${azimuth}° true, ${magnetic}° magnetic; elevation ${elevation}°`,
  face: (lean: string, forwards: boolean, offset: string) =>
    `Face of the reflector: ${lean}° ${forwards ? 'forwards' : 'backwards'} from the vertical (offset ${offset}°)`,
  arm: (turn: string) => `Tilt of the feed arm: ${turn}`,
  /** A turn about the line of sight as seen from behind the antenna. */
  turn: (amount: string, sense: 'clockwise' | 'counter-clockwise' | 'none') =>
    sense === 'none' ? 'none' : `${amount}° ${sense}, seen from behind the antenna`,
  feedPlaces: 'Places in the focal plane seen from behind, to the right and up positive.',
  rain: (rate: string, spread: string, height: string, source: string) =>
    `Rain rate ${rate} mm/h (±${spread} %) for 0.01 % of the year, rain height ${height} km (${source}).`,
  promise: (percent: string) =>
    `Promised: reception fails for at most ${percent} % of the average year.`,
  under: (amount: string) => `under ${amount}`,
  over: (amount: string) => `over ${amount}`,
  noSamples: 'No samples yet.',
  axes: { azimuth: 'azimuth', elevation: 'elevation' },
  beamwidth: (axis: string, slot: string, carrier: string, beamwidth: string) =>
    `${axis}, ${slot}, ${carrier}; half-power beamwidth ${beamwidth}°`,
  bracketing: (turns: string, within: string | null, drop: string, kind: string) =>
    `Bracketing: turn back ${turns} turns; the peak is then within ${within === null ? 'an unknown distance' : `${within} turns`} (drop ${drop} dB, ${kind}).`,
  fit: {
    peak: (position: string, from: string, to: string, level: string) =>
      `Fit: peak at ${position}°, 95 % between ${from}° and ${to}°; ${level} dBm.`,
    edge: (side: 'lower' | 'higher', edge: string) =>
      `Fit: the level still rises at the ${side} end; go on past ${edge}°.`,
    flat: 'Fit: no peak shows above the scatter; go further off on both sides.',
    notMainLobe: (reason: string) => `Fit: not the main lobe: ${reason}. Do not leave it here.`,
    tooFew: (readings: string, needed: string) =>
      `Fit: too few readings (${readings} of ${needed}).`,
    contradictory: 'Fit: the readings contradict each other; take them again.',
  },
  pointingLoss: (now: string, upper: string, target: string, verdict: string) =>
    `Pointing loss now ${now} dB, at most ${upper} dB (95 %); target ${target} dB: ${verdict}.`,
  leaveIt: 'Leave it.',
  move: (turns: string) => `Move ${turns} turns, the last part from the usual side.`,
  noReadings: 'No readings yet.',
  outcome: (outcome: string) => `Outcome: ${outcome}.`,
  noLimit: 'no limit',
  noLimits: 'none',
  upwards: (from: string) => `${from} up`,
  conformsButLow: 'conforms, but low',
  wholeAntenna: 'whole antenna',
  next: (what: string, where: string) =>
    `Next, to separate the first two: ${what}${where === '' ? '' : ` (${where})`}.`,
};

/** All words of the sheet; {@link englishWords} is one such value. */
export type SheetWords = typeof englishWords;
