/** The tree of a step's formula, parsed once: steps never change. */

import { type FormulaNode, formulaTree } from '../formula/parse.js';
import type { PlanStep } from '../plans/plan.js';

const TREES = new WeakMap<PlanStep, FormulaNode>();

/** Tree of a step; never to be changed. */
export function stepTree(step: PlanStep): FormulaNode {
  const known = TREES.get(step);
  if (known) return known;
  const tree = formulaTree(step.expression);
  TREES.set(step, tree);
  return tree;
}
