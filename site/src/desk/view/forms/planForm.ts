/** The form of the frequency plan: carriers of each slot, receiving units, what is sent. */

import { dvbModes } from 'slantpath/link';
import type { LooseCarrier, LooseUnit } from '../../state/draft.js';
import type { Desk } from '../desk.js';
import { asOptions, choice, fewOf, more, name, number, type Part } from '../parts.js';
import { slotOptions } from './mountForm.js';
import { sentRow } from './transmitForm.js';

type Standard = Parameters<typeof dvbModes>[0];

const STANDARDS = { '': 'DVB-S2', 'DVB-S': 'DVB-S', 'DVB-S2': 'DVB-S2', 'DVB-S2X': 'DVB-S2X' };

function carrierRow(desk: Desk, carrier: LooseCarrier, list: string, index: number): Part {
  const { draft, words } = desk;
  const w = words.plan;
  const path = `${list}[${index}]`;
  const modes = dvbModes((carrier.standard ?? 'DVB-S2') as Standard).map((mode) => mode.name);
  return {
    kind: 'group',
    legend: `${w.carrier} ${index + 1}`,
    remove: { list, index, what: carrier.name ?? `${w.carrier} ${index + 1}` },
    parts: [
      name(`${path}.name`, w.name),
      number(`${path}.frequencyGHz`, w.frequency, 'GHz'),
      choice(`${path}.polarization`, w.polarization, words.polarizations),
      number(`${path}.eirpDbw`, w.eirp, 'dBW'),
      number(`${path}.symbolRateMBd`, w.symbolRate, 'MBd'),
      choice(`${path}.mode`, w.mode, { '': '–', ...asOptions(modes) }),
      more(words, path, [
        choice(`${path}.standard`, w.standard, STANDARDS),
        number(`${path}.implementationLossDb`, w.loss, 'dB', { empty: '0.8' }),
        number(`${path}.rollOffRatio`, w.rollOff, w.zeroToOne, { empty: '0.35' }),
        number(`${path}.intermediateFrequencyMHz`, w.intermediate, 'MHz', {
          empty: w.intermediateEmpty,
        }),
        choice(`${path}.unit`, w.ofUnit, {
          '': w.anyUnit,
          ...asOptions((draft.units ?? []).map((unit) => unit.name)),
        }),
      ]),
    ],
  };
}

function unitRow(desk: Desk, unit: LooseUnit, index: number): Part {
  const { words } = desk;
  const w = words.plan;
  const path = `units[${index}]`;
  const bands = `${path}.bands`;
  return {
    kind: 'group',
    legend: `${w.unit} ${index + 1}`,
    remove: { list: 'units', index, what: unit.name ?? `${w.unit} ${index + 1}` },
    parts: [
      name(`${path}.name`, w.name),
      fewOf(`${path}.slots`, w.forSlots, slotOptions(desk, w.allSlots), unit.slots ?? []),
      number(`${path}.noiseFigureDb`, w.noise, 'dB'),
      number(`${path}.gainDb`, w.gain, 'dB'),
      {
        kind: 'field',
        as: 'yes',
        path: `${path}.switchedByVoltage`,
        label: w.byVoltage,
        wide: true,
      },
      ...(unit.bands ?? []).map(
        (band, at): Part => ({
          kind: 'group',
          legend: `${w.band} ${at + 1}`,
          remove: { list: bands, index: at, what: band.name ?? `${w.band} ${at + 1}` },
          parts: [
            name(`${bands}[${at}].name`, w.name),
            number(`${bands}[${at}].fromGHz`, w.from, 'GHz'),
            number(`${bands}[${at}].toGHz`, w.to, 'GHz'),
            number(`${bands}[${at}].localOscillatorGHz`, w.oscillator, 'GHz'),
            choice(`${bands}[${at}].tone`, w.tone, w.tones),
          ],
        }),
      ),
      {
        kind: 'buttons',
        buttons: [
          { what: 'add', at: bands, label: words.plus(w.newBand) },
          ...((unit.bands ?? []).length === 0
            ? [{ what: 'ku-bands', at: String(index), label: w.ku }]
            : []),
        ],
      },
      more(words, path, [
        fewOf(
          `${path}.polarizations`,
          w.passes,
          { '': w.all, ...words.polarizations },
          unit.polarizations ?? [],
        ),
        number(`${path}.feedLossDb`, w.feedLoss, 'dB', { empty: '0' }),
        number(`${path}.supply.currentA`, w.current, 'A'),
        number(`${path}.supply.minimumVoltageV`, w.voltage, 'V'),
        number(`${path}.localOscillatorStabilityMHz`, w.stability, 'MHz'),
      ]),
    ],
  };
}

/** Fields of the frequency plan. */
export function planForm(desk: Desk): readonly Part[] {
  const { draft, words } = desk;
  const w = words.plan;
  const slots = draft.slots ?? [];
  const sent = draft.transmit ?? [];
  const units = draft.units ?? [];
  return [
    ...(slots.length === 0 ? [{ kind: 'note', text: w.noSlot } as const] : []),
    ...slots.map((slot, at): Part => {
      const list = `slots[${at}].carriers`;
      const carriers = slot.carriers ?? [];
      return {
        kind: 'fold',
        name: `carriers-${at}`,
        title: w.carriersOf(slot.name ?? `${w.slot} ${at + 1}`),
        says: words.says.carriers(carriers.length),
        open: true,
        parts: [
          ...carriers.map((carrier, index) => carrierRow(desk, carrier, list, index)),
          {
            kind: 'buttons',
            buttons: [
              { what: 'add', at: list, label: words.plus(w.newCarrier) },
              ...(carriers.length > 0 ? [{ what: 'same', at: list, label: words.same }] : []),
            ],
          },
        ],
      };
    }),
    ...units.map((unit, index) => unitRow(desk, unit, index)),
    {
      kind: 'buttons',
      buttons: [
        { what: 'add', at: 'units', label: words.plus(w.newUnit) },
        ...(units.length > 0 ? [{ what: 'same', at: 'units', label: words.same }] : []),
      ],
    },
    {
      kind: 'fold',
      name: 'tuner',
      title: w.tuner,
      parts: [
        number('tuner.lowestMHz', w.tunerLowest, 'MHz', { empty: '950' }),
        number('tuner.highestMHz', w.tunerHighest, 'MHz', { empty: '2150' }),
        number('tuner.lockRangeMHz', w.lockRange, 'MHz'),
      ],
    },
    ...sent.map((each, index) => sentRow(desk, index, each.name ?? w.sent)),
    ...(slots.length === 0
      ? []
      : [
          {
            kind: 'buttons',
            buttons: [{ what: 'add', at: 'transmit', label: words.plus(words.inside(w.sent)) }],
          } as const,
        ]),
  ];
}
