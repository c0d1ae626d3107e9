/** One instruction at a time: a search for the peak on a thread with play, on a simulated lobe. */

import {
  afterMove,
  afterReading,
  beginPeakSearch,
  nextMove,
  simulatedReadings,
} from 'slantpath/peaking';

const peakTurns = 1.7;
const beamwidthTurns = 2.2;

let search = beginPeakSearch({
  beamwidthTurns,
  standardDeviationDb: 0.3,
  levelStepDb: 0.5,
  backlashTurns: 0.25,
});

for (let count = 1; count <= 20; count++) {
  const move = nextMove(search);
  if (move.kind === 'done') {
    console.log(`done: on the peak, at most ${move.lossUpper95Db.toFixed(3)} dB lost`);
    break;
  }
  if (move.kind === 'stop') {
    console.log(`stop: ${move.reason}`);
    break;
  }
  const legs = move.legsTurns.map(
    (turns) => `${turns > 0 ? 'up' : 'down'} ${Math.abs(turns).toFixed(2)}`,
  );
  search = afterMove(search, move);
  if (move.kind === 'go-to-peak') {
    console.log(`turn ${legs.join(', then ')}: the peak, at ${move.toTurns.toFixed(2)} turns`);
    continue;
  }
  // Here a technician would read the level; one turn is one degree on this bench.
  const [levelDbm = 0] = simulatedReadings({
    offsetDeg: [search.placeTurns - peakTurns],
    lobe: { beamwidthDeg: beamwidthTurns },
    peakLevelDbm: -38,
    standardDeviationDb: 0.3,
    levelStepDb: 0.5,
    seed: 40 + count,
  });
  search = afterReading(search, levelDbm);
  console.log(
    `${legs.length === 0 ? 'stay' : `turn ${legs.join(', then ')}`}, read ${levelDbm.toFixed(1)} dBm`,
  );
}
console.log(`${search.readings.length} readings, ${search.turnsMade.toFixed(1)} turns`);
