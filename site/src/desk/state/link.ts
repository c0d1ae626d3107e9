/** A small job as a link: packed into the part of the address that no server sees, without persons, addresses and notes. */

import type { Draft } from './draft.js';
import { type Taken, takenFrom } from './exchange.js';

/** A link longer than this is not offered: letters, boards and chats cut longer ones. */
export const LONGEST_LINK_BYTES = 6000;

/** Fields that name a person or an address, or hold free text. */
const PRIVATE = new Set(['title', 'person', 'notes']);

/** The job without persons, address and notes. */
export function withoutPrivate(job: Draft): Draft {
  const copy = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(copy);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .filter(([key]) => !PRIVATE.has(key))
        .map(([key, inner]) => [key, copy(inner)]),
    );
  };
  const { station, ...rest } = copy(job) as Draft;
  const { name: _address, ...place } = station ?? {};
  return { ...rest, station: place };
}

const chunks = async (stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array> => {
  const reader = stream.getReader();
  const parts: Uint8Array[] = [];
  let size = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    size += next.value.length;
    if (size > most) throw new RangeError('too large');
    parts.push(next.value);
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
};

const through = (bytes: Uint8Array, by: CompressionStream | DecompressionStream, most: number) =>
  chunks(
    new Blob([bytes as Uint8Array<ArrayBuffer>])
      .stream()
      .pipeThrough(by as unknown as TransformStream<Uint8Array, Uint8Array>),
    most,
  );

/** The fragment of a link that brings this job back; `undefined` for one that would be too long. */
export async function fragmentOf(job: Draft): Promise<string | undefined> {
  const text = new TextEncoder().encode(JSON.stringify(withoutPrivate(job)));
  const packed = await through(text, new CompressionStream('deflate-raw'), 1e6);
  let binary = '';
  for (const byte of packed) binary += String.fromCharCode(byte);
  const line = btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
  return line.length > LONGEST_LINK_BYTES ? undefined : `#job=${line}`;
}

/** The job of a fragment; `undefined` where it holds none. */
export async function takenFromFragment(fragment: string): Promise<Taken | undefined> {
  const [, line] = /^#job=([\w-]+)$/.exec(fragment) ?? [];
  if (line === undefined) return undefined;
  try {
    const binary = atob(line.replaceAll('-', '+').replaceAll('_', '/'));
    const packed = Uint8Array.from(binary, (sign) => sign.charCodeAt(0));
    const text = await through(packed, new DecompressionStream('deflate-raw'), 5_000_000);
    return takenFrom(new TextDecoder().decode(text));
  } catch {
    return { kind: 'not-json' };
  }
}
