/** By which names installers call the quantities of a subject, and what follows from its variables. */

import { GEOSTATIONARY_RADIUS_KM, SPEED_OF_LIGHT_M_PER_S } from '../../constants.js';
import type { FormulaVariable } from './subject.js';

/** What a name in a formula may stand for. */
export interface Role {
  /** Word for it in messages. */
  readonly name: string;
  /** Expression in the symbols of the subject's variables. */
  readonly expression: string;
  /** Names, without spaces and underscores; single letters as they are, longer ones in small letters. */
  readonly said: string;
  /** Role that another name of the formula must have. */
  readonly needs?: string;
  /** Whether a person is told, because the name could mean something else. */
  readonly told?: true;
}

/** Names of variables by the variable's full name. */
const SAID: Readonly<Record<string, string>> = {
  latitudeDeg:
    'lat latitude φ phi sitelat stationlat latdeg sitelatitude stationlatitude latstation latsite earthstationlatitude φe φes φs φsite breite breitengrad geographischebreite mylat lata userlat la L θ B',
  longitudeDifferenceDeg:
    'dlon dlong dl δ Δ δλ Δλ delta deltalon deltalong deltalongitude deltalambda deltal δlon δlong δl δλs difflon londiff longdiff longitudedifference longitudediff differenceinlongitude differenceoflongitude relativelongitude längendifferenz laengendifferenz diff G λ lambda lon long longitude L θ D B H l dλ dlambda Bs',
  elevationDeg: 'el elev elevation elevationangle elevationdeg E e ε θ h α a',
  diameterM: 'd D dia diam diameter dish dishsize dishdiameter durchmesser ø Ø Da',
  frequencyGHz: 'f F freq frequency frequenz fr frq ν nu f0 fc fghz',
  offsetDeg:
    'off offset θ theta e err error pointingerror offaxis α alpha dθ δθ Δθ deltatheta φ phi δ Δ a abweichung',
  surfaceErrorMm: 'eps ε epsilon σ sigma rms surface surfaceerror s e',
  slantRangeKm: 'r R d D dist distance range slantrange entfernung s S ρ path pathlength l L',
  noiseFigureDb: 'nf NF F f noisefigure rauschzahl rauschmaß figure n',
  rainRate001MmPerH: 'rain R r rainrate r001 regenrate rainintensity rr',
  transmitPowerW:
    'p P pt ptx ptr ptransmit power tx txpower transmitpower leistung po pout pbuc buc hpa pa',
  transmitLossDb: 'loss l L lf ltx lt la lfeed feedloss lossdb losses verlust cableloss',
  gainDbi: 'g G gt gtx gr grx ga gain antennagain gewinn gaindbi',
  systemNoiseTemperatureK:
    't T ts tsys tsystem systemtemperature noisetemperature temperature temp te tk',
  eirpDbw: 'eirp e E eirpdbw',
  pathLossDb: 'loss l L fsl fspl lfs lp pathloss losses freespaceloss lossdb a A ltotal lu ld',
  figureOfMeritDbPerK: 'gt g/t G/T m figureofmerit merit GT',
  noiseBandwidthMHz: 'b B bw bandwidth noisebandwidth bandbreite rs sr symbolrate symbolrate bn',
  firstDistanceKm: 'd1 da s1 r1 distance1',
  secondDistanceKm: 'd2 db s2 r2 distance2',
  powerW: 'p P power w W watts watt leistung pw',
  powerRatio: 'x ratio p P r R verhältnis pr',
  voltageRatio: 'x ratio u U v V r R verhältnis vr',
  levelDbm: 'p P level dbm pegel pdbm l L x levl',
  depthM: 'c depth dishdepth tiefe h t dp H',
  noiseTemperatureK: 't T te temp temperature noisetemperature tk Te',
};

const SKY: readonly Role[] = [
  {
    name: 'satellite longitude',
    expression: '(dlon + 10)',
    said: 'sat satlon satlong satlongitude satellite satellitelongitude lonsat longsat λs λsat lambdas lambdasat slot orbitalposition orbitalslot orbit orbitalpos satpos satposition slon slong ls lsat satellit satellitenlänge λ0 S',
  },
  {
    name: 'station longitude',
    expression: '10',
    said: 'site station sitelon sitelong sitelongitude stationlon stationlongitude stationlong λe λes λg λsite λst λp lambdae lon long longitude mylon mylong userlon userlong lonsite lonstation longsite elon elong earthstationlongitude λ lambda länge N L le l',
    needs: 'satellite longitude',
  },
  {
    name: 'angle at the centre of the Earth',
    expression: 'acos(cos(lat) * cos(dlon))',
    said: 'γ gamma ψ psi β beta centralangle c C',
    told: true,
  },
  {
    name: 'radius of the Earth, 6378.137 km',
    expression: '6378.137',
    said: 're Re rearth rerde earthradius R Rt',
    told: true,
  },
  {
    name: 'radius of the orbit, 42164.169 km',
    expression: String(GEOSTATIONARY_RADIUS_KM),
    said: 'rs rgeo rsat rorbit orbitradius ro a r Rs Ro',
    told: true,
  },
  {
    name: 'height of the orbit, 35786 km',
    expression: String(GEOSTATIONARY_RADIUS_KM - 6378.137),
    said: 'h H height altitude hgeo hs',
    told: true,
  },
  {
    name: 'radius of the Earth over that of the orbit, 0.15127',
    expression: String(6378.137 / GEOSTATIONARY_RADIUS_KM),
    said: 'k K q',
    told: true,
  },
];

/** Spherical directions, for formulas that take one direction to give another. */
const SKY_ELEVATION: Role = {
  name: 'elevation of the satellite',
  expression: 'atan2(cos(lat) * cos(dlon) - 0.1512694, sqrt(1 - (cos(lat) * cos(dlon))^2))',
  said: 'el elev elevation elevationangle E ε',
  told: true,
};
const SKY_AZIMUTH: Role = {
  name: 'azimuth of the satellite',
  expression: 'mod(atan2(tan(dlon), 0 - sin(lat)), 360)',
  said: 'az azimuth A azi',
  told: true,
};

const LIGHT_M_GHZ = String(SPEED_OF_LIGHT_M_PER_S / 1e9);

const WAVES: readonly Role[] = [
  {
    name: 'wavelength in metres',
    expression: `(${LIGHT_M_GHZ} / f)`,
    said: 'λ lambda wavelength wellenlänge wl w W',
    told: true,
  },
  {
    name: 'speed of light, in metres times GHz so that c/f is in metres',
    expression: LIGHT_M_GHZ,
    said: 'c C c0 lightspeed speedoflight',
    told: true,
  },
];

const EFFICIENCY: Role = {
  name: 'aperture efficiency, 0.65',
  expression: '0.65',
  said: 'η eta eff efficiency e k wirkungsgrad ηa',
  told: true,
};
const BEAMWIDTH: Role = {
  name: 'half-power beamwidth in degrees, 70 wavelengths over the diameter',
  expression: `(70 * ${LIGHT_M_GHZ} / (f * d))`,
  said: 'bw hpbw beamwidth θ3 θ3db theta3db θb θ3d halfpowerbeamwidth b B θhp',
  told: true,
};
const BOLTZMANN: Role = {
  name: "Boltzmann's constant, -228.6 dBW/K/Hz",
  expression: '(-228.5992)',
  said: 'k K boltzmann kb kdb',
  told: true,
};
const REFERENCE: Role = {
  name: 'reference temperature, 290 K',
  expression: '290',
  said: 't0 to tref tamb T0 To',
  told: true,
};
const IN_DBW: Role = {
  name: 'transmit power in dBW',
  expression: '(10 * log(p))',
  said: 'p P pt ptx ptr power tx txpower transmitpower leistung po pout pbuc buc hpa pa',
  told: true,
};

/** Waves where the distance is in kilometres, so that a quotient of both has no unit. */
const LIGHT_KM_GHZ = String(SPEED_OF_LIGHT_M_PER_S / 1e12);
const LONG_WAVES: readonly Role[] = [
  {
    name: 'wavelength in kilometres, like the distance',
    expression: `(${LIGHT_KM_GHZ} / f)`,
    said: 'λ lambda wavelength wellenlänge wl w W',
    told: true,
  },
  {
    name: 'speed of light, in kilometres times GHz',
    expression: LIGHT_KM_GHZ,
    said: 'c C c0 lightspeed speedoflight',
    told: true,
  },
];

/** What follows from a subject's variables, by the names of those that must be there. */
const DERIVED: readonly (readonly [variables: readonly string[], roles: readonly Role[]])[] = [
  [['latitudeDeg', 'longitudeDifferenceDeg'], SKY],
  [['frequencyGHz', 'slantRangeKm'], LONG_WAVES],
  [['frequencyGHz'], WAVES],
  [['offsetDeg', 'diameterM', 'frequencyGHz'], [BEAMWIDTH]],
  [['pathLossDb', 'noiseBandwidthMHz'], [BOLTZMANN]],
  [['noiseFigureDb'], [REFERENCE]],
  [['noiseTemperatureK'], [REFERENCE]],
];

/** Roles of a subject's names: its variables first, then what follows from them. `logarithm` says whether the text has one. */
export function rolesOf(
  subject: string,
  variables: readonly FormulaVariable[],
  logarithm: boolean,
): readonly Role[] {
  const has = (name: string) => variables.some((variable) => variable.name === name);
  const own = variables.map(
    ({ name, symbol }): Role => ({
      name,
      expression: symbol,
      said: `${SAID[name] ?? ''} ${symbol} ${name.toLowerCase()}`,
    }),
  );
  const derived = DERIVED.flatMap(([names, roles]) => (names.every(has) ? roles : []));
  return [
    // A power that is not under a logarithm is added as a level.
    ...(has('transmitPowerW') && !logarithm ? [IN_DBW] : []),
    ...(subject === 'antenna-gain' ? [EFFICIENCY] : []),
    ...own,
    ...derived,
    ...(has('longitudeDifferenceDeg') && subject !== 'elevation' ? [SKY_ELEVATION] : []),
    ...(has('longitudeDifferenceDeg') && subject !== 'azimuth' ? [SKY_AZIMUTH] : []),
  ];
}

/** A name without what does not tell names apart: spaces, underscores, brackets; capitals only where it is one letter. */
export function plainName(name: string): string {
  const plain = name
    .replace(/[\s_{}.,-]/g, '')
    .replaceAll('ϕ', 'φ')
    .replaceAll('ϑ', 'θ')
    .replaceAll('ϵ', 'ε');
  const greek = GREEK.get(plain) ?? GREEK.get(plain.toLowerCase());
  if (greek !== undefined && plain.length > 1) return greek;
  return [...plain].length === 1 ? plain : plain.toLowerCase();
}

const GREEK: ReadonlyMap<string, string> = new Map([
  ['phi', 'φ'],
  ['lambda', 'λ'],
  ['theta', 'θ'],
  ['Delta', 'Δ'],
  ['delta', 'Δ'],
  ['eta', 'η'],
  ['gamma', 'γ'],
  ['psi', 'ψ'],
  ['beta', 'β'],
  ['epsilon', 'ε'],
  ['alpha', 'α'],
  ['sigma', 'σ'],
  ['rho', 'ρ'],
  ['nu', 'ν'],
]);

/** Factors by which a variable's number grows when it is counted in another unit, by the ending of its name. */
const UNIT_FACTORS: readonly (readonly [
  ending: RegExp,
  units: Readonly<Record<string, string>>,
])[] = [
  [/GHz$/, { GHz: '*1', MHz: '*1000', kHz: '*1000000', Hz: '*1000000000' }],
  [/MHz$/, { GHz: '/1000', MHz: '*1', kHz: '*1000', Hz: '*1000000', MBd: '*1', MSps: '*1' }],
  [/Km$/, { km: '*1', m: '*1000', mi: '/1.609344', miles: '/1.609344' }],
  [/Mm$/, { mm: '*1', cm: '/10', m: '/1000' }],
  [/M$/, { m: '*1', cm: '*100', mm: '*1000', ft: '/0.3048', feet: '/0.3048', in: '/0.0254' }],
  [/Deg$/, { deg: '*1', degrees: '*1', '°': '*1', rad: '*pi/180', radians: '*pi/180' }],
  [/Percent$/, { '%': '*1' }],
  [/Dbi?w?$/, { dB: '*1', dBi: '*1', dBW: '*1' }],
  [/K$/, { K: '*1' }],
  [/W$/, { W: '*1', mW: '*1000', kW: '/1000' }],
];

/** Units and what they do to a variable; nothing where the unit is none of it. */
export function unitFactors(variable: string): Readonly<Record<string, string>> {
  return UNIT_FACTORS.find(([ending]) => ending.test(variable))?.[1] ?? {};
}
