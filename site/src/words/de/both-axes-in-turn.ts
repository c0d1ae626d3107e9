/** German for `both-axes-in-turn`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'On a mast or a roof, secure yourself and the tools first and keep clear of power lines. Nobody stands in front of a transmitting reflector while it is moved.':
    'Auf einem Mast oder einem Dach zuerst sich selbst und das Werkzeug sichern und von Stromleitungen Abstand halten. Niemand steht vor einem sendenden Reflektor, während er bewegt wird.',
  // Inputs.
  'Azimuth on the sky': 'Azimut am Himmel',
  'Azimuth times the cosine of the elevation; at least seven readings.':
    'Azimut mal Kosinus der Elevation; mindestens sieben Messwerte.',
  'Azimuth now': 'Azimut jetzt',
  'Elevation now': 'Elevation jetzt',
  'Wanted pointing loss': 'Angestrebter Ausrichtverlust',

  // Answers.
  'The level rises one way and falls the other: these readings hold no peak.':
    'Der Pegel steigt in der einen Richtung und fällt in der anderen: in diesen Messwerten steckt kein Maximum.',
  'No bend stands out from the scatter. Read further from the peak.':
    'Aus der Streuung hebt sich keine Krümmung ab. Weiter weg vom Maximum ablesen.',
  'The peak lies beyond the readings. Go on that way and read around it.':
    'Das Maximum liegt außerhalb der Messwerte. In dieser Richtung weitergehen und rundherum ablesen.',
  'Seven readings are needed at least, on three places of each axis.':
    'Es braucht mindestens sieben Messwerte, an drei Stellen jeder Achse.',
  'The antenna stands within the wanted loss already.':
    'Die Antenne steht schon innerhalb des angestrebten Verlusts.',
  'Peak the axes in turn: after 1 peaking the loss is {} dB.':
    'Die Achsen abwechselnd einstellen: nach 1 Schritt beträgt der Verlust {} dB.',
  'Peak the axes in turn: after {} peakings the loss is {} dB.':
    'Die Achsen abwechselnd einstellen: nach {} Schritten beträgt der Verlust {} dB.',
  'Peak in azimuth': 'Maximum im Azimut',
  'Peak in elevation': 'Maximum in der Elevation',
  '95 %: {} to {}': '95 %: {} bis {}',
  'Loss now': 'Verlust jetzt',
  'Coupling of the axes': 'Kopplung der Achsen',
  '0 where they do not disturb each other': '0, wo sie einander nicht stören',
  'Loss after each further peaking': 'Verlust nach jedem weiteren Schritt',
  'of the one before': 'des Verlusts davor',
  'Beamwidths of the lobe': 'Halbwertsbreiten der Keule',
  '{}° and {}°': '{}° und {}°',
  'the narrow one {}° from azimuth towards elevation':
    'die schmale {}° vom Azimut zur Elevation hin',

  // Picture.
  'The lobe, the readings, and the way of the alternating search':
    'Die Keule, die Messwerte und der Weg des abwechselnden Einstellens',
  peak: 'Maximum',
  start: 'Anfang',
  'after axis {}': 'nach Achse {}',

  // Table.
  'Axis by axis': 'Achse um Achse',
  Peaked: 'Eingestellt',
  '{}. azimuth': '{}. Azimut',
  '{}. elevation': '{}. Elevation',

  // Errors.
  '{} must be a list of at least one level, got an array of {}':
    '{}: verlangt ist mindestens ein Pegel',
  'The 95 % are not assured: read nine places or more within half a beamwidth, on both sides of the peak on each axis, and read again what stands out.':
    'Die 95 % sind nicht gesichert: neun Stellen oder mehr innerhalb einer halben Halbwertsbreite ablesen, auf jeder Achse auf beiden Seiten des Maximums, und noch einmal ablesen, was herausfällt.',
};

export default pairs;
