/** Can one reflector take them all? Boresight, feed places and loss of each slot. */

import { DomainError } from 'slantpath';
import { type FeedsInput, severalSlots } from 'slantpath/pointing';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, place, rows, text } from '../lib/inputs/inputs.js';
import { longitudeText, shown, typed } from '../lib/language/text.js';
import { feedsBehind } from '../lib/pictures/feedsBehind.js';
import { reflectorSide } from '../lib/pictures/reflectorSide.js';
import { towards } from '../lib/plans.js';

interface SlotRow {
  readonly orbitalLongitudeDeg: number;
  readonly frequencyGHz: number;
  readonly weightRatio: number;
}

const slotsOf = (slots: readonly SlotRow[]) =>
  slots.map(({ orbitalLongitudeDeg, frequencyGHz, weightRatio }) => ({
    orbitalLongitudeDeg,
    frequenciesGHz: [frequencyGHz],
    weightRatio,
  }));

function inMetres(place: string, index: number): number {
  const placeMm = typed(place);
  if (!Number.isNaN(placeMm)) return placeMm / 1000;
  const parameter = 'placesMm';
  throw new DomainError({
    code: 'malformed',
    parameter,
    index,
    received: place,
    allowed: 'a number',
  });
}

const feedsOf = (kind: 'free' | 'rigid', placesMm: string, feedDiameterMm: number): FeedsInput =>
  kind === 'free'
    ? { kind, feedDiameterM: feedDiameterMm / 1000 }
    : {
        kind,
        placesM: placesMm
          .split(/[;,\s]+/)
          .filter((place) => place !== '')
          .map((place, index) => inMetres(place, index)),
        feedDiameterM: feedDiameterMm / 1000,
      };

export default defineExample({
  usual: ['station', 'slots', 'diameterM', 'focalLengthM', 'offsetAngleDeg'],
  inputs: {
    station: place(),
    slots: rows({
      label: 'Slots',
      columns: {
        orbitalLongitudeDeg: { label: 'Orbital longitude', unit: '° east', step: 0.1 },
        frequencyGHz: { label: 'Frequency', unit: 'GHz', step: 0.1 },
        weightRatio: { label: 'Weight', step: 0.1 },
      },
      value: [
        { orbitalLongitudeDeg: 7.2, frequencyGHz: 11.7, weightRatio: 1 },
        { orbitalLongitudeDeg: 16.4, frequencyGHz: 19.7, weightRatio: 1 },
        { orbitalLongitudeDeg: 21.8, frequencyGHz: 11.7, weightRatio: 1 },
      ],
      add: { orbitalLongitudeDeg: 12, frequencyGHz: 11.7, weightRatio: 1 },
    }),
    feeds: choice({
      label: 'Feeds',
      options: { free: 'Each where its slot needs it', rigid: 'On a rigid bar' },
      value: 'free',
    }),
    placesMm: text({
      label: 'Places on a rigid bar, in mm from the focus',
      value: '-116, 0, 71',
      hint: 'In the order of the slots, to the right positive as seen from behind. A feed to the right looks at a slot to the left.',
    }),
    diameterM: number({
      label: 'Diameter (width)',
      unit: 'm',
      value: 0.9,
      step: 0.05,
      min: 0.3,
      max: 5,
    }),
    focalLengthM: number({
      label: 'Focal length',
      unit: 'm',
      value: 0.54,
      step: 0.01,
      min: 0.1,
      max: 5,
    }),
    offsetAngleDeg: number({
      label: 'Offset angle',
      unit: '°',
      value: 24,
      step: 0.5,
      min: 0,
      max: 45,
      hint: 'Arccosine of width over height of the rim; 0 where the feed stands before the middle.',
    }),
    feedDiameterMm: number({
      label: 'Diameter of a feed',
      unit: 'mm',
      value: 60,
      step: 1,
      min: 10,
      max: 200,
    }),
  },
  compute: ({
    station,
    slots,
    feeds,
    placesMm,
    diameterM,
    focalLengthM,
    offsetAngleDeg,
    feedDiameterMm,
  }) =>
    severalSlots({
      station,
      slots: slotsOf(slots),
      reflector: { diameterM, focalLengthM, offsetAngleDeg },
      feeds: feedsOf(feeds, placesMm, feedDiameterMm),
    }),
  fieldOf: (parameter) => {
    const match = /^feeds\.placesM|^reflector\.(\w+)|^feeds\.feedDiameterM/.exec(parameter);
    if (!match) return undefined;
    return match[1] ?? (parameter.startsWith('feeds.placesM') ? 'placesMm' : 'feedDiameterMm');
  },
  view: (result, { feeds, feedDiameterMm, diameterM, focalLengthM, offsetAngleDeg }) => {
    if (result.kind === 'below-horizon')
      return {
        says: `Hidden by the Earth: ${result.hiddenLongitudesDeg.map((deg) => longitudeText(deg)).join(', ')}.`,
        outputs: [],
      };
    const { boresight, slots, collisions } = result;
    return {
      says: `Pointed at azimuth ${shown(boresight.azimuthDeg)}°, elevation ${shown(boresight.elevationDeg)}°, no slot loses more than ${shown(result.worstWeightedLossDb)} dB (times its weight).`,
      outputs: [
        {
          label: 'Largest loss times weight',
          value: result.worstWeightedLossDb,
          unit: 'dB',
          main: true,
        },
        {
          label: feeds === 'free' ? 'Turn of the row of feeds' : 'Turn of the bar',
          value: result.tiltDeg,
          unit: '°',
          digits: 1,
          note: 'clockwise positive, from behind',
          main: true,
        },
        { label: 'Azimuth of the boresight', value: boresight.azimuthDeg, unit: '°' },
        { label: 'Elevation of the boresight', value: boresight.elevationDeg, unit: '°' },
        { label: 'Beam deviation factor', value: result.beamDeviationFactorRatio, digits: 3 },
        {
          label: 'Focus to middle of the reflector',
          value: result.focusToMiddleM,
          unit: 'm',
          digits: 3,
        },
      ],
      figures: [
        feedsBehind({
          title: 'The feeds from behind, the focus at the cross',
          feeds: slots.map((slot) => ({
            name: longitudeText(slot.orbitalLongitudeDeg),
            rightMm: 1000 * slot.feed.rightM,
            upMm: 1000 * slot.feed.upM,
          })),
          feedDiameterMm,
          tiltDeg: result.tiltDeg,
        }),
        reflectorSide({
          title: 'Reflector and feeds from the side, true to scale',
          diameterM,
          focalLengthM,
          offsetAngleDeg,
          elevationDeg: boresight.elevationDeg,
          feeds: slots.map((slot) => slot.feed),
          feedDiameterM: feedDiameterMm / 1000,
        }),
      ],
      tables: [
        {
          caption: 'Feed of each slot from the focus, its turn, its beam, its loss',
          columns: [
            'Slot',
            'Right / mm',
            'Up / mm',
            'Along / mm',
            'Turn / °',
            'Against the row / °',
            'Beam off / °',
            'Loss / dB',
          ],
          rows: slots.map((slot) => [
            longitudeText(slot.orbitalLongitudeDeg).replace(' ', '\u00a0'),
            shown(1000 * slot.feed.rightM, 1),
            shown(1000 * slot.feed.upM, 1),
            shown(1000 * slot.feed.alongM, 1),
            slot.feedTurn.kind === 'linear' ? shown(slot.feedTurn.turnDeg, 1) : '–',
            slot.feedTurn.kind === 'linear' ? shown(slot.feedTurn.turnAgainstRowDeg, 1) : '–',
            shown(slot.errorDeg),
            slot.bands.map((band) => shown(band.lossDb)).join(', '),
          ]),
        },
      ],
      notes: [
        'Turns are for linear polarization, clockwise positive, from behind: from the reflector’s own vertical, and from the perpendicular of the row for a feed that is clamped to it. They are not the slots’ own skews.',
        feeds === 'free'
          ? 'The places already contain the turn of the row: a feed set to its place needs no other tilt.'
          : 'The bar is turned once, by the angle above; the feeds stay where they sit on it.',
        ...(slots.some((slot) => slot.bands.some((band) => band.beyondModel))
          ? [
              'Above 3 dB the beam has lost its shape: the loss is good to about 1 dB only, and a reading must show it.',
            ]
          : []),
        ...collisions.map(
          ({ orbitalLongitudesDeg: [a, b], overlapM }) =>
            `The feeds for ${longitudeText(a)} and ${longitudeText(b)} would overlap by ${shown(1000 * overlapM, 0)} mm: take smaller ones, or a bar that holds them apart.`,
        ),
      ],
    };
  },
  working: ({ station, slots }) =>
    slots.flatMap(({ orbitalLongitudeDeg }) =>
      towards(['azimuth', 'elevation'], station, orbitalLongitudeDeg),
    ),
  code: ({
    station,
    slots,
    feeds,
    placesMm,
    diameterM,
    focalLengthM,
    offsetAngleDeg,
    feedDiameterMm,
  }) =>
    `import { severalSlots } from 'slantpath/pointing';

const found = severalSlots({
  station: ${literal(station)},
  slots: [
${slotsOf(slots)
  .map((slot) => `    ${literal(slot)},`)
  .join('\n')}
  ],
  reflector: ${literal({ diameterM, focalLengthM, offsetAngleDeg })},
  feeds: ${literal(feedsOf(feeds, placesMm, feedDiameterMm))},
});
console.log(JSON.stringify(found, null, 2));
`,
});
