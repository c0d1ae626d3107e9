/** German for `accept-or-not`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  Reading: 'Messwert',
  'Standard uncertainty of the instrument': 'Standardunsicherheit des Geräts',
  'Shared by all readings. A calibration of ±1 dB (rectangular) is 0.58 dB; ±1.2 dB with k\u00a0=\u00a02 is 0.6 dB.':
    'Allen Messwerte gemeinsam. Eine Kalibrierung von ±1 dB (Rechteckverteilung) sind 0,58 dB; ±1,2 dB mit k\u00a0=\u00a02 sind 0,6 dB.',
  'Lower limit': 'Unterer Grenzwert',
  'Upper limit': 'Oberer Grenzwert',
  none: 'keiner',
  'Rule of decision': 'Entscheidungsregel',
  'Guard band by risk': 'Abstand nach Risiko',
  'Guard band, share of U': 'Abstand als Teil von U',
  'The mean alone decides': 'Das Mittel allein entscheidet',
  'Largest risk at the limit': 'Größtes Risiko am Grenzwert',
  'Guard band over U': 'Schutzband durch U',
  'U is the expanded uncertainty, k = 2.': 'U ist die erweiterte Messunsicherheit, k = 2.',

  // Answers.
  'Accept: the mean stands inside the limit by more than the guard band.':
    'Abnahme: das Mittel liegt um mehr als das Schutzband innerhalb des Grenzwerts.',
  'Refuse: the mean stands outside the limit by more than the guard band, on enough readings.':
    'Ablehnen: das Mittel liegt um mehr als das Schutzband außerhalb des Grenzwerts, bei genug Messwerten.',
  'Accept: the mean stands inside the limit.':
    'Abnahme: das Mittel liegt innerhalb des Grenzwerts.',
  'Refuse: the mean stands outside the limit, on enough readings.':
    'Ablehnen: das Mittel liegt außerhalb des Grenzwerts, bei genug Messwerten.',
  'Undecided: the mean stands in the guard band. Read again, or with a better instrument.':
    'Offen: das Mittel liegt im Schutzband. Noch einmal ablesen, oder mit einem besseren Gerät.',
  'Repeat before it is believed: one reading outside the limit, three are asked for a refusal.':
    'Wiederholen, bevor man es glaubt: ein Messwert außerhalb des Grenzwerts; zum Ablehnen braucht es drei.',
  'Repeat before it is believed: {} readings outside the limit, three are asked for a refusal.':
    'Wiederholen, bevor man es glaubt: {} Messwerte außerhalb des Grenzwerts; zum Ablehnen braucht es drei.',
  Verdict: 'Urteil',
  conforms: 'konform',
  'does not conform': 'nicht konform',
  undecided: 'unentschieden',
  'next: accept': 'nun: annehmen',
  'next: refuse': 'nun: ablehnen',
  'next: repeat': 'nun: wiederholen',
  'Probability that it conforms': 'Wahrscheinlichkeit, konform zu sein',
  Mean: 'Mittel',
  'Standard uncertainty': 'Standardunsicherheit',
  'Guard band': 'Schutzband',
  '95 % interval': '95-%-Intervall',
  'coverage factor {}': 'Erweiterungsfaktor {}',

  // Picture.
  'The mean with its uncertainty, the limit, and the guard band to both sides of it':
    'Das Mittel mit seiner Messunsicherheit, der Grenzwert und das Schutzband zu beiden Seiten',
  'Level / dBµV': 'Pegel / dBµV',
  'Likelihood of the true level': 'Likelihood des wahren Pegels',
  'true level': 'wahrer Pegel',
  readings: 'Messwerte',
  'limit {}': 'Grenzwert {}',
  'mean {}': 'Mittel {}',

  // Table.
  'The same readings under other rules': 'Dieselben Messwerte nach anderen Regeln',
  Rule: 'Regel',
  'Guard band / dB': 'Schutzband / dB',
  'simple, the mean alone': 'einfach, das Mittel allein',
  'guard band for 5 %': 'Abstand für 5\u00a0%',
  'guard band for 2.5 %': 'Abstand für 2,5\u00a0%',
  'guard band of U': 'Abstand U',

  // Errors.
  'at least two readings, or one with the standard uncertainty of the instrument above 0':
    'mindestens zwei Messwerte, oder eine mit einer Standardunsicherheit des Geräts über 0',
  'an array of {}': 'eine Liste von {}',
  'upperLimit ({})': 'dem oberen Grenzwert ({})',
  'given if there is no upperLimit': 'eine Angabe, wo der obere Grenzwert fehlt',
  undefined: 'leer',
  'were the limits swapped?': 'sind die Grenzwerte vertauscht?',
  'is it given in percent?': 'eine Angabe in Prozent?',
};

export default pairs;
