/** First half of the job sheet: what was planned. */

import type { JobRecord } from './recordJob.js';
import type { SignalPlan } from './sections/signals.js';
import { caution, fixed, type SheetBlock, section, signed, table } from './sheetBlocks.js';

/** Lines of the plan. */
export function planBlocks({ job, plan }: JobRecord): SheetBlock[] {
  const { station } = job;
  const { north, mount, rain } = plan;
  const blocks: SheetBlock[] = [section('Cautions')];
  blocks.push(...plan.cautions.map(({ text }) => caution(text)));

  blocks.push(
    section('Station'),
    `${station.name}: ${coordinate(station.latitudeDeg, 'N', 'S')}, ${coordinate(station.longitudeDeg, 'E', 'W')}, ${fixed(station.heightM, 0)} m`,
    `Magnetic declination ${signed(north.declinationDeg, 1)} deg (+-${fixed(north.declinationUncertaintyDeg, 1)}, ${north.model}${north.validity === 'valid' ? '' : ', outside its dates'}): magnetic bearing = true azimuth ${north.declinationDeg < 0 ? '+' : '-'} ${fixed(Math.abs(north.declinationDeg), 1)} deg.${north.compassZone === 'usable' ? '' : ' Do not trust a compass here.'}`,
  );

  blocks.push(
    section('Slots'),
    table(
      ['slot', 'longitude', 'azimuth true', 'magnetic', 'elevation', 'range km', 'skew'],
      plan.directions.map((d) => [
        d.kind === 'visible' ? d.slot : `${d.slot} (${d.kind.replace(/-/g, ' ')})`,
        coordinate(d.orbitalLongitudeDeg, 'E', 'W', 1),
        fixed(d.azimuthDeg, 2),
        fixed(d.magneticAzimuthDeg, 1),
        fixed(d.elevationDeg, 2),
        fixed(d.slantRangeKm, 0),
        signed(d.skewDeg, 1),
      ]),
    ),
    'Degrees; skew turns the feed clockwise, seen from behind the antenna.',
  );

  blocks.push(section('Mount'));
  if (mount.kind === 'no-slot') blocks.push('No slot stands above the horizon: nothing to preset.');
  else {
    blocks.push(
      `Boresight: azimuth ${fixed(mount.boresightAzimuthDeg, 2)} true, ${fixed(mount.magneticAzimuthDeg, 1)} magnetic; elevation ${fixed(mount.boresightElevationDeg, 2)}`,
      `Face of the reflector: ${fixed(Math.abs(mount.preset.faceLeanDeg), 1)} deg ${mount.preset.faceLeanDeg < 0 ? 'forwards' : 'backwards'} from the vertical (offset ${fixed(job.antenna.offsetAngleDeg, 1)})`,
      `Tilt of the feed arm: ${signed(mount.tiltDeg, 1)} deg, clockwise seen from behind`,
    );
    if (mount.feeds.length > 0)
      blocks.push(
        table(
          ['feed for', 'across mm', 'up mm', 'loss dB'],
          mount.feeds.map((feed) => [
            feed.slot,
            signed(feed.acrossMm, 0),
            signed(feed.upMm, 0),
            fixed(
              Math.max(...mount.losses.filter((l) => l.slot === feed.slot).map((l) => l.lossDb)),
              2,
            ),
          ]),
        ),
        'Places in the focal plane seen from behind, to the right and up positive.',
      );
  }

  blocks.push(
    section('View'),
    table(
      ['slot', 'skyline', 'clearance', 'wanted', 'verdict'],
      plan.views.map((v) => [
        v.slot,
        fixed(v.horizonElevationDeg, 1),
        signed(v.clearanceDeg, 1),
        fixed(v.requiredClearanceDeg, 1),
        v.kind.replace(/-/g, ' '),
      ]),
      [0, 4],
    ),
  );

  blocks.push(
    section('Rain and availability'),
    `Rain rate ${fixed(rain.rainRate001MmPerH, 1)} mm/h (+-${fixed(100 * rain.rainRateUncertaintyRatio, 0)} %) for 0.01 % of the year, rain height ${fixed(rain.rainHeightKm, 2)} km (${rain.source.replace(/-/g, ' ')}; ${rain.editions.join(', ')}). Promised: reception fails for at most ${job.target.exceededPercent} % of the average year.`,
    table(
      [
        'slot',
        'carrier',
        'rain dB',
        'all dB',
        '+-',
        'margin clear',
        'faded',
        'fails for %',
        'hours a year',
      ],
      plan.signals.map((s) => [
        s.slot,
        s.carrier,
        fixed(s.fade.rainDb, 2),
        fixed(s.fade.attenuationDb, 2),
        fixed(s.fade.standardDb, 2),
        fixed(s.clearMarginDb, 1),
        fixed(s.fadedMarginDb, 1),
        failing(s, (percent) => percent.toPrecision(2)),
        failing(s, (percent) => fixed(percent * 87.66, 1)),
      ]),
      [0, 1],
    ),
  );

  blocks.push(
    section('Expected at the antenna, clear sky'),
    table(
      ['slot', 'carrier', 'level dBuV', 'C/N dB', 'needed dB', 'mode'],
      plan.signals.map((s) => [
        s.slot,
        s.carrier,
        fixed(s.levelDbuv, 1),
        fixed(s.carrierToNoiseDb, 1),
        fixed(s.requiredDb, 1),
        job.slots
          .find(({ name }) => name === s.slot)
          ?.carriers.find(({ name }) => name === s.carrier)?.mode ?? '-',
      ]),
      [0, 1, 5],
    ),
  );
  return blocks;
}

/** Share of the year in the sheet's unit; the model ends at 0.001 and 50 per cent. A year has 8766 hours. */
function failing(signal: SignalPlan, told: (exceededPercent: number) => string): string {
  const text = told(signal.exceededPercent);
  if (signal.availability === 'better-than') return `under ${text}`;
  return signal.availability === 'worse-than' ? `over ${text}` : text;
}

/** A coordinate with its hemisphere letter. */
function coordinate(angleDeg: number, plus: string, minus: string, decimals = 4): string {
  return `${fixed(Math.abs(angleDeg), decimals)} ${angleDeg < 0 ? minus : plus}`;
}
