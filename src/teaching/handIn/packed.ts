/** What a class types as answers, packed: half a byte for each sign of a number, anything else as UTF-8 behind a mark. */

import { utf8Bytes, utf8Text } from './utf8.js';

/** Signs of a number by their half-byte. */
const SIGNS = '0123456789.,-';
const TEXT = 13;
const NEXT = 14;
const END = 15;

/** Half-bytes of one typed text; the rest of it from the first other sign on stands as bytes up to a zero. */
function packedEntry(entry: string): number[] {
  const plain = entry.trim().replace(/[−–]/g, '-');
  const first = [...plain].findIndex((sign) => !SIGNS.includes(sign));
  const number = first < 0 ? plain : plain.slice(0, first);
  const halves = [...number].map((sign) => SIGNS.indexOf(sign));
  if (first < 0) return halves;
  const bytes = [...utf8Bytes(plain.slice(first)), 0];
  return [...halves, TEXT, ...bytes.flatMap((byte) => [byte >> 4, byte & 15])];
}

/** Lists of typed texts, one list for each exercise, as values of 0 to 31; empty texts at the end of a list cost nothing. */
export function packed(lists: readonly (readonly string[])[]): readonly number[] {
  const halves = lists.flatMap((list) => {
    let length = list.length;
    while (length > 0 && (list[length - 1] ?? '').trim() === '') length--;
    return [
      ...list
        .slice(0, length)
        .flatMap((entry, at) => [...(at === 0 ? [] : [NEXT]), ...packedEntry(entry)]),
      END,
    ];
  });
  const bits = halves.map((half) => half.toString(2).padStart(4, '0')).join('');
  return (bits.match(/.{1,5}/g) ?? []).map((five) => Number.parseInt(five.padEnd(5, '0'), 2));
}

/** The lists of {@link packed}, of which there must be `count`; `undefined` where the values are no such lists. */
export function unpacked(values: readonly number[], count: number): string[][] | undefined {
  const bits = values.map((value) => value.toString(2).padStart(5, '0')).join('');
  const halves = (bits.match(/.{4}/g) ?? []).map((four) => Number.parseInt(four, 2));
  const lists: string[][] = [];
  let list = [''];
  let at = 0;
  const put = (text: string) => {
    list[list.length - 1] += text;
  };
  while (lists.length < count) {
    const half = halves[at++];
    if (half === undefined) return undefined;
    if (half < TEXT) put(SIGNS[half] as string);
    else if (half === NEXT) list.push('');
    else if (half === END) {
      lists.push(list);
      list = [''];
    } else {
      const bytes: number[] = [];
      for (;;) {
        const [high, low] = [halves[at], halves[at + 1]];
        at += 2;
        if (high === undefined || low === undefined) return undefined;
        if (high === 0 && low === 0) break;
        bytes.push(16 * high + low);
      }
      put(utf8Text(bytes));
    }
  }
  // What is left fills the last symbol up with zeros.
  return /^0{0,4}$/.test(bits.slice(4 * at)) ? lists : undefined;
}
