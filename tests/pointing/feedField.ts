/**
 * The field of a paraboloid with a displaced linear feed, summed over the reflector: physical optics with a balanced
 * (Huygens) feed, own vectors from the Earth up. Nothing of the library's geometry is used, so that the turn of a
 * feed can be checked against the turn that couples most to a satellite's wave.
 */

type Vector = readonly [number, number, number];

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const scaled = (a: Vector, by: number): Vector => [a[0] * by, a[1] * by, a[2] * by];
const plus = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const minus = (a: Vector, b: Vector): Vector => plus(a, scaled(b, -1));
const unit = (a: Vector): Vector => scaled(a, 1 / Math.sqrt(dot(a, a)));
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** WGS 84 and the geostationary radius, in kilometres. */
const EQUATOR_KM = 6378.137;
const FLATTENING = 1 / 298.257223563;
const ORBIT_KM = 42164.17;

/** Direction to a slot and the satellite's vertical as it arrives there, in an Earth-fixed frame. */
export function waveFrom(
  station: { latitudeDeg: number; longitudeDeg: number; heightM: number },
  orbitalLongitudeDeg: number,
): { direction: Vector; vertical: Vector } {
  const [p, l, s] = [station.latitudeDeg, station.longitudeDeg, orbitalLongitudeDeg].map(
    radians,
  ) as [number, number, number];
  const squared = FLATTENING * (2 - FLATTENING);
  const n = EQUATOR_KM / Math.sqrt(1 - squared * Math.sin(p) ** 2);
  const h = station.heightM / 1000;
  const place: Vector = [
    (n + h) * Math.cos(p) * Math.cos(l),
    (n + h) * Math.cos(p) * Math.sin(l),
    (n * (1 - squared) + h) * Math.sin(p),
  ];
  const satellite: Vector = [ORBIT_KM * Math.cos(s), ORBIT_KM * Math.sin(s), 0];
  const direction = unit(minus(satellite, place));
  const axis: Vector = [0, 0, 1];
  return { direction, vertical: unit(minus(axis, scaled(direction, dot(axis, direction)))) };
}

/** Right, up and ahead of a reflector that looks at an azimuth and elevation, in the Earth-fixed frame. */
export function reflectorAxes(
  station: { latitudeDeg: number; longitudeDeg: number },
  azimuthDeg: number,
  elevationDeg: number,
): { right: Vector; up: Vector; ahead: Vector } {
  const [p, l, a, e] = [station.latitudeDeg, station.longitudeDeg, azimuthDeg, elevationDeg].map(
    radians,
  ) as [number, number, number, number];
  const east: Vector = [-Math.sin(l), Math.cos(l), 0];
  const zenith: Vector = [Math.cos(p) * Math.cos(l), Math.cos(p) * Math.sin(l), Math.sin(p)];
  const north = cross(zenith, east);
  const level = plus(scaled(north, Math.cos(a)), scaled(east, Math.sin(a)));
  return {
    right: plus(scaled(north, -Math.sin(a)), scaled(east, Math.cos(a))),
    up: plus(scaled(level, -Math.sin(e)), scaled(zenith, Math.cos(e))),
    ahead: plus(scaled(level, Math.cos(e)), scaled(zenith, Math.sin(e))),
  };
}

/** A vector turned by the smallest rotation that brings one direction onto another. */
function swung(vector: Vector, from: Vector, to: Vector): Vector {
  const axis = cross(from, to);
  const cosine = dot(from, to);
  return plus(
    plus(scaled(vector, cosine), cross(axis, vector)),
    scaled(axis, dot(axis, vector) / (1 + cosine)),
  );
}

/** What the sum needs. */
export interface FieldQuestion {
  readonly diameterM: number;
  readonly focalLengthM: number;
  readonly offsetAngleDeg: number;
  readonly frequencyGHz: number;
  /** Place of the feed from the focus in the feed's frame: right, up across its axis, towards the reflector. */
  readonly feedM: Vector;
  /** Direction of the slot and the wave's polarization in the reflector's frame: right, up, ahead. */
  readonly direction: Vector;
  readonly polarization: Vector;
}

/** Complex field of a feed of a polarization, resolved along two directions. */
function coupling(
  { diameterM, focalLengthM, offsetAngleDeg, frequencyGHz, feedM, direction }: FieldQuestion,
  feedTurnRad: number,
  along: readonly Vector[],
): { re: number; im: number }[] {
  const k = (2 * Math.PI * frequencyGHz) / 0.299792458;
  const bend = 2 * radians(offsetAngleDeg);
  const middleUp = 2 * focalLengthM * Math.tan(bend / 2);
  const middle: Vector = [0, middleUp, middleUp ** 2 / (4 * focalLengthM)];
  const focus: Vector = [0, 0, focalLengthM];
  const feedAxis: Vector = [0, Math.sin(bend), -Math.cos(bend)];
  const feedUp: Vector = [0, Math.cos(bend), Math.sin(bend)];
  const feedRight: Vector = [1, 0, 0];
  const place = plus(
    focus,
    plus(plus(scaled(feedRight, feedM[0]), scaled(feedUp, feedM[1])), scaled(feedAxis, feedM[2])),
  );
  // The displaced feed looks at the middle of the reflector.
  const looks = unit(minus(middle, place));
  const upright = plus(
    scaled(feedUp, Math.cos(feedTurnRad)),
    scaled(feedRight, Math.sin(feedTurnRad)),
  );
  const source = swung(upright, feedAxis, looks);
  // A pattern that falls by about 10 dB to the edge.
  const edge = Math.atan2(
    diameterM / 2,
    Math.sqrt(dot(minus(middle, focus), minus(middle, focus))),
  );
  const power = Math.log(10 ** (-10 / 20)) / Math.log(Math.cos(edge));
  const sums = along.map(() => ({ re: 0, im: 0 }));
  const rings = 24;
  const spokes = 48;
  for (let ring = 0; ring < rings; ring++)
    for (let spoke = 0; spoke < spokes; spoke++) {
      const radius = ((ring + 0.5) / rings) * (diameterM / 2);
      const angle = ((spoke + 0.5) / spokes) * 2 * Math.PI;
      const x = radius * Math.cos(angle);
      const y = middleUp + radius * Math.sin(angle);
      const point: Vector = [x, y, (x * x + y * y) / (4 * focalLengthM)];
      const ray = minus(point, place);
      const length = Math.sqrt(dot(ray, ray));
      const towards = scaled(ray, 1 / length);
      const cosine = dot(towards, looks);
      const strength = (Math.max(cosine, 0) ** power * radius) / length;
      const electric = scaled(swung(source, looks, towards), strength);
      const magnetic = cross(towards, electric);
      const normal: Vector = [-x / (2 * focalLengthM), -y / (2 * focalLengthM), 1];
      const current = scaled(cross(normal, magnetic), 2);
      const phase = k * (dot(direction, point) - length);
      along.forEach((wanted, index) => {
        const sum = sums[index] as { re: number; im: number };
        const share = dot(current, wanted);
        sum.re += share * Math.cos(phase);
        sum.im += share * Math.sin(phase);
      });
    }
  return sums;
}

/** Turns of the feed in degrees, clockwise from behind: that which couples most, and that which nulls the other polarization best. */
export function bestFeedTurns(question: FieldQuestion): { couples: number; nulls: number } {
  const { direction, polarization } = question;
  const wanted = [polarization, cross(direction, polarization)];
  const [up, right] = [0, Math.PI / 2].map((turn) => coupling(question, turn, wanted));
  const extreme = (index: number, sign: 1 | -1): number => {
    const a = up?.[index] ?? { re: 0, im: 0 };
    const b = right?.[index] ?? { re: 0, im: 0 };
    const [aa, bb, ab] = [a.re ** 2 + a.im ** 2, b.re ** 2 + b.im ** 2, a.re * b.re + a.im * b.im];
    return (0.5 * Math.atan2(sign * 2 * ab, sign * (aa - bb)) * 180) / Math.PI;
  };
  return { couples: extreme(0, 1), nulls: extreme(1, -1) };
}
