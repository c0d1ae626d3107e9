/**
 * Words of the trade that a page does not use but its readers type. They are found by the search and shown nowhere.
 * Also how heavy a page weighs there: an example answers a question, an API page names a function.
 */

import { ENGLISH } from './english.js';
import { GERMAN } from './german.js';

const ALL = 'LNB LNBF dish sat antenna align alignment installer';

/** A page is found only if it has every word that was typed: words that say nothing must not hide the one that answers. */
const FILLERS = {
  en: 'a an the my our your this that it is are was be does do can could should will how what where which why when who to of in on at by for from with without and or not no too very more less bad good wrong right problem problems issue help check checking test testing measure measuring reading readings meter set setup setting settings get getting find finding calculate calculator calculation tool app work works working broken new old after before during install installing installation technician engineer satellite satellites tv receiver box dish antenna level low high best',
  de: 'der die das den dem des ein eine einen einem einer mein meine unser ist sind war wird werden wie was wo welche welcher warum wann wer zu zum zur von vom in im an am auf bei mit ohne für und oder nicht kein keine zu sehr mehr weniger schlecht gut falsch richtig Problem Probleme Hilfe prüfen testen messen Messwert Messwerte Messgerät einstellen einstellung finden suchen berechnen Rechner umrechnen Rechnung App geht funktioniert kaputt neu alt nach vor während montieren Montage Techniker Satellit Satelliten Sat TV Fernsehen Receiver Schüssel Antenne Spiegel Pegel hoch niedrig',
} as const;

const KEYWORDS = { ...ENGLISH, ...GERMAN };

const isExample = (id: string) => /^(\w\w\/)?examples\//.test(id);
/** Pages that answer a question of the work. */
const answers = (id: string) => isExample(id) || /^(\w\w\/)?start\/one-job$/.test(id);

/** Words for a page. */
export const wordsFor = (id: string): string =>
  isExample(id) ? `${KEYWORDS[id] ?? ''} ${ALL}` : (KEYWORDS[id] ?? '');

/** Words that hide no page from a question put in a sentence. */
export const fillersFor = (id: string): string =>
  answers(id) ? FILLERS[id.startsWith('de/') ? 'de' : 'en'] : '';

/** Weight of a page in the search. */
export const weightOf = (id: string): string =>
  isExample(id) ? '5' : id.startsWith('api/') ? '0.1' : id.startsWith('validation') ? '0.2' : '2';
