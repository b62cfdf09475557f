import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';

/** Two pseudo terminals joined like the ends of a cable. */
export async function ptyPair(one: string, other: string): Promise<{ unplug(): Promise<void> }> {
  const socat: ChildProcess = spawn(
    'socat',
    ['-b65536', `PTY,rawer,link=${one}`, `PTY,rawer,link=${other}`],
    {
      stdio: 'ignore',
    },
  );
  const ended = new Promise((resolve) => socat.once('exit', resolve));
  for (let tries = 0; !(existsSync(one) && existsSync(other)) && tries < 300; tries++) await pause(10);
  return {
    async unplug() {
      socat.kill('SIGKILL');
      await ended;
    },
  };
}
