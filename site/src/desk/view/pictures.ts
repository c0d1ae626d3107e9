/** The pictures of the stages. */

import type { JobRecord } from 'slantpath/job';
import type { Figure } from '../../lib/example.js';
import { own } from '../../lib/language/language.js';
import { arcOver } from '../../lib/pictures/arc.js';
import { linePlot } from '../../lib/pictures/plot.js';
import { sky } from '../../lib/pictures/sky.js';
import type { StageName } from '../state/stages.js';
import type { Desk } from './desk.js';

function skyOf({ plan, job }: JobRecord, { words }: Desk, withSkyline: boolean): readonly Figure[] {
  const seen = plan.directions.flatMap(({ slot, azimuthDeg, elevationDeg }) =>
    azimuthDeg === null ? [] : [{ label: own(slot), azimuthDeg, elevationDeg }],
  );
  const { station, horizon } = job;
  const magnetic = horizon?.north === 'magnetic';
  if (seen.length === 0 || (magnetic && withSkyline && !plan.north)) return [];
  const declinationDeg = magnetic ? (plan.north?.declinationDeg ?? 0) : 0;
  return [
    sky({
      title: withSkyline ? words.tables.skyTitle : words.tables.skyPlain,
      objects: seen,
      arc: arcOver({ heightM: 0, ...station }),
      centreDeg: station.latitudeDeg >= 0 ? 180 : 0,
      ...(withSkyline && horizon
        ? {
            skyline: horizon.samples.map(({ azimuthDeg, elevationDeg }) => ({
              azimuthDeg: azimuthDeg + declinationDeg,
              elevationDeg,
            })),
          }
        : {}),
    }),
  ];
}

function peakOf({ job, peaking }: JobRecord, { words }: Desk): readonly Figure[] {
  return peaking.flatMap((result): readonly Figure[] => {
    const { axis, slot, carrier, fit, visit, skyRatio } = result;
    const samples = job.visits[visit]?.peaking?.find(
      (each) => each.axis === axis && each.slot === slot && each.carrier === carrier,
    )?.samples;
    if (!samples || samples.positionDeg.length < 2) return [];
    const called = words.peak.axes[axis] ?? axis;
    const on = (positionDeg: number) => positionDeg / skyRatio;
    return [
      linePlot({
        title: words.peak.figure(called),
        x: { label: words.peak.position, unit: '°' },
        y: { label: words.peak.reading, unit: 'dBm', digits: 1 },
        series: [
          {
            label: words.peak.read,
            style: 'samples',
            points: samples.positionDeg.map((x, index) => ({
              x,
              y: samples.levelDbm[index] ?? 0,
            })),
          },
        ],
        bands:
          fit?.kind === 'peak'
            ? [
                {
                  axis: 'x',
                  from: on(fit.interval95Deg[0]),
                  to: on(fit.interval95Deg[1]),
                  label: words.peak.peak,
                },
              ]
            : [],
      }),
    ];
  });
}

/** Pictures of a stage. */
export function figuresOf(stage: StageName, desk: Desk): readonly Figure[] {
  const { record } = desk;
  if (!record) return [];
  if (stage === 'place') return skyOf(record, desk, false);
  if (stage === 'skyline' && record.job.horizon) return skyOf(record, desk, true);
  if (stage === 'peak') return peakOf(record, desk);
  return [];
}
