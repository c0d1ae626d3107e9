/** The sheets in English. */

import type { CodeWords } from './codes.js';
import { enCodes } from './enCodes.js';

/** The counts in front of the weight of a finding. */
const counted = {
  'does-not-conform': 'failing',
  undecided: 'undecided',
  incomplete: 'incomplete',
  note: 'worth knowing',
} as const;

/** The English words of the sheets, and the pattern for any other language: a value of the type {@link SheetWords}. */
export const englishWords = {
  /** Language tag of the HTML. */
  language: 'en',
  /** Decimal mark. */
  decimalMark: '.',
  /** Letters of the hemispheres. */
  hemispheres: { north: 'N', south: 'S', east: 'E', west: 'W' },
  /** Words for the codes of the record. */
  codes: enCodes as CodeWords,
  /** Headings of the two sheets. */
  title: {
    /** Title of the sheet before the visit, with the job. */
    before: (title: string) => `Before the visit: ${title}`,
    /** Title of the sheet after the visit, with the job. */
    after: (title: string) => `After the visit: ${title}`,
  },
  /** Line under the title. */
  subtitle: (day: string | null, format: string, zone: string) =>
    `${day === null ? 'No day given' : `Planned for ${day}`}. Times are local, ${zone}. ± is twice the standard uncertainty. Record: ${format}.`,
  /** Words before the page's number and between it and the number of pages. */
  page: ['Page ', ' of '] as readonly [string, string],
  /** Units as people write them, by their name in the record. */
  units: {
    dBuV: 'dBµV',
    deg: '°',
    'deg C': '°C',
    ratio: '',
  } as Readonly<Record<string, string>>,
  /** Lines to write on. */
  blanks: {
    head: ['Done by', 'Date, time', 'Weather', 'Instrument, number'],
    mount: ['Azimuth set', 'Elevation set', 'Feeds turned to', 'Mast plumb to'],
    foot: ['Done by, date', 'Seen by, date'],
  },
  /** Headings of the sections. */
  sections: {
    place: 'Place and north',
    slots: 'Where the slots stand',
    view: 'View',
    shadow: 'North by the shadow of a plumb line',
    tuning: 'Tuning',
    peakingAid: 'For peaking',
    antenna: 'Expected at the antenna in clear sky',
    supply: 'Voltage at the units',
    stacking: 'Several receivers on one cable',
    terrestrial: 'Terrestrial signals at the outlets',
    leaks: 'Over what the other inputs of the switch leak',
    inputSupply: 'What the switches give their units',
    outlets: 'Expected at the outlets in clear sky',
    transmit: 'Sent',
    lineUp: 'Line-up of what is sent',
    order: 'Order of the work, with its stops',
    wind: 'Wind',
    rain: 'Rain and the promise',
    sunOutages: 'Sun outages',
    assumptions: 'Assumed where the job file does not say; give what you know better',
    notSaid: 'Not said, for want of a field',
    firstLook: 'Look at first',
    readings: 'Readings',
    peaking: 'Peaking',
    feeds: 'How the feeds were left',
    notes: 'Notes',
  },
  /** Heading of a mount's section; `null` for the only one. */
  mountTitle: (mount: string | null) => (mount === null ? 'Mount' : `Mount: ${mount}`),
  /** Headings of the columns. */
  columns: {
    slot: 'slot',
    carrier: 'carrier',
    mount: 'mount',
    unit: 'unit',
    longitude: 'longitude',
    azimuthTrue: 'azimuth, true °',
    magnetic: 'by compass °',
    elevation: 'elevation °',
    geometric: 'without air °',
    rangeKm: 'range km',
    skew: 'turn of the wave',
    towards: 'towards',
    time: 'time',
    pointer: 'what points there',
    sunElevation: 'Sun’s elevation °',
    degPerMinute: '° per minute',
    skyline: 'skyline °',
    clearance: 'above it °',
    edge: 'free at the edge m',
    edgeWorst: 'worst case m',
    freeBeyond: 'free if further than m',
    verdict: 'verdict',
    rotationEast: 'to the east °',
    beamOff: 'beam off °',
    reached: 'reached',
    sinceNode: 'hours since the node',
    feedFor: 'feed for',
    acrossMm: 'right mm',
    upMm: 'up mm',
    alongMm: 'in mm',
    turnUpright: 'turn from upright',
    turnRow: 'turn against the row',
    mountLossDb: 'loss by the mount dB',
    note: 'note',
    frequencyGHz: 'GHz',
    polarization: 'pol.',
    frequencyMHz: 'MHz on the cable',
    transmitMHz: 'MHz to the BUC',
    plannedDbm: 'planned dBm',
    driveDbm: 'by drive dBm',
    compressedDbm: '1 dB compressed dBm',
    stopsDbw: 'stop at EIRP dBW',
    maskName: 'mask',
    marginDb: 'margin dB',
    atDeg: 'at °',
    uplinkFadeDb: 'uplink fade dB',
    madeUpDb: 'made up dB',
    leftDb: 'left dB',
    isolationDb: 'isolation dB',
    step: 'step',
    askFirst: 'who says yes first',
    sends: 'sends',
    done: 'done',
    pressurePa: 'pressure Pa',
    forceN: 'force N',
    momentNm: 'moment at the foot Nm',
    slidingKg: 'against sliding kg',
    overturningKg: 'against overturning kg',
    windSpeed: 'wind m/s',
    windLossDb: 'loss dB',
    yearPercent: '% of the year above',
    stressMPa: 'stress at the foot MPa',
    userBand: 'user band',
    centreMHz: 'centre MHz',
    widthMHz: 'width MHz',
    receiver: 'receiver',
    lossDb: 'loss dB',
    slopeDb: 'slope dB',
    cableM: 'cable m',
    longestM: 'longest m',
    tuningWord: 'word',
    message: 'message',
    lowEndDbuv: 'low end dBµV',
    highEndDbuv: 'high end dBµV',
    leakFrom: 'other input',
    aboveDb: 'above it dB',
    oscillatorGHz: 'LO GHz',
    oscillatorKHz: 'LO ± kHz',
    imageGHz: 'image GHz',
    inRange: 'receiver takes it',
    voltageV: 'V',
    tone: '22 kHz',
    input: 'switch input',
    levelDbuv: 'level dBµV',
    carrierToNoiseDb: 'C/N dB',
    read: 'read',
    neededDb: 'needed dB',
    outlet: 'outlet',
    limits: 'limits',
    least: 'least dB',
    fedV: 'fed V',
    currentA: 'A',
    arrivesV: 'arrives V',
    at: 'at',
    powerW: 'W at the flange',
    eirpDbw: 'EIRP dBW',
    backOffDb: 'back-off dB',
    maskDb: 'under the mask dB',
    keepOutM: 'keep out m',
    marginClear: 'margin, clear dB',
    fadeDb: 'fade dB',
    marginFaded: 'margin then dB',
    hoursAYear: 'fails, hours a year',
    kept: 'kept with',
    beamwidth: 'beam °',
    nextLobe: 'next lobe at °',
    lobeBelow: 'lower by dB',
    fromDay: 'from',
    toDay: 'to',
    between: 'between',
    clock: 'clock',
    minutes: 'longest min',
    cause: 'cause',
    probability: 'probability',
    where: 'where',
    testPoint: 'test point',
    quantity: 'quantity',
    reading: 'read',
    corrected: 'corrected by dB',
    planned: 'planned',
    off: 'off',
    leftAt: 'left at',
    before: 'before',
    after: 'after',
    change: 'change dB',
  },
  yes: 'yes',
  no: 'no',
  on: 'on',
  off: 'off',
  antenna: 'antenna',
  boresightName: 'boresight',
  meridian: 'meridian',
  /** A visit, with its number and date. */
  visit: (number: number, date: string) => `visit ${number} (${date})`,
  /** How many entries a capped list leaves out. */
  andMore: (count: number) => `and ${count} more`,
  /** Share of the year. */
  percent: (value: number) => `${Number(value.toPrecision(2))} % of the year`,
  /** Senses of a turn. */
  clockwise: (amount: string) => `${amount}° clockwise`,
  /** A turn counter-clockwise, in degrees. */
  counterClockwise: (amount: string) => `${amount}° counter-clockwise`,
  noTurn: 'upright',
  noNorth: 'No day is given, so no magnetic bearing is worked out.',
  /** Declination, its uncertainty, model and date. */
  declination: (amount: string, doubt: string, model: string, date: string, outside: boolean) =>
    `Magnetic declination ${amount}° ± ${doubt}° (${model}, ${date}${outside ? ', outside its dates' : ''}).`,
  /** How a compass is read from a true azimuth. */
  magneticBearing: (subtract: boolean, amount: string) =>
    `By compass: true azimuth ${subtract ? '−' : '+'}\u00a0${amount}°.`,
  slotSense:
    'Elevation is where the beam must point. The turn of the wave is seen from behind the antenna, facing the satellite.',
  elevationSense: 'Elevation is where the beam must point.',
  refraction:
    'At low elevation the air bends the beam: set the elevation given, not the one without air.',
  pointers: { sun: 'towards the Sun', shadow: 'along the shadow' },
  /** Head of the table of shadow times. */
  shadowHead: (date: string, zone: string, offset: string) =>
    `On ${date}, local time ${zone} (${offset}). Never look at the Sun; watch the shadow.`,
  /** Where the Sun stands over no bearing on the day. */
  noShadow: (date: string) => `On ${date} the Sun stands over none of the bearings.`,
  noShadowDay: 'No day is given, so no times are worked out.',
  viewSense:
    'The edge is that of the reflector; the worst case is that of compass and clinometer, twice their uncertainty.',
  noSlot: 'No slot stands above the horizon: nothing to preset.',
  mountNotGiven: 'The reflector is not given: directions only.',
  tooFarApart: 'The slots stand too far apart for one reflector.',
  /** Direction of the boresight. */
  boresight: (azimuth: string | null, magnetic: string | null, elevation: string) =>
    `Boresight: ${azimuth === null ? 'straight overhead' : `azimuth ${azimuth}° true`}${magnetic === null ? '' : `, ${magnetic}° by compass`}; elevation ${elevation}°.`,
  /** Lean of the reflector's face. */
  face: (lean: string, forwards: boolean, offset: string) =>
    `Face of the reflector: ${lean}° ${forwards ? 'forwards' : 'backwards'} from the vertical (offset angle ${offset}°).`,
  /** Turn of the row of feeds. */
  row: (turn: string) =>
    `Row of feeds: ${turn} from level, seen from behind the antenna, facing the satellite.`,
  rowOnce:
    'The places below already include this turn: set the feeds to them, and do not turn the row again.',
  feedPlaces:
    'Places from the focus, seen from behind: right, up, and in towards the reflector. Turns are seen from behind, facing the satellite, from the reflector’s own vertical, for linear polarization.',
  anyTurn: 'any (circular)',
  feedAnyTurn: 'Feed: circular polarization, any turn serves.',
  /** Turn of a single feed. */
  feedTurn: (turn: string) =>
    `Feed: ${turn}, seen from behind the antenna, facing the satellite, from the reflector’s own vertical (linear polarization).`,
  drawing: { title: 'Feeds from behind, facing the satellite.', upright: 'Dashed: upright.' },
  beyondModel: 'beyond the model: good to about 1 dB',
  /** How plumb the mast has to be. */
  plumb: (lean: string, mmPerM: string, loss: string) =>
    `Mast plumb within ${lean}° (${mmPerM} mm for each metre) where the antenna is set by its scales alone, for ${loss} dB at most.`,
  /** Settings of a polar mount. */
  polar: (axis: string, tilt: string, declination: string, apex: string) =>
    `Polar mount: axis at elevation ${axis}°, tipped ${tilt}° towards the equator; beam ${declination}° below the plane across the axis; at the highest point the beam stands at ${apex}°.`,
  /** Schedule of a tracking mount. */
  tracking: (lowest: string, highest: string, error: string) =>
    `Inclined orbit: elevation between ${lowest}° and ${highest}°; between two moves the beam is off by ${error}° at most.`,
  /** Where nobody stands between feed and reflector: density at the feed, at the reflector, and the limit. */
  feedHazard: (feed: string, reflector: string, limit: string) =>
    `Between feed and reflector the power density reaches ${feed} W/m² at the feed and ${reflector} W/m² at the reflector; the limit is ${limit} W/m². Nobody reaches in there before the transmitter is switched off and locked out.`,
  /** Masks held against a pattern, with the error of pointing. */
  maskSense: (offDeg: string) =>
    `Masks are held against the side lobes of ITU-R S.580-6 with the beam ${offDeg}° past its satellite. ? marks a mask that was written down from memory: read the document first.`,
  transmitInverted:
    'Where the local oscillator of the BUC stands above the carrier, the spectrum is turned round on the way up.',
  /** Leave to transmit. */
  askBefore: (centre: string | null, owner: string | null) =>
    `Nobody transmits, at any level, before the control centre has said yes${centre === null ? '' : ` (${centre})`}; nobody climbs before the owner of the site has${owner === null ? '' : ` (${owner})`}. At each stop: wait for the word.`,
  /** What the wind figures are and are not. */
  windSense: (coefficient: string) =>
    `Peak pressure after EN 1991-1-4 as read in open texts, coefficient ${coefficient} for wind full on the reflector (practice of the trade); national rules change it. These are loads and moments, no judgement: whether anything bears them is for a structural engineer, and so are fixings and wall, load of the roof, uplift, gusts and fatigue, ice, roof edges and hills, and the local code.`,
  /** Where no load is told. */
  windRefused: (mount: string, field: string) =>
    `${mount}: ${field} lies outside what the coefficients hold for, so no load is told. Ask a structural engineer.`,
  userBandSense:
    'The slope is that within the user band. The longest cable is what the longest run on the way may grow to, by level and supply, all else as planned. Each receiver is set to its own user band and number; the unit’s label gives them.',
  fixedBands: 'Whole bands run side by side on the cable, all at the same time.',
  /** What the receivers tune over, in MHz. */
  tunerRange: (from: string, to: string, said: boolean) =>
    `The receivers take ${from} to ${to} MHz${said ? '' : ', as usual; what they take is not given'}. The image is what else would come out at the same place, from the other side of the local oscillator (LO).`,
  inverted:
    'Where the local oscillator stands above the carrier, the spectrum on the cable is turned round.',
  expectedSense:
    'Level per carrier at 75 ohm behind the unit; C/N in the bandwidth of the symbol rate.',
  /** A limit from below. */
  atLeast: (amount: string) => `${amount} up`,
  /** A limit from above. */
  atMost: (amount: string) => `up to ${amount}`,
  /** Distance to keep in front of a transmitting reflector. */
  keepOut: (group: string, limit: string) =>
    `Keep out: along the beam, for ${group}, down to ${limit} W/m² (ICNIRP 2020, local); local law decides. Nobody steps in front of the reflector or reaches to the feed while it sends, whatever the distance.`,
  limitNotReached: 'limit not reached',
  /** Rain rate and where it comes from. */
  rain: (rate: string, spread: string, height: string, source: string) =>
    `Rain rate ${rate} mm/h (± ${spread} %) for 0.01 % of the year, rain height ${height} km (${source}).`,
  /** Whether the promise is kept, with its probability. */
  promise: (percent: string) =>
    `Promised: reception fails for at most ${percent} % of the average year. The fade is the one exceeded for that share.`,
  /** What water on the feed takes, not counted in above. */
  wetFeed: (loss: string, most: string, film: string, frequency: string, rate: string) =>
    `Not counted in: water on the cover of the feed. In rain of ${rate} mm/h a film of about ${film} mm takes ${loss} dB at ${frequency} GHz, ${most} dB at most, nearly nothing on a cover that repels water. A hood over the feed keeps it dry. Take wet snow and ice off.`,
  /** Below a value. */
  under: (amount: string) => `under ${amount}`,
  /** Above a value. */
  over: (amount: string) => `over ${amount}`,
  lobeSense:
    'A peak weaker by that much, that far beside, is a side lobe: go over it. Angles are on the sky; on a scale round the mast they are wider by 1 / cos(elevation).',
  /** Turns of the adjuster for a degree. */
  turnsPerDegree: (axis: string, turns: string, degrees: string) =>
    `Adjuster, ${axis}: ${turns} turns per degree (${degrees}° per turn).`,
  turnsNotKnown:
    'Turns per degree are not known: count the turns over a few degrees of the scale, and write them down: ____________',
  /** Drop that a bracketing needs. */
  usefulDrop: (tenth: string, half: string, whole: string, scatter: string, loss: string) =>
    `Go off to both sides by at least ${tenth} dB with a display in steps of 0.1 dB, ${half} dB with 0.5 dB, ${whole} dB with 1 dB, better 2 to 3 dB, then come back half way: with readings that scatter by ${scatter} dB at most ${loss} dB is left on that axis.`,
  /** No Sun outage within the year. */
  noSunOutages: (date: string) =>
    `In the year from ${date} on the Sun takes no carrier below its margin.`,
  /** What a Sun outage looks like. */
  sunOutageSense: (zone: string) =>
    `Local time, ${zone}. Reception may fail for minutes a day by the Sun’s noise, for the carrier with the least margin; no readings then.`,
  /** How many findings of a severity. */
  counted: (count: number, severity: keyof typeof counted) => `${count} ${counted[severity]}`,
  /** The headline. */
  outcome: (outcome: string, counts: string) =>
    `Outcome: ${outcome}${counts === '' ? '' : ` (findings: ${counts})`}.`,
  wholeAntenna: 'whole antenna',
  /** The next measurement. */
  next: (what: string, where: string) =>
    `Next, to tell the first two apart: ${what}${where === '' ? '' : ` (${where})`}.`,
  /** Causes, with their places, that no reading bears on. */
  unseen: (causes: string) =>
    `No reading bears on these, so the table says nothing about them: ${causes}.`,
  noReadings: 'No readings yet.',
  /** What the readings are compared with. */
  readingSense: (doubt: string) =>
    `Limits hold for the value itself; a reading nearer to its limit than its doubt is undecided. Instruments: up to ± ${doubt} dB.`,
  corrected:
    'Readings are corrected by what the job file says of the instrument: its offsets, its highest MER, the bandwidth of its noise.',
  /** A power of ten. */
  power: (exponent: string) => `10^${exponent}`,
  readInRain: 'read in rain or snow',
  noLimit: 'no limit',
  noLimitButLow: 'no limit, but low',
  conformsButLow: 'conforms, but low',
  conformsButHigh: 'conforms, but high',
  /** Width of the lobe against theory. */
  widths: (measured: string | null, theory: string, lobe: string) =>
    `${measured === null ? 'beam' : `width ${measured}°,`} by theory ${theory}°: ${lobe}`,
  /** Outcome of the bracketing. */
  bracketing: (turns: string, within: string | null, drop: string, kind: string) =>
    `Bracketing: turn back ${turns} turns; the peak is then within ${within === null ? 'an unknown distance' : `${within} turns`} (drop ${drop} dB, ${kind}).`,
  fit: {
    /** A peak that was fitted. */
    peak: (position: string, from: string, to: string, level: string) =>
      `Fit: peak at ${position}° on the sky, 95 % between ${from}° and ${to}°; ${level} dBm.`,
    /** A peak beyond the samples. */
    edge: (side: 'lower' | 'higher', edge: string) =>
      `Fit: the level still rises at the ${side} end; go on past ${edge}°.`,
    flat: 'Fit: no peak shows above the scatter; go further off on both sides.',
    /** A lobe that is not the main one. */
    notMainLobe: (reason: string) => `Fit: not a main lobe (${reason}).`,
    /** Too few samples for a fit. */
    tooFew: (readings: string, needed: string) =>
      `Fit: too few readings (${readings} of ${needed}).`,
    contradictory: 'Fit: the readings contradict each other; take them again.',
  },
  /** Pointing loss against its target. */
  pointingLoss: (now: string, upper: string | null, target: string | null) =>
    `Pointing loss now ${now} dB${upper === null ? '' : `, at most ${upper} dB (95 %)`}${target === null ? '' : `; target ${target}`}.`,
  leaveIt: 'Leave it.',
  /** What to turn, in turns. */
  moveTurns: (turns: string) => `Move ${turns} turns, the last part from the usual side.`,
  /** What to turn, in degrees. */
  moveDeg: (degrees: string) => `Move ${degrees}°, the last part from the usual side.`,
  /** What changed since the visit before. */
  changes: (visit: number, date: string) => `Since the visit before (visit ${visit}, ${date})`,
  /** Readings that moved together. */
  pooled: (quantity: string, count: string, mean: string, doubt: string) =>
    `${quantity}, ${count} readings together: ${mean} ± ${doubt} dB.`,
  /** Places that were not read again. */
  notRepeated: (count: string) => `Places that were not read again: ${count}.`,
};

/** All words of the sheets; {@link englishWords} is one such value. */
export type SheetWords = typeof englishWords;
