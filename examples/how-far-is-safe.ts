/** How far in front of a transmitting reflector the limit of exposure is kept. */

import { powerDensity, safeDistance } from 'slantpath/antenna';

const terminal = { diameterM: 2.4, frequencyGHz: 14.25, powerW: 40 };

for (const standard of ['ICNIRP 2020 whole body', 'ICNIRP 2020 local', 'FCC 1.1310'] as const)
  for (const group of ['public', 'occupational'] as const) {
    const safe = safeDistance(terminal, { standard, group });
    const limit = `${standard}, ${group}: ${safe.limit.powerDensityWPerM2.toFixed(1)} W/m2`;
    switch (safe.kind) {
      case 'distance':
        console.log(`${limit} kept beyond ${safe.distanceM.toFixed(1)} m`);
        break;
      case 'at-the-surface':
        console.log(`${limit} kept in the beam, exceeded at the surface of the reflector`);
        break;
      case 'not-reached':
        console.log(`${limit} not reached anywhere in front of the reflector`);
        break;
    }
  }

for (const distanceM of [1, 50, 100, 200, 400]) {
  const { region, powerDensityWPerM2 } = powerDensity(terminal, distanceM);
  console.log(`${distanceM} m: at most ${powerDensityWPerM2.toFixed(2)} W/m2 (${region})`);
}
console.log(powerDensity(terminal, 10).cautions.join('\n'));
