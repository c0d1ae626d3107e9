/** German for the class: settings, sheet, verdicts, the line to hand in, and the class read back. */

import type { Pairs } from '../../lib/language/language.js';
import { slips } from './slips.js';
import { why } from './why.js';
import working from './working.js';

const inputs: Pairs = {
  Seed: 'Startzahl',
  'The same seed gives everyone the same sheet.':
    'Dieselbe Startzahl ergibt für alle dasselbe Blatt.',
  Exercises: 'Aufgaben',
  Level: 'Stufe',
  'round numbers': 'runde Zahlen',
  'usual numbers': 'übliche Zahlen',
  'numbers as they come': 'Zahlen, wie sie kommen',
  Form: 'Fassung',
  'B: the same kinds with other numbers': 'B: dieselben Arten mit anderen Zahlen',
  'Neighbours get different forms.': 'Nachbarn bekommen verschiedene Fassungen.',
  Kinds: 'Arten',
  'None ticked: all of them.': 'Nichts angekreuzt: alle.',
  'Direction, mount and view': 'Richtung, Montierung und Sicht',
  Antenna: 'Antenne',
  'Rain and noise of the sky': 'Regen und Rauschen des Himmels',
  Link: 'Strecke',
  'Peak, cables and acceptance': 'Maximum, Kabel und Abnahme',
  'Tuning, meters, transmitting and wind': 'Abstimmen, Messgeräte, Senden und Wind',
  'Next sheet': 'Nächstes Blatt',
  'Sheet {} {}: {} exercise with {}. Everyone with its link has the same numbers.':
    'Blatt {} {}: {} Aufgabe, {}. Alle mit dem Link haben dieselben Zahlen.',
  'Sheet {} {}: {} exercises with {}. Everyone with its link has the same numbers.':
    'Blatt {} {}: {} Aufgaben, {}. Alle mit dem Link haben dieselben Zahlen.',
  'Different kinds': 'Verschiedene Arten',
};

const sheet: Pairs = {
  'Copy the learners’ link': 'Link für Lernende kopieren',
  'Copy the link for a test': 'Link für einen Test kopieren',
  'Print the sheet': 'Blatt drucken',
  'Print the key': 'Lösungen drucken',
  'The learners’ link checks answers and gives hints without numbers; the link for a test does neither. Neither shows a key.':
    'Der Link für Lernende prüft Antworten und gibt Hinweise ohne Zahlen, der Link für einen Test nicht. Lösungen zeigt keiner von beiden.',
  'Code of this sheet:': 'Code dieses Blatts:',
  'Code from the foot of a printed sheet': 'Code vom Fuß eines gedruckten Blatts',
  'This is not a code from the foot of a sheet.': 'Das ist kein Code vom Fuß eines Blatts.',
  Open: 'Öffnen',
  'Signs in the CSV file': 'Zeichen in der CSV-Datei',
  'CSV: commas, decimal points': 'CSV: Kommas, Dezimalpunkte',
  'CSV: semicolons, decimal commas': 'CSV: Semikolons, Dezimalkommas',
  'CSV: semicolons, decimal points': 'CSV: Semikolons, Dezimalpunkte',
  'CSV: tabs, decimal points': 'CSV: Tabulatoren, Dezimalpunkte',
  'CSV: tabs, decimal commas': 'CSV: Tabulatoren, Dezimalkommas',
  'Download CSV': 'CSV herunterladen',
  'Download QTI package': 'QTI-Paket herunterladen',
  'Download Moodle XML': 'Moodle-XML herunterladen',
  'Download GIFT': 'GIFT herunterladen',
  'The sheet for the printer': 'Das Blatt für den Drucker',
  '{} of {} right': '{} von {} richtig',
  Copied: 'Kopiert',
  'Copying is not allowed here': 'Kopieren ist hier nicht erlaubt',
  'Answer to a whole number': 'Antwort als ganze Zahl',
  'Answer to {}': 'Antwort auf {}',
  'Answer in {} to a whole number': 'Antwort in {} als ganze Zahl',
  'Answer in {} to {}': 'Antwort in {} auf {}',
  '1 decimal': '1 Nachkommastelle',
  '{} decimals': '{} Nachkommastellen',
  ', exercise {}': ', Aufgabe {}',
  Check: 'Prüfen',
  'The formulas of the round Earth will do.': 'Die Formeln der runden Erde genügen.',
  'Steps before the answer': 'Schritte vor der Antwort',
  'Hint {} of {}': 'Hinweis {} von {}',
  'No more hints': 'Keine Hinweise mehr',
  'The way:': 'Der Weg:',
  ', then ': ', dann ',
  right: 'richtig',
  'right from what stands before it': 'richtig aus dem Schritt davor',
  'not right': 'nicht richtig',
  'the unit is not the one asked for': 'die Einheit ist nicht die verlangte',
  'not a number': 'keine Zahl',
};

const verdicts: Pairs = {
  '✓ Right.': '✓ Richtig.',
  'By the round Earth, which will do here.': 'Mit der runden Erde, die hier genügt.',
  'It shows more than the {} asked for.': 'Sie zeigt mehr als die verlangten {}.',
  '≈ Right for a round Earth, off by {} {} from the ellipsoid asked for.':
    '≈ Richtig für eine runde Erde, um {} {} neben dem verlangten Ellipsoid.',
  'A slip would give this too:': 'Auch ein Fehler ergäbe das:',
  '≈ The number is right, its unit is not: {} was typed, {} asked for.':
    '≈ Die Zahl stimmt, die Einheit nicht: eingegeben {}, verlangt {}.',
  'a plain number': 'eine reine Zahl',
  '≈ Nearly: rounded too early or too far, off by {}. Keep all digits until the end and give {}.':
    '≈ Fast: zu früh oder zu stark gerundet, um {} daneben. Alle Stellen bis zum Ende behalten und {} angeben.',
  '≈ This would be right in {}; asked for was {}.': '≈ In {} wäre das richtig; verlangt ist {}.',
  'Or the right answer, rounded to too few decimals.':
    'Oder die richtige Antwort, auf zu wenige Stellen gerundet.',
  'The unit is not the one asked for either: {}.': 'Auch die Einheit ist nicht die verlangte: {}.',
  '✗ Not right, and no usual slip gives this.':
    '✗ Nicht richtig, und kein üblicher Fehler ergibt das.',
  '✗ Not right. Probably two slips at once:':
    '✗ Nicht richtig. Wahrscheinlich zwei Fehler zugleich:',
  '✗ Not right. The likely slip:': '✗ Nicht richtig. Der wahrscheinliche Fehler:',
  '✗ Not right. One of these slips:': '✗ Nicht richtig. Einer dieser Fehler:',
  '? This is not a number.': '? Das ist keine Zahl.',
  '? There is no answer: {}.': '? Es gibt keine Antwort: {}.',
};

const handIn: Pairs = {
  'Your name': 'Name',
  'To hand in': 'Zum Abgeben',
  'Copy this line': 'Diese Zeile kopieren',
  'Clear the sheet': 'Blatt leeren',
  'Remove everything that was typed on this sheet?':
    'Alles löschen, was auf diesem Blatt eingegeben ist?',
  'The line holds your name and what you typed. It changes with every answer: send it when you have finished.':
    'Die Zeile enthält deinen Namen und deine Eingaben. Sie ändert sich mit jeder Antwort: Schicke sie, wenn du fertig bist.',
  'This device does not keep what you type: send the line before you close the page.':
    'Dieses Gerät behält die Eingaben nicht: Schicke die Zeile, bevor du die Seite schließt.',
  'The sheet needs JavaScript.': 'Das Blatt braucht JavaScript.',
};

const report: Pairs = {
  'Lines that the learners handed in, one below the other':
    'Zeilen, die die Lernenden abgegeben haben, untereinander',
  'Forms A and B of the sheet above are read. Nothing is sent or kept: the lines are gone when you leave the page.':
    'Gelesen werden die Fassungen A und B des Blatts oben. Nichts wird gesendet oder behalten: Beim Verlassen der Seite sind die Zeilen weg.',
  '{} learner read.': '{} Zeile gelesen.',
  '{} learners read.': '{} Zeilen gelesen.',
  'Line {}': 'Zeile {}',
  'there is no code in this line': 'In dieser Zeile steht kein Code',
  'a character of this code is wrong or missing: ask for it again':
    'Ein Zeichen dieses Codes ist falsch oder fehlt: bitte noch einmal schicken lassen',
  'this code is of another sheet': 'Dieser Code gehört zu einem anderen Blatt',
  'a later line of the same name counts': 'Es zählt eine spätere Zeile mit demselben Namen',
  Marks: 'Punkte',
  Name: 'Name',
  All: 'Alle',
  'without a name': 'ohne Namen',
  'by the round Earth': 'mit runder Erde',
  'badly rounded': 'schlecht gerundet',
  'in another unit': 'in anderer Einheit',
  'wrong unit': 'falsche Einheit',
  wrong: 'falsch',
  'no number': 'keine Zahl',
  'no answer': 'keine Antwort',
  empty: 'leer',
  'error carried forward': 'Folgefehler',
  'No.': 'Nr.',
  Exercise: 'Aufgabe',
  Right: 'Richtig',
  Answered: 'Beantwortet',
  'Mean of the marks': 'Mittlere Punkte',
  'Slips, the most frequent first': 'Fehler, der häufigste zuerst',
  'What probably went wrong': 'Was wahrscheinlich schiefging',
  Times: 'Wie oft',
  Who: 'Wer',
};

const pairs: Pairs = {
  // The page's own example has no working: its sheet speaks of plans all the same.
  ...working,
  ...slips,
  ...inputs,
  ...sheet,
  ...verdicts,
  ...handIn,
  ...report,
  ...why,
};
export default pairs;
