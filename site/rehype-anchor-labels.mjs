/** Runs after Starlight: names the links beside headings in the language of the page, `docs/<code>/`. */
const ANCHOR = { de: (title) => `Abschnitt „${title}“` };

export default function rehypeAnchorLabels() {
  return (tree, file) => {
    const code = /[\\/]docs[\\/]([a-z]{2})[\\/]/.exec(file.path ?? '')?.[1];
    if (code && code in ANCHOR) name(tree, ANCHOR[code]);
  };
}

const has = (node, wanted) =>
  [node.properties?.className ?? node.properties?.class].flat().join(' ').includes(wanted);
const textOf = (node) => node.value ?? (node.children ?? []).map(textOf).join('');

function name(node, label) {
  if (!has(node, 'sl-heading-wrapper')) {
    for (const child of node.children ?? []) name(child, label);
    return;
  }
  const [heading, anchor] = node.children;
  const words = anchor?.children.find((child) => has(child, 'sr-only'));
  if (words) words.children = [{ type: 'text', value: label(textOf(heading)) }];
}
