/** Parts of a tree that a design may choose, and the tree with a choice put in. */

import { DomainError } from '../../errors.js';
import { type Keys, known } from '../../keys.js';
import { compiledTree } from '../tree/compiledTree.js';
import type { DecibelsByFrequency, DistributionPart, DistributionSystem } from '../tree/tree.js';
import { withChildren } from '../tree/withChildren.js';

/** Values that one part can take: those of a tap, an amplifier, or a passive part. */
export type PartValues =
  | { readonly tapLossDb: DecibelsByFrequency; readonly throughLossDb: DecibelsByFrequency }
  | { readonly gainDb: DecibelsByFrequency }
  | { readonly lossDb: DecibelsByFrequency };

const PART_VALUES_KEYS = {
  tapLossDb: true,
  throughLossDb: true,
  gainDb: true,
  lossDb: true,
} satisfies Keys<PartValues>;

/** A part of which the values are open. */
export interface DesignChoice {
  /** Name of the part in the tree. */
  readonly part: string;
  /** Values to try, at least one. */
  readonly options: readonly PartValues[];
}

const DESIGN_CHOICE_KEYS = { part: true, options: true } satisfies Keys<DesignChoice>;

/** A part with the values put in; other parts as they are. */
function withValues(
  part: DistributionPart,
  chosen: ReadonlyMap<string, PartValues>,
): DistributionPart {
  const values = part.name === undefined ? undefined : chosen.get(part.name);
  const own = values === undefined ? part : ({ ...part, ...values } as DistributionPart);
  return withChildren(own, (child) => withValues(child, chosen));
}

/** The system with chosen values by part name. */
export function systemWith(
  system: DistributionSystem,
  chosen: ReadonlyMap<string, PartValues>,
): DistributionSystem {
  return { ...system, tree: withValues(system.tree, chosen) };
}

/** Fields that a kind of part can take. */
function fieldsOf(kind: DistributionPart['kind']): readonly string[] {
  if (kind === 'tap') return ['tapLossDb', 'throughLossDb'];
  if (kind === 'amplifier') return ['gainDb'];
  if (kind === 'cable' || kind === 'receiver') return [];
  return ['lossDb'];
}

/** Guards the choices against the tree. */
export function checkChoices(system: DistributionSystem, choices: readonly DesignChoice[]): void {
  if (!Array.isArray(choices))
    throw new DomainError({
      code: choices === undefined ? 'missing' : 'malformed',
      parameter: 'choices',
      received: choices,
      allowed: 'a list',
    });
  const stages = compiledTree(system);
  const seen = new Set<string>();
  choices.forEach((choice: DesignChoice, index) => {
    known(`choices[${index}]`, choice, DESIGN_CHOICE_KEYS);
    const stage = stages.find(({ part }) => part.name !== undefined && part.name === choice.part);
    if (stage === undefined || seen.has(choice.part))
      throw new DomainError({
        code: choice.part === undefined ? 'missing' : 'inconsistent',
        parameter: `choices[${index}].part`,
        received: choice.part,
        allowed: 'the name of a part of the tree, once',
      });
    seen.add(choice.part);
    if (!Array.isArray(choice.options) || choice.options.length === 0)
      throw new DomainError({
        code: choice.options === undefined ? 'missing' : 'empty',
        parameter: `choices[${index}].options`,
        received: choice.options,
        allowed: 'a list of at least one option',
      });
    const fields = fieldsOf(stage.part.kind);
    choice.options.forEach((option: PartValues, o: number) => {
      known(`choices[${index}].options[${o}]`, option, PART_VALUES_KEYS);
      const names = Object.keys(option);
      if (names.length === 0 || names.some((name) => !fields.includes(name)))
        throw new DomainError({
          code: 'inconsistent',
          parameter: `choices[${index}].options[${o}]`,
          received: names.join(', '),
          allowed: `${fields.join(' and ') || 'nothing'} for a ${stage.part.kind}`,
        });
    });
  });
}
