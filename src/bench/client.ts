import type { Duplex } from 'node:stream';
import type { Bench } from './bench.ts';

/** Bytes a client may leave unread before reports to it are left out, as a full serial buffer would. */
const mostUnread = 16_384;

/** Joins one client to the bench until it goes away, however it does. */
export function joinClient(bench: Bench, client: Duplex): void {
  const leave = bench.attach((bytes) => {
    if (client.writableLength < mostUnread) client.write(bytes);
  });
  client.on('data', (bytes: Uint8Array) => bench.receive(bytes));
  // A client that goes away in the middle is no event of the machine; `close` follows in any case.
  client.on('error', () => {});
  client.on('close', leave);
}
