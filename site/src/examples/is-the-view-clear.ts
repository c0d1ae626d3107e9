/** Is the view clear? A sighted horizon against the arc of slots. */

import { magneticField } from 'slantpath/magnetic';
import { lookAngles } from 'slantpath/pointing';
import { clearArc, horizonAt, horizonProfile, type SlotView, slotViews } from 'slantpath/survey';
import { defineExample, literal } from '../lib/example.js';
import { choice, number, place, rows } from '../lib/inputs/inputs.js';
import { longitudeText, shown } from '../lib/language/text.js';
import { arcOver } from '../lib/pictures/arc.js';
import { sky } from '../lib/pictures/sky.js';
import { towards } from '../lib/plans.js';

const WORDS: Readonly<Record<SlotView['kind'], string>> = {
  clear: 'clear',
  tight: 'clear, but by less than wanted',
  blocked: 'blocked',
  'not-sighted': 'not sighted',
  'below-horizon': 'hidden by the Earth',
  overhead: 'overhead',
};

const clearanceText = (view: SlotView) =>
  'clearanceDeg' in view ? shown(view.clearanceDeg, 1) : 'none';

function says(views: readonly SlotView[]): string {
  const names = (kinds: readonly SlotView['kind'][]) =>
    views
      .filter((view) => kinds.includes(view.kind))
      .map((view) => longitudeText(view.orbitalLongitudeDeg))
      .join(', ');
  const parts = [
    [names(['clear', 'overhead']), 'clear'],
    [names(['tight']), 'clear by less than wanted'],
    [names(['blocked']), 'blocked'],
    [names(['below-horizon']), 'hidden by the Earth'],
    [names(['not-sighted']), 'where nothing was sighted'],
  ].filter(([list]) => list !== '');
  return `${parts.map(([list, word]) => `${list}: ${word}`).join('; ')}.`;
}

/** The skyline degree by degree where it was sighted. */
const skylineOf = (profile: ReturnType<typeof horizonProfile>) =>
  Array.from({ length: 720 }, (_, half) => half / 2).flatMap((azimuthDeg) => {
    const at = horizonAt(profile, azimuthDeg);
    return at.kind === 'sighted'
      ? [{ azimuthDeg, elevationDeg: Math.max(0, at.elevationDeg) }]
      : [];
  });

export default defineExample({
  usual: ['station', 'orbitalLongitudesDeg', 'bearings', 'sightings'],
  inputs: {
    station: place(),
    sightings: rows({
      label: 'Sightings of the skyline',
      hint: 'One at each corner of the skyline; between two of them it is a straight edge.',
      columns: {
        bearingDeg: { label: 'Bearing', unit: '°', step: 1 },
        elevationDeg: { label: 'Angle up', unit: '°', step: 1 },
      },
      value: [
        { bearingDeg: 125, elevationDeg: 24 },
        { bearingDeg: 150, elevationDeg: 37 },
        { bearingDeg: 160, elevationDeg: 33 },
        { bearingDeg: 168, elevationDeg: 15 },
        { bearingDeg: 195, elevationDeg: 14 },
        { bearingDeg: 230, elevationDeg: 21 },
      ],
      add: { bearingDeg: 260, elevationDeg: 15 },
    }),
    bearings: choice({
      label: 'Bearings count from',
      options: { magnetic: 'magnetic north (compass)', true: 'true north' },
      value: 'magnetic',
    }),
    decimalYear: number({
      label: 'Year of the sighting',
      value: 2026.4,
      step: 0.1,
      min: 2025,
      max: 2030,
      hint: 'For the declination; used with compass bearings.',
    }),
    orbitalLongitudesDeg: rows({
      label: 'Slots',
      columns: { slotDeg: { label: 'Orbital longitude', unit: '° east', step: 0.1 } },
      value: [{ slotDeg: 7.2 }, { slotDeg: 16.4 }, { slotDeg: 21.8 }],
      add: { slotDeg: 28.2 },
    }),
    requiredClearanceDeg: number({
      label: 'Clearance wanted',
      unit: '°',
      value: 2,
      step: 0.5,
      min: 0,
      max: 30,
      hint: 'At least the beamwidth, and room for trees to grow.',
    }),
  },
  compute: ({ station, sightings, bearings, decimalYear, ...wanted }) => {
    const field = magneticField(station, decimalYear);
    const profile = horizonProfile({
      sightings: sightings.map(({ bearingDeg: azimuthDeg, elevationDeg }) =>
        bearings === 'magnetic'
          ? { magneticBearingDeg: azimuthDeg, elevationDeg }
          : { azimuthDeg, elevationDeg },
      ),
      declinationDeg: field.declinationDeg,
    });
    const { requiredClearanceDeg } = wanted;
    const orbitalLongitudesDeg = wanted.orbitalLongitudesDeg.map((row) => row.slotDeg);
    return {
      declinationDeg: field.declinationDeg,
      declinationStandardUncertaintyDeg: field.declinationStandardUncertaintyDeg,
      compassZone: field.compassZone,
      profile,
      views: slotViews({ station, profile, orbitalLongitudesDeg, requiredClearanceDeg }),
      arc: clearArc({ station, profile, requiredClearanceDeg }),
    };
  },
  view: (result, { station, bearings, sightings }) => {
    const turnDeg = bearings === 'magnetic' ? result.declinationDeg : 0;
    const whole = (deg: number, low: number, high: number) =>
      Math.min(high, Math.max(low, Math.round(deg)));
    /** The table of sightings with one of them elsewhere. */
    const moved = (row: number, bearingDeg: number, elevationDeg: number) => ({
      sightings: sightings.map((old, index) =>
        index === row
          ? {
              bearingDeg: ((Math.round(bearingDeg) % 360) + 360) % 360,
              elevationDeg: whole(elevationDeg, 0, 89),
            }
          : old,
      ),
    });
    const skyline = skylineOf(result.profile);
    const widest = result.arc.filter((part) => part.kind === 'clear');
    const clearDeg = widest.reduce((sum, part) => sum + part.longitudeSpanDeg, 0);
    return {
      caution:
        'Sight from safe ground where you can. On a roof or a mast secure yourself and the tools first, keep clear of power lines, and follow the local rules for work at height.',
      says: says(result.views),
      outputs: [
        {
          label: 'Clear arc',
          value: clearDeg,
          unit: '°',
          digits: 1,
          note: `of longitude: ${widest
            .map(
              (part) =>
                `${longitudeText(part.westLongitudeDeg)} to ${longitudeText(part.eastLongitudeDeg)}`,
            )
            .join(', ')}`,
          main: true,
        },
        ...(bearings === 'magnetic'
          ? [
              {
                label: 'Declination',
                value: result.declinationDeg,
                unit: '°',
                note: `east positive, ± ${shown(result.declinationStandardUncertaintyDeg, 2)}°; added to each bearing`,
              },
            ]
          : []),
      ],
      figures: [
        sky({
          title: `The arc of slots over the sighted skyline; the slots are numbered as in the table`,
          objects: result.views.flatMap((view, index) =>
            'azimuthDeg' in view
              ? [
                  {
                    label: String(index + 1),
                    azimuthDeg: view.azimuthDeg,
                    elevationDeg: view.elevationDeg,
                  },
                ]
              : [],
          ),
          arc: arcOver(station),
          skyline,
          handles: sightings.map(({ bearingDeg, elevationDeg }, row) => ({
            label: `Sighting ${row + 1}`,
            says: `bearing ${shown(bearingDeg, 0)}°, ${shown(elevationDeg, 0)}° up`,
            azimuthDeg: (((bearingDeg + turnDeg) % 360) + 360) % 360,
            elevationDeg: Math.max(0, elevationDeg),
            now: elevationDeg,
            min: 0,
            max: 89,
            put: (to) => moved(row, to.azimuthDeg - turnDeg, to.elevationDeg),
            step: (right, up) => moved(row, bearingDeg + right, elevationDeg + up),
          })),
          centreDeg: station.latitudeDeg < 0 ? 0 : 180,
        }),
      ],
      tables: [
        {
          caption: 'Each slot over the skyline',
          columns: ['Slot', 'Azimuth / °', 'Elevation / °', 'Clearance / °', 'View'],
          rows: result.views.map((view, index) => [
            `${index + 1}: ${longitudeText(view.orbitalLongitudeDeg)}`,
            'azimuthDeg' in view ? shown(view.azimuthDeg, 2) : 'none',
            shown(view.elevationDeg, 2),
            clearanceText(view),
            WORDS[view.kind],
          ]),
        },
        {
          caption: 'The visible arc from west to east',
          columns: ['From', 'To', 'View'],
          rows: result.arc.map((part) => [
            longitudeText(part.westLongitudeDeg),
            longitudeText(part.eastLongitudeDeg),
            WORDS[part.kind],
          ]),
        },
      ],
      notes:
        bearings === 'magnetic' && result.compassZone !== 'usable'
          ? [
              'The horizontal field is too weak here for a compass: take bearings from the Sun or a map.',
            ]
          : [],
    };
  },
  fieldOf: (parameter) =>
    parameter
      .replace(/(?:azimuthDeg|magneticBearingDeg)$/, 'bearingDeg')
      .replace(/^orbitalLongitudeDeg$/, 'orbitalLongitudesDeg'),
  working: ({ station, orbitalLongitudesDeg }, { declinationDeg }) =>
    orbitalLongitudesDeg.slice(0, 1).flatMap(({ slotDeg }) => {
      const look = lookAngles(station, slotDeg);
      return [
        ...towards(['azimuth', 'elevation'], station, slotDeg),
        ...(look.kind === 'visible'
          ? [{ plan: 'magnetic-bearing', givens: { azimuthDeg: look.azimuthDeg, declinationDeg } }]
          : []),
      ];
    }),
  code: ({
    station,
    sightings,
    bearings,
    decimalYear,
    orbitalLongitudesDeg,
    requiredClearanceDeg,
  }) =>
    `import { magneticField } from 'slantpath/magnetic';
import { horizonProfile, slotViews } from 'slantpath/survey';

const station = ${literal(station)};
const profile = horizonProfile({
  sightings: [
${sightings
  .map(
    ({ bearingDeg, elevationDeg }) =>
      `    { ${bearings === 'magnetic' ? 'magneticBearingDeg' : 'azimuthDeg'}: ${literal(bearingDeg)}, elevationDeg: ${literal(elevationDeg)} },`,
  )
  .join('\n')}
  ],
  declinationDeg: magneticField(station, ${literal(decimalYear)}).declinationDeg,
});
const orbitalLongitudesDeg = ${literal(orbitalLongitudesDeg.map((row) => row.slotDeg))};
const requiredClearanceDeg = ${literal(requiredClearanceDeg)};
for (const view of slotViews({ station, profile, orbitalLongitudesDeg, requiredClearanceDeg }))
  console.log(view.orbitalLongitudeDeg, view.kind, 'clearanceDeg' in view ? view.clearanceDeg : '');
`,
});
