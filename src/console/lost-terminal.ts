import { closeSync } from 'node:fs';
import { isatty } from 'node:tty';

let isCared = false;

/**
 * Node puts a terminal's settings back when it ends, and aborts where the terminal has gone meanwhile. What is closed by then
 * it leaves alone, so a terminal that no longer is one is closed first.
 */
export function endWithoutTerminal(): void {
  if (isCared) return;
  isCared = true;
  const terminals = [0, 1, 2].filter((fd) => isatty(fd));
  process.on('exit', () => {
    for (const fd of terminals.filter((each) => !isatty(each))) {
      try {
        closeSync(fd);
      } catch {
        // Already closed with the terminal.
      }
    }
  });
}
