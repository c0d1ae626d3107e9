/** The published JSON Schemas of `docs/schemas/`, as they are. */

import type { APIRoute } from 'astro';

const schemas = import.meta.glob<string>('../../../../docs/schemas/*.json', {
  eager: true,
  query: '?raw',
  import: 'default',
});
const nameOf = (path: string) =>
  path
    .split('/')
    .at(-1)
    ?.replace(/\.json$/, '') ?? '';

export function getStaticPaths() {
  return Object.entries(schemas).map(([path, text]) => ({
    params: { name: nameOf(path) },
    props: { text },
  }));
}

export const GET: APIRoute<{ text: string }> = ({ props }) =>
  new Response(props.text, { headers: { 'content-type': 'application/schema+json' } });
