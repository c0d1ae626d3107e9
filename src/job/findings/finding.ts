/** A finding: what is wrong, open, not read or worth knowing; where, how bad, and what to do. */

import type { ReadingQuantity } from '../results/verdicts.js';

/** How much a finding weighs, the worst first. */
const SEVERITIES = ['does-not-conform', 'undecided', 'incomplete', 'note'] as const;

/** How much a finding weighs: `does-not-conform`, `undecided`, `incomplete` (something was not read or not given), `note`. */
export type Severity = (typeof SEVERITIES)[number];

/** The worst of all findings; `conforms` where none weighs more than a note. */
export type Outcome = Exclude<Severity, 'note'> | 'conforms';

/** What a finding says, as a fixed word. */
export type FindingCode =
  /** The slot stands below the horizon; amount: its elevation. */
  | 'slot-below-horizon'
  /** Something stands in the beam; amount: free distance of the reflector's edge, negative. */
  | 'view-blocked'
  /** Free or not within the doubt of compass and clinometer; amount: free distance in the worst case. */
  | 'view-doubtful'
  /** Free only if what was sighted stands further off than the amount. */
  | 'view-distance-needed'
  /** Nothing is known of the skyline in that direction. */
  | 'view-not-sighted'
  /** The horizontal field is too weak for a compass here. */
  | 'compass-not-usable'
  /** The day lies outside the magnetic model. */
  | 'declination-outside-dates'
  /** The mount or its reflector is not given. */
  | 'mount-not-given'
  /** Slots too far apart for one reflector. */
  | 'slots-too-far-apart'
  /** Feeds need the same place; names: the two slots; amount: their overlap. */
  | 'feeds-collide'
  /** Loss of a shared reflector, or of a mount's error, beyond what the model holds for; amount: the loss. */
  | 'loss-beyond-model'
  /** The motor does not reach the slot; amount: degrees beyond its limit. */
  | 'motor-does-not-reach'
  /** The mount's own error takes more than the pointing loss allowed; amount: the loss. */
  | 'mount-error-too-large'
  /** No receiving unit serves the carrier. */
  | 'no-unit-for-carrier'
  /** No line brings the carrier's unit to an outlet. */
  | 'no-line-for-carrier'
  /** The frequency on the cable that the file gives is not the one worked out (limit). */
  | 'intermediate-frequency-wrong'
  /** The frequency on the cable lies where no receiver takes it; limit: the nearer end of 5 to 3000 MHz. */
  | 'intermediate-frequency-outside'
  /** The carrier lies outside what the receivers tune over (undecided where the job does not say what that is); limit: the nearer end. */
  | 'carrier-outside-receiver'
  /** Part of the carrier lies outside it. */
  | 'carrier-cut-off-by-receiver'
  /** Another carrier of the antenna comes out at the same place on the cable, as an image; names: which; amount: how much they share. */
  | 'image-conflict'
  /** A band of phones and masts lies on the carrier's place on the cable, where bad screens let it in; names: the bands; amount: the widest overlap. */
  | 'mobile-band-on-cable'
  /** The same at the frequency of the carrier itself: it comes in through the antenna. */
  | 'mobile-band-in-beam'
  /** Two user bands overlap, or one was given away twice; names: their numbers; amount: the overlap. */
  | 'user-bands-collide'
  /** A user band lies outside what the receivers tune over; amount: how far. */
  | 'user-band-outside-receiver'
  /** A receiver on a cable with user bands has none. */
  | 'receiver-without-user-band'
  /** With bands side by side two carriers need the same place on the cable; amount: the overlap. */
  | 'carriers-collide-on-cable'
  /** Terrestrial signals outside their limits at an outlet. */
  | 'terrestrial-level-outside-limit'
  /** Another input of the switch leaks into the carrier; names: which; amount: how far the carrier stands above it, limit: what it needs. */
  | 'input-leaks'
  /** The local oscillator may be further off than a receiver looks for a carrier. */
  | 'oscillator-beyond-lock-range'
  /** Pointing loss on one axis over the target (does-not-conform) or not surely under it (undecided). */
  | 'pointing-loss'
  /** The same for both axes together. */
  | 'pointing-loss-together'
  /** The samples show no peak. */
  | 'peak-not-found'
  /** The lobe has not the width of the main lobe; amount: its width, limit: theory. */
  | 'not-main-lobe'
  /** The bound of the pointing loss is within the target, but its 95 % are not assured. */
  | 'peak-not-assured'
  /** The samples do not tell the main lobe from a side lobe. */
  | 'main-lobe-not-proven'
  /** The axis was not peaked. */
  | 'axis-not-peaked'
  /** The feed was left turned off; amount: degrees off, limit: what costs the isolation. */
  | 'feed-turned-off'
  /** Isolation was not read, or no limit is set for it. */
  | 'polarization-not-proven'
  /** A reading outside its limit; amount: how far, and its uncertainty. */
  | 'reading-outside-limit'
  /** A reading within its guard band; amount: probability that the limit is kept. */
  | 'reading-undecided'
  /** Outside its limit or undecided, but rain or snow lay on the path. */
  | 'reading-in-rain'
  /** The reading conforms, yet stands below the plan; amount: how far. */
  | 'reading-below-plan'
  /** The reading stands above the plan; amount: how far. */
  | 'reading-above-plan'
  /** All readings of a quantity stand off the plan by about the same; amount: the mean. */
  | 'readings-all-off-plan'
  /** No limit is set for what was read. */
  | 'reading-without-limit'
  /** An MER above the ceiling that the job gives for the instrument; one of the two is wrong. */
  | 'reading-above-ceiling'
  /** A place was not read. */
  | 'reading-missing'
  /** No known cause fits the readings: several faults, or one that is not in the list. */
  | 'no-cause-fits'
  /** The readings of a service call stand off those of the visit before; amount: the mean change. */
  | 'changed-since-last-visit'
  /** The plan misses the promise; amount: share of the year, limit: promised. */
  | 'promise-missed'
  /** The plan keeps the promise with too little probability; amount: that probability, limit: wanted. */
  | 'promise-doubtful'
  /** A level planned outside the limits of the job; amount: the level, limit: the limit. */
  | 'planned-level-outside-limit'
  /** A ratio planned below the limit of the job. */
  | 'planned-ratio-below-limit'
  /** An amplifier driven too far; amount: by how much. */
  | 'amplifier-overdriven'
  /** Too little voltage at a part or unit; amount: volts that arrive. */
  | 'supply-too-low'
  /** The feed cannot give the current that is asked; amount: amperes. */
  | 'supply-too-much-current'
  /** A part lets no supply through. */
  | 'supply-blocked'
  /** The voltage that arrives at the unit means the other polarization, or none. */
  | 'supply-misread'
  /** A receiver gets less (more) than its own lowest (highest) level. */
  | 'receiver-level-too-low'
  | 'receiver-level-too-high'
  /** The off-axis mask is exceeded; amount: dB over it, limit: angle is in `names`. */
  | 'transmit-mask-exceeded'
  /** EIRP above (below) what the network asks. */
  | 'transmit-eirp-too-high'
  | 'transmit-eirp-too-low'
  /** Drive level and gain give another output than planned; amount: that output, limit: the planned one. */
  | 'transmit-drive-wrong'
  /** The planned output lies above the 1 dB compression that was measured; limit: the output there. */
  | 'transmit-compressed'
  /** The pattern, the symbol rate or the size says nothing at the angles of the mask. */
  | 'transmit-mask-not-judged'
  /** Power control cannot make up for the fade of the uplink; amount: what is left. */
  | 'uplink-fade-left'
  /** The leak of the cross-polar test cannot be told from the noise; amount: the least isolation. */
  | 'cross-polar-near-noise'
  /** The wind bends the mast at the speed asked for; amount: loss of pointing, limit: what is allowed. */
  | 'wind-costs-pointing'
  /** Load and moment are told; who bears them is for a structural engineer. */
  | 'wind-load-for-engineer'
  /** Outside what the coefficients hold for, so no load is told; names: the field. */
  | 'wind-outside-stated-range'
  /** The amplifier is driven closer to saturation than allowed; amount: back-off, limit: least. */
  | 'transmit-back-off-too-small'
  /** The cross-polar test of a transmitted carrier was not read. */
  | 'transmit-test-missing'
  /** A field is not given without which a part of the job is not judged. */
  | 'field-not-given'
  /** Fields outside the range that a recommendation states; names: the fields. */
  | 'outside-stated-range';

/** What to do, as a fixed word; `none` for a note that asks for nothing. */
export type FindingAction =
  | 'none'
  | 'choose-another-slot'
  | 'choose-another-place'
  | 'sight-the-horizon'
  | 'sight-again'
  | 'measure-the-distance'
  | 'use-the-sun'
  | 'give-the-field'
  | 'use-another-mount'
  | 'move-the-feeds'
  | 'use-another-unit'
  | 'correct-the-frequency'
  | 'give-the-receivers-range'
  | 'put-a-filter'
  | 'screen-the-cable'
  | 'look-at-the-spectrum'
  | 'give-another-user-band'
  | 'change-the-distribution'
  | 'peak-again'
  | 'find-the-main-lobe'
  | 'peak-the-axis'
  | 'turn-the-feed'
  | 'read-it'
  | 'read-again'
  | 'find-the-cause'
  | 'check-instrument-and-carrier'
  | 'larger-reflector'
  | 'lower-the-gain'
  | 'raise-the-supply'
  | 'reduce-the-power'
  | 'raise-the-power'
  | 'set-a-limit'
  | 'raise-the-test-carrier'
  | 'ask-an-engineer'
  | 'use-a-stiffer-mast';

/** Where a finding belongs; what is left out is meant as a whole. */
export interface FindingPlace {
  readonly slot?: string;
  readonly carrier?: string;
  readonly polarization?: string;
  readonly quantity?: ReadingQuantity;
  /** `antenna`, or the name of an outlet or receiver. */
  readonly testPoint?: string;
  readonly axis?: 'azimuth' | 'elevation';
  readonly mount?: string;
  readonly unit?: string;
  /** Part of the distribution. */
  readonly part?: string;
  /** Visit, from 0. */
  readonly visit?: number;
  /** Field of the job file. */
  readonly field?: string;
  /** Names of several of a kind. */
  readonly names?: readonly string[];
}

/** How bad. */
export interface FindingAmount {
  /** The value. */
  readonly value: number;
  /** Its unit; empty for a probability. */
  readonly unit:
    | 'dB'
    | 'dBuV'
    | 'dBW'
    | 'deg'
    | 'mm'
    | 'm'
    | '%'
    | 'V'
    | 'A'
    | 'MHz'
    | 'kHz'
    | 'dBm'
    | '';
  /** What it is held against, in the same unit; `null` where nothing is. */
  readonly limit: number | null;
  /** Standard uncertainty of the value; `null` where it is not known. */
  readonly standardUncertainty: number | null;
}

/** A finding. */
export interface Finding {
  /** What it says. */
  readonly code: FindingCode;
  /** How much it weighs. */
  readonly severity: Severity;
  /** Where. */
  readonly where: FindingPlace;
  /** How bad; `null` where no number says it. */
  readonly amount: FindingAmount | null;
  /** What to do. */
  readonly action: FindingAction;
}

/** An amount. */
export function amount(
  value: number,
  unit: FindingAmount['unit'],
  limit: number | null = null,
  standardUncertainty: number | null = null,
): FindingAmount {
  return { value, unit, limit, standardUncertainty };
}

/** A finding, field by field. */
export function finding(
  code: FindingCode,
  severity: Severity,
  where: FindingPlace,
  size: FindingAmount | null,
  action: FindingAction,
): Finding {
  return { code, severity, where, amount: size, action };
}

/** The worst of all findings. */
export function outcomeOf(findings: readonly Finding[]): Outcome {
  for (const severity of SEVERITIES)
    if (severity !== 'note' && findings.some((each) => each.severity === severity)) return severity;
  return 'conforms';
}

/** Findings with the worst first, otherwise in their order. */
export function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  return SEVERITIES.flatMap((severity) => findings.filter((each) => each.severity === severity));
}
