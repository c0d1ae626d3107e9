/** What the files of a folder import from each other, read from their text; types count like values. */

import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path/posix';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** One import or re-export: the file that says it, the file it names, and what it takes. */
export interface Import {
  readonly from: string;
  readonly to: string;
  /** Names as the other file has them; `*` for all. */
  readonly names: readonly string[];
}

/** Paths of the TypeScript files below a folder, from the root of the repository. */
export function filesBelow(folder: string): readonly string[] {
  return readdirSync(root + folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => `${folder}/${file.replaceAll('\\', '/')}`)
    .sort();
}

/** The names in an import or export clause. */
function namesOf(node: ts.ImportDeclaration | ts.ExportDeclaration): string[] {
  const clause = ts.isImportDeclaration(node)
    ? node.importClause?.namedBindings
    : node.exportClause;
  if (clause === undefined || !(ts.isNamedImports(clause) || ts.isNamedExports(clause)))
    return ['*'];
  return clause.elements.map((element) => (element.propertyName ?? element.name).text);
}

/** Imports and re-exports of a file that name another file of the repository. */
export function importsOf(file: string): readonly Import[] {
  const source = ts.createSourceFile(
    file,
    readFileSync(root + file, 'utf8'),
    ts.ScriptTarget.ES2022,
  );
  return source.statements.flatMap((node) => {
    if (!ts.isImportDeclaration(node) && !ts.isExportDeclaration(node)) return [];
    if (node.moduleSpecifier === undefined || !ts.isStringLiteral(node.moduleSpecifier)) return [];
    const { text } = node.moduleSpecifier;
    if (!text.startsWith('.')) return [];
    return [
      {
        from: file,
        to: join(dirname(file), text).replace(/\.js$/, '.ts'),
        names: namesOf(node),
      },
    ];
  });
}

/** Names that a file lists in its re-exports, types among them. */
export function listedNames(file: string): {
  readonly values: readonly string[];
  readonly types: readonly string[];
} {
  const source = ts.createSourceFile(
    file,
    readFileSync(root + file, 'utf8'),
    ts.ScriptTarget.ES2022,
  );
  const values: string[] = [];
  const types: string[] = [];
  for (const node of source.statements) {
    if (!ts.isExportDeclaration(node)) continue;
    if (node.exportClause === undefined || !ts.isNamedExports(node.exportClause)) {
      const { text } = node.moduleSpecifier as ts.StringLiteral;
      const all = listedNames(join(dirname(file), text).replace(/\.js$/, '.ts'));
      values.push(...all.values);
      types.push(...all.types);
      continue;
    }
    for (const element of node.exportClause.elements)
      (node.isTypeOnly || element.isTypeOnly ? types : values).push(element.name.text);
  }
  return { values: values.sort(), types: types.sort() };
}

/** Groups of nodes that reach each other, each sorted; empty where there is no circle. */
export function circles(edges: ReadonlyMap<string, ReadonlySet<string>>): string[][] {
  const reach = (start: string): Set<string> => {
    const seen = new Set<string>();
    const open = [...(edges.get(start) ?? [])];
    for (let node = open.pop(); node !== undefined; node = open.pop()) {
      if (seen.has(node)) continue;
      seen.add(node);
      open.push(...(edges.get(node) ?? []));
    }
    return seen;
  };
  const reached = new Map([...edges.keys()].map((node) => [node, reach(node)]));
  const found = new Map<string, string[]>();
  for (const [node, nodes] of reached) {
    if (!nodes.has(node)) continue;
    const ring = [...nodes].filter((other) => reached.get(other)?.has(node)).sort();
    found.set(ring.join(), ring);
  }
  return [...found.values()];
}
