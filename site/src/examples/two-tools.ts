/** Why two tools disagree: the same question under other definitions, side by side. */

import { halfPowerBeamwidth } from 'slantpath/antenna';
import { climateAt, rainZoneRate } from 'slantpath/climate';
import { geocentricToStation } from 'slantpath/earth';
import { freeSpaceLoss } from 'slantpath/link';
import { instantToDecimalYear, magneticField } from 'slantpath/magnetic';
import { apparentElevation, lookAngles, sphericalLookAngles } from 'slantpath/pointing';
import { annualPercent, rainAttenuation } from 'slantpath/propagation';
import { defineExample, literal, type Table } from '../lib/example.js';
import { number, type Place, place, text } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';
import { towards } from '../lib/plans.js';

interface Asked {
  readonly station: Place;
  readonly orbitalLongitudeDeg: number;
  readonly frequencyGHz: number;
  readonly date: string;
}

/** A line of the comparison: what the other tool does, its answer, and the difference from the first line. */
interface Line {
  readonly does: string;
  readonly answer: number;
}

function directionLines({ station, orbitalLongitudeDeg, date }: Asked) {
  const look = lookAngles(station, orbitalLongitudeDeg);
  const azimuthDeg = look.kind === 'overhead' ? 180 : look.azimuthDeg;
  const { latitudeDeg, longitudeDeg } = station;
  const round = sphericalLookAngles({
    latitudeDeg,
    longitudeDeg,
    orbitalLongitudeDeg,
    earthRadiusKm: 6378.137,
  });
  const sea = lookAngles({ ...station, heightM: 0 }, orbitalLongitudeDeg);
  // The geodetic latitude of the place whose geocentric one is the latitude typed.
  const other = geocentricToStation({
    geocentricLatitudeDeg: station.latitudeDeg,
    longitudeDeg: station.longitudeDeg,
    radiusKm: 6371,
  });
  const centre = lookAngles({ ...station, latitudeDeg: other.latitudeDeg }, orbitalLongitudeDeg);
  const { declinationDeg } = magneticField(station, instantToDecimalYear(`${date}T12:00:00Z`));
  const elevation: Line[] = [
    { does: 'as here: WGS 84, geometric, at the height of the station', answer: look.elevationDeg },
    { does: 'takes the Earth for a ball', answer: round.elevationDeg },
    { does: 'puts the station at sea level', answer: sea.elevationDeg },
    { does: 'takes the latitude of the map for the geocentric one', answer: centre.elevationDeg },
    ...(look.elevationDeg > -1
      ? [
          {
            does: 'counts in the bending by the air',
            answer: apparentElevation(look.elevationDeg, station.heightM).apparentElevationDeg,
          },
        ]
      : []),
  ];
  const azimuth: Line[] = [
    { does: 'as here: from true north', answer: azimuthDeg },
    {
      does: 'takes the Earth for a ball',
      answer: 'azimuthDeg' in round ? round.azimuthDeg : 180,
    },
    { does: 'gives a compass bearing', answer: azimuthDeg - declinationDeg },
    { does: 'counts from south', answer: azimuthDeg - 180 },
  ];
  return { elevation, azimuth, elevationDeg: look.elevationDeg, slantRangeKm: look.slantRangeKm };
}

function rainLines({ station, frequencyGHz }: Asked, elevationDeg: number): Line[] {
  const climate = climateAt(station);
  const at = (rainRate001MmPerH: number, exceededPercent: number) =>
    rainAttenuation({
      latitudeDeg: station.latitudeDeg,
      heightM: climate.heightM,
      rainHeightKm: climate.rainHeightKm,
      rainRate001MmPerH,
      frequencyGHz,
      elevationDeg,
      tiltDeg: 45,
      exceededPercent,
    }).attenuationDb;
  const rate = climate.rainRate001MmPerH;
  const zone = (name: 'H' | 'K' | 'N') =>
    rainZoneRate({ zone: name, exceededPercent: 0.01 }).rainRateMmPerH;
  return [
    {
      does: 'as here: P.618-14, climate of the place, 0.1 % of an average year',
      answer: at(rate, 0.1),
    },
    { does: 'means 0.1 % of the worst month', answer: at(rate, annualPercent(0.1).annualPercent) },
    { does: 'takes the rain of the old zone H (32 mm/h)', answer: at(zone('H'), 0.1) },
    { does: 'takes the rain of the old zone K (42 mm/h)', answer: at(zone('K'), 0.1) },
    { does: 'means 0.01 %', answer: at(rate, 0.01) },
  ];
}

function otherLines({ frequencyGHz }: Asked, slantRangeKm: number) {
  const width = (beamwidthFactorDeg: number) =>
    halfPowerBeamwidth({ diameterM: 0.9, frequencyGHz, beamwidthFactorDeg });
  const loss = freeSpaceLoss({ slantRangeKm, frequencyGHz });
  const beam: Line[] = [
    { does: 'as here: 70 λ/D', answer: width(70) },
    { does: '58.96 λ/D, evenly lit', answer: width(58.957) },
    { does: '65 λ/D', answer: width(65) },
  ];
  const space: Line[] = [
    { does: 'as here', answer: loss.lossDb },
    { does: 'rounds the constant to 92.4', answer: loss.lossDb - loss.constantDb + 92.4 },
    {
      does: 'takes 36 000 km for the distance',
      answer: freeSpaceLoss({ slantRangeKm: 36_000, frequencyGHz }).lossDb,
    },
  ];
  return { beam, space };
}

/** A table of answers and their differences from the first. */
function table(
  caption: string,
  unit: string,
  digits: number,
  lines: readonly Line[],
  turn = false,
): Table {
  const first = lines[0]?.answer ?? 0;
  const wrap = (deg: number) => ((((deg + 180) % 360) + 360) % 360) - 180;
  const signed = (value: number) => (value > 0 ? `+${shown(value, digits)}` : shown(value, digits));
  return {
    caption,
    columns: ['The other tool', `Answer / ${unit}`, 'Difference'],
    rows: lines.map(({ does, answer }, index) => [
      does,
      shown(turn ? ((answer % 360) + 360) % 360 : answer, digits),
      index === 0 ? '' : signed(turn ? wrap(answer - first) : answer - first),
    ]),
  };
}

export default defineExample({
  inputs: {
    station: place(),
    orbitalLongitudeDeg: number({
      label: 'Orbital longitude of the slot',
      unit: '° east',
      value: 16.4,
      step: 0.1,
      min: -180,
      max: 180,
    }),
    frequencyGHz: number({
      label: 'Frequency',
      unit: 'GHz',
      value: 12.5,
      step: 0.1,
      min: 1,
      max: 50,
    }),
    date: text({ label: 'Day, for the compass', value: '2026-07-14' }),
  },
  compute: (asked) => {
    const directions = directionLines(asked);
    return {
      ...directions,
      ...otherLines(asked, directions.slantRangeKm),
      rain: directions.elevationDeg > 0 ? rainLines(asked, directions.elevationDeg) : [],
    };
  },
  view: ({ elevation, azimuth, rain, beam, space }) => {
    const spread = (lines: readonly Line[]) =>
      Math.max(...lines.map(({ answer }) => Math.abs(answer - (lines[0]?.answer ?? 0))));
    return {
      says: `With nothing but other definitions, the elevation differs by up to ${shown(spread(elevation), 2)}° and the rain by up to ${shown(spread(rain.length > 0 ? rain : [{ does: '', answer: 0 }]), 1)} dB.`,
      outputs: [],
      tables: [
        table('Elevation', '°', 3, elevation),
        table('Azimuth', '°', 2, azimuth, true),
        ...(rain.length > 0 ? [table('Rain attenuation', 'dB', 2, rain)] : []),
        table('Free-space loss', 'dB', 2, space),
        table('Half-power beamwidth of a 0.9 m reflector', '°', 2, beam),
      ],
    };
  },
  working: ({ station, orbitalLongitudeDeg, frequencyGHz }, { slantRangeKm }) => {
    const { latitudeDeg, longitudeDeg } = station;
    return [
      ...towards(['elevation'], station, orbitalLongitudeDeg),
      { plan: 'spherical-elevation', givens: { latitudeDeg, longitudeDeg, orbitalLongitudeDeg } },
      { plan: 'free-space-loss', givens: { frequencyGHz, slantRangeKm } },
    ];
  },
  code: ({ station, orbitalLongitudeDeg }) =>
    `import { lookAngles, sphericalLookAngles } from 'slantpath/pointing';

const station = ${literal(station)};
const orbitalLongitudeDeg = ${literal(orbitalLongitudeDeg)};
const exact = lookAngles(station, orbitalLongitudeDeg).elevationDeg;
const { latitudeDeg, longitudeDeg } = station;
const round = sphericalLookAngles({ latitudeDeg, longitudeDeg, orbitalLongitudeDeg }).elevationDeg;
console.log((round - exact).toFixed(4));
`,
  fieldOf: (parameter) =>
    parameter === 'instant' || parameter === 'decimalYear' ? 'date' : undefined,
});
