import { describe, expect, it } from 'vitest';
import { faultList } from '../../src/bench/faults.ts';
import { changesIn, stand } from './stand.ts';

/** Level and active bit of one input at rest, pressed, and with its plug pulled at the switch. */
function row(fault: string, subject: string, input = subject) {
  const { bench, wait, level, active } = stand({ faults: [fault] });
  const now = () => `${level(input)}${active(input)}`;
  wait(100);
  const rest = now();
  bench.press(subject);
  wait(300);
  const pressed = now();
  bench.release(subject);
  wait(300);
  bench.unplug(subject, 'switch');
  wait(300);
  return [rest, pressed, now()].join(' ');
}

describe('a planted fault reads at rest, pressed, unplugged', () => {
  // Reasoned from the circuit: joined to ground reads L, anything else H by the pull-up; active when open unless said otherwise.
  it.each([
    ['normally-open:x-home', 'H0 L1 H0'],
    ['wrong-contact-declared:x-home', 'H1 L0 H1'],
    ['welded:x-home', 'L0 L0 H1'],
    ['never-makes:x-home', 'H1 H1 H1'],
    ['bent-lever:x-home', 'H1 H1 H1'],
    ['broken-wire:x-home', 'H1 H1 H1'],
    ['polarity-reversed:x-home', 'L1 H0 H0'],
    ['not-enabled:x-home', 'L0 H0 H0'],
    ['dead-input:x-home', 'L0 L0 L0'],
    ['shorted-together:x-home,x-far', 'L0 L0 L0'],
  ])('%s', (fault, expected) => expect(row(fault, 'x-home')).toBe(expected));

  it('status-block-off on the stop button, whose power goes all the same', () => {
    expect(row('status-block-off', 'stop')).toBe('L0 L0 H1');
    const { bench } = stand({ faults: ['status-block-off'] });
    bench.press('stop');
    expect(bench.eyes.drivesHavePower()).toBe(false);
  });
});

describe('wires on wrong terminals', () => {
  it('crossed: each switch answers on the other’s input, its plug too', () => {
    expect(row('crossed:y-home,z-home', 'y-home', 'z-home')).toBe('L0 H1 H1');
    expect(row('crossed:y-home,z-home', 'z-home', 'y-home')).toBe('L0 H1 H1');
    expect(row('crossed:y-home,z-home', 'z-home')).toBe('L0 L0 L0');
  });

  it('a plug pushed on one pin further: each answers on the next, the last on none, the first terminal stays open', () => {
    expect(row('shifted-plug:P1', 'x-home', 'x-far')).toBe('L0 H1 H1');
    expect(row('shifted-plug:P1', 'x-far', 'y-home')).toBe('L0 H1 H1');
    expect(row('shifted-plug:P1', 'x-home')).toBe('H1 H1 H1');
    const { bench, wait, last } = stand({ faults: ['shifted-plug:P1'] });
    bench.press('y-home');
    wait(100);
    expect(last().levels).toBe('HLLLLLLL');
  });

  it('two normally open inputs whose cores touch answer together', () => {
    const { bench, wait, last } = stand({
      faults: ['normally-open:x-home', 'normally-open:x-far', 'shorted-together:x-home,x-far'],
    });
    bench.press('x-far');
    wait(100);
    expect(last().active.slice(0, 2)).toBe('11');
  });

  it('a return through a neighbour’s switch: pressing the neighbour opens both, pressing the switch itself one', () => {
    const { bench, wait, last } = stand({ faults: ['chained-return:x-home,y-home'] });
    bench.press('x-home');
    wait(100);
    expect(last().levels).toBe('HLHLLLLL');
    bench.release('x-home');
    bench.press('y-home');
    wait(100);
    expect(last().levels).toBe('LLHLLLLL');
  });
});

describe('an input that does not hold its level', () => {
  it('flickers at rest where a screw is loose', () => {
    expect(changesIn(stand({ faults: ['flickers:probe'] }).watch('probe', 10_000))).toBeGreaterThan(10);
  });

  it('wanders without a pull-up as long as nothing holds it, and only then', () => {
    const { bench, watch } = stand({ faults: ['floating:probe'] });
    expect(changesIn(watch('probe', 10_000))).toBe(0);
    bench.unplug('probe', 'switch');
    expect(changesIn(watch('probe', 5000))).toBeGreaterThan(10);
    bench.replug('probe', 'switch');
    expect(changesIn(watch('probe', 5000).slice(2))).toBe(0);
  });

  it('with worn blades changes several times at each press', () => {
    const { bench, watch } = stand({ faults: ['chatters:probe'] });
    bench.press('probe');
    expect(changesIn(`L${watch('probe', 300)}`)).toBeGreaterThanOrEqual(3);
  });
});

describe('the catalogue', () => {
  it('plants every fault it lists, as it says it is written', () => {
    const names = {
      '<switch>': 'x-home',
      '<input>,<input>': 'x-home,y-far',
      '<input>': 'x-home',
      '<connector>': 'P1',
      '<axis>,<axis>': 'X,Y',
    };
    // A touch of the work is Z's alone; only the portal has a beam of two motors, and an axis that turns.
    const axisFor = (name: string) =>
      name === 'touches-work' ? 'Z' : name.startsWith('side-') ? 'Y' : name === 'shorter-way' ? 'A' : 'X';
    for (const { name: fault, usage, description } of faultList) {
      const spelled = Object.entries(names)
        .reduce((text, [what, name]) => text.replace(what, name), usage)
        .replace('<axis>', axisFor(fault));
      expect(() => stand({ faults: [spelled] }), spelled).not.toThrow();
      expect(description.length).toBeGreaterThan(20);
    }
  });

  it('never lets a fault’s name or words cross the stream', () => {
    for (const { name } of faultList) expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
    const spelled = ['flickers:probe', 'crossed:x-home,x-far', 'noisy-line', 'halts-at-limit'];
    const { wait, lines } = stand({ faults: spelled });
    wait(6000);
    const text = lines.map((line) => line.text).join('');
    for (const each of spelled) expect(text).not.toContain(each.split(':')[0]);
  });

  it.each([
    ['rusty:x-home', 'No such fault: rusty.', 'bench --faults'],
    ['toString', 'No such fault: toString.', 'bench --faults'],
    ['broken-wire', 'names nothing', 'broken-wire:<input>'],
    ['broken-wire:', 'names nothing', 'broken-wire:<input>'],
    ['crossed:x-home', 'names 1', 'crossed:<input>,<input>'],
    ['noisy-line:x-home', 'names 1', 'noisy-line'],
    ['crossed:x-home,x-home', 'named twice', 'two different'],
    ['broken-wire:w-home', 'No such input on the bench: w-home.', 'x-home'],
    ['welded:doors', 'No such switch on the bench: doors.', 'doors/flap'],
    ['shifted-plug:P9', 'No such connector on the bench: P9.', 'P1'],
    ['held-at-rest:probe', 'No axis works the switch probe.', 'end of an axis'],
    ['mirrored', 'names nothing', 'mirrored:<axis>'],
    ['mirrored:Q', 'No such axis on the bench: Q.', 'X, Y, Z'],
    ['motors-crossed:X,X', 'named twice', 'two different'],
    ['late-release:probe', 'No axis works the switch probe.', 'end of an axis'],
    ['touches-work:X', 'Only Z', 'touches-work:Z'],
    ['side-off:X', 'has one motor', 'either side'],
  ])('refuses %s with what is known', (fault, found, tryNext) => {
    expect(() => stand({ faults: [fault] })).toThrow(
      expect.objectContaining({
        code: 'wrong-usage',
        message: expect.stringContaining(found),
        tryNext: expect.stringContaining(tryNext),
      }),
    );
  });

  it('refuses two returns that would go through each other', () => {
    const chained = ['chained-return:x-home,y-home', 'chained-return:y-home,x-home'];
    expect(() => stand({ faults: chained })).toThrow(expect.objectContaining({ code: 'wrong-usage' }));
  });
});
