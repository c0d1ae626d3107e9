/** German for `how-do-several-receivers-share-one-cable`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  Receivers: 'Empfänger',
  'User band': 'Teilnehmerband',
  Centre: 'Mitte',
  Carrier: 'Träger',
  Polarization: 'Polarisation',
  vertical: 'vertikal',
  horizontal: 'horizontal',
  'Generation of the unit': 'Generation der Einheit',
  'first (EN 50494), up to 8 bands': 'erste (EN 50494), bis 8 Bänder',
  'second (EN 50607), up to 32 bands': 'zweite (EN 50607), bis 32 Bänder',
  'Length of the cable': 'Länge des Kabels',
  Cable: 'Kabel',
  'series 6': 'Serie 6',
  'series 11': 'Serie 11',
  'series 59': 'Serie 59',
  'Width of a user band': 'Breite eines Teilnehmerbands',
  'Level of each user band at the unit': 'Pegel jedes Teilnehmerbands an der Einheit',
  'Units of this kind bring all bands to about the same level.':
    'Einheiten dieser Art bringen alle Bänder auf etwa denselben Pegel.',
  'Loss of splitter and outlets': 'Verlust von Verteiler und Dosen',
  'Lowest level at a receiver': 'Kleinster Pegel am Empfänger',

  // Answers.
  'Add a receiver.': 'Einen Empfänger eintragen.',
  'A unit of the first generation has user bands 1 to 8: there is no {}.':
    'Eine Einheit der ersten Generation hat die Teilnehmerbänder 1 bis 8: {} gibt es nicht.',
  'The plan does not work: {}': 'So geht es nicht: {}',
  '{} and {} overlap by {} MHz: both receivers disturb each other.':
    '{} und {} überschneiden sich um {} MHz: beide Empfänger stören einander.',
  '{} reaches {} MHz beyond the range of the receivers.':
    '{} reicht {} MHz über den Bereich der Empfänger hinaus.',
  '{} is given to two receivers: neither of them keeps its programme.':
    '{} ist an zwei Empfänger vergeben: keiner von beiden behält sein Programm.',
  'The bands do not disturb each other, but the weakest arrives {} dB too low.':
    'Die Bänder stören einander nicht, aber das schwächste kommt {} dB zu niedrig an.',
  '{} receivers fit on this cable: no two bands meet, and each arrives strong enough.':
    '{} Empfänger passen auf dieses Kabel: keine zwei Bänder berühren sich, und jedes kommt stark genug an.',
  'Conflicts of user bands': 'Überschneidungen der Bänder',
  'Lowest level': 'Kleinster Pegel',
  'at least {} dBµV are asked for': 'verlangt sind mindestens {} dBµV',
  'Slope over the user bands': 'Schräglage über die Teilnehmerbänder',
  'highest less lowest level': 'größter minus kleinster Pegel',
  'Longest cable': 'Längstes Kabel',
  'by the level of the highest band': 'nach dem Pegel des höchsten Bands',
  'One receiver at a time may send its message: a part that passes the supply of several receivers at once must have diodes, or they feed each other.':
    'Nur ein Empfänger darf zu einer Zeit seine Nachricht senden: ein Teil, das die Fernspeisung mehrerer Empfänger zugleich durchlässt, braucht Dioden, sonst speisen sie einander.',

  // Picture and table.
  'The user bands on the cable': 'Die Teilnehmerbänder auf dem Kabel',
  'Frequency on the cable / MHz': 'Frequenz auf dem Kabel / MHz',
  'range of the receivers': 'Bereich der Empfänger',
  'user band {}': 'Teilnehmerband {}',
  'From / MHz': 'Von / MHz',
  'To / MHz': 'Bis / MHz',
  'What each receiver asks for': 'Was jeder Empfänger verlangt',
  'Asks for / MHz': 'Verlangt / MHz',
  Band: 'Band',
  'Tuning word': 'Abstimmwort',
  Bank: 'Bank',
  Message: 'Nachricht',
  'Tunes / MHz': 'Stimmt ab auf / MHz',
  'Level / dBµV': 'Pegel / dBµV',
  high: 'oberes',
  low: 'unteres',
  'outside the unit': 'außerhalb des LNB',
  'no such user band': 'Band gibt es nicht',

  // By hand.
  'the tuning word of the first receiver, rounded to a whole number':
    'das Abstimmwort des ersten Empfängers, auf eine ganze Zahl gerundet',
  'there the carrier lies then, and the receiver tunes to it':
    'dort liegt der Träger dann, und darauf stimmt der Empfänger ab',
  'the tuning word is the intermediate frequency above 100 MHz, in whole megahertz':
    'das Abstimmwort ist die Zwischenfrequenz über 100 MHz, in ganzen Megahertz',
};

export default pairs;
