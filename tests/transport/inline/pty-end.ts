import { nativeBinding } from '../../../src/transport/serial-binding.ts';

/** One end of a cable as another program would open it, with the real binding. */
export interface PtyEnd {
  /** Resolves when the system has taken it all. */
  write(bytes: Buffer): Promise<void>;
  readonly length: number;
  heard(): Buffer;
  close(): Promise<void>;
}

export async function openEnd(path: string, baudRate: number): Promise<PtyEnd> {
  const binding = await nativeBinding();
  const handle = await binding.open({ path, baudRate, hupcl: true, lock: true, rtscts: false });
  const parts: Buffer[] = [];
  let length = 0;
  let open = true;
  const read = async () => {
    const buffer = Buffer.alloc(65_536);
    while (open) {
      const found = await handle.read(buffer, 0, buffer.length).catch(() => undefined);
      if (found === undefined) return;
      parts.push(Buffer.from(buffer.subarray(0, found.bytesRead)));
      length += found.bytesRead;
    }
  };
  void read();
  return {
    async write(bytes) {
      for (let at = 0; at < bytes.length; at += 4096) await handle.write(bytes.subarray(at, at + 4096));
    },
    get length() {
      return length;
    },
    heard: () => Buffer.concat(parts),
    async close() {
      open = false;
      await handle.close().catch(() => undefined);
    },
  };
}
