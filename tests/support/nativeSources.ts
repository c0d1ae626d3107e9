/**
 * Lets the test run load the sources as Node's own modules: each file of `src` is stripped of its types into a tree of its own, again
 * only when it has changed. Modules that the test runner evaluates itself cost four to seven times as much in inner loops,
 * because it reads every imported function through a getter.
 */

import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join, sep } from 'node:path';
import ts from 'typescript';
import type { Plugin } from 'vitest/config';

/** When a file was last changed, in ms. */
const changedAt = (path: string): number => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

/** Writes the JavaScript of each source file whose time is not that of what was written before. */
function written(source: string, target: string): void {
  for (const file of readdirSync(source, { recursive: true, encoding: 'utf8' })) {
    if (!file.endsWith('.ts')) continue;
    const from = join(source, file);
    const to = join(target, `${file.slice(0, -3)}.js`);
    const time = changedAt(from);
    if (Math.abs(changedAt(to) - time) < 1) continue;
    const { outputText } = ts.transpileModule(readFileSync(from, 'utf8'), {
      fileName: from,
      compilerOptions: {
        target: ts.ScriptTarget.ES2022,
        module: ts.ModuleKind.ES2022,
        inlineSourceMap: true,
        verbatimModuleSyntax: true,
      },
    });
    mkdirSync(dirname(to), { recursive: true });
    // Another run may read the file meanwhile: it sees the old one or the new one, never half of it.
    const part = `${to}.${process.pid}`;
    writeFileSync(part, outputText);
    utimesSync(part, time / 1000, time / 1000);
    renameSync(part, to);
  }
}

/** The plugin: what resolves to a file of `source` resolves to its JavaScript below `target`, a folder of `node_modules`. */
export function nativeSources(source: string, target: string): Plugin {
  written(source, target);
  return {
    name: 'native-sources',
    enforce: 'pre',
    async resolveId(id, importer, options) {
      const found = await this.resolve(id, importer, { ...options, skipSelf: true });
      if (!found?.id.startsWith(source + sep) || !found.id.endsWith('.ts')) return found;
      return join(target, `${found.id.slice(source.length + 1, -3)}.js`);
    },
  };
}
