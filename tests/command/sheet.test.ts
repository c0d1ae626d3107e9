/** The command that prints sheets: its languages and forms, and how it refuses. */

import { expect, test } from 'vitest';
import { sheetCommand } from '../../src/command/sheetCommand.js';

const HUT = 'examples/job/tarnfell-lower-hut.json';

test('prints the sheet in the language asked for, as text and for the printer', () => {
  expect(sheetCommand([HUT])).toContain('Look at first');
  expect(sheetCommand([HUT, '--language', 'de'])).toContain('Zuerst ansehen');
  expect(sheetCommand(['--before', '--html', '--language', 'de', HUT])).toContain(
    '<html lang="de"',
  );
});

test.each([
  [['--language', 'fr', HUT], '--language must be', 'en, de'],
  [['--language', 'de', '--json', HUT], 'arguments must be', 'one form'],
  [['--json', '--compare', HUT, HUT], 'arguments must be', 'one form'],
  [['--before', '--after', HUT], 'arguments must be', 'one form'],
  [['--lang', 'de', HUT], 'arguments must be', '--language en or de'],
  [['no-job.json'], 'path must be', 'there is no such file'],
  [[], 'path must be', 'job file'],
])('refuses %j', (words, parameter, reason) => {
  expect(() => sheetCommand(words)).toThrow(parameter);
  expect(() => sheetCommand(words)).toThrow(reason);
});
