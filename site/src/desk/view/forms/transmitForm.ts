/** The form of a transmitted carrier: power, masks, line-up, test, who must be asked. */

import { offAxisMasks } from 'slantpath/transmit';
import { listAt } from '../../state/paths.js';
import type { Desk } from '../desk.js';
import { asOptions, choice, name, number, type Part, rowsOf, text } from '../parts.js';
import { slotOptions } from './mountForm.js';

const MASKS = asOptions(offAxisMasks.map((mask) => mask.name));

/** What the network and the licence ask of a carrier off its axis. */
function maskFields({ words, draft }: Desk, path: string): readonly Part[] {
  const w = words.plan;
  const [names, mask] = [`${path}.offAxisMaskNames`, `${path}.offAxisMask`];
  return [
    rowsOf(words, {
      list: mask,
      count: listAt(draft, mask).length,
      title: w.masks,
      row: w.mask,
      fields: (point) => [
        number(`${point}.offAxisDeg`, w.maskAngle, '°'),
        number(`${point}.maximumDensityDbwPer40KHz`, w.maskDensity, 'dBW/40 kHz', { signed: true }),
      ],
      before: [
        ...listAt(draft, names).map(
          (_, index): Part => ({
            kind: 'group',
            legend: `${w.maskName} ${index + 1}`,
            remove: { list: names, index, what: `${w.maskName} ${index + 1}` },
            parts: [choice(`${names}[${index}]`, w.maskName, MASKS)],
          }),
        ),
        { kind: 'buttons', buttons: [{ what: 'add', at: names, label: words.plus(w.maskName) }] },
        number(`${path}.mispointingDeg`, w.mispointing, '°', { empty: w.mispointingEmpty }),
      ],
    }),
  ];
}

/** Drive, line-up, power control and the test with the control centre. */
function commissioningFields({ words, draft }: Desk, path: string): readonly Part[] {
  const w = words.plan;
  const [pairs, test] = [`${path}.measuredPairs`, `${path}.crossPolarTest`];
  return [
    rowsOf(words, {
      list: pairs,
      count: listAt(draft, pairs).length,
      title: w.drive,
      row: w.pair,
      fields: (pair) => [
        number(`${pair}.inputDbm`, w.pairIn, 'dBm', { signed: true }),
        number(`${pair}.outputDbm`, w.pairOut, 'dBm', { signed: true }),
      ],
      before: [
        number(`${path}.upconverterLocalOscillatorGHz`, w.upconverter, 'GHz'),
        number(`${path}.upconverterGainDb`, w.upconverterGain, 'dB'),
        number(`${path}.linearDriveLevelDbm`, w.driveLevel, 'dBm', { signed: true }),
        number(`${path}.allowedRiseDb`, w.rise, 'dB'),
        number(`${path}.controlErrorDb`, w.controlError, 'dB', { empty: '1' }),
        { kind: 'note', text: w.pairs, strong: true },
      ],
    }),
    {
      kind: 'fold',
      name: test,
      title: w.crossTest,
      parts: [
        number(`${test}.coPolarDbm`, w.coPolar, 'dBm', { signed: true }),
        number(`${test}.crossPolarDbm`, w.crossPolar, 'dBm', { signed: true }),
        number(`${test}.noiseDbm`, w.testNoise, 'dBm', { signed: true }),
        number(`${test}.standardUncertaintyDb`, w.testUncertainty, 'dB', { empty: '0.2' }),
      ],
    },
    {
      kind: 'fold',
      name: `${path}.askBefore`,
      title: w.leave,
      parts: [
        text(`${path}.askBefore.controlCentre`, w.controlCentre),
        text(`${path}.askBefore.siteOwner`, w.siteOwner),
        choice(`${path}.exposureGroup`, w.exposure, w.exposures),
      ],
    },
  ];
}

/** A transmitted carrier. */
export function sentRow(desk: Desk, index: number, called: string): Part {
  const { words } = desk;
  const w = words.plan;
  const path = `transmit[${index}]`;
  return {
    kind: 'group',
    legend: `${w.sent} ${index + 1}`,
    remove: { list: 'transmit', index, what: called },
    parts: [
      name(`${path}.name`, w.name),
      choice(`${path}.slot`, w.slot, slotOptions(desk)),
      number(`${path}.frequencyGHz`, w.frequency, 'GHz'),
      choice(`${path}.polarization`, w.polarization, words.polarizations),
      number(`${path}.saturatedPowerW`, w.power, 'W'),
      number(`${path}.symbolRateMBd`, w.symbolRate, 'MBd'),
      number(`${path}.outputBackOffDb`, w.backOff, 'dB', { empty: '0' }),
      number(`${path}.minimumBackOffDb`, w.leastBackOff, 'dB'),
      number(`${path}.minimumEirpDbw`, w.leastEirp, 'dBW', { signed: true }),
      number(`${path}.maximumEirpDbw`, w.mostEirp, 'dBW', { signed: true }),
      number(`${path}.feedLossDb`, w.feedLoss, 'dB', { empty: '0' }),
      ...maskFields(desk, path),
      ...commissioningFields(desk, path),
    ],
  };
}
