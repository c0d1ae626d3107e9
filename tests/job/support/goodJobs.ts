/** Complete jobs of every kind of mount in which nothing is wrong: their readings are what their own plans expect. */

import { type JobFile2, type JobPlan, planJob } from 'slantpath/job';

type Mutable<T> = T extends readonly (infer Item)[]
  ? Mutable<Item>[]
  : T extends object
    ? { -readonly [Key in keyof T]: Mutable<T[Key]> }
    : T;

/** A job file of version 2 that a test may change. */
export type Draft = Mutable<JobFile2>;
type Visit = NonNullable<Draft['visits']>[number];
type Reading = NonNullable<Visit['readings']>[number];
type Peaking = NonNullable<Visit['peaking']>[number];
type Mount = NonNullable<Draft['mounts']>[number];

/** A number as an instrument shows it. */
const shown = (value: number) => Number(value.toFixed(1));

/** Readings of every carrier at every test point, as planned. */
export function plannedReadings(plan: JobPlan): Reading[] {
  const places = [
    ...plan.signals.map((signal) => ({ ...signal, testPoint: 'antenna' })),
    ...plan.outlets.map((outlet) => ({ ...outlet, testPoint: outlet.outlet })),
  ];
  return places.flatMap(({ testPoint, slot, carrier, levelDbuv, carrierToNoiseDb }): Reading[] => [
    {
      quantity: 'level',
      testPoint,
      slot,
      carrier,
      levelDbuv: shown(levelDbuv),
      expandedUncertaintyDb: 2,
    },
    {
      quantity: 'carrier-to-noise',
      testPoint,
      slot,
      carrier,
      carrierToNoiseDb: shown(carrierToNoiseDb),
      expandedUncertaintyDb: 1.4,
    },
  ]);
}

/** An axis of a slot read on both sides of a main lobe whose width is `ratio` of theory, left `offDeg` on the sky beside its peak. */
export function peaked(
  plan: JobPlan,
  axis: 'azimuth' | 'elevation',
  { slot, offDeg = 0, ratio = 1 }: { slot: string; offDeg?: number; ratio?: number },
): Peaking {
  const signal = plan.signals.find((each) => each.slot === slot);
  const tuned = plan.tuning.find((each) => each.slot === slot);
  const reflector = plan.mounts.find(({ slots }) => slots.includes(slot))?.reflector;
  if (!signal || !tuned || !reflector) throw new Error(`nothing is planned for ${slot}`);
  // 70 wavelengths over diameters: the usual half-power width (practice of the trade).
  const widthDeg = (ratio * 70 * 0.299792458) / (tuned.frequencyGHz * reflector.diameterM);
  const positionDeg = [-0.5, -0.375, -0.25, -0.125, 0, 0.125, 0.25, 0.375, 0.5].map((part) =>
    Number((part * widthDeg).toFixed(4)),
  );
  // A display of hundredths with a little scatter.
  const scatterDb = [0.02, -0.03, 0.01, 0.03, -0.02, -0.01, 0.03, -0.02, 0.01];
  return {
    axis,
    slot,
    carrier: signal.carrier,
    azimuthReference: 'on-sky',
    restDeg: offDeg,
    degPerTurn: 0.4,
    samples: {
      positionDeg,
      levelDbm: positionDeg.map((at, index) =>
        Number((-32 - 12 * (at / widthDeg) ** 2 + (scatterDb[index] ?? 0)).toFixed(2)),
      ),
    },
  };
}

const carrier = (name: string, frequencyGHz: number, polarization: 'vertical' | 'horizontal') => ({
  name,
  frequencyGHz,
  polarization,
  eirpDbw: 51,
  symbolRateMBd: 27.5,
  mode: 'QPSK 3/4',
});

/** A job around a mount, before its visit. */
function around(mount: Mount, slots: Draft['slots']): Draft {
  return {
    format: 'slantpath-job',
    version: 2,
    title: `Good job: ${mount.kind}`,
    date: '2026-07-14',
    timeZone: 'Europe/Zurich',
    station: { name: 'hut', latitudeDeg: 46.6, longitudeDeg: 10.3, heightM: 1480 },
    slots,
    mounts: [mount],
    units: [
      {
        name: 'LNB',
        noiseFigureDb: 0.7,
        gainDb: 56,
        feedLossDb: 0.1,
        bands: [
          { name: 'low', fromGHz: 10.7, toGHz: 11.7, localOscillatorGHz: 9.75, tone: false },
          { name: 'high', fromGHz: 11.7, toGHz: 12.75, localOscillatorGHz: 10.6, tone: true },
        ],
        switchedByVoltage: true,
        supply: { currentA: 0.15, minimumVoltageV: 11.5 },
      },
    ],
    horizon: {
      north: 'magnetic',
      samples: [90, 120, 150, 180, 210, 240, 270].map((azimuthDeg) => ({
        azimuthDeg,
        elevationDeg: 12,
        distanceM: 60,
      })),
    },
    rain: { source: 'measured', rainRate001MmPerH: 30, years: 10, isothermHeightKm: 2.6 },
    target: { exceededPercent: 0.1, pointingLossDb: 0.3 },
    distribution: {
      trees: [
        {
          kind: 'cable',
          name: 'riser',
          cable: {
            skinLossDbPer100m: 19.965,
            dielectricLossDbPer100m: 1.334,
            loopResistanceOhmPer100m: 4.1,
          },
          lengthM: 25,
          to: { kind: 'outlet', name: 'desk', lossDb: 1, to: { kind: 'receiver', name: 'set' } },
        },
      ],
    },
    limits: [
      { testPoint: 'antenna', quantity: 'carrier-to-noise', minimumDb: 8 },
      { testPoint: 'antenna', quantity: 'level', minimumDbuv: 55, maximumDbuv: 95 },
      { testPoint: 'outlets', quantity: 'level', minimumDbuv: 47, maximumDbuv: 77 },
      { testPoint: 'outlets', quantity: 'carrier-to-noise', minimumDb: 7 },
      { testPoint: 'set', quantity: 'level', minimumDbuv: 44, maximumDbuv: 83 },
    ],
    visits: [],
  };
}

/** The job with a visit at which everything was read as planned. */
export function visited(draft: Draft, slotToPeak: string): Draft {
  const plan = planJob(draft);
  return {
    ...draft,
    visits: [
      {
        kind: 'installation',
        date: '2026-07-14',
        weather: 'clear',
        person: 'A. Fitter',
        peaking: (['azimuth', 'elevation'] as const).map((axis) =>
          peaked(plan, axis, { slot: slotToPeak }),
        ),
        readings: plannedReadings(plan),
      },
    ],
  };
}

const reflector = { diameterM: 0.9, offsetAngleDeg: 24.6, efficiencyRatio: 0.65 };
const middle = () => ({
  name: 'middle',
  orbitalLongitudeDeg: 16.4,
  carriers: [carrier('news', 11.3, 'vertical'), carrier('weather', 12.5, 'horizontal')],
});
const west = () => ({
  name: 'west',
  orbitalLongitudeDeg: 10.2,
  carriers: [carrier('culture', 11.5, 'horizontal')],
});

/** One slot with one reflector. */
export const oneSlot = (): Draft =>
  visited(around({ kind: 'fixed', reflector }, [middle()]), 'middle');

/** Two slots, one reflector, feeds free. */
export const severalFree = (): Draft =>
  visited(around({ kind: 'fixed', reflector }, [middle(), west()]), 'middle');

/** Two slots, one reflector, feeds on a straight bar. */
export const severalRigid = (): Draft =>
  visited(
    around({ kind: 'fixed', reflector, feeds: { kind: 'rigid', placesM: [0.035, -0.035] } }, [
      middle(),
      west(),
    ]),
    'middle',
  );

/** Two reflectors, each with its slot. */
export function separate(): Draft {
  const draft = around({ kind: 'fixed', slots: ['middle'], reflector }, [middle(), west()]);
  draft.mounts?.push({ kind: 'fixed', slots: ['west'], reflector });
  const job = visited(draft, 'middle');
  const plan = planJob(draft);
  job.visits?.[0]?.peaking?.push(
    peaked(plan, 'azimuth', { slot: 'west' }),
    peaked(plan, 'elevation', { slot: 'west' }),
  );
  return job;
}

/** A polar mount with its motor. */
export const polar = (): Draft =>
  visited(
    around({ kind: 'polar', reflector, motor: { eastLimitDeg: 60, westLimitDeg: 60 } }, [
      middle(),
      west(),
    ]),
    'middle',
  );

/** An inclined orbit followed by a schedule. */
export const tracking = (): Draft =>
  visited(
    around({ kind: 'tracking', reflector, movesPerDay: 48 }, [
      { ...middle(), inclinationDeg: 2.5 },
    ]),
    'middle',
  );

/** A two-way terminal. */
export function twoWay(): Draft {
  const draft = around({ kind: 'fixed', reflector: { ...reflector, diameterM: 1.2 } }, [middle()]);
  draft.transmit = [
    {
      name: 'return',
      slot: 'middle',
      frequencyGHz: 14.2,
      polarization: 'vertical',
      saturatedPowerW: 4,
      outputBackOffDb: 2,
      feedLossDb: 0.4,
      symbolRateMBd: 1,
      minimumEirpDbw: 43,
      maximumEirpDbw: 50,
      minimumBackOffDb: 1,
      offAxisMask: [
        { offAxisDeg: 3, maximumDensityDbwPer40KHz: 21 },
        { offAxisDeg: 20, maximumDensityDbwPer40KHz: 3 },
      ],
    },
  ];
  draft.limits?.push({ testPoint: 'antenna', quantity: 'cross-polar-isolation', minimumDb: 25 });
  const job = visited(draft, 'middle');
  for (const name of ['return', 'news', 'weather'])
    job.visits?.[0]?.readings?.push({
      quantity: 'cross-polar-isolation',
      testPoint: 'antenna',
      slot: 'middle',
      carrier: name,
      isolationDb: 31,
      expandedUncertaintyDb: 2,
    });
  return job;
}

/** A change in place; what has no such field is a mistake of the test. */
export function only<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('the good job has no such field');
  return value;
}

/** The readings of the first visit. */
export const readings = (job: Draft) => only(only(job.visits?.[0]).readings);
