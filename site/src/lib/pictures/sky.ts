/** The sky as it is seen: azimuth along the horizon, elevation upward. And directions on a compass rose. */

import { aroundRim, labelPlaces } from '../drawing/labels.js';
import { linear } from '../drawing/scale.js';
import { type Labelled, stackedLabels } from '../drawing/stackedLabels.js';
import { label, picture, tag, through } from '../drawing/svg.js';
import type { Figure, Handle } from '../example.js';
import { shown } from '../language/text.js';

/** A direction in the sky. */
export interface Direction {
  readonly azimuthDeg: number;
  readonly elevationDeg: number;
}

/** What stands in the sky. */
export interface Sky {
  readonly title: string;
  /** Named directions: satellites, the Sun. */
  readonly objects: readonly (Direction & { readonly label: string })[];
  /** The arc of slots, in order. */
  readonly arc?: readonly Direction[];
  /** Skyline of ridges, trees and roofs, in order of azimuth. */
  readonly skyline?: readonly Direction[];
  /** Azimuth in the middle of the picture; the first object's by default. */
  readonly centreDeg?: number;
  /** Width of the view; by default 180, and the whole horizon where an object stands outside of it. */
  readonly widthDeg?: number;
  /** Drawn at this size instead of the usual one. */
  readonly size?: { readonly width: number; readonly height: number };
  /** Named places along the arc. */
  readonly ticks?: readonly (Direction & { readonly label: string })[];
  /** Directions that can be moved; `put` gets the direction under the pointer and how far from it others lie on the picture. */
  readonly handles?: readonly (Direction &
    Omit<Handle, 'at' | 'put'> & {
      readonly put: (to: Direction, far: (from: Direction) => number) => ReturnType<Handle['put']>;
    })[];
  /** Highest elevation shown; follows from the objects by default. */
  readonly topDeg?: number;
}

const WIDTH_USUAL = 440;
const WIDTH = WIDTH_USUAL;
const EDGE = { left: 40, right: 18, top: 16, bottom: 48 };
/** Sightings further apart than this say nothing about what lies between: the library's own default. */
const WIDEST_GAP_DEG = 45;
const NAMES = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'];

/** Difference of two azimuths, from -180 to below 180. */
const turn = (deg: number) => ((((deg + 180) % 360) + 360) % 360) - 180;

/** Where on the picture that `sky` draws a direction lies, as shares of its width and height; and the way back. */
export function skyPlaces(
  of: Pick<Sky, 'centreDeg' | 'topDeg'> & {
    readonly size: { readonly width: number; readonly height: number };
  },
) {
  const { width, height } = of.size;
  const x = linear(-90, 90, EDGE.left, width - EDGE.right);
  const y = linear(0, of.topDeg ?? 90, height - EDGE.bottom, EDGE.top);
  return (d: Direction): readonly [number, number] => [
    x(turn(d.azimuthDeg - (of.centreDeg ?? 180))) / width,
    y(d.elevationDeg) / height,
  ];
}

/** Draws a part of the sky over the horizon. */
export function sky(of: Sky): Figure {
  const WIDTH = of.size?.width ?? WIDTH_USUAL;
  const centre = of.centreDeg ?? of.objects[0]?.azimuthDeg ?? 180;
  const everyObjectWithin = of.objects.every((o) => Math.abs(turn(o.azimuthDeg - centre)) <= 90);
  const width = of.widthDeg ?? (everyObjectWithin ? 180 : 360);
  const highest = Math.max(
    ...of.objects.map((o) => o.elevationDeg),
    ...(of.arc ?? []).map((o) => o.elevationDeg),
    20,
  );
  // Room for several rows of labels where many objects stand.
  const headroom = of.objects.length > 4 ? 22 : 8;
  const top = of.topDeg ?? Math.min(90, Math.ceil((highest + headroom) / 10) * 10);
  const height = of.size?.height ?? 250;
  const low = height - EDGE.bottom;
  const x = linear(-width / 2, width / 2, EDGE.left, WIDTH - EDGE.right);
  const y = linear(0, top, low, EDGE.top, 5);
  const place = (d: Direction) => [x(turn(d.azimuthDeg - centre)), y(d.elevationDeg)] as const;
  /** A line of directions, broken where it would jump across the picture. */
  const line = (directions: readonly Direction[]) => {
    let before = Number.NaN;
    const points = directions.flatMap((d) => {
      const offset = turn(d.azimuthDeg - centre);
      const jump = Math.abs(offset - before) > 180;
      before = offset;
      return jump ? [[Number.NaN, 0] as const, place(d)] : [place(d)];
    });
    return through(points);
  };
  const handle = ({
    azimuthDeg,
    elevationDeg,
    put,
    ...rest
  }: NonNullable<Sky['handles']>[number]): Handle => {
    const [px, py] = place({ azimuthDeg, elevationDeg });
    return {
      ...rest,
      at: [px / WIDTH, py / height],
      put: (toRight, down) => {
        const [ax, ay] = [toRight * WIDTH, down * height];
        return put(
          { azimuthDeg: (((centre + x.back(ax)) % 360) + 360) % 360, elevationDeg: y.back(ay) },
          (from) => Math.hypot(place(from)[0] - ax, place(from)[1] - ay),
        );
      },
    };
  };
  const [left, right] = [EDGE.left, WIDTH - EDGE.right];
  const inner: string[] = [];
  for (const tick of y.ticks.filter((t) => t > 0))
    inner.push(
      tag('path', {
        class: 'grid',
        d: through([
          [left, y(tick)],
          [right, y(tick)],
        ]),
      }),
      label(left - 6, y(tick) + 4.5, `${tick}°`, 'end'),
    );
  const step = width > 180 ? 45 : width > 120 && WIDTH < 700 ? 30 : 15;
  for (let azimuth = 0; azimuth < 360; azimuth += step) {
    const offset = turn(azimuth - centre);
    if (Math.abs(offset) > width / 2) continue;
    inner.push(
      tag('path', {
        class: 'grid',
        d: through([
          [x(offset), EDGE.top],
          [x(offset), low],
        ]),
      }),
      label(Math.min(x(offset), WIDTH - 19), low + 18, `${azimuth}°`),
    );
  }
  NAMES.forEach((name, index) => {
    const offset = turn(index * 45 - centre);
    if (Math.abs(offset) <= width / 2 - 4)
      inner.push(label(x(offset), low + 38, name, 'middle', 'name'));
  });
  const drawn: string[] = [];
  if (of.skyline && of.skyline.length > 1) {
    const points = of.skyline
      .map((d) => ({ offset: turn(d.azimuthDeg - centre), d }))
      .sort((a, b) => a.offset - b.offset);
    // One piece for each run of sightings: where nothing was sighted over a wide gap, nothing is drawn.
    const runs: (typeof points)[] = [];
    for (const point of points) {
      const before = runs.at(-1)?.at(-1);
      if (before && point.offset - before.offset <= WIDEST_GAP_DEG) runs.at(-1)?.push(point);
      else runs.push([point]);
    }
    for (const run of runs.filter(({ length }) => length > 1)) {
      const path = through(run.map(({ d }) => place(d)));
      const [first, last] = [run[0]?.offset ?? 0, run.at(-1)?.offset ?? 0];
      drawn.push(
        tag('path', {
          class: 'ground',
          d: `${path}L${x(last).toFixed(1)} ${low}L${x(first).toFixed(1)} ${low}Z`,
        }),
      );
    }
  }
  if (of.arc) drawn.push(tag('path', { class: 'arc', d: line(of.arc) }));
  const written: { readonly from: number; readonly to: number; readonly y: number }[] = [];
  for (const tick of of.ticks ?? []) {
    const [px, py] = place(tick);
    if (px < left + 12 || px > right - 12) continue;
    drawn.push(tag('circle', { class: 'tick-mark', cx: px, cy: py, r: 2.5 }));
    const begins = px < (left + right) / 2;
    const from = begins ? px + 5 : px - 5 - 8 * tick.label.length;
    const here = { from, to: from + 8 * tick.label.length, y: py };
    // Over the highest point the names come from both sides: one that would lie on another is left out.
    if (written.some((o) => o.from < here.to && here.from < o.to && Math.abs(o.y - py) < 14))
      continue;
    written.push(here);
    drawn.push(label(px + (begins ? 5 : -5), py + 18, tick.label, begins ? 'start' : 'end'));
  }
  inner.push(
    `<svg x="${left}" y="${EDGE.top}" width="${right - left}" height="${low - EDGE.top}" viewBox="${left} ${EDGE.top} ${right - left} ${low - EDGE.top}">${drawn.join('')}</svg>`,
    tag('path', {
      class: 'axis',
      d: through([
        [left, low],
        [right, low],
      ]),
    }),
  );
  const named: Labelled[] = [];
  for (const object of of.objects) {
    const [px, py] = place(object);
    if (px < left || px > right) continue;
    if (object.elevationDeg < 0) {
      inner.push(tag('circle', { class: 'ring', cx: px, cy: low, r: 5 }));
      named.push({ x: px, y: low, text: `${object.label} ↓` });
      continue;
    }
    inner.push(
      tag('path', {
        class: 'drop',
        d: through([
          [px, py],
          [px, low],
        ]),
      }),
      tag('circle', { class: 'object', cx: px, cy: py, r: 5 }),
    );
    named.push({ x: px, y: py, text: object.label });
  }
  inner.push(stackedLabels(named, { left, right, top: 0 }));
  return {
    title: of.title,
    svg: picture(WIDTH, height, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['Object', 'Azimuth / °', 'Elevation / °'],
      rows: of.objects.map((o) => [o.label, shown(o.azimuthDeg, 2), shown(o.elevationDeg, 2)]),
    },
    ...(of.handles
      ? {
          handles: of.handles
            .map(handle)
            .filter(({ at: [share] }) => share * WIDTH >= left && share * WIDTH <= right),
        }
      : {}),
  };
}

/** A compass rose with named bearings from true north. */
export interface Compass {
  readonly title: string;
  readonly bearings: readonly {
    readonly label: string;
    readonly azimuthDeg: number;
    /** `pointer` is drawn as the main hand, `reference` as a thin one (magnetic north). */
    readonly kind?: 'pointer' | 'reference';
  }[];
}

/** Draws a compass rose seen from above, north up. */
export function compass(of: Compass): Figure {
  const [cx, cy, radius] = [WIDTH / 2, 128, 92];
  const polar = (azimuthDeg: number, r: number) => {
    const a = (azimuthDeg * Math.PI) / 180;
    return [cx + r * Math.sin(a), cy - r * Math.cos(a)] as const;
  };
  const inner: string[] = [tag('circle', { class: 'rim', cx, cy, r: radius })];
  for (let azimuth = 0; azimuth < 360; azimuth += 10) {
    const long = azimuth % 90 === 0 ? 12 : azimuth % 30 === 0 ? 9 : 5;
    inner.push(
      tag('path', {
        class: 'axis',
        d: through([polar(azimuth, radius), polar(azimuth, radius - long)]),
      }),
    );
  }
  const places = labelPlaces({ left: 0, right: WIDTH, top: 0, bottom: 256 });
  places.keepClear(
    Array.from({ length: 73 }, (_, i) => polar(5 * i, radius)),
    true,
  );
  of.bearings.forEach((bearing) => {
    const main = bearing.kind !== 'reference';
    inner.push(
      tag('path', {
        class: main ? 'hand' : 'drop',
        d: through([[cx, cy], polar(bearing.azimuthDeg, radius)]),
      }),
    );
    if (main) {
      const [a, b, c] = [
        polar(bearing.azimuthDeg, radius + 2),
        polar(bearing.azimuthDeg - 5, radius - 16),
        polar(bearing.azimuthDeg + 5, radius - 16),
      ];
      inner.push(tag('path', { class: 'object', d: `${through([a, b, c])}Z` }));
    }
    inner.push(places.put(bearing.label, aroundRim(polar, bearing.azimuthDeg, radius)));
  });
  // The letters come last, so that no hand hides one.
  ['N', 'E', 'S', 'W'].forEach((name, index) => {
    const [px, py] = polar(index * 90, radius - 23);
    inner.push(label(px, py + 5, name, 'middle', 'remark'));
  });
  inner.push(tag('circle', { class: 'object', cx, cy, r: 3 }));
  return {
    title: of.title,
    svg: picture(WIDTH, 256, of.title, inner.join('')),
    table: {
      caption: of.title,
      columns: ['Bearing', 'From true north / °'],
      rows: of.bearings.map((b) => [b.label, shown(b.azimuthDeg, 2)]),
    },
  };
}
