/**
 * On API pages: turns the tables of properties and parameters into lists, name and type above their description where
 * the window is narrow, since a table of three columns cannot be read on a phone; and gives source and accuracy, which
 * TypeDoc leaves under the errors, headings of their own.
 */
export default function rehypeApiPages() {
  return (tree, file) => {
    if (!/[\\/]content[\\/]docs[\\/]api[\\/]/.test(file.path ?? '')) return;
    lists(tree);
    headings(tree);
  };
}

const NAMES = ['Property', 'Parameter'];
const SAID_BY_THE_LIST = ['Properties', 'Type Declaration'];

const element = (tagName, children, properties = {}) => ({
  type: 'element',
  tagName,
  properties,
  children,
});
const space = { type: 'text', value: ' ' };
const textOf = (node) => node.value ?? (node.children ?? []).map(textOf).join('');
const isHeading = (node) =>
  /^h[3-6]$/.test(node.tagName ?? '') ||
  (node.properties?.className ?? []).includes('sl-heading-wrapper');

function lists(node) {
  const kept = [];
  for (const child of node.children ?? []) {
    const list = child.tagName === 'table' ? listOf(child) : undefined;
    const before = kept.findLastIndex(({ type }) => type === 'element');
    const heading = kept[before];
    if (list && heading && isHeading(heading) && SAID_BY_THE_LIST.includes(textOf(heading).trim()))
      kept.splice(before, 1);
    lists(child);
    kept.push(list ?? child);
  }
  if (node.children) node.children = kept;
}

/** The list of a table whose first column holds names; undefined for any other. */
function listOf(table) {
  const rows = rowsOf(table);
  const names = rows[0]?.map((cell) => textOf(cell).trim());
  if (!names || !NAMES.includes(names[0])) return undefined;
  const entries = rows.slice(1).flatMap((cells) => {
    const at = (name) => cells[names.indexOf(name)]?.children ?? [];
    return [
      element('dt', [...(cells[0]?.children ?? []), space, element('span', at('Type'))]),
      element('dd', at('Description')),
    ];
  });
  return element('dl', entries, { className: ['terms', 'api-terms'] });
}

function rowsOf(node) {
  if (node.tagName === 'tr') return [node.children.filter(({ type }) => type === 'element')];
  return (node.children ?? []).flatMap(rowsOf);
}

/** Splits the paragraphs that hold lines beginning with `Source:` or `Accuracy:`. */
function headings(node) {
  let level = 'h2';
  node.children = node.children?.flatMap((child) => {
    if (/^h[2-5]$/.test(child.tagName ?? '')) level = child.tagName;
    if (child.tagName === 'p') return partsOf(child, level);
    headings(child);
    return [child];
  });
}

function partsOf(paragraph, level) {
  const parts = [element('p', [])];
  for (const child of paragraph.children) {
    const texts = child.type === 'text' ? child.value.split(/(?:^|\n)(Source|Accuracy): /) : [];
    if (texts.length < 2) {
      parts.at(-1).children.push(child);
      continue;
    }
    texts.forEach((value, index) => {
      if (index % 2 === 1) parts.push(element(level, [{ type: 'text', value }]), element('p', []));
      else if (value !== '') parts.at(-1).children.push({ type: 'text', value });
    });
  }
  return parts.filter(({ children }) => children.length > 0);
}
