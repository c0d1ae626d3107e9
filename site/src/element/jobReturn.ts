/** An example that was opened from a job: a way to take its inputs back there. */

import { FROM_JOB, RETURNING } from '../desk/state/fromJob.js';

if (location.hash === FROM_JOB)
  for (const example of document.querySelectorAll<HTMLElement>('worked-example')) {
    const name = example.dataset['example'] ?? '';
    const row = example.querySelector('.ex-share');
    if (!row || !RETURNING.includes(name)) continue;
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = 'Take into the job';
    button.addEventListener('click', () => {
      // The address has the inputs a moment after the last one was changed.
      window.setTimeout(() => {
        const query = new URLSearchParams(location.search);
        query.set('from', name);
        location.assign(`/start/one-job/?${query}`);
      }, 350);
    });
    row.prepend(button);
  }
