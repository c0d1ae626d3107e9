/** German for `where-is-the-satellite`. */

import type { Pairs } from '../../lib/language/language.js';

const pairs: Pairs = {
  'The slot at {} is straight overhead: any azimuth serves.':
    'Die Position {} steht genau im Zenit: jeder Azimut ist recht.',
  'The slot at {} stands {}° above the horizon at azimuth {}° ({}).':
    'Die Position {} steht {}° über dem Horizont, Azimut {}° ({}).',
  'The slot at {} is hidden by the Earth, {}° below the horizon at azimuth {}° ({}).':
    'Die Position {} ist von der Erde verdeckt, {}° unter dem Horizont, Azimut {}° ({}).',
  'The slot at {} and the arc of all slots over the horizon':
    'Die Position {} und der Bogen aller Positionen über dem Horizont',
  'Slot along the arc': 'Position auf dem Bogen',
  'Compass bearing to the slot at {}, from true north':
    'Peilung zur Position {}, ab geografisch Nord',
};

export default pairs;
