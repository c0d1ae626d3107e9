/** What level is at every outlet? A tree of parts, its levels over frequency, isolation and supply. */

import {
  type DistributionSystem,
  genericCable,
  type OutletLevels,
  outletIsolation,
  outletLevels,
  supplyAlong,
  windowChecks,
} from 'slantpath/distribution';
import { defineExample, literal, type Working } from '../lib/example.js';
import { choice, number, text } from '../lib/inputs/inputs.js';
import { own } from '../lib/language/language.js';
import { shown } from '../lib/language/text.js';
import { outlineRows, type PartRow, partWords, treeOf } from '../lib/partsTree.js';
import { linePlot } from '../lib/pictures/plot.js';
import { type DrawnPart, treeDrawing } from '../lib/pictures/treeDrawing.js';

/** Satellite intermediate frequency, and the wide one. */
const BANDS = { standard: [950, 2150], wide: [290, 2340], low: [250, 2350] } as const;

const STATES = {
  inside: 'inside',
  'too-low': 'too low',
  'too-high': 'too high',
  'too-wide': 'too steep',
} as const;

/** How the supply fares on its way to the outdoor unit. */
const SUPPLIES = {
  enough: 'yes',
  'too-low': 'no: too low',
  'too-much-current': 'no: too much current',
  blocked: 'no: a part blocks it',
  'self-powered': 'fed from the mains',
} as const;

/** Level behind each part, from the terms of any outlet behind it. */
function levelsBehind(outlets: readonly OutletLevels[], sourceDbuv: number) {
  const behind = new Map<string, readonly [number, number]>();
  for (const { terms } of outlets) {
    let low = sourceDbuv;
    let high = sourceDbuv;
    terms.forEach((term, index) => {
      low += term.gainDb[0] ?? 0;
      high += term.gainDb[term.gainDb.length - 1] ?? 0;
      // A tap has two levels behind it; the picture gives the one of its through port.
      const known = behind.get(term.name);
      if (!known || term.kind !== 'tap' || (known[0] < low && index < terms.length))
        behind.set(term.name, [low, high]);
    });
  }
  return behind;
}

/** Rows in the order of the drawing, parents first, each with the index of its parent. */
function drawn(
  parts: readonly PartRow[],
  behind: ReadonlyMap<string, readonly [number, number]>,
  states: ReadonlyMap<string, DrawnPart['state']>,
  sourceDbuv: number,
): readonly DrawnPart[] {
  const list: DrawnPart[] = [
    {
      name: 'source',
      words: 'outdoor unit',
      parent: -1,
      kind: 'source',
      levels: [sourceDbuv, sourceDbuv],
    },
  ];
  const visit = (name: string, parent: number): void => {
    for (const row of parts) {
      if (row.behind.replace(/\s*\(tap\)\s*$/, '').trim() !== name) continue;
      const ownName = row.name.trim();
      const levels = behind.get(ownName);
      const state = states.get(ownName);
      const index = list.push({
        name: ownName,
        words: partWords(row),
        parent,
        kind: row.part.startsWith('series') ? 'cable' : row.part,
        ...(levels ? { levels } : {}),
        ...(state ? { state } : {}),
      });
      visit(ownName, index - 1);
    }
  };
  visit('source', 0);
  return list;
}

export default defineExample({
  usual: ['parts', 'levelDbuv', 'band'],
  inputs: {
    parts: text({
      label: 'Parts',
      hint: 'One on each line as name: part number, further in than the part that feeds it. Metres of series-6, series-7, series-11 or series-59 cable; dB of connector, attenuator, splitter, outlet; amplifier gain and noise figure; tap value and through loss; equaliser loss at 950 and 2150 MHz. An asterisk before the name hangs it on a tap port.',
      lines: 10,
      value: `run: series-11 60
  splitter: splitter 6.5
    drop 1: series-6 15
      class 1: outlet 1
    drop 2: series-6 30
      class 2: outlet 1
    drop 3: series-6 45
      class 3: outlet 1`,
    }),
    levelDbuv: number({
      label: 'Level at the outdoor unit',
      unit: 'dBµV',
      value: 75,
      step: 1,
      min: 40,
      max: 110,
    }),
    carrierToNoiseDb: number({
      label: 'Carrier-to-noise ratio there',
      unit: 'dB',
      value: 14,
      step: 0.5,
      min: 0,
      max: 30,
    }),
    band: choice({
      label: 'Frequencies',
      options: {
        standard: '950 to 2150 MHz',
        wide: '290 to 2340 MHz',
        low: '250 to 2350 MHz',
      },
      value: 'standard',
    }),
    temperatureC: number({
      label: 'Temperature of the cables',
      unit: '°C',
      value: 20,
      step: 5,
      min: -40,
      max: 80,
    }),
    lowestDbuv: number({ label: 'Lowest level at an outlet', unit: 'dBµV', value: 47, step: 1 }),
    highestDbuv: number({ label: 'Highest level at an outlet', unit: 'dBµV', value: 77, step: 1 }),
    feedV: number({
      label: 'Supply at the receiver',
      unit: 'V',
      value: 18,
      step: 0.5,
      min: 0,
      max: 24,
    }),
    currentA: number({
      label: 'Current of the outdoor unit',
      unit: 'A',
      value: 0.15,
      step: 0.01,
      min: 0,
      max: 1,
    }),
  },
  fieldOf: (parameter) => (/^(tree|line|parts)\b/.test(parameter) ? 'parts' : undefined),
  actions: [
    {
      label: 'Put an amplifier before it all',
      change: ({ parts }) => ({
        parts: `amplifier ${parts.split('\n').length}: amplifier 15 7\n${parts.replace(/^/gm, '  ')}`,
      }),
    },
    {
      label: 'Take the first part away',
      change: ({ parts }) => ({
        parts: parts.split('\n').slice(1).join('\n').replace(/^ {2}/gm, ''),
      }),
    },
    {
      label: 'One more room at the splitter',
      change: ({ parts }) => {
        const count = (parts.match(/: outlet/g) ?? []).length + 1;
        const indent = /^( *)[^:\n]*: splitter/m.exec(parts)?.[1] ?? '';
        return {
          parts: `${parts}\n${indent}  drop ${count}: series-6 20\n${indent}    class ${count}: outlet 1`,
        };
      },
    },
  ],
  compute: ({
    parts,
    levelDbuv,
    carrierToNoiseDb,
    band,
    temperatureC,
    lowestDbuv,
    highestDbuv,
    feedV,
    currentA,
  }) => {
    const system: DistributionSystem = {
      source: { levelDbuv, carrierToNoiseDb, supply: { currentA, minimumVoltageV: 16 } },
      tree: treeOf(outlineRows(parts)),
      temperatureC,
    };
    const [from, to] = BANDS[band];
    const frequenciesMHz = Array.from({ length: 25 }, (_, i) => from + ((to - from) * i) / 24);
    const outlets = outletLevels(system, frequenciesMHz);
    return {
      system,
      frequenciesMHz: [from, to],
      outlets,
      checks: windowChecks(system, { frequenciesMHz, window: { lowestDbuv, highestDbuv } }),
      isolation: outletIsolation(system, frequenciesMHz),
      supplies: outlets.map(({ name }) => ({
        name,
        supply: supplyAlong(system, { from: name, voltageV: feedV }),
      })),
    };
  },
  view: (
    { frequenciesMHz: [from, to], outlets, checks, isolation, supplies },
    { parts, levelDbuv, lowestDbuv, highestDbuv },
  ) => {
    const good = checks.filter(({ kind }) => kind === 'inside').length;
    const worst = checks.reduce((a, b) => (b.marginLowDb < a.marginLowDb ? b : a));
    const strongest = checks.reduce((a, b) => (b.marginHighDb < a.marginHighDb ? b : a));
    const furthestOut =
      worst.marginLowDb < 0
        ? `the weakest is ${own(worst.name)}, ${shown(-worst.marginLowDb, 1)} dB too low`
        : `the strongest is ${own(strongest.name)}, ${shown(-strongest.marginHighDb, 1)} dB too high`;
    const ends = [shown(from ?? 0, 0), shown(to ?? 0, 0)] as const;
    const steepest = outlets.reduce((a, b) => (Math.abs(b.slopeDb) > Math.abs(a.slopeDb) ? b : a));
    return {
      says:
        good === checks.length
          ? `Every outlet is inside its window; the weakest is ${own(worst.name)} with ${shown(worst.marginLowDb, 1)} dB to spare.`
          : `${good} of ${checks.length} outlets inside the window; ${furthestOut}.`,
      outputs: [
        { label: 'Outlets inside the window', value: `${good} of ${checks.length}`, main: true },
        {
          label: 'Lowest level',
          value: worst.marginLowDb + lowestDbuv,
          unit: 'dBµV',
          digits: 1,
          note: `at ${own(worst.name)}`,
          main: true,
        },
        {
          label: 'Steepest slope',
          value: steepest.slopeDb,
          unit: 'dB',
          digits: 1,
          note: `at ${own(steepest.name)}, highest less lowest frequency`,
        },
        {
          label: 'Lowest carrier-to-noise ratio',
          value: Math.min(...outlets.map((outlet) => outlet.lowestCarrierToNoiseDb)),
          unit: 'dB',
        },
        ...(isolation.length > 0
          ? [
              {
                label: 'Lowest isolation',
                value: Math.min(...isolation.map(({ lowestDb }) => lowestDb)),
                unit: 'dB',
                digits: 1,
              },
            ]
          : []),
      ],
      figures: [
        treeDrawing(
          'The tree and the level behind each part',
          drawn(
            outlineRows(parts),
            levelsBehind(outlets, levelDbuv),
            new Map(checks.map(({ name, kind }) => [name, kind])),
            levelDbuv,
          ),
          ends,
        ),
        linePlot({
          title: 'Level over frequency at the outlets and the window',
          x: { label: 'Intermediate frequency', unit: 'MHz', digits: 0 },
          y: { label: 'Level', unit: 'dBµV', digits: 1 },
          series: outlets.slice(0, 4).map(({ name, points }) => ({
            label: own(name),
            points: points.map((point) => ({ x: point.frequencyMHz, y: point.levelDbuv })),
          })),
          rules: [
            { axis: 'y', at: lowestDbuv, label: `lowest ${lowestDbuv}` },
            { axis: 'y', at: highestDbuv, label: `highest ${highestDbuv}` },
          ],
        }),
      ],
      tables: [
        {
          caption: 'Every outlet',
          columns: [
            'Outlet',
            'Lowest / dBµV',
            'Highest / dBµV',
            'Slope / dB',
            'C/N / dB',
            'Window',
          ],
          rows: outlets.map((outlet, index) => [
            own(outlet.name),
            shown(outlet.lowestDbuv, 1),
            shown(outlet.highestDbuv, 1),
            shown(outlet.slopeDb, 1),
            shown(outlet.lowestCarrierToNoiseDb),
            STATES[checks[index]?.kind ?? 'inside'],
          ]),
        },
        {
          caption:
            'Supply of the outdoor unit from each outlet (it needs 16 V for the higher voltage)',
          columns: ['Fed from', 'At the unit / V', 'Current / A', 'Enough'],
          rows: supplies.map(({ name, supply }) => [
            own(name),
            shown(supply.points[supply.points.length - 1]?.voltageV ?? 0),
            shown(supply.currentA),
            SUPPLIES[supply.kind],
          ]),
        },
      ],
      notes: [
        ...(outlets.length > 4
          ? ['The plot shows the first four outlets; the table has all.']
          : []),
        'Connect and open powered cables only with the receiver off. Amplifiers and switches fed from the mains are for licensed hands, and every system needs its bonding to earth by the local code.',
      ],
    };
  },
  working: ({ parts, levelDbuv, temperatureC }, { outlets }) => {
    const weakest = outlets.reduce((a, b) => (b.lowestDbuv < a.lowestDbuv ? b : a));
    const at = weakest.points.findIndex(({ levelDbuv: level }) => level === weakest.lowestDbuv);
    const frequencyMHz = weakest.points[at]?.frequencyMHz ?? 0;
    const way = weakest.terms.map(({ name, kind, gainDb }) => ({
      name,
      kind,
      gainDb: gainDb[at] ?? 0,
    }));
    const gainOf = (fits: (kind: string) => boolean) =>
      way.filter(({ kind }) => fits(kind)).reduce((sum, { gainDb }) => sum + gainDb, 0);
    const lossOf = (kind: string) => 0 - gainOf((other) => other === kind);
    const named = ['amplifier', 'cable', 'splitter', 'tap'];
    const runs = outlineRows(parts)
      .filter(({ name }) => way.some((term) => term.kind === 'cable' && term.name === name))
      .map(({ part, value: lengthM }): Working => {
        const { skinLossDbPer100m, dielectricLossDbPer100m } = genericCable(part as 'series-6');
        return {
          plan: 'cable-run',
          givens: {
            skinLossDbPer100m,
            dielectricLossDbPer100m: dielectricLossDbPer100m ?? 0,
            lengthM,
            frequencyMHz,
            temperatureC,
          },
        };
      });
    // Two runs of one type and length are worked out once.
    const once = [...new Map(runs.map((run) => [JSON.stringify(run), run])).values()];
    return [
      { plan: 'level-in-dbm', givens: { levelDbuv } },
      ...once,
      {
        plan: 'outlet-budget',
        givens: {
          sourceLevelDbuv: levelDbuv,
          amplifierGainDb: gainOf((kind) => kind === 'amplifier'),
          cableLossDb: lossOf('cable'),
          splitterLossDb: lossOf('splitter'),
          tapLossDb: lossOf('tap'),
          outletLossDb: 0 - gainOf((kind) => !named.includes(kind)),
        },
      },
    ];
  },
  code: ({ band, levelDbuv }, { system }) =>
    `import { outletLevels } from 'slantpath/distribution';

const system = ${literal(system)};
for (const { name, lowestDbuv, slopeDb } of outletLevels(system, ${literal([...BANDS[band]])}))
  console.log(\`\${name}: \${lowestDbuv.toFixed(1)} dBuV, slope \${slopeDb.toFixed(1)} dB\`);
// the source gives ${levelDbuv} dBuV
`,
});
