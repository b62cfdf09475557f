import { Duplex } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { joinClient } from '../../src/bench/client.ts';
import { stand } from './stand.ts';

/** A client of which nothing is read any more. */
const stuck = () => new Duplex({ read() {}, write() {} });

describe('a client', () => {
  it('that does not read is left out of reports instead of being kept a heap of them', () => {
    const { bench, wait } = stand();
    const client = stuck();
    joinClient(bench, client);
    wait(1000);
    const early = client.writableLength;
    expect(early).toBeGreaterThan(5000);
    wait(60_000);
    expect(client.writableLength).toBeLessThan(17_000);
  });

  it('that goes away with an error is forgotten', async () => {
    const { bench, wait } = stand();
    const client = stuck();
    joinClient(bench, client);
    client.destroy(new Error('reset by the other side'));
    await new Promise((resolve) => client.once('close', resolve));
    const before = client.writableLength;
    wait(1000);
    expect(client.writableLength).toBe(before);
  });
});
