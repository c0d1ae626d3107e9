/** Names of the outlets of a distribution: the test points that a reading or a limit may name. */

import type { DistributionPart } from '../distribution/index.js';

/** Names of all outlets of a tree, from the source outwards. */
export function outletNames(tree: DistributionPart): readonly string[] {
  const names: string[] = [];
  // A list instead of recursion: a tree may be as deep as the file allows.
  const open: (DistributionPart | null | undefined)[] = [tree];
  while (open.length > 0) {
    const part = open.pop();
    if (!part) continue;
    if (part.kind === 'outlet') names.push(part.name);
    const behind = [
      'to' in part ? part.to : undefined,
      ...('outputs' in part ? part.outputs : []),
      ...('taps' in part ? part.taps : []),
    ];
    open.push(...behind.reverse());
  }
  return names;
}
