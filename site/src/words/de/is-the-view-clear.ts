/** German for `is-the-view-clear`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'Sight from safe ground where you can. On a roof or a mast secure yourself and the tools first, keep clear of power lines, and follow the local rules for work at height.':
    'Wo es geht, von sicherem Boden aus messen. Auf einem Dach oder Mast zuerst sich selbst und das Werkzeug sichern, von Stromleitungen fernbleiben und die örtlichen Vorschriften für Arbeiten in der Höhe befolgen.',
  // Inputs.
  'Sightings of the skyline': 'Messpunkte der Horizontlinie',
  'One at each corner of the skyline; between two of them it is a straight edge.':
    'Einer an jeder Ecke der Horizontlinie; zwischen zweien gilt sie als gerade Kante.',
  'Angle up': 'Höhenwinkel',
  'Bearings count from': 'Die Peilungen zählen ab',
  'magnetic north (compass)': 'magnetisch Nord (Kompass)',
  'true north': 'geografisch Nord',
  'Year of the sighting': 'Jahr der Messung',
  'For the declination; used with compass bearings.':
    'Für die Missweisung; zählt nur bei Kompasspeilungen.',
  'Clearance wanted': 'Verlangter Abstand',
  'At least the beamwidth, and room for trees to grow.':
    'Mindestens die Halbwertsbreite, und Platz für das Wachsen der Bäume.',

  // The answer: slots by what is seen of them, one group after the other.
  '{}; {}.': '{}; {}.',
  '{}; {}': '{}; {}',
  '{}: clear.': '{}: frei.',
  '{}: clear': '{}: frei',
  '{}: clear by less than wanted.': '{}: frei, aber knapper als verlangt.',
  '{}: clear by less than wanted': '{}: frei, aber knapper als verlangt',
  '{}: blocked.': '{}: verdeckt.',
  '{}: blocked': '{}: verdeckt',
  '{}: hidden by the Earth.': '{}: von der Erde verdeckt.',
  '{}: hidden by the Earth': '{}: von der Erde verdeckt',
  '{}: where nothing was sighted.': '{}: dort ist nichts vermessen.',
  'Clear arc': 'Freier Bogen',
  'of longitude: ': 'in der Länge: nirgends',
  'of longitude: {}': 'in der Länge: {}',
  Declination: 'Missweisung',
  'east positive, ± {}°; added to each bearing': 'Ost positiv, ± {}°; zu jeder Peilung addiert',
  'The horizontal field is too weak here for a compass: take bearings from the Sun or a map.':
    'Das waagrechte Magnetfeld ist hier für einen Kompass zu schwach: Peilungen aus dem Sonnenstand oder einer Karte nehmen.',

  // Picture and tables.
  'The arc of slots over the sighted skyline; the slots are numbered as in the table':
    'Der Bogen der Positionen über der vermessenen Horizontlinie; die Nummern sind die der Tabelle',
  'Each slot over the skyline': 'Jede Position über der Horizontlinie',
  'Clearance / °': 'Abstand / °',
  View: 'Sicht',
  none: 'keiner',
  clear: 'frei',
  'clear, but by less than wanted': 'frei, aber knapper als verlangt',
  blocked: 'verdeckt',
  'not sighted': 'nicht vermessen',
  'Sighting {}': 'Messpunkt {}',
  'bearing {}°, {}° up': 'Peilung {}°, {}° hoch',
  'hidden by the Earth': 'von der Erde verdeckt',
  overhead: 'im Zenit',
  'The visible arc from west to east': 'Der sichtbare Bogen von West nach Ost',
  From: 'Von',
  To: 'Bis',

  // Errors.
  '{} must be a list of at least one sighting, got an array of 0':
    'Verlangt ist mindestens ein Messpunkt.',
  '{} must be a list of at least one slot, got an array of 0':
    'Verlangt ist mindestens eine Position.',
  'is it a decimal year such as 2026.5?': 'ist es ein Dezimaljahr wie 2026,5?',
};

export default pairs;
