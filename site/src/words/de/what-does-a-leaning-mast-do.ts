/** German for `what-does-a-leaning-mast-do`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'Before a mast is set upright: tie yourself and the antenna, let nobody stand below, and keep a falling mast’s length away from power lines.':
    'Bevor ein Mast aufgerichtet wird: sich selbst und die Antenne sichern, niemanden darunter stehen lassen und von Stromleitungen weiter entfernt bleiben, als der Mast fallen kann.',
  // Inputs.
  'Lean of the mast': 'Neigung des Mastes',
  '1° is 17 mm for each metre of a plumb line.': '1° sind 17 mm auf jeden Meter Lotschnur.',
  'Azimuth towards which its top leans': 'Spitze neigt sich nach Azimut',
  'Half-power beamwidth': 'Halbwertsbreite',
  'About 70 wavelengths over diameters: 1.94° for 0.9 m at 12 GHz.':
    'Etwa 70° mal Wellenlänge durch Durchmesser: 1,94° für 0,9 m bei 12 GHz.',
  'Loss that the lean may cost': 'Erlaubter Verlust durch Neigung',

  // Answers.
  'Set by its scales, the beam points {}° beside {}; once it is peaked, the antenna is still rolled by {}°.':
    'Nach den Skalen eingestellt, zeigt die Keule {}° neben {}; im Maximum bleibt die Antenne dennoch um {}° gerollt.',
  'The slot stands straight overhead, where a lean has no direction to count from.':
    'Die Position steht genau im Zenit, wo es keine Richtung gibt, von der aus eine Neigung zählt.',
  'The slot is hidden by the Earth.': 'Die Position ist von der Erde verdeckt.',
  'Beam beside the slot': 'Keule neben der Position',
  'Roll after peaking': 'Rollwinkel nach dem Ausrichten',
  'clockwise positive, from behind; turn the feed back by it':
    'im Uhrzeigersinn positiv, von hinten; das Feed um ihn zurückdrehen',
  'Error in elevation': 'Fehler in der Elevation',
  'up positive': 'aufwärts positiv',
  'Error across': 'Fehler quer',
  'to the right positive': 'nach rechts positiv',
  'Azimuth scale on the slot': 'Azimutskala auf der Position',
  'Elevation scale on the slot': 'Elevationsskala auf der Position',
  'Lean allowed when set by the scales only': 'Erlaubte Neigung, nur nach Skalen eingestellt',
  '{} mm for each metre of plumb line': '{} mm auf jeden Meter Lotschnur',
  'any up to 20°': 'jede bis 20°',

  // Pictures.
  'Mast that leans by {}°, from the side and from behind':
    'Um {}° geneigter Mast, von der Seite und von hinten',
  'from the side': 'von der Seite',
  'from behind': 'von hinten',
  'angles of lean and error drawn {} times as large':
    'Neigung und Fehler {}-mal so groß gezeichnet',
  Angle: 'Winkel',
  Degrees: 'Grad',
  'Lean towards the satellite': 'Neigung zum Satelliten hin',
  'Lean to the right': 'Neigung nach rechts',
  'Beam above the satellite': 'Keule über dem Satelliten',
  'Antenna rolled clockwise': 'Antenne im Uhrzeigersinn gerollt',
  'Errors over the azimuth circle at this elevation':
    'Fehler über den Azimutkreis bei dieser Elevation',
  'Error / °': 'Fehler / °',
  'elevation of the beam': 'Elevation der Keule',
  across: 'quer',
  roll: 'Rollwinkel',
  slot: 'Position',
};

export default pairs;
