const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Resolves when the program is told to end, or nobody reads what it says any more. */
export function untilEnded(): Promise<void> {
  return new Promise((end) => {
    const over = () => {
      for (const signal of signals) process.removeListener(signal, over);
      process.stdout.removeListener('error', over);
      end();
    };
    for (const signal of signals) process.on(signal, over);
    process.stdout.on('error', over);
  });
}
