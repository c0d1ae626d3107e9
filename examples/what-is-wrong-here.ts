/** A Tarnfell hut loses its picture in a calm, dry night. Readings at one outlet; then the measurement that is asked for. */

import { type CauseObservation, rankCauses } from 'slantpath/acceptance';

const lossDb = [
  { frequencyMHz: 950, valueDb: 16.9 },
  { frequencyMHz: 1400, valueDb: 18.7 },
  { frequencyMHz: 2200, valueDb: 21.4 },
];
const carrier = (
  name: string,
  polarization: 'horizontal' | 'vertical',
  [frequencyGHz, frequencyMHz, levelDbuv, carrierToNoiseDb]: readonly [
    number,
    number,
    number,
    number,
  ],
) => ({
  name,
  slot: `${name.split(' ')[0]} E`,
  polarization,
  band: frequencyGHz < 11.7 ? ('low' as const) : ('high' as const),
  frequencyGHz,
  frequencyMHz,
  levelDbuv,
  carrierToNoiseDb,
});
const installation = {
  diameterM: 0.9,
  slots: [
    { name: '7.2 E', azimuthDeg: 183.3, elevationDeg: 36.6 },
    { name: '16.4 E', azimuthDeg: 170.6, elevationDeg: 36.2 },
    { name: '21.8 E', azimuthDeg: 163.4, elevationDeg: 35.3 },
  ],
  carriers: [
    carrier('7.2 V', 'vertical', [11.2, 1450, 76, 14]),
    carrier('16.4 V', 'vertical', [10.9, 1150, 77, 14.5]),
    carrier('16.4 H', 'horizontal', [12.6, 2000, 75.5, 13.5]),
    carrier('21.8 H', 'horizontal', [11.9, 1300, 76, 13.5]),
  ],
  testPoints: [{ name: 'hall', lossDb }],
};

const read = (
  name: string,
  levelDbuv: number,
  carrierToNoiseDb: number,
): readonly CauseObservation[] => [
  { kind: 'level', carrier: name, testPoint: 'hall', levelDbuv },
  { kind: 'carrier-to-noise', carrier: name, testPoint: 'hall', carrierToNoiseDb },
];
const observations: CauseObservation[] = [
  ...read('7.2 V', 51.9, 9.6),
  ...read('16.4 V', 55.7, 10.7),
  ...read('16.4 H', 50.2, 8.1),
  ...read('21.8 H', 53.4, 8.4),
  { kind: 'rain-seen', seen: false },
  { kind: 'obstacle-seen', slot: '16.4 E', seen: false },
];

const first = rankCauses({ installation, observations });
console.log(`${first.kind}: ${first.reason}`);
for (const { cause, probabilityRatio } of first.ranking.slice(0, 4))
  console.log(`  ${cause}: ${(100 * probabilityRatio).toFixed(0)} %`);
console.log(`next: ${JSON.stringify(first.next?.measurement)}`);

const then = rankCauses({
  installation,
  observations: [...observations, { kind: 'mast-lean', leanDeg: 1.1 }],
});
const [best] = then.ranking;
console.log(`after a lean of 1.1 degrees: ${then.kind}`);
console.log(`  ${best?.cause}: ${(100 * (best?.probabilityRatio ?? 0)).toFixed(0)} %`);
for (const { observation, speaks, predicted } of best?.evidence.slice(0, 3) ?? [])
  console.log(`  ${observation.kind} speaks ${speaks} it: predicted ${predicted.toFixed(1)}`);
