/** What other parts take from this one besides its public names. */

export { checkedStation } from './station.js';
