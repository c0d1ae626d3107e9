/** What people type into the search, and the page that must be among the first three. */

type Query = readonly [words: string, page: string];

const at = (page: string, ...queries: readonly string[]): Query[] =>
  queries.map((words) => [words, page]);

export const ENGLISH: readonly Query[] = [
  ...at(
    'examples/where-is-the-satellite',
    'dish pointing',
    'azimut elevation',
    'where to point the dish',
  ),
  ...at(
    'examples/how-far-to-turn-the-feed',
    'LNB rotation',
    'skew',
    'polarisation tilt',
    'twist the LNB',
  ),
  ...at(
    'examples/can-one-reflector-take-them-all',
    'multifeed',
    'two satellites one dish',
    'monoblock',
  ),
  ...at('examples/typed-coordinates', 'degrees minutes seconds', 'GPS coordinates'),
  ...at('examples/north-by-the-sun', 'shadow', 'find north without compass'),
  ...at('examples/is-the-view-clear', 'trees in the way', 'line of sight', 'obstruction'),
  ...at(
    'examples/what-does-a-leaning-mast-do',
    'tripod not level',
    'mast not plumb',
    'crooked pole',
  ),
  ...at('examples/how-is-a-polar-mount-set', 'motor', 'motorised dish', 'polar mount'),
  ...at('examples/half-way-back', 'fine tune', 'peaking', 'peak the dish'),
  ...at('examples/find-the-peak', 'signal strength meter', 'maximum signal'),
  ...at('examples/main-lobe-or-side-lobe', 'sidelobe', 'false peak'),
  ...at('examples/where-is-the-null', 'cross-pol isolation', 'XPD'),
  ...at('examples/when-to-peak-on-a-moving-satellite', 'inclined orbit', 'figure of eight'),
  ...at('examples/how-far-is-safe', 'radiation hazard', 'BUC safety distance', 'exposure'),
  ...at('examples/sun-outages', 'signal drops at noon', 'sun transit', 'sun outage'),
  ...at('examples/how-much-rain-margin', 'rain fade', 'thunderstorm no signal'),
  ...at('examples/what-the-air-takes', 'atmospheric loss', 'water vapour'),
  ...at('examples/does-the-link-close', 'EIRP', 'G/T'),
  ...at('examples/which-reflector', 'antenna too small', 'what size dish', 'dish size'),
  ...at('examples/which-mode-when', 'MODCOD', 'adaptive coding'),
  ...at(
    'examples/do-the-neighbours-disturb',
    'adjacent satellite interference',
    'neighbouring satellite',
  ),
  ...at(
    'examples/levels-at-every-outlet',
    'coax attenuation',
    'multiswitch',
    'splitter loss',
    'signal level wall plate',
  ),
  ...at('examples/what-is-wrong-here', 'no signal', 'troubleshooting', 'low MER', 'pixelation'),
  ...at('examples/accept-or-not', 'measurement uncertainty', 'guard band', 'pass fail'),
];

export const GERMAN: readonly Query[] = [
  ...at('de/examples/where-is-the-satellite', 'Schüssel ausrichten', 'Azimut', 'Elevation'),
  ...at('de/examples/how-far-to-turn-the-feed', 'LNB drehen', 'Skew', 'Polarisation'),
  ...at('de/examples/what-does-a-leaning-mast-do', 'Mast schief', 'Stativ nicht waagrecht', 'Lot'),
  ...at('de/examples/half-way-back', 'Feinausrichtung', 'Maximum'),
  ...at('de/examples/sun-outages', 'Signal weg mittags', 'Sonnenstörung'),
  ...at(
    'de/examples/how-much-rain-margin',
    'Regen Ausfall',
    'Gewitter kein Signal',
    'Verfügbarkeit',
  ),
  ...at('de/examples/which-reflector', 'Schüsselgröße'),
  ...at(
    'de/examples/levels-at-every-outlet',
    'Kabeldämpfung',
    'Multischalter',
    'Verteiler',
    'Antennendose',
  ),
  ...at('de/examples/what-is-wrong-here', 'kein Signal', 'Fehlersuche', 'Klötzchen'),
  ...at('de/examples/is-the-view-clear', 'Baum im Weg', 'Sichtlinie'),
  ...at('de/examples/how-far-is-safe', 'Strahlung Abstand', 'Sicherheitsabstand'),
  ...at('de/examples/how-is-a-polar-mount-set', 'Drehanlage', 'Motor'),
  ...at(
    'de/examples/can-one-reflector-take-them-all',
    'Multifeed',
    'zwei Satelliten eine Schüssel',
  ),
  ...at('de/examples/does-the-link-close', 'Streckenbilanz', 'EIRP'),
  ...at('de/examples/accept-or-not', 'Messunsicherheit', 'Abnahme'),
];
