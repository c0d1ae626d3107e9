/** German for `which-mode-when`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'of the place': 'vom Ort',
  'Rain rate taken': 'Angenommene Regenrate',
  'Rain height taken': 'Angenommene Regenhöhe',
  'Gas and cloud taken': 'Angenommene Gase und Wolken',
  // Inputs.
  Modes: 'Modi',
  'DVB-S2 and DVB-S2X': 'DVB-S2 und DVB-S2X',
  'Switching margin': 'Umschaltreserve',
  'Kept in hand so that the link does not drop while it changes mode.':
    'Zurückgehalten, damit die Strecke beim Wechsel des Modus nicht abreißt.',
  'Rain rate exceeded for 0.01 % of the year': 'Regenrate, in 0,01\u00a0% des Jahres überschritten',
  'About 25 to 40 in temperate places, 80 to 120 in the wet tropics.':
    'Etwa 25 bis 40 in gemäßigten Gegenden, 80 bis 120 in den feuchten Tropen.',
  'Rain height above sea level': 'Regenhöhe über dem Meer',
  'The 0 °C isotherm plus 0.36 km.': 'Die Nullgradgrenze plus 0,36 km.',
  'Gas at 5 % of the time': 'Gase, in 5\u00a0% der Zeit überschritten',
  'Cloud at 5 % of the time': 'Wolken, in 5\u00a0% der Zeit überschritten',

  // Slips.

  // Answers.
  'The slot at {} is hidden by the Earth from this station.':
    'Die Position {} ist von diesem Standort aus durch die Erde verdeckt.',
  'Most of the year {} carries {} Mbit/s; the mean over all weathers is {} Mbit/s.':
    'Die meiste Zeit des Jahres trägt {} {} Mbit/s; das Mittel über alle Wetter ist {} Mbit/s.',
  'Not even the slowest mode can be used.': 'Nicht einmal der langsamste Modus ist brauchbar.',
  'Mean throughput': 'Mittlerer Durchsatz',
  'Out altogether': 'Ganz ausgefallen',
  'of the year': 'des Jahres',
  'Throughput in clear weather': 'Durchsatz bei klarem Wetter',
  'Hours out in a year': 'Ausfallstunden im Jahr',
  'Hours out in the worst month': 'Ausfallstunden im schlechtesten Monat',
  'Outages longer than 10 s in a year': 'Ausfälle über 10\u00a0s im Jahr',
  '{} minutes on average': 'im Mittel {} Minuten',

  // Picture and table.
  'Throughput kept for all but a percentage of the year':
    'Durchsatz, der bis auf so viel Prozent des Jahres gehalten wird',
  'Percent of the year with less / %': 'Prozent des Jahres mit weniger / %',
  'Throughput / Mbit/s': 'Durchsatz / Mbit/s',
  'fastest mode that can be used': 'schnellster brauchbarer Modus',
  mean: 'Mittel',
  'Modes in use, slowest first': 'Benutzte Modi, die langsamsten zuerst',
  Mode: 'Modus',
  'Rate / Mbit/s': 'Rate / Mbit/s',
  'In use / % of the year': 'Benutzt / % des Jahres',
  'This or faster / %': 'Dieser oder schneller / %',
};

export default pairs;
