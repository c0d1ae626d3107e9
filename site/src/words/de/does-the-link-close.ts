/** German for `does-the-link-close`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'From the contours of its footprint.': 'Aus den Linien seiner Ausleuchtzone.',
  'Mode (DVB-S2)': 'Modus (DVB-S2)',
  'QPSK {}, -{} dB': 'QPSK {}: −{} dB',
  'QPSK {}, {} dB': 'QPSK {}: {} dB',
  '8PSK {}, {} dB': '8PSK {}: {} dB',
  '16APSK {}, {} dB': '16APSK {}: {} dB',
  '32APSK {}, {} dB': '32APSK {}: {} dB',
  'Gas and thin cloud': 'Gase und dünne Wolken',
  Rain: 'Regen',
  'Takes twice: the carrier falls and the noise rises.':
    'Nimmt doppelt: der Träger sinkt, und das Rauschen steigt.',
  'Polarization mismatch': 'Verlust durch falsche Polarisation',
  'Loss before the amplifier': 'Verlust vor dem Verstärker',
  'Carrier over interference of adjacent satellites': 'Träger über Störung durch Nachbarsatelliten',
  none: 'keine',

  // Slips.

  // Answers.
  'The slot at {} is hidden by the Earth from this station.':
    'Die Position {} ist von diesem Standort aus durch die Erde verdeckt.',
  'The link closes for {} with {} dB to spare.': 'Die Bilanz geht für {} auf, mit {} dB Reserve.',
  'The link does not close for {}: {} dB are lacking.':
    'Die Bilanz geht für {} nicht auf: es fehlen {} dB.',
  Margin: 'Reserve',
  'Es/N0 with interference': 'Es/N0 mit Störung',
  'needed {} dB': 'nötig {} dB',
  'C/N0 of the way down': 'C/N0 der Abwärtsstrecke',
  'System noise': 'Systemrauschen',

  // Pictures and table.
  'The large lines: from the satellite’s power to an ideal Es/N0':
    'Die großen Zeilen: von der Leistung des Satelliten zum idealen Es/N0',
  'The small lines, magnified: from the ideal Es/N0 to the margin':
    'Die kleinen Zeilen, vergrößert: vom idealen Es/N0 zur Reserve',
  'ideal Es/N0': 'ideales Es/N0',
  margin: 'Reserve',
  'EIRP of the satellite': 'EIRP des Satelliten',
  'free-space loss': 'Freiraumdämpfung',
  'clear attenuation': 'Gase und dünne Wolken',
  'rain attenuation': 'Regendämpfung',
  'other loss': 'andere Verluste',
  'antenna gain': 'Antennengewinn',
  'pointing loss': 'Ausrichtverlust',
  'polarization loss': 'falsche Polarisation',
  'feed loss': 'Verlust des Feeds',
  'system noise (10 log T)': 'Rauschen (10 log T)',
  'Boltzmann’s constant': 'Boltzmann-Konstante',
  'symbol rate (10 log Rs)': 'Symbolrate (10 log Rs)',
  'adjacent satellites': 'Nachbarsatelliten',
  'implementation loss': 'Implementierung',
  'threshold of the mode': 'Schwelle des Modus',
  Line: 'Zeile',
  'Change / {}': 'Änderung / {}',
  'Sum / {}': 'Summe / {}',
  'The budget in the order of the hand calculation': 'Die Bilanz in der Folge der Handrechnung',
  Contribution: 'Beitrag',
  Unit: 'Einheit',
  'Sum so far': 'Summe bisher',
};

export default pairs;
