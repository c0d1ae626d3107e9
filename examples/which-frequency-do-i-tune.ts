/** The tuning table of three carriers behind a universal Ku unit, and what comes where the tone is wrong. */

import { carrierTakenInstead, oscillatorErrorKHz, tuningTable } from 'slantpath/tuning';

const carriers = [
  { name: 'A', frequencyGHz: 11.938, bandwidthMHz: 33, polarization: 'horizontal' },
  { name: 'B', frequencyGHz: 10.788, bandwidthMHz: 36, polarization: 'vertical' },
  { name: 'C', frequencyGHz: 12.692, bandwidthMHz: 33, polarization: 'vertical' },
] as const;

for (const row of tuningTable({ plan: 'ku-universal', carriers }))
  console.log(
    row.kind === 'outside-the-unit'
      ? `${row.name}: no band of the unit`
      : `${row.name}: ${row.intermediateFrequencyMHz} MHz, ${row.supplyV} V, tone ${row.tone}, ${row.kind}`,
  );

const instead = carrierTakenInstead({
  frequencyGHz: 11.938,
  localOscillatorGHz: 10.6,
  actualLocalOscillatorGHz: 9.75,
});
console.log(`A without the tone: ${instead} GHz comes instead`);

const errorKHz = oscillatorErrorKHz({ localOscillatorGHz: 10.6, stabilityPpm: 150 });
console.log(`The oscillator may be off by ${errorKHz.toFixed(0)} kHz`);

const [cBand] = tuningTable({
  plan: 'c-5150',
  carriers: [{ name: 'D', frequencyGHz: 3.84, bandwidthMHz: 36, polarization: 'right-hand' }],
});
if (cBand && cBand.kind !== 'outside-the-unit')
  console.log(`D: ${cBand.intermediateFrequencyMHz} MHz, inverted: ${cBand.spectrumInverted}`);
