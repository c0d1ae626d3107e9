/** German for `sun-outages`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  Year: 'Jahr',
  'System noise temperature': 'System-Rauschtemperatur',
  'Under a clear sky, without the Sun.': 'Bei klarem Himmel, ohne die Sonne.',
  'Loss that counts': 'Verlust, der zählt',
  'The margin of the link: beyond it the picture or the data stop.':
    'Die Reserve der Strecke: darüber hinaus bleiben Bild oder Daten weg.',
  'Activity of the Sun': 'Aktivität der Sonne',
  quiet: 'ruhig',
  moderate: 'mäßig',
  active: 'aktiv',

  // The answer.
  'The slot at {} is hidden by the Earth.': 'Die Position {} ist von der Erde verdeckt.',
  'In {} the Sun never costs that much: with the Sun exactly behind the satellite it is {} dB.':
    'Im Jahr {} kostet die Sonne nie so viel: genau hinter dem Satelliten kostet sie {} dB.',
  '1 days in {}, the first {}, for at most {} minutes each.':
    'Ein Tag im Jahr {}, am {}, höchstens {} Minuten.',
  '{} days in {}, the first {}, for at most {} minutes each.':
    '{} Tage im Jahr {}, der erste am {}, jeweils höchstens {} Minuten.',
  'Greatest loss': 'Größter Verlust',
  Days: 'Tage',
  'in the year': 'im Jahr',
  'Deepest loss': 'Größter Verlust',
  'Rise of the noise temperature': 'Anstieg der Rauschtemperatur',
  'Brightness of the Sun': 'Helligkeit der Sonne',
  Beamwidth: 'Halbwertsbreite',
  'Declination of the satellite': 'Deklination des Satelliten',
  'the season is when the Sun has it': 'Störungen gibt es, wenn die Sonne dieselbe hat',
  'Do not look along the antenna at the Sun. A shiny reflector gathers heat at its feed: keep hands and eyes away.':
    'Nicht an der Antenne entlang in die Sonne blicken. Ein glänzender Reflektor sammelt Hitze an seinem Feed: Hände und Augen fernhalten.',

  // Pictures and tables.
  'Sun outages of {} for the slot at {}: loss by day, and from when to when in UTC':
    'Sonnenstörungen {} für die Position {}: Verlust je Tag, und von wann bis wann in UTC',
  Day: 'Tag',
  'Start UTC': 'Anfang UTC',
  'Peak UTC': 'Maximum UTC',
  'End UTC': 'Ende UTC',
  'Loss of C/N on {}, minutes from {} UTC': 'Verlust an C/N am {}, Minuten ab {} UTC',
  'Time from the peak / min': 'Zeit ab dem Maximum / min',
  'Loss of C/N / dB': 'Verlust an C/N / dB',
  Loss: 'Verlust',
  'counts from here': 'zählt ab hier',

  // Errors.
  beamwidthDeg: 'Halbwertsbreite in °',
  'ISO-8601 text such as 2026-03-02T10:08:07Z': 'eine ganze Jahreszahl mit vier Ziffern',
};

export default pairs;
