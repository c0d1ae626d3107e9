/** German for `how-is-a-two-way-terminal-lined-up`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  'Power of the carrier at the amplifier': 'Leistung des Trägers am Verstärker',
  'EIRP that the operator allows': 'EIRP, die der Betreiber erlaubt',
  'Limit past the satellite': 'Grenze am Satelliten vorbei',
  'ITU-R S.524-9, 14 GHz (from memory)': 'ITU-R S.524-9, 14 GHz (aus dem Gedächtnis)',
  'ITU-R S.524-9, 6 GHz (from memory)': 'ITU-R S.524-9, 6 GHz (aus dem Gedächtnis)',
  'ITU-R S.524-9, 30 GHz (from memory)': 'ITU-R S.524-9, 30 GHz (aus dem Gedächtnis)',
  'ITU-R S.728-1, 14 GHz (from memory)': 'ITU-R S.728-1, 14 GHz (aus dem Gedächtnis)',
  '47 CFR 25.218, 14 GHz along the arc': '47 CFR 25.218, 14 GHz entlang des Bogens',
  '47 CFR 25.138 of 2017, 30 GHz along the arc':
    '47 CFR 25.138 von 2017, 30 GHz entlang des Bogens',
  'Transmit frequency': 'Sendefrequenz',
  'Loss to the antenna': 'Verlust bis zur Antenne',
  'Compression: power in and out': 'Kompression: Leistung hinein und heraus',
  In: 'Hinein',
  Out: 'Heraus',
  'Monitor: carrier in its polarization': 'Kontrolle: Träger in seiner Polarisation',
  'Monitor: carrier in the other polarization': 'Kontrolle: Träger in der anderen Polarisation',
  'Monitor: noise with the carrier off': 'Kontrolle: Rauschen ohne Träger',
  'Fade of the uplink': 'Schwund der Aufwärtsstrecke',
  'Reserve of the amplifier': 'Reserve des Verstärkers',
  'Rise that the operator allows in a fade': 'Anhebung, die der Betreiber im Schwund erlaubt',

  // Answers.
  'Do not transmit, at any level, before the control centre of the operator has said yes. The beam can harm the eyes and the body, most of all between feed and reflector: lock the transmitter out before any hand goes there, close off the area in front, and leave the rest to a licensed practitioner and the local code.':
    'Nicht senden, mit keiner Leistung, bevor das Kontrollzentrum des Betreibers zugestimmt hat. Der Strahl kann Augen und Körper schaden, am meisten zwischen Feed und Reflektor: den Sender gegen Einschalten sichern, bevor eine Hand dorthin kommt, den Bereich davor absperren und den Rest befugten Fachleuten und dem örtlichen Recht überlassen.',
  'Stop: {} dBW is {} dB more than the operator allows.':
    'Halt: {} dBW sind {} dB mehr, als der Betreiber erlaubt.',
  'Stop: past the satellite, at {}°, {} dB too much goes out.':
    'Halt: am Satelliten vorbei gehen bei {}° {} dB zu viel hinaus.',
  'EIRP {} dBW; the pattern says nothing about the angles of this limit.':
    'EIRP {} dBW; das Diagramm sagt nichts über die Winkel dieser Grenze.',
  'EIRP {} dBW, {} dB below what is allowed; past the satellite {} dB are left.':
    'EIRP {} dBW, {} dB unter dem Erlaubten; am Satelliten vorbei bleiben {} dB.',
  EIRP: 'EIRP',
  'Left past the satellite': 'Reserve am Satelliten vorbei',
  'not known': 'unbekannt',
  'least at {}°': 'am kleinsten bei {}°',
  'Gain of the antenna': 'Gewinn der Antenne',
  'efficiency {}': 'Wirkungsgrad {}',
  'EIRP density on the axis': 'EIRP-Dichte auf der Achse',
  'in {} kHz': 'in {} kHz',
  'Compressed by 1 dB at': 'Um 1 dB komprimiert bei',
  'power out; the carrier lies {} dB below': 'heraus; der Träger liegt {} dB darunter',
  'Compression at the last step': 'Kompression beim letzten Schritt',
  'Isolation of the other polarization': 'Entkopplung der anderen Polarisation',
  '± {} dB (k = 2), satellite included': '± {} dB (k = 2), mit dem Satelliten',
  'at least: the leak is lost in the noise': 'mindestens: das Übersprechen geht im Rauschen unter',
  'Fade that power control leaves': 'Schwund, den die Regelung übrig lässt',
  'it makes up for {} dB': 'sie gleicht {} dB aus',
  'This limit was written down from memory: read the document, and what the operator asks for, before you rely on it.':
    'Diese Grenze wurde aus dem Gedächtnis notiert: das Dokument lesen, und was der Betreiber verlangt, bevor man sich darauf verlässt.',

  // Picture and tables.
  'What goes past the satellite, and the limit': 'Was am Satelliten vorbeigeht, und die Grenze',
  'Off the axis / °': 'Neben der Achse / °',
  'EIRP density / dBW': 'EIRP-Dichte / dBW',
  sent: 'gesendet',
  limit: 'Grenze',
  'least margin': 'kleinste Reserve',
  'Levels of the line-up: at each, stop and ask':
    'Stufen des Einpegelns: bei jeder anhalten und fragen',
  Level: 'Stufe',
  'EIRP / dBW': 'EIRP / dBW',
  'Below the full level / dB': 'Unter der vollen Leistung / dB',
  'Order of the work': 'Reihenfolge der Arbeit',
  Step: 'Schritt',
  'Who must have said yes': 'Wer zugestimmt haben muss',
  Radiates: 'Strahlt',
  'owner of the site': 'Eigentümer des Orts',
  'control centre of the operator': 'Kontrollzentrum des Betreibers',
  'transmitter locked out': 'Sender gegen Einschalten gesichert',
  'mount the antenna and bond it': 'Antenne montieren und erden',
  'clear view along the arc': 'freie Sicht entlang des Bogens',
  'peak on the received signal': 'nach dem empfangenen Signal ausrichten',
  'turn the feed by the received signal': 'Feed nach dem empfangenen Signal drehen',
  'close off the area before the antenna': 'Bereich vor der Antenne absperren',
  'ask for access': 'um Zugang bitten',
  'carrier at low power, without modulation': 'Träger mit kleiner Leistung, ohne Modulation',
  'test of the other polarization': 'Test der anderen Polarisation',
  'raise to full power': 'auf volle Leistung anheben',
  'check for compression': 'auf Kompression prüfen',
  'check what goes past the satellite': 'prüfen, was am Satelliten vorbeigeht',
  'carrier off': 'Träger aus',
  'release in writing': 'schriftliche Freigabe',

  // By hand.
  'the leak without the noise': 'das Übersprechen ohne das Rauschen',
  'the isolation of the other polarization': 'die Entkopplung der anderen Polarisation',

  // Errors.
  'is it in watts?': 'ist der Wert in Watt?',
  'is it the level in the other polarization?': 'ist das der Pegel in der anderen Polarisation?',
  'an array of {} to {} pairs': '{} bis {} Paare',
  'above {}, the input of the pair before': 'ein Wert über {}, dem Eingang des Paars davor',
  'an array': 'eine Liste',
};

export default pairs;
