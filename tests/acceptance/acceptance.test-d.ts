import {
  type CauseObservation,
  type CauseRanking,
  combinedReading,
  type DecisionRule,
  decideConformity,
  rankCauses,
} from 'slantpath/acceptance';
import { expectTypeOf, test } from 'vitest';

test('unions are read by kind', () => {
  const decision = decideConformity({ reading: 1, standardUncertainty: 1, lowerLimit: 0 });
  expectTypeOf(decision.verdict).toEqualTypeOf<'conforms' | 'does-not-conform' | 'undecided'>();
  expectTypeOf<CauseRanking['kind']>().toEqualTypeOf<'cause' | 'nothing-wrong' | 'cannot-tell'>();
  const combined = combinedReading({ readings: [1, 2] });
  // @ts-expect-error degrees of freedom may have no limit
  combined.degreesOfFreedom.toFixed();
  const seen = {} as CauseObservation;
  // @ts-expect-error only a level has one
  seen.levelDbuv;
  if (seen.kind === 'level') expectTypeOf(seen.levelDbuv).toEqualTypeOf<number>();
});

test('wrong calls are refused', () => {
  // @ts-expect-error a risk rule needs its risk
  const rule: DecisionRule = { kind: 'risk' };
  // @ts-expect-error an uncertainty is needed
  decideConformity({ reading: 1, lowerLimit: 0 });
  // @ts-expect-error a cause that is not in the list
  rankCauses({ installation: {} as never, observations: [], priorWeights: { ghosts: 1 } });
  // @ts-expect-error a yes or no, not a number
  const rain: CauseObservation = { kind: 'rain-seen', seen: 1 };
  void rule;
  void rain;
});
