import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BitEncoder } from '../../.ci/climate/bitEncoder.js';
import { gridFile } from '../../.ci/climate/build.js';
import type { BuiltLayer } from '../../.ci/climate/builtLayer.js';
import { fieldOf } from '../../.ci/climate/field.js';
import { fitted } from '../../.ci/climate/leastSquares.js';
import { passed, plainModel } from '../../.ci/climate/training.js';
import { BitDecoder, base64Bytes } from '../../src/climate/grid/bitDecoder.js';
import { checkedGridFile } from '../../src/climate/grid/gridFile.js';
import { tiledLayers } from '../../src/climate/grid/tiles.js';
import { tileNodes, tileOf } from '../../src/climate/grid/tiling.js';
import { runs } from '../support/runs.js';

const even = (contexts: number) => new Uint16Array(contexts).fill(16384);

/** A layer of whole numbers by tiles, `choose` giving each. */
function layerOf(
  rows: number,
  tileRows: number,
  choose: (index: number, predicted: number) => number,
  more: { companion?: BuiltLayer; departures?: Int8Array; name?: string } = {},
): BuiltLayer {
  const { companion, departures, name = 'one' } = more;
  let model = plainModel(tileRows, companion !== undefined);
  model = passed(rows, tileRows, model, companion, choose).next;
  const { field, tiles } = passed(rows, tileRows, model, companion, choose);
  const plan = {
    name,
    rows,
    transform: departures ? 'logarithm-of-one-plus' : 'linear',
    scale: 1,
    step: 1,
    seaSteps: 1,
    companion: companion?.plan.name ?? '',
    ...(departures ? { refinement: { step: 1, from: 1 } } : {}),
    field: () => fieldOf(rows, () => 0),
  } as const;
  return { plan, field, tiles, model, layer: undefined as never, departures, errors: undefined };
}

/** What comes back of layers written to a file and read. */
function backOf(layers: readonly BuiltLayer[], tileRows: number) {
  const file = JSON.parse(JSON.stringify(gridFile(layers, 'a test', tileRows)));
  const back = tiledLayers(checkedGridFile(file));
  const length = file.tiles.reduce((sum: number, text: string) => sum + text.length, 0);
  return { back, bytes: (length * 3) / 4 };
}

describe('the code of the grid', () => {
  test('bits come back whatever their odds', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(3), fc.integer({ min: 0, max: 1 })), { maxLength: 3000 }),
        (bits) => {
          const encoder = new BitEncoder(even(4));
          for (const [context, bit] of bits) encoder.bit(context, bit);
          const decoder = new BitDecoder(encoder.finish(), even(4));
          expect(bits.map(([context]) => decoder.bit(context))).toEqual(bits.map(([, bit]) => bit));
        },
      ),
    );
  });

  test('a long run of the same bit costs little and comes back to the last', () => {
    const encoder = new BitEncoder(even(1));
    for (let count = 0; count < 20000; count++) encoder.bit(0, 0);
    encoder.bit(0, 1);
    const bytes = encoder.finish();
    expect(bytes.length).toBeLessThan(60);
    const decoder = new BitDecoder(bytes, even(1));
    for (let count = 0; count < 20000; count++) if (decoder.bit(0) !== 0) expect(count).toBe(-1);
    expect(decoder.bit(0)).toBe(1);
  });

  test('whole numbers come back from tiles, with and without a companion and a refinement', () => {
    const whole = fc.oneof(
      fc.integer({ min: -3, max: 3 }),
      fc.integer({ min: -200, max: 200 }),
      fc.integer({ min: -4000, max: 4000 }),
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 1, max: 4 }),
        fc.array(whole, { minLength: 288, maxLength: 288 }),
        (rows, tileRows, numbers) => {
          const columns = 2 * (rows - 1);
          const value = (index: number) => numbers[index % 288] as number;
          const finer = Int8Array.from({ length: (2 * rows - 1) * 2 * columns }, (_, index) =>
            Math.max(-40, Math.min(40, Math.trunc(value(index + 7) / 80))),
          );
          const one = layerOf(rows, tileRows, value, { departures: finer });
          const other = (index: number) => value(index) + (value(index + 3) % 5);
          const two = layerOf(rows, tileRows, other, { companion: one, name: 'two' });
          const { back } = backOf([one, two], tileRows);
          for (let row = 0; row < rows; row++)
            for (let column = 0; column < columns; column++) {
              const index = row * columns + column;
              expect(back('one').at(row, column)).toBe(value(index));
              expect(back('two').at(row, column)).toBe(other(index));
              for (const [down, east] of row < rows - 1
                ? [
                    [0, 0],
                    [0, 1],
                    [1, 0],
                    [1, 1],
                  ]
                : [])
                expect(back('one').refinedBy(2 * row + (down ?? 0), 2 * column + (east ?? 0))).toBe(
                  finer[(2 * row + (down ?? 0)) * 2 * columns + 2 * column + (east ?? 0)],
                );
            }
        },
      ),
      { numRuns: runs(40, 10) },
    );
  });

  test('every node belongs to one tile, and the tile knows where it is', () => {
    for (const [rows, tileRows] of [
      [361, 15],
      [81, 15],
      [37, 15],
      [5, 7],
    ] as const)
      for (let row = 0; row < rows; row++)
        for (let column = 0; column < 2 * (rows - 1); column++) {
          const nodes = tileNodes(tileOf(row, column, rows, tileRows), rows, tileRows);
          const inside =
            row >= nodes.row &&
            row < nodes.row + nodes.height &&
            column >= nodes.column &&
            column < nodes.column + nodes.width;
          if (!inside) expect([row, column, rows]).toEqual(nodes);
        }
  });

  test('a smooth field costs far less than a bit for each node', () => {
    const smooth = fieldOf(91, ({ latitudeDeg, longitudeDeg }) =>
      Math.round(40 * Math.cos(latitudeDeg / 30) + 10 * Math.sin(longitudeDeg / 40)),
    );
    const layer = layerOf(91, 3, (index, predicted) => {
      const wanted = smooth.values[index] as number;
      return Math.abs(wanted - predicted) <= 0.5 ? predicted : Math.round(wanted);
    });
    expect((8 * backOf([layer], 3).bytes) / smooth.values.length).toBeLessThan(1);
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
