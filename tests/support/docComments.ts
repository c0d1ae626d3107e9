/** What the doc comments of the sources say about inputs: examples, and the fields of each function's parameters. */

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** Folder of the sources. */
const SOURCE = fileURLToPath(new URL('../../src/', import.meta.url));

/** All source files, relative to {@link SOURCE}. */
export const sourceFiles = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' }).filter(
  (file) => file.endsWith('.ts'),
);

/** Code of each fenced block below an `@example` tag of a file, with its line. */
export function examplesOf(file: string): { readonly line: number; readonly code: string }[] {
  const text = readFileSync(SOURCE + file, 'utf8');
  return [...text.matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap((comment) =>
    [...comment[0].matchAll(/@example[^\n]*\n([\s\S]*?)```ts\n([\s\S]*?)```/g)].map((match) => ({
      line: text.slice(0, comment.index).split('\n').length,
      code: (match[2] ?? '').replace(/^[ \t]*\*[ \t]?/gm, ''),
    })),
  );
}

/** A field of a parameter, with its comment and the fields below it. */
export interface DocField {
  readonly comment: string;
  readonly type: ts.TypeNode | undefined;
}

/** A top-level declaration of a type or a function, by its first line. */
const DECLARED = /^(?:export )?(?:async )?(interface|type|function)\*? (\w+)/gm;

/**
 * Reads types by name, without a checker: names of declared types are unique enough, the last file that has one counts.
 * A file is parsed when something of it is asked for; all of them take seconds.
 */
export class DocTypes {
  private readonly files = { type: new Map<string, string>(), function: new Map<string, string>() };
  private readonly parsed = new Map<string, ts.SourceFile>();

  constructor() {
    for (const file of sourceFiles)
      for (const [, word, name = ''] of readFileSync(SOURCE + file, 'utf8').matchAll(DECLARED))
        this.files[word === 'function' ? 'function' : 'type'].set(name, file);
  }

  private statements(file: string | undefined): readonly ts.Statement[] {
    if (file === undefined) return [];
    const known = this.parsed.get(file);
    if (known) return known.statements;
    const text = readFileSync(SOURCE + file, 'utf8');
    const made = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
    this.parsed.set(file, made);
    return made.statements;
  }

  private type(name: string): ts.InterfaceDeclaration | ts.TypeAliasDeclaration | undefined {
    return this.statements(this.files.type.get(name)).find(
      (node): node is ts.InterfaceDeclaration | ts.TypeAliasDeclaration =>
        (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) &&
        node.name.text === name,
    );
  }

  /** A function's parameters, each with its type and what `@param` says of it. */
  parameters(name: string): readonly (DocField & { readonly name: string })[] {
    const found = this.statements(this.files.function.get(name)).find(
      (node): node is ts.FunctionDeclaration =>
        ts.isFunctionDeclaration(node) && node.name?.text === name && node.body !== undefined,
    );
    if (!found) return [];
    const told = [...commentOf(found).matchAll(/@param (\w+) ([^@]*)/g)];
    return found.parameters.map(({ name, type }) => ({
      name: name.getText(),
      comment: told.find(([, parameter]) => parameter === name.getText())?.[2] ?? '',
      type,
    }));
  }

  /** Fields of a type by name, bases included; of a union those of the members that a value's `kind` fits. */
  fields(type: ts.TypeNode | undefined, kind?: unknown, depth = 0): ReadonlyMap<string, DocField> {
    const found = new Map<string, DocField>();
    if (!type || depth > 6) return found;
    const members = (list: readonly ts.TypeElement[]) => {
      for (const member of list)
        if (ts.isPropertySignature(member) && member.name)
          found.set(member.name.getText(), {
            comment: commentOf(member),
            type: member.type,
          });
    };
    const take = (from: ts.TypeNode) => {
      const below = this.fields(from, kind, depth + 1);
      const told = below.get('kind')?.type?.getText();
      // A member of another kind says nothing about this value.
      if (
        told !== undefined &&
        kind !== undefined &&
        told.includes("'") &&
        !told.includes(`'${kind}'`)
      )
        return;
      for (const [name, field] of below) if (!found.has(name)) found.set(name, field);
    };
    if (ts.isTypeLiteralNode(type)) members(type.members);
    else if (ts.isUnionTypeNode(type) || ts.isIntersectionTypeNode(type)) type.types.forEach(take);
    else if (ts.isParenthesizedTypeNode(type)) take(type.type);
    else if (ts.isArrayTypeNode(type)) take(type.elementType);
    else if (ts.isTypeOperatorNode(type)) take(type.type);
    else if (ts.isTypeReferenceNode(type)) {
      const called = type.typeName.getText();
      const [whole, keys] = type.typeArguments ?? [];
      if ((called === 'Omit' || called === 'Pick') && whole && keys) {
        for (const [name, field] of this.fields(whole, kind, depth + 1))
          if (keys.getText().includes(`'${name}'`) === (called === 'Pick')) found.set(name, field);
        return found;
      }
      const declared = this.type(called);
      if (declared && ts.isTypeAliasDeclaration(declared)) take(declared.type);
      else if (declared) {
        members(declared.members);
        for (const clause of declared.heritageClauses ?? [])
          for (const base of clause.types) {
            const parent = this.type(base.expression.getText());
            if (parent && ts.isInterfaceDeclaration(parent))
              take(ts.factory.createTypeLiteralNode(parent.members) as ts.TypeNode);
          }
      } else type.typeArguments?.forEach(take);
    }
    return found;
  }
}

function commentOf(node: ts.Node): string {
  const text = node.getSourceFile().text;
  const ranges = ts.getLeadingCommentRanges(text, node.pos) ?? [];
  const last = ranges[ranges.length - 1];
  return last === undefined
    ? ''
    : text
        .slice(last.pos, last.end)
        .replace(/^\/\*\*|\*\/$/g, '')
        .replace(/\n\s*\*/g, ' ')
        .replace(/\s+/g, ' ')
        .trim();
}
