/**
 * The words of the pattern itself: everything a worked example says that its definition does not. One record for each
 * language; the page's language chooses. A definition is translated by a file of the same name in
 * `site/src/examples/<language>/`.
 */

const en = {
  place: 'Place',
  ownCoordinates: 'Own coordinates',
  latitude: 'Latitude',
  north: '° north',
  longitude: 'Longitude',
  east: '° east',
  height: 'Height',
  findTown: 'Find a town',
  town: 'Town',
  towns: 'Towns',
  townsOf: 'Towns of 15 000 people and more from',
  townsMissing: 'The list of towns could not be fetched.',
  townHeight: 'The height is that of a coarse map: put in your own where it matters.',
  useMyPosition: 'Use my position',
  noPosition: 'This device gives no position.',
  waitForPosition: 'Waiting for the position of this device…',
  positionFailed: 'The position could not be read.',
  within: 'Within',
  noHeight: 'The device gave no height: put it in.',
  less: 'Less',
  more: 'More',
  row: 'row',
  addRow: 'Add a row',
  removeRow: 'Remove row',
  numbersInPicture: 'Numbers in this picture',
  working: 'The working, line by line',
  noAnswer: 'There is no answer',
  copyLink: 'Copy link',
  copyCode: 'Copy code',
  copyJson: 'Copy JSON',
  copied: 'Copied',
  copyRefused: 'Copying is not allowed here',
  mendFirst: 'Mend the input first',
  stale: 'No answer until the marked field is mended.',
  print: 'Print',
  startOver: 'Start over',
  withoutScript: 'These are the figures for the values shown. To change them, allow JavaScript.',
};

/** The words of one language. */
export type Words = Readonly<typeof en>;

const WORDS: Readonly<Record<string, Words>> = { en };

/** The words of a language such as `de` or `de-AT`; English where there are none. */
export function wordsOf(language: string | undefined): Words {
  return WORDS[language?.split('-')[0] ?? 'en'] ?? en;
}
