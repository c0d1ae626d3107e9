import fc from 'fast-check';
import { DomainError } from 'slantpath';
import {
  adaptiveModes,
  availabilityBatch,
  availabilityForMargin,
  availabilityToExceeded,
  combinedAvailability,
  dvbModes,
  exceededToAvailability,
  fadedBudget,
  linkBudget,
  linkBudgetWithAvailability,
  marginForAvailability,
  outages,
  rainFade,
  smallestReflector,
  totalFade,
} from 'slantpath/link';
import { rainAttenuation, totalAttenuation } from 'slantpath/propagation';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.js';
import { anyLink, exponential, LINK, PATH, TRANSPARENT } from './links.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any path through rain on which the curve falls everywhere; see the test of the other ones. */
const anyPath = fc.record({
  latitudeDeg: within(-65, 65),
  heightM: within(0, 2000),
  rainHeightKm: within(2.5, 5.2),
  rainRate001MmPerH: within(1, 120),
  frequencyGHz: within(1, 40),
  elevationDeg: within(25, 88),
  tiltDeg: within(0, 90),
});

describe('margin and availability', () => {
  test('are inverse of each other within 1e-6 percent of time', () => {
    let largest = 0;
    fc.assert(
      fc.property(anyLink, anyPath, within(Math.log(0.001), Math.log(5)), (link, path, log) => {
        const exceededPercent = Math.exp(log);
        const fade = rainFade(path);
        const { marginDb } = marginForAvailability({ link, fade, exceededPercent });
        const back = availabilityForMargin({ link, fade, marginDb, toPercent: 100 });
        const error = Math.abs(back.availabilityPercent - (100 - exceededPercent));
        largest = Math.max(largest, error);
        expect(error).toBeLessThan(1e-6);
      }),
      { numRuns: runs(2000) },
    );
    console.log(
      `availability of margin of availability: largest error ${largest.toExponential(1)} %`,
    );
  });

  test('the same with all causes, whose curve steps down at 5 %', () => {
    fc.assert(
      fc.property(anyLink, anyPath, within(Math.log(0.001), Math.log(4.99)), (link, path, log) => {
        const exceededPercent = Math.exp(log);
        const fade = totalFade({
          ...path,
          diameterM: link.receiver.diameterM,
          wetRefractivityNUnits: 50,
          gasDb: 0.3,
          cloudDb: 0.4,
        });
        const { marginDb } = marginForAvailability({ link, fade, exceededPercent });
        const back = availabilityForMargin({ link, fade, marginDb });
        expect(Math.abs(back.exceededPercent - exceededPercent)).toBeLessThan(1e-6);
      }),
      { numRuns: runs(300) },
    );
  });

  test('at the availability found the faded budget has no margin left', () => {
    const link = { ...LINK, receiver: { ...LINK.receiver, diameterM: 0.45 } };
    const fade = rainFade({
      ...PATH,
      rainRate001MmPerH: 80,
      heightM: 200,
      rainHeightKm: 4,
    });
    const found = availabilityForMargin({ link, fade });
    expect(found.kind).toBe('available');
    const { exceededPercent } = found;
    expect(fadedBudget(link, { fade, exceededPercent }).marginDb).toBeCloseTo(0, 8);
    const left = marginForAvailability({ link, fade, exceededPercent });
    expect(left.remainingDb).toBeCloseTo(0, 8);
    expect(left.marginDb).toBeCloseTo(linkBudget(link).marginDb, 8);
    expect(left.attenuationDb + left.noiseRiseDb).toBeCloseTo(left.marginDb, 10);
  });

  test('rises with reflector and EIRP, falls with rain', () => {
    fc.assert(
      fc.property(anyLink, anyPath, (given, path) => {
        const link = { ...given, impairments: [] };
        const out = (change: typeof link, rain = path.rainRate001MmPerH) =>
          availabilityForMargin({
            link: change,
            fade: rainFade({ ...path, rainRate001MmPerH: rain }),
          }).availabilityPercent;
        const here = out(link);
        const { receiver, downlink } = link;
        expect(
          out({ ...link, receiver: { ...receiver, diameterM: receiver.diameterM * 1.2 } }),
        ).toBeGreaterThanOrEqual(here);
        expect(
          out({ ...link, downlink: { ...downlink, eirpDbw: downlink.eirpDbw + 1 } }),
        ).toBeGreaterThanOrEqual(here);
        expect(out(link, path.rainRate001MmPerH * 1.2)).toBeLessThanOrEqual(here + 1e-9);
      }),
      { numRuns: 200 },
    );
  });

  test('says when the answer lies beyond the range', () => {
    const fade = (percent: number) => ({ attenuationDb: 1 / percent ** 0.3 });
    const strong = availabilityForMargin({ link: LINK, fade, marginDb: 50 });
    expect(strong).toEqual({
      kind: 'better-than',
      exceededPercent: 0.001,
      availabilityPercent: 99.999,
    });
    const weak = availabilityForMargin({ link: LINK, fade, marginDb: -1 });
    expect(weak).toMatchObject({ kind: 'worse-than', exceededPercent: 50 });
  });

  test('a distribution with gas replaces the clear attenuation, one without comes on top', () => {
    const withGas = fadedBudget(LINK, {
      fade: () => ({ attenuationDb: 2, gasDb: 0.5, rainDb: 1.2, cloudDb: 0.1 }),
      exceededPercent: 1,
    });
    const line = (budget: typeof withGas, name: string) =>
      budget.terms.find((term) => term.name === name)?.contributionDb;
    expect(line(withGas, 'clear-attenuation')).toBe(-0.5);
    expect(line(withGas, 'rain-attenuation')).toBeCloseTo(-1.3, 12);
    expect(line(withGas, 'scintillation')).toBeCloseTo(-0.2, 12);
    const onTop = fadedBudget(LINK, { fade: () => ({ attenuationDb: 2 }), exceededPercent: 1 });
    expect(line(onTop, 'clear-attenuation')).toBe(-0.2);
    expect(line(onTop, 'rain-attenuation')).toBe(-2);
  });

  test('the fades are those of the recommendation', () => {
    const total = {
      ...PATH,
      diameterM: 0.9,
      wetRefractivityNUnits: 45,
      gasDb: 0.1,
      cloudDb: 0.2,
    };
    for (const exceededPercent of [0.001, 0.01, 0.3, 5, 20]) {
      expect(rainFade(PATH)(exceededPercent).attenuationDb).toBe(
        rainAttenuation({ ...PATH, exceededPercent }).attenuationDb,
      );
      expect(totalFade(total)(exceededPercent)).toEqual(
        totalAttenuation({ ...total, exceededPercent }),
      );
    }
  });

  test('a curve that turns down again towards rare percentages is held at its top', () => {
    fc.assert(
      fc.property(anyPath, within(3, 25), within(-20, 20), (path, elevationDeg, latitudeDeg) => {
        const fade = rainFade({ ...path, elevationDeg, latitudeDeg });
        let before = Number.POSITIVE_INFINITY;
        for (let log = Math.log(0.001); log <= Math.log(50); log += 0.1) {
          const { attenuationDb } = fade(Math.exp(log));
          expect(attenuationDb).toBeLessThanOrEqual(before * (1 + 1e-9));
          before = attenuationDb;
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('adaptive modes', () => {
  const fade = exponential(1.5);
  const year = adaptiveModes({
    link: LINK,
    fade,
    modes: dvbModes('DVB-S2'),
    toPercent: 100,
    fromPercent: 1e-4,
  });

  test('shares and outage make the year', () => {
    const sum = year.modes.reduce((total, { sharePercent }) => total + sharePercent, 0);
    expect(sum + year.outagePercent).toBeCloseTo(100, 9);
    expect(year.modes.every(({ sharePercent }) => sharePercent >= 0)).toBe(true);
  });

  test('each mode is out for as long as the exponential law says', () => {
    const clear = linkBudget(LINK).esN0Db;
    for (const { mode, availablePercent } of year.modes) {
      const margin = clear - mode.esN0Db;
      const out = margin < 0 ? 100 : 100 * Math.exp(-margin / 1.5);
      expect(100 - availablePercent).toBeCloseTo(out < 1e-4 ? 0 : out, 6);
    }
  });

  test('no mode kept is both slower and more demanding than another', () => {
    for (let index = 1; index < year.modes.length; index++) {
      const before = year.modes[index - 1]?.mode;
      const here = year.modes[index]?.mode;
      expect(
        here && before && here.bitsPerSymbol > before.bitsPerSymbol && here.esN0Db > before.esN0Db,
      ).toBe(true);
    }
  });

  test('the mean lies between nothing and the clear-sky rate, and a switching margin lowers it', () => {
    expect(year.meanBitRateMbps).toBeGreaterThan(0);
    expect(year.meanBitRateMbps).toBeLessThanOrEqual(year.clearBitRateMbps);
    const careful = adaptiveModes({
      link: LINK,
      fade,
      modes: dvbModes('DVB-S2'),
      switchingMarginDb: 1,
    });
    expect(careful.meanBitRateMbps).toBeLessThan(year.meanBitRateMbps);
  });
});

describe('outages', () => {
  test('hours, worst month by P.841-6, and fades by P.1623-1', () => {
    const out = outages({
      exceededPercent: 0.01,
      frequencyGHz: 20,
      elevationDeg: 36,
      attenuationDb: 8,
    });
    expect(out.outageHPerYear).toBeCloseTo(0.8766, 10);
    // 2.85 * 0.01^0.87.
    expect(out.worstMonthPercent).toBeCloseTo(2.85 * 0.01 ** 0.87, 10);
    expect(out.countedHPerYear).toBeLessThanOrEqual(out.outageHPerYear);
    expect(out.outagesPerYear * out.meanDurationMin).toBeCloseTo(out.countedHPerYear * 60, 9);
    expect(out.outsideStatedRange).toEqual([]);
  });
});

describe('all in one call', () => {
  const { frequencyGHz: _link, ...path } = PATH;
  const result = linkBudgetWithAvailability({
    link: {
      ...LINK,
      downlink: { eirpDbw: 50, frequencyGHz: 11.7, slantRangeKm: 38000 },
      receiver: { diameterM: 0.45, noiseFigureDb: 1 },
    },
    path: {
      ...path,
      rainRate001MmPerH: 60,
      rainHeightKm: 4.5,
      wetRefractivityNUnits: 45,
      gasDb: 0.1,
      cloudDb: 0.15,
    },
    exceededPercent: 0.01,
  });

  test('the gas of the path is the clear attenuation', () => {
    expect(result.clear.terms[2]?.contributionDb).toBe(-0.1);
  });

  test('its parts belong together', () => {
    expect(result.clear.marginDb - result.faded.marginDb).toBeCloseTo(
      result.fadeMargin.marginDb,
      9,
    );
    expect(result.availability.kind).toBe('available');
    expect(result.outages?.outageHPerYear).toBeCloseTo(
      result.availability.exceededPercent * 87.66,
      9,
    );
    expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  });
});

describe('batch', () => {
  const rows = 60;
  const column = (f: (row: number) => number) => Array.from({ length: rows }, (_, row) => f(row));
  const stations = {
    latitudeDeg: column((row) => -58 + 2 * row),
    heightM: column((row) => (row % 7) * 300),
    rainHeightKm: column((row) => 2 + (row % 11) * 0.3),
    rainRate001MmPerH: column((row) => 5 + 2 * row),
    elevationDeg: column((row) => 4 + 1.4 * row),
    tiltDeg: 20,
    eirpDbw: column((row) => 44 + (row % 9)),
    slantRangeKm: column((row) => 41000 - 60 * row),
    diameterM: column((row) => 0.4 + 0.05 * (row % 5)),
  };
  const at = (value: number | number[], row: number) =>
    typeof value === 'number' ? value : (value[row] as number);

  test('equals the scalar calls bit for bit and reuses its buffers', () => {
    const out = {
      marginDb: new Float64Array(rows),
      exceededPercent: new Float64Array(rows),
      outcome: new Uint8Array(rows),
    };
    const batch = availabilityBatch({ link: LINK, stations }, out);
    expect(batch.marginDb).toBe(out.marginDb);
    const seen = new Set<number>();
    for (let row = 0; row < rows; row++) {
      const link = {
        ...LINK,
        downlink: {
          ...LINK.downlink,
          eirpDbw: at(stations.eirpDbw, row),
          slantRangeKm: at(stations.slantRangeKm, row),
        },
        receiver: { ...LINK.receiver, diameterM: at(stations.diameterM, row) },
      };
      const fade = rainFade({
        latitudeDeg: at(stations.latitudeDeg, row),
        heightM: at(stations.heightM, row),
        rainHeightKm: at(stations.rainHeightKm, row),
        rainRate001MmPerH: at(stations.rainRate001MmPerH, row),
        elevationDeg: at(stations.elevationDeg, row),
        tiltDeg: 20,
        frequencyGHz: LINK.downlink.frequencyGHz,
      });
      const scalar = availabilityForMargin({ link, fade });
      expect(batch.exceededPercent[row]).toBe(scalar.exceededPercent);
      expect(['available', 'better-than', 'worse-than'][batch.outcome[row] ?? -1]).toBe(
        scalar.kind,
      );
      expect(batch.marginDb[row]).toBe(linkBudget(link).marginDb);
      seen.add(batch.outcome[row] ?? -1);
    }
    expect(seen.size).toBeGreaterThan(1);
  });

  test.each([
    [{ ...stations, latitudeDeg: column((row) => (row === 7 ? 91 : 0)) }, 'latitudeDeg', 7],
    [{ ...stations, diameterM: column((row) => (row === 3 ? -1 : 1)) }, 'diameterM', 3],
    [{ ...stations, eirpDbw: column((row) => (row === 59 ? Number.NaN : 50)) }, 'eirpDbw', 59],
    [{ ...stations, eirpDbw: [50] }, 'eirpDbw', undefined],
  ])('names the row of a bad value %#', (bad, parameter, index) => {
    const call = () => availabilityBatch({ link: LINK, stations: bad });
    expect(call).toThrow(DomainError);
    expect(call).toThrow(
      expect.objectContaining({ parameter, ...(index === undefined ? {} : { index }) }),
    );
  });
});

const flat = () => ({ attenuationDb: 1 });
test.each([
  [() => fadedBudget(LINK, { fade: flat, exceededPercent: 0 }), 'exceededPercent'],
  [() => fadedBudget(LINK, { fade: 3 as never, exceededPercent: 1 }), 'fade'],
  [
    () => fadedBudget(LINK, { fade: () => ({ attenuationDb: Number.NaN }), exceededPercent: 1 }),
    'fade.attenuationDb',
  ],
  [() => fadedBudget(LINK, { fade: () => undefined as never, exceededPercent: 1 }), 'fade'],
  [() => availabilityForMargin({ link: LINK, fade: flat, marginDb: Number.NaN }), 'marginDb'],
  [
    () => availabilityForMargin({ link: LINK, fade: flat, fromPercent: 5, toPercent: 1 }),
    'toPercent',
  ],
  [() => availabilityForMargin({ link: LINK } as never), 'fade'],
  [() => adaptiveModes({ link: LINK, fade: flat, modes: [] }), 'modes'],
  [
    () => adaptiveModes({ link: LINK, fade: flat, modes: [{ esN0Db: 99, bitsPerSymbol: 1 }] }),
    'modes[0].esN0Db',
  ],
  [
    () =>
      combinedAvailability({
        link: TRANSPARENT,
        uplinkFade: flat,
        downlinkFade: flat,
        relation: 'else' as never,
      }),
    'relation',
  ],
  [
    () =>
      outages({ exceededPercent: 0.1, frequencyGHz: 20000, elevationDeg: 30, attenuationDb: 5 }),
    'frequencyGHz',
  ],
  [() => availabilityToExceeded(101), 'availabilityPercent'],
  [() => exceededToAvailability(-1), 'exceededPercent'],
  [() => smallestReflector(LINK, { fade: flat, exceededPercent: 200 }), 'exceededPercent'],
])('refuses bad input %#', (call, parameter) => {
  expect(call).toThrow(DomainError);
  expect(call).toThrow(expect.objectContaining({ parameter }));
});
