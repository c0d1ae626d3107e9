import fc from 'fast-check';
import { attenuationAtBatch, climateAt, climateAtBatch } from 'slantpath/climate';
import { availabilityBatch, dvbMode } from 'slantpath/link';
import { lookAnglesBatch } from 'slantpath/pointing';
import { expect, test } from 'vitest';
import { runs } from '../support/runs.js';

test('each row equals climateAt bit for bit', () => {
  const station = fc.record({
    latitudeDeg: fc.double({ min: 40, max: 52, noNaN: true }),
    longitudeDeg: fc.double({ min: 0, max: 20, noNaN: true }),
    heightM: fc.double({ min: 0, max: 3000, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(station, { minLength: 1, maxLength: 10 }), (stations) => {
      const columns = climateAtBatch({
        latitudeDeg: stations.map(({ latitudeDeg }) => latitudeDeg),
        longitudeDeg: stations.map(({ longitudeDeg }) => longitudeDeg),
        heightM: stations.map(({ heightM }) => heightM),
      });
      for (const [row, one] of stations.entries()) {
        const climate = climateAt(one);
        for (const [name, column] of Object.entries(columns))
          expect(column[row]).toBe(climate[name as keyof typeof columns]);
      }
    }),
    { numRuns: runs(50) },
  );
});

test('a bad row is named, and another climate can be taken', () => {
  const place = { latitudeDeg: [46, 95], longitudeDeg: 9, heightM: 0 };
  expect(() => climateAtBatch(place)).toThrow(
    expect.objectContaining({ parameter: 'latitudeDeg', index: 1 }),
  );
  const climateOf = (station: Parameters<typeof climateAt>[0]) => ({
    ...climateAt(station),
    rainRate001MmPerH: 1,
  });
  const out = { rainRate001MmPerH: new Float64Array(1) };
  const given = climateAtBatch({ latitudeDeg: 46, longitudeDeg: 9, heightM: 0, climateOf }, out);
  expect(given.rainRate001MmPerH).toBe(out.rainRate001MmPerH);
  expect(out.rainRate001MmPerH[0]).toBe(1);
});

test('from places to availability, the climate is asked once', () => {
  let asked = 0;
  const climateOf = (station: Parameters<typeof climateAt>[0]) => {
    asked++;
    return climateAt(station);
  };
  const place = { latitudeDeg: [46.4, 45.2], longitudeDeg: [9.6, 10.1], heightM: [1900, 300] };
  const sky = lookAnglesBatch({ ...place, orbitalLongitudeDeg: 16.4 });
  const path = { elevationDeg: sky.elevationDeg, tiltDeg: 0 };
  const loss = attenuationAtBatch({
    ...place,
    ...path,
    frequencyGHz: 12,
    diameterM: 0.6,
    exceededPercent: 0.1,
    climateOf,
  });
  const link = {
    carrier: { symbolRateMBd: 30, mode: dvbMode('DVB-S2', '8PSK 2/3') },
    downlink: { eirpDbw: 52, frequencyGHz: 12, slantRangeKm: 38000, clearAttenuationDb: 0.2 },
    receiver: { diameterM: 0.6, noiseFigureDb: 0.8 },
  };
  const { latitudeDeg, heightM } = place;
  const { rainHeightKm, rainRate001MmPerH } = loss;
  const stations = { latitudeDeg, heightM, ...path, rainHeightKm, rainRate001MmPerH };
  const { exceededPercent } = availabilityBatch({ link, stations });
  expect(asked).toBe(2);
  const climate = climateAtBatch(place);
  expect(rainHeightKm).toEqual(climate.rainHeightKm);
  const { rainHeightKm: height, rainRate001MmPerH: rate } = climate;
  expect(
    availabilityBatch({
      link,
      stations: { ...stations, rainHeightKm: height, rainRate001MmPerH: rate },
    }).exceededPercent,
  ).toEqual(exceededPercent);
});
