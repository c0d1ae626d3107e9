/** An example that was opened from a job: a way to take its inputs back there. */

import { FROM_JOB, RETURNING } from '../desk/state/fromJob.js';

/** The words of the job page that stand here, in the language of this one. */
const frameOf = async (german: boolean) =>
  german
    ? (await import('../desk/words/de/frame.js')).frame
    : (await import('../desk/words/en/frame.js')).frame;

async function offerReturn(example: HTMLElement): Promise<void> {
  const name = example.dataset['example'] ?? '';
  const row = example.querySelector('.ex-share');
  if (!row || !RETURNING.includes(name)) return;
  const german = document.documentElement.lang.startsWith('de');
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = (await frameOf(german)).takeInto;
  button.addEventListener('click', () => {
    // The address has the inputs a moment after the last one was changed.
    window.setTimeout(() => {
      const query = new URLSearchParams(location.search);
      query.set('from', name);
      query.set('of', location.hash.slice(FROM_JOB.length + 1));
      location.assign(`${german ? '/de' : ''}/start/one-job/?${query}`);
    }, 350);
  });
  row.prepend(button);
}

if (location.hash.startsWith(FROM_JOB))
  for (const example of document.querySelectorAll<HTMLElement>('worked-example'))
    void offerReturn(example);
