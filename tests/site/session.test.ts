/** The session that answers a page's example, in a worker or in the page. */

import { describe, expect, test } from 'vitest';
import { type Drawn, Session } from '../../site/src/element/answering/session.js';
import findThePeak from '../../site/src/examples/find-the-peak.js';
import halfWayBack from '../../site/src/examples/half-way-back.js';
import type { Example } from '../../site/src/lib/example.js';
import { defaultsOf } from '../../site/src/lib/inputs/state.js';
import { en } from '../../site/src/lib/language/words.js';
import { renderRest, renderTop } from '../../site/src/lib/render.js';

const example = halfWayBack as unknown as Example;
const raw = defaultsOf(example.inputs);
const values = {
  peakLevelDbm: -47,
  referenceLevelDbm: -51,
  turnsOut: 3,
  turnsBack: 5,
  levelStepDb: 1,
  standardDeviationDb: 0,
  outStop: 'anywhere',
  farStop: 'anywhere',
  backlashTurns: 0,
  degPerTurn: undefined,
} as const;
const sessionOf = () => new Session('half-way-back', example, true);

describe('a session', () => {
  test('draws what the page was built with, each piece one element', () => {
    const drawn = sessionOf().answer(raw) as Drawn;
    const view = halfWayBack.view(halfWayBack.compute(values), values);
    expect(drawn.top).toBe(renderTop(en, view));
    expect(drawn.blocks).toEqual(renderRest(en, view));
    expect(drawn.says).toBe(view.says);
    expect(JSON.parse(drawn.json)).toMatchObject({
      example: 'half-way-back',
      result: drawn.result,
    });
    // What is sent between worker and page.
    expect(structuredClone(drawn)).toEqual(drawn);
  });

  test('refuses in the library’s words', () => {
    expect(sessionOf().answer({ ...raw, turnsBack: 'abc' })).toMatchObject({
      parameter: 'turnsBack',
      message: expect.stringContaining('number'),
    });
  });

  test('a button works while a field is refused, from the inputs that had an answer last', () => {
    const peak = findThePeak as unknown as Example;
    const session = new Session('find-the-peak', peak, true);
    const inputs = defaultsOf(peak.inputs);
    const pressed = session.act(0, inputs);
    expect(pressed).toBeDefined();
    const name = Object.keys(inputs).find((key) => peak.inputs[key]?.kind === 'number') ?? '';
    session.answer(inputs);
    expect(session.answer({ ...inputs, [name]: 'abc' })).toHaveProperty('message');
    expect(session.act(0, { ...inputs, [name]: 'abc' })).toEqual(pressed);
  });

  test('moves a mark from the inputs that it is asked for, and a held one in its own picture', () => {
    const session = sessionOf();
    const changed = { ...raw, turnsBack: '6' };
    expect(session.move(1, changed, { step: [-1, 0] })).toEqual({ turnsBack: '6.25' });
    expect(session.move(1, raw, { step: [-1, 0] })).toEqual({ turnsBack: '5.25' });
    session.hold(0, raw);
    const once = session.move(undefined, raw, { put: [0.9, 0.5] });
    session.answer({ ...raw, turnsOut: '12' });
    expect(session.move(undefined, raw, { put: [0.9, 0.5] })).toEqual(once);
  });

  test('works out the steps by hand', async () => {
    expect(await sessionOf().hand(raw)).toContain('hand-line');
    expect(await sessionOf().hand({ ...raw, turnsBack: 'abc' })).toBe('');
  });

  test('presses a button of the example', () => {
    const bench = findThePeak as unknown as Example;
    const at = defaultsOf(bench.inputs);
    const session = new Session('find-the-peak', bench, true);
    expect(session.act(1, at)).toEqual({ placeTurns: '4' });
    expect(session.act(99, at)).toBeUndefined();
  });

  test('turns the head of the adjuster round and round', () => {
    const bench = findThePeak as unknown as Example;
    const at = defaultsOf(bench.inputs);
    const session = new Session('find-the-peak', bench, true);
    session.hold(0, at);
    const place = (turns: number) => {
      const angle = 2 * Math.PI * turns;
      return [(92 + 50 * Math.sin(angle)) / 440, (104 - 50 * Math.cos(angle)) / 212] as const;
    };
    const ways = [3.3, 3.6, 3.9, 4.2, 4.5, 4.2, 3.9];
    expect(
      ways.map((turns) =>
        Number(session.move(undefined, at, { put: place(turns) })?.['placeTurns']),
      ),
    ).toEqual(ways);
  });
});
