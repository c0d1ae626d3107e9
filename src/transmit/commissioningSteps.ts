/** The order of work at a two-way station, with the points at which the technician stops and asks. */

/** One step of the work. */
export interface CommissioningStep {
  /** What is done, as a fixed word. */
  readonly step:
    | 'transmitter-locked-out'
    | 'mount-and-bond'
    | 'clear-view'
    | 'receive-peak'
    | 'receive-polarization'
    | 'beam-area-closed'
    | 'ask-for-access'
    | 'low-power-carrier'
    | 'cross-polar-test'
    | 'raise-to-full'
    | 'compression-check'
    | 'off-axis-check'
    | 'carrier-off'
    | 'written-release';
  /** Who must have said yes before this step: nobody, the site's owner, or the operator's control centre. */
  readonly leaveOf: 'nobody' | 'site-owner' | 'control-centre';
  /** Whether the station radiates in this step. */
  readonly radiates: boolean;
}

const step = (
  name: CommissioningStep['step'],
  leaveOf: CommissioningStep['leaveOf'],
  radiates = false,
): CommissioningStep => ({ step: name, leaveOf, radiates });

/**
 * Steps of commissioning a two-way station in their order.
 *
 * Source: common practice of the trade. The operator's own procedure and the local radio licence come before it.
 */
export const commissioningSteps: readonly CommissioningStep[] = [
  step('transmitter-locked-out', 'nobody'),
  step('mount-and-bond', 'site-owner'),
  step('clear-view', 'nobody'),
  step('receive-peak', 'nobody'),
  step('receive-polarization', 'nobody'),
  step('beam-area-closed', 'site-owner'),
  step('ask-for-access', 'control-centre'),
  step('low-power-carrier', 'control-centre', true),
  step('cross-polar-test', 'control-centre', true),
  step('raise-to-full', 'control-centre', true),
  step('compression-check', 'control-centre', true),
  step('off-axis-check', 'control-centre', true),
  step('carrier-off', 'nobody'),
  step('written-release', 'control-centre'),
];
