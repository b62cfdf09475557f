import { describe, expect, it } from 'vitest';
import { stand } from './stand.ts';

const kindsAt = (lines: readonly { arrived: number; text: string }[], kind: string) =>
  lines.filter(({ text }) => text.startsWith(`$${kind},`));

describe('the controller tells', () => {
  it('its declaration when someone begins to listen, and then every five seconds', () => {
    const { wait, lines } = stand();
    wait(21_000);
    expect(kindsAt(lines, 'PTWRD').map(({ arrived }) => arrived)).toEqual([0, 5000, 10_000, 15_000, 20_000]);
    expect(lines[0]?.text).toMatch(/^\$PTWRD,1,mm,XYZ,x-home x-far y-home y-far z-home probe stop doors\*/);
  });

  it.each([100, 25, 7])('%d reports a second, evenly', (rate) => {
    const { wait, told } = stand({ telling: { rate } });
    wait(10_000);
    expect(Math.abs(told().length - rate * 10)).toBeLessThanOrEqual(1);
    const gaps = told()
      .slice(1)
      .map(({ arrived }, i) => arrived - (told()[i]?.arrived ?? 0));
    for (const gap of gaps) expect(gap).toBeCloseTo(1000 / rate, 6);
  });

  // NMEA 0183: the sum is the XOR of all bytes between $ and *, as two upper-case hex digits.
  it('every sentence with its sum, and within 240 bytes', () => {
    const { wait, lines, bench } = stand({ telling: { edges: true, volts: true } });
    bench.press('probe');
    wait(6000);
    for (const { text } of lines) {
      const [, body = '', sum] = /^\$([^*]*)\*([0-9A-F]{2})\r\n$/.exec(text) ?? [];
      expect([...body].reduce((xor, mark) => xor ^ mark.charCodeAt(0), 0)).toBe(
        Number.parseInt(sum ?? '', 16),
      );
      expect(text.length).toBeLessThanOrEqual(240);
    }
  });

  it('one edge for one press, bounce or not, at the moment it was taken and in the count of its reports', () => {
    const { bench, wait, lines } = stand({ telling: { edges: true } });
    wait(1000);
    bench.press('y-far');
    wait(500);
    bench.release('y-far');
    wait(500);
    const edges = kindsAt(lines, 'PTWRE').map(({ text }) => text.split(/[,*]/));
    expect(edges.map(([, , , input, level]) => `${input} ${level}`)).toEqual(['3 H', '3 L']);
    // Not before the debounce of 3 ms, not after bounce (6.2 ms) and debounce.
    expect(Number(edges[0]?.[2])).toBeGreaterThanOrEqual(1_003_000);
    expect(Number(edges[0]?.[2])).toBeLessThanOrEqual(1_009_200);
    const counts = [...kindsAt(lines, 'PTWRS'), ...kindsAt(lines, 'PTWRE')].map(({ text }) =>
      Number(text.split(',')[1]),
    );
    expect(counts.sort((a, b) => a - b)).toEqual(counts.map((_, i) => i + (counts[0] ?? 0)));
  });

  it('about nothing on a closed contact and about the supply on an open one, where it tells voltages', () => {
    const { bench, wait, lines } = stand({ telling: { volts: true } });
    bench.press('x-home');
    wait(1000);
    const volts = (kindsAt(lines, 'PTWRA').at(-1)?.text ?? '').split(/[,*]/).slice(2, 10).map(Number);
    expect(volts[0]).toBeGreaterThan(4900);
    for (const closed of volts.slice(1)) expect(closed).toBeLessThan(50);
  });

  it('levels only, or active only, where asked', () => {
    const levels = stand({ faults: ['levels-only'] });
    levels.wait(50);
    expect(levels.last()).toMatchObject({ levels: 'LLLLLLLL', active: '' });
    const active = stand({ faults: ['active-only'] });
    active.wait(50);
    expect(active.last()).toMatchObject({ levels: '', active: '00000000' });
  });

  it('nothing of an input that is not in its report', () => {
    const { names, wait, last } = stand({ faults: ['not-reported:probe'] });
    wait(50);
    expect(names()).not.toContain('probe');
    expect(last().levels).toHaveLength(7);
  });

  it('nothing to whoever has left', () => {
    const { leave, wait, lines } = stand();
    wait(100);
    const heard = lines.length;
    leave();
    wait(100);
    expect(lines).toHaveLength(heard);
  });
});

describe('a request', () => {
  // XOR of "PTWRQ" by hand: 50^54^57^52^51 = 50.
  const request = '$PTWRQ*50\r\n';
  const bytes = (text: string) => Buffer.from(text, 'latin1');

  it('is answered by one declaration and one report, however it is cut', () => {
    const { bench, lines } = stand({ telling: { rate: 1 } });
    for (const cut of [1, 4, request.length]) {
      const before = lines.length;
      bench.receive(bytes(request.slice(0, cut)));
      bench.receive(bytes(request.slice(cut)));
      expect(lines.slice(before).map(({ text }) => text.slice(0, 6))).toEqual(['$PTWRD', '$PTWRS']);
    }
  });

  it('is known in the middle of noise, and nothing else is', () => {
    const { bench, lines } = stand({ telling: { rate: 1 } });
    const before = lines.length;
    for (const noise of [
      '$PTWRQ*51\r\n',
      '$PTWRQ*50',
      '\u0000\r\n',
      'PTWRQ*50\n',
      '?\n',
      '$PTWRX*59\n',
      'x'.repeat(100_000),
    ])
      bench.receive(bytes(noise));
    expect(lines).toHaveLength(before);
    bench.receive(bytes(`\n\u0007$PTW${request}`));
    expect(lines).toHaveLength(before + 2);
  });
});

describe('a stream that is not perfect', () => {
  it('loses about one report in twenty, and its count shows each', () => {
    const { wait, told } = stand({ faults: ['lost-reports'] });
    wait(100_000);
    const sent = (told().at(-1)?.seq ?? 0) - (told()[0]?.seq ?? 0) + 1;
    expect(1 - told().length / sent).toBeGreaterThan(0.04);
    expect(1 - told().length / sent).toBeLessThan(0.06);
  });

  it('has about one sentence in thirty damaged, each so that its sum no longer fits or its frame is broken', () => {
    const { wait, lines } = stand({ faults: ['noisy-line'] });
    wait(60_000);
    const text = lines.map((line) => line.text).join('');
    const whole = text.split('\n').filter((line) => {
      const [, body = '', sum = 'none'] = /^\$([^*$]*)\*([0-9A-F]{2})\r$/.exec(line) ?? [];
      return [...body].reduce((xor, mark) => xor ^ mark.charCodeAt(0), 0) === Number.parseInt(sum, 16);
    });
    const damaged = 1 - whole.length / lines.length;
    expect(damaged).toBeGreaterThan(0.02);
    expect(damaged).toBeLessThan(0.05);
  });

  it('is slow: five reports a second', () => {
    const { wait, told } = stand({ faults: ['slow-stream'] });
    wait(10_000);
    expect(told().length).toBeGreaterThanOrEqual(49);
    expect(told().length).toBeLessThanOrEqual(51);
  });
});

describe('a controller with a will of its own', () => {
  it('halts at a limit press until it is cleared, and goes on reporting', () => {
    const { bench, wait, last, active } = stand({ faults: ['halts-at-limit'] });
    bench.press('probe');
    wait(100);
    expect(last().activity).toBe('still');
    bench.press('x-far');
    wait(100);
    bench.release('x-far');
    wait(1000);
    expect([last().activity, active('x-far')]).toEqual(['fault', '0']);
    bench.clear();
    wait(100);
    expect(last().activity).toBe('still');
  });

  it('reports a press when it is over, and what lasts after a while', () => {
    const { bench, wait, active, watch } = stand({ faults: ['reports-on-release:x-home'] });
    bench.press('x-home');
    wait(900);
    expect(active('x-home')).toBe('0');
    bench.release('x-home');
    expect(watch('x-home', 1000)).toMatch(/^LH{10,20}L+$|^L+H{10,20}L+$/);
    bench.unplug('x-home', 'switch');
    wait(1100);
    expect(active('x-home')).toBe('0');
    wait(400);
    expect(active('x-home')).toBe('1');
  });

  it('restarts once when the plug is pulled: silence, clock and count from nothing, levels as they then are', () => {
    const { bench, wait, told, level } = stand({ faults: ['restarts-mid-row:x-home'] });
    wait(2000);
    bench.unplug('x-home', 'switch');
    wait(2000);
    const arrived = told().map((each) => each.arrived);
    const longest = Math.max(...arrived.slice(1).map((at, i) => at - (arrived[i] ?? 0)));
    expect(longest).toBeGreaterThan(300);
    expect(told().filter(({ seq }) => seq === 0)).toHaveLength(1);
    expect(told().at(-1)?.ms).toBeLessThan(1700);
    expect(level('x-home')).toBe('H');
    bench.replug('x-home', 'switch');
    bench.unplug('x-home', 'switch');
    wait(500);
    expect(told().filter(({ seq }) => seq === 0)).toHaveLength(1);
  });

  it('is silent while it has no power', () => {
    const { bench, wait, told } = stand();
    wait(100);
    bench.power('controller', 'off');
    const before = told().length;
    wait(5000);
    expect(told()).toHaveLength(before);
    bench.power('controller', 'on');
    bench.power('controller', 'on');
    wait(1000);
    expect(told()[before]).toMatchObject({ seq: 0, ms: 0 });
    expect(told().length - before).toBeGreaterThan(50);
    expect(told().length - before).toBeLessThan(70);
  });

  it('keeps the drives powered under a pressed stop where the button is wired to its input only', () => {
    const { bench, wait, active } = stand({ faults: ['power-stays-on'] });
    bench.press('stop');
    wait(100);
    expect([active('stop'), bench.eyes.drivesHavePower()]).toEqual(['1', true]);
  });

  it('starts again by itself when the stop is let out', () => {
    const { bench, wait, last } = stand({ faults: ['restarts-on-unlatch'] });
    const before = bench.eyes.position('X');
    bench.press('stop');
    wait(500);
    expect(bench.eyes.drivesHavePower()).toBe(false);
    bench.release('stop');
    wait(500);
    expect(last().activity).toBe('moving');
    wait(3000);
    expect(bench.eyes.cameBackByItself()).toBe(true);
    expect(bench.eyes.position('X') - before).toBeCloseTo(20, 6);
  });
});
