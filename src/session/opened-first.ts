import type { Source, SourceEvent, Timekeeper } from '../model/source.ts';

/**
 * Opens a port before anything else is begun: one that cannot be opened leaves no half session behind. What it says meanwhile is
 * handed on, in order, to whoever opens the returned source, as arrived at that moment: the session's clock begins no sooner.
 */
export async function openedFirst(source: Source, time: Timekeeper): Promise<Source> {
  let early: SourceEvent[] = [];
  let hear: (event: SourceEvent) => void = (event) => early.push(event);
  await source.open((event) => hear(event));
  return {
    port: source.port,
    async open(listener) {
      hear = listener;
      const waiting = early;
      early = [];
      for (const event of waiting) listener({ ...event, arrived: time.now() });
    },
    write: (bytes) => source.write(bytes),
    close: () => source.close(),
  };
}
