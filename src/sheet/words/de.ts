/** The sheets in German. */

import { deCodes } from './deCodes.js';
import type { SheetWords } from './en.js';

const counted: Readonly<Record<string, string>> = {
  'does-not-conform': 'nicht konform',
  undecided: 'unentschieden',
  incomplete: 'unvollständig',
  note: 'gut zu wissen',
};

/** The German words of the sheets. */
export const germanWords: SheetWords = {
  language: 'de',
  decimalMark: ',',
  hemispheres: { north: 'N', south: 'S', east: 'O', west: 'W' },
  codes: deCodes,
  title: {
    before: (title) => `Vor dem Besuch: ${title}`,
    after: (title) => `Nach dem Besuch: ${title}`,
  },
  subtitle: (day, format, zone) =>
    `${day === null ? 'Kein Tag angegeben' : `Geplant für ${day}`}. Zeiten sind örtlich, ${zone}. ± ist die doppelte Standardunsicherheit. Protokoll: ${format}.`,
  page: ['Seite ', ' von '],
  units: { dBuV: 'dBµV', deg: '°', 'deg C': '°C', ratio: '' },
  blanks: {
    head: ['Ausgeführt von', 'Tag, Uhrzeit', 'Wetter', 'Messgerät, Nummer'],
    mount: [
      'Azimut eingestellt',
      'Elevation eingestellt',
      'Feeds gedreht auf',
      'Mast lotrecht auf',
    ],
    foot: ['Ausgeführt von, Tag', 'Gesehen von, Tag'],
  },
  sections: {
    place: 'Ort und Nord',
    slots: 'Wo die Positionen stehen',
    view: 'Sicht',
    shadow: 'Nord am Schatten eines Lots',
    tuning: 'Einstellung',
    peakingAid: 'Zum Ausrichten',
    antenna: 'Zu erwarten an der Antenne bei klarem Himmel',
    supply: 'Spannung an den Einheiten',
    outlets: 'Zu erwarten an den Dosen bei klarem Himmel',
    transmit: 'Gesendet',
    rain: 'Regen und die Zusage',
    sunOutages: 'Sonnenstörungen',
    assumptions: 'Angenommen, wo die Auftragsdatei nichts sagt; Besseres dort angeben',
    notSaid: 'Nicht gesagt, weil ein Feld fehlt',
    firstLook: 'Zuerst ansehen',
    readings: 'Ablesungen',
    peaking: 'Ausrichtung',
    feeds: 'Wie die Feeds stehen',
    notes: 'Notizen',
  },
  mountTitle: (mount) => (mount === null ? 'Halterung' : `Halterung: ${mount}`),
  columns: {
    slot: 'Position',
    carrier: 'Träger',
    mount: 'Halterung',
    unit: 'Einheit',
    longitude: 'Länge',
    azimuthTrue: 'Azimut °',
    magnetic: 'Kompass °',
    elevation: 'Elevation °',
    geometric: 'ohne Luft °',
    rangeKm: 'Entfernung km',
    skew: 'Drehung der Welle',
    towards: 'nach',
    time: 'Zeit',
    pointer: 'was dorthin zeigt',
    sunElevation: 'Sonnenhöhe °',
    degPerMinute: '° je Minute',
    skyline: 'Horizontlinie °',
    clearance: 'darüber °',
    edge: 'frei am Rand m',
    edgeWorst: 'ungünstigst m',
    freeBeyond: 'frei, wenn weiter als m',
    verdict: 'Urteil',
    rotationEast: 'nach Osten °',
    beamOff: 'Keule daneben °',
    reached: 'erreicht',
    sinceNode: 'Stunden seit dem Knoten',
    feedFor: 'Feed für',
    acrossMm: 'rechts mm',
    upMm: 'oben mm',
    alongMm: 'hinein mm',
    turnUpright: 'Drehung von aufrecht',
    turnRow: 'gegen die Reihe',
    mountLossDb: 'Verlust durch die Halterung dB',
    note: 'Hinweis',
    frequencyGHz: 'GHz',
    polarization: 'Pol.',
    frequencyMHz: 'MHz auf dem Kabel',
    oscillatorGHz: 'LO GHz',
    oscillatorKHz: 'LO ± kHz',
    imageGHz: 'Spiegel GHz',
    inRange: 'Empfänger nimmt ihn',
    voltageV: 'V',
    tone: '22 kHz',
    input: 'Eingang am Schalter',
    levelDbuv: 'Pegel dBµV',
    carrierToNoiseDb: 'C/N dB',
    read: 'gelesen',
    neededDb: 'nötig dB',
    outlet: 'Dose',
    limits: 'Grenzwerte',
    least: 'min. dB',
    fedV: 'gespeist V',
    currentA: 'A',
    arrivesV: 'kommt an V',
    at: 'bei',
    powerW: 'W am Flansch',
    eirpDbw: 'EIRP dBW',
    backOffDb: 'Abstand dB',
    maskDb: 'unter der Maske dB',
    keepOutM: 'Abstand halten m',
    marginClear: 'Reserve, klar dB',
    fadeDb: 'Schwund dB',
    marginFaded: 'Reserve dann dB',
    hoursAYear: 'Ausfall, Stunden im Jahr',
    kept: 'gehalten mit',
    beamwidth: 'Keule °',
    nextLobe: 'nächste Keule bei °',
    lobeBelow: 'schwächer um dB',
    fromDay: 'von',
    toDay: 'bis',
    between: 'zwischen',
    clock: 'Uhr',
    minutes: 'längste min',
    cause: 'Ursache',
    probability: 'Wahrscheinlichkeit',
    where: 'wo',
    testPoint: 'Messpunkt',
    quantity: 'Größe',
    reading: 'gelesen',
    planned: 'geplant',
    off: 'daneben',
    leftAt: 'steht auf',
    before: 'vorher',
    after: 'nachher',
    change: 'Änderung dB',
  },
  yes: 'ja',
  no: 'nein',
  on: 'ein',
  off: 'aus',
  antenna: 'Antenne',
  boresightName: 'Achse',
  meridian: 'Meridian',
  visit: (number, date) => `Besuch ${number} (${date})`,
  andMore: (count) => `und ${count} weitere`,
  percent: (value) => `${String(Number(value.toPrecision(2))).replace('.', ',')} % des Jahres`,
  clockwise: (amount) => `${amount}° im Uhrzeigersinn`,
  counterClockwise: (amount) => `${amount}° gegen den Uhrzeigersinn`,
  noTurn: 'aufrecht',
  noNorth: 'Kein Tag ist angegeben, darum ist keine magnetische Peilung errechnet.',
  declination: (amount, doubt, model, date, outside) =>
    `Missweisung ${amount}° ± ${doubt}° (${model}, ${date}${outside ? ', außerhalb seiner Zeit' : ''}).`,
  magneticBearing: (subtract, amount) =>
    `Mit dem Kompass: Azimut ${subtract ? '−' : '+'}\u00a0${amount}°.`,
  slotSense:
    'Die Elevation ist die, auf welche die Keule zeigen muss. Die Drehung der Welle ist von hinter der Antenne zum Satelliten gesehen.',
  elevationSense: 'Die Elevation ist die, auf welche die Keule zeigen muss.',
  refraction:
    'Bei kleiner Elevation biegt die Luft die Keule: die angegebene Elevation einstellen, nicht die ohne Luft.',
  pointers: { sun: 'zur Sonne hin', shadow: 'der Schatten entlang' },
  shadowHead: (date, zone, offset) =>
    `Am ${date}, Ortszeit ${zone} (${offset}). Nie in die Sonne blicken; auf den Schatten achten.`,
  noShadow: (date) => `Am ${date} steht die Sonne über keiner der Richtungen.`,
  noShadowDay: 'Kein Tag ist angegeben, darum sind keine Zeiten errechnet.',
  viewSense:
    'Der Rand ist der des Reflektors; der ungünstigste Fall ist der von Kompass und Neigungsmesser, doppelt ihre Unsicherheit.',
  noSlot: 'Keine Position steht über dem Horizont: nichts einzustellen.',
  mountNotGiven: 'Der Reflektor ist nicht angegeben: nur Richtungen.',
  tooFarApart: 'Die Positionen stehen für einen Reflektor zu weit auseinander.',
  boresight: (azimuth, magnetic, elevation) =>
    `Achse: ${azimuth === null ? 'senkrecht nach oben' : `Azimut ${azimuth}° rechtweisend`}${magnetic === null ? '' : `, ${magnetic}° am Kompass`}; Elevation ${elevation}°.`,
  face: (lean, forwards, offset) =>
    `Fläche des Reflektors: ${lean}° ${forwards ? 'nach vorn' : 'nach hinten'} aus der Senkrechten (Offsetwinkel ${offset}°).`,
  row: (turn) =>
    `Feedreihe: ${turn} aus der Waagrechten, von hinter der Antenne zum Satelliten gesehen.`,
  rowOnce:
    'Die Plätze unten enthalten diese Drehung schon: wer die Plätze einstellt, dreht die Reihe nicht noch einmal.',
  feedPlaces:
    'Plätze vom Brennpunkt aus, von hinten gesehen: nach rechts, nach oben und hinein zum Reflektor. Drehungen von hinten zum Satelliten gesehen, von der Senkrechten des Reflektors aus, für lineare Polarisation.',
  anyTurn: 'beliebig (zirkular)',
  feedAnyTurn: 'Feed: zirkulare Polarisation, jede Drehung ist recht.',
  feedTurn: (turn) =>
    `Feed: ${turn}, von hinter der Antenne zum Satelliten gesehen, von der Senkrechten des Reflektors aus (lineare Polarisation).`,
  drawing: {
    title: 'Feeds von hinten, Blick zum Satelliten.',
    upright: 'Gestrichelt: aufrecht.',
  },
  beyondModel: 'jenseits des Modells: stimmt auf etwa 1 dB',
  plumb: (lean, mmPerM, loss) =>
    `Mast auf ${lean}° lotrecht (${mmPerM} mm je Meter), wenn die Antenne nur nach ihren Skalen steht, für höchstens ${loss} dB.`,
  polar: (axis, tilt, declination, apex) =>
    `Polarhalterung: Achse auf Elevation ${axis}°, um ${tilt}° zum Äquator gekippt; Keule ${declination}° unter der Ebene quer zur Achse; am höchsten Punkt steht die Keule auf ${apex}°.`,
  tracking: (lowest, highest, error) =>
    `Geneigte Bahn: Elevation zwischen ${lowest}° und ${highest}°; zwischen zwei Bewegungen liegt die Keule höchstens ${error}° daneben.`,
  tunerRange: (from, to, said) =>
    `Die Empfänger nehmen ${from} bis ${to} MHz${said ? '' : ', wie üblich; was sie nehmen, ist nicht angegeben'}. Der Spiegel ist, was von der anderen Seite des Lokaloszillators (LO) an derselben Stelle herauskäme.`,
  inverted:
    'Wo der Lokaloszillator über dem Träger liegt, ist das Spektrum auf dem Kabel umgekehrt.',
  expectedSense:
    'Pegel je Träger an 75 Ohm hinter der Einheit; C/N in der Bandbreite der Symbolrate.',
  atLeast: (amount) => `ab ${amount}`,
  atMost: (amount) => `bis ${amount}`,
  keepOut: (group, limit) =>
    `Abstand halten: die Keule entlang, für ${group}, bis ${limit} W/m² (ICNIRP 2020, lokal); es gilt das örtliche Recht. Niemand tritt vor den Reflektor oder greift an den Feed, solange er sendet, in welchem Abstand auch immer.`,
  limitNotReached: 'Grenze nicht erreicht',
  rain: (rate, spread, height, source) =>
    `Regenrate ${rate} mm/h (± ${spread} %) für 0,01 % des Jahres, Regenhöhe ${height} km (${source}).`,
  promise: (percent) =>
    `Zugesagt: der Empfang fällt höchstens ${percent} % des mittleren Jahres aus. Der Schwund ist der, der so lange überschritten wird.`,
  under: (amount) => `unter ${amount}`,
  over: (amount) => `über ${amount}`,
  lobeSense:
    'Ein um so viel schwächeres Maximum, so weit daneben, ist eine Nebenkeule: darüber hinweggehen. Winkel am Himmel; auf einer Skala um den Mast sind sie um 1 / cos(Elevation) größer.',
  turnsPerDegree: (axis, turns, degrees) =>
    `Verstellung, ${axis}: ${turns} Umdrehungen je Grad (${degrees}° je Umdrehung).`,
  turnsNotKnown:
    'Umdrehungen je Grad sind nicht bekannt: über einige Grad der Skala zählen und aufschreiben: ____________',
  usefulDrop: (tenth, half, whole, scatter, loss) =>
    `Zu beiden Seiten hinausgehen, bis der Pegel mindestens um ${tenth} dB gefallen ist bei einer Anzeige in Schritten von 0,1 dB, um ${half} dB bei 0,5 dB, um ${whole} dB bei 1 dB, besser um 2 bis 3 dB, dann halb zurück: bei Ablesungen, die um ${scatter} dB streuen, bleiben auf dieser Achse höchstens ${loss} dB.`,
  noSunOutages: (date) => `Im Jahr ab ${date} drückt die Sonne keinen Träger unter seine Reserve.`,
  sunOutageSense: (zone) =>
    `Ortszeit, ${zone}. Durch das Rauschen der Sonne kann der Empfang täglich einige Minuten ausfallen, gerechnet für den Träger mit der kleinsten Reserve; dann nichts ablesen.`,
  counted: (count, severity) => `${count} ${counted[severity] ?? severity}`,
  outcome: (outcome, counts) =>
    `Ergebnis: ${outcome}${counts === '' ? '' : ` (Befunde: ${counts})`}.`,
  wholeAntenna: 'ganze Antenne',
  next: (what, where) =>
    `Als Nächstes, um die ersten beiden zu unterscheiden: ${what}${where === '' ? '' : ` (${where})`}.`,
  noReadings: 'Noch nichts abgelesen.',
  readingSense: (doubt) =>
    `Grenzwerte gelten für den Wert selbst; wer näher am Grenzwert liegt als seine Unsicherheit, ist unentschieden. Messgeräte: bis ± ${doubt} dB.`,
  power: (exponent) => `10^${exponent}`,
  readInRain: 'bei Regen oder Schnee gelesen',
  noLimit: 'kein Grenzwert',
  noLimitButLow: 'kein Grenzwert, aber niedrig',
  conformsButLow: 'konform, aber niedrig',
  conformsButHigh: 'konform, aber hoch',
  widths: (measured, theory, lobe) =>
    `${measured === null ? 'Keule' : `Breite ${measured}°,`} nach Theorie ${theory}°: ${lobe}`,
  bracketing: (turns, within, drop, kind) =>
    `Eingabelung: ${turns} Umdrehungen zurück; das Maximum liegt dann ${within === null ? 'in unbekanntem Abstand' : `innerhalb von ${within} Umdrehungen`} (Abfall ${drop} dB, ${kind}).`,
  fit: {
    peak: (position, from, to, level) =>
      `Ausgleich: Maximum bei ${position}° am Himmel, 95 % zwischen ${from}° und ${to}°; ${level} dBm.`,
    edge: (side, edge) =>
      `Ausgleich: der Pegel steigt am ${side === 'lower' ? 'unteren' : 'oberen'} Ende noch; über ${edge}° hinausgehen.`,
    flat: 'Ausgleich: kein Maximum hebt sich aus der Streuung; zu beiden Seiten weiter hinausgehen.',
    notMainLobe: (reason) => `Ausgleich: keine Hauptkeule (${reason}).`,
    tooFew: (readings, needed) => `Ausgleich: zu wenige Ablesungen (${readings} von ${needed}).`,
    contradictory: 'Ausgleich: die Ablesungen widersprechen sich; noch einmal ablesen.',
  },
  pointingLoss: (now, upper, target) =>
    `Verlust durch Ausrichtung jetzt ${now} dB${upper === null ? '' : `, höchstens ${upper} dB (95 %)`}${target === null ? '' : `; Ziel ${target}`}.`,
  leaveIt: 'So lassen.',
  moveTurns: (turns) =>
    `Um ${turns} Umdrehungen verstellen, das letzte Stück von der gewohnten Seite.`,
  moveDeg: (degrees) => `Um ${degrees}° verstellen, das letzte Stück von der gewohnten Seite.`,
  changes: (visit, date) => `Seit dem vorigen Besuch (Besuch ${visit}, ${date})`,
  pooled: (quantity, count, mean, doubt) =>
    `${quantity}, ${count} Ablesungen zusammen: ${mean} ± ${doubt} dB.`,
  notRepeated: (count) => `Stellen, die nicht noch einmal abgelesen wurden: ${count}.`,
};
