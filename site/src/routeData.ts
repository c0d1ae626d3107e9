/** Makes the sidebar and the previous/next links of every page from the folders of `docs/`. */

import { getCollection } from 'astro:content';
import { defineRouteMiddleware, type StarlightRouteData } from '@astrojs/starlight/route-data';
import { GROUPS, STAGES } from './sidebar.js';

type Entry = StarlightRouteData['sidebar'][number];
type Link = Extract<Entry, { type: 'link' }>;

interface Page {
  readonly id: string;
  readonly label: string;
  readonly order: number;
}

const slash = (path: string) => `/${path}/`.replace('//', '/');

function link(label: string, href: string, pathname: string): Link {
  return { type: 'link', label, href, isCurrent: href === pathname, badge: undefined, attrs: {} };
}

function group(label: string, entries: Entry[], collapsed: boolean): Entry {
  return { type: 'group', label, entries, collapsed, badge: undefined };
}

async function pagesOf(folder: string): Promise<Page[]> {
  const entries = await getCollection('docs', ({ id }) => id.startsWith(`${folder}/`));
  return entries
    .map(({ id, data }) => ({
      id,
      label: data.sidebar.label ?? data.title,
      order: data.sidebar.order ?? 999,
    }))
    .sort((a, b) => a.order - b.order || a.label.localeCompare(b.label));
}

/** API pages are many: only the functions of the module on show are listed. */
async function apiEntries(pathname: string): Promise<Entry[]> {
  const overview = link('API overview', '/api/overview/', pathname);
  if (!pathname.startsWith('/api/')) return [overview];
  const pages = (await getCollection('docs', ({ id }) => id.startsWith('api/'))).map(
    ({ id, data }) => ({ path: id.split('/'), id, title: data.title }),
  );
  const modules = pages.filter(({ path }) => path.length === 3 && path[2] === 'overview');
  return [
    overview,
    ...modules
      .map(({ path: [, name = ''], id }) => {
        const own = link(name, slash(id), pathname);
        if (!pathname.startsWith(`/api/${name}/`)) return own;
        const functions = pages
          .filter(({ path }) => path[1] === name && path.length === 4)
          .map((page) => link(page.title, slash(page.id), pathname));
        return group(name, [link('Overview and types', slash(id), pathname), ...functions], false);
      })
      .sort((a, b) => a.label.localeCompare(b.label)),
  ];
}

export const onRequest = defineRouteMiddleware(async ({ locals, url }) => {
  const route = locals.starlightRoute;
  const { pathname } = url;
  const entries: Entry[] = [];
  for (const { folder, label, staged } of GROUPS) {
    const pages = await pagesOf(folder);
    if (pages.length === 0) continue;
    const links = (some: readonly Page[]) =>
      some.map(({ id, label }) => link(label, slash(id), pathname));
    if (!staged) {
      entries.push(group(label, links(pages), false));
      continue;
    }
    const stages = Object.entries(STAGES).map(([stage, name]) => {
      const some = pages.filter(({ order }) => Math.floor(order / 100) === Number(stage));
      return group(name, links(some), false);
    });
    const rest = pages.filter(({ order }) => !(Math.floor(order / 100) in STAGES));
    entries.push(
      group(
        label,
        [
          ...stages.filter((stage) => stage.type === 'group' && stage.entries.length > 0),
          ...links(rest),
        ],
        false,
      ),
    );
  }
  const hand = entries.flatMap(function flat(entry): Link[] {
    return entry.type === 'link' ? [entry] : entry.entries.flatMap(flat);
  });
  // On API pages the hand-written ones are one link to each group, to keep hundreds of pages light.
  const api = pathname.startsWith('/api/');
  const brief = GROUPS.map(({ label, first }) => link(label, first, pathname));
  route.sidebar = [...(api ? brief : entries), group('API', await apiEntries(pathname), false)];
  const here = hand.findIndex(({ isCurrent }) => isCurrent);
  route.pagination = {
    prev: here > 0 ? hand[here - 1] : undefined,
    next: here >= 0 ? hand[here + 1] : undefined,
  };
});
