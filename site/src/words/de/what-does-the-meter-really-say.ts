/** German for `what-does-the-meter-really-say`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'The meter shows': 'Das Messgerät zeigt',
  'marker on the carrier and on the noise beside it':
    'Marker auf dem Träger und auf dem Rauschen daneben',
  MER: 'MER',
  'Marker on the top of the carrier': 'Marker auf dem Dach des Trägers',
  'Marker on the noise beside it': 'Marker auf dem Rauschen daneben',
  'On a free place of the transponder, or with the antenna turned away.':
    'An einer freien Stelle des Transponders, oder mit weggedrehter Antenne.',
  'Most that the meter can show': 'Höchster Wert, den das Gerät zeigen kann',
  'From its data sheet, or what it shows on a carrier that is far stronger than needed.':
    'Aus dem Datenblatt, oder was es bei einem viel stärkeren Träger als nötig zeigt.',
  'Standard uncertainty of the reading': 'Standardunsicherheit des Messwerts',
  'Resolution bandwidth': 'Auflösebandbreite',
  'The display averages': 'Die Anzeige mittelt',
  'power (root mean square)': 'die Leistung (Effektivwert)',
  voltage: 'die Spannung',
  'logarithm (decibels)': 'den Logarithmus (Dezibel)',
  'Roll-off': 'Roll-off',
  'Information bits for each symbol': 'Informationsbits je Symbol',
  'After all coding: 1.98 for 8PSK 2/3, 1.49 for QPSK 3/4.':
    'Nach aller Codierung: 1,98 für 8PSK 2/3, 1,49 für QPSK 3/4.',

  // Answers.
  'The carrier cannot be told from the noise: Es/N0 is at most {} dB.':
    'Der Träger ist vom Rauschen nicht zu unterscheiden: Es/N0 ist höchstens {} dB.',
  'The meter is at its ceiling: Es/N0 is at least {} dB, and how much more it cannot tell.':
    'Das Gerät ist an seiner Obergrenze: Es/N0 ist mindestens {} dB; wie viel mehr, kann es nicht sagen.',
  'A MER of {} dB means an Es/N0 of {} ± {} dB.':
    'Ein MER von {} dB bedeutet ein Es/N0 von {} ± {} dB.',
  'The step of {} dB means a C/N of {} ± {} dB.':
    'Die Stufe von {} dB bedeutet ein C/N von {} ± {} dB.',
  'Es/N0': 'Es/N0',
  'Eb/N0': 'Eb/N0',
  'at most': 'höchstens',
  'at least': 'mindestens',
  'C/N in the bandwidth of the symbol rate': 'C/N in der Bandbreite der Symbolrate',
  'for each information bit': 'je Informationsbit',
  'C/N in the occupied bandwidth': 'C/N in der belegten Bandbreite',
  'Standard uncertainty': 'Standardunsicherheit',
  'of each of these ratios': 'jedes dieser Verhältnisse',
  'Power of the carrier': 'Leistung des Trägers',
  'noise taken off, all of its bandwidth': 'ohne Rauschen, in seiner ganzen Bandbreite',
  'Noise density': 'Rauschdichte',

  // Pictures and table.
  'Es/N0 behind a MER, for a meter with this ceiling':
    'Es/N0 hinter einem MER, bei einem Gerät mit dieser Obergrenze',
  'MER shown / dB': 'angezeigtes MER / dB',
  'Es/N0 / dB': 'Es/N0 / dB',
  'behind this meter': 'hinter diesem Gerät',
  'a meter without a ceiling': 'ein Gerät ohne Obergrenze',
  ceiling: 'Obergrenze',
  'this reading': 'dieser Messwert',
  'C/N against the step that the display shows': 'C/N über der Stufe, die die Anzeige zeigt',
  'Carrier with noise over noise / dB': 'Träger mit Rauschen über Rauschen / dB',
  'noise taken off': 'Rauschen abgezogen',
  'step taken for C/N': 'Stufe als C/N genommen',
  'One carrier, four ratios': 'Ein Träger, vier Verhältnisse',
  Ratio: 'Verhältnis',
  'Noise in': 'Rauschen in',
  'Value / dB': 'Wert / dB',
  'the symbol rate': 'der Symbolrate',
  'the occupied bandwidth': 'der belegten Bandbreite',
  'the rate of information bits': 'der Rate der Informationsbits',
  'one hertz': 'einem Hertz',

  // By hand.
  'the step over the noise': 'die Stufe über dem Rauschen',
  'the noise is taken off as a power': 'das Rauschen wird als Leistung abgezogen',
  'the uncertainty of the step grows as the carrier sinks into the noise':
    'die Unsicherheit der Stufe wächst, wenn der Träger im Rauschen versinkt',
  'in the occupied bandwidth': 'in der belegten Bandbreite',

  // Errors.
  'is it in percent?': 'ist der Wert in Prozent?',
  'below the ceiling of {} dB': 'ein Wert unter der Obergrenze von {} dB',
};

export default pairs;
