/** German for `what-did-a-hundred-records-teach`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  // Inputs.
  Records: 'Aufzeichnungen',
  'One on each line: latitude; longitude; level read less level planned in dB. Offsets of units and meters taken off before.':
    'Eine je Zeile: Breite; Länge; abgelesener minus geplanter Pegel in dB. Versätze von LNB und Messgeräten vorher abgezogen.',
  'The next installation': 'Die nächste Anlage',
  'Installations in the lot': 'Anlagen im Los',
  'Share of bad ones that is acceptable': 'Annehmbarer Anteil schlechter Anlagen',
  '{} %': '{} %',
  'Bad ones found in the sample': 'Schlechte in der Stichprobe',
  'Standard uncertainty of one record': 'Standardunsicherheit einer Aufzeichnung',
  'Visits to one site': 'Besuche an einem Ort',
  Day: 'Tag',
  'Loss before it is peaked again': 'Verlust bis zum neuen Ausrichten',

  // Answers.
  'Nobody has read near there: {} ± {} dB is the mean of the region, and no more.':
    'Dort in der Nähe hat niemand abgelesen: {} ± {} dB ist der Mittelwert der Region, mehr nicht.',
  'At the next installation, add {} ± {} dB to the planned EIRP.':
    'Am nächsten Standort zur geplanten EIRP {} ± {} dB hinzuzählen.',
  'Correction of the EIRP there': 'Korrektur der EIRP dort',
  '± {} dB (k = 2); the nearest record lies {} km away':
    '± {} dB (k = 2); die nächste Aufzeichnung liegt {} km entfernt',
  'To look at': 'Anzusehen',
  'drawn by chance; accepted with {} bad ones or fewer':
    'zufällig gezogen; angenommen bei höchstens {} schlechten',
  'Mean of the region': 'Mittelwert der Region',
  'Scatter over the region': 'Streuung in der Region',
  'standard deviation': 'Standardabweichung',
  'Alike over': 'Ähnlich über',
  'Change at the site': 'Änderung am Ort',
  'a year, ± {} dB (95 %)': 'je Jahr, ± {} dB (95 %)',
  'a year, which can be chance: ± {} dB (95 %)': 'je Jahr, kann Zufall sein: ± {} dB (95 %)',
  'To be peaked again in': 'Neu auszurichten in',
  years: 'Jahren',
  'Bad ones in the lot': 'Schlechte im Los',
  '{} to {} % (95 %)': '{} bis {} % (95 %)',
  '{} records in {} places.': '{} Aufzeichnungen an {} Orten.',
  'More bad ones than the plan accepts: the lot is not accepted.':
    'Mehr schlechte, als der Plan zulässt: das Los wird nicht angenommen.',
  'No more bad ones than the plan accepts: the lot is accepted.':
    'Nicht mehr schlechte, als der Plan zulässt: das Los wird angenommen.',

  // Pictures and table.
  'Correction along the parallel of the next installation, with what was read':
    'Korrektur entlang des Breitenkreises der nächsten Anlage, mit dem Abgelesenen',
  'Longitude / °': 'Länge / °',
  'Read less planned / dB': 'Abgelesen minus geplant / dB',
  correction: 'Korrektur',
  'with twice its uncertainty': 'mit doppelter Unsicherheit',
  'records of all latitudes': 'Aufzeichnungen aller Breiten',
  'Correction / dB': 'Korrektur / dB',
  'Standard uncertainty / dB': 'Standardunsicherheit / dB',
  'Operating characteristic of the sampling plan': 'Operationscharakteristik des Stichprobenplans',
  'Bad ones in the lot / %': 'Schlechte im Los / %',
  'Probability of acceptance / %': 'Annahmewahrscheinlichkeit / %',
  accepted: 'angenommen',
  'What the plan lets through': 'Was der Plan durchlässt',
  'Accepted with probability / %': 'Angenommen mit Wahrscheinlichkeit / %',

  // By hand.
  'the plain mean of all records': 'der einfache Mittelwert aller Aufzeichnungen',
  'the share of bad ones in the sample': 'der Anteil schlechter in der Stichprobe',
  'years from the first visit until the allowed loss is used up':
    'Jahre vom ersten Besuch, bis der erlaubte Verlust verbraucht ist',

  // Errors.
  'an array of {} to {} readings': '{} bis {} Aufzeichnungen',
  'an array of {} to {} visits': '{} bis {} Besuche',
  'an array': 'eine Liste',
  'a whole number from {} to {}': 'eine ganze Zahl von {} bis {}',
  'visits at different times': 'Besuche zu verschiedenen Zeiten',
};

export default pairs;
