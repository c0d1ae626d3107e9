/** The place, north, the Sun's shadow, and where each slot stands. */

import type { DirectionPlan } from '../../job/index.js';
import { shadowInstants } from '../../sun/index.js';
import { type SheetBlock, section, tableOf } from '../paper/blocks.js';
import type { Speech } from '../paper/speech.js';

/** Where the antenna stands, and where north is. */
export function placeBlocks(speech: Speech): readonly SheetBlock[] {
  const { job, plan, words, fixed, signed, latitude, longitude } = speech;
  const { station } = job;
  const { north } = plan;
  const place = [
    `${station.name}: ${latitude(station.latitudeDeg, 4)}, ${longitude(station.longitudeDeg, 4)}`,
    ...(station.heightM === undefined ? [] : [`${fixed(station.heightM, 0)} m`]),
  ];
  return [
    section(words.sections.place),
    place.join(', '),
    north === null
      ? words.noNorth
      : [
          words.declination(
            signed(north.declinationDeg, 1),
            fixed(2 * north.declinationStandardUncertaintyDeg, 1),
            north.model,
            north.date,
            north.validity !== 'valid',
          ),
          words.magneticBearing(
            north.declinationDeg >= 0,
            fixed(Math.abs(north.declinationDeg), 1),
          ),
          words.codes.compass[north.compassZone],
        ]
          .join(' ')
          .trim(),
  ];
}

/** Where each slot stands. */
export function slotBlocks(speech: Speech): readonly SheetBlock[] {
  const { plan, words, fixed, longitude, turn } = speech;
  const { columns } = words;
  const refracted = plan.directions.some(
    ({ kind, elevationDeg, apparentElevationDeg }) =>
      kind !== 'below-horizon' && Math.abs(apparentElevationDeg - elevationDeg) >= 0.05,
  );
  // A feed with a place of its own is turned by its mount's section, not by its slot's wave.
  const held = new Set(
    plan.mounts.flatMap((mount) => ('feeds' in mount ? mount.feeds.map(({ slot }) => slot) : [])),
  );
  const named = (d: DirectionPlan) =>
    d.kind === 'visible' ? d.slot : `${d.slot} (${words.codes.directions[d.kind]})`;
  return [
    section(words.sections.slots),
    tableOf(plan.directions, [
      [columns.slot, named, 'left'],
      [columns.longitude, (d) => longitude(d.orbitalLongitudeDeg, 1)],
      [columns.azimuthTrue, (d) => fixed(d.azimuthDeg, 2)],
      [columns.magnetic, (d) => fixed(d.magneticBearingDeg, 1)],
      [columns.elevation, (d) => fixed(d.apparentElevationDeg, 2)],
      refracted ? [columns.geometric, (d) => fixed(d.elevationDeg, 2)] : null,
      [columns.rangeKm, (d) => fixed(d.slantRangeKm, 0)],
      [columns.skew, (d) => (held.has(d.slot) ? '-' : turn(d.skewDeg))],
    ]),
    held.size < plan.directions.length ? words.slotSense : words.elevationSense,
    ...(refracted ? [words.refraction] : []),
  ];
}

/** When the shadow of a plumb line gives the bearing of each mount, on the day of the job. */
export function shadowBlocks(speech: Speech): readonly SheetBlock[] {
  const { job, plan, words, times, fixed } = speech;
  const { columns } = words;
  const date = plan.north?.date;
  if (date === undefined) return [section(words.sections.shadow), words.noShadowDay];
  const station = { heightM: 0, ...job.station };
  const bearings = bearingsOf(speech);
  const moments = bearings.flatMap(({ name, azimuthDeg }) =>
    shadowInstants({ station, azimuthDeg, day: date }).map((moment) => ({ name, ...moment })),
  );
  if (moments.length === 0) return [section(words.sections.shadow), words.noShadow(date)];
  return [
    section(words.sections.shadow),
    words.shadowHead(date, times.zone, times.offset(moments[0]?.instantUtc ?? date)),
    tableOf(moments, [
      [columns.towards, ({ name }) => name, 'left'],
      [columns.time, ({ instantUtc }) => times.clock(instantUtc)],
      [columns.pointer, ({ pointer }) => words.pointers[pointer], 'left'],
      [columns.sunElevation, ({ sunElevationDeg }) => fixed(sunElevationDeg, 0)],
      [columns.degPerMinute, ({ errorDegPerMin }) => fixed(errorDegPerMin, 2)],
    ]),
  ];
}

/** Bearings that the mounts are set to: the boresight, or the highest point of a polar mount. */
function bearingsOf({
  job,
  plan,
  words,
  severalMounts,
}: Speech): { name: string; azimuthDeg: number }[] {
  const named = (mount: string) => (severalMounts ? mount : words.boresightName);
  return plan.mounts.flatMap((mount) => {
    if (mount.kind === 'one-slot' || mount.kind === 'several-slots')
      return mount.boresightAzimuthDeg === null
        ? []
        : [{ name: named(mount.mount), azimuthDeg: mount.boresightAzimuthDeg }];
    if (mount.kind === 'polar')
      return [
        {
          name: severalMounts ? `${mount.mount}, ${words.meridian}` : words.meridian,
          azimuthDeg: job.station.latitudeDeg < 0 ? 0 : 180,
        },
      ];
    const [slot] = mount.slots;
    const azimuthDeg = plan.directions.find((d) => d.slot === slot)?.azimuthDeg;
    return typeof azimuthDeg === 'number' ? [{ name: named(mount.mount), azimuthDeg }] : [];
  });
}

/** Whether the view is clear. */
export function viewBlocks(speech: Speech): readonly SheetBlock[] {
  const { plan, words, fixed, signed, severalMounts } = speech;
  const { columns } = words;
  return [
    section(words.sections.view),
    tableOf(plan.views, [
      [columns.slot, ({ slot }) => slot, 'left'],
      severalMounts ? [columns.mount, ({ mount }) => mount, 'left'] : null,
      [columns.skyline, (v) => fixed(v.skylineElevationDeg, 1)],
      [columns.clearance, (v) => signed(v.clearanceDeg, 1)],
      [columns.edge, (v) => fixed(v.edgeClearanceM, 1)],
      [columns.edgeWorst, (v) => fixed(v.worstEdgeClearanceM, 1)],
      [columns.freeBeyond, (v) => fixed(v.freeBeyondM, 1)],
      [columns.verdict, ({ kind }) => words.codes.views[kind], 'left'],
    ]),
    ...(plan.views.some(({ edgeClearanceM }) => edgeClearanceM !== null) ? [words.viewSense] : []),
  ];
}
