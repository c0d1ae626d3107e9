/**
 * Whether readings meet their limits with the uncertainty counted in, and which part of the chain is at fault where
 * they do not.
 *
 * @module acceptance
 */

export {
  type ConformityDecision,
  type ConformityQuestion,
  type DecisionRule,
  decideConformity,
} from './decideConformity.js';
