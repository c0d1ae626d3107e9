/** German for `which-frequency-do-i-tune`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'Local oscillator of the unit (LNB)': 'Lokaloszillator des LNB',
  'Ku, universal: 9.75 and 10.6 GHz': 'Ku, universal: 9,75 und 10,6 GHz',
  'Ku, both polarizations stacked: 11.25 and 14.35 GHz':
    'Ku, beide Polarisationen gestapelt: 11,25 und 14,35 GHz',
  'Ku, wideband: 10.4 GHz': 'Ku, Breitband: 10,4 GHz',
  'Ku, wideband: 10.41 GHz': 'Ku, Breitband: 10,41 GHz',
  'C, 3.4 to 4.2 GHz: 5.15 GHz': 'C, 3,4 bis 4,2 GHz: 5,15 GHz',
  'C, both polarizations stacked: 5.15 and 5.75 GHz':
    'C, beide Polarisationen gestapelt: 5,15 und 5,75 GHz',
  Name: 'Name',
  Width: 'Breite',
  Polarization: 'Polarisation',
  Carriers: 'Träger',
  vertical: 'vertikal',
  horizontal: 'horizontal',
  'right-hand': 'rechtsdrehend',
  'left-hand': 'linksdrehend',
  'Receiver tunes from': 'Empfänger stimmt ab von',
  'Receiver tunes to': 'Empfänger stimmt ab bis',
  'Stability of the oscillator': 'Stabilität des Oszillators',
  ppm: 'ppm',
  'Dielectric resonators 100 to 200, phase-locked units 2 to 30, with an outside reference below 0.1.':
    'Dielektrische Resonatoren 100 bis 200, phasengeregelte LNB 2 bis 30, mit äußerer Referenz unter 0,1.',

  // Answers.
  '{}: tune {} MHz, {} V, {}.': '{}: {} MHz einstellen, {} V, {}.',
  '{}: tune {} MHz, {} V, {}; {} of {} carriers cannot be received whole.':
    '{}: {} MHz einstellen, {} V, {}; {} von {} Trägern lassen sich nicht ganz empfangen.',
  '{}: this unit has no band for {} GHz.': '{}: dieses LNB hat kein Band für {} GHz.',
  'Add a carrier.': 'Einen Träger eintragen.',
  'Intermediate frequency': 'Zwischenfrequenz',
  'of {}': 'von {}',
  Supply: 'Fernspeisung',
  'tone on': 'Ton ein',
  'tone off': 'Ton aus',
  'no tone needed': 'kein Ton nötig',
  'Local oscillator': 'Lokaloszillator',
  Image: 'Spiegelfrequenz',
  'comes out at the same place; the filter of the unit keeps it away':
    'käme an derselben Stelle heraus; das Filter des LNB hält sie fern',
  'May lie off by': 'Darf danebenliegen um',
  'either way, by the oscillator': 'nach beiden Seiten, durch den Oszillator',
  'The oscillators of this plan were read in an open text.':
    'Die Oszillatoren dieses Plans wurden in einem freien Text nachgelesen.',
  'The oscillators of this plan are practice of the trade: read the label of the unit.':
    'Die Oszillatoren dieses Plans sind Praxis des Gewerbes: das Typenschild des LNB lesen.',
  'The oscillators of this plan were written down from memory: read the label of the unit.':
    'Die Oszillatoren dieses Plans wurden aus dem Gedächtnis notiert: das Typenschild des LNB lesen.',
  'The oscillator lies above the carrier: the spectrum is inverted, the lower radio edge is the upper edge on the cable.':
    'Der Oszillator liegt über dem Träger: das Spektrum ist umgekehrt, die untere Kante auf der Strecke ist die obere auf dem Kabel.',

  // Picture and tables.
  'Where the carriers lie on the cable': 'Wo die Träger auf dem Kabel liegen',
  'Intermediate frequency / MHz': 'Zwischenfrequenz / MHz',
  'range of the receiver': 'Bereich des Empfängers',
  '{}: {} V, {}': '{}: {} V, {}',
  '{} V, {}': '{} V, {}',
  'in range': 'im Bereich',
  'cut off at the edge': 'am Rand abgeschnitten',
  'out of range': 'außerhalb des Bereichs',
  '{}: cut off at the edge': '{}: am Rand abgeschnitten',
  '{}: out of range': '{}: außerhalb des Bereichs',
  'From / MHz': 'Von / MHz',
  'To / MHz': 'Bis / MHz',
  'Tuning table': 'Abstimmtabelle',
  Carrier: 'Träger',
  'Tune / MHz': 'Einstellen / MHz',
  'Supply / V': 'Fernspeisung / V',
  Tone: 'Ton',
  'Oscillator / GHz': 'Oszillator / GHz',
  Receiver: 'Empfänger',
  'With the tone wrong / GHz': 'Bei falschem Ton / GHz',
  none: 'keine',
  'outside the unit': 'außerhalb des LNB',

  // By hand.
  'the oscillator may be off by': 'der Oszillator darf danebenliegen um',
  'the image lies as far on the other side of the oscillator':
    'die Spiegelfrequenz liegt ebenso weit auf der anderen Seite des Oszillators',

  // Errors.
  'receiver.lowestMHz ({})': 'Anfang des Empfangsbereichs ({})',
};

export default pairs;
