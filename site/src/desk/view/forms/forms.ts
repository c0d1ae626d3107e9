/** The form of each stage. */

import type { StageName } from '../../state/stages.js';
import type { Desk } from '../desk.js';
import type { Part } from '../parts.js';
import { mountForm } from './mountForm.js';
import { outletsForm } from './outletsForm.js';
import { peakForm } from './peakForm.js';
import { placeForm } from './placeForm.js';
import { planForm } from './planForm.js';
import { rainForm } from './rainForm.js';
import { readingsForm } from './readingsForm.js';
import { sheetForm } from './sheetForm.js';
import { skylineForm } from './skylineForm.js';

const FORMS: Readonly<Record<StageName, (desk: Desk) => readonly Part[]>> = {
  place: placeForm,
  mount: mountForm,
  skyline: skylineForm,
  plan: planForm,
  rain: rainForm,
  outlets: outletsForm,
  peak: peakForm,
  readings: readingsForm,
  verdict: () => [],
  sheet: sheetForm,
};

/** The parts of a stage's form. */
export const formOf = (stage: StageName, desk: Desk): readonly Part[] => FORMS[stage](desk);
