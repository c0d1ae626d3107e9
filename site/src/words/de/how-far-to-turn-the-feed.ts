/** German for `how-far-to-turn-the-feed`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'If this feed transmits, whoever may do it switches the transmitter off before a hand goes in front of the reflector.':
    'Sendet dieses Feed, so schaltet den Sender ab, wer das darf, bevor eine Hand vor den Reflektor kommt.',
  Polarization: 'Polarisation',
  Linear: 'Linear',
  Circular: 'Zirkular',
  'The satellite’s own tilt': 'Eigene Neigung des Satelliten',
  'Clockwise positive as seen from behind the antenna; 0 for most.':
    'Im Uhrzeigersinn positiv, von hinter der Antenne gesehen; bei den meisten 0.',

  'Circular polarization: any turn of the feed serves.':
    'Zirkulare Polarisation: jede Drehung des Feeds ist recht.',
  'The slot at {} is straight overhead: lay the feed for vertical polarization along the bearing {}°.':
    'Die Position {} steht genau im Zenit: das Feed für vertikale Polarisation in die Peilung {}° legen.',
  'The slot at {} is hidden by the Earth.': 'Die Position {} ist von der Erde verdeckt.',
  'For {} turn the feed {}° clockwise from upright, as seen from behind the antenna.':
    'Für {} das Feed aus der Senkrechten um {}° im Uhrzeigersinn drehen, von hinter der Antenne gesehen.',
  'For {} turn the feed {}° counter-clockwise from upright, as seen from behind the antenna.':
    'Für {} das Feed aus der Senkrechten um {}° gegen den Uhrzeigersinn drehen, von hinter der Antenne gesehen.',
  'For {} leave the feed upright, as seen from behind the antenna.':
    'Für {} das Feed senkrecht lassen, von hinter der Antenne gesehen.',
  'Bearing of the polarization': 'Peilung der Polarisation',
  Skew: 'Polarisationswinkel',
  'clockwise positive, seen from behind': 'im Uhrzeigersinn positiv, von hinten gesehen',
  'Share of the geometry': 'Anteil der Geometrie',
  'Share of the satellite’s tilt': 'Anteil der Neigung des Satelliten',

  // Pictures.
  'The feed for {} as seen from behind the antenna, facing the satellite':
    'Das Feed für {}, von hinter der Antenne zum Satelliten gesehen',
  up: 'oben',
  left: 'links',
  right: 'rechts',
  Line: 'Linie',
  'Clockwise from upright / °': 'Im Uhrzeigersinn aus der Senkrechten / °',
  'Feed for vertical polarization': 'Feed für vertikale Polarisation',
  'Feed for horizontal polarization': 'Feed für horizontale Polarisation',
  'Skew over the visible arc': 'Polarisationswinkel über dem sichtbaren Bogen',
  'Slot east of the station / °': 'Position östlich des Standorts / °',
  'Skew / °': 'Polarisationswinkel / °',
  skew: 'Polarisationswinkel',

  // Errors.
};

export default pairs;
