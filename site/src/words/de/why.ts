/** German for the first hint of each exercise: why the computation goes as it does, and which way the sign goes. */

import type { Pairs } from '../../lib/language/language.js';

/** By the name of a plan. */
const german: Readonly<Record<string, string>> = {
  azimuth:
    'Der Satellit steht über dem Äquator: Von Norden aus steht er im Süden. Liegt die Orbitposition weiter östlich, wird der Azimut kleiner als 180°, weiter westlich größer.',
  elevation:
    'Je weiter der Standort vom Punkt unter dem Satelliten entfernt ist, desto tiefer steht der Satellit; weil er nah ist, steht er tiefer als ein Stern in derselben Richtung.',
  'slant-range':
    'Die Sichtlinie ist die längste Seite eines rechtwinkligen Dreiecks aus ihrem waagerechten und ihrem senkrechten Teil: Beide werden quadriert, kein Vorzeichen zählt, und sie ist immer länger als 35 786 km.',
  skew: 'Abseits vom Meridian des Satelliten zeigen die Senkrechte des Standorts und die Erdachse in verschiedene Richtungen; von Norden gesehen dreht eine Position im Westen das Feed von hinten gesehen im Uhrzeigersinn (positiv), eine im Osten dagegen.',
  'spherical-elevation':
    'Es zählt nur der Winkel am Erdmittelpunkt: Je größer er ist, desto tiefer steht der Satellit; Erdradius durch Bahnradius zieht ab, was die Nähe des Satelliten kostet.',
  'polar-declination':
    'Die Satelliten sind nah, von Norden aus erscheinen sie also unter der Äquatorebene: Die Keule neigt sich zum Äquator, auf beiden Halbkugeln um denselben Winkel.',
  'obstruction-clearance':
    'Es zählt der Abstand der Oberkante vom Rand der Keule, quer zur Keule: vom Abstand zur Achse einen halben Durchmesser abziehen. Ein Ergebnis unter null sagt, wie viel verdeckt ist.',
  'magnetic-bearing':
    'Östliche Deklination dreht die Nadel nach Osten, der Kompass zeigt also weniger: magnetisch ist rechtweisend minus östliche Deklination.',
  'offset-angle':
    'Der Rand eines Offset-Reflektors ist eine Ellipse, die in Richtung der Keule rund aussieht: Breite durch Höhe ist der Kosinus des Winkels zwischen beiden Ansichten. Je schmaler der Rand im Verhältnis zur Höhe, desto größer der Winkel; ein Vorzeichen hat er nicht.',
  'face-lean':
    'Ein Offset-Reflektor empfängt von höher, als seine Fläche blickt: den Offsetwinkel von der Elevation abziehen. Ein Ergebnis unter null heißt nach vorn geneigt.',
  skyline:
    'Höhe durch waagerechten Abstand ist der Tangens der Elevation; die Höhe zählt ab dem Auge, nicht ab dem Boden. Eine Oberkante unter dem Auge ergibt einen negativen Winkel.',
  'geocentric-latitude':
    'Die Erde ist abgeplattet, der Winkel an ihrem Mittelpunkt also dem Betrag nach überall kleiner als die geodätische Breite, außer am Äquator und an den Polen; das Vorzeichen bleibt, negativ im Süden.',
  beamwidth:
    'Die Keule ist umso schmaler, je mehr Wellenlängen in den Reflektor passen: Eine größere Schüssel oder eine höhere Frequenz macht sie schmaler.',
  'antenna-gain':
    'Der Gewinn wächst mit der Fläche, also mit dem Quadrat von Durchmesser und Frequenz: 20 log. Was die Apertur durch ihren Wirkungsgrad verliert, wird abgezogen.',
  'pointing-loss':
    'Nahe am Maximum fällt die Keule mit dem Quadrat des Fehlers: Eine halbe Halbwertsbreite daneben kostet 3 dB, der doppelte Fehler die vierfachen Dezibel. Zu welcher Seite, ist gleich, und der Verlust ist positiv.',
  'surface-loss':
    'Eine Beule verlängert den Weg zweimal, hin und zurück, ihr Phasenfehler ist also 4 π mal ihre Höhe durch die Wellenlänge; der Verlust wächst mit dessen Quadrat und ist positiv.',
  'far-field':
    'Das Fernfeld beginnt, wo der Weg vom Rand um ein Sechzehntel der Wellenlänge länger ist als der von der Mitte: mit dem Quadrat des Durchmessers.',
  'polarization-mismatch':
    'Empfangen wird nur der Teil des Feldes längs des Feeds, der Kosinus des Fehlers; ein Verlust ist positiv, also steht ein Minus vor dem Logarithmus einer Zahl unter 1.',
  'rain-height':
    'Schnee schmilzt etwas über der Nullgradhöhe: 0,36 km zur Höhe der Nullgradgrenze addieren.',
  'specific-rain-attenuation':
    'Die Dämpfung wächst schneller als die Regenrate, mit einem Exponenten etwas über 1; für zirkulare Polarisation werden beide linearen gemittelt.',
  'rain-attenuation':
    'Spezifische Dämpfung mal das Stück des Wegs, das im Regen liegt. Regen fällt von der Regenhöhe bis zum Standort, also dessen Höhe abziehen; ein starker Schauer ist klein, der Weg wird also verkürzt; ein seltenerer Zeitanteil dämpft mehr.',
  'total-attenuation':
    'Regen und Wolken kommen zusammen und werden addiert; Szintillation kommt für sich und addiert sich in Quadraten; Gase sind immer da und kommen am Ende hinzu. Alle vier sind Verluste, ein Minus gibt es also nicht.',
  'sky-noise':
    'Was absorbiert, strahlt auch: Regen ersetzt den kalten Hintergrund durch seine eigene Wärme, in dem Anteil, den er absorbiert. Mehr Dämpfung macht den Himmel wärmer, höchstens so warm wie den Regen.',
  'free-space-loss':
    'Dieselbe Leistung verteilt sich auf eine Kugel, die mit dem Quadrat der Entfernung wächst: 20 log für Entfernung und Frequenz, alle drei Glieder werden addiert.',
  'noise-temperature':
    'Ein Rauschmaß sagt, um wie viel eine Quelle von 290 K schlechter wird; 0 dB fügt nichts hinzu, also vom Verhältnis eins abziehen. Das Ergebnis ist nie negativ.',
  'system-noise':
    'Ein Verlust vor dem Empfänger tut zweierlei: Er schwächt das Rauschen von der Antenne und fügt eigenes hinzu, weil er warm ist. Alle drei Teile werden dann addiert.',
  'figure-of-merit':
    'Signal gegen Rauschen: Der Gewinn zählt dafür, der Verlust und zehn log der Rauschtemperatur dagegen.',
  'clear-sky-margin':
    'Der Leistung folgen: EIRP minus Verlust plus Gewinn; dann Rauschen, Symbolrate und Schwelle abziehen. Die Boltzmann-Konstante ist in Dezibel negativ: Sie abziehen heißt 228,6 addieren. Was bleibt, ist die Reserve.',
  'symbol-energy':
    'Ein Symbol enthält die Leistung für die Dauer eines Symbols: Je mehr Symbole je Sekunde, desto weniger Energie hat jedes, also zehn log der Rate abziehen.',
  'bit-energy':
    'Die Energie eines Symbols teilt sich auf seine Bits auf: Bei mehr Bits je Symbol hat jedes weniger, also zehn log davon abziehen.',
  'combined-ratio':
    'Beide Rauschanteile addieren sich, es bleibt also weniger als auf der schlechteren Strecke allein: beide Verhältnisse in Rauschen durch Träger verwandeln (Minus im Exponenten), als Leistungen addieren und die Summe wieder umkehren.',
  'signal-over-noise-floor':
    'Angezeigt werden Signal und Rauschen zusammen; das Rauschen als Leistung abziehen. Der Pegel des Signals allein liegt immer etwas unter der Anzeige.',
  'peak-from-two-flanks':
    'Bei gleichen Pegeln liegt das Maximum auf halbem Weg; der höhere Pegel zieht es auf seine Seite: zur zweiten Stellung, wenn sie den höheren Pegel hat.',
  'peak-from-three-readings':
    'Drei Punkte liegen auf einer Parabel: Das Maximum wandert von der Mitte zum höheren Nachbarn, nach oben, wenn der dritte Pegel höher ist als der erste.',
  'loss-from-three-readings':
    'Die Parabel durch drei Messwerte ergibt ihre Breite und wie weit die Mitte von ihrem Scheitel weg ist; der Verlust ist, was die Keule auf diesem Weg fällt. Der Weg wird quadriert, die Seite zählt also nicht.',
  'unequal-bracketing':
    'Ein Abfall wächst mit dem Quadrat des Wegs, die Wege verhalten sich also wie die Wurzeln der Abfälle; das Maximum liegt näher beim Ende mit dem kleineren Abfall.',
  'offset-from-loss':
    'Der Verlust wächst mit dem Quadrat des Fehlers, der Fehler ist also eine Wurzel: Vierfache Dezibel sind der doppelte Fehler. Zu welcher Seite, sagt der Verlust nicht.',
  'null-half-way':
    'Das Minimum ist tief und schmal, aber seine Flanken sind gleich: Zwischen zwei Drehungen mit gleichem Pegel liegt es auf halbem Weg, mit ihren Vorzeichen.',
  'null-isolation':
    'Je feiner die Anzeige und je näher beide Stellungen, desto besser ist das Minimum bekannt; was davon unbekannt ist, kostet Isolation. Der Tangens eines kleinen Winkels ist unter 1, ein Minus macht die Dezibel also positiv.',
  'axis-coupling':
    'Steht die Keule schräg zu den Achsen der Montierung, hängt das Maximum der einen Achse von der Stellung der anderen ab. Jedes weitere Einstellen lässt das Quadrat der Kopplung übrig, ihr Vorzeichen zählt also nicht.',
  'loss-after-both-axes':
    'Nach dem Einstellen der ersten Achse bleibt der Fehler der zweiten, durch die Kopplung etwas kleiner; nach der zweiten bleibt davon das Quadrat der Kopplung.',
  bracketing:
    'Zwischen gleichen Pegeln liegt das Maximum auf halbem Weg, aber das Zurückdrehen beginnt mit Umdrehungen, die nichts bewegen: sie vom Weg abziehen, den Rest halbieren und sie wieder addieren.',
  'cable-loss':
    'Der Skineffekt wächst mit der Wurzel der Frequenz, der Verlust des Dielektrikums mit der Frequenz selbst, also beide addieren; die Summe wächst mit der Länge.',
  'cable-run':
    'Wie bei jedem Kabel, und ein warmer Leiter verliert mehr: um so viele Prozent je Kelvin über 20 °C, und um ebenso viele weniger darunter.',
  'outlet-level': 'Jedes Teil auf dem Weg nimmt Dezibel weg: alle vom Pegel am Anfang abziehen.',
  'outlet-budget': 'Verstärker fügen Dezibel hinzu; alles andere auf dem Weg wird abgezogen.',
  'level-in-dbm':
    'Leistung ist Spannung im Quadrat durch Widerstand: 0 dBµV liegt 90 dB und zehn log von 75 unter einem Milliwatt, dBm ist also immer die kleinere Zahl.',
  'acceptance-limit':
    'Für eine Abnahme mit kleinem Risiko muss der Messwert um das Schutzband besser sein als die Grenze: Bei einem Mindestpegel wird es addiert.',
  'intermediate-frequency':
    'Der Umsetzer verschiebt den Träger um die Frequenz seines Oszillators: die Differenz beider ohne ihr Vorzeichen nehmen, in Megahertz.',
  'energy-from-mer':
    'Das Messgerät fügt einen eigenen Fehler hinzu; ihn als Leistung abziehen. Der wahre Wert ist immer besser als der angezeigte.',
  'wind-moment':
    'Der Druck wächst mit dem Quadrat des Windes; Kraft ist Druck mal Fläche mal Form, und ihr Hebel ist die Höhe.',
  ballast:
    'Die Reibung muss den Wind mit einer Reserve halten: je glatter das Dach, desto schwerer die Montierung; Masse ist Gewicht durch Fallbeschleunigung.',
  'mast-slope':
    'Ein Rohr biegt sich umso weniger, je dicker es ist, mit der vierten Potenz seiner Durchmesser: außen minus innen, und innen ist um die doppelte Wand kleiner.',
  'eirp-density':
    'Watt in Dezibel verwandeln, den Verlust abziehen, den Gewinn addieren; auf die Symbolrate verteilt bleibt in je 40 kHz weniger, also zehn log des Verhältnisses abziehen.',
  'off-axis-density':
    'Neben der Keule hat die Antenne noch Gewinn, mit dem Winkel weniger: 29 minus 25 log davon, addiert zur Dichte am Flansch.',
  'axial-ratio':
    'Eine nicht ganz runde Welle ist eine runde mit einer schwachen des anderen Drehsinns: je runder, desto kleiner die zweite, desto größer die Entkopplung.',
  'ingress-level':
    'Das Feld nimmt mit der Entfernung ab; ein Dipol nimmt daraus umso weniger, je höher die Frequenz; das Schirmmaß von dem abziehen, was der Dipol aufnähme.',
  'instrument-offset':
    'Was von Punkt zu Punkt verschieden ist, hebt sich in den Differenzen auf, erstes minus zweites Gerät; ihre Streuung sagt, wie sicher das Mittel ist, nach beiden Seiten, und drei Differenzen brauchen einen großen Faktor.',
  'sample-of-a-lot':
    'Das Los besteht, wenn in der Stichprobe keine Anlage schlecht ist oder genau eine: beide Wahrscheinlichkeiten addieren sich. Eine kleine Stichprobe lässt viele schlechte Lose durch.',
  'mean-of-three-readings':
    'Ein Mittel aus drei Messwerten ist um die Wurzel aus drei sicherer als einer: durch sie teilen. Was das Messgerät selbst unsicher ist, bleibt, und beides addiert sich in Quadraten, das Ergebnis ist also größer als jedes von beiden.',
  'guard-band':
    'Für eine Abnahme mit kleinem Risiko muss der Messwert um das Schutzband besser sein als die Grenze: Bei einem Mindestpegel wird es addiert.',
  'conformity-probability':
    'Um wie viele Standardunsicherheiten liegt der Messwert über der Grenze? Die Normalverteilung gibt den Anteil darunter; über der Grenze ist er mehr als die Hälfte.',
  'conformity-of-few-readings':
    'Um wie viele Standardunsicherheiten liegt der Messwert über der Grenze? Bei wenigen Messwerten ist die Unsicherheit selbst unsicher, deshalb steht Student-t anstelle der Normalverteilung: Über der Grenze ist der Anteil mehr als die Hälfte, aber näher daran.',
  'two-suspects':
    'Die Chancen vorher, mal wie viel besser die erste Ursache das Gesehene erklärt, sind die Chancen nachher: Ein Verhältnis über eins spricht für die erste. Eine Wahrscheinlichkeit ist die Chance durch eins plus die Chance.',
  'lean-or-mispointed':
    'Wie gut erklärt jede Ursache den Messwert? Die Likelihood des schiefen Masts durch die der Fehlausrichtung, mal die Chancen vorher, ergibt die Chancen nachher: Über eins spricht für den Mast.',
};

/** By `why` and the name of the plan: the English reason is the library's and is not repeated here. */
export const why: Pairs = Object.fromEntries(
  Object.entries(german).map(([plan, text]) => [`why ${plan}`, text]),
);
