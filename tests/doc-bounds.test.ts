/**
 * Walks the doc comments of every function's inputs: 'a to b' and 'default x' are what the code does. Each `@example`
 * is run with its calls recorded; each recorded call is made again with one field set to the ends that its comment
 * names, beyond them, or left out.
 */

import { expect, test } from 'vitest';
import { DomainError } from '../src/index.js';
import { DocTypes, examplesOf, sourceFiles } from './support/docComments.js';
import { FULL_RUNS } from './support/runs.js';
import { runSnippet } from './support/snippet.js';

const NUMBER = String.raw`-?\d+(?: \d{3})*(?:\.\d+)?`;
/** `-90 to 90`; not times something else, not behind words that say something else than what is taken. */
const RANGE = new RegExp(
  String.raw`(above )?(?<![\w.%])(${NUMBER}) to (${NUMBER})(?!\w|\.\d|,\d| \d{3}| (?:of|times|diameters|degrees apart))`,
);
/** `default 0.1`, `20 by default`; not a factor (`default 70 wavelengths over the diameter`). */
const DEFAULT = new RegExp(
  String.raw`default (?:is )?(${NUMBER})(?: ?[a-zA-Z%]+)?(?=[;.,)]|$| \()|(${NUMBER})(?: ?[a-zA-Z%]+)? (?:by default|where not given|when left out)`,
);
const numberOf = (text = ''): number => Number(text.replaceAll(' ', ''));

/** Functions that are not walked, with the reason. */
const SKIPPED: Readonly<Record<string, string>> = {
  jobSheet: 'takes a record that the library made',
  jobSheetHtml: 'takes a record that the library made',
  compareRecords: 'takes records that the library made',
  recheckRecord: 'takes a record that the library made',
  recordJob: 'takes a job that parseJob has checked',
  planJob: 'takes a job that parseJob has checked',
  networkSystem: 'returns the tree that it was given, for functions that hold the defaults',
  parseJob: 'its schema is compared with the types by a test of its own',
  afterReading: 'takes a state that the library made',
  afterMove: 'takes a state that the library made',
  beginPeakSearch: 'returns its settings as given',
};

/** Fields whose comment says something else than a plain bound or default, with the reason. */
const KNOWN: Readonly<Record<string, string>> = {
  'marginForAvailability: toPercent':
    'the range of percentages is not of this call: its example hands on a common link',
  'judgeReadings: rule': 'the default is a rule with that risk, not a number',
  'safeDistance: frequencyGHz': 'each standard has its own interval, as told',
  'satelliteTrack: stepMin': 'the step is also bounded by the number of steps, as told',
  'spectralDensity: noiseBandwidthRatio': 'the default has more digits than the comment',
  'carrierPower: noiseBandwidthRatio': 'the default has more digits than the comment',
  'designDistribution: window': 'the default is a window, not a number',
  'designDistribution: system.tree.to.to.lossDb': 'of an outlet; the example has a splitter there',
  'supplyAlong: limitA': 'the interval is that of the trade, not a bound',
  'marginSensitivity: receiver.pointingOffsetDeg':
    'shifted by a step, which must stay inside as well',
  'bracketNull: secondDeg': 'counted from the first place',
  'lowElevationFade: steepGradientPercent': 'numbers of figures',
  'clearArc: profile.points.elevationDeg': 'checked where the profile was made',
  'horizonAt: points.elevationDeg': 'checked where the profile was made',
  'slotViews: profile.points.elevationDeg': 'checked where the profile was made',
  'viewClearance: points.elevationDeg': 'checked where the profile was made',
  'mastUnderWind: forceN': 'the lean must stay small as well, as told',
  'patternPointingLoss: frequencyGHz': 'not asked by the pattern of the example',
  'designDistribution: system.source.bandwidthMHz': 'the design repeats its input',
  'designDistribution: system.tree.to.cable.dielectricLossDbPer100m':
    'the design repeats its input',
  'designDistribution: system.tree.to.cable.temperaturePercentPerK': 'the design repeats its input',
  'designDistribution: system.temperatureC': 'the design repeats its input',
  'marginForAvailability: fromPercent':
    'of the range type; this function is asked at one percentage',
  'combinedAvailability: link.uplink.eirpDbw': 'the downlink that follows must stay inside as well',
  'transparentLink: uplink.eirpDbw': 'the downlink that follows must stay inside as well',
  'totalFade: elevationDeg': 'asked when the distribution is called',
  'totalFade: efficiencyRatio': 'asked when the distribution is called',
  'rainFade: heightM': 'asked when the distribution is called',
  'smallestReflector: receiver.diameterM': 'what is looked for; not read',
  'smallestReflector: receiver.antennaGainDbi': 'follows from the size looked for; not read',
  'marginSensitivity: downlink.eirpDbw': 'shifted by a step, which must stay inside as well',
  'marginSensitivity: receiver.diameterM': 'shifted by a step, which must stay inside as well',
  'drivenUplink: saturationFluxDensityDbwPerM2':
    'not read where the transponder is driven by power',
  'transponderState: carrierToIntermodulationDb': 'not read by this function',
  'apertureLevelDb: diameterM': 'must be eight wavelengths as well',
  'apertureLobes: diameterM': 'must be eight wavelengths as well',
  'sideLobeTest: aperture.diameterM': 'must be eight wavelengths as well',
  'simulatedReadings: lobe.diameterM': 'not read for the lobe of the example',
  'simulatedReadings: lobe.frequencyGHz': 'not read for the lobe of the example',
  'shownMer: standardUncertaintyDb': 'a field of the same name of another function',
};

/**
 * Counts of runs whose upper end takes minutes, with a field that is read after them: the ends are tried beside a wrong
 * value there, which is named only if the count was taken.
 */
const LONG: Readonly<Record<string, string>> = { 'comparePlans: runs': 'seed' };
/** Functions each call of which is a simulation: walked where everything is run. */
const DEAR = new Set(Object.keys(LONG).map((id) => id.split(':')[0]));

type Fn = (...args: readonly unknown[]) => unknown;
interface Call {
  readonly name: string;
  readonly call: Fn;
  readonly args: readonly unknown[];
}

async function recordedCalls(): Promise<Call[]> {
  const calls: Call[] = [];
  const wrap = (exported: Readonly<Record<string, unknown>>) =>
    new Proxy(exported, {
      get(target, key) {
        const value = target[String(key)];
        if (typeof value !== 'function' || /^[A-Z]/.test(String(key))) return value;
        return (...args: unknown[]) => {
          const result = (value as Fn)(...args);
          // Only a call that was answered can tell what one changed field does.
          calls.push({ name: String(key), call: value as Fn, args });
          return result;
        };
      },
    });
  for (const file of sourceFiles)
    for (const { code } of examplesOf(file)) await runSnippet(code, wrap);
  return calls;
}

/** A copy with the value at a path replaced or, for `undefined`, taken away. */
function changed(value: unknown, [key, ...rest]: readonly string[], by: unknown): unknown {
  if (key === undefined) return by;
  if (Array.isArray(value))
    return value.map((item, index) => (index === Number(key) ? changed(item, rest, by) : item));
  const { [key]: old, ...others } = value as Record<string, unknown>;
  const next = changed(old, rest, by);
  return next === undefined ? others : { ...others, [key]: next };
}

interface Place {
  readonly path: readonly string[];
  readonly comment: string;
  readonly value: unknown;
}

/** Every commented field of an argument, the optional ones that the example leaves out included. */
function* placesOf(
  types: DocTypes,
  type: Parameters<DocTypes['fields']>[0],
  value: unknown,
  path: readonly string[] = [],
): Generator<Place> {
  if (Array.isArray(value)) {
    if (value.length > 0) yield* placesOf(types, type, value[0], [...path, '0']);
    return;
  }
  if (typeof value !== 'object' || value === null || path.length > 5) return;
  for (const [name, field] of types.fields(type, (value as { readonly kind?: unknown }).kind)) {
    const inner = (value as Record<string, unknown>)[name];
    yield { path: [...path, name], comment: field.comment, value: inner };
    if (typeof inner === 'object') yield* placesOf(types, field.type, inner, [...path, name]);
  }
}

/** The outcome of a call: JSON of the result, or the error. */
function outcome({ call, args }: Call, index: number, arg: unknown): string | DomainError {
  try {
    return JSON.stringify(call(...args.map((old, at) => (at === index ? arg : old)))) ?? '';
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
}

const names = (error: string | DomainError, field: string): boolean =>
  error instanceof DomainError && error.parameter.split(/[.[\]]+/).includes(field);

test('bounds and defaults of inputs are what their comments say', async () => {
  const types = new DocTypes();
  const seen = new Set<string>();
  const wrong: string[] = [];
  let bounds = 0;
  let defaults = 0;
  const calls = (await recordedCalls()).filter((_, index) => FULL_RUNS || index % 8 === 0);
  for (const one of calls) {
    if (one.name in SKIPPED || (!FULL_RUNS && DEAR.has(one.name))) continue;
    types.parameters(one.name).forEach((type, index) => {
      for (const { path, comment, value } of placesOf(types, type, one.args[index])) {
        const field = path[path.length - 1] ?? '';
        const id = `${one.name}: ${path.filter((key) => key !== '0').join('.')}`;
        if (seen.has(id)) continue;
        const told = comment.replace(/stated range[^;.]*|usually[^;.]*/gi, '');
        const after = LONG[id];
        const at = (by: unknown) => outcome(one, index, changed(one.args[index], path, by));
        const atEnd = (by: number) => {
          const argument = changed(one.args[index], path, by);
          return after === undefined
            ? outcome(one, index, argument)
            : outcome(one, index, changed(argument, [after], Number.NaN));
        };
        const range = RANGE.exec(told);
        if (range && (typeof value === 'number' || value === undefined) && !(id in KNOWN)) {
          seen.add(id);
          const [low = 0, high = 0] = range.slice(2).map(numberOf);
          const step = (end: number) => 1e-6 * Math.max(1, Math.abs(end));
          for (const end of range[1] === undefined ? [low, high] : [high]) {
            const got = atEnd(end);
            if (after !== undefined && !names(got, after))
              wrong.push(`${id}: ${after} is not read after it`);
            if (names(got, field) && got instanceof DomainError && got.code === 'out-of-range')
              wrong.push(`${id} "${range[0]}": ${end} is refused: ${got.message}`);
          }
          for (const end of [low - step(low), high + step(high)])
            if (!names(atEnd(end), field)) wrong.push(`${id} "${range[0]}": ${end} is taken`);
          bounds++;
        }
        const otherwise = DEFAULT.exec(told);
        const standard = otherwise?.[1] ?? otherwise?.[2];
        if (standard !== undefined && !(id in KNOWN)) {
          seen.add(id);
          const without = at(undefined);
          const given = at(numberOf(standard));
          if (!(without instanceof DomainError) || !names(without, field)) {
            const same =
              without instanceof DomainError || given instanceof DomainError
                ? String(without) === String(given)
                : without === given;
            if (!same) wrong.push(`${id} "${otherwise?.[0]}": left out is not ${standard}`);
            defaults++;
          }
        }
      }
    });
  }
  console.log(`doc comments: ${bounds} bounds and ${defaults} defaults walked`);
  expect(wrong).toEqual([]);
  expect(bounds).toBeGreaterThan(FULL_RUNS ? 350 : 60);
  expect(defaults).toBeGreaterThan(FULL_RUNS ? 250 : 40);
});
