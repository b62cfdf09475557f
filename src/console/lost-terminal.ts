import { closeSync } from 'node:fs';
import { isatty } from 'node:tty';

let isForgotten = false;
const terminals = [0, 1, 2].filter((fd) => isatty(fd));

/**
 * The terminal has gone. Node puts a terminal's settings back when it ends and aborts where that fails; what is closed by then
 * it leaves alone.
 */
export function forgetTerminal(): void {
  if (isForgotten) return;
  isForgotten = true;
  process.on('exit', () => {
    for (const fd of terminals) {
      try {
        closeSync(fd);
      } catch {
        // Already closed with the terminal.
      }
    }
  });
}
