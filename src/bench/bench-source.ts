import type { Source, SourceEvent, Timekeeper } from '../model/source.ts';
import type { Bench } from './bench.ts';

/** The bench as a port in the same process: what it sends arrives at the moment it is sent. */
export function benchSource(bench: Bench, time: Timekeeper): Source {
  let leave: (() => void) | undefined;
  return {
    port: 'bench',
    async open(listener: (event: SourceEvent) => void) {
      leave?.();
      listener({ kind: 'opened', arrived: time.now() });
      leave = bench.attach((bytes) => listener({ kind: 'bytes', arrived: time.now(), bytes }));
    },
    write: (bytes) => bench.receive(bytes),
    async close() {
      leave?.();
      leave = undefined;
    },
  };
}
