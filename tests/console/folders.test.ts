import { mkdirSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder } from '../../src/console/fresh-folder.ts';
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
});
