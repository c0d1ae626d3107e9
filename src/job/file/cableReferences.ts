/** Names and values around switches with several inputs, channel stacking and terrestrial signals that must agree. */

import { forInput } from '../../distribution/internal.js';
import { DomainError } from '../../errors.js';
import type { JobFile } from './jobFile.js';
import { type PartName, partNames } from './partNames.js';

type Fault = (parameter: string, received: unknown, allowed: string, slip?: string) => void;

/** Every fault of inputs, user bands and aerials. */
export function cableReferences(job: JobFile, fault: Fault): void {
  const { trees = [], lines = [], stacking, terrestrial } = job.distribution ?? {};
  const parts = trees.flatMap((tree, at) => partNames(tree, `distribution.trees[${at}]`));
  const switchOf = (into: string | undefined): PartName | undefined =>
    into === undefined
      ? parts[0]
      : parts.find(({ kind, name }) => kind === 'switch' && name === into);
  lines.forEach(({ into, input }, at) => {
    const end = switchOf(into);
    if (end) enters(end, input, `distribution.lines[${at}].input`, fault);
  });
  if (terrestrial) {
    const end = switchOf(terrestrial.into);
    if (end && terrestrial.input !== undefined)
      enters(end, terrestrial.input, 'distribution.terrestrial.input', fault);
    const { lowestMHz = 470, highestMHz = 694, minimumDbuv, maximumDbuv } = terrestrial;
    if (lowestMHz >= highestMHz)
      fault('distribution.terrestrial.lowestMHz', lowestMHz, `below highestMHz (${highestMHz})`);
    if (minimumDbuv !== undefined && maximumDbuv !== undefined && minimumDbuv >= maximumDbuv)
      fault('distribution.terrestrial.minimumDbuv', minimumDbuv, `below ${maximumDbuv}`);
  }
  if (stacking) userBands(stacking, parts, fault);
}

/** A line must name an input that the switch has, and every switch behind it in a cascade. */
function enters(end: PartName, input: string | undefined, path: string, fault: Fault): void {
  const inputs = end.part.kind === 'switch' ? end.part.inputs : undefined;
  if (inputs === undefined) return;
  const names = inputs.flatMap(({ name }) => (typeof name === 'string' ? [name] : [])).join(', ');
  if (input === undefined) {
    fault(path, input, `given: one of ${names}`);
    return;
  }
  try {
    forInput(end.part, input, end.path);
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    fault(
      path,
      input,
      error.parameter === `${end.path}.inputs` ? `one of ${names}` : error.message,
    );
  }
}

function userBands(
  {
    userBands: bands,
    userBandsMHz,
    generation,
  }: NonNullable<NonNullable<JobFile['distribution']>['stacking']>,
  parts: readonly PartName[],
  fault: Fault,
): void {
  const path = 'distribution.stacking';
  if (bands && userBandsMHz)
    fault(`${path}.userBandsMHz`, userBandsMHz, 'left out: userBands says the same and more');
  const points = parts.flatMap(({ kind, name }) =>
    (kind === 'outlet' || kind === 'receiver') && typeof name === 'string' ? [name] : [],
  );
  const highest = generation === 'second' ? 32 : 7;
  bands?.forEach(({ receiver, userBand }, index) => {
    const at = `${path}.userBands[${index}]`;
    if (receiver !== undefined && !points.includes(receiver))
      fault(`${at}.receiver`, receiver, `an outlet or receiver (${points.join(', ')})`);
    if (userBand !== undefined && (!Number.isInteger(userBand) || userBand > highest))
      fault(`${at}.userBand`, userBand, `a whole number up to ${highest}`);
  });
}
