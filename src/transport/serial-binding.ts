import { waitsForBoth } from './both-waits.ts';

/** What we use of a serialport binding; the native one and @serialport/binding-mock have this shape. */
export interface SerialBinding {
  open(options: {
    path: string;
    baudRate: number;
    hupcl: boolean;
    lock: boolean;
    rtscts: boolean;
  }): Promise<SerialHandle>;
  list(): Promise<readonly ListedPort[]>;
}

export interface SerialHandle {
  /** Resolves with at least one byte; rejects when the port is closed or gone. */
  read(buffer: Buffer, offset: number, length: number): Promise<{ readonly bytesRead: number }>;
  write(bytes: Buffer): Promise<void>;
  close(): Promise<void>;
}

export interface ListedPort {
  readonly path: string;
  readonly manufacturer: string | undefined;
  readonly serialNumber: string | undefined;
  readonly vendorId: string | undefined;
  readonly productId: string | undefined;
}

/** The binding of this system. Loaded only when a port is wanted: it is native code, and most commands need none. */
export async function nativeBinding(): Promise<SerialBinding> {
  const { SerialPort } = await import('serialport');
  const { binding } = SerialPort;
  return {
    open: async (options) => waitsForBoth(await binding.open(options)),
    list: () => binding.list(),
  };
}
