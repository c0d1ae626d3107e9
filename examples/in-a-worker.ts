/** The message handler of a worker: columns in, columns out, buffers handed back without a copy. */

import { lookAnglesBatch } from 'slantpath/pointing';

interface Question {
  readonly latitudeDeg: Float64Array;
  readonly longitudeDeg: Float64Array;
  readonly orbitalLongitudeDeg: number;
}

/** In a worker: `onmessage = ({ data }) => postMessage(...handle(data))`. */
function handle(question: Question): [{ elevationDeg: Float64Array }, ArrayBufferLike[]] {
  const { elevationDeg } = lookAnglesBatch({ ...question, heightM: 0 });
  return [{ elevationDeg }, [elevationDeg.buffer]];
}

const [columns, transferred] = handle({
  latitudeDeg: Float64Array.of(46.4, -0.4, -29.6),
  longitudeDeg: Float64Array.of(9.6, 102, 141.2),
  orbitalLongitudeDeg: 101.5,
});
console.log([...columns.elevationDeg].map((value) => value.toFixed(2)).join(' '));
console.log(`${transferred.length} buffer handed over`);
