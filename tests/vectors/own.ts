/** The library behind the questions of the test vectors: a function for each name that they call. */

import { illuminatedAperture, powerDensity } from 'slantpath/antenna';
import { ecefToStation, stationToEcef } from 'slantpath/earth';
import { geodesicEnd } from 'slantpath/geodesic';
import { coordinatesToMgrs, coordinatesToPlusCode } from 'slantpath/gridref';
import { adjacentChannel, dvbMode } from 'slantpath/link';
import { magneticField } from 'slantpath/magnetic';
import { satelliteTrack, tleToElements } from 'slantpath/orbit';
import {
  apparentElevation,
  lookAngles,
  mastLeanError,
  polarizationSkew,
  polarMount,
  slotSeparation,
  sphericalLookAngles,
  visibleArc,
} from 'slantpath/pointing';
import * as propagation from 'slantpath/propagation';
import { solarTime, sunDirection } from 'slantpath/sun';
import { besselJ } from '../../src/numeric/bessel.js';
import { incompleteBeta } from '../../src/numeric/beta.js';
import { chiSquareExceedance } from '../../src/numeric/chiSquare.js';
import { normalExceedance } from '../../src/numeric/normal.js';
import { studentExceedance } from '../../src/numeric/student.js';

// What a table asks is flat and untyped; the functions themselves refuse what is wrong.
// biome-ignore lint/suspicious/noExplicitAny: the question of a foreign program
type Question = any;
type Answer = (question: Question) => object;

const stationOf = ({ latitudeDeg, longitudeDeg, heightM }: Question) => ({
  latitudeDeg,
  longitudeDeg,
  heightM,
});

/** Functions that take the question as it stands. */
const PLAIN: Readonly<Record<string, (question: Question) => object>> = {
  ecefToStation,
  sphericalLookAngles,
  mastLeanError,
  illuminatedAperture,
  specificRainAttenuation: propagation.specificRainAttenuation,
  rainAttenuation: propagation.rainAttenuation,
  scintillationFade: propagation.scintillationFade,
  crossPolarDiscrimination: propagation.crossPolarDiscrimination,
  specificGasAttenuation: propagation.specificGasAttenuation,
  approximateGasAttenuation: propagation.approximateGasAttenuation,
  gasSlantAttenuation: propagation.gasSlantAttenuation,
  cloudAttenuation: propagation.cloudAttenuation,
  cloudAttenuationLognormal: propagation.cloudAttenuationLognormal,
  fadeDuration: propagation.fadeDuration,
  rainAttenuationLognormal: propagation.rainAttenuationLognormal,
  diversityGain: propagation.diversityGain,
  frequencyScaledRain: propagation.frequencyScaledRain,
  stationToEcef,
};

/** The library's answer by the name that a table calls. */
export const OWN: Readonly<Record<string, Answer>> = {
  ...PLAIN,
  lookAngles: (q) => lookAngles(stationOf(q), q.orbitalLongitudeDeg),
  polarizationSkew: ({ tiltDeg, orbitalLongitudeDeg, ...q }) =>
    polarizationSkew({
      station: stationOf(q),
      orbitalLongitudeDeg,
      polarization: { kind: 'linear', tiltDeg },
    }),
  visibleArc: ({ minimumElevationDeg, ...q }) =>
    visibleArc({ station: stationOf(q), minimumElevationDeg }),
  polarMount: ({ latitudeDeg, fit, earthModel }) =>
    polarMount({
      station: { latitudeDeg, longitudeDeg: 30, heightM: 0 },
      minimumElevationDeg: 0,
      fit,
      earthModel,
    }),
  apparentElevation: (q) => apparentElevation(q.elevationDeg, q.heightM),
  slotSeparation: ({ fromLongitudeDeg, toLongitudeDeg, ...q }) =>
    slotSeparation({ station: stationOf(q), fromLongitudeDeg, toLongitudeDeg }),
  geodesicEnd: ({ azimuthDeg, distanceKm, ...q }) => geodesicEnd(q, { azimuthDeg, distanceKm }),
  coordinatesToPlusCode: (q) => ({ code: coordinatesToPlusCode(q) }),
  coordinatesToMgrs: (q) => ({ mgrs: coordinatesToMgrs(q) }),
  magneticField: (q) => magneticField(stationOf(q), q.decimalYear),
  satelliteTrack: (q) => {
    const track = satelliteTrack({
      elements: tleToElements(`${q.line1}\n${q.line2}`),
      station: stationOf(q),
      from: q.instant,
      lengthH: 0,
    });
    return (track.kind === 'track' && track.points[0]) || {};
  },
  sunDirection: (q) => sunDirection(stationOf(q), { instant: q.instant }),
  solarTime: ({ instant }) => solarTime({ latitudeDeg: 0, longitudeDeg: 0, heightM: 0 }, instant),
  powerDensity: ({ distanceM, ...q }) => powerDensity(q, distanceM),
  adjacentChannel: (q) =>
    adjacentChannel({
      wanted: { symbolRateMBd: q.wantedSymbolRateMBd, rollOffRatio: q.wantedRollOffRatio },
      other: { symbolRateMBd: q.otherSymbolRateMBd, rollOffRatio: q.otherRollOffRatio },
      spacingMHz: q.spacingMHz,
    }),
  dvbMode: ({ standard, mode }) => dvbMode(standard, mode),
  referenceAtmosphere: ({ heightKm, atmosphere }) =>
    atmosphere === 'mean'
      ? propagation.referenceAtmosphere(heightKm)
      : propagation.referenceAtmosphere(heightKm, atmosphere),
  besselJ: ({ order, x }) => ({ value: besselJ(order, x) }),
  normalExceedance: ({ z }) => ({ exceedance: normalExceedance(z) }),
  'exceedance of Student’s distribution': ({ t, degreesOfFreedom }) => ({
    exceedance: studentExceedance(t, degreesOfFreedom),
  }),
  'exceedance of the chi-square distribution': ({ x, degreesOfFreedom }) => ({
    exceedance: chiSquareExceedance(x, degreesOfFreedom),
  }),
  'regularised incomplete beta function': ({ x, a, b }) => ({ value: incompleteBeta(x, a, b) }),
};
