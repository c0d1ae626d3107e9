/**
 * Writes what each entry promises, values and types with their signatures and without their comments, into `tests/api/report/`:
 * a change of a public name, field or type shows in the diff. `tsx .ci/api-report.ts` rewrites, `--check` fails where it differs.
 */

import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import ts from 'typescript';

const parts = readdirSync('src', { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && existsSync(`src/${entry.name}/index.ts`))
  .map((entry) => entry.name);
const program = ts.createProgram(
  parts.map((part) => `src/${part}/index.ts`),
  {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.NodeNext,
    moduleResolution: ts.ModuleResolutionKind.NodeNext,
    strict: true,
    exactOptionalPropertyTypes: true,
    noUncheckedIndexedAccess: true,
    skipLibCheck: true,
    types: [],
  },
);
const checker = program.getTypeChecker();
const printer = ts.createPrinter({ removeComments: true });
const FLAGS = ts.TypeFormatFlags.NoTruncation | ts.TypeFormatFlags.WriteArrowStyleSignature;

/** One line or block for a public name. */
function entry(exported: ts.Symbol): string {
  const symbol =
    exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
  const declaration = symbol.declarations?.[0];
  if (declaration === undefined) throw new Error(`no declaration: ${exported.name}`);
  if (ts.isInterfaceDeclaration(declaration) || ts.isTypeAliasDeclaration(declaration))
    return printer.printNode(ts.EmitHint.Unspecified, declaration, declaration.getSourceFile());
  const type = checker.getTypeOfSymbol(symbol);
  if (ts.isClassDeclaration(declaration)) {
    const members = checker
      .getPropertiesOfType(checker.getDeclaredTypeOfSymbol(symbol))
      .filter((member) =>
        member.declarations?.some((at) => at.getSourceFile() === declaration.getSourceFile()),
      )
      .map(
        (member) =>
          `  ${member.name}: ${checker.typeToString(checker.getTypeOfSymbol(member), undefined, FLAGS)};`,
      );
    return `class ${exported.name} {\n${members.join('\n')}\n}`;
  }
  const kind = ts.isFunctionDeclaration(declaration) ? 'function' : 'const';
  return `${kind} ${exported.name}: ${checker.typeToString(type, declaration, FLAGS)}`;
}

mkdirSync('tests/api/report', { recursive: true });
for (const part of parts) {
  const file = program.getSourceFile(`src/${part}/index.ts`);
  const module = file && checker.getSymbolAtLocation(file);
  if (!module) throw new Error(`no module: ${part}`);
  const text = `${checker
    .getExportsOfModule(module)
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .map(entry)
    .join('\n\n')}\n`;
  const path = `tests/api/report/${part}.txt`;
  if (existsSync(path) && readFileSync(path, 'utf8') === text) continue;
  if (process.argv.includes('--check')) {
    console.error(`${path} differs from src: run \`npm run api\` and look at the diff.`);
    process.exitCode = 1;
  } else writeFileSync(path, text);
}
