/** Giving things out of the page: files, the printed sheet, the link. */

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
