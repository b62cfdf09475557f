/** What of a native handle wakes who waits for it to become readable or writable; the binding for Windows has none. */
interface Poller {
  poll(events: number): void;
  listenerCount(event: string): number;
}

/** As @serialport/bindings-cpp counts them. */
const events = { readable: 1, writable: 2, disconnect: 4 } as const;
const names = Object.keys(events) as (keyof typeof events)[];

const isPoller = (found: unknown): found is Poller =>
  typeof found === 'object' && found !== null && 'poll' in found && 'listenerCount' in found;

/**
 * Lets a handle be waited for both ways at once. The poller of @serialport/bindings-cpp 13.0.0 begins to wait for what it was asked last,
 * and for that alone (src/poller.cpp): a read that finds nothing makes it forget that a write waits for room, and the write stands still
 * until something is read again.
 */
export function waitsForBoth<Handle extends object>(handle: Handle): Handle {
  const poller: unknown = 'poller' in handle ? handle.poller : undefined;
  if (!isPoller(poller)) return handle;
  const begin = poller.poll.bind(poller);
  poller.poll = (asked) =>
    begin(names.reduce((all, name) => (poller.listenerCount(name) > 0 ? all | events[name] : all), asked));
  return handle;
}
