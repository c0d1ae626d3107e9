#!/usr/bin/env node
/** The command `slantpath`: the sheet of a job file, the test vectors for a program of your own, columns for a file of places. */

import { DomainError } from '../errors.js';
import { columnsCommand } from './columns/columnsCommand.js';
import { printed } from './printed.js';
import { sheetCommand } from './sheetCommand.js';
import { vectorsCommand } from './vectorsCommand.js';

const USE = `slantpath sheet [--before|--after] [--html] [--language en|de] JOB.json
slantpath sheet --json JOB.json
slantpath sheet --compare OLDER.json JOB.json
  prints the sheet of a job file, its record, or what changed since an older one

slantpath vectors [--list] [--table NAME] -- PROGRAM [ARGUMENT ...]
  asks PROGRAM the questions of the test vectors, one JSON line each on its standard input:
    {"calls": "lookAngles", "input": {"latitudeDeg": 46.4, ...}}
  and reads one answer a line, {"azimuthDeg": ..., ...} or null; says where it is wrong, and by which slip

slantpath columns INPUT OUTPUT --add FUNCTION[,FUNCTION ...] FIELD=COLUMN-OR-NUMBER ...
                  [--bad FILE.csv] [--link LINK.json] [--footprint CONTOURS.geojson] [--from DAY --to DAY]
                  [--decimal comma|point] [--threads COUNT] [--part ROWS]
  writes a CSV, NDJSON or Parquet file of places again with what the functions give for each row; needs DuckDB
  (npm install @duckdb/node-api). Functions: lookAngles, polarizationSkew, lookAnglesAndSkew, declination,
  trueToMagneticBearing, climateAt, rainAttenuation, attenuationAt, footprintLevel, availability, smallestReflector,
  decideConformity, sunOutages. A row that is refused stays in, its columns empty, and its number,
  field and reason go to OUTPUT.bad.csv. Started again after a stop, it goes on. An example:
    slantpath columns sites.csv out.csv --add lookAngles,polarizationSkew \\
      latitudeDeg=lat longitudeDeg=lon heightM=0 orbitalLongitudeDeg=16.4
`;

const [command, ...words] = process.argv.slice(2);
void printed(() => {
  if (command === 'sheet') return sheetCommand(words);
  if (command === 'vectors') {
    const { text, conforms } = vectorsCommand(words, new URL('../vectors/', import.meta.url));
    if (!conforms) process.exitCode = 1;
    return text;
  }
  if (command === 'columns')
    return columnsCommand(words, new URL('columnsWorker.js', import.meta.url));
  if (command === undefined || command === '--help') return USE;
  throw new DomainError({
    code: 'not-an-option',
    parameter: 'command',
    received: command,
    allowed: 'sheet, vectors or columns; slantpath --help says what they do',
  });
});
