/** A formula's tree as TeX and as plain text, with symbols or with the numbers put in. */

import type jsep from 'jsep';
import { type FormulaNode, refuseFormula } from './parse.js';

/** How a leaf is written: the TeX or text of a symbol. */
export type LeafText = (symbol: string) => string;

/** Binding strength of a node, so that only needed brackets are written. */
function rank(node: FormulaNode): number {
  if (node.type === 'UnaryExpression') return 2;
  if (node.type !== 'BinaryExpression') return 9;
  const { operator } = node as jsep.BinaryExpression;
  return operator === '+' || operator === '-' ? 1 : operator === '**' ? 4 : 3;
}

/** Functions with a TeX operator of their own. */
const OPERATORS: Readonly<Record<string, string>> = {
  sin: '\\sin',
  cos: '\\cos',
  tan: '\\tan',
  asin: '\\arcsin',
  acos: '\\arccos',
  atan: '\\arctan',
  exp: '\\exp',
  ln: '\\ln',
  log: '\\log_{10}',
  log10: '\\log_{10}',
  normal: '\\Phi',
  min: '\\min',
  max: '\\max',
};

/** TeX of a tree. */
export function treeToTex(node: FormulaNode, leaf: LeafText): string {
  const inner = (child: FormulaNode, least: number) => {
    const text = treeToTex(child, leaf);
    return rank(child) < least ? `\\left(${text}\\right)` : text;
  };
  switch (node.type) {
    case 'Literal':
      return (node as jsep.Literal).raw;
    case 'Identifier':
      return leaf((node as jsep.Identifier).name);
    case 'UnaryExpression': {
      const { operator, argument } = node as jsep.UnaryExpression;
      return `${operator}${inner(argument, 3)}`;
    }
    case 'BinaryExpression': {
      const { operator, left, right } = node as jsep.BinaryExpression;
      if (operator === '/') return `\\frac{${treeToTex(left, leaf)}}{${treeToTex(right, leaf)}}`;
      if (operator === '**') {
        const base = inner(left, 9);
        const functionPower = left.type === 'CallExpression' ? `\\left(${base}\\right)` : base;
        return `${functionPower}^{${treeToTex(right, leaf)}}`;
      }
      if (operator === '*') return `${inner(left, 3)} \\cdot ${inner(right, 3)}`;
      return `${inner(left, 1)} ${operator} ${inner(right, operator === '-' ? 2 : 1)}`;
    }
    case 'CallExpression': {
      const { callee, arguments: list } = node as jsep.CallExpression;
      const name = (callee as jsep.Identifier).name;
      const texts = list.map((argument) => treeToTex(argument, leaf));
      if (name === 'sqrt') return `\\sqrt{${texts[0]}}`;
      if (name === 'abs') return `\\left|${texts[0]}\\right|`;
      const operator = OPERATORS[name] ?? `\\operatorname{${name}}`;
      return `${operator}\\left(${texts.join(',\\; ')}\\right)`;
    }
    default:
      return refuseFormula(node.type, 'one arithmetic expression');
  }
}

/** Plain text of a tree, in the notation that formulas are typed in. */
export function treeToText(node: FormulaNode, leaf: LeafText): string {
  const inner = (child: FormulaNode, least: number) => {
    const text = treeToText(child, leaf);
    // A negative number put in for a symbol needs brackets as much as a sum does.
    const bracketed = rank(child) < least || (least > 1 && text.startsWith('-'));
    return bracketed ? `(${text})` : text;
  };
  switch (node.type) {
    case 'Literal':
      return (node as jsep.Literal).raw;
    case 'Identifier':
      return leaf((node as jsep.Identifier).name);
    case 'UnaryExpression': {
      const { operator, argument } = node as jsep.UnaryExpression;
      return `${operator}${inner(argument, 3)}`;
    }
    case 'BinaryExpression': {
      const { operator, left, right } = node as jsep.BinaryExpression;
      if (operator === '**') return `${inner(left, 9)}^${inner(right, 9)}`;
      if (operator === '/') return `${inner(left, 3)} / ${inner(right, 4)}`;
      if (operator === '*') return `${inner(left, 3)} * ${inner(right, 3)}`;
      return `${inner(left, 1)} ${operator} ${inner(right, 2)}`;
    }
    case 'CallExpression': {
      const { callee, arguments: list } = node as jsep.CallExpression;
      const texts = list.map((argument) => treeToText(argument, leaf));
      return `${(callee as jsep.Identifier).name}(${texts.join(', ')})`;
    }
    default:
      return refuseFormula(node.type, 'one arithmetic expression');
  }
}
