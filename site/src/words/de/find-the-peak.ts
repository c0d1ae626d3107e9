/** German for `find-the-peak`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'On a real mast, secure yourself and the tools first and keep clear of power lines. A transmitting antenna radiates while it is peaked: keep everyone out of the beam and let licensed staff do what is theirs.':
    'An einem wirklichen Mast zuerst sich selbst und das Werkzeug sichern und Abstand zu Stromleitungen halten. Eine Sendeantenne strahlt, während sie eingestellt wird: niemanden in den Strahl lassen, und was Befugten vorbehalten ist, den Befugten überlassen.',
  // Inputs.
  Bench: 'Übungsstand',
  'Each number hides another peak.': 'Jede Nummer verbirgt ein anderes Maximum.',
  Meter: 'Messgerät',
  'tenths, flicker 0.1 dB': 'Zehntel, Flackern 0,1 dB',
  'half dB, flicker 0.3 dB': 'halbe dB, Flackern 0,3 dB',
  'whole dB, flicker 0.5 dB': 'ganze dB, Flackern 0,5 dB',
  'The adjuster stands at': 'Die Stellschraube steht bei',
  turns: 'Umdr.',
  'Turn it here, or with the buttons.': 'Hier drehen, oder mit den Knöpfen.',
  Notes: 'Notizen',
  Turns: 'Umdrehungen',
  'Tell me the next move': 'Den nächsten Schritt ansagen',
  'I stand on the peak: show the lobe': 'Am Maximum angekommen: die Keule zeigen',
  'The wanted pointing loss is 0.1 dB.': 'Verlangt ist ein Ausrichtverlust von höchstens 0,1 dB.',
  'Note this level': 'Diesen Pegel notieren',
  'One turn up': 'Eine Umdrehung mehr',
  'One turn down': 'Eine Umdrehung weniger',
  'Make the next move': 'Nächsten Schritt ausführen',
  'Next bench': 'Nächster Stand',

  // Before the lobe is shown.
  'The level flickers about {} dBm at {} turns. Note it or turn on; show the lobe when you stand on the peak.':
    'Bei {2} Umdrehungen flackert der Pegel um {1} dBm herum. Notieren oder weiterdrehen; die Keule zeigen lassen, wenn das Maximum erreicht ist.',
  'Level now': 'Pegel jetzt',
  Beamwidth: 'Halbwertsbreite',
  'given; the noise floor is −56 dBm': 'bekannt; der Rauschpegel ist −56 dBm',
  'The head of the adjuster, and the level with its last four values':
    'Der Kopf der Stellschraube und der Pegel mit seinen letzten vier Werten',
  Reads: 'Anzeige',
  'The steps by hand come with the lobe: before it is shown they would tell where the peak is.':
    'Die Schritte von Hand kommen mit der Keule: Bevor sie gezeigt wird, verrieten sie, wo das Maximum liegt.',
  'adjuster / turns': 'Stellschraube / Umdrehungen',
  'level now / dBm': 'Pegel jetzt / dBm',
  'level {} before / dBm': 'Pegel {} zuvor / dBm',
  '{} turns': '{} Umdrehungen',

  // The next move.
  'Next move: {}.': 'Nächster Schritt: {}.',
  'note the level where the adjuster stands': 'den Pegel notieren, wo die Stellschraube steht',
  'turn to {} turns and note the level': 'auf {} Umdrehungen drehen und den Pegel notieren',
  'turn to {} turns: that is the peak, with at most {} dB lost':
    'auf {} Umdrehungen drehen: dort ist das Maximum, mit höchstens {} dB Verlust',
  'nothing more: the adjuster stands on the peak':
    'keiner mehr: die Stellschraube steht am Maximum',
  'stop ({}): begin again, or take the next bench':
    'aufhören ({}); von vorn beginnen oder den nächsten Stand nehmen',
  'the thread ends': 'das Gewinde ist zu Ende',
  'too many notes': 'zu viele Notizen',

  // After it.
  'You stand {} turns from the peak: the lobe is under the noise there.':
    'Man steht {} Umdrehungen neben dem Maximum: die Keule liegt dort unter dem Rauschen.',
  'You stand {} turns from the peak and lose {} dB: within the 0.1 dB wanted.':
    'Man steht {} Umdrehungen neben dem Maximum und verliert {} dB: nicht mehr als die erlaubten 0,1 dB.',
  'You stand {} turns from the peak and lose {} dB: over the 0.1 dB wanted.':
    'Man steht {} Umdrehungen neben dem Maximum und verliert {} dB: mehr als die erlaubten 0,1 dB.',
  'Loss where you stand': 'Verlust an dieser Stelle',
  'over 18': 'über 18',
  'True peak': 'Wahres Maximum',
  'Peak by the fit': 'Maximum nach der Anpassung',
  '{} ({} to {})': '{} ({} bis {})',
  anywhere: 'irgendwo',
  'the notes do not tell': 'die Notizen sagen es nicht',
  '95 %, known width': '95 %, bekannte Breite',
  '95 % not assured: too few notes': '95 % nicht gesichert: zu wenige Notizen',
  'The true lobe, your notes, and the interval of the fit':
    'Die wahre Keule, die Notizen und das Intervall der Anpassung',
  'Adjuster / turns': 'Stellschraube / Umdrehungen',
  'Level / dBm': 'Pegel / dBm',
  'true lobe': 'wahre Keule',
  'your notes': 'Notizen',
  you: 'hier',
  'What each method makes of your notes': 'Was jedes Verfahren aus den Notizen macht',
  Method: 'Verfahren',
  'Peak / turns': 'Maximum / Umdr.',
  'Loss there / dB': 'Verlust dort / dB',
  'the highest reading': 'der höchste Messwert',
  'half way between the outermost notes': 'die Mitte zwischen den äußersten Notizen',
  'a lobe of free width': 'eine Keule freier Breite',
  'a lobe of the known width': 'eine Keule der bekannten Breite',
  'no answer': 'keine Antwort',
  'beyond the notes': 'außerhalb der Notizen',
  'no lobe seen': 'keine Keule zu sehen',
  'another lobe': 'eine andere Keule',
  'too few notes': 'zu wenige Notizen',
  'notes disagree': 'Notizen widersprechen sich',
};

export default pairs;
