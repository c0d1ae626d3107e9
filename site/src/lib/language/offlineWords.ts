/** The words of keeping pages for reading without signal, and of a newer version; other languages have theirs in their frame. */

/** English. `{size}` stands where a size goes. */
export const OFFLINE_ENGLISH = {
  notKept: 'Not kept offline',
  kept: 'Kept offline {size}',
  none: 'Without signal these pages would not open.',
  core: 'The examples, reference and towns open without signal. Not kept: API, validation.',
  all: 'Every page opens without signal.',
  keepCore: 'Keep what a job needs',
  keepAll: 'Keep everything',
  remove: 'Remove',
  cannot: 'This browser cannot keep pages.',
  removed: 'Removed.',
  fetching: 'Fetching …',
  fetchingRest: 'Fetching the rest; this goes on while you read.',
  done: 'Kept.',
  newer: 'A newer version of these pages is here.',
  showIt: 'Show it',
};

export type OfflineWords = Readonly<Record<keyof typeof OFFLINE_ENGLISH, string>>;
