/** The steps of commissioning a terminal that transmits, in words. */

import { type CommissioningStep, commissioningSteps } from 'slantpath/transmit';
import type { Table } from './example.js';

const STEPS: Readonly<Record<CommissioningStep['step'], string>> = {
  'transmitter-locked-out': 'transmitter locked out',
  'mount-and-bond': 'mount the antenna and bond it',
  'clear-view': 'clear view along the arc',
  'receive-peak': 'peak on the received signal',
  'receive-polarization': 'turn the feed by the received signal',
  'beam-area-closed': 'close off the area before the antenna',
  'ask-for-access': 'ask for access',
  'low-power-carrier': 'carrier at low power, without modulation',
  'cross-polar-test': 'test of the other polarization',
  'raise-to-full': 'raise to full power',
  'compression-check': 'check for compression',
  'off-axis-check': 'check what goes past the satellite',
  'carrier-off': 'carrier off',
  'written-release': 'release in writing',
};
const LEAVE = {
  nobody: '–',
  'site-owner': 'owner of the site',
  'control-centre': 'control centre of the operator',
} as const;
/** The order of the work, and who must have said yes. */
export function orderOfWork(): Table {
  return {
    caption: 'Order of the work',
    columns: ['Step', 'What', 'Who must have said yes', 'Radiates'],
    rows: commissioningSteps.map(({ step, leaveOf, radiates }, index) => [
      String(index + 1),
      STEPS[step],
      LEAVE[leaveOf],
      radiates ? 'yes' : 'no',
    ]),
  };
}
