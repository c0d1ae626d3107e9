/** What a page says of itself to those who list or share it: its kind, its picture, its description. */

/** Kinds of page, each with a picture of its own, and what stands on it. */
export const PAGE_KINDS = {
  home: 'Where to point, and why',
  job: 'One job, from the address to the record',
  example: 'Worked example: the answer, by hand, in code',
  guide: 'Guide',
  reference: 'Reference',
  validation: 'Checked against published values',
  api: 'Function reference',
} as const;

type PageKind = keyof typeof PAGE_KINDS;

/** The kind of a page by its id, in whatever language. */
export function pageKind(id: string): PageKind {
  const page = id.replace(/^[a-z]{2}(\/|$)/, '');
  if (page === 'start/one-job') return 'job';
  if (page.startsWith('examples/')) return 'example';
  if (page.startsWith('api/')) return 'api';
  if (/^(reference\/)?validation/.test(page)) return 'validation';
  if (page.startsWith('reference/')) return 'reference';
  return page.startsWith('guides/') || page.startsWith('start/') ? 'guide' : 'home';
}

/** Longest description: what a list of results shows of one. */
const LONGEST = 160;

/** The first paragraph of a generated page in plain text, cut at the end of a word; empty where it has none. */
export function firstParagraph(markdown: string): string {
  const paragraph = markdown
    .replace(/```[\s\S]*?```/g, '')
    .split(/\n\s*\n/)
    .map((block) => block.trim())
    .find((block) => /^[A-Z`]/.test(block) && !/^\[\*\*/.test(block));
  const plain = (paragraph ?? '')
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[`*]/g, '')
    .replace(/\\([<>[\]{}_|])/g, '$1')
    .replace(/\s+/g, ' ');
  if (plain.length <= LONGEST) return plain;
  return `${plain.slice(0, LONGEST).replace(/\s+\S*$/, '')} …`;
}
