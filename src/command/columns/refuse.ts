/** How the command refuses a word, a file or a column: the way the library refuses a field. */

import { DomainError } from '../../errors.js';

export function refuse(
  parameter: string,
  received: unknown,
  allowed: string,
  slip?: string,
): never {
  throw new DomainError({ code: 'malformed', parameter, received, allowed, slip });
}
