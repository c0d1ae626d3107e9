import { worksheet, worksheetQti } from 'slantpath/teaching';
import { describe, expect, test } from 'vitest';
import { crc32, type TextFile, zip } from '../../site/src/lib/zip.js';

const bytes = (text: string) => new TextEncoder().encode(text);

/** Reads an archive by its central directory, as programs do. */
function unzipped(archive: Uint8Array): TextFile[] {
  const view = new DataView(archive.buffer);
  const end = archive.length - 22;
  expect(view.getUint32(end, true)).toBe(0x06054b50);
  const decode = (from: number, length: number) =>
    new TextDecoder().decode(archive.subarray(from, from + length));
  let at = view.getUint32(end + 16, true);
  expect(view.getUint32(end + 12, true)).toBe(end - at);
  return Array.from({ length: view.getUint16(end + 10, true) }, () => {
    expect(view.getUint32(at, true)).toBe(0x02014b50);
    const crc = view.getUint32(at + 16, true);
    const size = view.getUint32(at + 24, true);
    const nameLength = view.getUint16(at + 28, true);
    const local = view.getUint32(at + 42, true);
    const path = decode(at + 46, nameLength);
    at += 46 + nameLength;
    expect(view.getUint32(local, true)).toBe(0x04034b50);
    expect(decode(local + 30, nameLength)).toBe(path);
    const content = decode(local + 30 + nameLength, size);
    expect(crc32(bytes(content))).toBe(crc);
    return { path, content };
  });
}

describe('zip', () => {
  test.each([
    // Check value of CRC-32/ISO-HDLC: every catalogue of CRC algorithms gives it for these nine digits.
    ['123456789', 0xcbf43926],
    ['', 0],
    // zlib.crc32 of Python.
    ['The quick brown fox jumps over the lazy dog', 0x414fa339],
    ['é°→', 0x09932604],
  ])('CRC-32 of %j', (text, value) => {
    expect(crc32(bytes(text))).toBe(value);
  });

  test('gives back what was put in', () => {
    const files = [
      { path: 'a.txt', content: '' },
      { path: 'folder/é.xml', content: '<p>46.4° north → 170.64°</p>\n'.repeat(300) },
    ];
    expect(unzipped(zip(files))).toEqual(files);
    expect(unzipped(zip([]))).toEqual([]);
  });

  test('holds the package of a worksheet, the same for the same seed', () => {
    const files = worksheetQti(worksheet({ seed: 7, count: 5 }));
    expect(unzipped(zip(files))).toEqual(files);
    expect(zip(files)).toEqual(zip(worksheetQti(worksheet({ seed: 7, count: 5 }))));
  });
});
