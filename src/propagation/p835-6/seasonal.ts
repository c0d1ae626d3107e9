/** Recommendation ITU-R P.835-6, Annex 1, sections 2 to 4: reference atmospheres by latitude and season. */

import type { ReferenceAtmosphere } from './atmospheres.js';

/** Height profiles of an atmosphere, each of the geometric height in kilometres. */
export interface Profile {
  /** Temperature in kelvin. */
  readonly temperatureK: (heightKm: number) => number;
  /** Total pressure in hPa. */
  readonly pressureHpa: (heightKm: number) => number;
  /** Water vapour density in g/m3. */
  readonly densityGPerM3: (heightKm: number) => number;
}

/** Pressure: a parabola up to 10 km, then two exponentials that meet at 72 km. */
function pressure(a: number, b: number, c: number, mid: number, high: number) {
  const at10 = a + 10 * b + 100 * c;
  const at72 = at10 * Math.exp(-mid * 62);
  return (h: number): number =>
    h <= 10
      ? a + h * (b + h * c)
      : h <= 72
        ? at10 * Math.exp(-mid * (h - 10))
        : at72 * Math.exp(-high * (h - 72));
}

/** Water vapour: the exponential of a polynomial without constant term, nothing above the top. */
function density(surface: number, topKm: number, b: number, c: number, d: number, e = 0) {
  return (h: number): number =>
    h <= topKm ? surface * Math.exp(h * (b + h * (c + h * (d + h * e)))) : 0;
}

/** Profiles by name. */
export const SEASONAL_PROFILES: Readonly<
  Record<Exclude<ReferenceAtmosphere, 'mean-annual-global'>, Profile>
> = /* @__PURE__ */ {
  'low-latitude': {
    temperatureK: (h) => {
      if (h < 17) return 300.4222 - 6.3533 * h + 0.005886 * h * h;
      if (h < 47) return 194 + (h - 17) * 2.533;
      if (h < 52) return 270;
      return h < 80 ? 270 - (h - 52) * 3.0714 : 184;
    },
    pressureHpa: /* @__PURE__ */ pressure(1012.0306, -109.0338, 3.6316, 0.147, 0.165),
    densityGPerM3: /* @__PURE__ */ density(19.6542, 15, -0.2313, -0.1122, 0.01351, -0.0005923),
  },
  'mid-latitude-summer': {
    temperatureK: (h) => {
      if (h < 13) return 294.9838 - 5.2159 * h - 0.07109 * h * h;
      if (h < 17) return 215.15;
      if (h < 47) return 215.15 * Math.exp((h - 17) * 0.008128);
      if (h < 53) return 275;
      return h < 80 ? 275 + (1 - Math.exp((h - 53) * 0.06)) * 20 : 175;
    },
    pressureHpa: /* @__PURE__ */ pressure(1012.8186, -111.5569, 3.8646, 0.147, 0.165),
    densityGPerM3: /* @__PURE__ */ density(14.3542, 15, -0.4174, -0.0229, 0.001007),
  },
  'mid-latitude-winter': {
    temperatureK: (h) => {
      if (h < 10) return 272.7241 - 3.6217 * h - 0.1759 * h * h;
      if (h < 33) return 218;
      if (h < 47) return 218 + (h - 33) * 3.3571;
      if (h < 53) return 265;
      return h < 80 ? 265 - (h - 53) * 2.037 : 210;
    },
    pressureHpa: /* @__PURE__ */ pressure(1018.8627, -124.2954, 4.8307, 0.147, 0.155),
    densityGPerM3: /* @__PURE__ */ density(3.4742, 10, -0.2697, -0.03604, 0.0004489),
  },
  'high-latitude-summer': {
    temperatureK: (h) => {
      if (h < 10) return 286.8374 - 4.7805 * h - 0.1402 * h * h;
      if (h < 23) return 225;
      if (h < 48) return 225 * Math.exp((h - 23) * 0.008317);
      if (h < 53) return 277;
      return h < 79 ? 277 - (h - 53) * 4.0769 : 171;
    },
    pressureHpa: /* @__PURE__ */ pressure(1008.0278, -113.2494, 3.9408, 0.14, 0.165),
    densityGPerM3: /* @__PURE__ */ density(8.988, 15, -0.3614, -0.005402, -0.001955),
  },
  'high-latitude-winter': {
    temperatureK: (h) => {
      if (h < 8.5) return 257.4345 + 2.3474 * h - 1.5479 * h * h + 0.08473 * h * h * h;
      if (h < 30) return 217.5;
      if (h < 50) return 217.5 + (h - 30) * 2.125;
      return h < 54 ? 260 : 260 - (h - 54) * 1.667;
    },
    pressureHpa: /* @__PURE__ */ pressure(1010.8828, -122.2411, 4.554, 0.147, 0.15),
    densityGPerM3: /* @__PURE__ */ density(1.2319, 10, 0.07481, -0.0981, 0.00281),
  },
};
