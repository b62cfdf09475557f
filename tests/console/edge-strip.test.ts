import { describe, expect, it } from 'vitest';
import { edgeStrip } from '../../src/console/painting/edge-strip.ts';
import { blockGlyphs } from '../../src/console/painting/glyphs.ts';
import { LiveInputs } from '../../src/console/painting/live-inputs.ts';
import { ms } from '../../src/model/units.ts';
import { status } from './events.ts';

const strip = (live: LiveInputs, cells = 30): string => {
  const [input] = live.all;
  return input ? edgeStrip(input, live.now, cells, blockGlyphs) : '';
};

describe('the strip of edges', () => {
  it('shows a press as a block that is as long as it lasted, the newest at the right', () => {
    const live = new LiveInputs();
    for (let at = 0; at <= 30_000; at += 100)
      live.take(status(at, { a: at >= 25_050 && at < 27_050 ? '1' : '0' }));
    expect(strip(live)).toBe(`${'▁'.repeat(25)}▆▆▆▁▁`);
  });

  it('shows a press shorter than a cell all the same', () => {
    const live = new LiveInputs();
    for (let at = 0; at <= 30_000; at += 10) live.take(status(at, { a: at === 25_500 ? '1' : '0' }));
    expect(strip(live)).toBe(`${'▁'.repeat(25)}▆${'▁'.repeat(4)}`);
  });

  it('hatches what changes more often than a hand does', () => {
    const live = new LiveInputs();
    for (let at = 0; at <= 30_000; at += 10)
      live.take(status(at, { a: at > 29_000 && at % 20 === 0 ? '1' : '0' }));
    expect(strip(live).endsWith('▁▒')).toBe(true);
  });

  it('leaves blank what was not heard: before the first report, and in a gap', () => {
    const live = new LiveInputs();
    live.take(status(0, { a: '1' }));
    live.take({ kind: 'gap', arrived: ms(10_000), segment: 2, why: 'lost-port' });
    live.take(status(20_000, { a: '0' }));
    expect(strip(live, 6)).toBe('  ▆▆  ');
    live.take(status(25_000, { a: '0' }));
    expect(strip(live, 6)).toBe(' ▆▆  ▁');
  });

  it('forgets what lies further back than it shows', () => {
    const live = new LiveInputs();
    for (let at = 0; at < 600_000; at += 500) live.take(status(at, { a: at % 1000 ? '1' : '0' }));
    expect(live.all[0]?.changes.length).toBeLessThan(70);
  });
});
