import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BitEncoder } from '../../.ci/climate/bitEncoder.js';
import { encoded, fieldOf } from '../../.ci/climate/field.js';
import { fitted } from '../../.ci/climate/leastSquares.js';
import { BitDecoder, base64Bytes, Odds } from '../../src/climate/bitDecoder.js';
import { codeField } from '../../src/climate/fieldCode.js';
import { CONTEXTS } from '../../src/climate/surprise.js';

describe('the code of the grid', () => {
  test('bits come back whatever their odds', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(3), fc.integer({ min: 0, max: 1 })), { maxLength: 3000 }),
        (bits) => {
          const encoder = new BitEncoder(new Odds(4));
          for (const [context, bit] of bits) encoder.bit(context, bit);
          const decoder = new BitDecoder(encoder.finish(), new Odds(4));
          expect(bits.map(([context]) => decoder.bit(context))).toEqual(bits.map(([, bit]) => bit));
        },
      ),
    );
  });

  test('a long run of the same bit costs little and comes back to the last', () => {
    const encoder = new BitEncoder(new Odds(1));
    for (let count = 0; count < 100000; count++) encoder.bit(0, 0);
    encoder.bit(0, 1);
    const bytes = encoder.finish();
    expect(bytes.length).toBeLessThan(200);
    const decoder = new BitDecoder(bytes, new Odds(1));
    for (let count = 0; count < 100000; count++) if (decoder.bit(0) !== 0) expect(count).toBe(-1);
    expect(decoder.bit(0)).toBe(1);
  });

  test('fields of any whole numbers of 16 bits come back, with and without a companion', () => {
    const whole = fc.oneof(
      fc.integer({ min: -3, max: 3 }),
      fc.integer({ min: -200, max: 200 }),
      fc.integer({ min: -16000, max: 16000 }),
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 9 }),
        fc.array(whole, { minLength: 288, maxLength: 288 }),
        (rows, numbers) => {
          const field = fieldOf(rows, (_, index) => numbers[index % 288] as number);
          const polar = { ...field, values: field.values.map((value) => Math.round(value) + 0) };
          const first = encoded(polar, () => 0);
          expect([...first.field.values.subarray(field.columns)]).toEqual([
            ...polar.values.subarray(field.columns),
          ]);
          const second = encoded(polar, () => 0, first.field);
          const decoder = new BitDecoder(second.bytes, new Odds(CONTEXTS));
          expect(codeField(decoder, field, first.field)).toEqual(second.field);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('a smooth field costs far less than a bit for each node', () => {
    const smooth = fieldOf(91, ({ latitudeDeg, longitudeDeg }) =>
      Math.round(40 * Math.cos(latitudeDeg / 30) + 10 * Math.sin(longitudeDeg / 40)),
    );
    const { bytes } = encoded(smooth, () => 0.5);
    expect((8 * bytes.length) / smooth.values.length).toBeLessThan(1);
  });

  test('a node never strays further from what is wanted than its tolerance', () => {
    const wave = fieldOf(
      31,
      ({ latitudeDeg, longitudeDeg }) => latitudeDeg / 3 + 4 * Math.sin(longitudeDeg / 9),
    );
    const { field } = encoded(wave, (index) => (index % 2 === 0 ? 0.5 : 2));
    for (let index = field.columns; index < field.values.length; index++)
      expect(
        Math.abs((field.values[index] as number) - (wave.values[index] as number)),
      ).toBeLessThanOrEqual(index % 2 === 0 ? 0.5 : 2);
  });

  test('bytes come back from base64 and a foreign sign is named', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 50 }), (bytes) => {
        const text = Buffer.from(bytes).toString('base64').replace(/=+$/, '');
        expect([...base64Bytes('data', text)]).toEqual([...bytes]);
      }),
    );
    for (const text of ['AA!A', 'AAé'])
      expect(() => base64Bytes('data', text)).toThrow(/data\[2\] must be base64 text/);
  });
});

describe('the fit of a coarse grid', () => {
  test('finds the grid again that a fine field was interpolated from', () => {
    const coarse = fieldOf(7, ({ latitudeDeg, longitudeDeg }) =>
      Math.abs(latitudeDeg) === 90 ? 3 : Math.sin(latitudeDeg) + Math.cos(longitudeDeg),
    );
    const fine = fieldOf(25, ({ latitudeDeg, longitudeDeg }) => {
      const [south, east] = [(90 - latitudeDeg) / 30, (longitudeDeg + 180) / 30];
      const row = Math.min(5, Math.floor(south));
      const column = Math.floor(east);
      const [s, e] = [south - row, east - column];
      const at = (down: number, right: number) =>
        coarse.values[(row + down) * 12 + ((column + right) % 12)] as number;
      return (
        (1 - s) * ((1 - e) * at(0, 0) + e * at(0, 1)) + s * ((1 - e) * at(1, 0) + e * at(1, 1))
      );
    });
    const back = fitted(fine, 7, new Float64Array(fine.values.length).fill(1));
    back.values.forEach((value, index) => {
      expect(value).toBeCloseTo(coarse.values[index] as number, 2);
    });
  });
});
