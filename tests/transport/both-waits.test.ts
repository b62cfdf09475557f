import { EventEmitter } from 'node:events';
import { expect, it } from 'vitest';
import { waitsForBoth } from '../../src/transport/both-waits.ts';

/** A poller as the native one is seen from outside: it says what it was begun with. */
class Poller extends EventEmitter {
  readonly begun: number[] = [];
  poll(events: number): void {
    this.begun.push(events);
  }
  waitFor(event: string, flag: number): void {
    this.poll(flag);
    super.once(event, () => {});
  }
}

const [readable, writable] = [1, 2];

it('a read that begins to wait leaves a write waiting, and the other way round', () => {
  const poller = new Poller();
  waitsForBoth({ poller });
  poller.waitFor('writable', writable);
  poller.waitFor('readable', readable);
  poller.emit('readable');
  poller.waitFor('writable', writable);
  expect(poller.begun).toEqual([writable, readable | writable, writable]);
});

it('a handle without a poller is left as it is', () => {
  const handle = { close: async () => {} };
  expect(waitsForBoth(handle)).toBe(handle);
});
