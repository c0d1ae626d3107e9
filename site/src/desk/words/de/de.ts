/** What the job page says, in German. */

import type { DeskWords } from '../words.js';
import { frame } from './frame.js';
import { keeping } from './keeping.js';
import { outlets } from './outlets.js';
import { peak } from './peak.js';
import { plan } from './plan.js';
import { says } from './says.js';
import { site } from './site.js';
import { visit } from './visit.js';

export const de: DeskWords = {
  ...frame,
  ...keeping,
  ...site,
  ...plan,
  ...outlets,
  ...peak,
  ...visit,
  ...says,
};
