import { statSync } from 'node:fs';
import type { Timekeeper } from '../model/source.ts';
import { ms } from '../model/units.ts';
import { type Connection, type ConnectionEvents, type KeptSource, keptOpen } from './kept-open.ts';
import { nativeBinding, type SerialBinding, type SerialHandle } from './serial-binding.ts';
import { serialError } from './serial-errors.ts';

export interface SerialOptions {
  /** Bits a second. */
  readonly baud: number;
  readonly time: Timekeeper;
  /** The native one where left out; tests hand in @serialport/binding-mock. */
  readonly binding?: SerialBinding;
}

/** How often a silent port is looked at: its device may be gone without a read having failed. */
const lookEvery = ms(1000);
const chunk = 64 * 1024;

/**
 * A serial port as a source of bytes. It works on the binding itself, without the stream around it: each read is handed on with
 * the moment it ended, nothing is buffered in between, and opening does nothing but open.
 */
export function serialSource(path: string, { baud, time, binding }: SerialOptions): KeptSource {
  return keptOpen(path, time, async (events) => {
    const from = binding ?? (await nativeBinding());
    const device = deviceOf(path);
    let handle: SerialHandle;
    try {
      // `hupcl: false` asks that DTR be left alone, whose edges reset many boards: on Windows it then stays off; on Linux and macOS
      // nothing is added to what the device is set to, but the system itself raises DTR and RTS at an opening, and may drop them
      // when the last program closes the port. `lock`: no second program takes half of our lines.
      handle = await from.open({ path, baudRate: baud, hupcl: false, lock: true, rtscts: false });
    } catch (cause) {
      throw serialError(path, baud, cause);
    }
    return connection(path, handle, device, time, events);
  });
}

function connection(
  path: string,
  handle: SerialHandle,
  device: number | undefined,
  time: Timekeeper,
  events: ConnectionEvents,
): Connection {
  let open = true;
  let stopLooking = () => {};
  let written: Promise<unknown> = Promise.resolve();

  const close = async () => {
    if (!open) return;
    open = false;
    stopLooking();
    // A device that is gone may refuse to be closed; it is none the less.
    await handle.close().catch(() => undefined);
  };
  const lose = (why: string) => {
    if (!open) return;
    void close().then(() => events.lost(why));
  };

  const read = async () => {
    const buffer = Buffer.allocUnsafe(chunk);
    while (open) {
      const found = await handle.read(buffer, 0, chunk).catch((cause: unknown) => cause);
      if (!open) return;
      if (!isRead(found)) return lose(String(found instanceof Error ? found.message : found));
      events.bytes(Uint8Array.from(buffer.subarray(0, found.bytesRead)));
    }
  };

  // After a hang-up Linux answers reads with no bytes at once and for ever, and the native read goes on asking. The device file tells.
  const look = () => {
    if (device === undefined || !open) return;
    if (deviceOf(path) === device) stopLooking = time.after(lookEvery, look);
    else lose('the device is gone');
  };

  look();
  void read();
  return {
    write(bytes) {
      // One write at a time, as the binding asks.
      written = written
        .then(() => (open ? handle.write(Buffer.from(bytes)) : undefined))
        .catch((cause: unknown) => lose(String(cause instanceof Error ? cause.message : cause)));
    },
    flushed: () => written.then(() => undefined),
    async close() {
      // What was written last may leave first, unless the line is held up.
      let stopWaiting = () => {};
      const longEnough = new Promise<void>((resolve) => {
        stopWaiting = time.after(ms(200), resolve);
      });
      await Promise.race([written, longEnough]);
      stopWaiting();
      await close();
    },
  };
}

const isRead = (found: unknown): found is { readonly bytesRead: number } =>
  typeof found === 'object' && found !== null && 'bytesRead' in found;

/** The number of the device file; undefined where the system has none for it, or it is not there. */
function deviceOf(path: string): number | undefined {
  try {
    return statSync(path).ino;
  } catch {
    return undefined;
  }
}
