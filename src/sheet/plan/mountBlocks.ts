/** How each mount is preset, with the turn of its feeds and how plumb its mast must stand. */

import { halfPowerBeamwidth } from '../../antenna/index.js';
import type { FeedPlan, MountPlan } from '../../job/index.js';
import { allowedMastLean } from '../../pointing/index.js';
import { blanks, detail, type SheetBlock, section, tableOf } from '../paper/blocks.js';
import { feedDrawing } from '../paper/feedDrawing.js';
import type { Speech } from '../paper/speech.js';

type Held = Extract<MountPlan, { kind: 'one-slot' | 'several-slots' }>;

/** Mounts of the job; `toFill` adds what is written in on the roof. */
export function mountBlocks(speech: Speech, toFill: boolean): readonly SheetBlock[] {
  const { plan, words } = speech;
  return plan.mounts.flatMap((mount) => [
    section(words.mountTitle(speech.severalMounts ? mount.mount : null)),
    ...presetBlocks(speech, mount, toFill),
    ...lossBlocks(speech, mount),
  ]);
}

function presetBlocks(speech: Speech, mount: MountPlan, toFill: boolean): readonly SheetBlock[] {
  const { words, fixed, signed } = speech;
  switch (mount.kind) {
    case 'no-slot':
      return [words.noSlot];
    case 'not-given':
      return [words.mountNotGiven];
    case 'too-far-apart':
      return [words.tooFarApart];
    case 'one-slot':
    case 'several-slots':
      return heldBlocks(speech, mount, toFill);
    case 'polar':
      return [
        words.polar(
          fixed(mount.axisElevationDeg, 2),
          fixed(mount.forwardTiltDeg, 2),
          fixed(mount.declinationDeg, 2),
          fixed(mount.apexBeamElevationDeg, 2),
        ),
        tableOf(mount.stops, [
          [words.columns.slot, ({ slot }) => slot, 'left'],
          [words.columns.rotationEast, (stop) => signed(stop.rotationEastDeg, 1)],
          [words.columns.beamOff, (stop) => fixed(stop.errorDeg, 2)],
          [words.columns.reached, ({ reached }) => (reached ? words.yes : words.no), 'left'],
        ]),
      ];
    case 'tracking':
      return [
        words.tracking(
          fixed(mount.lowestElevationDeg, 2),
          fixed(mount.highestElevationDeg, 2),
          fixed(mount.worstErrorDeg, 2),
        ),
        tableOf(mount.schedule.slice(0, 24), [
          [words.columns.sinceNode, ({ sinceNodeH }) => fixed(sinceNodeH, 2)],
          [words.columns.azimuthTrue, ({ azimuthDeg }) => fixed(azimuthDeg, 2)],
          [words.columns.elevation, ({ elevationDeg }) => fixed(elevationDeg, 2)],
        ]),
        ...(mount.schedule.length > 24 ? [words.andMore(mount.schedule.length - 24)] : []),
      ];
  }
}

function heldBlocks(speech: Speech, mount: Held, toFill: boolean): readonly SheetBlock[] {
  const { words, fixed, turn } = speech;
  const { preset } = mount;
  const several = mount.kind === 'several-slots';
  const blocks: SheetBlock[] = [
    words.boresight(
      mount.boresightAzimuthDeg === null ? null : fixed(mount.boresightAzimuthDeg, 2),
      mount.magneticBearingDeg === null ? null : fixed(mount.magneticBearingDeg, 1),
      fixed(mount.boresightElevationDeg, 2),
    ),
  ];
  if (preset)
    blocks.push(
      words.face(
        fixed(Math.abs(preset.faceLeanDeg), 1),
        preset.faceLeanDeg < 0,
        fixed(mount.reflector?.offsetAngleDeg, 1),
      ),
    );
  if (several) blocks.push(words.row(turn(mount.tiltDeg)), detail(words.rowOnce));
  blocks.push(...feedBlocks(speech, mount, several));
  if (!toFill) return blocks;
  const plumb = plumbText(speech, mount);
  if (plumb !== null) blocks.push(plumb);
  blocks.push(blanks(...words.blanks.mount));
  return blocks;
}

function feedBlocks(speech: Speech, mount: Held, several: boolean): readonly SheetBlock[] {
  const { words, signed, turn } = speech;
  const { columns } = words;
  const turned = mount.feeds.filter(({ turnDeg }) => turnDeg !== null);
  const places: readonly SheetBlock[] = several
    ? [
        tableOf<FeedPlan>(mount.feeds, [
          [columns.feedFor, ({ slot }) => slot, 'left'],
          [columns.acrossMm, ({ acrossMm }) => signed(acrossMm, 0)],
          [columns.upMm, ({ upMm }) => signed(upMm, 0)],
          [columns.alongMm, ({ alongMm }) => signed(alongMm, 0)],
          [
            columns.turnUpright,
            (f) => (f.turnDeg === null ? words.anyTurn : turn(f.turnDeg)),
            'left',
          ],
          Math.abs(mount.tiltDeg) >= 0.05
            ? [columns.turnRow, (f) => turn(f.turnAgainstRowDeg), 'left']
            : null,
        ]),
        words.feedPlaces,
      ]
    : mount.feeds.map(({ turnDeg }) =>
        turnDeg === null ? words.feedAnyTurn : words.feedTurn(turn(turnDeg)),
      );
  if (turned.length === 0) return places;
  return [
    ...places,
    {
      kind: 'drawing',
      svg: feedDrawing({
        feeds: turned.map(({ slot, turnDeg, acrossMm, upMm }) => ({
          name: slot,
          turnDeg: turnDeg ?? 0,
          turn: turn(turnDeg),
          acrossMm,
          upMm,
        })),
        tiltDeg: mount.tiltDeg,
        title: words.drawing.title,
        upright: words.drawing.upright,
      }),
    },
  ];
}

function lossBlocks(speech: Speech, mount: MountPlan): readonly SheetBlock[] {
  const { plan, words, fixed } = speech;
  // Where a level is expected, the loss stands beside it.
  const alone = mount.losses.filter(
    ({ slot, carrier }) => !plan.signals.some((s) => s.slot === slot && s.carrier === carrier),
  );
  if (alone.length === 0) return [];
  return [
    tableOf(alone, [
      [words.columns.slot, ({ slot }) => slot, 'left'],
      [words.columns.carrier, ({ carrier }) => carrier, 'left'],
      [words.columns.mountLossDb, ({ lossDb }) => fixed(lossDb, 2)],
      [words.columns.note, ({ beyondModel }) => (beyondModel ? words.beyondModel : ''), 'left'],
    ]),
  ];
}

/** Carriers that a mount serves. */
export function carriersOf({ job }: Speech, slots: readonly string[]) {
  return job.slots.flatMap((slot) =>
    slots.includes(slot.name)
      ? (slot.carriers ?? []).map((carrier) => ({ slot: slot.name, ...carrier }))
      : [],
  );
}

/** How plumb the mast must stand where one slot is peaked and the others follow by the scales, and where nothing is peaked yet. */
function plumbText(speech: Speech, mount: Held): string | null {
  const { job, words, fixed } = speech;
  const diameterM = mount.reflector?.diameterM;
  const frequencyGHz = Math.max(0, ...carriersOf(speech, mount.slots).map((c) => c.frequencyGHz));
  if (diameterM === undefined || frequencyGHz <= 0) return null;
  const lossDb = job.target?.pointingLossDb ?? 0.5;
  const beamwidthDeg = Math.min(90, halfPowerBeamwidth({ diameterM, frequencyGHz }));
  const lean = allowedMastLean({ lossDb, beamwidthDeg });
  return lean.kind === 'limited'
    ? words.plumb(fixed(lean.allowedLeanDeg, 2), fixed(lean.allowedLeanMmPerM, 0), fixed(lossDb, 1))
    : null;
}
