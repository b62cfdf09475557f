import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { asWord, goOnHint } from '../../src/console/go-on.ts';

const stopped = { stopped: true, register: [] };
const at = { folder: 'sessions/mill', port: '/dev/ttyUSB0' };

describe('how a stopped session is gone on with', () => {
  it('is a whole command, with folder and port', () => {
    expect(goOnHint(stopped, 'commission', at, { baud: '115200', color: true })).toEqual([
      'To go on where it stopped:',
      '  tellwire commission --resume --out sessions/mill --port /dev/ttyUSB0',
    ]);
  });

  it('repeats what was given and no session folder keeps', () => {
    const given = {
      baud: '9600',
      operator: 'lines',
      fault: ['crossed:x-home', 'broken-wire:y-far'],
      allowRequest: 'ab12',
      speak: 'words',
      ownLine: true,
      color: false,
    };
    const hint = goOnHint(stopped, 'troubleshoot x-home', { folder: 'my mill', port: 'bench' }, given);
    expect(hint[1]).toBe(
      '  tellwire troubleshoot x-home --resume --out "my mill" --port bench --baud 9600 --fault crossed:x-home --fault broken-wire:y-far --speak words --operator lines --allow-request ab12 --own-line --no-color',
    );
  });

  it('is said of a session that ended with a plug out, and of no other that came to its end', () => {
    const out = { stopped: false, register: [{ subject: 'door', at: 'switch' } as const] };
    expect(goOnHint(out, 'commission', at, {})[0]).toBe('To go on with what is still out:');
    expect(goOnHint({ stopped: false, register: [] }, 'commission', at, {})).toEqual([]);
  });

  // The shell itself says what it makes of a word (POSIX, Shell Command Language, Quoting).
  it.each(['sessions/mill', 'my mill', 'a"b', '$HOME', "it's", '`id`', 'a\\b', '!x', 'ü ß', ''])(
    'quotes %j so that a shell takes it for one word, as it is',
    (word) => {
      const told = execFileSync('sh', ['-c', `printf '%s\\n' ${asWord(word)} end`], { encoding: 'utf8' });
      expect(told).toBe(`${word}\nend\n`);
    },
  );
});
