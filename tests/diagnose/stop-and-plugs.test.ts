import { describe, expect, it } from 'vitest';
import type { Ask } from '../../src/model/ask.ts';
import { contact, lines, machineFrom, play, type Truth, type World } from './stage.ts';

const machine = (more = '') =>
  machineFrom(`machine: Stop bench
axes:
  Z: { travel: 100 }
inputs:
  stop: { duty: [stop], place: front panel, voltage: 5 V${more} }
`);
const healthy = { stop: contact('stop', 'normally closed', 'open') };
const judged = (more: Partial<Parameters<typeof play>[0]> = {}) =>
  lines(play({ machine: machine(), truths: healthy, checks: ['stop'], ...more }).verdicts);

describe('the emergency stop, status and function apart', () => {
  it('proves it by a status that follows and a person who saw the power go', () => {
    expect(judged()).toEqual(['stop stop: proved']);
  });
  it('proves nothing where nobody looked at the power', () => {
    const says = (ask: Ask) => (ask.action === 'look' ? ('not-sure' as const) : undefined);
    expect(judged({ says })).toEqual(['stop stop: inconclusive']);
  });
  it('fails a stop whose drives keep their power, however well the status follows', () => {
    const says = (ask: Ask) => (ask.action === 'look' ? ('did-not' as const) : undefined);
    expect(judged({ says })).toEqual(['stop stop: failed power-stays-on']);
  });
  it('fails a status that does not follow the button', () => {
    expect(judged({ truths: { stop: { level: () => 'L', active: () => '0' } } })).toEqual([
      'stop stop: failed status-not-following',
    ]);
  });
  it('fails a status that stays when the button is let out, whoever says that it is out', () => {
    let wasPressed = false;
    const isIn = ({ pressed }: World) => {
      wasPressed ||= pressed.has('stop');
      return wasPressed;
    };
    const stuck: Truth = {
      level: (world) => (isIn(world) ? 'H' : 'L'),
      active: (world) => (isIn(world) ? '1' : '0'),
    };
    const { verdicts, asks } = play({ machine: machine(), truths: { stop: stuck }, checks: ['stop'] });
    expect(lines(verdicts)).toEqual(['stop stop: failed status-not-following']);
    expect(asks.filter(({ action }) => action === 'release')).toHaveLength(2);
  });
  it('fails a machine that starts again when the button is let out', () => {
    const says = (ask: Ask) =>
      ask.action === 'confirm' && ask.topic === 'stayed-off' ? ('no' as const) : undefined;
    expect(judged({ says })).toEqual(['stop stop: failed restarts']);
  });
  it('fails a stop whose broken status wire would go unnoticed', () => {
    const truths = { stop: contact('stop', 'normally open', 'closed') };
    expect(judged({ truths, checks: ['press', 'open-wire'] })).toEqual([
      'press stop: proved',
      'open-wire stop: failed break-undetected',
    ]);
  });
});

describe('what is never asked of a person', () => {
  it('pulls no plug above 30 V', () => {
    const high = machineFrom(
      'machine: High\naxes: { Z: { travel: 1 } }\ninputs:\n  stop: { duty: [stop], voltage: 48 V }\n',
    );
    const { verdicts, asks } = play({ machine: high, truths: healthy, checks: ['press', 'open-wire'] });
    expect(lines(verdicts)[1]).toBe('open-wire stop: not-tested');
    expect(asks.some((ask) => ask.action === 'unplug')).toBe(false);
  });
  it('pulls no plug of a voltage told to be unknown, nor one out of reach', () => {
    for (const text of ['voltage: unknown', 'voltage: 5 V, reach: never']) {
      const told = machineFrom(
        `machine: Told\naxes: { Z: { travel: 1 } }\ninputs:\n  stop: { duty: [stop], ${text} }\n`,
      );
      const { asks, verdicts } = play({ machine: told, truths: healthy, checks: ['press', 'open-wire'] });
      expect(lines(verdicts)[1]).toBe('open-wire stop: not-tested');
      expect(asks.some((ask) => ask.action === 'unplug')).toBe(false);
    }
  });
  it('has a plug of unstated voltage confirmed as a signal plug before it is pulled', () => {
    const unstated = machineFrom(
      'machine: Unstated\naxes: { Z: { travel: 1 } }\ninputs:\n  stop: { duty: [stop] }\n',
    );
    const yes = play({ machine: unstated, truths: healthy, checks: ['press', 'open-wire'] });
    const order = yes.asks.filter((ask) => ask.check === 'open-wire').map((ask) => ask.action);
    expect(order.slice(0, 2)).toEqual(['confirm', 'unplug']);
    const no = play({
      machine: unstated,
      truths: healthy,
      checks: ['press', 'open-wire'],
      says: (ask) => (ask.action === 'confirm' && ask.topic === 'signal-plug' ? 'no' : undefined),
    });
    expect(no.asks.some((ask) => ask.action === 'unplug')).toBe(false);
  });
  it('sends no hand to a switch before motor power is off and the vertical axis propped', () => {
    const { asks } = play({ machine: machine(), truths: healthy, checks: ['press'] });
    expect(
      asks
        .slice(0, 2)
        .map((ask) => [
          ask.action,
          'topic' in ask ? ask.topic : 'what' in ask ? `${ask.what} ${ask.to}` : '',
        ]),
    ).toEqual([
      ['power', 'motors off'],
      ['confirm', 'propped'],
    ]);
    for (const refused of ['power', 'confirm'] as const) {
      const refusing = play({
        machine: machine(),
        truths: healthy,
        checks: ['press'],
        says: (ask) => (ask.action === refused ? 'cannot' : undefined),
      });
      expect(refusing.asks.some((ask) => ask.action === 'press')).toBe(false);
      expect(lines(refusing.verdicts)).toEqual(['press stop: not-tested']);
    }
  });
  it('unplugs at the controller where the switch end cannot be reached, and says so', () => {
    const says = (ask: Ask) =>
      ask.action === 'unplug' && ask.at === 'switch' ? ('cannot' as const) : undefined;
    const { verdicts } = play({ machine: machine(), truths: healthy, checks: ['press', 'open-wire'], says });
    expect(verdicts[1]).toMatchObject({ status: 'proved', facts: { unpluggedAt: 'controller' } });
  });
});

describe('a stop button that does not do what a stop button must', () => {
  const springs = (answer: 'yes' | 'no' | 'not-sure') => (ask: Ask) =>
    ask.action === 'confirm' && ask.topic === 'stayed-in' ? answer : undefined;
  it('fails where it springs back by itself, and is not proved where nobody saw', () => {
    // ISO 13850: an emergency stop stays operated until it is let out on purpose.
    expect(judged({ says: springs('no') })).toEqual(['stop stop: failed does-not-latch']);
    expect(judged({ says: springs('not-sure') })).toEqual(['stop stop: inconclusive']);
    expect(judged({ says: springs('yes') })).toEqual(['stop stop: proved']);
  });
});

describe('a controller that halts when a plug is pulled', () => {
  it('is cleared once the plug is back, for an active limit cannot be cleared', () => {
    let halted = false;
    const cleared = (ask: Ask) => {
      if (ask.action === 'clear') halted = false;
      return undefined;
    };
    const { asks, verdicts } = play({
      machine: machine(),
      truths: healthy,
      checks: ['press', 'open-wire'],
      presses: 1,
      says: cleared,
      activity: ({ pressed, out }) => {
        if (pressed.size > 0 || out.size > 0) halted = true;
        return halted ? 'fault' : 'still';
      },
    });
    expect(lines(verdicts)).toEqual(['press stop: proved', 'open-wire stop: proved']);
    const order = asks.filter((ask) => ask.check === 'open-wire').map((ask) => ask.action);
    expect(order).toEqual(['unplug', 'press', 'replug', 'clear', 'press', 'clear']);
  });
});
