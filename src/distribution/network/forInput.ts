/** A tree as it looks from one input of its switches. */

import { DomainError } from '../../errors.js';
import type { DistributionPart } from '../tree/tree.js';
import { withChildren } from '../tree/withChildren.js';

/**
 * The tree with the figures of one input in every switch that tells its inputs apart: the tree that a source on this input feeds.
 *
 * @throws {@link DomainError} `inconsistent` where a switch has inputs and none of this name.
 */
export function forInput(
  part: DistributionPart,
  input: string | undefined,
  path: string,
): DistributionPart {
  const own = part.kind === 'switch' ? ownFigures(part, input, path) : part;
  return withChildren(own, (child, at) => forInput(child, input, `${path}.${at}`));
}

function ownFigures(
  part: Extract<DistributionPart, { kind: 'switch' }>,
  input: string | undefined,
  path: string,
): DistributionPart {
  const { inputs } = part;
  if (inputs === undefined || input === undefined) return part;
  const chosen = inputs.find(({ name }) => name === input);
  if (chosen === undefined)
    throw new DomainError({
      code: 'inconsistent',
      parameter: `${path}.inputs`,
      received: input,
      allowed: `one of ${inputs.map(({ name }) => name).join(', ')}`,
    });
  return chosen.lossDb === undefined ? part : { ...part, lossDb: chosen.lossDb };
}
