/** Values of what is sent, of instruments and of masts that must agree with each other. */

import { DomainError } from '../../errors.js';
import { compressionPoint, crossPolarIsolationRead } from '../../transmit/index.js';
import type { JobFile } from './jobFile.js';

type Fault = (parameter: string, received: unknown, allowed: string, slip?: string) => void;

/** Every fault of measured pairs, of the cross-polar test, of instruments and of masts. */
export function outdoorReferences(job: JobFile, fault: Fault): void {
  job.transmit?.forEach(({ measuredPairs, crossPolarTest }, index) => {
    const path = `transmit[${index}]`;
    if (measuredPairs)
      told(
        fault,
        (parameter) => `${path}.${parameter.replace(/^pairs/, 'measuredPairs')}`,
        () => compressionPoint(measuredPairs),
      );
    if (crossPolarTest)
      told(
        fault,
        (parameter) => `${path}.crossPolarTest.${parameter}`,
        () => crossPolarIsolationRead(crossPolarTest),
      );
  });
  const names = (job.instruments ?? []).map(({ name }) => name);
  names.forEach((name, index) => {
    if (names.indexOf(name) !== index)
      fault(`instruments[${index}].name`, name, 'a name of its own');
  });
  job.mounts.forEach(({ mast }, index) => {
    const path = `mounts[${index}].mast`;
    if (mast?.wallM !== undefined && mast.outsideDiameterM === undefined)
      fault(`${path}.outsideDiameterM`, undefined, 'given where a wall is');
    if (mast?.wallM === undefined && mast?.outsideDiameterM !== undefined)
      fault(`${path}.wallM`, undefined, 'given where an outside diameter is');
    if (mast?.wallM !== undefined && mast.wallM > (mast.outsideDiameterM ?? Infinity) / 2)
      fault(`${path}.wallM`, mast.wallM, 'at most half the outside diameter', 'is it in mm?');
  });
}

/** Tells what a computation refuses as a fault of the file. */
function told(fault: Fault, rename: (parameter: string) => string, run: () => unknown): void {
  try {
    run();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    fault(rename(error.parameter), error.received, error.allowed, error.slip);
  }
}
