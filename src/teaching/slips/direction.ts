/** Slips of direction: the wrong reference, the wrong sense, the wrong sign. */

import { valueNamed } from '../../numeric/columns.js';
import type { FormulaNode } from '../formula/parse.js';
import { call, functionOf, rebuilt } from '../formula/trees.js';
import { answered, exchanged, givensThat, lastStep, type Slip, set, trees } from './slip.js';
import { callArguments, literalValue, sidesOf, symbolName } from './tree.js';

function oneArgumentArctangent(node: FormulaNode): FormulaNode {
  const [y, x] = callArguments(node);
  return functionOf(node) === 'atan2' && y && x
    ? call('atan', { type: 'BinaryExpression', operator: '/', left: y, right: x } as FormulaNode)
    : node;
}

function sidesExchanged(node: FormulaNode): FormulaNode {
  const [y, x] = callArguments(node);
  return functionOf(node) === 'atan2' && y && x ? call('atan2', x, y) : node;
}

const symbolOf = (plan: Parameters<Slip['changes']>[0], name: string) =>
  plan.givens.find((each) => each.name === name)?.symbol;

/** Pairs of two givens, or of station and slot. */
const pairOf = (plan: Parameters<Slip['changes']>[0], one: string, other: string) => {
  const [a, b] = [symbolOf(plan, one), symbolOf(plan, other)];
  return a !== undefined && b !== undefined ? [exchanged(a, b)] : [];
};

/** The short formula of the round Earth without the turn that brings its arctangent into the right quadrant. */
function shortFormula(plan: Parameters<Slip['changes']>[0]) {
  const [lat, lon, sat] = ['latitudeDeg', 'longitudeDeg', 'orbitalLongitudeDeg'].map((name) =>
    symbolOf(plan, name),
  );
  if (plan.periodDeg !== 360 || !lat || !lon || !sat) return [];
  const radians = Math.PI / 180;
  return [
    answered((_, values) => {
      const difference = (valueNamed(values, sat) - valueNamed(values, lon)) * radians;
      return (
        Math.atan(Math.tan(difference) / Math.sin(valueNamed(values, lat) * radians)) / radians
      );
    }),
  ];
}

/** The slips. */
export const DIRECTION_SLIPS: readonly Slip[] = [
  {
    name: 'sign-of-west',
    group: 'direction',
    explanation: 'A longitude has the wrong sign: east is positive, west is negative.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => /longitudeDeg$/i.test(name),
        (value) => -value,
      ),
  },
  {
    name: 'difference-reversed',
    group: 'direction',
    explanation: 'The longitudes were subtracted the wrong way round: satellite less station.',
    changes: (plan) => pairOf(plan, 'longitudeDeg', 'orbitalLongitudeDeg'),
  },
  {
    name: 'swapped-coordinates',
    group: 'direction',
    explanation: 'Latitude and longitude of the station were swapped.',
    changes: (plan) => pairOf(plan, 'latitudeDeg', 'longitudeDeg'),
  },
  {
    name: 'longitude-left-out',
    group: 'direction',
    explanation:
      'The longitude of the station was left out: what counts is the longitude of the satellite less that of the station.',
    changes: (plan) =>
      symbolOf(plan, 'orbitalLongitudeDeg') === undefined
        ? []
        : givensThat(
            plan,
            ({ name }) => name === 'longitudeDeg',
            () => 0,
          ),
  },
  {
    name: 'wrong-hemisphere',
    group: 'direction',
    explanation: 'The latitude has the wrong sign: north is positive, south is negative.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => name === 'latitudeDeg',
        (value) => -value,
      ),
  },
  {
    name: 'true-for-magnetic',
    group: 'direction',
    explanation: 'The declination was left out: the bearing is from the wrong north.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => name === 'declinationDeg',
        () => 0,
      ),
  },
  {
    name: 'declination-reversed',
    group: 'direction',
    explanation: 'The declination was applied with the wrong sign.',
    changes: (plan) =>
      givensThat(
        plan,
        ({ name }) => name === 'declinationDeg',
        (value) => -value,
      ),
  },
  {
    name: 'one-argument-arctangent',
    group: 'direction',
    explanation:
      'The arctangent of a quotient loses the quadrant: take both sides with their signs.',
    changes: (plan) => [...trees(plan, oneArgumentArctangent), ...shortFormula(plan)],
  },
  {
    name: 'sides-exchanged',
    group: 'direction',
    explanation:
      'The two sides of the arctangent were exchanged: the angle counts from the other side.',
    changes: (plan) => [
      ...trees(plan, sidesExchanged),
      ...trees(plan, (node) => {
        const [of] = functionOf(node) === 'atan' ? callArguments(node) : [];
        const quotient = of && sidesOf(of);
        return quotient?.operator === '/'
          ? call('atan', { ...of, left: quotient.right, right: quotient.left } as FormulaNode)
          : node;
      }),
    ],
  },
  {
    name: 'measured-from-south',
    group: 'direction',
    explanation: 'The direction was counted from south; azimuth counts from north, clockwise.',
    changes: (plan) =>
      plan.periodDeg === 360 ? [answered((az) => az + 180), answered((az) => 180 - az)] : [],
  },
  {
    name: 'counted-anticlockwise',
    group: 'direction',
    explanation: 'The direction was counted anticlockwise; azimuth counts clockwise from north.',
    changes: (plan) => (plan.periodDeg === 360 ? [answered((az) => 360 - az)] : []),
  },
  {
    name: 'zenith-angle',
    group: 'direction',
    explanation:
      'The angle was counted from the vertical: elevation counts from the horizontal, 90 degrees less this.',
    changes: (plan) =>
      /elevation/.test(lastStep(plan).meaning) && lastStep(plan).unit === 'deg'
        ? [answered((el) => 90 - el)]
        : [],
  },
  {
    name: 'measured-from-other-axis',
    group: 'direction',
    explanation: 'The angle was counted from the other axis: 90 degrees apart.',
    changes: (plan) =>
      /elevation|azimuth|bearing/.test(lastStep(plan).meaning) || lastStep(plan).unit !== 'deg'
        ? []
        : [answered((x) => x + 90), answered((x) => x - 90), answered((x) => 90 - x)],
  },
  {
    name: 'parallax-left-out',
    group: 'direction',
    explanation:
      'The satellite was taken as infinitely far: what the radius of the Earth takes off (6378 over 42 164) was left out.',
    changes: (plan) => {
      const radius = plan.constants.find(({ symbol }) => symbol === 'r');
      return radius && /elevation|azimuth/.test(lastStep(plan).meaning)
        ? [set({ r: (value) => value * 1e9 })]
        : [];
    },
  },
  {
    name: 'half-way-from-zero',
    group: 'direction',
    explanation:
      'Half the way between the two places was taken for the place itself: it counts from the first place, not from zero.',
    changes: (plan) =>
      trees(plan, (node) => {
        const half = sidesOf(node);
        const sum =
          half?.operator === '/' && literalValue(half.right) === 2 ? sidesOf(half.left) : undefined;
        if (sum?.operator !== '+') return node;
        return [sum.left, sum.right].every((place) =>
          plan.givens.some(({ symbol }) => symbol === symbolName(place)),
        )
          ? rebuilt(node, (each) =>
              each === half?.left
                ? ({ ...each, operator: '-', left: sum.right, right: sum.left } as FormulaNode)
                : each,
            )
          : node;
      }),
  },
  {
    name: 'wrong-sign',
    group: 'direction',
    explanation: 'The size is right and the sign is turned.',
    reach: 'item',
    changes: () => [answered((value) => -value)],
  },
];
