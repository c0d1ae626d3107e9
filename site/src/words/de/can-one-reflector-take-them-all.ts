/** German for `can-one-reflector-take-them-all`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  Weight: 'Gewicht',
  Feeds: 'Feeds',
  'Each where its slot needs it': 'Jeder, wo seine Position ihn braucht',
  'On a rigid bar': 'Auf einer starren Schiene',
  'Places on a rigid bar, in mm from the focus':
    'Plätze auf einer starren Schiene, in mm vom Brennpunkt',
  'In the order of the slots, to the right positive as seen from behind. A feed to the right looks at a slot to the left.':
    'In der Reihenfolge der Positionen, von hinten gesehen nach rechts positiv. Ein Feed rechts blickt auf eine Position links.',
  'Diameter (width)': 'Durchmesser (Breite)',
  'Focal length': 'Brennweite',
  'Offset angle': 'Offsetwinkel',
  'Arccosine of width over height of the rim; 0 where the feed stands before the middle.':
    'Arkuskosinus von Breite durch Höhe des Randes; 0, wenn das Feed vor der Mitte steht.',
  'Diameter of a feed': 'Durchmesser eines Feeds',

  'Hidden by the Earth: {}.': 'Von der Erde verdeckt: {}.',
  'Pointed at azimuth {}°, elevation {}°, no slot loses more than {} dB (times its weight).':
    'Auf Azimut {}°, Elevation {}° gerichtet, verliert keine Position mehr als {} dB (mal ihrem Gewicht).',
  'Largest loss times weight': 'Größter Verlust mal Gewicht',
  'Turn of the row of feeds': 'Drehung der Feedreihe',
  'Turn of the bar': 'Drehung der Schiene',
  'clockwise positive, from behind': 'im Uhrzeigersinn positiv, von hinten',
  'Azimuth of the boresight': 'Azimut der Achse',
  'Elevation of the boresight': 'Elevation der Achse',
  'Beam deviation factor': 'Ablenkfaktor der Keule',
  'Focus to middle of the reflector': 'Brennpunkt bis Reflektormitte',
  'The feeds for {} and {} would overlap by {} mm: take smaller ones, or a bar that holds them apart.':
    'Die Feeds für {} und {} würden sich um {} mm überlappen: kleinere nehmen oder eine Schiene, die sie auseinanderhält.',

  // Pictures and tables.
  'The feeds from behind, the focus at the cross': 'Die Feeds von hinten, der Brennpunkt am Kreuz',
  'Feed for': 'Feed für',
  'Right of the focus / mm': 'Rechts vom Brennpunkt / mm',
  'Above the focus / mm': 'Über dem Brennpunkt / mm',
  'Reflector and feeds from the side, true to scale':
    'Reflektor und Feeds von der Seite, maßstäblich',
  'focus and feeds': 'Fokus und Feeds',
  boresight: 'Achse',
  Length: 'Länge',
  Metres: 'Meter',
  'Lower end of the rim to the focus': 'Unterer Rand bis Brennpunkt',
  'Upper end of the rim to the focus': 'Oberer Rand bis Brennpunkt',
  'Middle of the reflector to the focus': 'Reflektormitte bis Brennpunkt',
  'Feed of each slot from the focus, its turn, its beam, its loss':
    'Feed jeder Position vom Brennpunkt aus, seine Drehung, seine Keule, sein Verlust',
  'Turn / °': 'Drehung / °',
  'Against the row / °': 'Gegen die Reihe / °',
  'Turns are for linear polarization, clockwise positive, from behind: from the reflector’s own vertical, and from the perpendicular of the row for a feed that is clamped to it. They are not the slots’ own skews.':
    'Drehungen gelten für lineare Polarisation, im Uhrzeigersinn positiv, von hinten: von der Senkrechten des Reflektors, und von der Senkrechten zur Reihe für ein Feed, das an ihr festgeklemmt ist. Es sind nicht die eigenen Polarisationswinkel der Positionen.',
  'The places already contain the turn of the row: a feed set to its place needs no other tilt.':
    'Die Plätze enthalten die Drehung der Reihe schon: ein Feed an seinem Platz braucht keine weitere.',
  'The bar is turned once, by the angle above; the feeds stay where they sit on it.':
    'Die Schiene wird einmal gedreht, um den Winkel oben; die Feeds bleiben, wo sie auf ihr sitzen.',
  'Above 3 dB the beam has lost its shape: the loss is good to about 1 dB only, and a reading must show it.':
    'Über 3 dB hat die Keule ihre Form verloren: der Verlust stimmt nur auf etwa 1 dB, eine Messung muss ihn zeigen.',
  'Right / mm': 'Rechts / mm',
  'Up / mm': 'Oben / mm',
  'Along / mm': 'Längs / mm',
  'Beam off / °': 'Keule daneben / °',

  // Errors.
  slots: 'Positionen',
  'slots[{}].frequenciesGHz[{}]': 'Frequenz',
  'slots[{}].orbitalLongitudeDeg': 'Orbitposition',
  'slots[{}].frequencyGHz': 'Frequenz',
  'slots[{}].weightRatio': 'Gewicht',
  NaN: 'NaN',
  'an array of {}': 'eine Liste von {}',
  'a list of 1 to {}': 'eine Liste von 1 bis {}',
  'one place for each of the {} slots': 'ein Platz für jede der {} Positionen',
  'within {} degrees of each other on the sky': 'eine Lage am Himmel höchstens {}° voneinander',
  'is the focal length in metres?': 'ist die Brennweite in Metern angegeben?',
  'are the places in metres?': 'sind die Plätze in Metern angegeben?',
};

export default pairs;
