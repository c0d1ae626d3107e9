/** Causes, measurements, what was seen and what can hurt, in words. */

import type { CauseMeasurement, CauseObservation, FaultCause } from 'slantpath/acceptance';
import { shown } from './language/text.js';

/** The causes in a sentence. */
export const CAUSES: Readonly<Record<FaultCause, string>> = {
  nothing: 'nothing is wrong',
  mispointed: 'the antenna is mispointed',
  'mast-leaning': 'the mast leans',
  'polarization-rotated': 'a feed is rotated',
  'wrong-slot': 'the antenna looks at another satellite',
  'side-lobe': 'the antenna is on a side lobe',
  obstructed: 'something stands in the view',
  'bad-connector': 'a connector is wet or badly made',
  'wrong-cable': 'a cable is too long or of another type',
  'part-failed': 'a part has failed or is missing',
  'supply-low': 'the supply of the unit is too low',
  'unit-out-of-tolerance': 'an outdoor unit is out of tolerance',
  overloaded: 'a part is overloaded',
  interference: 'another signal interferes',
  rain: 'rain',
  'sun-outage': 'the Sun stands behind the satellite',
};

const MEASURES: Readonly<Record<CauseMeasurement['kind'], string>> = {
  level: 'read the level',
  'carrier-to-noise': 'read the carrier-to-noise ratio',
  isolation: 'read the cross-polar isolation',
  reception: 'see what is received',
  'polarization-null': 'turn the feed to the null of the other polarization',
  search: 'swing the antenna and look for more level',
  'supply-voltage': 'measure the voltage at the unit under load',
  'mast-lean': 'hold a level to the mast',
  'repeat-later': 'read again in an hour',
  'rain-seen': 'see whether it rains along the path',
  spectrum: 'look for a carrier that is not in the plan',
  'sun-near': 'look up whether the Sun stands near the slot now',
  'obstacle-seen': 'look along the line of sight',
  'connector-check': 'open the connectors and look',
  'cable-check': 'read the print on the cable and step off its length',
};

/** A measurement in words. */
export function asked(measurement: CauseMeasurement): string {
  const places = Object.entries(measurement)
    .filter(([name]) => name !== 'kind')
    .map(([, value]) => value as string);
  return places.length > 0
    ? `${MEASURES[measurement.kind]} (${places.join(', ')})`
    : MEASURES[measurement.kind];
}

/** What was observed, in words. */
export function seen(observation: CauseObservation): string {
  const where =
    'carrier' in observation ? `${observation.carrier}, ${observation.testPoint}: ` : '';
  switch (observation.kind) {
    case 'level':
      return `${where}level ${shown(observation.levelDbuv, 1)} dBµV`;
    case 'carrier-to-noise':
      return `${where}C/N ${shown(observation.carrierToNoiseDb, 1)} dB`;
    case 'isolation':
      return `${where}isolation ${shown(observation.isolationDb, 1)} dB`;
    case 'reception':
      return `${where}${observation.received === 'wanted' ? 'received' : observation.received === 'other' ? 'another service' : 'nothing received'}`;
    case 'mast-lean':
      return `mast leans ${shown(observation.leanDeg, 1)}°`;
    case 'search':
      return `${shown(observation.riseDb, 1)} dB more found by swinging`;
    case 'polarization-null':
      return `null at a turn of ${shown(observation.turnDeg, 1)}°`;
    case 'supply-voltage':
      return `${shown(observation.voltageV, 1)} V at the unit`;
    case 'repeat-later':
      return `${shown(observation.changeDb, 1)} dB more an hour later`;
    default:
      return `${MEASURES[observation.kind]}: ${observation.seen ? 'yes' : 'no'}`;
  }
}

/** What can hurt while that is measured. */
export function cautionFor(kind: CauseMeasurement['kind'] | undefined): string | undefined {
  switch (kind) {
    case 'mast-lean':
    case 'search':
    case 'polarization-null':
    case 'isolation':
    case 'connector-check':
      return 'This one is up at the antenna. Ladder held, a line on, no power line within reach, not in a thunderstorm; a transmitting terminal switched off by whoever may do it.';
    case 'supply-voltage':
      return 'Low voltage at the unit, mains behind its supply: open nothing that is fed by the mains. Foreign voltage can stand on screens in blocks with several risers.';
    case 'sun-near':
    case 'obstacle-seen':
      return 'Never look along the antenna at the Sun: use the shadow of the feed on the reflector.';
    default:
      return undefined;
  }
}

/** A prediction in the unit of what was seen, or as a chance. */
export function predictedText({ kind }: CauseObservation, value: number): string {
  switch (kind) {
    case 'level':
      return `${shown(value, 1)} dBµV`;
    case 'mast-lean':
    case 'polarization-null':
      return `${shown(value, 1)}°`;
    case 'supply-voltage':
      return `${shown(value, 1)} V`;
    case 'carrier-to-noise':
    case 'isolation':
    case 'search':
    case 'repeat-later':
      return `${shown(value, 1)} dB`;
    default:
      return `${shown(100 * value, 0)} %`;
  }
}
