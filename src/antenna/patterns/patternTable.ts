/** A measured pattern: gain at angles, straight lines in decibels between them. */

import { DomainError, finite, inRange, object } from '../../errors.js';
import { inRow, valueAt } from '../../numeric/columns.js';
import type { Segment, Shape } from './patternShape.js';

/** Stretches between the samples of a table; nothing is said beyond its ends. */
export function shapeTable(table: {
  readonly offAxisDeg: readonly number[];
  readonly gainDbi: readonly number[];
}): Shape {
  const angles = object('offAxisDeg', table.offAxisDeg);
  const gains = object('gainDbi', table.gainDbi);
  if (!(angles.length >= 2))
    throw new DomainError({
      code: 'too-few',
      parameter: 'offAxisDeg',
      received: angles,
      allowed: 'at least two angles',
    });
  if (gains.length !== angles.length)
    throw new DomainError({
      code: 'length-mismatch',
      parameter: 'gainDbi',
      received: gains,
      allowed: `of the same length as offAxisDeg, ${angles.length}`,
    });
  const segments: Segment[] = [];
  for (let index = 0; index < angles.length; index++) {
    const fromDeg = inRange('offAxisDeg', inRow(angles, index), 0, 180, undefined, index);
    const fromDbi = finite('gainDbi', inRow(gains, index), undefined, index);
    const previous = index === 0 ? Number.NEGATIVE_INFINITY : valueAt(angles, index - 1);
    if (fromDeg <= previous)
      throw new DomainError({
        code: 'inconsistent',
        parameter: 'offAxisDeg',
        received: fromDeg,
        allowed: 'above the angle before it',
        index,
      });
    const toDeg = angles[index + 1];
    const toDbi = gains[index + 1];
    // The last sample begins no stretch; a hole is named in its own turn.
    if (toDeg === undefined || toDbi === undefined) continue;
    segments.push({
      fromDeg,
      region: index === 0 && fromDeg === 0 ? 'main-lobe' : 'side-lobes',
      gainDbi: (phi) => fromDbi + ((toDbi - fromDbi) * (phi - fromDeg)) / (toDeg - fromDeg),
    });
  }
  return {
    edition: 'measured table',
    outsideStatedRange: [],
    segments,
    endDeg: valueAt(angles, angles.length - 1),
  };
}
