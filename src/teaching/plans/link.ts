/** Plans of worked solutions for `link`. */

import { freeSpaceLoss } from '../../link/index.js';
import type { SolutionPlan } from '../solution/plan.js';

const FREE_SPACE_LOSS: SolutionPlan = {
  name: 'free-space-loss',
  title: 'How much is lost on the way through free space?',
  part: 'link',
  functionName: 'freeSpaceLoss',
  givens: [
    {
      name: 'frequencyGHz',
      symbol: 'f',
      tex: 'f',
      meaning: 'frequency',
      unit: 'GHz',
      draw: { from: 10.7, to: 12.7, step: 0.1 },
    },
    {
      name: 'slantRangeKm',
      symbol: 'r',
      tex: 'r',
      meaning: 'slant range',
      unit: 'km',
      draw: { from: 36000, to: 41000, step: 500 },
    },
  ],
  constants: [
    {
      symbol: 'K',
      tex: 'K',
      meaning: 'loss at 1 GHz and 1 km',
      value: freeSpaceLoss({ frequencyGHz: 1, slantRangeKm: 1 }).constantDb,
      unit: 'dB',
      source: 'ITU-R P.525: 20 log10(4 pi 1e12 / c)',
    },
  ],
  steps: [
    {
      symbol: 'F',
      tex: 'F',
      meaning: 'frequency term',
      expression: '20 * log(f)',
      unit: 'dB',
      decimals: 2,
      source: 'ITU-R P.525',
    },
    {
      symbol: 'R',
      tex: 'R',
      meaning: 'distance term',
      expression: '20 * log(r)',
      unit: 'dB',
      decimals: 2,
      source: 'ITU-R P.525',
    },
    {
      symbol: 'L',
      tex: 'L',
      meaning: 'free-space loss',
      expression: 'K + F + R',
      unit: 'dB',
      decimals: 2,
      source: 'ITU-R P.525',
    },
  ],
  compute: ({ frequencyGHz, slantRangeKm }) => {
    const loss = freeSpaceLoss({
      frequencyGHz: frequencyGHz as number,
      slantRangeKm: slantRangeKm as number,
    });
    return { F: loss.frequencyTermDb, R: loss.distanceTermDb, L: loss.lossDb };
  },
};

/** Plans for `link`. */
export const LINK_PLANS: readonly SolutionPlan[] = [FREE_SPACE_LOSS];
