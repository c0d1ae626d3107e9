/** German for `levels-at-every-outlet`. */

import type { Pairs } from '../../lib/language/language.js';

const inputs: Pairs = {
  Parts: 'Teile',
  'One on each line as name: part number, further in than the part that feeds it. Metres of series-6, series-7, series-11 or series-59 cable; dB of connector, attenuator, splitter, outlet; amplifier gain and noise figure; tap value and through loss; equaliser loss at 950 and 2150 MHz. An asterisk before the name hangs it on a tap port.':
    'Je Zeile ein Teil als Name: Art Zahl, weiter eingerückt als das Teil, das es speist. Meter bei Kabel series-6, series-7, series-11 oder series-59; dB bei connector (Stecker), attenuator (Dämpfungsglied), splitter (Verteiler), outlet (Dose); Verstärkung und Rauschmaß bei amplifier (Verstärker); Abzweig- und Durchgangsdämpfung bei tap (Abzweiger); Dämpfung bei 950 und 2150 MHz bei equaliser (Entzerrer). Ein Stern vor dem Namen hängt das Teil an einen Abzweig.',
  'Level at the outdoor unit': 'Pegel an der Außeneinheit',
  'Carrier-to-noise ratio there': 'Träger-Rausch-Abstand dort',
  Frequencies: 'Frequenzen',
  '{} to {} MHz': '{} bis {} MHz',
  'Temperature of the cables': 'Temperatur der Kabel',
  'Lowest level at an outlet': 'Niedrigster Pegel an einer Dose',
  'Highest level at an outlet': 'Höchster Pegel an einer Dose',
  'Supply at the receiver': 'Speisespannung am Empfänger',
  'Current of the outdoor unit': 'Strom der Außeneinheit',
  'Put an amplifier before it all': 'Einen Verstärker vor alles setzen',
  'Take the first part away': 'Das erste Teil entfernen',
  'One more room at the splitter': 'Ein Zimmer mehr am Verteiler',
};

const answers: Pairs = {
  'Every outlet is inside its window; the weakest is {} with {} dB to spare.':
    'Jede Dose liegt in ihrem Fenster; am schwächsten ist {} mit {} dB Reserve.',
  '{} of {} outlets inside the window; the weakest is {}, {} dB too low.':
    '{} von {} Dosen im Fenster; am schwächsten ist {}, {} dB zu niedrig.',
  '{} of {} outlets inside the window; the strongest is {}, {} dB too high.':
    '{} von {} Dosen im Fenster; am stärksten ist {}, {} dB zu hoch.',
  'Outlets inside the window': 'Dosen im Fenster',
  'Lowest level': 'Niedrigster Pegel',
  'at {}': 'bei {}',
  'Steepest slope': 'Steilste Schräglage',
  'at {}, highest less lowest frequency': 'bei {}, höchste minus niedrigste Frequenz',
  'Lowest carrier-to-noise ratio': 'Kleinster Träger-Rausch-Abstand',
  'Lowest isolation': 'Kleinste Entkopplung',
  'Every outlet': 'Jede Antennendose',
  Outlet: 'Dose',
  'Lowest / dBµV': 'Min. / dBµV',
  'Highest / dBµV': 'Max. / dBµV',
  'Slope / dB': 'Schräge / dB',
  Window: 'Fenster',
  inside: 'innen',
  'too low': 'zu niedrig',
  'too high': 'zu hoch',
  'too steep': 'zu steil',
  'Supply of the outdoor unit from each outlet (it needs 16 V for the higher voltage)':
    'Fernspeisung der Außeneinheit von jeder Dose aus (für die höhere Spannung braucht sie 16 V)',
  'Fed from': 'Gespeist von',
  'At the unit / V': 'An der Außeneinheit / V',
  'Current / A': 'Strom / A',
  Enough: 'Genügt',
  'no: too low': 'nein: zu niedrig',
  'no: too much current': 'nein: zu viel Strom',
  'no: a part blocks it': 'nein: ein Teil sperrt',
  'fed from the mains': 'aus dem Netz gespeist',
  'The plot shows the first four outlets; the table has all.':
    'Das Diagramm zeigt die ersten vier Dosen, die Tabelle alle.',
  'Connect and open powered cables only with the receiver off. Amplifiers and switches fed from the mains are for licensed hands, and every system needs its bonding to earth by the local code.':
    'Kabel, die Strom führen, nur bei abgeschaltetem Empfänger anschließen und lösen. Verstärker und Multischalter am Netz gehören in befugte Hände, und jede Anlage braucht ihren Potentialausgleich zur Erde nach den örtlichen Vorschriften.',
};

const pictures: Pairs = {
  'The tree and the level behind each part': 'Der Baum und der Pegel hinter jedem Teil',
  'level / dBµV at {} … {} MHz': 'Pegel / dBµV bei {} … {} MHz',
  'dBµV at {} MHz': 'dBµV bei {} MHz',
  'outdoor unit': 'Außeneinheit',
  '{} m of series {}': '{} m Serie {}',
  'equaliser, {} dB at 950 MHz to {} dB at 2150 MHz':
    'Entzerrer, {} dB bei 950 MHz bis {} dB bei 2150 MHz',
  'tap, {} dB (through {} dB)': 'Abzweiger, {} dB (durch {} dB)',
  'amplifier, {} dB (noise figure {} dB)': 'Verstärker, {} dB (Rauschmaß {} dB)',
  // Cut to their room.
  'equaliser, {} dB{}…': 'Entzerrer, {} dB …',
  'tap, {} dB{}…': 'Abzweiger, {} dB …',
  'amplifier, {} dB{}…': 'Verstärker, {} dB …',
  'splitter, {} dB': 'Verteiler, {} dB',
  'outlet, {} dB': 'Dose, {} dB',
  'connector, {} dB': 'Stecker, {} dB',
  'attenuator, {} dB': 'Dämpfungsglied, {} dB',
  'inside its window': 'im Fenster',
  'too steep for its window': 'zu steil fürs Fenster',
  Part: 'Teil',
  Behind: 'Gespeist von',
  'Level over frequency at the outlets and the window':
    'Pegel an den Dosen über der Frequenz, und das Fenster',
  'Intermediate frequency / MHz': 'Zwischenfrequenz / MHz',
  'Intermediate frequency': 'Zwischenfrequenz',
  'Level / dBµV': 'Pegel / dBµV',
  'lowest {}': 'mindestens {}',
  'highest {}': 'höchstens {}',
};

const errors: Pairs = {
  'lines like "name: part number"': 'Zeilen wie "Name: Art Zahl"',
  'lines with one of series-6, series-7, series-11, series-59, connector, attenuator, equaliser, splitter, tap, amplifier, outlet after the colon':
    'nach dem Doppelpunkt series-6, series-7, series-11, series-59, connector, attenuator, equaliser, splitter, tap, amplifier oder outlet',
  'lines with numbers after the part': 'Zeilen mit Zahlen nach der Art',
  'a name of its own, other than source': 'ein eigener Name, anders als source',
  'source or the name of another part': 'source oder der Name eines anderen Teils',
  'not behind itself': 'ein Platz, der nicht hinter dem Teil selbst liegt',
  'behind a splitter or tap': 'für mehrere Teile ein splitter oder tap davor',
  'followed by another part': 'ein weiteres Teil dahinter',
  'one through part; others {} (tap)': 'nur ein Teil im Durchgang, die anderen am Abzweig von {}',
  'source for exactly one part': 'genau ein Teil an der Quelle',
  'a tree with at least one outlet or receiver': 'ein Baum mit mindestens einer Dose',
  'a name that no other part of the tree has': 'ein Name, den sonst kein Teil trägt',
  'a list of at least one port': 'mindestens ein Ausgang',
  'at most {} parts deep and {} parts in all':
    'ein Baum von höchstens {} Teilen hintereinander und {} Teilen insgesamt',
  'does a part contain itself?': 'enthält ein Teil sich selbst?',
  'window.highestDbuv ({})': 'dem höchsten Pegel ({})',
  'were the ends swapped?': 'sind die Enden vertauscht?',
  'is it given in dBm?': 'eine Angabe in dBm?',
  'is it given in mV?': 'eine Angabe in mV?',
  'is it given in mA?': 'eine Angabe in mA?',
};

const pairs: Pairs = { source: 'Quelle', ...inputs, ...answers, ...pictures, ...errors };
export default pairs;
