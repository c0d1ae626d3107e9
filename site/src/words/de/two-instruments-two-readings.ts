/** German for `two-instruments-two-readings`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'The same points, read by both': 'Dieselben Punkte, mit beiden abgelesen',
  First: 'Erstes',
  Second: 'Zweites',
  'Lowest level that conforms': 'Kleinster Pegel, der entspricht',
  'Standard uncertainty of the first': 'Standardunsicherheit des ersten',
  'Standard uncertainty of the second': 'Standardunsicherheit des zweiten',
  'Half of the ± on its certificate.': 'Die Hälfte des ± auf seinem Kalibrierschein.',
  'Risk taken by a verdict': 'Risiko eines Urteils',

  // Answers.
  '{}; no verdict depends on it.': '{}; kein Urteil hängt davon ab.',
  '{}; {} of {} verdicts depend on which one is used.':
    '{}; {} von {} Urteilen hängen davon ab, welches benutzt wird.',
  'The first reads {} ± {} dB higher than the second':
    'Das erste zeigt {} ± {} dB mehr als das zweite',
  'The first reads {} ± {} dB lower than the second':
    'Das erste zeigt {} ± {} dB weniger als das zweite',
  'What the two differ by can be chance': 'Der Unterschied der beiden kann Zufall sein',
  'First less second': 'Erstes minus zweites',
  '± {} dB (95 %)': '± {} dB (95 %)',
  'Verdicts that depend on it': 'Urteile, die davon abhängen',
  'Difference that the certificates allow': 'Unterschied, den die Kalibrierscheine zulassen',
  'expanded (k = 2), either way': 'erweitert (k = 2), nach beiden Seiten',
  'Spread of one difference': 'Streuung eines Unterschieds',
  'standard deviation': 'Standardabweichung',
  'Spread of one reading': 'Streuung eines Messwerts',
  'standard deviation, offsets taken out': 'Standardabweichung, ohne die Versätze',
  'The two differ by more than their certificates allow: have both checked before either gives a verdict.':
    'Die beiden unterscheiden sich um mehr, als ihre Kalibrierscheine zulassen: beide prüfen lassen, bevor eines ein Urteil gibt.',
  'The difference lies within what the certificates allow: neither of the two is shown to be wrong, and a level by itself does not say that an antenna is peaked.':
    'Der Unterschied liegt in dem, was die Kalibrierscheine zulassen: keines der beiden ist als falsch erwiesen, und ein Pegel allein sagt nicht, dass eine Antenne ausgerichtet ist.',

  // Picture and table.
  'First less second, point by point': 'Erstes minus zweites, Punkt für Punkt',
  'Level of the second / dBµV': 'Pegel des zweiten / dBµV',
  'Difference / dB': 'Unterschied / dB',
  read: 'abgelesen',
  mean: 'Mittelwert',
  alike: 'gleich',
  'Verdict by each, and by both together': 'Urteil nach jedem und nach beiden zusammen',
  Point: 'Punkt',
  'Together / dBµV': 'Zusammen / dBµV',
  'Uncertainty / dB': 'Unsicherheit / dB',
  Together: 'Zusammen',
  conforms: 'entspricht',
  'does not conform': 'entspricht nicht',
  undecided: 'unentschieden',

  // By hand.
  'the mean of the differences, point by point': 'der Mittelwert der Unterschiede, Punkt für Punkt',
  'its standard uncertainty, from the standard deviation of the differences':
    'seine Standardunsicherheit, aus der Standardabweichung der Unterschiede',
  'what the two certificates allow, at two standard deviations':
    'was die beiden Kalibrierscheine zulassen, bei zwei Standardabweichungen',

  // Errors.
  'at least 2 readings': 'mindestens 2 Messwerte',
  'an array': 'eine Liste',
  'an array of at least {} readings': 'mindestens {} Messwerte',
};

export default pairs;
