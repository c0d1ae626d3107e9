/** German for `where-is-the-null`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'A feed that transmits in the wrong polarization disturbs others. Set it with the operator’s access centre on the line, and do not switch the transmitter on before.':
    'Ein Feed, das in der falschen Polarisation sendet, stört andere. Nur mit der Betriebszentrale des Satellitenbetreibers am Telefon einstellen und den Sender nicht vorher einschalten.',
  // Inputs.
  'Rotation at the first place': 'Drehung an der ersten Stelle',
  'Clockwise positive, seen from behind the antenna.':
    'Im Uhrzeigersinn positiv, von hinter der Antenne gesehen.',
  'Rotation at the second place': 'Drehung an der zweiten Stelle',
  'Where the same cross-polar level returns.': 'Wo derselbe kreuzpolare Pegel wieder da ist.',
  'Step of the display': 'Schritt der Anzeige',
  'Flicker of the level': 'Flackern des Pegels',
  'Standard deviation of one reading.': 'Standardabweichung eines einzelnen Messwerts.',
  'Readings of the cross-polar level': 'Kreuzpolare Pegel',
  Rotation: 'Drehung',

  // Answers.
  'Blind: with so coarse a display the null may lie outside the two places.':
    'Blind: bei einer so groben Anzeige kann das Minimum außerhalb der beiden Stellen liegen.',
  'Turn the feed to {}°: half way between {}° and {}°.':
    'Das Feed auf {}° drehen: halber Weg zwischen {}° und {}°.',
  'Null, bracketed': 'Minimum, eingegrenzt',
  'no bound': 'unbegrenzt',
  'from the step of the display alone': 'allein durch den Schritt der Anzeige',
  'Isolation left at least': 'Entkopplung, die mindestens bleibt',
  'were the antenna ideal': 'wäre die Antenne ideal',
  'Null, fitted to the readings': 'Minimum, an die Messwerte angepasst',
  '95 %: {}° to {}°': '95 %: {}° bis {}°',
  'Isolation of antenna and wave': 'Entkopplung von Antenne und Welle',
  'how deep the null is': 'wie tief das Minimum ist',
  'The null lies beyond the readings: turn on and read there.':
    'Das Minimum liegt außerhalb der Messwerte: weiterdrehen und dort ablesen.',
  'No null stands out from the scatter of the readings.':
    'Kein Minimum hebt sich aus der Streuung der Messwerte heraus.',
  'Four readings are needed to fit the null.':
    'Zum Anpassen des Minimums braucht es vier Messwerte.',

  // Picture.
  'Cross-polar level over the rotation of the feed':
    'Kreuzpolarer Pegel über der Drehung des Feeds',
  'Rotation / °': 'Drehung / °',
  'Level / dBm': 'Pegel / dBm',
  fit: 'Anpassung',
  read: 'abgelesen',
  bracketed: 'eingegrenzt',

  // Errors.
  '{} must be a list of at least one rotation, got an array of {}':
    'Es braucht mindestens einen Messwert.',
  'The 95 % are not assured: read six places or more, two on each side of the null, and read again what stands out.':
    'Die 95 % sind nicht gesichert: sechs Stellen oder mehr ablesen, zwei auf jeder Seite des Minimums, und noch einmal ablesen, was herausfällt.',
};

export default pairs;
