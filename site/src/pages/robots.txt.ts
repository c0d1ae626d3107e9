/** All pages may be read by anyone; where the list of them is. */

import type { APIRoute } from 'astro';

export const GET: APIRoute = ({ site }) =>
  new Response(
    `User-agent: *\nAllow: /\n\nSitemap: ${new URL('/sitemap-index.xml', site).href}\n`,
    { headers: { 'content-type': 'text/plain; charset=utf-8' } },
  );
