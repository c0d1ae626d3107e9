/**
 * Runs a piece of documentation code: imports from `slantpath` resolve to the sources, and each
 * expression statement followed by `// => value` is compared with that value.
 */

import { transformSync } from 'esbuild';
import ts from 'typescript';
import { expect } from 'vitest';

const EXPECTED = /^[ \t]*\/\/ => (.*)$/;

/** Text after `// =>` behind a statement, if there is one. */
function expectedText(statement: ts.Statement, file: ts.SourceFile): string | undefined {
  const rest = file.text.slice(statement.end).split('\n')[0] ?? '';
  return EXPECTED.exec(rest)?.[1]?.trim();
}

function parse(code: string): ts.SourceFile {
  return ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022, true);
}

/** How many comparisons the code makes. */
export function snippetChecks(code: string): number {
  const file = parse(code);
  return file.statements.filter((statement) => expectedText(statement, file) !== undefined).length;
}

type Run = (modules: unknown, check: unknown) => Promise<void>;

/** A piece of code as a function of the modules that it imports, and what it imports from each. */
interface Compiled {
  readonly imports: readonly { readonly from: string; readonly names: readonly string[] }[];
  readonly run: Run;
}

/** Several tests run the same examples; compiling takes longer than running. */
const compiled = new Map<string, Compiled>();

function compile(code: string): Compiled {
  const known = compiled.get(code);
  if (known) return known;
  const file = parse(code);
  const imports: { readonly from: string; readonly names: readonly string[] }[] = [];
  const body: string[] = [];
  for (const statement of file.statements) {
    if (ts.isImportDeclaration(statement) && ts.isStringLiteral(statement.moduleSpecifier)) {
      const from = statement.moduleSpecifier.text;
      const { importClause } = statement;
      const bindings = importClause?.namedBindings;
      if (!bindings || !ts.isNamedImports(bindings)) continue;
      const values = bindings.elements.filter((element) => !element.isTypeOnly);
      const names = importClause.isTypeOnly
        ? []
        : values.map((element) => (element.propertyName ?? element.name).text);
      imports.push({ from, names });
      const taken = values.map(({ propertyName, name }) =>
        propertyName ? `${propertyName.text}: ${name.text}` : name.text,
      );
      body.push(`const { ${taken.join(', ')} } = __modules[${JSON.stringify(from)}];`);
      continue;
    }
    const wanted = expectedText(statement, file);
    if (wanted === undefined) body.push(statement.getText());
    else if (ts.isExpressionStatement(statement))
      body.push(
        `__check(${statement.expression.getText()}, (${wanted}), ${JSON.stringify(statement.expression.getText())});`,
      );
    else throw new Error(`"// =>" must follow an expression: ${statement.getText()}`);
  }
  const script = transformSync(`async function __run() {\n${body.join('\n')}\n}`, {
    loader: 'ts',
    target: 'es2022',
  }).code;
  const run = new Function('__modules', '__check', `${script}\nreturn __run();`) as Run;
  const made = { imports, run };
  compiled.set(code, made);
  return made;
}

/** Runs the code and its comparisons; rejects where one fails. `wrap` may replace what a part exports. */
export async function runSnippet(
  code: string,
  wrap: (exported: Readonly<Record<string, unknown>>) => unknown = (exported) => exported,
): Promise<void> {
  const { imports, run } = compile(code);
  const modules: Record<string, unknown> = {};
  for (const { from, names } of imports) {
    const part = wrap((await importPart(from)) as Readonly<Record<string, unknown>>);
    for (const name of names)
      if (!(name in (part as object))) throw new Error(`${from} does not export ${name}`);
    modules[from] = part;
  }
  await run(modules, (got: unknown, wanted: unknown, text: string) =>
    expect(got, text).toEqual(wanted),
  );
}

async function importPart(name: string): Promise<unknown> {
  const part = /^slantpath(?:\/(\w+))?$/.exec(name);
  if (!part) throw new Error(`an example may import slantpath only, not ${name}`);
  return part[1] === undefined
    ? import('../../src/index.js')
    : import(`../../src/${part[1]}/index.ts`);
}
