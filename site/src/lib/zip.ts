/** ZIP archives of text files, stored without compression: enough for a package of a few small files. */

/** A file: path and text. */
export interface TextFile {
  readonly path: string;
  readonly content: string;
}

const TABLE = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/** CRC-32 as ZIP wants it (ISO 3309). */
export function crc32(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) value = (value >>> 8) ^ (TABLE[(value ^ byte) & 0xff] ?? 0);
  return (value ^ 0xffffffff) >>> 0;
}

/** Numbers as little-endian bytes: `[value, size]`. */
function packed(fields: readonly (readonly [value: number, size: 2 | 4])[]): number[] {
  return fields.flatMap(([value, size]) =>
    Array.from({ length: size }, (_, index) => (value >>> (8 * index)) & 0xff),
  );
}

/** 1 January 1980, so that the same files give the same archive. */
const DATE = 0x21;
/** Names and contents are UTF-8. */
const UTF8 = 0x800;

/**
 * An archive of the files in the order given.
 *
 * Source: PKWARE APPNOTE 6.3, method 0 (stored), without ZIP64.
 */
export function zip(files: readonly TextFile[]): Uint8Array<ArrayBuffer> {
  const encoder = new TextEncoder();
  const chunks: Uint8Array[] = [];
  const directory: number[] = [];
  let offset = 0;
  const add = (bytes: Uint8Array) => {
    chunks.push(bytes);
    offset += bytes.length;
  };
  for (const { path, content } of files) {
    const name = encoder.encode(path);
    const data = encoder.encode(content);
    const common: readonly (readonly [number, 2 | 4])[] = [
      [20, 2],
      [UTF8, 2],
      [0, 2],
      [0, 2],
      [DATE, 2],
      [crc32(data), 4],
      [data.length, 4],
      [data.length, 4],
      [name.length, 2],
      [0, 2],
    ];
    directory.push(
      ...packed([[0x02014b50, 4], [20, 2], ...common, [0, 2], [0, 2], [0, 2], [0, 4], [offset, 4]]),
      ...name,
    );
    add(Uint8Array.from(packed([[0x04034b50, 4], ...common])));
    add(name);
    add(data);
  }
  const start = offset;
  add(Uint8Array.from(directory));
  add(
    Uint8Array.from(
      packed([
        [0x06054b50, 4],
        [0, 2],
        [0, 2],
        [files.length, 2],
        [files.length, 2],
        [directory.length, 4],
        [start, 4],
        [0, 2],
      ]),
    ),
  );
  const archive = new Uint8Array(offset);
  let at = 0;
  for (const chunk of chunks) {
    archive.set(chunk, at);
    at += chunk.length;
  }
  return archive;
}
