/** The fields of one part of the distribution. */

import type { LoosePart } from '../../state/draft.js';
import { cableTypes } from '../../state/newParts.js';
import { listAt } from '../../state/paths.js';
import type { Desk } from '../desk.js';
import { choice, more, number, type Part, rowsOf, text } from '../parts.js';
import { byFrequency, decibels } from './decibels.js';

/** A length of cable: its type by name, or by its own figures. */
function cableFields({ words }: Desk, part: LoosePart, path: string): readonly Part[] {
  const w = words.outlets;
  const types = cableTypes(part);
  return [
    {
      kind: 'own',
      name: `cable:${path}`,
      label: w.cable,
      value: types.chosen,
      options: { ...(types.own ? { [types.chosen]: types.own } : {}), ...types.known },
    },
    number(`${path}.lengthM`, w.length, 'm'),
  ];
}

/** The figures of a cable, for one that is in no list. */
const cableMore = ({ words }: Desk, path: string): readonly Part[] => {
  const w = words.outlets;
  const cable = `${path}.cable`;
  return [
    text(`${cable}.name`, w.cableName),
    number(`${cable}.skinLossDbPer100m`, w.skinLoss, 'dB'),
    number(`${cable}.dielectricLossDbPer100m`, w.dielectricLoss, 'dB', {
      empty: '0',
      signed: true,
    }),
    number(`${cable}.loopResistanceOhmPer100m`, w.resistance, 'Ω', { empty: '0' }),
    number(`${cable}.temperaturePercentPerK`, w.perKelvin, '%/K', { empty: '0.2' }),
  ];
};

/** What a powered part takes. */
const supplyFields = ({ words }: Desk, path: string): readonly Part[] => [
  number(`${path}.supply.currentA`, words.outlets.current, 'A'),
  number(`${path}.supply.minimumVoltageV`, words.outlets.voltage, 'V'),
];

/** The fields of an amplifier. */
function amplifierFields(desk: Desk, part: LoosePart, path: string): readonly Part[] {
  const w = desk.words.outlets;
  return [
    decibels(desk, part, `${path}.gainDb`, w.gain),
    number(`${path}.noiseFigureDb`, w.noise, 'dB'),
    number(`${path}.maximumOutputDbuv`, w.overload, 'dBµV', { empty: '–' }),
  ];
}

/** Its fields that are asked seldom. */
function amplifierMore(desk: Desk, part: LoosePart, path: string): readonly Part[] {
  const w = desk.words.outlets;
  return [
    ...byFrequency(desk, part, `${path}.gainDb`, w.gain),
    number(`${path}.automaticGain.outputLevelDbuv`, w.steadyLevel, 'dBµV'),
    number(`${path}.automaticGain.rangeDb`, w.steadyRange, 'dB'),
    ...supplyFields(desk, path),
    choice(`${path}.passesSupply`, w.passesSupply, w.passes),
  ];
}

/** Inputs of a switch. */
function inputRows(desk: Desk, part: LoosePart, path: string): Part {
  const w = desk.words.outlets;
  const list = `${path}.inputs`;
  const inputs = listAt(part, 'inputs') as readonly LoosePart[];
  return rowsOf(desk.words, {
    list,
    count: inputs.length,
    title: w.switchInputs,
    row: w.switchInput,
    fields: (input, index) => [
      text(`${input}.name`, w.name),
      decibels(desk, inputs[index], `${input}.lossDb`, w.loss, '–'),
      decibels(desk, inputs[index], `${input}.isolationDb`, w.decoupling, '25'),
      { kind: 'field', as: 'yes', path: `${input}.alwaysThere`, label: w.alwaysThere },
      number(`${input}.feed.voltageV`, w.feedVoltage, 'V'),
      number(`${input}.feed.limitA`, w.feedLimit, 'A'),
    ],
  });
}

/** What a part of this kind is described by, and what is folded away. */
function fieldsOf(
  desk: Desk,
  part: LoosePart,
  path: string,
): { readonly first: readonly Part[]; readonly rest: readonly Part[] } {
  const w = desk.words.outlets;
  const loss = () => decibels(desk, part, `${path}.lossDb`, w.loss);
  const points = byFrequency(desk, part, `${path}.lossDb`, w.loss);
  const isolation = (empty: string) =>
    decibels(desk, part, `${path}.isolationDb`, w.decoupling, empty);
  const passes = choice(`${path}.passesSupply`, w.passesSupply, w.passes);
  switch (part.kind) {
    case 'cable':
      return { first: cableFields(desk, part, path), rest: cableMore(desk, path) };
    case 'tap':
      return {
        first: [
          decibels(desk, part, `${path}.throughLossDb`, w.through),
          decibels(desk, part, `${path}.tapLossDb`, w.tapLoss),
        ],
        rest: [
          decibels(desk, part, `${path}.isolationDb`, w.throughDecoupling, '–'),
          decibels(desk, part, `${path}.tapIsolationDb`, w.tapDecoupling, '20'),
          passes,
          choice(`${path}.tapsPassSupply`, w.tapsPass, w.tapsPassOptions),
        ],
      };
    case 'amplifier':
      return {
        first: amplifierFields(desk, part, path),
        rest: amplifierMore(desk, part, path),
      };
    case 'receiver':
      return {
        first: [
          number(`${path}.minimumLevelDbuv`, w.lowest, 'dBµV', { empty: '43.75' }),
          number(`${path}.maximumLevelDbuv`, w.highest, 'dBµV', { empty: '83.75' }),
        ],
        rest: [number(`${path}.noiseFigureDb`, w.tunerNoise, 'dB', { empty: '10' })],
      };
    case 'splitter':
      return {
        first: [loss()],
        rest: [
          ...points,
          isolation('20'),
          number(`${path}.diodeDropV`, w.diode, 'V', { empty: '0.7' }),
        ],
      };
    case 'switch':
      return {
        first: [loss()],
        rest: [
          ...points,
          isolation('25'),
          number(`${path}.noiseFigureDb`, w.noise, 'dB', { empty: '8' }),
          ...supplyFields(desk, path),
          { kind: 'field', as: 'yes', path: `${path}.feedsSource`, label: w.feedsSource },
          decibels(desk, part, `${path}.throughLossDb`, w.throughLoss, '0'),
          inputRows(desk, part, path),
        ],
      };
    case 'outlet':
      return { first: [loss()], rest: points };
    default:
      return { first: [loss()], rest: [...points, passes] };
  }
}

/** The fields of a part, the seldom ones folded. */
export function partFields(desk: Desk, part: LoosePart, path: string): readonly Part[] {
  const { first, rest } = fieldsOf(desk, part, path);
  return rest.length === 0 ? first : [...first, more(desk.words, `more-${path}`, rest)];
}
