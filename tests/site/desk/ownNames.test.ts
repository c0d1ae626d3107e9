/** Names of the job stay on the job page as they were typed, in tables and pictures, though they look like numbers or words. */

import { readFileSync } from 'node:fs';
import { parseJob, recordJob } from 'slantpath/job';
import { expect, test } from 'vitest';
import { newBeside } from '../../../site/src/desk/state/beside.js';
import { takenFrom } from '../../../site/src/desk/state/exchange.js';
import { figuresOf } from '../../../site/src/desk/view/pictures.js';
import { tablesOf } from '../../../site/src/desk/view/tables.js';
import { german } from '../../../site/src/desk/words/de/spoken.js';
import { finderOf, inLanguage } from '../../../site/src/lib/language/language.js';
import { renderFigure, renderTable } from '../../../site/src/lib/render.js';
import common from '../../../site/src/words/de/common.js';

const demo = readFileSync(
  new URL('../../../examples/job/tarnfell-lower-hut.json', import.meta.url),
  'utf8',
);

// Also with the words of the examples: what the page may look up one day.
const languages = [german.language, { ...german.language, find: finderOf(common.pairs) }] as const;

test.each(['north', 'K 1.5'])('a slot and a carrier named %s', (name) => {
  const text = demo
    .replaceAll('"Middle slot"', JSON.stringify(name))
    .replaceAll('"Ku news"', `"${name}"`);
  const taken = takenFrom(text);
  if (taken.kind !== 'job') throw new Error('the demo was not taken');
  const record = recordJob(parseJob(text));
  const desk = { draft: taken.draft, record, beside: newBeside, words: german.words };
  for (const language of languages) {
    const html = (['place', 'plan', 'rain', 'outlets', 'skyline'] as const).map((stage) =>
      inLanguage(language, () =>
        [
          ...tablesOf(stage, desk, german.sheet).map(renderTable),
          ...figuresOf(stage, desk).map((figure) => renderFigure(language.words, figure)),
        ].join(''),
      ),
    );
    expect(html.join('')).not.toMatch(/[\ue000\ue001]/);
    expect(html.filter((each) => each.includes(`>${name}<`)).length).toBeGreaterThanOrEqual(3);
  }
});
