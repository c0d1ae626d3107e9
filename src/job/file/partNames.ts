/** Every part of a distribution tree with its path and name. */

import type { DistributionPart } from '../../distribution/index.js';

/** A part by its place. */
export interface PartName {
  /** Path as it would be written in code. */
  readonly path: string;
  readonly kind: DistributionPart['kind'];
  readonly name: string | undefined;
  /** The part itself. */
  readonly part: DistributionPart;
  /** Whether an outlet lies between the root and it. */
  readonly behindOutlet: boolean;
}

/** All parts of a tree, parents before children. */
export function partNames(tree: DistributionPart, path: string): readonly PartName[] {
  const found: PartName[] = [];
  const visit = (part: DistributionPart | null | undefined, at: string, behindOutlet: boolean) => {
    if (!part) return;
    found.push({ path: at, kind: part.kind, name: part.name, part, behindOutlet });
    const behind = behindOutlet || part.kind === 'outlet';
    if ('outputs' in part)
      part.outputs.forEach((output, index) => {
        visit(output, `${at}.outputs[${index}]`, behind);
      });
    if ('through' in part) visit(part.through, `${at}.through`, behind);
    if ('to' in part) visit(part.to, `${at}.to`, behind);
    if ('taps' in part)
      part.taps.forEach((tap, index) => {
        visit(tap, `${at}.taps[${index}]`, behind);
      });
  };
  visit(tree, path, false);
  return found;
}
