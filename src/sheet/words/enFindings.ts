/** English words for findings and for what to do about them. */

import type { CodeWords } from './codes.js';

/** English words for findings and actions. */
export const enFindings: Pick<CodeWords, 'findings' | 'actions'> = {
  findings: {
    'slot-below-horizon': { says: 'the slot stands below the horizon', amount: 'elevation' },
    'view-blocked': { says: 'something stands in the beam', amount: 'free at the edge' },
    'view-doubtful': {
      says: 'free or not, within the doubt of compass and clinometer',
      amount: 'free at the edge, worst case',
    },
    'view-distance-needed': {
      says: 'free only if what was sighted stands far enough off',
      amount: 'further than',
    },
    'view-not-sighted': { says: 'the skyline is not known in this direction' },
    'compass-not-usable': {
      says: 'a compass cannot be trusted here',
      amount: 'uncertainty of the declination',
    },
    'declination-outside-dates': { says: 'the day lies outside the magnetic model' },
    'mount-not-given': { says: 'the mount or its reflector is not given' },
    'slots-too-far-apart': { says: 'the slots stand too far apart for one reflector' },
    'feeds-collide': { says: 'two feeds need the same place', amount: 'overlap' },
    'loss-beyond-model': {
      says: 'the loss lies beyond what the model holds for',
      amount: 'loss',
      limit: 'holds to',
    },
    'motor-does-not-reach': { says: 'the motor does not reach the slot', amount: 'beyond by' },
    'mount-error-too-large': {
      says: 'the mount’s own error costs too much',
      amount: 'loss',
      limit: 'allowed',
    },
    'no-unit-for-carrier': { says: 'no receiving unit serves this carrier' },
    'no-line-for-carrier': { says: 'no line brings this carrier to an outlet' },
    'intermediate-frequency-wrong': {
      says: 'the frequency on the cable is not the one worked out',
      amount: 'given',
      limit: 'worked out',
    },
    'intermediate-frequency-outside': {
      says: 'the frequency on the cable lies where no receiver takes it',
      amount: 'frequency',
      limit: 'end of the range',
    },
    'carrier-outside-receiver': {
      says: 'the carrier lies outside what the receivers take',
      amount: 'at',
      limit: 'they end at',
    },
    'carrier-cut-off-by-receiver': {
      says: 'part of the carrier lies outside what the receivers take',
      amount: 'at',
      limit: 'they end at',
    },
    'image-conflict': {
      says: 'another carrier of the antenna comes out at the same place on the cable, as an image',
      amount: 'they share',
    },
    'mobile-band-on-cable': {
      says: 'phones or masts may send on the frequency that this carrier has on the cable',
      amount: 'they share',
    },
    'mobile-band-in-beam': {
      says: 'phones or masts may send on the frequency of this carrier itself',
      amount: 'they share',
    },
    'user-bands-collide': {
      says: 'two receivers disturb each other: their user bands overlap, or are one',
      amount: 'they share',
    },
    'user-band-outside-receiver': {
      says: 'the user band lies outside what the receivers take',
      amount: 'by',
    },
    'receiver-without-user-band': { says: 'the receiver has no user band' },
    'carriers-collide-on-cable': {
      says: 'two carriers need the same place on the cable',
      amount: 'they share',
    },
    'terrestrial-level-outside-limit': {
      says: 'terrestrial signals outside their limits',
      amount: 'planned',
      limit: 'limit',
    },
    'input-leaks': {
      says: 'another input of the switch leaks into the carrier',
      amount: 'above it',
      limit: 'the mode needs',
    },
    'oscillator-beyond-lock-range': {
      says: 'the local oscillator may be further off than the receivers look for a carrier',
      amount: 'off by up to',
      limit: 'they look for',
    },
    'pointing-loss': { says: 'pointing loss on this axis', amount: 'loss', limit: 'target' },
    'pointing-loss-together': {
      says: 'pointing loss of both axes together',
      amount: 'loss',
      limit: 'target',
    },
    'peak-not-found': { says: 'the samples show no peak' },
    'not-main-lobe': {
      says: 'this is not the main lobe',
      amount: 'width',
      limit: 'main lobe by theory',
    },
    'peak-not-assured': {
      says: 'too few places were read, or not on both flanks, to rely on this loss',
      amount: 'loss at most',
      limit: 'target',
    },
    'main-lobe-not-proven': {
      says: 'the samples do not tell the main lobe from a side lobe',
      amount: 'width',
      limit: 'main lobe by theory',
    },
    'axis-not-peaked': { says: 'this axis was not peaked' },
    'feed-turned-off': { says: 'the feed was left turned off', amount: 'off by', limit: 'allowed' },
    'polarization-not-proven': { says: 'the polarization is not proven by an isolation' },
    'reading-outside-limit': { says: 'outside its limit', amount: 'read', limit: 'limit' },
    'reading-undecided': {
      says: 'too near to its limit to decide',
      amount: 'probability that it conforms',
      limit: 'asked for',
    },
    'reading-in-rain': {
      says: 'outside its limit, but read in rain or snow',
      amount: 'read',
      limit: 'limit',
    },
    'reading-below-plan': { says: 'below the plan', amount: 'off by' },
    'reading-above-plan': { says: 'above the plan', amount: 'off by' },
    'readings-all-off-plan': {
      says: 'all readings stand off the plan by about the same',
      amount: 'mean',
    },
    'reading-without-limit': { says: 'no limit is set for what was read' },
    'reading-above-ceiling': {
      says: 'the instrument shows more than it can by its own figure',
      amount: 'read',
    },
    'reading-missing': { says: 'not read' },
    'no-cause-fits': {
      says: 'no single known cause fits: several faults, or one that is not in the list',
    },
    'changed-since-last-visit': {
      says: 'readings changed since the visit before',
      amount: 'mean change',
    },
    'promise-missed': {
      says: 'the plan misses the promise',
      amount: 'fails for',
      limit: 'promised',
    },
    'promise-doubtful': {
      says: 'the plan keeps the promise with too little certainty',
      amount: 'probability',
      limit: 'wanted',
    },
    'planned-level-outside-limit': {
      says: 'the planned level lies outside the limits',
      amount: 'planned',
      limit: 'limit',
    },
    'planned-ratio-below-limit': {
      says: 'the planned ratio lies below its limit',
      amount: 'planned',
      limit: 'limit',
    },
    'amplifier-overdriven': { says: 'the amplifier is driven too far', amount: 'too much' },
    'supply-too-low': { says: 'too little voltage arrives', amount: 'arrives' },
    'supply-too-much-current': { says: 'more current than the feed can give', amount: 'drawn' },
    'supply-blocked': { says: 'a part lets no supply through' },
    'supply-misread': {
      says: 'the voltage that arrives means the other polarization, or none',
      amount: 'arrives',
    },
    'receiver-level-too-low': {
      says: 'the receiver gets less than its lowest level',
      amount: 'planned',
      limit: 'lowest',
    },
    'receiver-level-too-high': {
      says: 'the receiver gets more than its highest level',
      amount: 'planned',
      limit: 'highest',
    },
    'transmit-mask-exceeded': { says: 'the off-axis mask is exceeded', amount: 'by' },
    'transmit-eirp-too-high': {
      says: 'more EIRP than the network allows',
      amount: 'EIRP',
      limit: 'highest',
    },
    'transmit-eirp-too-low': {
      says: 'less EIRP than the network asks for',
      amount: 'EIRP',
      limit: 'lowest',
    },
    'transmit-back-off-too-small': {
      says: 'the amplifier is driven too close to saturation',
      amount: 'back-off',
      limit: 'least',
    },
    'transmit-test-missing': { says: 'the cross-polar test of what is sent was not read' },
    'field-not-given': { says: 'not given, so this part is not judged' },
    'outside-stated-range': { says: 'outside the range that a recommendation states' },
    'transmit-drive-wrong': {
      says: 'drive level and gain give another output than planned',
      amount: 'they give',
      limit: 'planned',
    },
    'transmit-compressed': {
      says: 'planned above the 1 dB compression that was measured',
      amount: 'planned',
      limit: 'compressed at',
    },
    'transmit-mask-not-judged': {
      says: 'the mask is not judged: symbol rate or pattern say nothing at its angles',
    },
    'uplink-fade-left': {
      says: 'power control cannot make up for the fade of the uplink',
      amount: 'left',
    },
    'cross-polar-near-noise': {
      says: 'the leak cannot be told from the noise, so that only a least isolation is known',
      amount: 'at least',
      limit: 'limit',
    },
    'wind-costs-pointing': {
      says: 'at the speed of the wind asked for the mast bends too far',
      amount: 'loss',
      limit: 'allowed',
    },
    'wind-load-for-engineer': {
      says: 'load and moment of the wind are told; whether mount, mast, wall and roof bear them is for a structural engineer',
    },
    'wind-outside-stated-range': {
      says: 'outside what the coefficients hold for, so that no load is told',
    },
  },
  actions: {
    none: '',
    'choose-another-slot': 'Choose another slot.',
    'choose-another-place': 'Choose another place or clear the view.',
    'sight-the-horizon': 'Sight the skyline there.',
    'sight-again': 'Sight again, more exactly.',
    'measure-the-distance': 'Measure how far off it stands.',
    'use-the-sun': 'Take north from the Sun’s shadow.',
    'give-the-field': 'Give it in the job file.',
    'use-another-mount': 'Use another mount or another reflector.',
    'move-the-feeds': 'Use smaller feeds or a bar that holds them apart.',
    'use-another-unit': 'Use another receiving unit.',
    'correct-the-frequency': 'Correct the frequency.',
    'give-the-receivers-range': 'Look up what the receivers tune over and give it.',
    'give-another-user-band': 'Give each receiver a user band of its own.',
    'screen-the-cable':
      'Use a well-screened cable (class A or better) and tight connectors; if the carrier is weak, look at its spectrum with a phone in use near by.',
    'look-at-the-spectrum':
      'Look at the spectrum from the unit before the mount is fixed; a filter before the unit keeps the mast out.',
    'put-a-filter': 'Put a filter before the unit, or use one that keeps the image out.',
    'change-the-distribution': 'Change the distribution.',
    'peak-again': 'Peak again.',
    'find-the-main-lobe': 'Find the main lobe: go over the next lobes to both sides.',
    'peak-the-axis': 'Peak this axis.',
    'turn-the-feed': 'Turn the feed to its value.',
    'read-it': 'Read it.',
    'read-again': 'Read again, or with a better instrument.',
    'find-the-cause': 'Find the cause.',
    'check-instrument-and-carrier': 'Check the instrument and which carrier it reads.',
    'larger-reflector': 'Use a larger reflector or a more robust mode.',
    'lower-the-gain': 'Lower the gain before it.',
    'raise-the-supply': 'Raise the supply or shorten the cable.',
    'reduce-the-power': 'Reduce the power.',
    'raise-the-power': 'Raise the power.',
    'set-a-limit': 'Set a limit.',
    'raise-the-test-carrier':
      'Ask the control centre for a stronger test carrier or a narrower bandwidth, and read again.',
    'ask-an-engineer': 'Ask a structural engineer.',
    'use-a-stiffer-mast': 'Use a stiffer or shorter mast, or stay it.',
  },
};
