/** A part with each of the parts behind it replaced. */

import type { DistributionPart } from './tree.js';

/** The part with `change` applied to what follows on each of its ports; `at` is the port's place, `outputs[1]`. Closed ports stay closed. */
export function withChildren(
  part: DistributionPart,
  change: (child: DistributionPart, at: string) => DistributionPart,
): DistributionPart {
  const port = (child: DistributionPart | null, at: string) =>
    child === null ? null : change(child, at);
  switch (part.kind) {
    case 'splitter':
      return { ...part, outputs: part.outputs.map((each, i) => port(each, `outputs[${i}]`)) };
    case 'switch':
      return {
        ...part,
        outputs: part.outputs.map((each, i) => port(each, `outputs[${i}]`)),
        ...(part.through === undefined ? {} : { through: port(part.through, 'through') }),
      };
    case 'tap':
      return {
        ...part,
        to: port(part.to, 'to'),
        taps: part.taps.map((each, i) => port(each, `taps[${i}]`)),
      };
    case 'receiver':
      return part;
    case 'outlet':
      return part.to === undefined ? part : { ...part, to: change(part.to, 'to') };
    default:
      return { ...part, to: change(part.to, 'to') };
  }
}
