/** German for `do-the-neighbours-disturb`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'Aperture efficiency': 'Wirkungsgrad der Öffnung',
  'Pattern of the antenna': 'Diagramm der Antenne',
  'Radio Regulations, Appendix 8': 'VO Funk, Anhang 8',
  'ITU-R S.465-6': 'ITU-R S.465-6',
  'ITU-R S.580-6': 'ITU-R S.580-6',
  'ITU-R S.1428-1': 'ITU-R S.1428-1',
  'Power of the wanted satellite per megahertz': 'Leistung des gewünschten Satelliten je Megahertz',
  'EIRP less ten times the logarithm of the bandwidth in MHz.':
    'EIRP minus zehnmal der Logarithmus der Bandbreite in MHz.',
  'Neighbours in the same band': 'Nachbarn im selben Band',
  Power: 'Leistung',
  Isolation: 'Trennung',
  'Isolation: 0 for the same polarization, 15 to 25 for the other one.':
    'Trennung (Entkopplung): 0 bei gleicher Polarisation, 15 bis 25 bei der anderen.',
  'Pointing error towards the neighbours': 'Ausrichtfehler zu den Nachbarn hin',

  // Slips.
  'a reference pattern needs a reflector of at least 10 wavelengths':
    'ein Bezugsdiagramm braucht einen Reflektor von mindestens 10 Wellenlängen',
  'is the efficiency a ratio, not a percentage?':
    'ist der Wirkungsgrad ein Verhältnis, nicht ein Prozentwert?',
  'at least one neighbour': 'mindestens ein Nachbar',
  'an array of {}': 'eine Liste von {}',

  // Answers.
  'The slot at {} is hidden by the Earth from this station.':
    'Die Position {} ist von diesem Standort aus durch die Erde verdeckt.',
  'With {} m the carrier is {} dB above all neighbours together.':
    'Mit {} m liegt der Träger {} dB über allen Nachbarn zusammen.',
  'The pattern says nothing that close to the axis: it begins at {}°, the neighbour stands at {}°.':
    'So nahe der Achse sagt das Diagramm nichts: es beginnt bei {}°, der Nachbar steht bei {}°.',
  'Carrier over interference': 'Träger über Störung',
  'not specified': 'nicht festgelegt',
  'A reference pattern is an envelope: a real antenna lies below it most of the time and may have a null just there.':
    'Ein Bezugsdiagramm ist eine Hüllkurve: eine wirkliche Antenne liegt meist darunter und hat vielleicht gerade dort ein Minimum.',

  // Picture and table.
  'Carrier over interference against the size of the reflector':
    'Träger über Störung, über der Größe des Reflektors',
  'Diameter / m': 'Durchmesser / m',
  'Carrier over interference / dB': 'Träger über Störung / dB',
  'all neighbours': 'alle Nachbarn',
  '{} m': '{} m',
  'Each neighbour': 'Jeder Nachbar für sich',
  'Seen at / °': 'Gesehen bei / °',
  'Gain there / dBi': 'Gewinn dort / dBi',
  'Carrier over it / dB': 'Träger darüber / dB',
};

export default pairs;
