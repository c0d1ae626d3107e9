/** German for `typed-coordinates`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  Coordinates: 'Koordinaten',
  'As you have them: decimal, minutes, seconds, N S E W before or behind, a locator.':
    'Wie vorhanden: dezimal, Minuten, Sekunden, N S E W davor oder dahinter (Ost ist E), ein Locator.',

  'Read as {}: latitude {}°, longitude {}°.': 'Gelesen als {}: Breite {}°, Länge {}°.',
  'decimal degrees': 'Dezimalgrade',
  'degrees and minutes': 'Grade und Minuten',
  'degrees, minutes and seconds': 'Grade, Minuten und Sekunden',
  Latitude: 'Breite',
  Longitude: 'Länge',
  'north positive': 'Nord positiv',
  'east positive': 'Ost positiv',
  'One step of the last digit': 'Ein Schritt der letzten Stelle',
  '{}m by {}m': '{}m mal {}m',
  'north by east': 'Nord-Süd mal Ost-West',
  'The text is coarse: an elevation may be off by a tenth of a degree for every 10 km. Ask for more digits.':
    'Der Text ist grob: je 10 km kann die Elevation um ein Zehntelgrad danebenliegen. Nach mehr Stellen fragen.',

  // The texts themselves keep their E: O would be refused where they are pasted.
  'The same place written otherwise': 'Derselbe Ort in anderen Schreibweisen (Ost ist E)',
  Notation: 'Schreibweise',
  Text: 'Text',
  'Decimal degrees': 'Dezimalgrade',
  'Degrees and minutes': 'Grade und Minuten',
  'Degrees, minutes and seconds': 'Grade, Minuten und Sekunden',
  'Maidenhead locator': 'Maidenhead-Locator',
  'Plus code': 'Plus Code',
  MGRS: 'MGRS',
  'none at the poles': 'keine an den Polen',
  '{}° N, {}° E': '{}° N, {}° E',
  '{}° S, {}° E': '{}° S, {}° E',

  // Errors.
  latitudeDeg: 'Breite',
  longitudeDeg: 'Länge',
  minutes: 'Minuten',
  seconds: 'Sekunden',
  'from 0 to below 60': 'ein Wert von 0 bis unter 60',
  'are these decimals of a degree?': 'sind das Dezimalstellen eines Grades?',
  'a text of 1 to 200 characters with a latitude and a longitude':
    'ein Text von 1 bis 200 Zeichen mit einer Breite und einer Länge',
  "coordinates such as 46.4, 9.6 or 46° 24' N 9° 36' E":
    "eine Angabe wie 46.4, 9.6 oder 46° 24' N 9° 36' E",
  'where does the second coordinate begin? part them with a comma and a space':
    'wo beginnt die zweite Koordinate? die beiden durch Komma und Leerzeichen trennen',
  'is the comma a decimal mark, or does it part the two? put a space behind the one that parts':
    'ist das Komma ein Dezimalzeichen oder trennt es die beiden? hinter das trennende ein Leerzeichen setzen',
  'does O mean east or west? write E or W': 'heißt O Ost oder West? E oder W schreiben',
  'are there both a sign and a letter?': 'stehen da Vorzeichen und Buchstabe zugleich?',
  'does one coordinate lack its letter?': 'fehlt einer der Koordinaten der Buchstabe?',
  'are these metres of a map grid?': 'sind das Meter eines Kartengitters?',
};

export default pairs;
