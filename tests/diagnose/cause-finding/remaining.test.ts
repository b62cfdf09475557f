import { describe, expect, it } from 'vitest';
import type { FaultName } from '../../../src/model/fault-names.ts';
import type { PossibleCauses } from '../../../src/model/verdict.ts';
import { contact, machineFrom, play, type Truth } from '../stage.ts';

/** A switch whose contact holds a pulled-up terminal at 0 V, and what the checks of a new machine make of it. */
const file = (circuit: string) => `machine: One switch
inputs:
  x-home: { duty: [home], contact: normally closed, voltage: 5 V${circuit} }
axes: { X: { travel: 300 } }
`;
const declared = file(', circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm }');

function told(truth: Truth, text = declared): Readonly<Record<string, PossibleCauses | undefined>> {
  const { verdicts } = play({ machine: machineFrom(text), truths: { 'x-home': truth } });
  return Object.fromEntries(verdicts.map(({ check, facts }) => [check, facts.possible]));
}

const single = (possible: PossibleCauses | undefined): readonly FaultName[] =>
  (possible?.causes ?? []).flatMap((each) => (each.length === 1 ? each : []));

const open: Truth = { level: () => 'H', active: () => '1' };
const grounded: Truth = { level: () => 'L', active: () => '0' };
/** The blades never part, the plug is a plug. */
const welded: Truth = {
  level: ({ out }) => (out.has('x-home') ? 'H' : 'L'),
  active: ({ out }) => (out.has('x-home') ? '1' : '0'),
};

describe('what can have caused it', () => {
  it('of an input that is open whatever is done: a break somewhere, and nothing that would hold the line at 0 V', () => {
    const { press, 'open-wire': wire } = told(open);
    for (const possible of [press, wire]) {
      expect(single(possible)).toContain('signal-core-open');
      expect(possible?.causes.flat()).not.toContain('signal-to-0-v');
      expect(possible?.causes.flat()).not.toContain('contact-welded');
      // What one fault explains needs no second one.
      expect(possible?.causes.filter((each) => each.length > 1)).toEqual([]);
    }
    expect(wire?.assumed).toEqual([]);
  });

  it('of an input that nothing moves, not even the plug: a short before the plug, and no welded contact any more', () => {
    const { press, 'open-wire': wire } = told(grounded);
    expect(single(press)).toContain('signal-to-0-v');
    // The row 0 0 0 is inconclusive: nothing failed there that would have to be explained.
    expect(wire).toBeUndefined();
  });

  it('of a dead switch on a live wire: only what sits at the switch', () => {
    const { 'open-wire': wire } = told(welded);
    expect(single(wire)).toContain('contact-welded');
    expect(wire?.causes.flat()).not.toContain('signal-to-0-v');
    expect(wire?.causes.flat()).not.toContain('pin-dead-conducting');
  });

  it('of a reversed input: a polarity set for all only where not each input has its own', () => {
    const reversed = contact('x-home', 'normally closed', 'closed');
    const named = (text: string) => single(told(reversed, text)['open-wire']);
    expect(named(declared)).toContain('polarity-for-all');
    const each = named(declared.replace('inputs:', 'polarity: each\ninputs:'));
    expect(each).toContain('polarity-inverted');
    expect(each).not.toContain('polarity-for-all');
  });

  it('of a reversed input: the setting or the blade, the likelier on a new build first', () => {
    const { press, 'open-wire': wire } = told(contact('x-home', 'normally closed', 'closed'));
    expect(single(wire)[0]).toBe('polarity-inverted');
    // The level moved from conducting to open: the blades are as drawn.
    expect(wire?.causes.flat()).not.toContain('wrong-blade');
    expect(single(press)).not.toContain('signal-core-open');
  });

  it('of a normally open contact in the place of a closed one with a setting to fit: both at once', () => {
    const { press, 'open-wire': wire } = told(contact('x-home', 'normally open', 'closed'));
    expect(press).toBeUndefined();
    expect(wire?.causes[0]?.toSorted()).toEqual(['polarity-inverted', 'wrong-blade']);
  });

  it('is not asked of a sound switch', () => {
    expect(told(contact('x-home', 'normally closed', 'open'))).toMatchObject({
      press: undefined,
      'open-wire': undefined,
    });
  });

  it('is computed for the usual circuit where none is declared, and says so', () => {
    const { 'open-wire': wire } = told(open, file(''));
    expect(wire?.assumed).toEqual(['circuit']);
    expect(single(wire)).toContain('signal-core-open');
  });

  it('names five at most and counts the rest', () => {
    const { press } = told(open);
    expect(press?.causes.length).toBeLessThanOrEqual(5);
    expect(press?.others).toBeGreaterThan(0);
  });
});
