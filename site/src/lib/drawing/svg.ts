/** Small builders of SVG text. */

import { said } from '../language/language.js';
import { escapeHtml } from '../language/text.js';

/** Coordinates with a tenth of a unit: enough for the eye, short for the page. */
export const at = (value: number): string => String(Math.round(value * 10) / 10 + 0);

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element; attributes that are undefined are left out. */
export function tag(name: string, of: Attributes, inner = ''): string {
  const attributes = Object.entries(of)
    .filter(([, value]) => value !== undefined)
    .map(
      ([key, value]) =>
        ` ${key}="${typeof value === 'number' ? at(value) : escapeHtml(value ?? '')}"`,
    )
    .join('');
  return inner === '' ? `<${name}${attributes}/>` : `<${name}${attributes}>${inner}</${name}>`;
}

/** A label. `anchor` is where the text lies from its point. */
export function label(
  x: number,
  y: number,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  kind = 'tick',
): string {
  return tag('text', { x, y, 'text-anchor': anchor, class: kind }, escapeHtml(said(text)));
}

/** Path data through some points; a gap where a coordinate is not finite. */
export function through(points: readonly (readonly [number, number])[]): string {
  let pen = 'M';
  let data = '';
  for (const [x, y] of points) {
    if (!Number.isFinite(x) || !Number.isFinite(y)) {
      pen = 'M';
      continue;
    }
    data += `${pen}${at(x)} ${at(y)}`;
    pen = 'L';
  }
  return data;
}

/** The complete picture: one image to assistive software, named by `title`. */
export function picture(width: number, height: number, title: string, inner: string): string {
  return `<svg class="draw" viewBox="0 0 ${width} ${height}" role="img" aria-label="${escapeHtml(said(title))}">${inner}</svg>`;
}
