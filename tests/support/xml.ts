/** A strict reader of small XML documents: elements, attributes, text. What is not well formed throws. */

/** An element with the text and the elements in it. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  readonly text: string;
}

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
};

function plain(text: string): string {
  if (/&(?!(amp|lt|gt|quot|apos);)|</.test(text)) throw new Error(`not well formed: ${text}`);
  return text.replace(/&(\w+);/g, (_, name: string) => ENTITIES[name] ?? '');
}

/** Reads a document and gives its root. */
export function readXml(document: string): XmlElement {
  const body = document.replace(/^<\?xml[^?]*\?>\s*/, '');
  const top = { name: '', attributes: {}, children: [] as XmlElement[], text: '' };
  const open: { name: string; attributes: object; children: XmlElement[]; text: string }[] = [top];
  for (const [, tag, text = ''] of body.matchAll(/<([^>]+)>|([^<]+)/g)) {
    const here = open.at(-1);
    if (!here) throw new Error('closed too often');
    if (tag === undefined) here.text += plain(text);
    else if (tag.startsWith('/')) {
      const done = open.pop();
      if (done?.name !== tag.slice(1).trim()) throw new Error(`<${done?.name}> closed by <${tag}>`);
      open.at(-1)?.children.push(done as XmlElement);
    } else {
      const [, name = '', rest = ''] = /^([\w:.-]+)\s*([\s\S]*?)\/?$/.exec(tag) ?? [];
      const attributes = Object.fromEntries(
        [...rest.matchAll(/([\w:.-]+)="([^"]*)"/g)].map(([, key, value]) => [
          key,
          plain(value ?? ''),
        ]),
      );
      const element = { name, attributes, children: [] as XmlElement[], text: '' };
      if (tag.endsWith('/')) here.children.push(element);
      else open.push(element);
    }
  }
  const [root] = top.children;
  if (open.length !== 1 || !root || top.children.length !== 1) throw new Error('one root expected');
  return root;
}

/** The elements of a name anywhere below. */
export function within(element: XmlElement, name: string): readonly XmlElement[] {
  return element.children.flatMap((child) => [
    ...(child.name === name ? [child] : []),
    ...within(child, name),
  ]);
}
