/** Sentences of README, pages and `Accuracy:` lines that promise a number. */

import { readdirSync, readFileSync, statSync } from 'node:fs';

/** A claim: where it stands, of which function if of one, and its words. */
export interface Claim {
  readonly file: string;
  readonly name: string;
  readonly text: string;
}

/** Words that make a number a promise. */
const PROMISE = /\b(within|at most|at least|worst|better than|good to|off by|up to|differ)\b/;
const NUMBER = /\d[\d.,]* ?(%|percent|°|dB|degree|nT|mm|m\b|km|s\b|kB|ratio)|\de-\d/;

function filesOf(folder: string, ending: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = `${folder}/${name}`;
    if (statSync(path).isDirectory()) return path === 'docs/de' ? [] : filesOf(path, ending);
    return name.endsWith(ending) ? [path] : [];
  });
}

const inOne = (text: string) => text.replace(/\s+/g, ' ').trim();

/** Sentences of a page that promise a number; tables, code and front matter left out. */
function ofPage(file: string): Claim[] {
  const text = readFileSync(file, 'utf8')
    .replace(/^---[\s\S]*?\n---\n/, '')
    .replace(/```[\s\S]*?```/g, '');
  return text
    .split(/\n\s*\n|\n- |\n\|/)
    .map(inOne)
    .filter((paragraph) => !/^\||\|$/.test(paragraph))
    .flatMap((paragraph) => paragraph.split(/(?<=[.:;]) (?=[A-Z])/))
    .filter((sentence) => PROMISE.test(sentence) && NUMBER.test(sentence))
    .map((sentence) => ({ file, name: '', text: sentence.replace(/^- /, '') }));
}

/** `Accuracy:` lines above exported functions that have a number. */
function ofSource(file: string): Claim[] {
  const text = readFileSync(file, 'utf8');
  return [
    ...text.matchAll(
      /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export (?:async )?(?:function|const) (\w+)/g,
    ),
  ].flatMap(([, comment = '', name = '']) => {
    const plain = comment.replace(/\n\s*\* ?/g, ' ');
    const said = /Accuracy:([\s\S]*?)(?=@example|@throws|@param|Source:|$)/.exec(plain)?.[1];
    return said !== undefined && /\d/.test(said) ? [{ file, name, text: inOne(said) }] : [];
  });
}

/** All claims, README first. */
export function allClaims(): readonly Claim[] {
  return [
    ...ofPage('README.md'),
    ...filesOf('docs', '.mdx').sort().flatMap(ofPage),
    ...filesOf('src', '.ts').sort().flatMap(ofSource),
  ];
}

/** A text as it stands in a cell of a table. */
export const cell = (text: string): string => text.replaceAll('|', '\\|');
