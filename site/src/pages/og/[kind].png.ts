/** The picture that stands beside a shared link, one for each kind of page; drawn when the site is built. */

import { createRequire } from 'node:module';
import type { APIRoute } from 'astro';
import sharp from 'sharp';
import { escapeHtml } from '../../lib/language/text.js';
import { PAGE_KINDS } from '../../lib/pageHead.js';

const [WIDTH, HEIGHT] = [1200, 630];

/** A face that comes with the site, so that the picture is the same wherever it is built. */
const FACE = createRequire(import.meta.url).resolve('katex/dist/fonts/KaTeX_Main-Bold.ttf');

export const getStaticPaths = () =>
  Object.entries(PAGE_KINDS).map(([kind, title]) => ({ params: { kind }, props: { title } }));

/** A line of text as a picture. */
async function textOf(text: string, width: number, height: number, colour: string) {
  const line = sharp({
    text: {
      text: `<span foreground="${colour}">${escapeHtml(text)}</span>`,
      font: 'KaTeX_Main Bold',
      fontfile: FACE,
      width,
      height,
      rgba: true,
    },
  });
  return line.png().toBuffer();
}

/** The arc over the horizon, a slot on it, and the line of sight to it. */
const DRAWING = `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}">
<rect width="${WIDTH}" height="${HEIGHT}" fill="#fbfaf7"/>
<path d="M60 560H1140" stroke="#3c4247" stroke-width="4"/>
<path d="M120 560C260 300 460 220 640 220s380 80 460 340" fill="none" stroke="#14495c" stroke-width="5"/>
<path d="M250 560L770 236" stroke="#8a9096" stroke-width="4" stroke-dasharray="14 12"/>
<circle cx="770" cy="236" r="16" fill="#b45309"/>
<path d="M226 560l24-44 24 44z" fill="#14495c"/>
</svg>`;

export const GET: APIRoute = async ({ props }) => {
  const [name, title] = await Promise.all([
    textOf('slantpath', 420, 72, '#14171a'),
    textOf(props['title'] as string, 1040, 62, '#3c4247'),
  ]);
  const picture = await sharp(Buffer.from(DRAWING))
    .composite([
      { input: name, left: 70, top: 56 },
      { input: title, left: 70, top: 144 },
    ])
    .png({ palette: true, compressionLevel: 9 })
    .toBuffer();
  return new Response(new Uint8Array(picture), { headers: { 'content-type': 'image/png' } });
};
