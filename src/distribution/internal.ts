/** What other parts take from this one besides its public names. */

export { checkedFrequencies } from './levels/outletLevels.js';
export { forInput } from './network/forInput.js';
export { byFrequency } from './tree/byFrequency.js';
export { compiledTree, type Stage } from './tree/compiledTree.js';
