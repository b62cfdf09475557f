import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';

const present = spawnSync('socat', ['-V']).status === 0;

/** Tests that need a pseudo terminal: Node opens none, socat does. Skipped for all to see where it is missing, failed in CI. */
export function describeWithSocat(name: string, tests: () => void): void {
  describe.skipIf(!present)(`${name} (needs socat${present ? '' : ', which is not installed here'})`, tests);
  if (!present && process.env['CI'] === 'true')
    it(`${name} ran`, () => {
      expect(present, 'socat must be installed where CI=true').toBe(true);
    });
}

/** A pseudo terminal that stands in for a cable: what is written to `far` comes out of the device at `path`. */
export interface Cable {
  readonly far: ChildProcess;
  unplug(): Promise<void>;
}

export async function plugIn(path: string): Promise<Cable> {
  const far = spawn('socat', [`pty,raw,echo=0,link=${path}`, 'STDIO'], { stdio: ['pipe', 'pipe', 'ignore'] });
  const ended = new Promise((resolve) => far.once('exit', resolve));
  for (let tries = 0; !existsSync(path) && tries < 200; tries++) await pause(10);
  return {
    far,
    async unplug() {
      far.kill('SIGKILL');
      await ended;
    },
  };
}
