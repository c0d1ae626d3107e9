/** A mount or a rain source after another kind was chosen. */

import type { Draft, LooseMount } from './draft.js';

/** The mount after another kind was chosen: what the new kind does not have is left out. */
export function ofKind(mount: LooseMount, kind: string): LooseMount {
  const { name: called, slots, reflector } = mount;
  return {
    kind,
    ...(called === undefined ? {} : { name: called }),
    ...(slots === undefined ? {} : { slots }),
    ...(reflector === undefined ? {} : { reflector }),
  } as LooseMount;
}

/** The rain of another source; what the old one held is not part of the new one. */
export function rainOf(draft: Draft, source: string): Draft {
  const { rain, ...rest } = draft;
  const height = rain?.isothermHeightKm;
  const kept = height === undefined ? {} : { isothermHeightKm: height };
  if (source === 'measured' || source === 'climate-grid')
    return { ...rest, rain: { source, ...kept } } as Draft;
  if (source === 'monthly-normals')
    return {
      ...rest,
      rain: { source, rainfallMm: Array(12).fill(''), temperatureC: Array(12).fill(''), ...kept },
    } as Draft;
  return rest;
}
