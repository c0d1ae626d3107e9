/**
 * Physics of the simulator, deliberately another and richer one than the forward models of the search:
 * a real aperture pattern with nulls and side lobes, finite rotations, circuits for bad connectors.
 */

/** Bessel function of the first kind, whole order, by its integral (trapezoid, spectrally exact). */
function bessel(order: number, x: number): number {
  const n = 64;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const angle = (Math.PI * (i + 0.5)) / n;
    sum += Math.cos(order * angle - x * Math.sin(angle));
  }
  return sum / n;
}

/** Loss in dB of a circular aperture with a parabolic taper on a pedestal, off its axis. */
export function apertureLossDb(offsetDeg: number, diameterM: number, frequencyGHz: number): number {
  const u =
    (Math.PI * diameterM * Math.sin((offsetDeg * Math.PI) / 180) * frequencyGHz) / 0.299792458;
  if (Math.abs(u) < 1e-6) return 0;
  // Edge taper of about -11 dB.
  const pedestal = 0.28;
  const uniform = (2 * bessel(1, u)) / u;
  const parabolic = (8 * bessel(2, u)) / (u * u);
  const share = pedestal / (pedestal + (1 - pedestal) / 2);
  const field = share * uniform + (1 - share) * parabolic;
  // Errors of feed and surface fill the nulls at -38 dB.
  return -10 * Math.log10(field * field + 10 ** -3.8);
}

type Vector = readonly [number, number, number];

const rad = Math.PI / 180;

/** Direction of azimuth and elevation: east, north, up. */
function direction(azimuthDeg: number, elevationDeg: number): Vector {
  const e = elevationDeg * rad;
  const a = azimuthDeg * rad;
  return [Math.cos(e) * Math.sin(a), Math.cos(e) * Math.cos(a), Math.sin(e)];
}

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Finite rotation about a unit axis (Rodrigues). */
function rotated(v: Vector, axis: Vector, angleDeg: number): Vector {
  const c = Math.cos(angleDeg * rad);
  const s = Math.sin(angleDeg * rad);
  const x = cross(axis, v);
  const k = dot(axis, v) * (1 - c);
  return [
    v[0] * c + x[0] * s + axis[0] * k,
    v[1] * c + x[1] * s + axis[1] * k,
    v[2] * c + x[2] * s + axis[2] * k,
  ];
}

/** Where the beam of a slot goes under a rotation: offset and roll of the feed, in degrees. */
export function beamAfter(
  azimuthDeg: number,
  elevationDeg: number,
  axis: Vector,
  angleDeg: number,
): { readonly offsetDeg: number; readonly rollDeg: number } {
  const before = direction(azimuthDeg, elevationDeg);
  const right: Vector = [Math.cos(azimuthDeg * rad), -Math.sin(azimuthDeg * rad), 0];
  const after = rotated(before, axis, angleDeg);
  const turnedRight = rotated(right, axis, angleDeg);
  const offset = Math.atan2(Math.hypot(...cross(before, after)), dot(before, after)) / rad;
  const upward = cross(right, before);
  const roll = -Math.atan2(dot(turnedRight, upward), dot(turnedRight, right)) / rad;
  return { offsetDeg: offset, rollDeg: roll };
}

/** Loss in dB of a series impedance between two 75 ohm lines. */
export function seriesLossDb(resistanceOhm: number, reactanceOhm: number): number {
  return 10 * Math.log10((1 + resistanceOhm / 150) ** 2 + (reactanceOhm / 150) ** 2);
}

/** Loss in dB of a shunt admittance across a 75 ohm line. */
export function shuntLossDb(conductanceS: number, susceptanceS: number): number {
  return 10 * Math.log10((1 + 37.5 * conductanceS) ** 2 + (37.5 * susceptanceS) ** 2);
}
