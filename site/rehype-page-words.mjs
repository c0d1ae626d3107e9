/** Runs after Starlight: what it puts into a page of `docs/<code>/`, in the language of the page. */
const WORDS = {
  de: {
    section: (title) => `Abschnitt „${title}“`,
    asides: { note: 'Hinweis', tip: 'Tipp', caution: 'Vorsicht', danger: 'Gefahr' },
  },
};

export default function rehypePageWords() {
  return (tree, file) => {
    const code = /[\\/]docs[\\/]([a-z]{2})[\\/]/.exec(file.path ?? '')?.[1];
    if (code && code in WORDS) say(tree, WORDS[code]);
  };
}

const classesOf = (node) =>
  [node.properties?.className ?? node.properties?.class ?? ''].flat().join(' ');
const textOf = (node) => node.value ?? (node.children ?? []).map(textOf).join('');
const text = (value) => ({ type: 'text', value });

function say(node, words) {
  const classes = classesOf(node);
  if (classes.includes('sl-heading-wrapper')) nameAnchor(node, words);
  if (node.tagName === 'aside') titleAside(node, classes, words);
  for (const child of node.children ?? []) say(child, words);
}

function nameAnchor({ children: [heading, anchor] }, words) {
  const name = anchor?.children.find((child) => classesOf(child).includes('sr-only'));
  if (name) name.children = [text(words.section(textOf(heading)))];
}

function titleAside(node, classes, words) {
  const kind = Object.keys(words.asides).find((name) => classes.includes(`aside--${name}`));
  const title = node.children.find((child) => classesOf(child).includes('aside__title'));
  if (!kind || !title) return;
  node.properties.ariaLabel = words.asides[kind];
  delete node.properties['aria-label'];
  title.children = [
    ...title.children.filter(({ type }) => type !== 'text'),
    text(words.asides[kind]),
  ];
}
