/** The question of a plan and its key: the last step gives the quantity that the title asks for, and nothing else. */

import { exercise, SOLUTION_PLANS } from 'slantpath/teaching';
import { expect, test } from 'vitest';

/** What a question asks for, by its words; what the key must be called, and in which units it may stand. */
const ASKED: readonly (readonly [question: RegExp, key: RegExp, units: readonly string[]])[] = [
  [/^In which direction/, /^azimuth/, ['deg']],
  [/^At what elevation/, /elevation/, ['deg']],
  [/^How far away is the satellite/, /^slant range/, ['km']],
  [/^By how much is the feed turned/, /^skew/, ['deg']],
  [/declination of a polar mount/, /beam below the plane across the axis/, ['deg']],
  [/^How much room/, /room between top and edge of the beam/, ['m']],
  [/must the compass show/, /^magnetic bearing/, ['deg']],
  [/offset angle/, /^offset angle/, ['deg']],
  [/^How does the face .* stand/, /^lean of the face/, ['deg']],
  [/^How high does the obstruction stand/, /elevation of the skyline/, ['deg']],
  [/^Which geocentric latitude/, /^geocentric latitude/, ['deg']],
  [/^How wide is the beam/, /^half-power beamwidth/, ['deg']],
  [/^What is the gain/, /^gain/, ['dBi']],
  [/^What does the pointing error cost/, /^pointing loss/, ['dB']],
  [/^What does the rough surface cost/, /^surface loss/, ['dB']],
  [/^Where does the far field begin/, /^far-field distance/, ['m']],
  [/^What does a wrongly turned feed cost/, /mismatch loss/, ['dB']],
  [/^How high does the rain reach/, /^rain height/, ['km']],
  [/rain take on each kilometre/, /^specific attenuation/, ['dB/km']],
  [/^How much rain attenuation is exceeded/, /^attenuation exceeded/, ['dB']],
  [/take together\?$/, /^attenuation by all together/, ['dB']],
  [/^How warm does the sky get/, /^sky noise temperature/, ['K']],
  [/lost on the way through free space/, /^free-space loss/, ['dB']],
  [/^Which noise temperature/, /^noise temperature/, ['K']],
  [/^How much noise/, /^system noise/, ['K']],
  [/figure of merit G\/T/, /^figure of merit/, ['dB/K']],
  [/^What margin/, /^margin/, ['dB']],
  [/^Which Es\/N0/, /^energy per symbol over noise density/, ['dB']],
  [/^Which Eb\/N0/, /^energy per useful bit over noise density/, ['dB']],
  [/^Which C\/N is left/, /^carrier to noise of both/, ['dB']],
  [/^Which level is the signal’s own/, /^level without the noise/, ['dBm']],
  [/^Where is the peak/, /^peak$/, ['turns']],
  [/^What is lost at the middle/, /^pointing loss at the middle/, ['dB']],
  [/^How many turns back/, /^turns to turn back/, ['turns']],
  [/^Which pointing error/, /^pointing error/, ['deg']],
  [/^Where is the null/, /^rotation of the null/, ['deg']],
  [/^Which isolation is left at least/, /^isolation left at least/, ['dB']],
  [/of the loss does each further peaking/, /^loss left by each further peaking/, ['percent']],
  [/^What is lost after both axes/, /^loss after the second axis/, ['dB']],
  [/^How much does (the|a) cable .*take/, /^cable loss/, ['dB']],
  [/^Which level is left at the outlet/, /^level at the outlet/, ['dBuV']],
  [/^Which level in dBm/, /^level$/, ['dBm']],
  [/^At what intermediate frequency/, /^intermediate frequency/, ['MHz']],
  [/^What moment does the wind bring/, /^moment at the foot/, ['N m']],
  [/^How much must a mount .* weigh/, /^total mass/, ['kg']],
  [/^How far does a steel mast lean/, /^slope in degrees/, ['deg']],
  [/^What EIRP density/, /^EIRP density/, ['dBW']],
  [/^What does a station send past/, /^density sent at the angle/, ['dBW']],
  [/^What discrimination does/, /^cross-polar discrimination/, ['dB']],
  [/^What level does a transmitter near by bring/, /^level in the cable/, ['dBuV']],
  [/^How far may the difference of two instruments/, /^half width of the 95 %/, ['dB']],
  [/^How probably is a lot accepted/, /^probability of acceptance/, ['percent']],
  [/^From which reading on does the level conform/, /^acceptance limit/, ['dBuV']],
  [/^How sure is the mean/, /^standard uncertainty of the mean/, ['dB']],
  [/^How probable is it that the level conforms/, /^probability that the true level/, ['percent']],
  [/how probable is the first now\?$/, /^probability of the first cause/, ['percent']],
  [/how probable is it that the mast leans\?$/, /^probability that the mast leans/, ['percent']],
];

/** Names of ratios that a question can ask for; each must be the key's own symbol. */
const RATIOS = /\b(E[sb]\/N0|C\/N0?|G\/T)(?![\w/])/;

const bare = (tex: string) => tex.replace(/[_{}()]|_[ud]/g, '');

test.each(SOLUTION_PLANS.map((plan) => [plan.name, plan] as const))(
  '%s: the key answers the question',
  (name, { title, steps }) => {
    const key = steps[steps.length - 1];
    if (!key) throw new Error('a plan without steps');
    const rows = ASKED.filter(([question]) => question.test(title));
    expect(rows.length, `one row of the table for "${title}"`).toBe(1);
    const [, meaning, units] = rows[0] ?? [];
    expect(key.meaning).toMatch(meaning ?? /(?!)/);
    expect(units).toContain(key.unit);
    // One question, one answer: a title that asks for two things has only one key.
    expect(title.match(/\?/g)?.length).toBe(1);
    expect(title).not.toMatch(/, and (which|how|what|where)\b/);
    const ratio = RATIOS.exec(title)?.[1];
    if (ratio !== undefined) expect(bare(key.tex)).toBe(ratio);
    // Title and key are what the learner and the trainer see.
    const one = exercise({ plan: name, seed: 1 });
    expect(one.text).toContain(title);
    expect(one.unit).toBe(key.unit);
  },
);

test('every row of the table is asked for by a plan', () => {
  const idle = ASKED.filter(
    ([question]) => !SOLUTION_PLANS.some(({ title }) => question.test(title)),
  );
  expect(idle).toEqual([]);
});
