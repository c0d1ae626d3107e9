// Every entry imported by name as users do, and a line of digits from most of them. Run by each engine and through each bundler.
import * as root from 'slantpath';
import * as acceptance from 'slantpath/acceptance';
import * as antenna from 'slantpath/antenna';
import * as climate from 'slantpath/climate';
import * as distribution from 'slantpath/distribution';
import * as earth from 'slantpath/earth';
import * as experience from 'slantpath/experience';
import { geodesicBetween } from 'slantpath/geodesic';
import { coordinatesToMgrs, coordinatesToPlusCode } from 'slantpath/gridref';
import * as ingress from 'slantpath/ingress';
import * as job from 'slantpath/job';
import * as link from 'slantpath/link';
import { magneticField } from 'slantpath/magnetic';
import { satelliteLookAngles, tleToElements } from 'slantpath/orbit';
import * as peaking from 'slantpath/peaking';
import { lookAngles, polarizationSkew } from 'slantpath/pointing';
import { gasSlantAttenuation } from 'slantpath/propagation';
import * as readings from 'slantpath/readings';
import * as sheet from 'slantpath/sheet';
import { sunDirection } from 'slantpath/sun';
import * as survey from 'slantpath/survey';
import * as teaching from 'slantpath/teaching';
import * as transmit from 'slantpath/transmit';
import * as tuning from 'slantpath/tuning';
import * as vectors from 'slantpath/vectors';
import * as wind from 'slantpath/wind';

const all = [
  root,
  acceptance,
  antenna,
  climate,
  distribution,
  earth,
  experience,
  ingress,
  job,
  link,
  peaking,
  readings,
  sheet,
  survey,
  teaching,
  transmit,
  tuning,
  vectors,
  wind,
];
for (const entry of all) if (Object.keys(entry).length === 0) throw new Error('an entry is empty');

const hut = { latitudeDeg: 46.4, longitudeDeg: 9.6, heightM: 1900 };
const record = job.recordJob(
  job.parseJob(
    JSON.stringify({
      format: 'slantpath-job',
      version: 2,
      title: 'Tarnfell',
      station: { ...hut, name: 'hut' },
      slots: [{ name: 'a', orbitalLongitudeDeg: 16.4 }],
    }),
  ),
);
const tle =
  '1 99901U 26001A   26300.50000000  .00000000  00000-0  00000-0 0  9993\n2 99901   3.0000  80.0000 0002000  90.0000  62.2622  1.00271000  1004';
const digits = [
  lookAngles(hut, 16.4),
  polarizationSkew({ station: hut, orbitalLongitudeDeg: 16.4 }),
  magneticField(hut, 2026.5),
  geodesicBetween(hut, { latitudeDeg: -0.4, longitudeDeg: 102 }),
  coordinatesToMgrs({ ...hut, digits: 5 }),
  coordinatesToPlusCode({ latitudeDeg: 46.4, longitudeDeg: 9.6 }),
  sunDirection(hut, { instant: '2026-10-27T12:00:00Z' }),
  satelliteLookAngles({
    elements: tleToElements(tle),
    station: hut,
    instant: '2026-10-27T13:00:00Z',
  }),
  climate.attenuationAt(climate.climateAt(hut), {
    frequencyGHz: 12,
    elevationDeg: 36,
    tiltDeg: 0,
    diameterM: 0.9,
    exceededPercent: 0.1,
  }),
  gasSlantAttenuation({ frequencyGHz: 22, elevationDeg: 12, heightM: 0 }),
  teaching.tryFormula({ subject: 'azimuth', formula: '180 + atan(tan(dlon)/sin(lat))' }),
  record.plan ?? record,
];
console.log(
  `DIGITS ${JSON.stringify(digits, (key, value) => (key === 'at' || key === 'version' ? undefined : value))}`,
);
