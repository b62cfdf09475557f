/** The package ships its types where an ES module import does not find them; this is the part of them that the tests use. */
declare module '@serialport/binding-mock' {
  export interface MockPortBinding {
    /** Everything written, where the port was created with `record`. */
    readonly recording: Buffer;
    emitData(data: Buffer | string): void;
    read(buffer: Buffer, offset: number, length: number): Promise<{ buffer: Buffer; bytesRead: number }>;
    write(buffer: Buffer): Promise<void>;
    close(): Promise<void>;
  }
  export const MockBinding: {
    reset(): void;
    createPort(
      path: string,
      options?: { record?: boolean; maxReadSize?: number; manufacturer?: string },
    ): void;
    list(): Promise<
      readonly {
        path: string;
        manufacturer: string | undefined;
        serialNumber: string | undefined;
        vendorId: string | undefined;
        productId: string | undefined;
      }[]
    >;
    open(options: { path: string; baudRate: number; lock?: boolean }): Promise<MockPortBinding>;
  };
}
