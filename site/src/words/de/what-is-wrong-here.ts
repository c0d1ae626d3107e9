/** German for `what-is-wrong-here`. */

import type { Pairs } from '../../lib/language/language.js';

const inputs: Pairs = {
  Readings: 'Messwerte',
  Level: 'Pegel',
  'C/N / dB': 'C/N / dB',
  Received: 'Empfangen',
  wanted: 'gewünschter',
  nothing: 'nichts',
  another: 'anderer',
  'It rains along the path': 'Es regnet auf dem Weg',
  'Lean of the mast': 'Neigung des Masts',
  'Slot of the next four': 'Position der nächsten vier',
  'The Sun stands near it': 'Die Sonne steht nahe dabei',
  'Something stands in the view': 'Etwas verstellt die Sicht',
  'More level found by swinging': 'Durch Schwenken gefundener Pegel',
  'Turn of the feed to the null': 'Drehung des Feeds zum Minimum',
  'Clockwise positive, from behind the antenna.':
    'Im Uhrzeigersinn positiv, von hinter der Antenne.',
  'Voltage at the unit, asked for the higher one from the hall':
    'Spannung an der Außeneinheit, von der Diele aus die höhere verlangt',
  'C/N an hour later less now': 'C/N eine Stunde später minus jetzt',
  'Segment of the next two': 'Abschnitt der nächsten zwei',
  'A connector of it is bad': 'Ein Stecker darin ist schlecht',
  'Its cable is not as planned': 'Sein Kabel ist nicht wie geplant',
  'Hide the answer (for a class)': 'Antwort verbergen (für eine Klasse)',
  'The cases below are readings of one fault each.':
    'Die Fälle unten sind Messwerte mit je einem Fehler.',
  'not measured': 'offen',
  'not tried': 'offen',
  'not read': 'offen',
  'not looked': 'nicht nachgesehen',
  'from the switch to the head': 'vom Multischalter zur Kopfstelle',
  'from the head to the hall': 'von der Kopfstelle zur Diele',
  'from the head to the attic': 'von der Kopfstelle zum Dachboden',
  'lead of the unit for {}': 'Leitung der Außeneinheit für {}',
  'Case {}': 'Fall {}',
  // Here E is no east.
  'Case E': 'Fall E',
};

/** Where a fault lies. */
const places: Pairs = {
  head: 'Kopfstelle',
  hall: 'Diele',
  attic: 'Dachboden',
  '7.2 E': '7,2° O',
  '16.4 E': '16,4° O',
  '21.8 E': '21,8° O',
  '{} E, {} E': '{}° O, {}° O',
  '{} E, {} E, {} E': '{}° O, {}° O, {}° O',
  'lead of {} E': 'Leitung für {}° O',
  '{} MHz at {}': '{} MHz, {}',
  'port {} E vertical low': 'Eingang {}° O vertikal, unteres Band',
  'port {} E vertical high': 'Eingang {}° O vertikal, oberes Band',
  'port {} E horizontal low': 'Eingang {}° O horizontal, unteres Band',
  'port {} E horizontal high': 'Eingang {}° O horizontal, oberes Band',
};

/** Causes in a word or two, alone and with a place. */
const causes: Pairs = {
  'nothing wrong': 'nichts',
  mispointed: 'falsch ausgerichtet',
  'leaning mast': 'Mast schief',
  'polarization rotated': 'Feed verdreht',
  'wrong slot': 'falscher Satellit',
  'side lobe': 'Nebenkeule',
  'view obstructed': 'Sicht verstellt',
  'bad connector': 'schlechter Stecker',
  'wrong cable': 'falsches Kabel',
  'failed part': 'Teil ausgefallen',
  'supply too low': 'Fernspeisung zu niedrig',
  'unit out of tolerance': 'Außeneinheit außer Toleranz',
  overloaded: 'übersteuert',
  interference: 'Störsignal',
  rain: 'Regen',
  'Sun outage': 'Sonnenstörung',
};
const placed: Pairs = Object.fromEntries(
  Object.entries(causes).map(([english, german]) => [`${english}: {}`, `${german}: {}`]),
);

const sentences: Pairs = {
  'nothing is wrong': 'es fehlt nichts',
  'the antenna is mispointed': 'die Antenne ist falsch ausgerichtet',
  'the mast leans': 'der Mast steht schief',
  'a feed is rotated': 'ein Feed ist verdreht',
  'the antenna looks at another satellite': 'die Antenne blickt auf einen anderen Satelliten',
  'the antenna is on a side lobe': 'die Antenne steht auf einer Nebenkeule',
  'something stands in the view': 'etwas verstellt die Sicht',
  'a connector is wet or badly made': 'ein Stecker ist nass oder schlecht gemacht',
  'a cable is too long or of another type': 'ein Kabel ist zu lang oder von anderer Art',
  'a part has failed or is missing': 'ein Teil ist ausgefallen oder fehlt',
  'the supply of the unit is too low': 'die Fernspeisung der Außeneinheit ist zu niedrig',
  'an outdoor unit is out of tolerance': 'eine Außeneinheit ist außer Toleranz',
  'a part is overloaded': 'ein Teil ist übersteuert',
  'another signal interferes': 'ein anderes Signal stört',
  'the Sun stands behind the satellite': 'die Sonne steht hinter dem Satelliten',
};

/** Measurements to make: what is asked, and what was seen. */
const measurements: Pairs = {
  'read the level ({}, {})': 'den Pegel ablesen ({}, {})',
  'read the carrier-to-noise ratio ({}, {})': 'den Träger-Rausch-Abstand ablesen ({}, {})',
  'read the cross-polar isolation ({}, {})': 'die Kreuzpolarisations-Entkopplung ablesen ({}, {})',
  'see what is received ({}, {})': 'nachsehen, was empfangen wird ({}, {})',
  'turn the feed to the null of the other polarization ({})':
    'das Feed auf das Minimum der anderen Polarisation drehen ({})',
  'swing the antenna and look for more level ({})':
    'die Antenne schwenken und mehr Pegel suchen ({})',
  'measure the voltage at the unit under load ({})':
    'die Spannung an der Außeneinheit unter Last messen ({})',
  'hold a level to the mast': 'eine Wasserwaage an den Mast halten',
  'read again in an hour': 'in einer Stunde noch einmal ablesen',
  'see whether it rains along the path': 'nachsehen, ob es auf dem Weg regnet',
  'look for a carrier that is not in the plan': 'einen Träger suchen, der nicht im Plan steht',
  'look up whether the Sun stands near the slot now ({})':
    'nachschlagen, ob die Sonne jetzt nahe der Position steht ({})',
  'look along the line of sight ({})': 'die Sichtlinie entlangblicken ({})',
  'open the connectors and look ({})': 'die Stecker öffnen und nachsehen ({})',
  'read the print on the cable and step off its length ({})':
    'den Aufdruck des Kabels lesen und seine Länge abschreiten ({})',

  '{}, {}: level {} dBµV': '{}, {}: Pegel {} dBµV',
  '{}, {}: C/N {} dB': '{}, {}: C/N {} dB',
  '{}, {}: isolation {} dB': '{}, {}: Entkopplung {} dB',
  '{}, {}: received': '{}, {}: empfangen',
  '{}, {}: another service': '{}, {}: ein anderer Dienst',
  '{}, {}: nothing received': '{}, {}: nichts empfangen',
  'mast leans {}°': 'Mast neigt sich {}°',
  '{} dB more found by swinging': '{} dB mehr durch Schwenken',
  'null at a turn of {}°': 'Minimum bei {}° Drehung',
  '{} V at the unit': '{} V an der Außeneinheit',
  '{} dB more an hour later': '{} dB mehr eine Stunde später',
  'see whether it rains along the path: {}': 'Regen auf dem Weg: {}',
  'look for a carrier that is not in the plan: {}': 'Träger, der nicht im Plan steht: {}',
  'look up whether the Sun stands near the slot now: {}': 'Sonne nahe der Position: {}',
  'look along the line of sight: {}': 'Hindernis in der Sichtlinie: {}',
  'open the connectors and look: {}': 'Stecker schlecht: {}',
  'read the print on the cable and step off its length: {}': 'Kabel nicht wie geplant: {}',
};

const answers: Pairs = {
  'Most likely {}.': 'Am wahrscheinlichsten: {}.',
  'Most likely {} ({}).': 'Am wahrscheinlichsten: {} ({}).',
  'Nothing is wrong: the readings are as planned.':
    'Es fehlt nichts: die Messwerte sind wie geplant.',
  'Cannot tell: no single cause explains these readings. Look for a slip in a reading, or for two faults.':
    'Unentschieden: keine einzelne Ursache erklärt diese Messwerte. Einen Ablesefehler suchen, oder zwei Fehler.',
  'Nothing is wrong: the readings are as planned. Next: {}.':
    'Es fehlt nichts: die Messwerte sind wie geplant. Als Nächstes: {}.',
  'Cannot tell: no single cause explains these readings. Look for a slip in a reading, or for two faults. Next: {}.':
    'Unentschieden: keine einzelne Ursache erklärt diese Messwerte. Einen Ablesefehler suchen, oder zwei Fehler. Als Nächstes: {}.',
  'Cannot tell yet: {}. Next: {}.': 'Noch unentschieden: {}. Als Nächstes: {}.',
  'Cannot tell yet: {}.': 'Noch unentschieden: {}.',
  'Cannot tell yet: {}, or {}.': 'Noch unentschieden: {}, oder {}.',
  '{}, or {}': '{}, oder {}',
  'What is wrong here? Compare the slots, the bands and the places, and write down a cause before you show the answer.':
    'Was stimmt hier nicht? Positionen, Bänder und Orte vergleichen und eine Ursache aufschreiben, bevor die Antwort gezeigt wird.',
  First: 'An erster Stelle',
  Probability: 'Wahrscheinlichkeit',
  'among the causes considered, for one fault': 'unter den betrachteten Ursachen, bei einem Fehler',
  'Next measurement': 'Nächste Messung',
  'none separates the first two': 'keine trennt die ersten beiden',
  'tells {} from {}': 'trennt „{}“ von „{}“',
  'Causes by probability': 'Ursachen nach Wahrscheinlichkeit',
  Cause: 'Ursache',
  Where: 'Wo',
  'Probability / %': 'Wahrscheinlichkeit / %',
  'Evidence on the first cause, {}, strongest first':
    'Was zur ersten Ursache aussagt ({}), das Stärkste zuerst',
  Seen: 'Gesehen',
  'By this cause': 'Bei dieser Ursache',
  'If all were well': 'Wenn alles gut wäre',
  Speaks: 'Spricht',
  for: 'dafür',
  against: 'dagegen',
  neutral: 'neutral',
  'Levels read and planned': 'Abgelesene und geplante Pegel',
  Carrier: 'Träger',
  Place: 'Ort',
  'Read / dBµV': 'Gelesen / dBµV',
  'Planned / dBµV': 'Geplant / dBµV',
  'Difference / dB': 'Differenz / dB',
  'This one is up at the antenna. Ladder held, a line on, no power line within reach, not in a thunderstorm; a transmitting terminal switched off by whoever may do it.':
    'Das geschieht oben an der Antenne: die Leiter gehalten, das Seil angelegt, keine Stromleitung in Reichweite, nicht bei Gewitter; eine Sendeanlage schaltet ab, wer das darf.',
  'Low voltage at the unit, mains behind its supply: open nothing that is fed by the mains. Foreign voltage can stand on screens in blocks with several risers.':
    'An der Außeneinheit steht Kleinspannung, hinter ihrer Fernspeisung das Netz: nichts öffnen, was am Netz hängt. In Häusern mit mehreren Steigleitungen kann auf Schirmen fremde Spannung stehen.',
  'Never look along the antenna at the Sun: use the shadow of the feed on the reflector.':
    'Nie entlang der Antenne in die Sonne blicken: den Schatten des Feeds auf dem Reflektor nehmen.',
};

/** The first cause and the next measurement in one breath. */
const likely: Pairs = Object.fromEntries(
  Object.entries(sentences).flatMap(([english, german]) => [
    [`Most likely ${english}. Next: {}.`, `Am wahrscheinlichsten: ${german}. Als Nächstes: {}.`],
    [
      `Most likely ${english} ({}). Next: {}.`,
      `Am wahrscheinlichsten: ${german} ({}). Als Nächstes: {}.`,
    ],
  ]),
);

/** What the readings cannot show. */
const hidden: Pairs = {
  'What no reading so far bears on': 'Worüber noch kein Messwert etwas sagt',
  Cause: 'Ursache',
  'the antenna': 'die Antenne',
  unit: 'LNB',
};

const errors: Pairs = {
  'like "16.4 H hall 52.1 11.4"': 'eine Zeile wie "16.4 H hall 52.1 11.4"',
  'a level in dBµV after the test point': 'ein Pegel in dBµV nach dem Ort',
  'a ratio in dB, nothing or other at the end': 'am Ende ein C/N in dB, nothing oder other',
  'the name of one of the test points': 'der Name eines Orts',
  'the name of one of the carriers': 'der Name eines Trägers',
  'a ratio in dB, or empty': 'ein C/N in dB, oder leer',
  'a list of 1 to 400 observations': 'eine Liste von 1 bis 400 Beobachtungen',
  'an array of {}': 'eine mit {}',
};

const pairs: Pairs = {
  ...inputs,
  ...places,
  ...causes,
  ...placed,
  ...sentences,
  ...measurements,
  ...answers,
  ...likely,
  ...hidden,
  ...errors,
};
export default pairs;
