/** What is wrong with a formula that does not hold: the usual faults are put right in turn until one of them makes it hold. */

import { denseAt, valueAt } from '../../numeric/columns.js';
import { treeColumn } from '../formula/columns.js';
import type { FormulaNode } from '../formula/parse.js';
import type { FormulaSubject } from '../formula/subject.js';
import { treeToText } from '../formula/tex.js';
import { binary, literal } from '../formula/trees.js';
import { distance } from './comparedGrid.js';
import { fittedConstants, middle, wrapped } from './constants.js';
import {
  angleCorrections,
  type Correction,
  type FormulaFault,
  levelCorrections,
  variableCorrections,
  wholeCorrections,
} from './faults.js';
import { insideCorrections } from './insideFaults.js';
import { type Places, placesWhere, someOf } from './places.js';

export type { FormulaFault } from './faults.js';

/** A fault of a formula. */
export interface FormulaDiagnosis {
  /** Which fault, as a fixed word. */
  readonly fault: FormulaFault;
  /** What is wrong, in a sentence. */
  readonly says: string;
  /** The formula without the fault, in the library's notation; `null` where only its region is too wide. */
  readonly corrected: string | null;
  /** The constant, offset or factor that is off and the value that fits; `null` for other faults. */
  readonly found: number | null;
  readonly fits: number | null;
  /** Part of the region to which this is confined; `null` for all of it. */
  readonly area: string | null;
}

/** Share of places at which a corrected formula must be right. */
const RIGHT_RATIO = 0.97;
/** Parts of a region in which a formula may be right alone. */
const HALVES: readonly string[] = [
  'northern hemisphere',
  'southern hemisphere',
  'satellite to the east',
  'satellite to the west',
];

/** Where a formula is right: everywhere, in one half, or nowhere. */
type Right = { readonly area: string | null } | undefined;

/** A way to ask where a tree is right. */
type Judge = (tree: FormulaNode, areas?: readonly string[]) => Right;

/** Asks on few places first, on more where they let hope. */
function judgeOf(subject: FormulaSubject, places: Places, tolerance: number): Judge {
  const stages = [someOf(places, 24), someOf(places, 400)];
  const names = subject.areas.map(({ name }) => name);
  return (tree, areas = HALVES) => {
    let right: Right;
    for (const [index, probes] of stages.entries()) {
      const within = withinOf(treeColumn(tree, probes), probes, subject.period, tolerance);
      right = rightIn(within, probes, names, areas, index === 0 ? 0.85 : RIGHT_RATIO);
      if (!right) return undefined;
    }
    return right;
  };
}

function withinOf(
  got: Float64Array,
  probes: Places,
  period: FormulaSubject['period'],
  tolerance: number,
): Uint8Array {
  const within = new Uint8Array(probes.count);
  for (let i = 0; i < probes.count; i++)
    within[i] = distance(denseAt(got, i) - denseAt(probes.exact, i), period) <= tolerance ? 1 : 0;
  return within;
}

function rightIn(
  within: Uint8Array,
  probes: Places,
  names: readonly string[],
  areas: readonly string[],
  least: number,
): Right {
  const total = within.reduce((sum, each) => sum + each, 0);
  if (total >= least * probes.count) return { area: null };
  for (const area of areas) {
    const mask = probes.areas[names.indexOf(area)];
    if (!mask) continue;
    let [count, inside] = [0, 0];
    for (let i = 0; i < probes.count; i++) {
      if (mask[i] !== 1) continue;
      count++;
      inside += valueAt(within, i);
    }
    if (count >= 5 && inside >= least * count) return { area };
  }
  return undefined;
}

/** The faults of a formula, the likeliest explanation only; empty where none is recognised. */
export function diagnoses(
  tree: FormulaNode,
  subject: FormulaSubject,
  places: Places,
  tolerance: number,
): readonly FormulaDiagnosis[] {
  if (places.count === 0) return [];
  const judge = judgeOf(subject, places, tolerance);
  const half = judge(tree);
  if (half?.area) return [inHalf(half.area, tree, subject, places, tolerance)];
  const { variables, unit, period } = subject;
  const inside = insideCorrections(tree, variables);
  const of = (...faults: readonly FormulaFault[]) =>
    inside.filter(({ fault }) => faults.includes(fault));
  const whole = wholeCorrections(tree, unit);
  const [turned, ...others] = whole as [Correction, ...Correction[]];
  // The likeliest first. In an azimuth a turned sign inside and one of the whole are the same, and the first is easier to see.
  const beforeFit = [
    ...levelCorrections(tree, unit),
    ...(period === 360 ? of('sign') : []),
    turned,
    ...variableCorrections(tree, variables),
    ...angleCorrections(tree),
    ...of('sign', 'wrong-variable', 'function', 'angle-unit'),
    ...others.filter(({ fault }) => fault !== 'operation'),
  ];
  const afterFit = [...of('operation'), ...others.filter(({ fault }) => fault === 'operation')];
  const here = quadrant(tree, subject, places, tolerance);
  if (here) return [here];
  const probes = someOf(places, 24);
  const everywhere = (each: FormulaNode) => judge(each, [])?.area === null;
  const likely = firstRight(beforeFit, judge);
  if (likely?.right.area === null) {
    const { correction } = likely;
    const other =
      correction.fault === 'unit' ? byFit(tree, subject, probes, everywhere) : undefined;
    return told(
      likely,
      other?.fault === 'constant' ? ` (or ${other.fits} in the place of ${other.found})` : '',
    );
  }
  const fitted = byFit(tree, subject, probes, everywhere);
  if (fitted) return [fitted];
  const operation = firstRight(afterFit, judge);
  if (operation?.right.area === null) return told(operation);
  if (likely) return told(likely);
  const [halfProbes, area] = halfOf(subject, places);
  const fittedInHalf =
    halfProbes && byFit(tree, subject, halfProbes, (each) => judge(each, [area])?.area === area);
  if (fittedInHalf) return [fittedInHalf, confined(area)];
  if (operation) return told(operation);
  const region = judge(
    tree,
    subject.areas.map(({ name }) => name),
  );
  if (region?.area) return [confined(region.area)];
  return twoFaults(tree, subject, judge);
}

interface Found {
  readonly correction: Correction;
  readonly right: { readonly area: string | null };
}

/** The first correction that is right everywhere, or else the first that is right in one half. */
function firstRight(corrections: readonly Correction[], judge: Judge): Found | undefined {
  let half: Found | undefined;
  for (const correction of corrections) {
    const right = judge(correction.tree);
    if (right?.area === null) return { correction, right };
    // Most formulas are made for the north, so that half explains more.
    if (right && (!half || (half.right.area !== HALVES[0] && right.area === HALVES[0])))
      half = { correction, right };
  }
  return half;
}

const text = (tree: FormulaNode) => treeToText(tree, (symbol) => symbol);
const sentence = (says: string) => `${says[0]?.toUpperCase() ?? ''}${says.slice(1)}.`;

function told({ correction, right }: Found, more = ''): readonly FormulaDiagnosis[] {
  const first: FormulaDiagnosis = {
    fault: correction.fault,
    says: sentence(`${correction.says}${more}`),
    corrected: text(correction.tree),
    found: null,
    fits: null,
    area: right.area,
  };
  return right.area === null ? [first] : [first, confined(right.area)];
}

/** Right in one part of the region only. */
function confined(area: string): FormulaDiagnosis {
  const hemisphere = HALVES.includes(area);
  return {
    fault: hemisphere ? 'hemisphere' : 'part-of-region',
    says: `It is right only here: ${area}.`,
    corrected: null,
    found: null,
    fits: null,
    area,
  };
}

/** Right in one half as it stands; what it is in the other half. */
function inHalf(
  area: string,
  tree: FormulaNode,
  subject: FormulaSubject,
  places: Places,
  tolerance: number,
): FormulaDiagnosis {
  const turned =
    subject.period === 360 &&
    rightBy(
      treeColumn(tree, places),
      places,
      (difference) => distance(difference, 180) <= tolerance,
    );
  return {
    ...confined(area),
    says: turned
      ? `It is right only here: ${area}. Elsewhere it is off by 180 degrees, because the quotient has lost which of its sides was negative; an arctangent of two arguments keeps both signs.`
      : `It is right only here: ${area}.`,
  };
}

function rightBy(
  got: Float64Array,
  places: Places,
  right: (difference: number) => boolean,
): boolean {
  let count = 0;
  for (let i = 0; i < places.count; i++)
    if (right(denseAt(got, i) - denseAt(places.exact, i))) count++;
  return count >= RIGHT_RATIO * places.count;
}

/** Off by half a turn at some places and right at the others. */
function quadrant(
  tree: FormulaNode,
  subject: FormulaSubject,
  places: Places,
  tolerance: number,
): FormulaDiagnosis | undefined {
  if (subject.period !== 360) return undefined;
  const probes = someOf(places, 400);
  const got = treeColumn(tree, probes);
  if (!rightBy(got, probes, (difference) => distance(difference, 180) <= tolerance))
    return undefined;
  // Off by half a turn everywhere is an offset, not a quadrant.
  if (!rightBy(got, probes, (difference) => distance(difference - 180, 360) > tolerance)) {
    let right = 0;
    for (let i = 0; i < probes.count; i++)
      if (distance(denseAt(got, i) - denseAt(probes.exact, i), 360) <= tolerance) right++;
    if (right < 0.02 * probes.count) return undefined;
  }
  return {
    fault: 'quadrant',
    says: 'It is off by 180 degrees at part of the places: the arctangent has lost the quadrant. An arctangent of two arguments keeps both signs.',
    corrected: null,
    found: null,
    fits: null,
    area: null,
  };
}

/** Some places of the northern hemisphere, for which most formulas are made; none where the subject has no such part. */
function halfOf(
  subject: FormulaSubject,
  places: Places,
): readonly [probes: Places | undefined, area: string] {
  const area = HALVES[0] as string;
  const mask = places.areas[subject.areas.findIndex(({ name }) => name === area)];
  if (!mask?.some((each) => each === 1)) return [undefined, area];
  return [
    someOf(
      placesWhere(places, (index) => mask[index] === 1),
      24,
    ),
    area,
  ];
}

/** A constant inside, something added, or a factor that would make it right. */
function byFit(
  tree: FormulaNode,
  subject: FormulaSubject,
  probes: Places,
  isRight: (tree: FormulaNode) => boolean,
): FormulaDiagnosis | undefined {
  const { period } = subject;
  const constant = fittedConstants(tree, probes, period, isRight);
  const off = (found: number | null, fits: number, corrected: FormulaNode) => ({
    corrected: text(corrected),
    found,
    fits,
    area: null,
  });
  if (constant)
    return {
      fault: 'constant',
      says: `The constant ${constant.found} is off; ${constant.fits} fits.`,
      ...off(constant.found, constant.fits, constant.tree),
    };
  const got = treeColumn(tree, probes);
  const differences = [...got].map((value, i) => wrapped(denseAt(probes.exact, i) - value, period));
  const offset = middle(differences);
  if (offset !== undefined) {
    const value = Number(offset.toPrecision(4));
    const added = binary('+', tree, literal(value));
    if (isRight(added))
      return {
        fault: 'offset',
        says: `It is off by the same everywhere: ${Math.abs(value)} ${unitSaid(subject.unit)} must be ${value < 0 ? 'subtracted' : 'added'}.`,
        ...off(0, value, added),
      };
  }
  const factor = middle([...got].map((value, i) => denseAt(probes.exact, i) / value));
  if (factor !== undefined && period !== 360) {
    const value = Number(factor.toPrecision(4));
    const times = binary('*', literal(value), tree);
    if (isRight(times))
      return {
        fault: 'factor',
        says: `It is right but for a factor: it must be multiplied by ${value}.`,
        ...off(1, value, times),
      };
  }
  return undefined;
}

const unitSaid = (unit: string) => (unit === 'deg' ? 'degrees' : unit);

/** Two faults at once: one inside, and one of the whole or of what is put in. */
function twoFaults(
  tree: FormulaNode,
  subject: FormulaSubject,
  judge: Judge,
): readonly FormulaDiagnosis[] {
  const inner = insideCorrections(tree, subject.variables).filter(
    ({ fault }) => fault !== 'operation',
  );
  let half: readonly FormulaDiagnosis[] = [];
  for (const first of inner) {
    const outer = [
      ...wholeCorrections(first.tree, subject.unit).slice(0, 8),
      ...variableCorrections(first.tree, subject.variables).filter(({ fault }) => fault === 'sign'),
    ];
    for (const second of outer) {
      const right = judge(second.tree);
      if (!right || (right.area !== null && half.length > 0)) continue;
      const both = [
        ...told({ correction: { ...first, tree: second.tree }, right: { area: null } }),
        ...told({ correction: second, right }),
      ];
      if (right.area === null) return both;
      half = both;
    }
  }
  return half;
}
