/** Tokens as people mean them: names of several words joined, runs of letters taken apart, units marked. */

import { functionNamed } from './functionNames.js';
import type { NameTable } from './nameTable.js';
import type { Token } from './tokens.js';

/** Units that may stand behind a number. */
const UNITS: ReadonlySet<string> = new Set(
  'km m cm mm GHz MHz kHz Hz dB dBi dBm dBW dBµV dBuV K W mW kW deg degrees rad s µs ns V mV ft miles mi inch Ohm ohm kBd MBd MSps'.split(
    ' ',
  ),
);
const CENT = new Set([
  'dBi',
  'dB',
  'dBW',
  'dBm',
  'deg',
  'GHz',
  'MHz',
  'km',
  'm',
  'cm',
  'mm',
  'Hz',
  'rad',
]);

/** What the steps below share: the tokens, the names that are known, and the list that grows. */
interface Expansion {
  readonly tokens: readonly Token[];
  readonly names: NameTable;
  readonly defined: ReadonlySet<string>;
  readonly list: Token[];
  readonly variable: (name: string) => boolean;
}

/** A step at a token: how many tokens it took, 0 where it does not apply. */
type Step = (from: Expansion, at: number, token: Token, before: Token | undefined) => number;

/** f(MHz), D [m]: a unit in brackets behind a name. */
const bracketedUnit: Step = ({ tokens, names, list, variable }, at, token, before) => {
  const [inner, close] = [tokens[at + 1], tokens[at + 2]];
  if (
    before?.kind !== 'name' ||
    !/^[([]$/.test(token.text) ||
    inner?.kind !== 'name' ||
    !CENT.has(inner.text) ||
    !/^[)\]]$/.test(close?.text ?? '') ||
    !variable(before.text)
  )
    return 0;
  const counted = `${before.text}${inner.text}`;
  if (names.knows(counted)) list[list.length - 1] = { ...before, text: counted };
  return 3;
};

/** A unit behind a number, with what it is divided by: m/s, dBW/K/Hz. */
const unitBehind: Step = ({ tokens, names, defined, list, variable }, at, token, before) => {
  const single = [...token.text].length === 1;
  if (
    !(before?.kind === 'number' || before?.kind === 'unit') ||
    !UNITS.has(token.text) ||
    defined.has(token.text) ||
    (single && names.symbols.includes(token.text)) ||
    (single && before.kind === 'number' && names.candidates(token.text).length > 0) ||
    (functionNamed(token.text) && tokens[at + 1]?.text === '(')
  )
    return 0;
  list.push({ ...token, kind: 'unit' });
  let taken = 1;
  for (;;) {
    const [slash, below] = [tokens[at + taken], tokens[at + taken + 1]];
    if (slash?.text !== '/' || below?.kind !== 'name' || variable(below.text)) return taken;
    if (!UNITS.has(below.text) && below.text !== 's') return taken;
    taken += 2;
  }
};

/** 'site longitude', 'Δ λ', 'G/T': words that are one name together. */
const joinedWords: Step = ({ tokens, names, list, variable }, at, token) => {
  for (const count of [3, 2]) {
    const words = tokens.slice(at, at + count);
    const slash = count === 3 && words[1]?.text === '/' && /^[GC]$/.test(words[0]?.text ?? '');
    if (words.length < count || !(slash || words.every(({ kind }) => kind === 'name'))) continue;
    const text = words.map((word) => word.text).join('');
    const apart = words.every((word) => word.text === '/' || [...word.text].length === 1);
    const together = slash || !apart || /^[Δδ]/.test(text);
    if (!together || words.some((word) => functionNamed(word.text)) || !names.knows(text)) continue;
    if (namesEach(words, variable)) continue;
    list.push({ ...token, text });
    return count;
  }
  return 0;
};

/** Words of more than a letter that are names each stay apart. */
function namesEach(words: readonly Token[], variable: (name: string) => boolean): boolean {
  return (
    words.every(
      (word) => variable(word.text) && !/^[Δδ]$/.test(word.text) && !/^delta$/i.test(word.text),
    ) &&
    !words.some((word) => word.text === '/') &&
    !words.some((word) => /^(?:site|station|sat|satellite|slot)$/i.test(word.text))
  );
}

/** A name that is known as it stands; tan with raised -1 and 'arc tan' are one function. */
const knownName: Step = ({ list, variable }, _, token, before) => {
  if (!variable(token.text) && !functionNamed(token.text) && !/^(?:pi|π|e)$/i.test(token.text))
    return 0;
  if (/^(?:arc|inv)$/i.test(before?.text ?? '')) {
    list.pop();
    list.push({ ...token, text: `arc${token.text.toLowerCase()}` });
  } else list.push(token);
  return 1;
};

/** A run of letters that are names each. */
const lettersApart: Step = ({ names, list }, _, token) => {
  const pieces = names.split(token.text);
  if (!pieces || pieces.length < 2) return 0;
  let start = token.at;
  for (const [index, text] of pieces.entries()) {
    list.push({ kind: 'name', text, at: start, spaced: index === 0 && token.spaced });
    start += text.length;
  }
  return 1;
};

const AT_A_NAME: readonly Step[] = [unitBehind, joinedWords, knownName, lettersApart];
const AT_A_MARK: readonly Step[] = [bracketedUnit];

/** Names joined from several words, runs of letters taken apart, units behind numbers and names marked. */
export function expanded(
  tokens: readonly Token[],
  names: NameTable,
  defined: ReadonlySet<string>,
): readonly Token[] {
  const list: Token[] = [];
  const variable = (name: string) => defined.has(name) || names.knows(name);
  const from = { tokens, names, defined, list, variable };
  let at = 0;
  for (let token = tokens[at]; token !== undefined; token = tokens[at]) {
    let taken = 0;
    for (const step of token.kind === 'name' ? AT_A_NAME : AT_A_MARK) {
      taken = step(from, at, token, list[list.length - 1]);
      if (taken > 0) break;
    }
    if (taken === 0) list.push(token);
    at += Math.max(1, taken);
  }
  return list;
}
