/** German for `how-is-a-polar-mount-set`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'Before you climb: secure yourself and the tools, and keep clear of power lines. A motor can start by itself: take its supply off while hands are in the mount.':
    'Vor dem Aufstieg sich selbst und das Werkzeug sichern und von Stromleitungen Abstand halten. Ein Motor kann von selbst anlaufen: seine Speisung abnehmen, solange Hände in der Halterung sind.',
  'Lowest elevation to reach': 'Niedrigste verlangte Elevation',
  'Setting of the axis': 'Einstellung der Achse',
  'Smallest largest error': 'Kleinster größter Fehler',
  'Right at the top and at both ends': 'Richtig am höchsten Punkt und an beiden Enden',
  'Parallel to the Earth’s axis': 'Parallel zur Erdachse',

  'There is nothing to follow: the highest point of the arc stands at an elevation of {}°.':
    'Es gibt nichts zu verfolgen: der höchste Punkt des Bogens steht bei einer Elevation von {}°.',
  'Highest point of the arc': 'Höchster Punkt des Bogens',
  'Axis {}° above the horizontal towards true {}, beam {}° below the plane across it; it then misses no slot by more than {}°.':
    'Achse {}° über der Waagrechten nach geografisch {}, Keule {}° unter der Ebene quer dazu; so verfehlt sie keine Position um mehr als {}°.',
  'Elevation of the axis': 'Elevation der Achse',
  'latitude and {}° more': 'Breite und {}° mehr',
  Declination: 'Deklination',
  'below the plane across the axis': 'unter der Ebene quer zur Achse',
  'Beam at the top of the arc': 'Keule am höchsten Punkt des Bogens',
  'Half of the arc': 'Halber Bogen',
  'of orbital longitude to either side': 'Orbitposition nach jeder Seite',

  // Pictures and tables.
  'The mount from the side, in the plane of the meridian':
    'Die Montierung von der Seite, in der Meridianebene',
  axis: 'Achse',
  beam: 'Keule',
  Angle: 'Winkel',
  Degrees: 'Grad',
  'Axis above the horizontal': 'Achse über der Waagrechten',
  'Beam below the plane across the axis': 'Keule unter der Ebene quer zur Achse',
  'Beam above the horizontal': 'Keule über der Waagrechten',
  'How far the beam passes above the slots, from the top of the arc to its end':
    'Wie weit die Keule über den Positionen vorbeigeht, vom höchsten Punkt des Bogens bis zum Ende',
  'Slot from the meridian / °': 'Position ab dem Meridian / °',
  'Beam above the slot / 0.001°': 'Keule zu hoch / 0,001°',
  error: 'Fehler',
  'on the slot': 'auf der Position',
  'Rotation from the top of the arc to each slot':
    'Drehung vom höchsten Punkt des Bogens zu jeder Position',
  Rotation: 'Drehung',
  'Error / °': 'Fehler / °',
  '{}° east': '{}° Ost',
  '{}° west': '{}° West',

  // Errors.
  NaN: 'NaN',
  'orbitalLongitudesDeg[{}].orbitalLongitudeDeg': 'Orbitposition',
};

export default pairs;
