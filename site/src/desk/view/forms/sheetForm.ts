/** The form of the last stage: print, save, send on. */

import { waitingOf } from '../../state/required.js';
import type { Desk } from '../desk.js';
import type { Part } from '../parts.js';

/** Buttons of the sheet. */
export function sheetForm({ record, draft, words }: Desk): readonly Part[] {
  const w = words.sheet;
  const waiting = waitingOf(draft).length;
  if (!record) return [{ kind: 'note', text: w.wait }];
  return [
    {
      kind: 'buttons',
      buttons: [
        { what: 'print', at: 'before', label: w.before },
        { what: 'print', at: 'after', label: w.after },
      ],
    },
    {
      kind: 'buttons',
      buttons: [
        { what: 'save', at: 'job', label: w.file },
        { what: 'save', at: 'record', label: w.record },
        { what: 'link', label: w.link },
      ],
    },
    ...(waiting > 0 ? [{ kind: 'note', text: w.waiting(waiting) } as const] : []),
  ];
}
