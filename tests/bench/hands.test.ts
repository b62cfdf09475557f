import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handLine } from '../../src/bench/hands.ts';
import { stand } from './stand.ts';

describe('hands as JSON lines', () => {
  it('press, release, pull and put back, and say that they did', () => {
    const { bench, wait, active } = stand();
    const hand = (line: string) => {
      const answer = handLine(bench, line);
      wait(100);
      return answer;
    };
    expect(hand('{"do":"press","switch":"x-home"}')).toEqual({ kind: 'did', do: 'press', switch: 'x-home' });
    expect(active('x-home')).toBe('1');
    hand('{"do":"release","switch":"x-home"}');
    expect(active('x-home')).toBe('0');
    expect(hand('{"do":"unplug","switch":"x-home","at":"controller"}')).toMatchObject({
      kind: 'did',
      at: 'controller',
    });
    expect([active('x-home'), active('y-home')]).toEqual(['1', '1']);
    hand('{"do":"replug","switch":"x-home","at":"controller"}');
    expect(active('y-home')).toBe('0');
    expect(hand('{"do":"unplug","switch":"x-home"}')).toMatchObject({ kind: 'did', at: 'switch' });
    hand('{"do":"jumper","switch":"x-home","at":"controller"}');
    expect(active('x-home')).toBe('0');
    hand('{"do":"unjumper","switch":"x-home","at":"controller"}');
    expect(active('x-home')).toBe('1');
  });

  it('find a switch that shares its input by its subject, or by input and switch as an ask names them', () => {
    const { bench, wait, active } = stand();
    expect(handLine(bench, '{"do":"press","input":"doors","switch":"flap"}')).toMatchObject({ kind: 'did' });
    wait(100);
    expect(active('doors')).toBe('1');
    expect(handLine(bench, '{"do":"release","switch":"doors/flap"}')).toMatchObject({ kind: 'did' });
    expect(handLine(bench, '{"do":"press","input":"x-home"}')).toMatchObject({ kind: 'did' });
    wait(100);
    expect([active('doors'), active('x-home')]).toEqual(['0', '1']);
  });

  it('move axes, switch power, clear a halt and plant faults', () => {
    const { bench, wait, last } = stand();
    expect(
      handLine(bench, '{"do":"move","axis":"X","direction":"negative","distance":1,"unit":"inch"}').kind,
    ).toBe('did');
    wait(2000);
    expect(last().positions[0]).toBeCloseTo(-25.4, 3);
    handLine(bench, '{"do":"home"}');
    wait(120_000);
    expect(last().positions).toEqual([0, 0, 0]);
    handLine(bench, '{"do":"fault","fault":"halts-at-limit"}');
    handLine(bench, '{"do":"press","switch":"y-far"}');
    wait(100);
    expect(last().activity).toBe('fault');
    handLine(bench, '{"do":"clear"}');
    wait(100);
    expect(last().activity).toBe('still');
    handLine(bench, '{"do":"power","what":"motors","to":"off"}');
    expect(bench.eyes.drivesHavePower()).toBe(false);
    handLine(bench, '{"do":"seek","axis":"Z"}');
    wait(100);
    expect(last().activity).toBe('homing');
  });

  it.each([
    ['', 'no JSON', 'press'],
    ['null', 'do: nothing', 'press'],
    ['[1]', 'do: nothing', 'unplug'],
    ['{"do":"wave"}', 'do: "wave"', 'press'],
    ['{"do":"constructor"}', 'do: "constructor"', 'press'],
    ['{"do":"press"}', 'no switch named', 'x-home'],
    ['{"do":"press","switch":"w-home"}', 'no switch w-home', 'x-home'],
    ['{"do":"press","switch":7}', 'switch: 7', 'a string'],
    ['{"do":"press","switch":"x-home","hard":true}', 'unknown: hard', 'switch'],
    ['{"do":"unplug","switch":"x-home","at":"wall"}', 'at: "wall"', 'controller'],
    ['{"do":"move","axis":"X"}', 'distance: nothing', 'a number'],
    ['{"do":"move","axis":"Q","distance":1}', 'no axis Q', 'X'],
    ['{"do":"power","what":"spindle","to":"on"}', 'what: "spindle"', 'motors'],
    ['{"do":"fault","fault":"gremlins"}', 'No such fault: gremlins.', 'bench --faults'],
  ])('that say %s are told what was found and what is allowed', (line, found, allowed) => {
    const answer = handLine(stand().bench, line);
    expect(answer).toMatchObject({ kind: 'wrong', found: expect.stringContaining(found) });
    expect(answer.kind === 'wrong' && answer.allowed.join(' ')).toContain(allowed);
  });

  it('never crash the bench, whatever the line', () => {
    const { bench } = stand();
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (line) => {
        expect(['did', 'wrong']).toContain(handLine(bench, line).kind);
      }),
      { numRuns: 500, seed: 3 },
    );
  });
});
