/** The course: ten lessons of 45 minutes, each with its pages, exercises and what has to come before. */

/** A sentence in the languages of the course. */
type InWords = Readonly<Record<'en' | 'de', string>>;

/** One lesson. */
export interface Lesson {
  readonly title: InWords;
  /** Numbers of the lessons that come before; empty for none. */
  readonly after: readonly number[];
  /** Pages by their address without the language. */
  readonly pages: readonly string[];
  /** Kinds of exercises, by plan name. */
  readonly plans: readonly string[];
  /** What is done, with its minutes: 45 in all. */
  readonly phases: readonly (readonly [minutes: number, what: InWords])[];
}

const phase = (minutes: number, en: string, de: string) => [minutes, { en, de }] as const;

export const LESSONS: readonly Lesson[] = [
  {
    title: { en: 'Decibels and levels', de: 'Dezibel und Pegel' },
    after: [],
    pages: ['/start/primer/', '/examples/levels-at-every-outlet/'],
    plans: ['outlet-level', 'level-in-dbm', 'outlet-budget'],
    phases: [
      phase(
        5,
        'Ask: two equal noises together, how many decibels more? Collect guesses without comment.',
        'Fragen: Zweimal gleiches Rauschen zusammen, wie viele Dezibel mehr? Schätzungen ohne Kommentar sammeln.',
      ),
      phase(
        15,
        'Read the primer up to “Levels” together; everybody fills in the table of factors by head.',
        'Den Einstieg bis „Pegel“ gemeinsam lesen; alle füllen die Tabelle der Faktoren im Kopf aus.',
      ),
      phase(
        15,
        'Work out the exercises alone. Walk round: look for levels that were added.',
        'Die Aufgaben allein rechnen. Herumgehen und auf addierte Pegel achten.',
      ),
      phase(
        10,
        'Codes are handed in; discuss the most frequent slip on the board.',
        'Codes abgeben; den häufigsten Fehler an der Tafel besprechen.',
      ),
    ],
  },
  {
    title: { en: 'Where the satellite stands', de: 'Wo der Satellit steht' },
    after: [1],
    pages: ['/examples/where-is-the-satellite/', '/examples/typed-coordinates/'],
    plans: ['azimuth', 'elevation', 'slant-range'],
    phases: [
      phase(
        5,
        'Go to the window: everybody points to where the satellite should stand.',
        'Ans Fenster gehen: Alle zeigen dorthin, wo der Satellit stehen soll.',
      ),
      phase(
        10,
        'Enter the coordinates of the school; move the slot and watch azimuth and elevation.',
        'Die Koordinaten der Schule eingeben; die Orbitposition verändern und Azimut und Elevation beobachten.',
      ),
      phase(
        20,
        'Work out the exercises at level 1 with the formulas of the round Earth.',
        'Die Aufgaben auf Stufe 1 mit den Formeln der runden Erde rechnen.',
      ),
      phase(
        10,
        'Compare with the page: how far is the round Earth off, and does it matter for this dish?',
        'Mit der Seite vergleichen: Wie weit liegt die runde Erde daneben, und ist das für diese Schüssel wichtig?',
      ),
    ],
  },
  {
    title: { en: 'Compass and free view', de: 'Kompass und freie Sicht' },
    after: [2],
    pages: ['/examples/north-by-the-sun/', '/examples/is-the-view-clear/'],
    plans: ['magnetic-bearing', 'skyline', 'obstruction-clearance'],
    phases: [
      phase(
        10,
        'Outside, on the ground: read the bearing of one landmark with every compass and compare.',
        'Draußen, am Boden: dieselbe Landmarke mit jedem Kompass anpeilen und vergleichen.',
      ),
      phase(
        10,
        'Convert between true and magnetic north; say the sign of the declination aloud.',
        'Zwischen geografisch und magnetisch Nord umrechnen; das Vorzeichen der Deklination laut sagen.',
      ),
      phase(
        15,
        'Measure a tree or a roof with tape and inclinometer and work out the clearance.',
        'Einen Baum oder ein Dach mit Maßband und Neigungsmesser vermessen und den freien Himmel ausrechnen.',
      ),
      phase(
        10,
        'Exercises and codes. No one looks into the Sun; no one climbs.',
        'Aufgaben und Codes. Niemand blickt in die Sonne, niemand klettert.',
      ),
    ],
  },
  {
    title: { en: 'The dish and its lobe', de: 'Die Schüssel und ihre Keule' },
    after: [1, 2],
    pages: ['/examples/which-reflector/', '/examples/how-is-a-polar-mount-set/'],
    plans: ['beamwidth', 'antenna-gain', 'pointing-loss', 'offset-angle', 'face-lean'],
    phases: [
      phase(
        5,
        'Ask: a dish of twice the diameter, how many decibels more, and how much narrower is the lobe?',
        'Fragen: doppelter Durchmesser, wie viele Dezibel mehr, und um wie viel wird die Keule schmaler?',
      ),
      phase(
        15,
        'Measure a real offset dish: height, width, and from them the offset angle.',
        'Eine echte Offset-Schüssel messen: Höhe, Breite und daraus den Offsetwinkel.',
      ),
      phase(
        15,
        'Exercises in pairs; one computes, the other checks the unit of every line.',
        'Aufgaben zu zweit; einer rechnet, der andere prüft die Einheit jeder Zeile.',
      ),
      phase(
        10,
        'Codes; then say in one sentence why a larger dish is harder to aim.',
        'Codes; dann in einem Satz sagen, warum eine größere Schüssel schwerer auszurichten ist.',
      ),
    ],
  },
  {
    title: { en: 'Skew and polarization', de: 'Skew und Polarisation' },
    after: [2, 4],
    pages: ['/examples/how-far-to-turn-the-feed/', '/examples/where-is-the-null/'],
    plans: ['skew', 'polarization-mismatch', 'null-half-way'],
    phases: [
      phase(
        10,
        'Stand behind a dish, facing where it looks: turn an LNB clockwise and say the sign.',
        'Hinter einer Schüssel stehen und in ihre Richtung blicken: ein LNB im Uhrzeigersinn drehen und das Vorzeichen sagen.',
      ),
      phase(
        10,
        'Find the skew of the school for three slots on the page; one of them west of south.',
        'Auf der Seite den Skew der Schule für drei Orbitpositionen suchen; eine davon westlich von Süd.',
      ),
      phase(
        15,
        'Exercises: the null from two rotations of equal level, and what a wrong turn costs.',
        'Aufgaben: das Minimum aus zwei Drehungen mit gleichem Pegel, und was falsches Drehen kostet.',
      ),
      phase(
        10,
        'Codes; discuss why the null is sharper than the peak.',
        'Codes; besprechen, warum das Minimum schärfer ist als das Maximum.',
      ),
    ],
  },
  {
    title: { en: 'Finding the peak', de: 'Das Maximum finden' },
    after: [4],
    pages: [
      '/examples/half-way-back/',
      '/examples/find-the-peak/',
      '/examples/main-lobe-or-side-lobe/',
    ],
    plans: ['bracketing', 'unequal-bracketing', 'peak-from-three-readings', 'offset-from-loss'],
    phases: [
      phase(
        5,
        'Ask: the meter shows the same level at two places. Where is the peak?',
        'Fragen: Das Messgerät zeigt an zwei Stellen denselben Pegel. Wo ist das Maximum?',
      ),
      phase(
        15,
        'Practise on the page with backlash: turn past, turn back, half way. Count the turns aloud.',
        'Auf der Seite mit Spiel üben: darüber hinaus drehen, zurück, halber Weg. Die Umdrehungen laut zählen.',
      ),
      phase(
        15,
        'Exercises; level 3 for those who are quick.',
        'Aufgaben; Stufe 3 für die Schnellen.',
      ),
      phase(
        10,
        'Codes; name the ways to tell a side lobe from the main lobe.',
        'Codes; nennen, woran man eine Nebenkeule von der Hauptkeule unterscheidet.',
      ),
    ],
  },
  {
    title: { en: 'Noise and the link budget', de: 'Rauschen und Streckenbilanz' },
    after: [1, 4],
    pages: ['/examples/does-the-link-close/', '/examples/what-the-air-takes/'],
    plans: [
      'free-space-loss',
      'noise-temperature',
      'system-noise',
      'figure-of-merit',
      'clear-sky-margin',
    ],
    phases: [
      phase(
        5,
        'Put the lines of a budget on cards; the class lays them in the order of the signal.',
        'Die Zeilen einer Streckenbilanz auf Karten; die Klasse legt sie in der Reihenfolge des Signals.',
      ),
      phase(
        15,
        'Go through the page line by line; for each line: added or subtracted, and why.',
        'Die Seite Zeile für Zeile durchgehen; zu jeder: addiert oder abgezogen, und warum.',
      ),
      phase(
        15,
        'Exercises alone, with the fields for the steps.',
        'Aufgaben allein, mit den Feldern für die Schritte.',
      ),
      phase(
        10,
        'Codes; show one sheet with an error carried forward and count its marks together.',
        'Codes; ein Blatt mit Folgefehler zeigen und seine Punkte gemeinsam zählen.',
      ),
    ],
  },
  {
    title: { en: 'Rain', de: 'Regen' },
    after: [7],
    pages: ['/examples/how-much-rain-margin/', '/examples/which-mode-when/'],
    plans: ['rain-height', 'specific-rain-attenuation', 'rain-attenuation', 'sky-noise'],
    phases: [
      phase(
        5,
        'Ask: 0.01 % of a year, how many minutes is that?',
        'Fragen: 0,01 % eines Jahres, wie viele Minuten sind das?',
      ),
      phase(
        15,
        'Compare two places on the page, one in the tropics; find what changes most.',
        'Auf der Seite zwei Orte vergleichen, einen in den Tropen; suchen, was sich am meisten ändert.',
      ),
      phase(
        15,
        'Exercises; the long one in groups of three, one step each.',
        'Aufgaben; die lange zu dritt, jeder einen Schritt.',
      ),
      phase(
        10,
        'Codes; decide for one customer: larger dish or a more robust mode?',
        'Codes; für einen Kunden entscheiden: größere Schüssel oder robusterer Modus?',
      ),
    ],
  },
  {
    title: { en: 'Cables, multiswitches and outlets', de: 'Kabel, Multischalter und Dosen' },
    after: [1],
    pages: [
      '/examples/which-frequency-do-i-tune/',
      '/examples/levels-at-every-outlet/',
      '/examples/how-do-several-receivers-share-one-cable/',
    ],
    plans: ['cable-loss', 'cable-run', 'outlet-budget', 'intermediate-frequency'],
    phases: [
      phase(
        5,
        'Ask: which outlet of the house is the worst, the farthest one or the one behind the most parts?',
        'Fragen: Welche Dose im Haus ist die schlechteste, die fernste oder die hinter den meisten Teilen?',
      ),
      phase(
        15,
        'Enter a real house on the page and change one part at a time.',
        'Auf der Seite ein echtes Haus eingeben und immer nur ein Teil ändern.',
      ),
      phase(
        15,
        'Exercises; every learner names the frequency at which a cable loses most.',
        'Aufgaben; alle nennen die Frequenz, bei der ein Kabel am meisten verliert.',
      ),
      phase(
        10,
        'Codes. Remind the class: open powered cables only with the receiver off.',
        'Codes. Daran erinnern: stromführende Kabel nur bei abgeschaltetem Empfänger öffnen.',
      ),
    ],
  },
  {
    title: { en: 'Measuring, accepting, finding faults', de: 'Messen, Abnahme, Fehlersuche' },
    after: [6, 7, 9],
    pages: [
      '/examples/accept-or-not/',
      '/examples/what-is-wrong-here/',
      '/examples/what-does-the-meter-really-say/',
    ],
    plans: ['mean-of-three-readings', 'guard-band', 'energy-from-mer', 'two-suspects'],
    phases: [
      phase(
        10,
        'Everybody reads the same meter; write all readings on the board and find the spread.',
        'Alle lesen dasselbe Messgerät ab; alle Werte an die Tafel und die Streuung bestimmen.',
      ),
      phase(
        10,
        'Conforms, does not conform, undecided: sort five readings together.',
        'Konform, nicht konform, unentschieden: fünf Messwerte gemeinsam einordnen.',
      ),
      phase(
        15,
        'Exercises; then one prepared fault on the page, in teams.',
        'Aufgaben; dann ein vorbereiteter Fehlerfall auf der Seite, in Gruppen.',
      ),
      phase(
        10,
        'Codes; each team says which measurement it would take next, and why.',
        'Codes; jede Gruppe sagt, was sie als Nächstes messen würde und warum.',
      ),
    ],
  },
];
