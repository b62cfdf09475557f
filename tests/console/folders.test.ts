import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder } from '../../src/console/fresh-folder.ts';
import { lastSession } from '../../src/console/last-session.ts';
import { machine } from './events.ts';

const place = (): string => mkdtempSync(join(tmpdir(), 'tellwire-folders-'));

describe('session folders', () => {
  it('are named by moment and machine, and none is ever used twice', () => {
    const below = place();
    const moment = '2026-03-01T14:05:09.123Z';
    const first = freshFolder(moment, machine(), below);
    expect(first).toBe(join(below, '20260301T140509Z-small-mill'));
    mkdirSync(first);
    expect(freshFolder(moment, machine(), below)).toBe(`${first}-2`);
  });

  it('keep a machine’s name out of the path where it is none for a folder', () => {
    const hostile = { ...machine(), name: '../../etc/ \u001b[2J' };
    expect(freshFolder('2026-03-01T14:05:09Z', hostile, 'sessions')).toBe('sessions/20260301T140509Z-etc-2j');
    expect(freshFolder('2026-03-01T14:05:09Z', { ...machine(), name: '左端' }, 'sessions')).toBe(
      'sessions/20260301T140509Z',
    );
  });

  it('are told apart by when they began, not by name, and what is no session is passed over', () => {
    const below = place();
    const put = (name: string, started: string, hash: string, extra = {}) => {
      mkdirSync(join(below, name));
      const header = {
        format: 1,
        tool: '0',
        rules: 1,
        started,
        port: 'bench',
        machineHash: hash,
        checks: ['rest'],
        presses: 3,
        restSeconds: 10,
        ...extra,
      };
      writeFileSync(join(below, name, 'session.json'), JSON.stringify(header));
    };
    put('z-old', '2026-01-01T00:00:00Z', 'a');
    put('a-new', '2026-02-01T00:00:00Z', 'b');
    mkdirSync(join(below, 'notes'));
    mkdirSync(join(below, 'broken'));
    writeFileSync(join(below, 'broken', 'session.json'), '{');
    expect(lastSession(below, () => true)).toBe(join(below, 'a-new'));
    expect(lastSession(below, (each) => each.header().machineHash === 'a')).toBe(join(below, 'z-old'));
    expect(lastSession(join(below, 'none'), () => true)).toBeUndefined();
  });
});
