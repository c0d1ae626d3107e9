/** German for `what-the-air-takes`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'Height of the station': 'Höhe des Standorts',
  'Pressure and temperature follow from it, by the mean atmosphere.':
    'Druck und Temperatur folgen daraus, nach der mittleren Atmosphäre.',
  'Water vapour at the station': 'Wasserdampf am Standort',
  'Mountain air 2 to 6, temperate lowland 7 to 12, tropics 18 to 25.':
    'Bergluft 2 bis 6, gemäßigtes Tiefland 7 bis 12, Tropen 18 bis 25.',
  'Liquid water in the clouds above': 'Flüssiges Wasser in den Wolken darüber',
  'Clear sky 0; a thick cloud 1 and more.': 'Klarer Himmel 0; eine dicke Wolke 1 und mehr.',
  'Antenna diameter': 'Durchmesser der Antenne',
  'Median of the year: mountains 30 to 50, tropics 110 to 130.':
    'Median des Jahres: Berge 30 bis 50, Tropen 110 bis 130.',
  'Scintillation exceeded for': 'Szintillation überschritten in',
  '% of the time': '% der Zeit',

  // Answers.
  'Without rain the air takes {} dB at {} GHz and {}° of elevation; the largest part is {}.':
    'Ohne Regen nimmt die Luft {} dB bei {} GHz und {}° Elevation; der größte Anteil: {}.',
  oxygen: 'Sauerstoff',
  'water vapour': 'Wasserdampf',
  cloud: 'Wolken',
  gases: 'Gase',
  'all together': 'alles zusammen',
  'All together': 'Alles zusammen',
  Oxygen: 'Sauerstoff',
  'Water vapour': 'Wasserdampf',
  Cloud: 'Wolken',
  Scintillation: 'Szintillation',
  'exceeded for {} % of the time': 'in {} % der Zeit überschritten',
  Pressure: 'Druck',
  Temperature: 'Temperatur',
  'Below 5° the flat layers of this method stop being true: the sum is too high.':
    'Unter 5° gelten die ebenen Schichten dieses Verfahrens nicht mehr: die Summe ist zu hoch.',

  // Slips.
  'was it given in kg/m3 or per cent?': 'ist der Wert in kg/m³ oder Prozent angegeben?',

  // Pictures.
  'What the air takes against frequency, at {}° of elevation':
    'Was die Luft nimmt, über der Frequenz, bei {}° Elevation',
  'What the air takes against elevation, at {} GHz':
    'Was die Luft nimmt, über der Elevation, bei {} GHz',
  'Frequency / GHz': 'Frequenz / GHz',
  'Attenuation / dB': 'Dämpfung / dB',
};

export default pairs;
