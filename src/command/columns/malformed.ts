/** What is wrong with a file that DuckDB does not read, in one line. */

import { basename } from 'node:path';
import { DomainError } from '../../errors.js';

/** What DuckDB says of a row of a CSV file, by its beginning. */
const PROBLEMS: readonly (readonly [
  pattern: RegExp,
  problem: (found: RegExpExecArray) => string,
])[] = [
  [
    /Expected Number of Columns: (\d+) Found: (\d+)/,
    ([, wanted, found]) => `has ${found} fields where the head has ${wanted}`,
  ],
  [
    /unterminated quote|quote should be followed/i,
    () => 'has a quotation mark without its other one',
  ],
  [/unicode|utf-?8/i, () => 'is not in UTF-8; save the file in that encoding'],
  [/maximum line size/i, () => 'is too long'],
];

/**
 * The refusal of a file that is not what its ending says: the file, the row and what is wrong with it.
 *
 * @param path  The file.
 * @param message  What DuckDB says; its rows are counted from the head, which is 1.
 */
export function malformedFile(path: string, message: string): DomainError {
  const line = Number(/CSV Error on Line: (\d+)/.exec(message)?.[1] ?? Number.NaN);
  // Lines of the file stand in the message too, so the problem is looked for behind them.
  const told = message.replace(
    /Original Line:[\s\S]*?\n(?=Expected |Value |Invalid |Maximum |Possible )/,
    '',
  );
  const problem = PROBLEMS.map(([pattern, tell]) => {
    const found = pattern.exec(told);
    return found ? tell(found) : undefined;
  }).find(Boolean);
  const [first = ''] = message.split('\n');
  return new DomainError({
    code: 'malformed',
    parameter: 'input',
    received: basename(path),
    allowed: 'a file that is whole in every row',
    slip: Number.isNaN(line)
      ? first.replace(/^[A-Z][\w ]+ Error: /, '').trim()
      : `${line === 1 ? 'its head' : `row ${line - 1} after the head`} ${problem ?? 'cannot be read'}`,
  });
}
