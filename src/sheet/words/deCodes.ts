/** German words for the codes of a record. */

import type { CodeWords } from './codes.js';
import { deFindings } from './deFindings.js';

const verdicts: CodeWords['verdicts'] = {
  conforms: 'konform',
  'does-not-conform': 'nicht konform',
  undecided: 'unentschieden',
};

/** German words for the codes of a record. */
export const deCodes: CodeWords = {
  ...deFindings,
  verdicts,
  outcomes: { ...verdicts, incomplete: 'unvollständig' },
  severities: {
    'does-not-conform': 'Nicht konform',
    undecided: 'Unentschieden',
    incomplete: 'Unvollständig',
    note: 'Gut zu wissen',
  },
  cautions: {
    'local-codes':
      'Es gelten die örtlichen Bau-, Elektro- und Funkvorschriften. Wo sie eine zugelassene Person verlangen, macht diese die Arbeit.',
    'rf-lock-out':
      'Sender: abschalten und gegen Wiedereinschalten sichern, bevor jemand an den Feed greift oder in die Keule tritt. Stecker oder Schlüssel mitnehmen, Schalter beschildern, und allen sagen, die ihn einschalten könnten.',
    'work-at-height':
      'Auf Dach und Mast nur gegen Absturz gesichert und nicht allein arbeiten; unten niemanden hinlassen.',
    'falling-objects':
      'Werkzeug und Reflektor anleinen, bis sie verschraubt sind, damit nichts herabfallen kann.',
    'power-lines':
      'Mast, Leiter und Reflektor weiter von Freileitungen fernhalten, als sie im Fallen reichen könnten.',
    weather:
      'Bei Wind, Eis oder hörbarem Donner aufhören. Ein Reflektor in den Händen ist ein Segel.',
    'drilling-and-roof-load':
      'Vor dem Bohren klären, wo Kabel, Rohre und die Dachhaut verlaufen. Ob Dach oder Wand Mast und Wind trägt, beurteilt eine Fachperson.',
    'lightning-and-bonding':
      'Mast und Kabelschirme nach den örtlichen Vorschriften in den Potenzialausgleich und Blitzschutz einbinden, bevor das Kabel angeschlossen wird.',
    'foreign-voltage':
      'Gemeinsames Haus: ein Fehler in einer anderen Wohnung kann einen Kabelschirm unter Spannung setzen. Zwischen Schirm und Ausgleichsschiene messen, bevor beide berührt werden, und vor dem Trennen der Schirme überbrücken.',
    sun: 'Nie in die Sonne blicken, um eine Richtung zu finden; den Schatten eines Lots nehmen.',
    'burning-mirror':
      'Ein Reflektor, der zur Sonne zeigt, brennt im Brennpunkt wie ein Spiegel. Abdecken oder wegdrehen, Hände und Augen fernhalten.',
    mains:
      'Netzgespeiste Verstärker und Schalter öffnet und schließt nur eine zugelassene Person an.',
  },
  causes: {
    nothing: 'kein Fehler',
    mispointed: 'falsch ausgerichtet',
    'mast-leaning': 'Mast schief',
    'polarization-rotated': 'Feed verdreht',
    'wrong-slot': 'falscher Satellit',
    'side-lobe': 'Nebenkeule',
    obstructed: 'Sicht verstellt',
    'bad-connector': 'schlechter Stecker',
    'wrong-cable': 'falsches Kabel',
    'part-failed': 'Teil ausgefallen',
    'supply-low': 'Speisung zu niedrig',
    'unit-out-of-tolerance': 'Außeneinheit außer Toleranz',
    overloaded: 'übersteuert',
    interference: 'Störsignal',
    rain: 'Regen',
    'sun-outage': 'Sonnenstörung',
  },
  measurements: {
    level: 'den Pegel ablesen',
    'carrier-to-noise': 'das Träger-Rausch-Verhältnis ablesen',
    isolation: 'die Entkopplung ablesen',
    reception: 'nachsehen, was empfangen wird',
    'polarization-null': 'den Feed zum Minimum drehen und notieren, wie weit',
    search: 'ringsum nach einem stärkeren Maximum suchen',
    'sun-near':
      'im Kalender der Sonnenstörungen nachsehen, ob die Sonne hinter dem Satelliten steht',
    'obstacle-seen': 'nachsehen, ob etwas in der Keule steht',
    'connector-check': 'die Stecker öffnen und prüfen',
    'cable-check': 'den Aufdruck des Kabels lesen und die Länge abschreiten',
    'supply-voltage': 'die Speisespannung unter Last ablesen',
    'mast-lean': 'eine Wasserwaage an den Mast halten',
    'rain-seen': 'nachsehen, ob es zum Satelliten hin regnet',
    spectrum: 'das Spektrum ansehen',
    'repeat-later': 'später noch einmal ablesen',
  },
  quantities: {
    level: 'Pegel',
    'carrier-to-noise': 'C/N',
    'modulation-error-ratio': 'MER',
    'bit-error-ratio': 'BER',
    'cross-polar-isolation': 'Entkopplung',
    'noise-level': 'Rauschpegel',
    'supply-voltage': 'Spannung',
  },
  polarizations: { horizontal: 'H', vertical: 'V', right: 'rechts', left: 'links' },
  sections: {
    north: 'magnetisch Nord',
    mount: 'Halterung',
    view: 'Sicht',
    rain: 'Regen',
    promise: 'Zusage',
    tuning: 'Einstellung',
    levels: 'Pegel',
    outlets: 'Dosen',
    supply: 'Speisung',
    pointing: 'Ausrichtung',
    limits: 'Grenzwerte',
    transmit: 'Senden',
  },
  views: {
    clear: 'frei',
    doubtful: 'zweifelhaft',
    'distance-needed': 'Abstand nötig',
    blocked: 'verstellt',
    'not-sighted': 'nicht gepeilt',
    'below-horizon': 'unter dem Horizont',
  },
  directions: {
    visible: 'sichtbar',
    'below-horizon': 'unter dem Horizont',
    overhead: 'senkrecht oben',
  },
  rainSources: {
    'climate-grid': 'Klimagitter',
    measured: 'gemessen',
    'monthly-normals': 'Monatsmittel',
    'rain-zone': 'Regenzone',
  },
  compass: {
    usable: '',
    caution: 'Der Kompass zeigt hier schlecht; an der Sonne prüfen.',
    blackout: 'Dem Kompass hier nicht trauen; die Sonne nehmen.',
  },
  brackets: {
    bracketed: 'eingegabelt',
    'not-far-enough': 'nicht weit genug hinaus',
    blind: 'Anzeige zu grob gestuft',
  },
  lobes: {
    dip: 'der Pegel fällt in der Mitte',
    'too-narrow': 'zu schmal',
    'too-wide': 'zu breit',
  },
  mainLobes: {
    proven: 'der Breite nach die Hauptkeule',
    refuted: 'nicht die Hauptkeule',
    'not-proven': 'Hauptkeule nicht belegt',
  },
  pointing: {
    'within-target': 'im Ziel',
    'over-target': 'über dem Ziel',
    'not-known': 'nicht bekannt',
  },
  meanings: {
    'no-common-readings':
      'Bei beiden Besuchen wurde nichts Gemeinsames abgelesen, es gibt nichts zu vergleichen.',
    unchanged: 'Keine Ablesung hat sich um mehr als ihre Unsicherheit geändert.',
    'all-lower-alike':
      'Alle Ablesungen sind um etwa dasselbe gefallen: ansehen, was allen gemeinsam ist, Reflektor, Ausrichtung, Außeneinheit und erstes Kabel.',
    'all-higher-alike':
      'Alle Ablesungen sind um etwa dasselbe gestiegen: die Messgeräte vergleichen, oder nachsehen, was inzwischen repariert wurde.',
    'one-slot-lower':
      'Nur eine Position ist gefallen: zuerst ihren Feed und ihre Sicht ansehen (wachsende Bäume, neue Gebäude), dann das Kabel.',
    'one-test-point-lower':
      'Nur ein Messpunkt ist gefallen: Kabel, Stecker und Dose ansehen, die nur er benutzt.',
    mixed:
      'Die Ablesungen haben sich verschieden geändert: wiederholen, dann Position für Position die Ursache suchen.',
  },
  meaningShort: {
    'all-lower-alike': 'alle gleich gefallen',
    'all-higher-alike': 'alle gleich gestiegen',
    'one-slot-lower': 'eine Position gefallen',
    'one-test-point-lower': 'ein Messpunkt gefallen',
    mixed: 'verschieden',
  },
  firstLook: {
    cause: 'Ursachen danach, wie gut sie das Muster aller Ablesungen erklären:',
    'cannot-tell': 'Die Ablesungen unterscheiden die Ursachen noch nicht:',
    'nothing-wrong': 'Das Muster aller Ablesungen ist wie geplant:',
  },
  axes: { azimuth: 'Azimut', elevation: 'Elevation' },
  supplies: {
    enough: 'genug',
    'too-low': 'zu niedrig',
    'too-much-current': 'zu viel Strom',
    blocked: 'gesperrt',
    'self-powered': 'eigene Speisung',
    misread: 'falsch verstanden',
  },
  exposureGroups: { public: 'jedermann', occupational: 'unterwiesene Personen' },
  visits: { installation: 'Errichtung', service: 'Wartung' },
  weather: { clear: 'klar', cloudy: 'bewölkt', rain: 'Regen', snow: 'Schnee' },
  fields: {
    heightM: 'Höhe über dem Meer',
    date: 'Tag der Arbeit',
    timeZone: 'Zeitzone',
    diameterM: 'Durchmesser des Reflektors',
    efficiencyRatio: 'Flächenwirkungsgrad',
    offsetAngleDeg: 'Offsetwinkel',
    focalLengthM: 'Brennweite',
    surfaceErrorMm: 'Oberflächenfehler (Effektivwert)',
    edgeTaperDb: 'Randabfall der Ausleuchtung',
    feedDiameterM: 'Außendurchmesser eines Feeds',
    feedLossDb: 'Verlust vor der Einheit',
    temperatureC: 'Temperatur der Kabel',
    carrierCount: 'Träger gleichzeitig auf einem Kabel',
    implementationLossDb: 'Verlust des Demodulators',
    bearingUncertaintyDeg: 'Standardunsicherheit einer Peilung',
    elevationUncertaintyDeg: 'Standardunsicherheit einer Elevation',
    nearestDistanceM: 'Nächstes ohne Abstand Gepeiltes',
    requiredProbabilityRatio: 'Wahrscheinlichkeit, mit der die Zusage zu halten ist',
    outputBackOffDb: 'Abstand von der Sättigung',
    exposureGroup: 'Schutzabstand gerechnet für',
    azimuthReference: 'Azimutgrade gelesen',
    movesPerDay: 'Bewegungen am Tag',
    eastLimitDeg: 'Anschlag des Motors nach Osten',
    westLimitDeg: 'Anschlag des Motors nach Westen',
    stepDeg: 'Schritt des Motors',
    fit: 'Einstellung der Polarachse',
    inclinationDeg: 'Neigung der Bahn',
    source: 'Quelle der Regenrate',
    kind: 'Feeds gehalten',
    exceededPercent: 'Anteil des Jahres, in dem der Empfang ausfallen darf',
    pointingLossDb: 'größter Verlust nach dem Ausrichten',
    limits: 'Grenzwerte an den Messpunkten',
    units: 'Empfangseinheiten',
    intermediateFrequencyMHz: 'Frequenz auf dem Kabel',
    carriers: 'Träger der Position',
    eirpDbw: 'EIRP des Trägers',
    symbolRateMBd: 'Symbolrate',
    mode: 'Modus (Modulation und Coderate)',
    gainDb: 'Verstärkung der Einheit',
    noiseFigureDb: 'Rauschmaß der Einheit',
    supply: 'Speisung, die die Einheit braucht',
    distribution: 'was hinter den Einheiten liegt',
    offAxisMask: 'Maske neben der Achse',
    samples: 'Peilungen der Horizontlinie',
    climate: 'Klima des Ortes',
  },
  taken: {
    UTC: 'UTC',
    'on-scale': 'auf der Skala der Halterung',
    'on-sky': 'am Himmel',
    free: 'jeder, wo seine Position ihn braucht',
    rigid: 'auf einer starren Schiene',
    public: 'jedermann',
    occupational: 'unterwiesene Personen',
    'climate-grid': 'Klimagitter',
    'least-worst': 'größter Fehler über den Bogen am kleinsten',
  },
};
