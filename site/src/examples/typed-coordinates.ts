/** Typed coordinates: what a text means, how exact it is, and how else it can be written. */

import { coordinatesToMaidenhead, coordinatesToText, textToCoordinates } from 'slantpath/earth';
import { geodesicBetween } from 'slantpath/geodesic';
import { coordinatesToMgrs, coordinatesToPlusCode } from 'slantpath/gridref';
import { defineExample, literal } from '../lib/example.js';
import { text } from '../lib/inputs/inputs.js';
import { shown } from '../lib/language/text.js';

const NOTATIONS = {
  decimal: 'decimal degrees',
  'degrees-minutes': 'degrees and minutes',
  'degrees-minutes-seconds': 'degrees, minutes and seconds',
  maidenhead: 'Maidenhead locator',
} as const;

/** A length in metres or kilometres, as exact as it deserves. */
const length = (km: number) =>
  km < 0.01
    ? `${shown(km * 1000, 1)} m`
    : km < 2
      ? `${shown(km * 1000, 0)} m`
      : `${shown(km, 1)} km`;

export default defineExample({
  inputs: {
    text: text({
      label: 'Coordinates',
      value: "46° 24.0' N, 9° 36.0' E",
      hint: 'As you have them: decimal, minutes, seconds, N S E W before or behind, a locator.',
    }),
  },
  compute: ({ text: typed }) => {
    const place = textToCoordinates(typed);
    const { latitudeDeg, longitudeDeg } = place;
    const stepNorth = Math.min(90, Math.abs(latitudeDeg) - place.latitudeStepDeg);
    const north = geodesicBetween(place, {
      latitudeDeg: stepNorth * Math.sign(latitudeDeg || 1),
      longitudeDeg,
    });
    const east = geodesicBetween(place, {
      latitudeDeg,
      longitudeDeg: longitudeDeg + place.longitudeStepDeg,
    });
    return {
      ...place,
      stepNorthKm: north.distanceKm,
      stepEastKm: east.distanceKm,
      decimal: coordinatesToText({ latitudeDeg, longitudeDeg }),
      minutes: coordinatesToText({ latitudeDeg, longitudeDeg, notation: 'degrees-minutes' }),
      seconds: coordinatesToText({
        latitudeDeg,
        longitudeDeg,
        notation: 'degrees-minutes-seconds',
      }),
      maidenhead: coordinatesToMaidenhead(place),
      plusCode: coordinatesToPlusCode(place),
      mgrs:
        latitudeDeg >= -80 && latitudeDeg <= 84 ? coordinatesToMgrs(place) : 'none at the poles',
    };
  },
  view: (place) => ({
    says: `Read as ${NOTATIONS[place.notation]}: latitude ${shown(place.latitudeDeg, 5)}°, longitude ${shown(place.longitudeDeg, 5)}°.`,
    outputs: [
      {
        label: 'Latitude',
        value: place.latitudeDeg,
        unit: '°',
        digits: 6,
        note: 'north positive',
        main: true,
      },
      {
        label: 'Longitude',
        value: place.longitudeDeg,
        unit: '°',
        digits: 6,
        note: 'east positive',
        main: true,
      },
      {
        label: 'One step of the last digit',
        value: `${length(place.stepNorthKm)} by ${length(place.stepEastKm)}`,
        note: 'north by east',
      },
    ],
    tables: [
      {
        caption: 'The same place written otherwise',
        columns: ['Notation', 'Text'],
        rows: [
          ['Decimal degrees', place.decimal],
          ['Degrees and minutes', place.minutes],
          ['Degrees, minutes and seconds', place.seconds],
          ['Maidenhead locator', place.maidenhead],
          ['Plus code', place.plusCode],
          ['MGRS', place.mgrs],
        ],
      },
    ],
    notes:
      place.stepNorthKm > 5
        ? [
            'The text is coarse: an elevation may be off by a tenth of a degree for every 10 km. Ask for more digits.',
          ]
        : [],
  }),
  working: (_, { latitudeDeg }) => [{ plan: 'geocentric-latitude', givens: { latitudeDeg } }],
  code: ({ text: typed }) =>
    `import { coordinatesToText, textToCoordinates } from 'slantpath/earth';

const place = textToCoordinates(${literal(typed)});
console.log(place.latitudeDeg, place.longitudeDeg, place.notation);
console.log(coordinatesToText({ ...place, notation: 'degrees-minutes' }));
`,
});
