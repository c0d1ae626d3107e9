/** How do several receivers share one cable? User bands, tuning words, conflicts, level at each band. */

import {
  type DistributionSystem,
  genericCable,
  longestRun,
  outletLevels,
} from 'slantpath/distribution';
import {
  tuningTable,
  type UserBandConflict,
  userBandCommand,
  userBandConflicts,
  wideUserBandCommand,
} from 'slantpath/tuning';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, rows } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { spanRows } from '../lib/pictures/spans.js';

const POLARIZATIONS = { vertical: 'vertical', horizontal: 'horizontal' } as const;
const GENERATIONS = {
  first: 'first (EN 50494), up to 8 bands',
  second: 'second (EN 50607), up to 32 bands',
} as const;
const CABLES = {
  'series-6': 'series 6',
  'series-11': 'series 11',
  'series-59': 'series 59',
} as const;

/** Steps of 4 MHz of the first generation move a carrier by up to 2 MHz. */
const MARGIN_MHZ = { first: 2, second: 0 } as const;

function conflictWords(conflict: UserBandConflict): string {
  switch (conflict.kind) {
    case 'overlap':
      return `${conflict.first} and ${conflict.second} overlap by ${shown(conflict.overlapMHz, 1)} MHz: both receivers disturb each other.`;
    case 'outside-range':
      return `${conflict.name} reaches ${shown(conflict.beyondMHz, 1)} MHz beyond the range of the receivers.`;
    case 'taken-twice':
      return `${conflict.name} is given to two receivers: neither of them keeps its programme.`;
  }
}

export default defineExample({
  usual: ['receivers', 'generation', 'lengthM'],
  inputs: {
    receivers: rows({
      label: 'Receivers',
      columns: {
        userBand: { label: 'User band', step: 1 },
        centreMHz: { label: 'Centre', unit: 'MHz', step: 1 },
        frequencyGHz: { label: 'Carrier', unit: 'GHz', step: 0.001 },
        polarization: { label: 'Polarization', options: POLARIZATIONS },
      },
      value: [
        { userBand: 1, centreMHz: 1210, frequencyGHz: 11.938, polarization: 'horizontal' },
        { userBand: 2, centreMHz: 1420, frequencyGHz: 10.788, polarization: 'vertical' },
        { userBand: 3, centreMHz: 1680, frequencyGHz: 12.692, polarization: 'vertical' },
        { userBand: 4, centreMHz: 2040, frequencyGHz: 11.494, polarization: 'horizontal' },
      ],
      add: { userBand: 5, centreMHz: 985, frequencyGHz: 11.362, polarization: 'horizontal' },
    }),
    generation: choice({ label: 'Generation of the unit', options: GENERATIONS, value: 'first' }),
    lengthM: number({
      label: 'Length of the cable',
      unit: 'm',
      value: 45,
      step: 5,
      min: 0,
      max: 200,
    }),
    cable: choice({ label: 'Cable', options: CABLES, value: 'series-6' }),
    widthMHz: number({
      label: 'Width of a user band',
      unit: 'MHz',
      value: 46,
      step: 1,
      min: 1,
      max: 200,
    }),
    levelDbuv: number({
      label: 'Level of each user band at the unit',
      unit: 'dBµV',
      value: 84,
      step: 1,
      min: 40,
      max: 110,
      hint: 'Units of this kind bring all bands to about the same level.',
    }),
    splitterLossDb: number({
      label: 'Loss of splitter and outlets',
      unit: 'dB',
      value: 9,
      step: 0.5,
      min: 0,
      max: 40,
    }),
    lowestDbuv: number({ label: 'Lowest level at a receiver', unit: 'dBµV', value: 47, step: 1 }),
  },
  fieldOf: (parameter) =>
    ({ userBandMHz: 'receivers', userBand: 'receivers', intermediateFrequencyMHz: 'receivers' })[
      parameter
    ] ?? (/^(bands|carriers)\b/.test(parameter) ? 'receivers' : undefined),
  compute: ({
    receivers,
    generation,
    lengthM,
    cable,
    widthMHz,
    levelDbuv,
    splitterLossDb,
    lowestDbuv,
  }) => {
    const table = tuningTable({
      plan: 'ku-universal',
      carriers: receivers.map(({ userBand, frequencyGHz, polarization }) => ({
        name: String(userBand),
        frequencyGHz,
        polarization: polarization as keyof typeof POLARIZATIONS,
      })),
    });
    const system: DistributionSystem = {
      source: { levelDbuv },
      tree: {
        kind: 'cable',
        cable: genericCable(cable),
        lengthM,
        to: {
          kind: 'attenuator',
          lossDb: splitterLossDb,
          to: { kind: 'outlet', name: 'receiver', lossDb: 0 },
        },
      },
    };
    const centres = receivers.map(({ centreMHz }) => centreMHz);
    // Levels are asked for in rising frequency.
    const rising = [...new Set(centres)].sort((a, b) => a - b);
    const points = rising.length > 0 ? (outletLevels(system, rising)[0]?.points ?? []) : [];
    const asked = table.map((row, index) => {
      const receiver = receivers[index];
      if (row.kind === 'outside-the-unit' || !receiver) return { kind: 'no-band' as const };
      const request = {
        intermediateFrequencyMHz: row.intermediateFrequencyMHz,
        polarization: receiver.polarization as keyof typeof POLARIZATIONS,
        band: row.tone === 'on' ? ('high' as const) : ('low' as const),
      };
      const level = points[rising.indexOf(receiver.centreMHz)]?.levelDbuv ?? null;
      if (generation === 'second')
        return {
          kind: 'asked' as const,
          ...request,
          ...wideUserBandCommand({ ...request, userBand: receiver.userBand }),
          tunedMHz: receiver.centreMHz,
          levelDbuv: level,
        };
      if (receiver.userBand < 1 || receiver.userBand > 8) return { kind: 'no-user-band' as const };
      // The label counts from 1, the message from 0.
      return {
        kind: 'asked' as const,
        ...request,
        ...userBandCommand({
          ...request,
          userBand: receiver.userBand - 1,
          userBandMHz: receiver.centreMHz,
        }),
        levelDbuv: level,
      };
    });
    return {
      asked,
      conflicts: userBandConflicts({
        bands: receivers.map(({ userBand, centreMHz }) => ({
          name: String(userBand),
          centreMHz,
          bandwidthMHz: widthMHz,
        })),
        marginMHz: MARGIN_MHZ[generation],
      }),
      longest:
        rising.length > 0
          ? longestRun({
              cable: genericCable(cable),
              levelDbuv,
              lowestLevelDbuv: lowestDbuv,
              highestFrequencyMHz: rising.at(-1) ?? 2150,
              lowestFrequencyMHz: Math.min(rising[0] ?? 950, (rising.at(-1) ?? 2150) - 1),
              otherLossDb: splitterLossDb,
            }).byLevelM
          : null,
    };
  },
  view: ({ asked, conflicts, longest }, { receivers, widthMHz, lowestDbuv }) => {
    const levels = asked.flatMap((one) =>
      one.kind === 'asked' && one.levelDbuv !== null ? [one.levelDbuv] : [],
    );
    const weakest = levels.length > 0 ? Math.min(...levels) : null;
    const strongest = levels.length > 0 ? Math.max(...levels) : null;
    const [worst] = conflicts;
    const noSuch = asked.findIndex(({ kind }) => kind === 'no-user-band');
    return {
      says:
        receivers.length === 0
          ? 'Add a receiver.'
          : noSuch >= 0
            ? `A unit of the first generation has user bands 1 to 8: there is no ${shown(receivers[noSuch]?.userBand ?? 0, 0)}.`
            : worst
              ? `The plan does not work: ${conflictWords(worst)}`
              : weakest !== null && weakest < lowestDbuv
                ? `The bands do not disturb each other, but the weakest arrives ${shown(lowestDbuv - weakest, 1)} dB too low.`
                : `${receivers.length} receivers fit on this cable: no two bands meet, and each arrives strong enough.`,
      outputs: [
        { label: 'Conflicts of user bands', value: conflicts.length, digits: 0, main: true },
        ...(weakest !== null && strongest !== null
          ? [
              {
                label: 'Lowest level',
                value: weakest,
                unit: 'dBµV',
                digits: 1,
                note: `at least ${shown(lowestDbuv, 0)} dBµV are asked for`,
                main: true,
              },
              {
                label: 'Slope over the user bands',
                value: strongest - weakest,
                unit: 'dB',
                digits: 1,
                note: 'highest less lowest level',
              },
            ]
          : []),
        ...(longest !== null
          ? [
              {
                label: 'Longest cable',
                value: longest,
                unit: 'm',
                digits: 0,
                note: 'by the level of the highest band',
              },
            ]
          : []),
      ],
      figures:
        receivers.length > 0
          ? [
              spanRows({
                title: 'The user bands on the cable',
                axis: 'Frequency on the cable / MHz',
                shade: { from: 950, to: 2150, label: 'range of the receivers' },
                rows: receivers.map(({ userBand, centreMHz }) => {
                  const name = String(userBand);
                  return {
                    label: `user band ${name}`,
                    spans: [
                      {
                        from: centreMHz - widthMHz / 2,
                        to: centreMHz + widthMHz / 2,
                        hollow: conflicts.some((conflict) =>
                          conflict.kind === 'overlap'
                            ? conflict.first === name || conflict.second === name
                            : conflict.name === name,
                        ),
                      },
                    ],
                  };
                }),
              }),
            ]
          : [],
      tables: [
        {
          caption: 'What each receiver asks for',
          columns: [
            'User band',
            'Asks for / MHz',
            'Band',
            'Tuning word',
            'Bank',
            'Message',
            'Tunes / MHz',
            'Level / dBµV',
          ],
          rows: asked.map((one, index) => {
            const name = String(receivers[index]?.userBand ?? '');
            return one.kind !== 'asked'
              ? [
                  name,
                  one.kind === 'no-band' ? 'outside the unit' : 'no such user band',
                  '–',
                  '–',
                  '–',
                  '–',
                  '–',
                  '–',
                ]
              : [
                  name,
                  shown(one.intermediateFrequencyMHz, 1),
                  one.band,
                  String(one.tuningWord),
                  String(one.bank),
                  one.message,
                  shown(one.tunedMHz, 1),
                  one.levelDbuv === null ? '–' : shown(one.levelDbuv, 1),
                ];
          }),
        },
      ],
      notes: conflicts.slice(1).map(conflictWords),
      caution:
        receivers.length > 1
          ? 'One receiver at a time may send its message: a part that passes the supply of several receivers at once must have diodes, or they feed each other.'
          : undefined,
    };
  },
  working: ({ receivers, cable, lengthM }) => {
    const highest = Math.max(...receivers.map(({ centreMHz }) => centreMHz));
    const { skinLossDbPer100m, dielectricLossDbPer100m = 0 } = genericCable(cable);
    return receivers.length > 0
      ? [
          {
            plan: 'cable-run',
            givens: {
              skinLossDbPer100m,
              dielectricLossDbPer100m,
              lengthM,
              frequencyMHz: highest,
              temperatureC: 20,
            },
          },
        ]
      : [];
  },
  hand: ({ receivers, generation }, { asked }) => {
    const [first] = asked;
    const [receiver] = receivers;
    if (!receiver || first?.kind !== 'asked') return [];
    const between = shown(first.intermediateFrequencyMHz, 1);
    if (generation === 'second')
      return [
        {
          says: 'the tuning word is the intermediate frequency above 100 MHz, in whole megahertz',
          formula: 'T = f_i - 100',
          put: `T = ${between} - 100`,
          result: String(first.tuningWord),
        },
      ];
    return [
      {
        says: 'the tuning word of the first receiver, rounded to a whole number',
        formula: 'T = \\frac{f_i + f_u}{4} - 350',
        put: `T = \\frac{${between} + ${shown(receiver.centreMHz, 0)}}{4} - 350`,
        result: String(first.tuningWord),
      },
      {
        says: 'there the carrier lies then, and the receiver tunes to it',
        formula: 'f_t = 4 \\cdot (T + 350) - f_i',
        put: `f_t = 4 \\cdot (${first.tuningWord} + 350) - ${between}`,
        result: `${shown(first.tunedMHz, 1)} MHz`,
      },
    ];
  },
  code: ({ receivers, widthMHz, generation }) =>
    `import { userBandConflicts } from 'slantpath/tuning';

const bands = ${literal(receivers.map(({ userBand, centreMHz }) => ({ name: String(userBand), centreMHz, bandwidthMHz: widthMHz })))};
const conflicts = userBandConflicts({ bands, marginMHz: ${MARGIN_MHZ[generation]} });
console.log(conflicts.length, conflicts);
`,
});
