/**
 * The groups of the sidebar. A page joins a group by lying in its folder of `docs/`; its place there is
 * `sidebar.order` in its front matter. Nothing has to be registered here for a new page.
 */

/** Stages of the worked examples: the hundreds of `sidebar.order`, in the order of the job. */
export const STAGES: Readonly<Record<number, string>> = {
  1: 'Before the drive',
  2: 'On the roof',
  3: 'Air and link',
  4: 'Behind the antenna',
  5: 'At the end',
  6: 'In class',
};

/** Folder of `docs/`, label, whether its pages are split into stages, and the page to begin with. */
export const GROUPS: readonly {
  readonly folder: string;
  readonly label: string;
  readonly staged?: boolean;
  readonly first: string;
}[] = [
  { folder: 'start', label: 'Start here', first: '/start/primer/' },
  { folder: 'examples', label: 'Worked examples', staged: true, first: '/start/learn/' },
  { folder: 'guides', label: 'Guides', first: '/guides/browser/' },
  { folder: 'reference', label: 'Reference', first: '/reference/conventions/' },
];
