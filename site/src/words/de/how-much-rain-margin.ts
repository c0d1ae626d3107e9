/** German for `how-much-rain-margin`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'Tilt of the polarization': 'Neigung der Polarisation',
  'From horizontal; 45 for circular.': 'Ab der Waagrechten; 45 für zirkular.',
  'Antenna diameter': 'Durchmesser der Antenne',
  'Outage allowed': 'Erlaubter Ausfall',
  '% of the year': '% des Jahres',
  '0.05 % of outage is 99.95 % of availability.': '0,05 % Ausfall sind 99,95 % Verfügbarkeit.',
  'Rain rate measured there': 'Dort gemessene Regenrate',
  'from grid': 'aus Gitter',
  'Exceeded 0.01 % of the time; one-minute integration, some ten years.':
    'In 0,01 % der Zeit überschritten; Mittel über eine Minute, etwa zehn Jahre.',
  'Margin that the link has': 'Vorhandene Reserve',
  'as needed': 'wie nötig',
  'To see the outages that another margin leaves.':
    'Zeigt die Ausfälle, die bei anderer Reserve bleiben.',

  // Answers.
  'The slot at {} is below the horizon here.': 'Die Position {} liegt hier unter dem Horizont.',
  'For an outage of at most {} % of the year ({}) the link needs {} dB of margin.':
    'Für höchstens {} % Ausfall im Jahr ({}) braucht die Strecke {} dB Reserve.',
  '{} min': '{} min',
  'Margin needed': 'Nötige Reserve',
  'give or take {} dB': 'etwa ±\u00a0{} dB',
  Rain: 'Regen',
  Gases: 'Gase',
  Cloud: 'Wolken',
  Scintillation: 'Szintillation',
  'Outage with the margin given': 'Ausfall bei vorhandener Reserve',
  'or less: beyond the method': 'oder weniger: jenseits des Verfahrens',
  'or more: beyond the method': 'oder mehr: jenseits des Verfahrens',
  'In the worst month': 'Im schlechtesten Monat',
  'outage of the average worst month': 'Ausfall im mittleren schlechtesten Monat',
  'From year to year': 'Von Jahr zu Jahr',
  'standard deviation of single years': 'Standardabweichung einzelner Jahre',
  'The height typed differs from the ground in the map by more than 1.5 km: is it in metres?':
    'Die eingegebene Höhe weicht um mehr als 1,5 km vom Gelände der Karte ab: ist sie in Metern?',
  'Outside the range of P.618-14: {}.': 'Außerhalb des Bereichs von P.618-14: {}.',
  'Outside the range of P.618-14: {}, {}.': 'Außerhalb des Bereichs von P.618-14: {}, {}.',
  'Outside the range of P.618-14: {}, {}, {}.': 'Außerhalb des Bereichs von P.618-14: {}, {}, {}.',
  'Outside the range of P.618-14: {}, {}, {}, {}.':
    'Außerhalb des Bereichs von P.618-14: {}, {}, {}, {}.',
  'the elevation': 'die Elevation',
  'the frequency': 'die Frequenz',
  'the part of the year': 'der Teil des Jahres',
  'the diameter of the antenna': 'der Durchmesser der Antenne',
  'The margin counts from a reading in air without gas: what a clear day takes is already in a clear-sky reading.':
    'Die Reserve zählt ab einem Messwert in Luft ohne Gase: was ein klarer Tag nimmt, ist in einem Messwert bei klarem Himmel schon enthalten.',

  // Slips.

  // Picture.
  'Attenuation against the part of the year in which it is exceeded':
    'Dämpfung über dem Teil des Jahres, in dem sie überschritten wird',
  'Exceeded / % of the year': 'Überschritten / % des Jahres',
  'Attenuation / dB': 'Dämpfung / dB',
  'all together': 'alles zusammen',
  rain: 'Regen',
  'gases and cloud': 'Gase und Wolken',
  needed: 'nötig',

  // Tables.
  'Climate of the place': 'Klima des Ortes',
  Quantity: 'Größe',
  Value: 'Wert',
  From: 'Quelle',
  'Rain rate at 0.01 %': 'Regenrate bei 0,01\u00a0%',
  measured: 'gemessen',
  'monthly normals, P.837-7': 'Monatsmittel, P.837-7',
  'embedded grid, P.837-7': 'eingebautes Gitter, P.837-7',
  'rain zone, superseded': 'Regenzone, überholt',
  'It rains': 'Es regnet',
  '{} % of the year': '{} % des Jahres',
  'Rain height': 'Regenhöhe',
  'Mean temperature': 'Mittlere Temperatur',
  'Water vapour above, at 5 %': 'Wasserdampf darüber, bei 5\u00a0%',
  'Cloud water, at 5 %': 'Wolkenwasser, bei 5\u00a0%',
  '{} N-units': '{} N\u2011Einheiten',
  'Outages of a year with a margin of {} dB': 'Ausfälle eines Jahres bei {} dB Reserve',
  'Longer than': 'Länger als',
  Outages: 'Ausfälle',
  'Time in them': 'Zeit darin',
};

export default pairs;
