/** German for `how-far-is-safe`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'This is arithmetic, not an assessment: the limits of local law bind, and a licensed practitioner judges the site. Switch off and lock the transmitter before work in front of the reflector; never look into a feed or enter the space before it while it can transmit.':
    'Das ist Rechnung, keine Beurteilung: es gelten die Grenzwerte des örtlichen Rechts, und eine befugte Fachperson beurteilt den Ort. Vor Arbeiten vor dem Reflektor den Sender abschalten und gegen Wiedereinschalten sichern; nie in ein Feed blicken und nie davor treten, solange es senden kann.',
  // Inputs.
  'Transmit frequency': 'Sendefrequenz',
  'Mean power at the antenna': 'Mittlere Leistung an der Antenne',
  'After the loss of the feed, while it transmits without pause.':
    'Nach dem Verlust des Feeds, bei Senden ohne Pause.',
  'Gain from the data sheet': 'Gewinn laut Datenblatt',
  'from size': 'aus Größe',
  'Without it, from diameter and frequency with an efficiency of 0.65.':
    'Ohne ihn aus Durchmesser und Frequenz mit einem Wirkungsgrad von 0,65.',
  Limit: 'Grenzwert',
  'ICNIRP 2020, whole body': 'ICNIRP 2020, ganzer Körper',
  'ICNIRP 2020, local': 'ICNIRP 2020, örtlich',
  '47 CFR 1.1310': '47 CFR 1.1310',
  'For whom': 'Für wen',
  'general public': 'Allgemeinheit',
  'at work, trained': 'Geschulte bei der Arbeit',

  // Answers.
  'Keep out of the beam: the limit is exceeded up to {} m in front of the reflector.':
    'Nicht in den Strahl treten: bis {} m vor dem Reflektor ist der Grenzwert überschritten.',
  'In the beam the limit is kept, but at the surface of the reflector and at the feed it may be exceeded.':
    'Im Strahl ist der Grenzwert eingehalten, an der Fläche des Reflektors und am Feed kann er überschritten sein.',
  'By this estimate the limit is kept everywhere in front of the reflector; the feed itself is another matter.':
    'Nach dieser Schätzung ist der Grenzwert überall vor dem Reflektor eingehalten; für das Feed selbst gilt das nicht.',
  'Distance in front of the reflector': 'Abstand vor dem Reflektor',
  none: 'keiner',
  'at its surface': 'an seiner Fläche',
  'averaged over {} minutes': 'gemittelt über {} Minuten',
  'At the surface of the reflector': 'An der Fläche des Reflektors',
  'In the near field': 'Im Nahfeld',
  'End of the near field': 'Ende des Nahfelds',
  'Beginning of the far field': 'Beginn des Fernfelds',

  // The picture.
  'Highest power density on the axis of the beam against distance':
    'Höchste Leistungsdichte auf der Achse des Strahls über dem Abstand',
  Distance: 'Abstand',
  'Distance / m': 'Abstand / m',
  'Power density': 'Leistungsdichte',
  'Power density / W/m²': 'Leistungsdichte / W/m²',
  'power density': 'Leistungsdichte',
  limit: 'Grenzwert',

  // Slips.
  'is the power in watts?': 'ist die Leistung in Watt?',

  // Cautions.
  'Estimate on the axis of the beam; the density at the feed is higher. Never enter the beam or the space between feed and reflector while the transmitter can be on.':
    'Schätzung auf der Achse des Strahls; am Feed ist die Dichte höher. Nie in den Strahl oder zwischen Feed und Reflektor treten, solange der Sender eingeschaltet sein kann.',
  'Switch off and lock the transmitter before work in front of the reflector.':
    'Vor Arbeiten vor dem Reflektor den Sender abschalten und gegen Wiedereinschalten sichern.',
  'The limits and procedures of local law and of the site bind; have the assessment made by a licensed practitioner.':
    'Es gelten die Grenzwerte und Verfahren des örtlichen Rechts und der Anlage; die Beurteilung einer befugten Fachperson überlassen.',
};

export default pairs;
