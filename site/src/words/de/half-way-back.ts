/** German for `half-way-back`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'Highest level read': 'Höchster abgelesener Pegel',
  'Level after turning out': 'Pegel nach dem Hinausdrehen',
  'The same level is found again on the far side.':
    'Derselbe Pegel findet sich auf der anderen Seite wieder.',
  'Turns out': 'Umdrehungen hinaus',
  'Turns back through the peak': 'Umdrehungen zurück, über das Maximum hinweg',
  'Step of the display': 'Schritt der Anzeige',
  'The smallest change of level that it shows.': 'Die kleinste Änderung des Pegels, die sie zeigt.',
  'Flicker of the level': 'Flackern des Pegels',
  'Standard deviation of one reading.': 'Standardabweichung eines einzelnen Messwerts.',
  'Stopped on the way out': 'Angehalten auf dem Weg hinaus',
  'Stopped on the far side': 'Angehalten auf der anderen Seite',
  'anywhere in the step': 'irgendwo im Schritt',
  'just as the display came down to it': 'genau als die Anzeige darauf fiel',
  'Turns lost on reversing': 'Beim Umkehren verlorene Umdrehungen',
  'Turns of the adjuster before the antenna follows.':
    'Umdrehungen der Stellschraube, bis die Antenne folgt.',
  'Sky for one turn': 'Himmel je Umdrehung',
  'not known': 'unbekannt',

  // Answers.
  'Turn back {}. But so far down the flanks the lobe may be too lopsided for the accuracy wanted: repeat with a level nearer to the peak.':
    '{} zurückdrehen. So weit unten auf den Flanken kann die Keule aber für die gewünschte Genauigkeit zu schief sein: mit einem Pegel näher am Maximum wiederholen.',
  'Turn back {}.': '{} zurückdrehen.',
  'Turn back {}. The peak is then at most {} away.':
    '{} zurückdrehen. Das Maximum ist dann höchstens {} entfernt.',
  '{} turn': '{} Umdrehung',
  '{} turns': '{} Umdrehungen',
  'Not far enough from the peak: a drop of {} dB is needed for the accuracy wanted. Go another turn out and repeat.':
    'Nicht weit genug vom Maximum: für die verlangte Genauigkeit braucht es einen Abfall von {} dB. Eine Umdrehung weiter hinausdrehen und wiederholen.',
  'Blind: the level did not drop by more than one step of the display, so the peak may be anywhere between. Go further out and repeat.':
    'Blind: der Pegel fiel um nicht mehr als einen Schritt der Anzeige, das Maximum kann also überall dazwischen liegen. Weiter hinausdrehen und wiederholen.',
  'Turn back': 'Zurückdrehen',
  'Stop on the way out': 'Halt auf dem Weg hinaus',
  'Stop on the far side': 'Halt auf der anderen Seite',
  '{} turns out': '{} Umdrehungen hinaus',
  '{} turns back': '{} Umdrehungen zurück',
  turns: 'Umdr.',
  'no bound': 'unbegrenzt',
  'from the step of the display alone': 'allein durch den Schritt der Anzeige',
  'Standard uncertainty': 'Standardunsicherheit',
  'step, flicker and a lopsided lobe together': 'Schritt, Flackern und eine schiefe Keule zusammen',
  'Loss that may be left': 'Verlust, der bleiben kann',
  '95 %, on the lobe of a real reflector': '95 %, auf der Keule eines wirklichen Reflektors',
  'Drop from the peak': 'Abfall vom Maximum',
  'Least useful drop': 'Kleinster brauchbarer Abfall',
  'for at most 0.1 dB of pointing loss': 'für höchstens 0,1 dB Ausrichtverlust',
  'Move back on the sky': 'Weg zurück am Himmel',
  'Lost turns are counted in. Make the last approach from the same side every time.':
    'Verlorene Umdrehungen sind eingerechnet. Das letzte Stück jedes Mal von derselben Seite her drehen.',
  'Before you turn: are you and the tool tied on, are power lines out of reach? If this antenna transmits, it radiates while it is peaked: stay out of the beam and keep others out.':
    'Vor dem Drehen: Sind Mensch und Werkzeug gesichert, ist keine Stromleitung in Reichweite? Eine Sendeantenne strahlt, während sie eingestellt wird: aus dem Strahl bleiben und andere fernhalten.',

  // By hand.
  'the two equal readings may differ by one step of the display, q':
    'die beiden gleichen Messwerte können sich um einen Schritt q der Anzeige unterscheiden',
  'the peak of the worst lobe that shows the same readings is off the middle by':
    'bei der ungünstigsten Keule mit denselben Messwerten liegt das Maximum neben der Mitte um',
  'which costs, of the drop d': 'das kostet, vom Abfall d',

  // Picture.
  'The lobe over the turns of the adjuster, with the places that were read':
    'Die Keule über den Umdrehungen der Stellschraube, mit den abgelesenen Stellen',
  'Turns from the start': 'Umdrehungen ab dem Anfang',
  'Level / dBm': 'Pegel / dBm',
  'lobe through the readings': 'Keule durch die Messwerte',
  read: 'abgelesen',
  'equal level': 'gleicher Pegel',
  peak: 'Maximum',
  'half way back': 'Mitte',

  // Errors.
  'were peak and reference swapped?': 'sind Maximum und Vergleichspegel vertauscht?',
  'were more turns lost than turned?': 'gingen mehr Umdrehungen verloren, als gedreht wurden?',
};

export default pairs;
