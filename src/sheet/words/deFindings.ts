/** German words for findings and for what to do about them. */

import type { CodeWords } from './codes.js';

/** German words for findings and actions. */
export const deFindings: Pick<CodeWords, 'findings' | 'actions'> = {
  findings: {
    'slot-below-horizon': { says: 'die Position steht unter dem Horizont', amount: 'Elevation' },
    'view-blocked': { says: 'etwas steht in der Keule', amount: 'frei am Rand' },
    'view-doubtful': {
      says: 'frei oder nicht, im Rahmen der Unsicherheit von Kompass und Neigungsmesser',
      amount: 'frei am Rand, ungünstigster Fall',
    },
    'view-distance-needed': {
      says: 'nur frei, wenn das Gepeilte weit genug weg steht',
      amount: 'weiter als',
    },
    'view-not-sighted': { says: 'die Horizontlinie ist in dieser Richtung nicht bekannt' },
    'compass-not-usable': {
      says: 'auf einen Kompass ist hier kein Verlass',
      amount: 'Unsicherheit der Missweisung',
    },
    'declination-outside-dates': { says: 'der Tag liegt außerhalb des Magnetfeldmodells' },
    'mount-not-given': { says: 'Halterung oder Reflektor sind nicht angegeben' },
    'slots-too-far-apart': {
      says: 'die Positionen stehen für einen Reflektor zu weit auseinander',
    },
    'feeds-collide': { says: 'zwei Feeds brauchen denselben Platz', amount: 'Überlappung' },
    'loss-beyond-model': {
      says: 'der Verlust liegt jenseits dessen, wofür das Modell gilt',
      amount: 'Verlust',
      limit: 'gilt bis',
    },
    'motor-does-not-reach': {
      says: 'der Motor erreicht die Position nicht',
      amount: 'es fehlen',
    },
    'mount-error-too-large': {
      says: 'der eigene Fehler der Halterung kostet zu viel',
      amount: 'Verlust',
      limit: 'erlaubt',
    },
    'no-unit-for-carrier': { says: 'keine Empfangseinheit passt zu diesem Träger' },
    'no-line-for-carrier': { says: 'keine Leitung bringt diesen Träger zu einer Dose' },
    'intermediate-frequency-wrong': {
      says: 'die Frequenz auf dem Kabel ist nicht die errechnete',
      amount: 'angegeben',
      limit: 'errechnet',
    },
    'intermediate-frequency-outside': {
      says: 'die Frequenz auf dem Kabel liegt, wo kein Empfänger sie nimmt',
      amount: 'Frequenz',
      limit: 'Ende des Bereichs',
    },
    'carrier-outside-receiver': {
      says: 'der Träger liegt außerhalb dessen, was die Empfänger nehmen',
      amount: 'bei',
      limit: 'sie enden bei',
    },
    'carrier-cut-off-by-receiver': {
      says: 'ein Teil des Trägers liegt außerhalb dessen, was die Empfänger nehmen',
      amount: 'bei',
      limit: 'sie enden bei',
    },
    'image-conflict': {
      says: 'ein anderer Träger der Antenne kommt als Spiegel an derselben Stelle des Kabels heraus',
      amount: 'gemeinsam',
    },
    'mobile-band-on-cable': {
      says: 'auf der Frequenz, die dieser Träger auf dem Kabel hat, senden womöglich Telefone oder Masten',
      amount: 'gemeinsam',
    },
    'mobile-band-in-beam': {
      says: 'auf der Frequenz dieses Trägers selbst senden womöglich Telefone oder Masten',
      amount: 'gemeinsam',
    },
    'user-bands-collide': {
      says: 'zwei Empfänger stören einander: ihre Teilnehmerbänder überlappen oder sind eines',
      amount: 'gemeinsam',
    },
    'user-band-outside-receiver': {
      says: 'das Teilnehmerband liegt außerhalb dessen, was die Empfänger nehmen',
      amount: 'um',
    },
    'receiver-without-user-band': { says: 'der Empfänger hat kein Teilnehmerband' },
    'carriers-collide-on-cable': {
      says: 'zwei Träger brauchen dieselbe Stelle auf dem Kabel',
      amount: 'gemeinsam',
    },
    'terrestrial-level-outside-limit': {
      says: 'terrestrische Signale außerhalb ihrer Grenzwerte',
      amount: 'geplant',
      limit: 'Grenzwert',
    },
    'input-leaks': {
      says: 'ein anderer Eingang des Schalters spricht in den Träger über',
      amount: 'darüber',
      limit: 'der Modus braucht',
    },
    'oscillator-beyond-lock-range': {
      says: 'der Lokaloszillator kann weiter daneben liegen, als die Empfänger einen Träger suchen',
      amount: 'daneben um bis zu',
      limit: 'sie suchen',
    },
    'pointing-loss': {
      says: 'Verlust durch Ausrichtung auf dieser Achse',
      amount: 'Verlust',
      limit: 'Ziel',
    },
    'pointing-loss-together': {
      says: 'Verlust durch Ausrichtung, beide Achsen zusammen',
      amount: 'Verlust',
      limit: 'Ziel',
    },
    'peak-not-found': { says: 'die Messpunkte zeigen kein Maximum' },
    'not-main-lobe': {
      says: 'das ist nicht die Hauptkeule',
      amount: 'Breite',
      limit: 'Hauptkeule nach Theorie',
    },
    'peak-not-assured': {
      says: 'zu wenige Stellen abgelesen, oder nicht auf beiden Flanken, um sich auf diesen Verlust zu verlassen',
      amount: 'Verlust höchstens',
      limit: 'Ziel',
    },
    'main-lobe-not-proven': {
      says: 'die Messpunkte unterscheiden Haupt- und Nebenkeule nicht',
      amount: 'Breite',
      limit: 'Hauptkeule nach Theorie',
    },
    'axis-not-peaked': { says: 'diese Achse wurde nicht auf Maximum gestellt' },
    'feed-turned-off': {
      says: 'das Feed blieb verdreht stehen',
      amount: 'daneben um',
      limit: 'erlaubt',
    },
    'polarization-not-proven': {
      says: 'die Polarisation ist durch keine Entkopplung belegt',
    },
    'reading-outside-limit': {
      says: 'außerhalb des Grenzwerts',
      amount: 'abgelesen',
      limit: 'Grenzwert',
    },
    'reading-undecided': {
      says: 'zu nah am Grenzwert für eine Entscheidung',
      amount: 'Wahrscheinlichkeit, dass es passt',
      limit: 'verlangt',
    },
    'reading-in-rain': {
      says: 'außerhalb des Grenzwerts, aber bei Regen oder Schnee abgelesen',
      amount: 'abgelesen',
      limit: 'Grenzwert',
    },
    'reading-below-plan': { says: 'unter dem Plan', amount: 'Abweichung' },
    'reading-above-plan': { says: 'über dem Plan', amount: 'Abweichung' },
    'readings-all-off-plan': {
      says: 'alle Messwerte weichen um etwa dasselbe vom Plan ab',
      amount: 'im Mittel',
    },
    'reading-without-limit': { says: 'für das Abgelesene ist kein Grenzwert gesetzt' },
    'reading-above-ceiling': {
      says: 'das Messgerät zeigt mehr, als es nach seiner eigenen Angabe kann',
      amount: 'gelesen',
    },
    'reading-missing': { says: 'nicht abgelesen' },
    'no-cause-fits': {
      says: 'keine einzelne bekannte Ursache passt: mehrere Fehler, oder einer, der nicht in der Liste steht',
    },
    'changed-since-last-visit': {
      says: 'die Messwerte haben sich seit dem vorigen Besuch geändert',
      amount: 'Änderung im Mittel',
    },
    'promise-missed': {
      says: 'der Plan hält die Zusage nicht ein',
      amount: 'Ausfall',
      limit: 'zugesagt',
    },
    'promise-doubtful': {
      says: 'der Plan hält die Zusage nicht sicher genug ein',
      amount: 'Wahrscheinlichkeit',
      limit: 'gewünscht',
    },
    'planned-level-outside-limit': {
      says: 'der geplante Pegel liegt außerhalb der Grenzwerte',
      amount: 'geplant',
      limit: 'Grenzwert',
    },
    'planned-ratio-below-limit': {
      says: 'das geplante Verhältnis liegt unter seinem Grenzwert',
      amount: 'geplant',
      limit: 'Grenzwert',
    },
    'amplifier-overdriven': { says: 'der Verstärker ist übersteuert', amount: 'zu viel' },
    'supply-too-low': { says: 'es kommt zu wenig Spannung an', amount: 'angekommen' },
    'supply-too-much-current': {
      says: 'mehr Strom, als die Fernspeisung liefern kann',
      amount: 'entnommen',
    },
    'supply-blocked': { says: 'ein Teil lässt die Fernspeisung nicht durch' },
    'supply-misread': {
      says: 'die ankommende Spannung bedeutet die andere Polarisation oder keine',
      amount: 'angekommen',
    },
    'receiver-level-too-low': {
      says: 'der Empfänger bekommt weniger als seinen niedrigsten Pegel',
      amount: 'geplant',
      limit: 'niedrigster',
    },
    'receiver-level-too-high': {
      says: 'der Empfänger bekommt mehr als seinen höchsten Pegel',
      amount: 'geplant',
      limit: 'höchster',
    },
    'transmit-mask-exceeded': {
      says: 'die Maske neben der Achse ist überschritten',
      amount: 'um',
    },
    'transmit-eirp-too-high': {
      says: 'mehr EIRP, als das Netz erlaubt',
      amount: 'EIRP',
      limit: 'höchstens',
    },
    'transmit-eirp-too-low': {
      says: 'weniger EIRP, als das Netz verlangt',
      amount: 'EIRP',
      limit: 'mindestens',
    },
    'transmit-back-off-too-small': {
      says: 'der Verstärker läuft zu nah an der Sättigung',
      amount: 'Abstand',
      limit: 'mindestens',
    },
    'transmit-test-missing': {
      says: 'die Entkopplung des Gesendeten wurde nicht abgelesen',
    },
    'field-not-given': { says: 'nicht angegeben, darum ist dieser Teil nicht beurteilt' },
    'outside-stated-range': {
      says: 'außerhalb des Bereichs, den eine Empfehlung nennt',
    },
    'transmit-drive-wrong': {
      says: 'Ansteuerung und Verstärkung geben eine andere Leistung als geplant',
      amount: 'sie geben',
      limit: 'geplant',
    },
    'transmit-compressed': {
      says: 'über der gemessenen Kompression von 1 dB geplant',
      amount: 'geplant',
      limit: 'komprimiert bei',
    },
    'transmit-mask-not-judged': {
      says: 'die Maske ist nicht beurteilt: Symbolrate oder Diagramm sagen bei ihren Winkeln nichts',
    },
    'uplink-fade-left': {
      says: 'die Leistungsregelung gleicht den Schwund der Aufwärtsstrecke nicht aus',
      amount: 'bleibt',
    },
    'cross-polar-near-noise': {
      says: 'das Übersprechen hebt sich nicht aus dem Rauschen, nur eine kleinste Entkopplung ist bekannt',
      amount: 'mindestens',
      limit: 'Grenzwert',
    },
    'wind-costs-pointing': {
      says: 'bei der gefragten Windgeschwindigkeit biegt sich der Mast zu weit',
      amount: 'Verlust',
      limit: 'erlaubt',
    },
    'wind-load-for-engineer': {
      says: 'Last und Moment des Windes sind genannt; ob Halterung, Mast, Wand und Dach sie tragen, beurteilt eine Tragwerksplanerin oder ein Tragwerksplaner',
    },
    'wind-outside-stated-range': {
      says: 'außerhalb dessen, wofür die Beiwerte gelten, darum ist keine Last genannt',
    },
  },
  actions: {
    none: '',
    'choose-another-slot': 'Eine andere Position wählen.',
    'choose-another-place': 'Einen anderen Ort wählen oder die Sicht freimachen.',
    'sight-the-horizon': 'Dort die Horizontlinie peilen.',
    'sight-again': 'Noch einmal und genauer peilen.',
    'measure-the-distance': 'Messen, wie weit weg es steht.',
    'use-the-sun': 'Nord am Schatten der Sonne nehmen.',
    'give-the-field': 'In der Auftragsdatei angeben.',
    'use-another-mount': 'Eine andere Halterung oder einen anderen Reflektor nehmen.',
    'move-the-feeds': 'Kleinere Feeds nehmen oder eine Schiene, die sie auseinanderhält.',
    'use-another-unit': 'Eine andere Empfangseinheit nehmen.',
    'correct-the-frequency': 'Die Frequenz berichtigen.',
    'give-the-receivers-range': 'Nachsehen, was die Empfänger abstimmen, und es angeben.',
    'give-another-user-band': 'Jedem Empfänger ein eigenes Teilnehmerband geben.',
    'screen-the-cable':
      'Gut geschirmtes Kabel (Klasse A oder besser) und feste Stecker nehmen; ist der Träger schwach, sein Spektrum ansehen, während nahebei telefoniert wird.',
    'look-at-the-spectrum':
      'Das Spektrum am LNB ansehen, bevor der Halter feststeht; ein Filter vor dem LNB hält den Mast ab.',
    'put-a-filter': 'Ein Filter vor die Einheit setzen, oder eine nehmen, die den Spiegel abweist.',
    'change-the-distribution': 'Die Verteilung ändern.',
    'peak-again': 'Noch einmal auf Maximum stellen.',
    'find-the-main-lobe': 'Die Hauptkeule suchen: zu beiden Seiten über die nächsten Keulen gehen.',
    'peak-the-axis': 'Diese Achse auf Maximum stellen.',
    'turn-the-feed': 'Den Feed auf seinen Wert drehen.',
    'read-it': 'Ablesen.',
    'read-again': 'Noch einmal ablesen, oder mit einem besseren Messgerät.',
    'find-the-cause': 'Die Ursache suchen.',
    'check-instrument-and-carrier': 'Prüfen, ob das Messgerät stimmt und welchen Träger es liest.',
    'larger-reflector': 'Einen größeren Reflektor oder einen robusteren Modus nehmen.',
    'lower-the-gain': 'Davor die Verstärkung senken.',
    'raise-the-supply': 'Die Fernspeisung erhöhen oder das Kabel kürzen.',
    'reduce-the-power': 'Die Leistung senken.',
    'raise-the-power': 'Die Leistung erhöhen.',
    'set-a-limit': 'Einen Grenzwert setzen.',
    'raise-the-test-carrier':
      'Die Leitstelle um einen stärkeren Testträger oder eine schmalere Bandbreite bitten und noch einmal ablesen.',
    'ask-an-engineer': 'Die Tragwerksplanung fragen.',
    'use-a-stiffer-mast': 'Einen steiferen oder kürzeren Mast nehmen, oder ihn abspannen.',
  },
};
