import { execFileSync, spawnSync } from 'node:child_process';
import { setTimeout as pause } from 'node:timers/promises';

export const hasTmux = spawnSync('tmux', ['-V']).status === 0;

/** A terminal of its own that can be resized, typed into, looked at and hung up. */
export class Terminal {
  private readonly server: string;

  /** Runs a shell command in a window of 80 by 24; the window stays when it has ended. */
  constructor(name: string, command: string, env: Readonly<Record<string, string>> = {}) {
    this.server = `tellwire-${process.pid}-${name}`;
    const given = Object.entries({ LC_ALL: 'C.UTF-8', ...env }).flatMap(([key, value]) => [
      '-e',
      `${key}=${value}`,
    ]);
    const size = ['-x', '80', '-y', '24'];
    this.tmux(
      '-f',
      '/dev/null',
      'new-session',
      '-d',
      '-s',
      'it',
      ...size,
      ...given,
      `${command}; echo "left with $?"; sleep 600`,
    );
  }

  type(key: string): void {
    this.tmux('send-keys', '-t', 'it', key);
  }

  /** Types text as it stands: no name of a key is looked for in it. */
  typeText(text: string): void {
    this.tmux('send-keys', '-t', 'it', '-l', text);
  }

  /** Keeps every byte that the program writes from now on. */
  record(path: string): void {
    this.tmux('pipe-pane', '-O', '-t', 'it', `cat >> ${path}`);
  }

  resize(width: number, height: number): void {
    this.tmux('resize-window', '-t', 'it', '-x', String(width), '-y', String(height));
  }

  /** What stands on it, row by row. */
  look(): string {
    return this.tmux('capture-pane', '-t', 'it', '-p');
  }

  /** The same with its attributes as escape sequences. */
  lookClosely(): string {
    return this.tmux('capture-pane', '-t', 'it', '-p', '-e');
  }

  /** Looks until it shows what is waited for; gives the whole picture, or fails with the last one. */
  async shows(what: RegExp | string, within = 15_000): Promise<string> {
    const until = performance.now() + within;
    for (;;) {
      const picture = this.look();
      if (typeof what === 'string' ? picture.includes(what) : what.test(picture)) return picture;
      if (performance.now() > until) throw new Error(`The screen never showed ${String(what)}:\n${picture}`);
      await pause(50);
    }
  }

  /** The line goes dead, as when a terminal window is closed. */
  hangUp(): void {
    spawnSync('tmux', ['-L', this.server, 'kill-server']);
  }

  private tmux(...args: readonly string[]): string {
    return execFileSync('tmux', ['-L', this.server, ...args], { encoding: 'utf8' });
  }
}
