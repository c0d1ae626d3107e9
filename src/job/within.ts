/** Errors of the parts, told by their place in the job file. */

import { DomainError } from '../errors.js';

/** Runs a computation on a part of the job; a DomainError comes out with the path in front of its parameter. */
export function within<T>(path: string, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const { code, received, allowed, slip, index } = error;
    throw new DomainError({
      code,
      parameter: path === '' ? error.parameter : `${path}.${error.parameter}`,
      received,
      allowed,
      slip,
      index,
    });
  }
}
