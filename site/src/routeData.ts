/** Makes the sidebar and the previous/next links of every page from the folders of `docs/`. */

import { getCollection } from 'astro:content';
import { defineRouteMiddleware, type StarlightRouteData } from '@astrojs/starlight/route-data';
import { codeOf, englishId, FRAMES, type Frame } from './lib/language/frame.js';
import { firstParagraph, PAGE_KINDS, pageKind } from './lib/pageHead.js';
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

/** Pages by the stage of the job that the hundreds of their order say; then the rest. */
function staged(
  pages: readonly Page[],
  stages: Readonly<Record<number, string>>,
  links: (some: readonly Page[]) => Link[],
): Entry[] {
  const stageOf = ({ order }: Page) => Math.floor(order / 100);
  return [
    ...Object.entries(stages)
      .map(([stage, name]) => ({
        name,
        some: pages.filter((page) => stageOf(page) === Number(stage)),
      }))
      .filter(({ some }) => some.length > 0)
      .map(({ name, some }) => group(name, links(some), false)),
    ...links(pages.filter((page) => !(stageOf(page) in stages))),
  ];
}

/** The hand-written pages in English. */
async function englishEntries(pathname: string): Promise<Entry[]> {
  const entries: Entry[] = [];
  for (const { folder, label, staged: inStages } of GROUPS) {
    const pages = await pagesOf(folder);
    if (pages.length === 0) continue;
    const links = (some: readonly Page[]) =>
      some.map(({ id, label }) => link(label, slash(id), pathname));
    entries.push(group(label, inStages ? staged(pages, STAGES, links) : links(pages), false));
  }
  return entries;
}

/** The pages to begin with, the worked examples and the reference in another language. */
async function translatedEntries(pathname: string, code: string, frame: Frame): Promise<Entry[]> {
  const links = (some: readonly Page[]) =>
    some.map(({ id, label }) => link(label, slash(id), pathname));
  const pages = await pagesOf(`${code}/examples`);
  const reference = links(await pagesOf(`${code}/reference`));
  return [
    link(frame.list, `/${code}/`, pathname),
    ...links(await pagesOf(`${code}/start`)),
    group(frame.group, staged(pages, frame.stages, links), false),
    ...(reference.length > 0 ? [group(frame.reference, reference, false)] : []),
    { ...link(frame.rest, '/', pathname), attrs: { hreflang: 'en' } },
  ];
}

/** Tells search engines and browsers where a page stands in other languages. */
async function alternates(id: string, site: URL): Promise<StarlightRouteData['head']> {
  const english = englishId(id);
  const ids = new Set((await getCollection('docs')).map((entry) => entry.id));
  const all = [...FRAMES.keys()]
    .map((code) => [code, english === 'index' ? code : `${code}/${english}`] as const)
    .filter(([, other]) => ids.has(other));
  if (all.length === 0) return [];
  return [['en', english === 'index' ? '' : english] as const, ...all].map(([hreflang, page]) => ({
    tag: 'link',
    attrs: { rel: 'alternate', hreflang, href: new URL(slash(page), site).href },
    content: '',
  }));
}

/** The picture beside a shared link. */
function picture(id: string, site: URL): StarlightRouteData['head'] {
  const kind = pageKind(id);
  return Object.entries({
    'og:image': new URL(`/og/${kind}.png`, site).href,
    'og:image:width': '1200',
    'og:image:height': '630',
    'og:image:alt': `slantpath: ${PAGE_KINDS[kind]}`,
  }).map(([property, content]) => ({ tag: 'meta', attrs: { property, content }, content: '' }));
}

/** Puts a page's own description in place of that of the site. */
function saysOfItself(head: StarlightRouteData['head'], description: string): void {
  if (description === '') return;
  for (const { tag, attrs } of head)
    if (
      tag === 'meta' &&
      /^(og:)?description$/.test(String(attrs?.['name'] ?? attrs?.['property']))
    )
      Object.assign(attrs ?? {}, { content: description });
}

export const onRequest = defineRouteMiddleware(async ({ locals, url, site }) => {
  const route = locals.starlightRoute;
  const { pathname } = url;
  // The search leads to the single function, whose page comes first to mind; its batch is beside it in the list and in the guide.
  if (/^\/api\/.*batch\/$/.test(pathname)) route.entry.data.pagefind = false;
  const code = codeOf(pathname);
  const frame = FRAMES.get(code);
  const entries = frame
    ? await translatedEntries(pathname, code, frame)
    : await englishEntries(pathname);
  const hand = entries.flatMap(function flat(entry): Link[] {
    return entry.type === 'link' ? [entry] : entry.entries.flatMap(flat);
  });
  // On API pages the hand-written ones are one link to each group, to keep hundreds of pages light.
  const api = pathname.startsWith('/api/');
  const brief = GROUPS.map(({ label, first }) => link(label, first, pathname));
  route.sidebar = frame
    ? entries
    : [...(api ? brief : entries), group('API', await apiEntries(pathname), false)];
  const here = hand.findIndex(({ isCurrent }) => isCurrent);
  const last = frame ? hand.length - 1 : hand.length;
  route.pagination = {
    prev: here > 0 ? hand[here - 1] : undefined,
    next: here >= 0 && here + 1 < last ? hand[here + 1] : undefined,
  };
  route.head.push(...(await alternates(route.id === '' ? 'index' : route.id, site ?? url)));
  route.head.push(...picture(route.id, site ?? url));
  if (api) saysOfItself(route.head, firstParagraph(route.entry.body ?? ''));
  if (!frame) return;
  route.lang = code;
  const top = route.toc?.items[0];
  if (top) top.text = frame.interface['tableOfContents.overview'] ?? top.text;
  route.entryMeta = { ...route.entryMeta, lang: code };
  const english = locals.t;
  const own = (key: string, options?: object) =>
    frame.interface[key] ?? english(key as 'search.label', options as never);
  locals.t = Object.assign(own, {
    all: () => ({ ...english.all(), ...frame.interface }),
    exists: english.exists,
    dir: english.dir,
  }) as unknown as typeof locals.t;
});
