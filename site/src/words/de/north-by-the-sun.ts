/** German for `north-by-the-sun`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'Never look at the Sun, not even through sunglasses, smoked glass or a phone held close: it burns the eye before it hurts. Watch the shadow on the ground only. On a roof or a mast secure yourself first, and keep clear of power lines.':
    'Nie in die Sonne blicken, auch nicht durch Sonnenbrille, rußgeschwärztes Glas oder ein nahe gehaltenes Telefon: sie verbrennt das Auge, bevor es weh tut. Nur den Schatten am Boden beobachten. Auf einem Dach oder Mast zuerst sich selbst sichern und von Stromleitungen fernbleiben.',
  // Inputs.
  'Date at the station': 'Datum am Standort',
  'Year-month-day.': 'Jahr-Monat-Tag.',
  'Lowest Sun': 'Sonne mindestens',
  'Above houses and hills, so that there is a shadow.':
    'Über Häusern und Hügeln, damit es einen Schatten gibt.',

  // The answer.
  'At {} the shadow itself points along {}.': 'Um {} zeigt der Schatten selbst in Richtung {}.',
  'At {} the shadow lies along {}: from its far end towards the plumb line.':
    'Um {} liegt der Schatten in Richtung {}: von seinem Ende zur Lotschnur hin.',
  'On that day the Sun never stands high enough over the bearing {} or opposite.':
    'An diesem Tag steht die Sonne über der Peilung {} und gegenüber nie hoch genug.',
  'The slot at {} is straight overhead: no bearing is needed.':
    'Die Position {} steht genau im Zenit: eine Peilung ist nicht nötig.',
  'The slot at {} is hidden by the Earth: no bearing helps.':
    'Die Position {} ist von der Erde verdeckt: da hilft keine Peilung.',
  'Bearing of the slot': 'Peilung der Position',
  'from true north': 'ab geografisch Nord',
  Instant: 'Zeitpunkt',
  'Elevation of the Sun': 'Elevation der Sonne',
  'Error for a minute of clock': 'Fehler je Minute der Uhr',
  'Shadow of a 1 m plumb line': 'Schatten einer Lotschnur von 1 m',
  'Never look at the Sun, not through sunglasses either: watch the shadow on the ground.':
    'Nie in die Sonne blicken, auch nicht durch Sonnenbrillen: den Schatten am Boden beobachten.',
  'The Sun is high: the shadow is short and swings fast. Another day or slot gives a better bearing.':
    'Die Sonne steht hoch: der Schatten ist kurz und dreht sich schnell. Ein anderer Tag oder eine andere Position gibt eine bessere Peilung.',

  // Pictures and table.
  'The bearing {} and the shadow at that instant, from true north':
    'Die Peilung {} und der Schatten zu diesem Zeitpunkt, ab geografisch Nord',
  'slot {}': 'Pos. {}',
  shadow: 'Schatten',
  'The slot at {} and the Sun at that instant': 'Die Position {} und die Sonne zu diesem Zeitpunkt',
  'Sun {}': 'Sonne {}',
  'Instants of that day': 'Zeitpunkte dieses Tages',
  'What points': 'Was zeigt',
  'Sun / °': 'Sonne / °',
  'Error per minute / °': 'Fehler je Minute / °',
  'Shadow of 1 m / m': 'Schatten von 1 m / m',
  'towards the plumb line': 'zur Lotschnur hin',
  'the shadow': 'der Schatten',

  // Errors.
  'a date such as 2026-06-10': 'ein Datum wie 2026-06-10',
  'ISO-8601 text such as 2026-03-02T10:08:07Z': 'ein Datum, das es gibt',
};

export default pairs;
