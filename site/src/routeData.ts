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

const holdsCurrent = (entry: Entry): boolean =>
  entry.type === 'link' ? entry.isCurrent : entry.entries.some(holdsCurrent);

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

/** API pages are many: only those of the module on show are listed, elsewhere a single link. */
function apiEntries(made: Entry[], pathname: string): Entry[] {
  const overview = link('API overview', '/api/overview/', pathname);
  if (!pathname.startsWith('/api/')) return [overview];
  const modules = made.flatMap((entry) => (entry.type === 'group' ? entry.entries : []));
  return [
    overview,
    ...modules.map((entry) => {
      if (entry.type === 'link' || holdsCurrent(entry)) return entry;
      return link(entry.label, slash(`api/${entry.label}/overview`), pathname);
    }),
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
  entries.push(group('API', apiEntries(route.sidebar, pathname), false));
  route.sidebar = entries;
  const here = hand.findIndex(({ isCurrent }) => isCurrent);
  route.pagination = {
    prev: here > 0 ? hand[here - 1] : undefined,
    next: here >= 0 ? hand[here + 1] : undefined,
  };
});
