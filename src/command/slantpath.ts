#!/usr/bin/env node
/** The command `slantpath`: the sheet of a job file, and the test vectors for a program of your own. */

import { printed } from './printed.js';
import { sheetCommand } from './sheetCommand.js';
import { vectorsCommand } from './vectorsCommand.js';

const USE = `slantpath sheet [--before|--after] [--html|--json] [--compare OLDER] JOB.json
  prints the sheet of a job file, its record, or what changed since an older one

slantpath vectors [--list] [--table NAME] -- PROGRAM [ARGUMENT ...]
  asks PROGRAM the questions of the test vectors, one JSON line each on its standard input:
    {"calls": "lookAngles", "input": {"latitudeDeg": 46.4, ...}}
  and reads one answer a line, {"azimuthDeg": ..., ...} or null; says where it is wrong, and by which slip
`;

const [command, ...words] = process.argv.slice(2);
printed(() => {
  if (command === 'sheet') return sheetCommand(words);
  if (command === 'vectors') {
    const { text, conforms } = vectorsCommand(words, new URL('../vectors/', import.meta.url));
    if (!conforms) process.exitCode = 1;
    return text;
  }
  if (command !== undefined && command !== '--help') process.exitCode = 2;
  return USE;
});
