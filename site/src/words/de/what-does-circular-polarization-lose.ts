/** German for `what-does-circular-polarization-lose`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'Receiving antenna': 'Empfangsantenne',
  'circular, same hand': 'zirkular, gleicher Drehsinn',
  'circular, wrong hand': 'zirkular, falscher Drehsinn',
  linear: 'linear',
  'Axial ratio of the wave': 'Achsenverhältnis der Welle',
  '0 is round. Satellites send about 0.5 to 1.5.':
    '0 ist rund. Satelliten senden etwa 0,5 bis 1,5.',
  'Axial ratio of the antenna': 'Achsenverhältnis der Antenne',
  'From the data sheet of the feed; with a depolarizer plate about 1 to 3.':
    'Aus dem Datenblatt des Feeds; mit einer Depolarisatorplatte etwa 1 bis 3.',
  'Electron content of the path': 'Elektronengehalt des Wegs',
  '10¹⁶/m²': '10¹⁶/m²',
  '1 at night to 100 by day near the equator; more in years of many sunspots.':
    '1 bei Nacht bis 100 bei Tag nahe dem Äquator; mehr in Jahren mit vielen Sonnenflecken.',
  'Magnetic field along the path': 'Magnetfeld entlang des Wegs',
  µT: 'µT',

  // Answers.
  'At most {} dB of the signal; what suffers is the isolation, {} dB at worst.':
    'Höchstens {} dB des Signals; es leidet die Entkopplung, schlimmstenfalls {} dB.',
  'The wrong hand: {} to {} dB are lost, and next to nothing is received.':
    'Der falsche Drehsinn: {} bis {} dB gehen verloren, und es kommt fast nichts an.',
  'A linear antenna loses {} to {} dB, and hears both hands alike: nothing keeps the other polarization away.':
    'Eine lineare Antenne verliert {} bis {} dB und hört beide Drehsinne gleich: nichts hält die andere Polarisation fern.',
  'Loss, at worst': 'Verlust, schlimmstenfalls',
  'at best {} dB': 'bestenfalls {} dB',
  'Isolation from the other hand': 'Entkopplung vom anderen Drehsinn',
  none: 'keine',
  'Isolation, at worst': 'Entkopplung, schlimmstenfalls',
  '{} dB where the leaks add as powers': '{} dB, wenn sich das Übersprechen als Leistung addiert',
  'Isolation of the wave alone': 'Entkopplung der Welle allein',
  'Isolation of the antenna alone': 'Entkopplung der Antenne allein',
  'A linear wave would be turned by': 'Eine lineare Welle würde gedreht um',
  'by the ionosphere; a circular one is not': 'von der Ionosphäre; eine zirkulare nicht',
  'and would lose': 'und verlöre',
  'where the feed is not turned after it': 'wenn das Feed nicht nachgedreht wird',

  // Pictures and table.
  'Loss against the angle between wave and antenna':
    'Verlust über dem Winkel zwischen Welle und Antenne',
  'Angle / °': 'Winkel / °',
  'Loss / dB': 'Verlust / dB',
  loss: 'Verlust',
  'Turn of a linear wave by the ionosphere': 'Drehung einer linearen Welle durch die Ionosphäre',
  'Frequency / GHz': 'Frequenz / GHz',
  'Rotation / °': 'Drehung / °',
  rotation: 'Drehung',
  'From axial ratio to isolation': 'Vom Achsenverhältnis zur Entkopplung',
  'Isolation / dB': 'Entkopplung / dB',
  'the wave alone': 'die Welle allein',
  'the antenna alone': 'die Antenne allein',
  'both, as powers': 'beide, als Leistungen',
  'both, in step': 'beide, gleichphasig',

  // By hand.
  'the axial ratio of the wave as a ratio of fields':
    'das Achsenverhältnis der Welle als Verhältnis der Felder',
  'the field that leaks into the other hand': 'das Feld, das in den anderen Drehsinn übergeht',
  'that of the antenna, the same way': 'das der Antenne, ebenso',
  'both in step: the least isolation': 'beide gleichphasig: die kleinste Entkopplung',
  'the turn of a linear wave falls with the square of the frequency: at 1 GHz it would be':
    'die Drehung einer linearen Welle fällt mit dem Quadrat der Frequenz: bei 1 GHz wären es',

  // Errors.
  'is it in nT?': 'ist der Wert in nT?',
  'is it in MHz?': 'ist der Wert in MHz?',
};

export default pairs;
