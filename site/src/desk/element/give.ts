/** Giving things out of the page: files, the printed sheet, the link. */

import type { Draft } from '../state/draft.js';
import { fragmentOf } from '../state/link.js';
import type { DeskWords } from '../words/words.js';

/** Copies a link that holds the job, where it is small enough; says what came of it. */
export async function copyJobLink(job: Draft, words: DeskWords['sheet']): Promise<string> {
  const fragment = await fragmentOf(job).catch(() => null);
  if (fragment === null) return words.noLink;
  if (fragment === undefined) return words.tooLong;
  const address = `${location.origin}${location.pathname}${fragment}`;
  return navigator.clipboard.writeText(address).then(
    () => words.copied,
    () => words.copyRefused,
  );
}

/** Offers a text as a file. */
export function saveFile(name: string, text: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken the text by then.
  window.setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** Prints a document from a frame that is not shown, so that the page itself stays as it is. */
export function printDocument(html: string, title: string): void {
  document.querySelector('iframe.desk-print')?.remove();
  const frame = document.createElement('iframe');
  frame.className = 'desk-print';
  frame.title = title;
  frame.srcdoc = html;
  frame.addEventListener('load', () => {
    frame.contentWindow?.focus();
    frame.contentWindow?.print();
  });
  document.body.append(frame);
}
