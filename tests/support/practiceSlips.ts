/**
 * Wrong answers of the table of slips from practice, computed apart from the code that names slips: the table's
 * expressions, and directions from vectors on the ellipsoid.
 */

import { referenceTable } from './csv.js';
import {
  type CompiledFormula,
  compileFormula,
  solutionPlanOf,
  toleranceOf,
} from './practicePlan.js';

const RAD = Math.PI / 180;

/** Azimuth, elevation, range and skew from Cartesian vectors (WGS 84, station at sea level). */
function directions(latitudeDeg: number, longitudeDeg: number, slotDeg: number) {
  const [a, e2, r] = [6378.137, 0.00669437999014, 42164.169];
  const [p, l, s] = [latitudeDeg * RAD, longitudeDeg * RAD, slotDeg * RAD];
  const n = a / Math.sqrt(1 - e2 * Math.sin(p) ** 2);
  const place = [
    n * Math.cos(p) * Math.cos(l),
    n * Math.cos(p) * Math.sin(l),
    n * (1 - e2) * Math.sin(p),
  ] as const;
  const sight = [r * Math.cos(s) - place[0], r * Math.sin(s) - place[1], -place[2]] as const;
  const dot = (u: readonly number[]) => u.reduce((sum, x, i) => sum + x * (sight[i] as number), 0);
  const east = dot([-Math.sin(l), Math.cos(l), 0]);
  const north = dot([-Math.sin(p) * Math.cos(l), -Math.sin(p) * Math.sin(l), Math.cos(p)]);
  const up = dot([Math.cos(p) * Math.cos(l), Math.cos(p) * Math.sin(l), Math.sin(p)]);
  const d = Math.hypot(...sight);
  // Turn of the Earth's axis from the vertical about the line of sight, clockwise as seen from behind.
  const k = [0, Math.cos(p), Math.sin(p)] as const;
  const w = [east / d, north / d, up / d] as const;
  const right = [w[1] / Math.hypot(w[0], w[1]), -w[0] / Math.hypot(w[0], w[1]), 0] as const;
  const over = [
    right[1] * w[2] - right[2] * w[1],
    right[2] * w[0] - right[0] * w[2],
    right[0] * w[1] - right[1] * w[0],
  ] as const;
  const along = (u: readonly number[]) => u.reduce((sum, x, i) => sum + x * (k[i] as number), 0);
  let skew = Math.atan2(along(right), along(over)) / RAD;
  skew -= 180 * Math.round(skew / 180);
  return {
    AZ: (Math.atan2(east, north) / RAD + 360) % 360,
    EL: Math.atan2(up, Math.hypot(east, north)) / RAD,
    RG: d,
    SK: skew,
  };
}

/** A row of the table with its wrong answer. */
interface PracticeSlip {
  readonly plan: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly words: string;
  readonly wrong: number;
  readonly exact: number;
  readonly decimals: number;
  /** Names of which one must be named; several lists where several slips were made at once. */
  readonly expected: readonly (readonly string[])[];
}

/** Value of a row's expression over symbols: `x = ...; y`, with `AZ[lat; lon; sat]` and the like. */
function worth(expression: string, symbols: Readonly<Record<string, number>>): number {
  const values: Record<string, number> = { ...symbols };
  const compute = (text: string): number => {
    const compiled: CompiledFormula = compileFormula(text, Object.keys(values));
    return compiled(values);
  };
  const looked = expression.replace(
    /\b(AZ|EL|RG|SK)\[([^\]]*)\]/g,
    (_, name: string, list: string) => {
      const [lat, lon, sat] = list.split(';').map(compute) as [number, number, number];
      return `(${directions(lat, lon, sat)[name as 'AZ']})`;
    },
  );
  let last = Number.NaN;
  for (const part of looked.split(';')) {
    const [, name, body] = /^\s*(?:(\w+)\s*=)?(.*)$/s.exec(part) ?? [];
    last = compute(body ?? '');
    if (name) values[name] = last;
  }
  return last;
}

/** A row of the table as a rule: what it gives for any inputs of its plan. */
export interface PracticeRule extends Omit<PracticeSlip, 'wrong' | 'exact' | 'decimals'> {
  /** Whether an answer is right in the decimals asked for, or within what rounding each step as shown does. */
  readonly same: (
    answer: string,
    exact: number,
    inputs: Readonly<Record<string, number>>,
  ) => boolean;
  readonly at: (
    inputs: Readonly<Record<string, number>>,
  ) => Pick<PracticeSlip, 'wrong' | 'exact' | 'decimals'>;
}

/** The whole table as rules. */
export function practiceRules(): readonly PracticeRule[] {
  return referenceTable('teaching/practice-slips.csv').map((row) => {
    const plan = row['plan'] ?? '';
    const inputs = Object.fromEntries(
      (row['givens'] ?? '').split(';').map((pair) => {
        const [name, value] = pair.split('=').map((cell) => cell.trim());
        return [name ?? '', Number(value)];
      }),
    );
    return {
      plan,
      inputs,
      words: row['words'] ?? '',
      expected: (row['slip'] ?? '').split(' and ').map((list) => list.split(' or ')),
      same: (answer, exact, drawn) => {
        const off = Number(answer) - exact;
        // A bearing repeats after a full turn, a linear polarization after half of one: -90 degrees and 90 are the same.
        const turn = { azimuth: 360, 'magnetic-bearing': 360, skew: 180 }[plan] ?? 0;
        const apart = turn > 0 ? Math.abs(off - turn * Math.round(off / turn)) : Math.abs(off);
        return apart <= toleranceOf(plan, drawn) + 1e-9;
      },
      at: (drawn) => {
        const { symbols, exact, decimals } = solutionPlanOf(plan, drawn);
        return { wrong: worth(row['expression'] ?? '', symbols), exact, decimals };
      },
    };
  });
}
