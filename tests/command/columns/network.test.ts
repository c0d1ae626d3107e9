import { decideConformity } from 'slantpath/acceptance';
import {
  dvbMode,
  type Footprint,
  footprintLevel,
  type LinkBudgetInput,
  smallestReflector,
} from 'slantpath/link';
import { sunOutages } from 'slantpath/sun';
import { expect, test } from 'vitest';
import { computePart } from '../../../src/command/columns/computePart.js';
import { columnsPlan } from '../../../src/command/columns/plan.js';
import { FILE, read, WORDS } from './sites.js';

const LINK: LinkBudgetInput = {
  carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', '8PSK 2/3') },
  downlink: { eirpDbw: 52, frequencyGHz: 12, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
  receiver: { diameterM: 0.6, noiseFigureDb: 0.8 },
};
const contour = (half: number, eirpDbw: number) => ({
  type: 'Feature' as const,
  properties: { eirpDbw },
  geometry: {
    type: 'Polygon' as const,
    coordinates: [
      [
        [-half, -half],
        [half, -half],
        [half, half],
        [-half, half],
        [-half, -half],
      ].map(([east = 0, north = 0]) => [10 + east, 45 + north]),
    ],
  },
});
const footprint: Footprint = {
  type: 'FeatureCollection',
  features: [contour(20, 46), contour(6, 50)],
};

test('a level goes on to the reflector, an outage and a verdict stand beside it', () => {
  const plan = columnsPlan(
    ['lookAnglesAndSkew', 'footprintLevel', 'smallestReflector', 'sunOutages', 'decideConformity'],
    {
      ...WORDS,
      attenuationDb: '2',
      'smallestReflector.eirpDbw': 'levelDb',
      'smallestReflector.targetMarginDb': '1',
      diameterM: '0.9',
      frequencyGHz: '12',
      systemNoiseK: '120',
      reading: 'mer',
      standardUncertainty: '0.5',
      'decideConformity.lowerLimit': '11',
    },
    [...FILE, 'mer'],
    { link: LINK, footprint, from: '2026-02-15', to: '2026-04-20' },
  );
  const rows = [
    { latitudeDeg: 46, longitudeDeg: 9.6, heightM: 600, reading: 12 },
    { latitudeDeg: 60, longitudeDeg: 22, heightM: 10, reading: 9 },
    { latitudeDeg: -3, longitudeDeg: -170, heightM: 10, reading: 11.1 },
  ];
  const file = Object.fromEntries(
    ['latitudeDeg', 'longitudeDeg', 'heightM', 'reading'].map((field, place) => [
      ['lat', 'lon', 'alt', 'mer'][place],
      rows.map((row) => row[field as keyof (typeof rows)[0]]),
    ]),
  );
  const computed = computePart(
    plan,
    3,
    plan.reads.map((name) => read(file[name] ?? [])),
  );
  expect(computed.badRows).toEqual([]);
  const at = (name: string, row: number) => {
    const place = plan.adds.findIndex((added) => added.name === name);
    const value = computed.columns[place]?.[row] ?? Number.NaN;
    return plan.adds[place]?.words?.[value] ?? value;
  };
  rows.forEach(({ reading, ...station }, row) => {
    const { latitudeDeg, longitudeDeg } = station;
    const level = footprintLevel(footprint, { latitudeDeg, longitudeDeg });
    expect(at('footprintLevelOutcome', row)).toBe(level.kind);
    const verdict = decideConformity({ reading, standardUncertainty: 0.5, lowerLimit: 11 });
    expect(at('decideConformityOutcome', row)).toBe(verdict.verdict);
    if (row === 2) {
      expect(at('rowOutcome', row)).toBe('below-horizon');
      expect(at('sunOutagesCount', row)).toBeNaN();
      return;
    }
    const eirpDbw = Number(at('levelDb', row));
    expect(eirpDbw).toBe('levelDb' in level ? level.levelDb : Number.NaN);
    const choice = smallestReflector(
      { ...LINK, downlink: { ...LINK.downlink, eirpDbw } },
      { fade: () => ({ attenuationDb: 2 }), targetMarginDb: 1 },
    );
    expect(choice.kind === 'found' && choice.diameterM).toBe(at('smallestReflectorDiameterM', row));
    const outages = sunOutages({
      station,
      orbitalLongitudeDeg: 16.4,
      diameterM: 0.9,
      frequencyGHz: 12,
      systemNoiseK: 120,
      from: '2026-02-15',
      to: '2026-04-20',
    });
    expect(outages.kind === 'outages' && outages.events.length).toBe(at('sunOutagesCount', row));
  });
});

test('what a function asks of the options is named', () => {
  expect(() => columnsPlan(['footprintLevel'], WORDS, FILE)).toThrow(
    '--footprint must be a GeoJSON file with the contours for footprintLevel',
  );
  expect(() => columnsPlan(['sunOutages'], WORDS, FILE)).toThrow('--from must be the first day');
});
