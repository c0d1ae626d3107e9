/** Schema of a mount and its reflector. */

import * as v from 'valibot';
import { listOf, nameOf, numberFrom, words } from './fields.js';

const reflector = v.exactOptional(
  v.pipe(
    v.strictObject({
      diameterM: numberFrom(0.2, 15, 'Diameter of the aperture in metres'),
      efficiencyRatio: v.exactOptional(
        numberFrom(0.3, 0.9, 'Aperture efficiency as a ratio, by default 0.65'),
      ),
      offsetAngleDeg: v.exactOptional(
        numberFrom(
          0,
          40,
          'Offset angle in degrees, 0 for a centre-fed reflector; without it the lean of the face is not computed',
        ),
      ),
      focalLengthM: v.exactOptional(
        numberFrom(0.05, 15, 'Focal length in metres, by default 0.6 of the diameter'),
      ),
      surfaceErrorMm: v.exactOptional(
        numberFrom(0, 10, 'Surface error, r.m.s., in millimetres, by default 0'),
      ),
      edgeTaperDb: v.exactOptional(
        numberFrom(0, 30, 'Fall of the illumination from middle to edge in dB, by default 10'),
      ),
    }),
    v.description('The reflector; without it only directions are computed.'),
  ),
);

const common = {
  name: v.exactOptional(nameOf('Name of the mount, its own; by default its number')),
  slots: v.exactOptional(
    listOf(
      nameOf('Name of a slot'),
      [1, 40],
      'Slots that it serves; all that no other names by default.',
    ),
  ),
  reflector,
  mast: v.exactOptional(
    v.pipe(
      v.strictObject({
        lengthM: numberFrom(
          0.05,
          20,
          'Free length from its fixing to the middle of the reflector in metres',
        ),
        outsideDiameterM: v.exactOptional(
          numberFrom(
            0.01,
            1,
            'Outside diameter of the tube in metres; without it bending is not computed',
          ),
        ),
        wallM: v.exactOptional(
          numberFrom(
            0.0005,
            0.5,
            'Thickness of its wall in metres; without it bending is not computed',
          ),
        ),
        material: v.exactOptional(
          words('Material of the tube, by default steel', {
            steel: '210 GPa',
            aluminium: '70 GPa',
          }),
        ),
        eccentricityM: v.exactOptional(
          numberFrom(
            0,
            2,
            'How far the middle of the reflector stands beside the axis of the mast in metres, by default 0',
          ),
        ),
      }),
      v.description('The mast; without it no moment and no bending are computed.'),
    ),
  ),
  base: v.exactOptional(
    v.pipe(
      v.strictObject({
        widthM: numberFrom(0.1, 20, 'Width of the base across the wind in metres'),
        leverM: v.exactOptional(
          numberFrom(
            0,
            20,
            'Height of the middle of the reflector above the base in metres, by default the length of the mast',
          ),
        ),
        frictionRatio: v.exactOptional(
          numberFrom(0.1, 0.8, 'Friction on the roof as a ratio, by default 0.4'),
        ),
        safetyRatio: v.exactOptional(
          numberFrom(1, 3, 'Factor on the load of the wind, by default 1.5'),
        ),
      }),
      v.description('A base that stands free on a flat roof; none by default.'),
    ),
  ),
};

const feedDiameterM = v.exactOptional(
  numberFrom(0, 1, 'Outer diameter of a feed in metres, by default 0.06'),
);

const kind = <const T extends string>(word: T, meaning: string) =>
  v.pipe(v.literal(word), v.description(`\`${word}\`: ${meaning}.`));

/** A mount; read `kind` first. */
export const mountSchema = v.variant('kind', [
  v.strictObject({
    kind: kind('fixed', 'stands still, for one slot or with several feeds for several'),
    ...common,
    feeds: v.exactOptional(
      v.pipe(
        v.variant('kind', [
          v.strictObject({
            kind: kind('free', 'each feed is put where its slot needs it'),
            feedDiameterM,
          }),
          v.strictObject({
            kind: kind('rigid', 'the feeds sit on a straight bar at given places'),
            placesM: listOf(
              numberFrom(-2, 2, 'Place in metres'),
              [1, 16],
              'Place of each feed along the bar from the focus in metres, in the order of the slots, to the right seen from behind positive.',
            ),
            feedDiameterM,
          }),
        ]),
        v.description('How several feeds are held, by default free.'),
      ),
    ),
  }),
  v.strictObject({
    kind: kind('polar', 'one axis that follows the arc, turned by a motor'),
    ...common,
    fit: v.exactOptional(
      words('How the axis is set, by default least-worst', {
        'least-worst': 'the largest error over the arc is least',
        'apex-and-ends': 'right at the highest point and at both ends',
        'polar-axis': 'parallel to the axis of the Earth',
      }),
    ),
    motor: v.exactOptional(
      v.pipe(
        v.strictObject({
          eastLimitDeg: v.exactOptional(
            numberFrom(0, 100, 'Largest rotation to the east in degrees, by default 90'),
          ),
          westLimitDeg: v.exactOptional(
            numberFrom(0, 100, 'Largest rotation to the west in degrees, by default 90'),
          ),
          stepDeg: v.exactOptional(
            numberFrom(0, 5, 'Smallest step of the motor in degrees, by default 0'),
          ),
        }),
        v.description('The motor; limits of 90 degrees and no step by default.'),
      ),
    ),
  }),
  v.strictObject({
    kind: kind('tracking', 'follows a satellite on an inclined orbit by a schedule'),
    ...common,
    movesPerDay: v.exactOptional(
      numberFrom(1, 1440, 'How often in a sidereal day the antenna is set anew, by default 24'),
    ),
  }),
]);
