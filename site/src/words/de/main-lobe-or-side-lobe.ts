/** German for `main-lobe-or-side-lobe`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'Before you turn: secure yourself and the tools, and keep clear of power lines. Side lobes radiate, too: in front of a transmitting reflector keep the safe distance in every direction.':
    'Vor dem Drehen sich selbst und das Werkzeug sichern und von Stromleitungen Abstand halten. Auch Nebenkeulen strahlen: vor einem sendenden Reflektor in jeder Richtung den sicheren Abstand einhalten.',
  // Inputs.
  Diameter: 'Durchmesser',
  'Across the axis that was turned.': 'Quer zu der Achse, um die gedreht wurde.',
  'Rim below the centre': 'Abfall zum Rand',
  'How the feed lights the reflector; about 10 dB is usual.':
    'Wie das Feed den Reflektor ausleuchtet; üblich sind etwa 10 dB.',
  'Width of the peak found': 'Breite des gefundenen Maximums',
  'Between the points 3 dB below its own top.':
    'Zwischen den Punkten 3 dB unter seinem eigenen Höchstwert.',
  'Uncertainty of the width': 'Unsicherheit der Breite',
  'Standard uncertainty.': 'Standardunsicherheit.',
  'Level of the peak found': 'Pegel des gefundenen Maximums',
  'Level expected of the main lobe': 'Erwarteter Pegel der Hauptkeule',
  none: 'keiner',
  'Level without signal': 'Pegel ohne Signal',
  'far below': 'weit tiefer',

  // Answers.
  'This is the main lobe.': 'Das ist die Hauptkeule.',
  'This is a side lobe. Turn {} to either side: on one side the level rises by about {}.':
    'Das ist eine Nebenkeule. Um {} nach beiden Seiten drehen: auf einer Seite steigt der Pegel um etwa {}.',
  'Not decided. Turn {} to either side: from the main lobe the level falls on both, from a side lobe it rises on one.':
    'Unentschieden. Um {} nach beiden Seiten drehen: von der Hauptkeule aus fällt der Pegel auf beiden, von einer Nebenkeule aus steigt er auf einer.',
  'No lobe of this reflector is that wide. Check the diameter, the frequency and the degrees per turn.':
    'Keine Keule dieses Reflektors ist so breit. Den Durchmesser, die Frequenz und die Grade je Umdrehung prüfen.',
  'Probability of the main lobe': 'Wahrscheinlichkeit der Hauptkeule',
  'The move that decides': 'Die Drehung, die entscheidet',
  'to either side, on the sky': 'nach beiden Seiten, am Himmel',
  'Level there, from the main lobe': 'Pegel dort, von der Hauptkeule aus',
  'on both sides': 'auf beiden Seiten',
  'Level there, from the first side lobe': 'Pegel dort, von der ersten Nebenkeule aus',
  'on one side': 'auf einer Seite',

  // Table.
  'The peak against each lobe': 'Das Maximum gegen jede der Keulen',
  Lobe: 'Keule',
  'main lobe': 'Hauptkeule',
  'first side lobe': 'erste Nebenkeule',
  'second side lobe': 'zweite Nebenkeule',
  'Width / °': 'Breite / °',
  'Below main / dB': 'Tiefer um / dB',
  'Width off by': 'Breite weicht ab',
  'Level off by': 'Pegel weicht ab',
  Probability: 'Wahrsch.',

  // Picture.
  'The pattern of the reflector about its axis': 'Das Richtdiagramm des Reflektors um seine Achse',
  'Off the axis / °': 'Neben der Achse / °',
  'Level / dB': 'Pegel / dB',
  pattern: 'Richtdiagramm',

  // Errors.
  'is it at least eight wavelengths?': 'sind es mindestens acht Wellenlängen?',
  'a taper is positive': 'ein Abfall zum Rand ist positiv',
};

export default pairs;
