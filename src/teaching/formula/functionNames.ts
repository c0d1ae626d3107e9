/** What functions are called in spreadsheets, on calculators, in programs, by hand and in LaTeX. */

/** What a function's name stands for. */
export interface NamedFunction {
  /** The library's name of it, in degrees where it is a function of an angle. */
  readonly base: string;
  /** `mode` follows the formula's angle unit, `degrees` is always in degrees, `none` has no angle. */
  readonly angle: 'mode' | 'degrees' | 'radians' | 'none';
}

const TRIGONOMETRY: Readonly<Record<string, readonly string[]>> = {
  sin: ['sin', 'sine'],
  cos: ['cos', 'cosine'],
  tan: ['tan', 'tg', 'tangent'],
  cot: ['cot', 'ctg', 'cotan'],
  asin: ['asin', 'arcsin', 'arsin', 'invsin', 'sininv', 'asn'],
  acos: ['acos', 'arccos', 'arcos', 'invcos', 'cosinv', 'acs'],
  atan: ['atan', 'arctan', 'arctg', 'atn', 'artan', 'invtan', 'taninv', 'arctangent'],
  atan2: ['atan2', 'arctan2'],
};

const PLAIN: Readonly<Record<string, readonly string[]>> = {
  sqrt: ['sqrt', 'wurzel', 'sqr', 'root'],
  abs: ['abs', 'fabs', 'betrag'],
  exp: ['exp'],
  ln: ['ln', 'loge'],
  log10: ['log10', 'lg', 'log_10'],
  log: ['log'],
  power: ['power', 'pow', 'potenz'],
  mod: ['mod', 'rest', 'fmod'],
  round: ['round', 'runden', 'rnd'],
  sign: ['sign', 'sgn', 'signum', 'vorzeichen'],
  min: ['min'],
  max: ['max'],
  normal: ['normal'],
  student: ['student'],
  if: ['if', 'wenn'],
  radians: ['radians', 'rad', 'deg2rad', 'torad', 'toradians', 'bogenmass', 'bogenmaß'],
  degrees: ['degrees', 'deg', 'rad2deg', 'todeg', 'todegrees', 'grad'],
  pi: ['pi'],
};

const NAMES: ReadonlyMap<string, NamedFunction> = new Map([
  ...Object.entries(TRIGONOMETRY).flatMap(([base, names]) =>
    names.flatMap((name): [string, NamedFunction][] => [
      [name, { base, angle: 'mode' }],
      [`${name}d`, { base, angle: 'degrees' }],
      [`${name}deg`, { base, angle: 'degrees' }],
      [`${name}rad`, { base, angle: 'radians' }],
    ]),
  ),
  ...Object.entries(PLAIN).flatMap(([base, names]) =>
    names.map((name): [string, NamedFunction] => [name, { base, angle: 'none' }]),
  ),
]);

/** Modules of programming languages whose functions take radians, and whose `log` is the natural one. */
const MODULE = /^(?:Math|math|np|numpy|cmath)\./;

/** Whether a name comes from a module of a programming language. */
export function fromModule(name: string): boolean {
  return MODULE.test(name);
}

/** What a function's name stands for; `undefined` for what is no function. */
export function functionNamed(name: string): NamedFunction | undefined {
  const plain = name.replace(MODULE, '');
  if (plain.includes('.')) return undefined;
  return NAMES.get(plain.toLowerCase()) ?? NAMES.get(plain.replace(/_/g, '').toLowerCase());
}

/** Exact names of functions that a run of letters may begin with, as in `sinφ`. */
export const FUNCTION_STARTS: readonly string[] = [
  'arcsin',
  'arccos',
  'arctan',
  'arctg',
  'asin',
  'acos',
  'atan',
  'sqrt',
  'log10',
  'sin',
  'cos',
  'tan',
  'tg',
  'log',
  'lg',
  'ln',
];
