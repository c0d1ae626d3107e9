/** German for `does-a-mobile-mast-disturb`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  Sender: 'Sender',
  'as put in': 'wie eingetragen',
  'mast at {} MHz, {} m': 'Mast auf {} MHz, {} m',
  'handset at {} MHz, {} m': 'Handy auf {} MHz, {} m',
  'cordless phone at {} MHz, {} m': 'schnurloses Telefon auf {} MHz, {} m',
  Carriers: 'Träger',
  Name: 'Name',
  Width: 'Breite',
  Oscillator: 'Oszillator',
  'EIRP of the sender': 'EIRP des Senders',
  'A mast about 60, a handset 23, a cordless phone 24.':
    'Ein Mast etwa 60, ein Handy 23, ein schnurloses Telefon 24.',
  'Distance of the sender': 'Entfernung des Senders',
  'Frequency of the sender': 'Frequenz des Senders',
  'Screening class of the cable': 'Schirmungsklasse des Kabels',
  'A++': 'A++',
  'A+': 'A+',
  'Wanted level there': 'Nutzpegel dort',
  'Wanted above unwanted, at least': 'Nutzsignal über Störung, mindestens',
  'What the mode needs, and about 15 dB more so that the ingress costs little.':
    'Was der Modus braucht, und etwa 15 dB mehr, damit die Einstrahlung wenig kostet.',
  'Bands that are on the air': 'Bänder, die in Betrieb sind',
  'all that are known': 'alle bekannten',
  'only the one of the sender': 'nur das des Senders',

  // Answers.
  'At {} MHz no carrier lies on the cable: this sender falls between them, and disturbs only where it drives an amplifier too far.':
    'Bei {} MHz liegt kein Träger auf dem Kabel: dieser Sender fällt dazwischen und stört nur, wo er einen Verstärker übersteuert.',
  '{}: what leaks in lies {} dB below the wanted signal, {} dB too near.':
    '{}: die Einstrahlung liegt {} dB unter dem Nutzsignal, {} dB zu nah.',
  '{}: what leaks in lies {} dB below the wanted signal, which is enough.':
    '{}: die Einstrahlung liegt {} dB unter dem Nutzsignal; das genügt.',
  'Wanted above unwanted': 'Nutzsignal über Störung',
  'on a sound cable; ± 10 dB': 'bei heilem Kabel; ± 10 dB',
  'Carriers under a band': 'Träger unter einem Band',
  'Field strength at the cable': 'Feldstärke am Kabel',
  'Level that leaks in': 'Einstrahlender Pegel',
  'class {}': 'Klasse {}',
  'Screening that is missing': 'Fehlende Schirmung',
  'The measurement that tells: put a terminating resistor in the place of the antenna. What is still there comes in through cable, connectors and outlets.':
    'Die Messung, die es zeigt: statt der Antenne einen Abschlusswiderstand anschließen. Was dann noch da ist, kommt durch Kabel, Stecker und Dosen herein.',

  // Pictures and table.
  'Carriers and terrestrial bands on the cable': 'Träger und terrestrische Bänder auf dem Kabel',
  'Frequency on the cable / MHz': 'Frequenz auf dem Kabel / MHz',
  'range of the receiver': 'Bereich des Empfängers',
  'carrier {}': 'Träger {}',
  'band {}': 'Band {}',
  'From / MHz': 'Von / MHz',
  'To / MHz': 'Bis / MHz',
  'Wanted above unwanted against the distance of the sender':
    'Nutzsignal über Störung, nach der Entfernung des Senders',
  'Distance / m': 'Entfernung / m',
  'Wanted above unwanted / dB': 'Nutzsignal über Störung / dB',
  needed: 'nötig',
  here: 'hier',
  'Carriers under a terrestrial band': 'Träger unter einem terrestrischen Band',
  Carrier: 'Träger',
  Band: 'Band',
  'How it gets in': 'Wie es hereinkommt',
  'Overlap / MHz': 'Überschneidung / MHz',
  'handset or cordless phone': 'Handy oder schnurloses Telefon',
  mast: 'Mast',
  'through the screen of the cable': 'durch den Schirm des Kabels',
  'into the antenna': 'in die Antenne',

  // By hand.
  'the field strength at the cable': 'die Feldstärke am Kabel',
  'what a dipole would take from it, less the screening':
    'was ein Dipol daraus nähme, weniger die Schirmung',
  'the wanted level above it': 'der Nutzpegel darüber',

  // Errors.
  'outside the band that the carrier occupies':
    'ein Wert außerhalb des Bands, das der Träger belegt',
  'is it in MHz?': 'ist der Wert in MHz?',
};

export default pairs;
