/** The numbers of the public types: each property and parameter that holds a number, with the type that declares it. */

import { readdirSync } from 'node:fs';
import { dirname, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** A number in the public types. */
export interface PublicNumber {
  /** Part of the library. */
  readonly part: string;
  /** Type, or function, in whose declaration it stands. */
  readonly owner: string;
  /** Name of the property or parameter. */
  readonly name: string;
}

/** Whether a type is a number, or a column of numbers. */
function isNumeric(type: ts.Type, checker: ts.TypeChecker): boolean {
  if (type.isUnion()) return type.types.some((member) => isNumeric(member, checker));
  if (type.flags & ts.TypeFlags.NumberLike) return true;
  const name = type.getSymbol()?.getName() ?? '';
  if (/^Float(32|64)Array$/.test(name)) return true;
  if (!/^(ArrayLike|ReadonlyArray|Array)$/.test(name)) return false;
  const [item] = checker.getTypeArguments(type as ts.TypeReference);
  return item !== undefined && isNumeric(item, checker);
}

/** Every number that the entries' types declare, with the types they refer to. */
export function publicNumbers(): readonly PublicNumber[] {
  const entries = readdirSync(`${root}src`, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && entry.name !== 'numeric')
    .map((entry) => `${root}src/${entry.name}/index.ts`)
    .filter((file) => ts.sys.fileExists(file));
  const program = ts.createProgram(entries, {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    strict: true,
    skipLibCheck: true,
    lib: ['lib.es2022.d.ts'],
    types: [],
    resolveJsonModule: true,
    noEmit: true,
  });
  const checker = program.getTypeChecker();
  const found: PublicNumber[] = [];
  const seen = new Set<ts.Node>();

  const declarationsOf = (symbol: ts.Symbol | undefined): readonly ts.Declaration[] => {
    if (!symbol) return [];
    const own = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    return (own.declarations ?? []).filter((declaration) =>
      declaration.getSourceFile().fileName.startsWith(`${root}src/`),
    );
  };

  function visit(declaration: ts.Declaration): void {
    if (seen.has(declaration)) return;
    seen.add(declaration);
    const file = relative(`${root}src`, declaration.getSourceFile().fileName);
    const part = dirname(file).split('/')[0] ?? '';
    const owner = (declaration as ts.NamedDeclaration).name?.getText() ?? '';
    const walk = (node: ts.Node): void => {
      if (ts.isBlock(node)) return;
      if (
        (ts.isPropertySignature(node) || ts.isParameter(node)) &&
        ts.isIdentifier(node.name) &&
        isNumeric(checker.getTypeAtLocation(node), checker)
      )
        if (!ts.isParameter(node) || ts.isFunctionDeclaration(node.parent))
          // A parameter of a function type names nothing that a caller writes.
          found.push({ part, owner, name: node.name.text });
      if (ts.isTypeReferenceNode(node) || ts.isExpressionWithTypeArguments(node)) {
        const name = ts.isTypeReferenceNode(node) ? node.typeName : node.expression;
        for (const referred of declarationsOf(checker.getSymbolAtLocation(name)))
          if (ts.isInterfaceDeclaration(referred) || ts.isTypeAliasDeclaration(referred))
            visit(referred);
      }
      ts.forEachChild(node, walk);
    };
    walk(declaration);
  }

  for (const entry of entries) {
    const file = program.getSourceFile(entry);
    const module = file && checker.getSymbolAtLocation(file);
    if (!module) throw new Error(`${entry} has no exports`);
    for (const symbol of checker.getExportsOfModule(module)) declarationsOf(symbol).forEach(visit);
  }
  return found;
}
