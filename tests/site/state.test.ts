/** The state of worked examples: text, URL, values and the field to blame. */

import fc from 'fast-check';
import { DomainError } from 'slantpath';
import { describe, expect, test } from 'vitest';
import {
  choice,
  number,
  optionalNumber,
  place,
  rows,
  text,
  toggle,
} from '../../site/src/lib/inputs/inputs.js';
import {
  blamedField,
  decodeState,
  defaultsOf,
  encodeState,
  joinRows,
  readValues,
  splitRows,
} from '../../site/src/lib/inputs/state.js';

const inputs = {
  station: place(),
  other: place({ prefix: 'far', value: { latitudeDeg: -30, longitudeDeg: 141, heightM: 0 } }),
  orbitalLongitudeDeg: number({ label: 'Slot', value: 16.4, step: 0.1 }),
  skewDeg: optionalNumber({ label: 'Skew', step: 1, empty: 'none' }),
  polarization: choice({ label: 'Polarization', options: { h: 'flat', v: 'upright' }, value: 'h' }),
  wet: toggle({ label: 'Wet', value: false }),
  formula: text({ label: 'Formula', value: 'a*b_c' }),
  samples: rows({
    label: 'Samples',
    columns: {
      positionDeg: { label: 'Position' },
      levelDbm: { label: 'Level' },
      kind: { label: 'Kind', options: { up: 'up', down: 'down' } },
    },
    value: [{ positionDeg: -0.5, levelDbm: -43, kind: 'up' }],
    add: { positionDeg: 0, levelDbm: 0, kind: 'up' },
  }),
};
const defaults = defaultsOf(inputs);

describe('state of an example', () => {
  test('the defaults give the declared values and an empty URL', () => {
    expect(readValues(inputs, defaults)).toEqual({
      station: { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 },
      other: { latitudeDeg: -30, longitudeDeg: 141, heightM: 0 },
      orbitalLongitudeDeg: 16.4,
      skewDeg: undefined,
      polarization: 'h',
      wet: false,
      formula: 'a*b_c',
      samples: [{ positionDeg: -0.5, levelDbm: -43, kind: 'up' }],
    });
    expect(encodeState(defaults, defaults)).toBe('');
  });

  test('the URL holds what differs, readable, with a plain number for what was typed', () => {
    const raw = {
      ...defaults,
      latitudeDeg: '−12,5',
      farHeightM: '300',
      wet: 'yes',
      samples: joinRows([
        ['-0.6', '-43', 'up'],
        ['0', '-41', 'down'],
      ]),
    };
    const query = encodeState(raw, defaults);
    expect(query).toBe('latitudeDeg=-12.5&farHeightM=300&wet=yes&samples=-0.6_-43_up*0_-41_down');
    expect(readValues(inputs, decodeState(query, defaults))).toEqual(readValues(inputs, raw));
  });

  test('any text in any field survives the URL', () => {
    const fields = Object.keys(defaults);
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...fields), fc.string()), (typed) => {
        const raw = { ...defaults, ...typed };
        const back = decodeState(encodeState(raw, defaults), defaults);
        for (const field of fields) {
          const number = Number(raw[field]?.trim().replace(',', '.'));
          if (back[field] !== raw[field]) expect(Number(back[field])).toBe(number);
        }
      }),
    );
  });

  test('rows of any cells survive joining', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.string({ unit: 'grapheme' }), { minLength: 2, maxLength: 2 })),
        (cells) => {
          expect(splitRows(joinRows(cells))).toEqual(cells);
        },
      ),
    );
  });

  test('unknown names in the URL are ignored', () => {
    expect(decodeState('?utm=1&__proto__=2', defaults)).toEqual(defaults);
  });

  test.each([
    ['orbitalLongitudeDeg', 'east', 'orbitalLongitudeDeg'],
    ['latitudeDeg', '', 'latitudeDeg'],
    ['skewDeg', 'x', 'skewDeg'],
    ['polarization', 'q', 'polarization'],
    ['samples', '1_2_up*3__up', 'samples[1].levelDbm'],
    ['samples', '1_2_sideways', 'samples[0].kind'],
  ])('unreadable %s=%s is refused by name', (field, line, parameter) => {
    let caught: unknown;
    try {
      readValues(inputs, { ...defaults, [field]: line });
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(DomainError);
    expect((caught as DomainError).parameter).toBe(parameter);
  });

  test('empty rows are left out', () => {
    const { samples } = readValues(inputs, { ...defaults, samples: '1_2_up*__' });
    expect(samples).toHaveLength(1);
  });

  test('an error of the library finds its field', () => {
    expect(blamedField(inputs, 'orbitalLongitudeDeg')).toBe('orbitalLongitudeDeg');
    expect(blamedField(inputs, 'station.latitudeDeg')).toBe('latitudeDeg');
    expect(blamedField(inputs, 'samples[2].levelDbm')).toBe('samples');
    expect(blamedField(inputs, 'elsewhere')).toBeUndefined();
  });
});
