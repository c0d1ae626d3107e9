/** German for `when-to-peak-on-a-moving-satellite`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'Mean orbital longitude': 'Mittlere Orbitposition',
  Inclination: 'Bahnneigung',
  Eccentricity: 'Exzentrizität',
  'Argument of perigee': 'Argument des Perigäums',
  'Half-power beamwidth': 'Halbwertsbreite',
  'About 70 wavelengths over diameters: 1.94° for 0.9 m at 12 GHz.':
    'Etwa 70° mal Wellenlänge durch Durchmesser: 1,94° für 0,9 m bei 12 GHz.',

  // Answers.
  'Peak {} h after the satellite crosses the equator northbound: the day then costs at most {} dB; peaked at the worst moment it costs {} dB.':
    'Ausrichten, {} h nachdem der Satellit den Äquator nordwärts überquert hat: der Tag kostet dann höchstens {} dB; im ungünstigsten Augenblick ausgerichtet, kostet er {} dB.',
  'Largest loss, peaked at the best moment': 'Größter Verlust, im besten Augenblick ausgerichtet',
  'Largest loss, peaked at the worst moment':
    'Größter Verlust, im ungünstigsten Augenblick ausgerichtet',
  'Best moment': 'Bester Augenblick',
  'after the ascending node; it comes 4 minutes earlier each day':
    'nach dem aufsteigenden Knoten; er kommt jeden Tag 4 Minuten früher',
  'Largest loss of the best aim': 'Größter Verlust der besten Richtung',
  'Best aim, azimuth': 'Beste Richtung, Azimut',
  'Best aim, elevation': 'Beste Richtung, Elevation',
  'Elevation through the day': 'Elevation über den Tag',
  '{}° to {}°': '{}° bis {}°',
  'For a part of the day the satellite is below the horizon.':
    'Einen Teil des Tages steht der Satellit unter dem Horizont.',
  'More than about 20 dB lies beyond the main lobe: for a part of the day nothing is received. The antenna must follow the satellite, or have a wider beam.':
    'Mehr als etwa 20 dB liegen jenseits der Hauptkeule: einen Teil des Tages wird nichts empfangen. Die Antenne muss dem Satelliten folgen oder eine breitere Keule haben.',

  // Pictures.
  'Path of the satellite in the sky through a day':
    'Weg des Satelliten am Himmel während eines Tages',
  path: 'Weg',
  'best aim': 'Optimum',
  'Loss through the day with the best aim, and largest loss by the hour of peaking':
    'Verlust über den Tag bei der besten Richtung, und größter Verlust je nach der Stunde des Ausrichtens',
  'Since the ascending node / h': 'Seit dem aufsteigenden Knoten / h',
  'loss with the best aim': 'Verlust bei der besten Richtung',
  'largest loss if peaked then': 'größter Verlust, wenn dann ausgerichtet',
};

export default pairs;
