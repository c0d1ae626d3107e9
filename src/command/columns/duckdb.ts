/** DuckDB, which reads and writes the files: an optional peer that is loaded when the command asks for it. */

import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { DomainError } from '../../errors.js';

/** A column of a chunk. */
interface DuckVector {
  getItem(row: number): number | bigint | string | null;
}
/** Some rows of a result. */
export interface DuckChunk {
  rowCount: number;
  getColumnVector(column: number): DuckVector;
  setColumnValues(column: number, values: ArrayLike<unknown>): void;
}
interface DuckAppender {
  appendDataChunk(chunk: DuckChunk): void;
  closeSync(): void;
}
export interface DuckConnection {
  run(sql: string): Promise<unknown>;
  runAndReadAll(sql: string): Promise<{ getRowsJson(): unknown[][] }>;
  stream(sql: string): Promise<{ fetchChunk(): Promise<DuckChunk | null> }>;
  createAppender(table: string, schema?: string, catalog?: string): Promise<DuckAppender>;
  closeSync(): void;
}
interface DuckInstance {
  connect(): Promise<DuckConnection>;
  closeSync(): void;
}
/** What the command takes of `@duckdb/node-api`; types of our own, because it need not be installed. */
export interface DuckDb {
  readonly DuckDBInstance: {
    create(path: string, options?: Record<string, string>): Promise<DuckInstance>;
  };
  readonly DuckDBDataChunk: { create(types: readonly unknown[], rows?: number): DuckChunk };
  readonly DOUBLE: unknown;
  readonly VARCHAR: unknown;
}

/** A name in a variable, so that no bundler and no checker of types looks for it. */
const NAME = '@duckdb/node-api';

/** Loads a module that lies beside this package, or else where the command is called. */
async function beside(name: string): Promise<unknown> {
  try {
    return await import(name);
  } catch {
    const here = createRequire(join(process.cwd(), 'here.js'));
    return import(pathToFileURL(here.resolve(name)).href);
  }
}

/**
 * DuckDB, or what to do where it is not there.
 *
 * @param load  How a module is loaded.
 */
export async function loadDuckDb(
  load: (name: string) => Promise<unknown> = beside,
): Promise<DuckDb> {
  try {
    return (await load(NAME)) as DuckDb;
  } catch (error) {
    const reason = error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error);
    throw new DomainError({
      code: 'missing',
      parameter: NAME,
      received: undefined,
      allowed: `installed beside slantpath to read and write files: npm install ${NAME}`,
      slip: reason,
    });
  }
}

/** A name in SQL. */
export const quoted = (name: string) => `"${name.replaceAll('"', '""')}"`;
/** A text in SQL. */
export const text = (value: string) => `'${value.replaceAll("'", "''")}'`;
