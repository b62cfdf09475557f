import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/model/reading.ts';
import { ms } from '../../src/model/units.ts';
import { lineSplitter } from '../../src/transport/line-splitter.ts';
import { nativeDecoder } from '../../src/transport/stream/native-decoder.ts';

const present = spawnSync('cc', ['--version']).status === 0;
const names = Array.from({ length: 40 }, (_, i) => `input-number-${i + 1}`);

/** A firmware of forty inputs that declares itself, reports twice and tells an edge. */
const firmware = `
#include <stdio.h>
#include "emitter.h"
void emit_put(char byte) { putchar(byte); }
int main(void) {
  static const char *const names[] = { ${names.map((name) => `"${name}"`).join(', ')} };
  static const int32_t near[] = { 0, -1, 12345 }, far[] = { -2000, 1234567890, -12005 };
  emit_seq = 65534;
  emit_declaration("mm", "XYZ", names, 40);
  emit_status(100, "still", 1, (uint64_t)1 << 39, 40, near, 3);
  emit_status(107, "moving", ~(uint64_t)0, 0, 40, far, 3);
  emit_edge(110500, 39, 0);
  emit_status(4294967295u, "fault", 0, 0, 40, near, 3);
  return 0;
}
`;

function emitted(): string {
  const folder = mkdtempSync(join(tmpdir(), 'tellwire-emitter-'));
  try {
    writeFileSync(join(folder, 'firmware.c'), firmware);
    const strict = ['-std=c99', '-Wall', '-Wextra', '-Wpedantic', '-Werror', '-I', resolve('firmware-notes')];
    execFileSync('cc', [...strict, '-o', join(folder, 'firmware'), join(folder, 'firmware.c')]);
    return execFileSync(join(folder, 'firmware'), { encoding: 'latin1' });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

describe.skipIf(!present)(`the emitter in C99 (needs cc${present ? '' : ', which is not here'})`, () => {
  const said = present ? emitted() : '';
  const readings: readonly Reading[] = (() => {
    const decoder = nativeDecoder();
    const lines = lineSplitter().push(Buffer.from(said, 'latin1'), ms(10));
    return lines.flatMap((line) => decoder.decode(line));
  })();

  it('writes sentences of at most 240 bytes, ended by CR LF', () => {
    const lines = said.split('\r\n');
    expect(lines.pop()).toBe('');
    expect(lines.every((line) => line.length + 2 <= 240)).toBe(true);
    expect(lines.filter((line) => line.startsWith('$PTWRN,')).length).toBeGreaterThan(1);
  });

  it('is read back by the decoder: every name, level, place and time', () => {
    const [declared, one, two, edge, ...more] = readings;
    expect(declared).toMatchObject({ kind: 'declared', units: 'mm', axes: ['X', 'Y', 'Z'], inputs: names });
    const bits = (count: number, at: number, on: string, off: string) =>
      Array.from({ length: count }, (_, i) => (i === at ? on : off));
    expect(one).toMatchObject({
      kind: 'status',
      at: 100,
      activity: 'still',
      levels: bits(40, 0, 'H', 'L'),
      active: bits(40, 39, '1', '0'),
      positions: [0, -0.001, 12.345],
    });
    expect(two).toMatchObject({ kind: 'status', at: 107, lost: 0, positions: [-2, 1234567.89, -12.005] });
    expect(edge).toMatchObject({ kind: 'edge', at: 110.5, lost: 0, input: 'input-number-40', level: 'L' });
    // So long a leap of the clock in no time at all is not believed.
    expect(more).toEqual([{ kind: 'unreadable', arrived: 10, why: 'out-of-step' }]);
  });
});

it('the emitter allocates nothing and has fewer than a hundred lines', () => {
  const text = readFileSync('firmware-notes/emitter.h', 'utf8');
  expect(text.split('\n').length).toBeLessThan(100);
  expect(text).not.toMatch(/malloc|calloc|realloc|\bfree\(|printf\(/);
});

it('ran where it must', () => {
  if (process.env['CI'] === 'true') expect(present, 'cc must be installed where CI=true').toBe(true);
});
