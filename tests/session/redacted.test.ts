import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readProgram } from '../../src/diagnose/envelope/program/read.ts';
import { packBundle, withBundle } from '../../src/session/bundle.ts';
import { redactedProgram } from '../../src/session/redact.ts';
import { replay } from '../../src/session/replay.ts';
import { found, remove, temporaryFolder, virtualSession } from './virtual-session.ts';

const program = `%sign for Anna
(Annas sign, drawn in /home/anna/shop/signs)
G21 G90 G54
G0 X5 Y5 (over Annas clamp) Z3
G1 Z-2 F300 ; Anna: slowly
G1 X60 Y40
G0 Z3
(Anna never closed this
M30
%
`;

describe('a program in a session without names', () => {
  it('holds no comment any more, and is read as before, line for line', () => {
    const without = redactedProgram(program);
    expect(without).not.toMatch(/anna/i);
    expect(without.split('\n')).toHaveLength(program.split('\n').length);
    // What is told of a line that could not be read shows the line itself.
    const read = (text: string) => {
      const { notUnderstood, ...extents } = readProgram(text);
      return { ...extents, notUnderstood: notUnderstood.map(({ line, why }) => ({ line, why })) };
    };
    expect(read(without)).toEqual(read(program));
  });

  it('is packed with it: the bundle judges as the folder does', async () => {
    const [folder, place] = [temporaryFolder(), temporaryFolder()];
    const file = join(place, 'session.tar.gz');
    try {
      await virtualSession({
        folder,
        session: { checks: ['rest', 'envelope'], programText: program, restSeconds: 2 },
      });
      packBundle(folder, file, true);
      const whole = replay(folder);
      const bundled = withBundle(file, (unpacked) => replay(unpacked));
      expect(found(bundled)).toEqual(found(whole));
      expect(found(whole).some((verdict) => verdict.startsWith('envelope program: '))).toBe(true);
      expect(JSON.stringify(bundled.facts)).not.toMatch(/anna/i);
    } finally {
      remove(folder);
      remove(place);
    }
  });
});
