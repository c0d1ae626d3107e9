/** What stands around the forms, in German. */

import { allowedGerman, slipGerman } from './allowed.js';

export const frame = {
  code: 'de',
  choose: 'wählen',
  remove: (what: string) => `${what} entfernen`,
  plus: (what: string) => `+ ${what}`,
  inside: (noun: string) => noun,
  same: 'Wie darüber',
  more: 'Mehr',
  next: (title: string) => `Weiter: ${title}`,
  computing: 'Wird berechnet …',
  notYet: 'Noch lässt sich nichts berechnen.',
  stale: 'Ein markiertes Feld ist nicht lesbar; was darunter steht, ist von vorher.',
  nothingFound: 'Hier fehlt nichts, und nichts liegt außerhalb dessen, was verlangt ist.',
  goTo: (title: string) => `Zu ${title}`,
  noScript:
    'Ein Auftrag wird auf dem eigenen Gerät berechnet und gesichert: diese Seite braucht JavaScript. Die durchgerechneten Beispiele sind auch ohne lesbar.',
  caution: 'Vorsicht',
  goOn: (title: string) => `Weiter: ${title}`,
  allDone: 'Alle Abschnitte sind fertig.',
  stages: {
    place: 'Ort und Positionen',
    mount: 'Halterung und Feeds',
    skyline: 'Sicht',
    plan: 'Frequenzplan',
    rain: 'Regen und Zusage',
    outlets: 'Kabel und Dosen',
    peak: 'Ausrichten',
    readings: 'Messwerte',
    verdict: 'Urteil',
    sheet: 'Blatt',
  },
  states: {
    done: 'fertig',
    missing: 'fehlt',
    undecided: 'unentschieden',
    'does-not-conform': 'nicht konform',
    'cannot-be-read': 'nicht lesbar',
    'not-begun': 'offen',
  },
  groups: {
    'does-not-conform': 'Nicht konform',
    undecided: 'Unentschieden',
    incomplete: 'Fehlt',
    note: 'Gut zu wissen',
  },
  /** What a stage sends the hand to do, where that can hurt. */
  cautions: {
    mount:
      'Zu zweit, angeseilt, Werkzeug gesichert. Keine Stromleitung in Reichweite von Mast, Leiter oder dem, was fallen kann. Potentialausgleich und Blitzschutz nach den örtlichen Vorschriften.',
    skyline: 'Nie an der Antenne entlang oder durch irgendein Glas zur Sonne blicken.',
    peak: 'Angeseilt, auch das Werkzeug? Eine Sendeanlage strahlt, während sie ausgerichtet wird: niemand darf in den Strahl, auch nicht zwischen Feed und Reflektor.',
    outlets:
      'Die Speisung der Einheit abschalten, bevor ein Stecker geöffnet wird. Teile am Netz sind Sache von Fachkräften mit Zulassung. In Häusern mit fremden Kabeln kann an Schirmen fremde Spannung stehen.',
  },
  fault: (allowed: string, slip: string) =>
    `Muss ${allowedGerman(allowed)} sein.${slip ? ` ${slipGerman(slip)}` : ''}`,
  notANumber: 'Das ist keine Zahl.',
  nameTaken: (name: string) => `Schon etwas anderes heißt ${name}; dieses behält seinen Namen.`,
  nameEmpty: 'Es braucht einen Namen; es behält den, den es hatte.',
  lacks: (field: string) => `${field} fehlt; bis dahin zählt diese Zeile nicht.`,
  lacksPlace: 'Eintragen, wo die Antenne steht: Breite und Länge.',
  lacksSlot: 'Eine Position mit ihrer Länge anfügen.',
  demos: {
    'tarnfell-lower-hut': 'Tarnfell-Hütten',
    'riverine-clinic': 'Flusskliniken',
    'station-school': 'Schule am Posten',
  },
  examplesTitle: 'Dasselbe in einem durchgerechneten Beispiel',
  examplesNote:
    'Es öffnet sich mit den Werten dieses Auftrags. Wo der Knopf „In den Auftrag übernehmen“ steht, bringt er das Ergebnis zurück.',
  examples: {
    'where-is-the-satellite': 'Wo steht der Satellit?',
    'how-far-to-turn-the-feed': 'Wie weit den Feed drehen?',
    'north-by-the-sun': 'Nord mit der Sonne',
    'is-the-view-clear': 'Ist die Sicht frei?',
    'how-much-rain-margin': 'Wie viel Regenreserve?',
    'half-way-back': 'Auf halbem Weg zurück',
    'sun-outages': 'Sonnenstörungen',
  } as Readonly<Record<string, string>>,
  takeInto: 'In den Auftrag übernehmen',
  notTaken: 'Nichts wurde übernommen: zuerst einen Besuch und eine Achse beginnen.',
  takenOver: (name: string) => `Übernommen aus: ${name}.`,
};
