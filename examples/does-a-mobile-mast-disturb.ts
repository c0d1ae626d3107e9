/** Which of three carriers lie under terrestrial bands, and how much leaks into a cable near three senders. */

import { exposedCarriers, ingressLevel, type ScreeningClass } from 'slantpath/ingress';

const carriers = [
  { name: 'A', frequencyGHz: 11.603, bandwidthMHz: 33, localOscillatorGHz: 9.75 },
  { name: 'B', frequencyGHz: 11.938, bandwidthMHz: 33, localOscillatorGHz: 10.6 },
  { name: 'C', frequencyGHz: 12.545, bandwidthMHz: 33, localOscillatorGHz: 10.6 },
];
for (const { carrier, band, sender, way, overlapMHz } of exposedCarriers({ carriers }))
  console.log(`${carrier}: ${band}, ${sender}, ${way}, ${overlapMHz} MHz`);

const senders = {
  mast: { eirpDbm: 60, distanceM: 120, frequencyMHz: 1850 },
  handset: { eirpDbm: 23, distanceM: 1, frequencyMHz: 1940 },
  'cordless phone': { eirpDbm: 24, distanceM: 2, frequencyMHz: 1890 },
};
for (const [name, sender] of Object.entries(senders))
  for (const screeningClass of ['A+', 'A', 'B'] satisfies ScreeningClass[]) {
    const { ingressDbuv, wantedAboveIngressDb } = ingressLevel({
      ...sender,
      screeningClass,
      wantedDbuv: 60,
    });
    console.log(
      `${name}, class ${screeningClass}: ${ingressDbuv.toFixed(1)} dBuV, ${wantedAboveIngressDb?.toFixed(1)} dB below the wanted level`,
    );
  }
