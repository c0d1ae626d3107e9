/**
 * Runs a piece of documentation code: imports from `slantpath` resolve to the sources, and each
 * expression statement followed by `// => value` is compared with that value.
 */

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

/** Runs the code and its comparisons; rejects where one fails. `wrap` may replace what a part exports. */
export async function runSnippet(
  code: string,
  wrap: (exported: Readonly<Record<string, unknown>>) => unknown = (exported) => exported,
): Promise<void> {
  const file = parse(code);
  const modules: Record<string, unknown> = {};
  const body: string[] = [];
  for (const statement of file.statements) {
    if (ts.isImportDeclaration(statement) && ts.isStringLiteral(statement.moduleSpecifier)) {
      const name = statement.moduleSpecifier.text;
      modules[name] = wrap((await importPart(name)) as Readonly<Record<string, unknown>>);
      const bindings = statement.importClause?.namedBindings;
      if (bindings && ts.isNamedImports(bindings)) {
        const values = bindings.elements.filter((element) => !element.isTypeOnly);
        for (const element of values) {
          const imported = (element.propertyName ?? element.name).text;
          if (!statement.importClause?.isTypeOnly && !(imported in (modules[name] as object)))
            throw new Error(`${name} does not export ${imported}`);
        }
        const names = values.map((element) =>
          element.propertyName
            ? `${element.propertyName.text}: ${element.name.text}`
            : element.name.text,
        );
        body.push(`const { ${names.join(', ')} } = __modules[${JSON.stringify(name)}];`);
      }
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
  const script = ts.transpileModule(`async function __run() {\n${body.join('\n')}\n}`, {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext },
  }).outputText;
  const check = (got: unknown, wanted: unknown, text: string) => expect(got, text).toEqual(wanted);
  const run = new Function('__modules', '__check', `${script}\nreturn __run();`) as (
    modules: unknown,
    check: unknown,
  ) => Promise<void>;
  await run(modules, check);
}

async function importPart(name: string): Promise<unknown> {
  const part = /^slantpath(?:\/(\w+))?$/.exec(name);
  if (!part) throw new Error(`an example may import slantpath only, not ${name}`);
  return part[1] === undefined
    ? import('../../src/index.js')
    : import(`../../src/${part[1]}/index.ts`);
}
