/** Guards of the fields of a part that the levels do not need: supply, isolation, ratings, windows. */

import { DomainError, inRange } from '../../errors.js';
import { known, knownOnly } from '../../keys.js';
import { byFrequency } from './byFrequency.js';
import type { AmplifierPart, DistributionPart, SupplyNeed, SwitchPart } from './tree.js';
import { SUPPLY_NEED_KEYS, SWITCH_INPUT_KEYS } from './tree.js';

const LOSS = { minimum: 0, maximum: 200 };

/** Guards what a part or the source takes from the supply. */
export function checkedNeed(parameter: string, need: SupplyNeed): SupplyNeed {
  known(parameter, need, SUPPLY_NEED_KEYS);
  return {
    currentA: inRange(`${parameter}.currentA`, need.currentA, 0, 20, 'is it given in mA?'),
    minimumVoltageV: inRange(`${parameter}.minimumVoltageV`, need.minimumVoltageV, 0, 60),
  };
}

function checkAmplifier(part: AmplifierPart, path: string): void {
  inRange(`${path}.noiseFigureDb`, part.noiseFigureDb, 0, 60);
  if (part.maximumOutputDbuv !== undefined)
    inRange(`${path}.maximumOutputDbuv`, part.maximumOutputDbuv, 40, 160, 'is it given in dBm?');
  if (part.automaticGain === undefined) return;
  const { outputLevelDbuv, rangeDb } = known(`${path}.automaticGain`, part.automaticGain, {
    outputLevelDbuv: true,
    rangeDb: true,
  });
  inRange(`${path}.automaticGain.outputLevelDbuv`, outputLevelDbuv, 0, 160);
  inRange(`${path}.automaticGain.rangeDb`, rangeDb, 0, 60);
}

/** Guards the inputs of a switch: each with a name of its own. */
function checkInputs(inputs: NonNullable<SwitchPart['inputs']>, path: string): void {
  const names = new Set<string>();
  if (!Array.isArray(inputs) || inputs.length === 0)
    throw new DomainError({
      code: 'empty',
      parameter: `${path}.inputs`,
      received: inputs,
      allowed: 'a list of at least one input',
    });
  (inputs as NonNullable<SwitchPart['inputs']>).forEach((input, index) => {
    const at = `${path}.inputs[${index}]`;
    const { name, lossDb, isolationDb, feed } = knownOnly(at, input, SWITCH_INPUT_KEYS);
    if (typeof name !== 'string' || name.trim() === '' || names.has(name))
      throw new DomainError({
        code: name === undefined ? 'missing' : names.has(name) ? 'inconsistent' : 'malformed',
        parameter: `${at}.name`,
        received: name,
        allowed: 'a name of its own',
      });
    names.add(name);
    if (lossDb !== undefined) byFrequency(`${at}.lossDb`, lossDb, { minimum: -40, maximum: 200 });
    if (isolationDb !== undefined) byFrequency(`${at}.isolationDb`, isolationDb, LOSS);
    if (feed === undefined) return;
    const { voltageV, limitA } = known(`${at}.feed`, feed, { voltageV: true, limitA: true });
    inRange(`${at}.feed.voltageV`, voltageV, 0, 60);
    inRange(`${at}.feed.limitA`, limitA, 0, 20, 'is it given in mA?');
  });
}

/** Guards the fields that a part may carry besides its losses; a field left out is right. */
export function checkPart(part: DistributionPart, path: string): void {
  const field = (name: string, value: number | undefined, from: number, to: number): void => {
    if (value !== undefined) inRange(`${path}.${name}`, value, from, to);
  };
  switch (part.kind) {
    case 'amplifier':
      checkAmplifier(part, path);
      if (part.supply !== undefined) checkedNeed(`${path}.supply`, part.supply);
      break;
    case 'switch':
      if (part.inputs !== undefined) checkInputs(part.inputs, path);
      field('noiseFigureDb', part.noiseFigureDb, 0, 60);
      if (part.isolationDb !== undefined)
        byFrequency(`${path}.isolationDb`, part.isolationDb, LOSS);
      if (part.supply !== undefined) checkedNeed(`${path}.supply`, part.supply);
      break;
    case 'splitter':
      if (part.isolationDb !== undefined)
        byFrequency(`${path}.isolationDb`, part.isolationDb, LOSS);
      field('diodeDropV', part.diodeDropV, 0, 5);
      break;
    case 'tap':
      if (part.isolationDb !== undefined)
        byFrequency(`${path}.isolationDb`, part.isolationDb, LOSS);
      if (part.tapIsolationDb !== undefined)
        byFrequency(`${path}.tapIsolationDb`, part.tapIsolationDb, LOSS);
      break;
    case 'receiver':
      field('noiseFigureDb', part.noiseFigureDb, 0, 60);
      field('minimumLevelDbuv', part.minimumLevelDbuv, -50, 150);
      field('maximumLevelDbuv', part.maximumLevelDbuv, -50, 150);
      break;
    default:
      break;
  }
}
