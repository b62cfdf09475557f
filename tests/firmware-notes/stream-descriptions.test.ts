import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/model/reading.ts';
import { ms } from '../../src/model/units.ts';
import { describedDecoder } from '../../src/transport/stream/description/described-decoder.ts';
import { readDescription } from '../../src/transport/stream/description/read.ts';
import { inputShape, requestShape } from '../../src/transport/stream/description/shape.ts';
import { takeApart } from '../../src/transport/stream/shapes/fields.ts';

const page = readFileSync('firmware-notes/stream-descriptions.md', 'utf8');
const blocks = (kind: string): readonly string[] =>
  [...page.matchAll(new RegExp(`\`\`\`${kind}\n(.*?)\`\`\``, 'gs'))].map(([, text = '']) => text);
const descriptions = blocks('yaml').map(readDescription);

function readings(nth: number, lines: readonly string[]): readonly Reading[] {
  const { description } = descriptions[nth] ?? {};
  if (!description) throw new Error('the page holds such a description');
  const decoder = describedDecoder(description);
  const said = lines.flatMap((text, i) => decoder.decode({ arrived: ms(i * 100), text, cut: 0 }));
  return [...said, ...decoder.gap(ms(9999), 'lost-port')].filter(({ kind }) => kind === 'status');
}

describe('the page on stream descriptions', () => {
  it('shows how lines come apart as they do', () => {
    const rows = [...page.slice(0, page.indexOf('## An example')).matchAll(/^\| `(.+)` \| (`.+)\|$/gm)];
    expect(rows.length).toBe(6);
    for (const [, line = '', values = ''] of rows) {
      const given = new Map(takeApart(line).fields.map(({ path, text }) => [path, text]));
      const told = [...values.matchAll(/`([^`]+)` ([^;]+?)(?:;| $)/g)];
      expect(told.length, line).toBeGreaterThan(1);
      for (const [, path = '', text = ''] of told) expect([path, given.get(path)]).toEqual([path, text]);
    }
  });

  it('holds descriptions that are right', () => {
    expect(descriptions).toHaveLength(3);
    expect(descriptions.flatMap(({ problems = [] }) => problems)).toEqual([]);
  });

  it('reads its sample as it says', () => {
    const lines = (blocks('text')[0] ?? '').trimEnd().split('\n');
    const twice = lines.flatMap((line) => [line, line]);
    const at = (home: string, activity: string, x: number) => ({
      levels: ['?', 'H'],
      active: [home, '?'],
      activity,
      positions: [x, 3.25, -1],
    });
    const each = [at('0', 'still', 12.5), at('1', 'still', 12.5), at('0', 'moving', 12.75)];
    expect(readings(0, twice)).toMatchObject(each.flatMap((one) => [one, one]));
    expect(readings(1, ['part=probe state=open', 'part=lid state=shut'])).toMatchObject([
      { active: ['0', '1'] },
    ]);
    expect(readings(2, ['gates=0x2C', 'gates=28'])).toMatchObject([{ active: ['1'] }, { active: ['0'] }]);
  });

  it('names every entry there is', () => {
    const entries = [...Object.keys(inputShape.shape), ...Object.keys(requestShape.shape)];
    for (const entry of [...entries, 'agree', 'scale', 'homing']) expect(page).toContain(`${entry}`);
    const table = page.slice(page.indexOf('## What can stand in it'));
    for (const entry of Object.keys(inputShape.shape)) expect(table).toContain(`\`${entry}\``);
  });
});
