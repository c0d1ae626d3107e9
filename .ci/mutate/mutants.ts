/** The mutants of a source file: small changes of one place each, all compiled into one text and switched at run time. */

import ts from 'typescript';

/** A change of one place. */
export interface Mutant {
  readonly id: number;
  readonly file: string;
  readonly line: number;
  /** What stood there and what stands there now, cut to a line. */
  readonly was: string;
  readonly is: string;
}

const OPERATORS: Readonly<Record<string, readonly string[]>> = {
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '**': ['*'],
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '&&': ['||'],
  '||': ['&&'],
};
const FUNCTIONS: Readonly<Record<string, string>> = {
  sin: 'cos',
  cos: 'sin',
  sinDeg: 'cosDeg',
  cosDeg: 'sinDeg',
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  abs: 'sign',
};

/** Other texts for a node; the printed form of what is inside comes from `inner`. */
function changes(node: ts.Node, inner: (node: ts.Node) => string): readonly string[] {
  if (ts.isBinaryExpression(node)) {
    const operator = node.operatorToken.getText();
    // A text put together is no sum.
    if (operator === '+' && /['"`]/.test(node.getText())) return [];
    return (OPERATORS[operator] ?? []).map(
      (other) => `(${inner(node.left)}) ${other} (${inner(node.right)})`,
    );
  }
  if (ts.isPrefixUnaryExpression(node)) {
    if (
      node.operator === ts.SyntaxKind.MinusToken ||
      node.operator === ts.SyntaxKind.ExclamationToken
    )
      return [`(${inner(node.operand)})`];
    return [];
  }
  if (ts.isNumericLiteral(node))
    return [Number(node.text) === 0 ? '1' : `(${node.text} * 1.01 + 0)`];
  if (node.kind === ts.SyntaxKind.TrueKeyword) return ['false'];
  if (node.kind === ts.SyntaxKind.FalseKeyword) return ['true'];
  if (ts.isConditionalExpression(node)) return [inner(node.whenTrue), inner(node.whenFalse)];
  if (ts.isCallExpression(node)) {
    const name = ts.isPropertyAccessExpression(node.expression)
      ? node.expression.name.text
      : node.expression.getText();
    const other = FUNCTIONS[name];
    if (other === undefined) return [];
    const called = node.expression.getText().replace(new RegExp(`${name}$`), other);
    // A function that the file does not import cannot stand there.
    if (
      !called.startsWith('Math.') &&
      !new RegExp(`\\b${other}\\b`).test(node.getSourceFile().text)
    )
      return [];
    return [`${called}(${node.arguments.map(inner).join(', ')})`];
  }
  return [];
}

/** Places that hold types, names or words and compute nothing. */
const skipped = (node: ts.Node) =>
  ts.isTypeNode(node) ||
  ts.isInterfaceDeclaration(node) ||
  ts.isTypeAliasDeclaration(node) ||
  ts.isImportDeclaration(node) ||
  ts.isExportDeclaration(node) ||
  ts.isSatisfiesExpression(node) ||
  ts.isEnumDeclaration(node);

/**
 * The file's text with every mutant in it, and their list; `first` is the number of the first one. What the module computes
 * when it is loaded can be computed again (`__again`), with another mutant alive.
 */
export function mutated(
  file: string,
  text: string,
  first: number,
): { readonly text: string; readonly mutants: readonly Mutant[]; readonly constantsOnly: boolean } {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const mutants: Mutant[] = [];
  const short = (code: string) => code.replace(/\s+/g, ' ').slice(0, 70);

  /** Text of a node with the mutants inside it. */
  function printed(node: ts.Node): string {
    if (skipped(node)) return node.getText();
    let out = '';
    let at = node.getStart();
    ts.forEachChild(node, (child) => {
      out += text.slice(at, child.getStart()) + expression(child);
      at = child.getEnd();
    });
    return out + text.slice(at, node.getEnd());
  }

  /** The same with the mutants of the node itself around it. */
  function expression(node: ts.Node): string {
    // Names of fields and labels are no values, a call of a guard as a whole statement can be left out.
    if (
      ts.isNumericLiteral(node) &&
      (ts.isPropertyAssignment(node.parent)
        ? node.parent.name === node
        : ts.isLiteralTypeNode(node.parent))
    )
      return node.getText();
    if (ts.isExpressionStatement(node) && ts.isCallExpression(node.expression)) {
      const id = first + mutants.length;
      mutants.push({ id, file, line: line(node), was: short(node.getText()), is: '(left out)' });
      return `if (!globalThis.__mutant(${id})) { ${printed(node)} }`;
    }
    const others = changes(node, (inner) => inner.getText());
    if (others.length === 0) return printed(node);
    const open = others.map((other) => {
      const id = first + mutants.length;
      mutants.push({ id, file, line: line(node), was: short(node.getText()), is: short(other) });
      return `globalThis.__mutant(${id}) ? (${other}) : `;
    });
    return `(${open.join('')}(${printed(node)}))`;
  }
  /** Constants and variables of the module, such that they can be made anew; nothing where they are no plain names. */
  function variables(statement: ts.VariableStatement): string | undefined {
    const { declarations } = statement.declarationList;
    if (!declarations.every(({ name, initializer }) => ts.isIdentifier(name) && initializer))
      return undefined;
    const before = text.slice(statement.getStart(), statement.declarationList.getStart());
    return declarations
      .map(({ name, type, initializer }) => {
        const value = initializer ? expression(initializer) : '';
        const typed = type ? `: ${type.getText()}` : '';
        return `${before}let ${name.getText()}${typed} = ${value};\nglobalThis.__again(() => { ${name.getText()} = ${value}; });`;
      })
      .join('\n');
  }

  const line = (node: ts.Node) => source.getLineAndCharacterOfPosition(node.getStart()).line + 1;

  let out = '';
  let at = 0;
  let constantsOnly = true;
  for (const statement of source.statements) {
    out += text.slice(at, statement.getStart());
    const before = mutants.length;
    const made = ts.isVariableStatement(statement) ? variables(statement) : undefined;
    out += made ?? expression(statement);
    if (made === undefined && mutants.length > before) constantsOnly = false;
    at = statement.getEnd();
  }
  return { text: out + text.slice(at), mutants, constantsOnly };
}
