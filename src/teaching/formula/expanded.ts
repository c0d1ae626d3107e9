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

/** Names joined from several words, runs of letters taken apart, units behind numbers and names marked. */
export function expanded(
  tokens: readonly Token[],
  names: NameTable,
  defined: ReadonlySet<string>,
): readonly Token[] {
  const list: Token[] = [];
  const variable = (name: string) => defined.has(name) || names.knows(name);
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    const before = list[list.length - 1];
    if (token.kind !== 'name') {
      // f(MHz), D [m]: a unit in brackets behind a name.
      const [inner, close] = [tokens[at + 1], tokens[at + 2]];
      if (
        before?.kind === 'name' &&
        /^[([]$/.test(token.text) &&
        inner?.kind === 'name' &&
        CENT.has(inner.text) &&
        /^[)\]]$/.test(close?.text ?? '') &&
        variable(before.text)
      ) {
        const counted = `${before.text}${inner.text}`;
        if (names.knows(counted)) list[list.length - 1] = { ...before, text: counted };
        at += 2;
        continue;
      }
      list.push(token);
      continue;
    }
    const single = [...token.text].length === 1;
    if (
      (before?.kind === 'number' || before?.kind === 'unit') &&
      UNITS.has(token.text) &&
      !defined.has(token.text) &&
      !(single && names.symbols.includes(token.text)) &&
      !(single && before.kind === 'number' && names.candidates(token.text).length > 0) &&
      !(functionNamed(token.text) && tokens[at + 1]?.text === '(')
    ) {
      list.push({ ...token, kind: 'unit' });
      // m/s, dBW/K/Hz: what a unit is divided by.
      while (
        tokens[at + 1]?.text === '/' &&
        tokens[at + 2]?.kind === 'name' &&
        (UNITS.has(tokens[at + 2]?.text ?? '') || tokens[at + 2]?.text === 's') &&
        !variable(tokens[at + 2]?.text ?? '')
      )
        at += 2;
      continue;
    }
    // 'site longitude', 'Δ λ', 'G/T': words that are one name together.
    const joined = [3, 2].flatMap((count) => {
      const words = tokens.slice(at, at + count);
      const slash = count === 3 && words[1]?.text === '/' && /^[GC]$/.test(words[0]?.text ?? '');
      if (words.length < count || !(slash || words.every(({ kind }) => kind === 'name'))) return [];
      const text = words.map((word) => word.text).join('');
      const apart = words.every((word) => word.text === '/' || [...word.text].length === 1);
      const together = slash || !apart || /^[Δδ]/.test(text);
      return together &&
        !words.some((word) => functionNamed(word.text)) &&
        names.knows(text) &&
        !allKnown(words)
        ? [{ text, count }]
        : [];
    })[0];
    if (joined) {
      list.push({ ...token, text: joined.text });
      at += joined.count - 1;
      continue;
    }
    if (variable(token.text) || functionNamed(token.text) || /^(?:pi|π|e)$/i.test(token.text)) {
      // tan with raised -1 and 'arc tan' are one function.
      if (/^(?:arc|inv)$/i.test(before?.text ?? '')) {
        list.pop();
        list.push({ ...token, text: `arc${token.text.toLowerCase()}` });
      } else list.push(token);
      continue;
    }
    const pieces = names.split(token.text);
    if (pieces && pieces.length > 1) {
      let start = token.at;
      pieces.forEach((text, index) => {
        list.push({ kind: 'name', text, at: start, spaced: index === 0 && token.spaced });
        start += text.length;
      });
    } else list.push(token);
  }
  return list;

  /** Words of more than a letter that are names each stay apart. */
  function allKnown(words: readonly Token[]): boolean {
    return (
      words.every(
        (word) => variable(word.text) && !/^[Δδ]$/.test(word.text) && !/^delta$/i.test(word.text),
      ) &&
      !words.some((word) => word.text === '/') &&
      !words.some((word) => /^(?:site|station|sat|satellite|slot)$/i.test(word.text))
    );
  }
}
