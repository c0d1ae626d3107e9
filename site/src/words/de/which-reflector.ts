/** German for `which-reflector`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'of the place': 'vom Ort',
  'Rain rate taken': 'Angenommene Regenrate',
  'Rain height taken': 'Angenommene Regenhöhe',
  'Gas and cloud taken': 'Angenommene Gase und Wolken',
  'Polarization tilt': 'Neigung der Polarisation',
  '0 horizontal, 90 vertical, 45 for circular.': '0 horizontal, 90 vertikal, 45 für zirkular.',
  'Mode (DVB-S2)': 'Modus (DVB-S2)',
  'The same angle costs a larger reflector more.':
    'Derselbe Winkel kostet einen größeren Reflektor mehr.',
  'Rain rate exceeded for 0.01 % of the year': 'Regenrate, in 0,01 % des Jahres überschritten',
  'About 25 to 40 in temperate places, 80 to 120 in the wet tropics.':
    'Etwa 25 bis 40 in gemäßigten Gegenden, 80 bis 120 in den feuchten Tropen.',
  'Rain height above sea level': 'Regenhöhe über dem Meer',
  'The 0 °C isotherm plus 0.36 km.': 'Die 0-°C-Isotherme plus 0,36 km.',
  'Gas at 5 % of the time': 'Gase, in 5 % der Zeit',
  'Cloud at 5 % of the time': 'Wolken, in 5 % der Zeit',
  'Time of the year that may be lost': 'Erlaubter Ausfall im Jahr',
  'Margin left in that fade': 'Verlangte Reserve in diesem Schwund',

  'The slot at {} is hidden by the Earth from this station.':
    'Die Position {} ist von diesem Standort aus von der Erde verdeckt.',
  'A reflector of {} m is the smallest usual one that keeps its promise for all but {} % of the year.':
    'Ein Reflektor von {} m ist der kleinste übliche, der sein Versprechen bis auf {} % des Jahres hält.',
  'No usual reflector keeps that promise; the best lacks {} dB.':
    'Kein üblicher Reflektor hält dieses Versprechen; dem besten fehlen {} dB.',
  'Smallest reflector': 'Kleinster Reflektor',
  none: 'keiner',
  'Its margin in that fade': 'Seine Reserve in diesem Schwund',
  'Fade exceeded for that time': 'In dieser Zeit überschrittener Schwund',
  'Below 5° the recommendation has another method for scintillation; here 5° stands for it.':
    'Unter 5° hat die Empfehlung ein anderes Verfahren für die Szintillation; hier steht 5° dafür.',

  // Picture and table.
  'Margin in that fade against the size of the reflector':
    'Reserve in diesem Schwund über der Größe des Reflektors',
  'Diameter / m': 'Durchmesser / m',
  'Margin / dB': 'Reserve / dB',
  margin: 'Reserve',
  'meets the target': 'Ziel erreicht',
  target: 'Ziel',
  'Usual reflectors': 'Übliche Reflektoren',
  'Margin in that fade / dB': 'Reserve in diesem Schwund / dB',
  'Up for / % of the year': 'Verfügbar / % des Jahres',
  Target: 'Ziel',
  met: 'erreicht',
  missed: 'verfehlt',

  // Errors.
  heightM: 'Höhe in m',
  'is the distance in kilometres?': 'ist die Entfernung in Kilometern angegeben?',
};

export default pairs;
