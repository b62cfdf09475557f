import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ms } from '../../src/model/units.ts';
import { nativeDecoder } from '../../src/transport/stream/native-decoder.ts';

const read = (name: string): string => readFileSync(`firmware-notes/${name}`, 'utf8');

/** By a way of its own, not the codec's: the XOR of the bytes, as NMEA 0183 has it. */
const sumOf = (body: string): string =>
  [...Buffer.from(body, 'ascii')]
    .reduce((sum, byte) => sum ^ byte, 0)
    .toString(16)
    .toUpperCase()
    .padStart(2, '0');

const native = read('native-sentences.md');
const sentences = [...native.matchAll(/\$([A-Z]{5}[^*\n`<]*)\*([0-9A-F]{2})/g)].map(([whole, body, sum]) => ({
  whole,
  body: body ?? '',
  sum: sum ?? '',
}));

describe('the sentences of the notes', () => {
  it('carry the sums they should', () => {
    expect(sentences.length).toBeGreaterThan(14);
    for (const { whole, body, sum } of sentences) expect(`${whole} ${sum}`).toBe(`${whole} ${sumOf(body)}`);
    expect(sumOf('PTWRS,41,81250,still')).not.toBe(sumOf('PTWRS,42,81250,still'));
  });

  // A published sentence: NOAA Physical Sciences Laboratory, ATOMIC 2020 cruise, ship's gyro compass.
  it('show the sum on a sentence that others have published', () => {
    expect(sentences.map(({ whole }) => whole)).toContain('$GPHDT,74.20,T*34');
  });

  it('are understood as the notes say', () => {
    const decoder = nativeDecoder();
    let arrived = 0;
    const hear = (pattern: RegExp) =>
      sentences
        .filter(({ body }) => pattern.test(body))
        .flatMap(({ whole }) => {
          arrived += 20;
          return decoder.decode({ arrived: ms(arrived), text: whole, cut: 0 });
        });
    expect(hear(/^PTWRD,1,mm.*stop$/)).toEqual([]);
    const [declared, ...reports] = hear(/^PTWR[SE],4[1-5]/);
    expect(declared).toMatchObject({
      kind: 'declared',
      units: 'mm',
      axes: ['X', 'Y', 'Z'],
      inputs: ['x-home', 'y-home', 'z-home', 'probe', 'door', 'stop'],
    });
    expect(reports).toMatchObject([
      {
        kind: 'status',
        activity: 'still',
        levels: [...'LLLHLL'],
        active: [...'000000'],
        positions: [0, 0, 0],
      },
      { kind: 'status', activity: 'still', levels: [...'HLLHLL'], active: [...'100000'], lost: 0 },
      { kind: 'status', activity: 'moving', positions: [12.375, -3.1, 0] },
      { kind: 'edge', input: 'x-home', level: 'H', lost: 0 },
      { kind: 'edge', input: 'x-home', level: 'L', lost: 0 },
    ]);
    const [up, down] = reports.slice(3) as { at: number }[];
    expect((down?.at ?? 0) - (up?.at ?? 0)).toBeCloseTo(2.65, 6);
    expect(hear(/^PTWRA/)).toMatchObject([
      { kind: 'volts', volts: [0.012, 0.015, 0.009, 4.95, undefined, 23.8] },
    ]);
  });

  it('count over the end of both counters without a gap', () => {
    const decoder = nativeDecoder();
    const wrap = sentences.filter(
      ({ body }) => /stop$|^PTWRS,(65535|0),/.test(body) && !body.startsWith('PTWRN'),
    );
    const out = wrap.flatMap(({ whole }, i) => decoder.decode({ arrived: ms(i * 20), text: whole, cut: 0 }));
    expect(out).toMatchObject([
      { kind: 'declared' },
      { kind: 'status', activity: 'homing', positions: [undefined, undefined, undefined] },
      { kind: 'status', activity: 'fault', lost: 0 },
    ]);
    const [first, second] = out.slice(1) as { at: number }[];
    expect((second?.at ?? 0) - (first?.at ?? 0)).toBe(20);
  });
});

describe('the arithmetic of the sample rate', () => {
  const notes = read('sample-rate.md');
  const rows = [...notes.matchAll(/^\| (\d+) ms, [^|]*\|(.*)\|$/gm)].map(([, width, cells]) => ({
    width: Number(width),
    cells: (cells ?? '').split('|').map(Number),
  }));

  // Counted, not computed: a pulse begins at each of many moments between two reports; is there a report within it?
  it('gives the share of pulses that meet a report', () => {
    expect(rows).toHaveLength(5);
    for (const { width, cells } of rows)
      for (const [index, period] of [200, 50, 20, 1000 / 150].entries()) {
        const begins = Array.from({ length: 6000 }, (_, n) => ((n + 0.5) / 6000) * period);
        const met = begins.filter((begin) => begin + width > period).length / begins.length;
        expect(cells[index]).toBeCloseTo(met, 3);
      }
  });

  it('gives what a line carries', () => {
    const carried = [...notes.matchAll(/^\| (\d+) \| (\d+) \| ([\d.]+) \|$/gm)].map(([, ...cells]) =>
      cells.map(Number),
    );
    expect(carried).toHaveLength(4);
    for (const [baud = 0, bytes, reports] of carried) {
      expect(bytes).toBe(baud / 10);
      expect(reports).toBeCloseTo(baud / 10 / 75, 1);
    }
  });
});

describe('links between pages', () => {
  it('lead to pages that are there', () => {
    const pages = [
      ...readdirSync('firmware-notes').map((name) => `firmware-notes/${name}`),
      'README.md',
      'DEVELOPERS.md',
    ];
    for (const page of pages) {
      const folder = page.includes('/') ? 'firmware-notes/' : '';
      for (const [, to] of readFileSync(page, 'utf8').matchAll(/\]\(([^)#]+)[^)]*\)/g))
        expect(to?.startsWith('http') || existsSync(`${folder}${to}`), `${page}: ${to}`).toBe(true);
    }
  });
});
