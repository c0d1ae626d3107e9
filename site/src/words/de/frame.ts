/** German: what stands around the pages. Used when the site is built. */

import type { Frame } from '../../lib/language/frame.js';

const frame: Frame = {
  name: 'Deutsch',
  group: 'Durchgerechnete Beispiele',
  list: 'Alle Beispiele',
  reference: 'Nachschlagen',
  rest: 'Alles Übrige (Englisch)',
  stages: {
    1: 'Vor der Fahrt',
    2: 'Auf dem Dach',
    3: 'Luft und Strecke',
    4: 'Hinter der Antenne',
    5: 'Zum Schluss',
    6: 'Im Unterricht',
  },
  interface: {
    'skipLink.label': 'Zum Inhalt',
    'search.label': 'Suche',
    'search.ctrlKey': 'Strg',
    'search.cancelLabel': 'Abbrechen',
    'themeSelect.accessibleLabel': 'Hell oder dunkel',
    'themeSelect.dark': 'Dunkel',
    'themeSelect.light': 'Hell',
    'themeSelect.auto': 'Auto',
    'menuButton.accessibleLabel': 'Menü',
    'sidebarNav.accessibleLabel': 'Seiten',
    'tableOfContents.onThisPage': 'Auf dieser Seite',
    'tableOfContents.overview': 'Anfang',
    'page.previousLink': 'Zurück',
    'page.nextLink': 'Weiter',
  },
  offline: {
    notKept: 'Ohne Netz nicht da',
    kept: 'Ohne Netz da {size}',
    none: 'Ohne Empfang gehen diese Seiten nicht auf.',
    core: 'Beispiele, Nachschlagen und Orte gehen ohne Empfang auf. Nicht gespeichert: API, Prüfwerte.',
    all: 'Alle Seiten gehen ohne Empfang auf.',
    keepCore: 'Speichern, was ein Auftrag braucht',
    keepAll: 'Alles speichern',
    remove: 'Löschen',
    cannot: 'Dieser Browser kann keine Seiten speichern.',
    removed: 'Gelöscht.',
    fetching: 'Wird geladen …',
    fetchingRest: 'Der Rest wird nebenbei geladen.',
    done: 'Gespeichert.',
    newer: 'Eine neuere Fassung dieser Seiten ist da.',
    showIt: 'Anzeigen',
  },
};

export default frame;
