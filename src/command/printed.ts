/** What a command prints, and how it tells what it refuses. */

import { isDomainError } from '../errors.js';

/** Prints a command's text; wrong input is one line on standard error and exit code 2. */
export async function printed(command: () => string | Promise<string>): Promise<void> {
  try {
    process.stdout.write(await command());
  } catch (error) {
    if (!isDomainError(error)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 2;
  }
}
