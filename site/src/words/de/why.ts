/** German for the first hint of each exercise: why the computation goes as it does, and which way the sign goes. */

import type { Pairs } from '../../lib/language/language.js';

/** By the name of a plan. */
const german: Readonly<Record<string, string>> = {
  azimuth:
    'Der Satellit steht über dem Äquator: Von Norden aus steht er im Süden. Liegt die Orbitposition weiter östlich, wird der Azimut kleiner als 180°, weiter westlich größer.',
  elevation:
    'Je weiter der Standort vom Punkt unter dem Satelliten entfernt ist, desto tiefer steht der Satellit; weil er nah ist, steht er tiefer als ein Stern in derselben Richtung.',
  'slant-range':
    'Die Sichtlinie ist die längste Seite eines rechtwinkligen Dreiecks aus ihrem waagerechten und ihrem senkrechten Teil, also immer länger als 35 786 km.',
  skew: 'Abseits vom Meridian des Satelliten weicht die Senkrechte des Standorts von der Erdachse ab; von Norden gesehen dreht eine Position im Westen das Feed im Uhrzeigersinn, von hinten gesehen.',
  'spherical-elevation':
    'Es zählt nur der Winkel am Erdmittelpunkt: Je größer er ist, desto tiefer steht der Satellit; Erdradius durch Bahnradius zieht ab, was die Nähe des Satelliten kostet.',
  'polar-declination':
    'Die Satelliten sind nah, von Norden aus erscheinen sie also unter der Äquatorebene: Die Keule neigt sich zum Äquator, auf beiden Halbkugeln um denselben Winkel.',
  'obstruction-clearance':
    'Es zählt der Abstand der Oberkante vom Rand der Keule, quer zur Keule; vom Abstand zur Achse geht ein halber Durchmesser ab, und was unter null übrig bleibt, ist verdeckt.',
  'magnetic-bearing':
    'Östliche Deklination dreht die Nadel nach Osten, der Kompass zeigt also weniger: magnetisch ist rechtweisend minus östliche Deklination.',
  'offset-angle':
    'Der Rand eines Offset-Reflektors ist eine Ellipse, die in Richtung der Keule rund aussieht: Breite durch Höhe ist der Kosinus des Winkels zwischen beiden Ansichten.',
  'face-lean':
    'Ein Offset-Reflektor empfängt von höher, als seine Fläche blickt: Von der Elevation geht der Offsetwinkel ab, und was unter null liegt, neigt sich nach vorn.',
  skyline:
    'Höhe durch waagerechten Abstand ist der Tangens der Elevation; es zählt nur, was über dem Auge liegt, nicht über dem Boden.',
  'geocentric-latitude':
    'Die Erde ist abgeplattet, der Winkel an ihrem Mittelpunkt also überall kleiner als die geodätische Breite, außer am Äquator und an den Polen.',
  beamwidth:
    'Die Keule ist umso schmaler, je mehr Wellenlängen in den Reflektor passen: Eine größere Schüssel oder eine höhere Frequenz macht sie schmaler.',
  'antenna-gain':
    'Der Gewinn wächst mit der Fläche, also mit dem Quadrat von Durchmesser und Frequenz: 20 log. Was die Apertur durch ihren Wirkungsgrad verliert, geht ab.',
  'pointing-loss':
    'Nahe am Maximum fällt die Keule mit dem Quadrat des Fehlers: Eine halbe Halbwertsbreite daneben kostet 3 dB, der doppelte Fehler die vierfachen Dezibel.',
  'surface-loss':
    'Eine Beule verlängert den Weg zweimal, hin und zurück, ihr Phasenfehler ist also 4 π durch die Wellenlänge; der Verlust wächst mit seinem Quadrat.',
  'far-field':
    'Das Fernfeld beginnt, wo der Weg vom Rand um ein Sechzehntel der Wellenlänge länger ist als der von der Mitte: mit dem Quadrat des Durchmessers.',
  'polarization-mismatch':
    'Empfangen wird nur der Teil des Feldes längs des Feeds, der Kosinus des Fehlers; ein Verlust ist positiv, also steht ein Minus vor dem Logarithmus einer Zahl unter 1.',
  'rain-height':
    'Schnee schmilzt etwas über der Nullgradhöhe: Der Regen reicht 0,36 km höher als die Nullgradgrenze.',
  'specific-rain-attenuation':
    'Die Dämpfung wächst schneller als die Regenrate, mit einem Exponenten etwas über 1; für zirkulare Polarisation werden beide linearen gemittelt.',
  'rain-attenuation':
    'Ein Kilometer Regen mal dem Stück des Wegs darin; starker Regen ist klein, der Weg wird also verkürzt; ein seltenerer Zeitanteil dämpft mehr.',
  'total-attenuation':
    'Regen und Wolken kommen zusammen und werden addiert; Szintillation kommt für sich und addiert sich in Quadraten; Gase sind immer da und kommen am Ende hinzu.',
  'sky-noise':
    'Was absorbiert, strahlt auch: Regen ersetzt den kalten Hintergrund durch seine eigene Wärme, in dem Anteil, den er absorbiert.',
  'free-space-loss':
    'Dieselbe Leistung verteilt sich auf eine Kugel, die mit dem Quadrat der Entfernung wächst: 20 log für Entfernung und Frequenz, alle drei Glieder werden addiert.',
  'noise-temperature':
    'Ein Rauschmaß sagt, um wie viel eine Quelle von 290 K schlechter wird; 0 dB fügt nichts hinzu, vom Verhältnis geht also eins ab.',
  'system-noise':
    'Ein Verlust vor dem Empfänger tut zweierlei: Er schwächt, was von der Antenne kommt, und fügt eigenes Rauschen hinzu, weil er warm ist.',
  'figure-of-merit':
    'Signal gegen Rauschen: Der Gewinn zählt dafür, der Verlust und zehn log der Rauschtemperatur dagegen.',
  'clear-sky-margin':
    'Der Leistung folgen: EIRP minus Verlust plus Gewinn; dann Rauschen, Symbolrate und Schwelle abziehen. Was bleibt, ist die Reserve.',
  'symbol-energy':
    'Ein Symbol enthält die Leistung für die Dauer eines Symbols: Je mehr Symbole je Sekunde, desto weniger Energie hat jedes, also gehen zehn log der Rate ab.',
  'bit-energy':
    'Die Energie eines Symbols teilt sich auf seine Bits auf: Bei mehr Bits je Symbol hat jedes weniger, also gehen zehn log davon ab.',
  'combined-ratio':
    'Beide Rauschanteile addieren sich, es bleibt also weniger als auf der schlechteren Strecke allein: Rauschen durch Träger als Leistungen addieren, dann die Summe umkehren.',
  'signal-over-noise-floor':
    'Angezeigt werden Signal und Rauschen zusammen; das Rauschen als Leistung abziehen. Der Pegel des Signals allein liegt immer etwas unter der Anzeige.',
  'peak-from-two-flanks':
    'Bei gleichen Pegeln liegt das Maximum auf halbem Weg; der höhere Pegel zieht es auf seine Seite.',
  'peak-from-three-readings':
    'Drei Punkte liegen auf einer Parabel: Das Maximum wandert von der Mitte zum höheren Nachbarn.',
  'loss-from-three-readings':
    'Die Parabel durch drei Messwerte ergibt ihre Breite und wie weit die Mitte von ihrem Scheitel weg ist; der Verlust ist, was die Keule auf diesem Weg fällt.',
  'unequal-bracketing':
    'Ein Abfall wächst mit dem Quadrat des Wegs, die Wege verhalten sich also wie die Wurzeln der Abfälle; das Maximum liegt näher beim Ende mit dem kleineren Abfall.',
  'offset-from-loss':
    'Der Verlust wächst mit dem Quadrat des Fehlers, der Fehler ist also eine Wurzel: Vierfache Dezibel sind der doppelte Fehler.',
  'null-half-way':
    'Das Minimum ist tief und schmal, aber seine Flanken sind gleich: Zwischen zwei Drehungen mit gleichem Pegel liegt es auf halbem Weg, mit ihren Vorzeichen.',
  'null-isolation':
    'Je feiner die Anzeige und je näher beide Stellungen, desto besser ist das Minimum bekannt; was davon unbekannt ist, kostet Isolation.',
  'axis-coupling':
    'Steht die Keule schräg zu den Achsen der Montierung, hängt das Maximum der einen Achse von der Stellung der anderen ab: Der verbleibende Verlust ist das Quadrat der Kopplung.',
  'loss-after-both-axes':
    'Nach dem Einstellen der ersten Achse bleibt der Fehler der zweiten, durch die Kopplung etwas kleiner; nach der zweiten bleibt davon das Quadrat der Kopplung.',
  bracketing:
    'Zwischen gleichen Pegeln liegt das Maximum auf halbem Weg, aber das Zurückdrehen beginnt mit Umdrehungen, die nichts bewegen: Sie gehen vom Weg ab und werden noch einmal gedreht.',
  'cable-loss':
    'Der Skineffekt wächst mit der Wurzel der Frequenz, der Verlust des Dielektrikums mit der Frequenz selbst; beide mit der Länge.',
  'cable-run':
    'Wie bei jedem Kabel, und ein warmer Leiter verliert mehr: um so viele Prozent je Kelvin über 20 Grad Celsius.',
  'outlet-level': 'Jedes Teil auf dem Weg nimmt Dezibel weg: alle vom Pegel am Anfang abziehen.',
  'outlet-budget': 'Verstärker fügen Dezibel hinzu, alles andere auf dem Weg nimmt sie weg.',
  'level-in-dbm':
    'Leistung ist Spannung im Quadrat durch Widerstand: 0 dBµV liegt 90 dB und zehn log von 75 unter einem Milliwatt, dBm ist also immer die kleinere Zahl.',
  'acceptance-limit':
    'Für eine Abnahme mit kleinem Risiko muss der Messwert um das Schutzband besser sein als die Grenze: Bei einem Mindestpegel wird es addiert.',
  'intermediate-frequency':
    'Der Umsetzer versetzt den Träger um die Frequenz seines Oszillators nach unten: die Differenz, in Megahertz.',
  'energy-from-mer':
    'Das Messgerät fügt einen eigenen Fehler hinzu; ihn als Leistung abziehen. Der wahre Wert ist immer besser als der angezeigte.',
  'wind-moment':
    'Der Druck wächst mit dem Quadrat des Windes; Kraft ist Druck mal Fläche mal Form, und ihr Hebel ist die Höhe.',
  ballast:
    'Die Reibung muss den Wind mit einer Reserve halten: je glatter das Dach, desto schwerer die Montierung; Masse ist Gewicht durch Fallbeschleunigung.',
  'mast-slope':
    'Ein Rohr biegt sich umso weniger, je dicker es ist, mit der vierten Potenz seiner Durchmesser: außen minus innen, und die Wand geht zweimal ab.',
  'eirp-density':
    'Watt werden zu Dezibel, der Verlust geht ab, der Gewinn kommt hinzu; auf die Symbolrate verteilt bleibt in je 40 kHz weniger.',
  'off-axis-density':
    'Neben der Keule hat die Antenne noch Gewinn, mit dem Winkel weniger: 29 minus 25 log davon, addiert zur Dichte am Flansch.',
  'axial-ratio':
    'Eine nicht ganz runde Welle ist eine runde mit einer schwachen des anderen Drehsinns: je runder, desto kleiner die zweite, desto größer die Entkopplung.',
  'ingress-level':
    'Das Feld nimmt mit der Entfernung ab; ein Dipol nimmt daraus umso weniger, je höher die Frequenz; das Schirmmaß geht von dem ab, was der Dipol aufnähme.',
  'instrument-offset':
    'Was von Punkt zu Punkt verschieden ist, fällt aus den Differenzen heraus; ihre Streuung sagt, wie sicher das Mittel ist, und drei Differenzen brauchen einen großen Faktor.',
  'sample-of-a-lot':
    'Das Los besteht, wenn in der Stichprobe keine Anlage schlecht ist oder genau eine: beide Wahrscheinlichkeiten addieren sich. Eine kleine Stichprobe lässt viele schlechte Lose durch.',
  'mean-of-three-readings':
    'Ein Mittel aus drei Messwerten ist um die Wurzel aus drei sicherer als einer; was das Messgerät selbst unsicher ist, bleibt, und beides addiert sich in Quadraten.',
  'guard-band':
    'Für eine Abnahme mit kleinem Risiko muss der Messwert um das Schutzband besser sein als die Grenze: Bei einem Mindestpegel wird es addiert.',
  'conformity-probability':
    'Um wie viele Standardunsicherheiten liegt der Messwert über der Grenze? Die Normalverteilung gibt den Anteil darunter; über der Grenze ist er mehr als die Hälfte.',
  'conformity-of-few-readings':
    'Wie mit der Normalverteilung, nur ist bei wenigen Messwerten die Unsicherheit selbst unsicher: Die Student-t-Verteilung hat breitere Ausläufer.',
  'two-suspects':
    'Die Chancen vorher, mal wie viel besser die erste Ursache das Gesehene erklärt, sind die Chancen nachher; eine Wahrscheinlichkeit ist die Chance durch eins plus die Chance.',
  'lean-or-mispointed':
    'Wie gut erklärt jede Ursache den Messwert? Ihr Verhältnis mal die Chancen vorher ergibt die Chancen nachher und daraus die Wahrscheinlichkeit.',
};

/** By `why` and the name of the plan: the English reason is the library's and is not repeated here. */
export const why: Pairs = Object.fromEntries(
  Object.entries(german).map(([plan, text]) => [`why ${plan}`, text]),
);
