/**
 * What stands around the pages of a language other than English: `site/src/words/<code>/frame.ts`. Its pages lie in
 * `docs/<code>/`; only worked examples are translated, so the site has no second copy of everything else.
 */

import type { OfflineWords } from './offlineWords.js';

/** The words around the pages of a language. */
export interface Frame {
  /** The language in itself, for the link to it. */
  readonly name: string;
  /** Title of the worked examples, of the page that lists them, and of the link to the English pages. */
  readonly group: string;
  readonly list: string;
  /** Title of the reference. */
  readonly reference: string;
  readonly rest: string;
  readonly stages: Readonly<Record<number, string>>;
  /** Starlight's own words by their keys. */
  readonly interface: Readonly<Record<string, string>>;
  readonly offline: OfflineWords;
}

const frames = import.meta.glob<Frame>('../../words/*/frame.ts', {
  eager: true,
  import: 'default',
});

/** The frames by the code of their language. */
export const FRAMES: ReadonlyMap<string, Frame> = new Map(
  Object.entries(frames).map(([path, frame]) => [path.split('/').at(-2) ?? '', frame]),
);

/** The language of a page by its id or address; `en` where its first folder is not a language. */
export function codeOf(path: string): string {
  const first = path.replace(/^\//, '').split('/')[0] ?? '';
  return FRAMES.has(first) ? first : 'en';
}

/** The id of the same page in English. */
export const englishId = (id: string): string =>
  codeOf(id) === 'en' ? id : id.replace(/^[^/]+\/?/, '');
