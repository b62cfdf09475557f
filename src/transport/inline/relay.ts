import type { Socket } from 'node:net';
import type { SourceEvent } from '../../model/source.ts';
import type { KeptSource } from '../kept-open.ts';

/** What a person beside the relay should know. */
export type RelayNote =
  | { readonly kind: 'program-came' | 'program-left' | 'program-refused' | 'controller-back' }
  | { readonly kind: 'controller-lost'; readonly why: string }
  /** It read nothing for so long that no more could be kept for it. */
  | { readonly kind: 'program-stuck'; readonly waiting: number }
  /** Bytes of the program that found no controller: they are never sent later. */
  | { readonly kind: 'not-sent'; readonly bytes: number };

export interface RelayOptions {
  readonly controller: KeptSource;
  /** Sees everything that passes, in its order, and may take its time: it is called after the bytes went on. */
  readonly capture: {
    heard(event: SourceEvent): void;
    sent(bytes: Uint8Array): void;
  };
  readonly note: (note: RelayNote) => void;
  /** How much is kept for a program that does not read before it is let go. Bytes. */
  readonly mostWaiting?: number;
}

/** At 115200 baud some 20 minutes of a controller that never pauses. */
const usualWaiting = 16 * 1024 * 1024;
/** How much of the program's may wait for the controller before the program is made to wait. */
const mostAhead = 64 * 1024;
/** A listener beside the line that falls this far behind is let go. */
const mostBehind = 4 * 1024 * 1024;

/**
 * Sits between a controller and the operator's own program: each byte goes on unchanged, in its order, as soon as it came. The
 * program never holds up the controller; where the port is gone its bytes are dropped, as by a cable that was pulled, because a
 * command that comes late moves a machine nobody expects to move.
 */
export class Relay {
  private readonly options: RelayOptions;
  private program: Socket | undefined;
  private readonly listeners = new Set<Socket>();
  private ahead = 0;
  readonly counts = { fromController: 0, fromProgram: 0, notSent: 0 };

  constructor(options: RelayOptions) {
    this.options = options;
  }

  /** Opens the controller's port; rejects with a ToolError where it cannot be opened. */
  open(): Promise<void> {
    const { controller, capture, note } = this.options;
    let lost = false;
    return controller.open((event) => {
      if (event.kind === 'bytes') this.fromController(event.bytes);
      if (event.kind === 'lost') note({ kind: 'controller-lost', why: event.why });
      if (event.kind === 'opened' && lost) note({ kind: 'controller-back' });
      lost ||= event.kind === 'lost';
      capture.heard(event);
    });
  }

  /** The operator's program; a second one beside it is refused: two cannot command one machine. */
  join(socket: Socket): void {
    const { note } = this.options;
    socket.on('error', () => {});
    if (this.program !== undefined) {
      socket.destroy();
      note({ kind: 'program-refused' });
      return;
    }
    this.program = socket;
    socket.setNoDelay(true);
    socket.on('data', (bytes: Buffer) => this.fromProgram(bytes, socket));
    socket.on('close', () => {
      if (this.program !== socket) return;
      this.program = undefined;
      note({ kind: 'program-left' });
    });
    note({ kind: 'program-came' });
  }

  /** Someone who only listens: gets what the controller says; what it says itself goes nowhere. */
  listen(socket: Socket): void {
    this.listeners.add(socket);
    socket.setNoDelay(true);
    socket.on('error', () => {});
    socket.on('close', () => this.listeners.delete(socket));
    socket.resume();
  }

  async close(): Promise<void> {
    for (const socket of [this.program, ...this.listeners]) socket?.destroy();
    await this.options.controller.close();
  }

  private fromController(bytes: Uint8Array): void {
    this.counts.fromController += bytes.length;
    const { program, options } = this;
    if (program && !program.destroyed) {
      program.write(bytes);
      const waiting = program.writableLength;
      if (waiting > (options.mostWaiting ?? usualWaiting)) {
        options.note({ kind: 'program-stuck', waiting });
        program.destroy();
      }
    }
    for (const listener of this.listeners) {
      listener.write(bytes);
      if (listener.writableLength > mostBehind) listener.destroy();
    }
  }

  private fromProgram(bytes: Buffer, socket: Socket): void {
    const { controller, capture, note } = this.options;
    this.counts.fromProgram += bytes.length;
    try {
      controller.write(bytes);
    } catch {
      this.counts.notSent += bytes.length;
      note({ kind: 'not-sent', bytes: bytes.length });
      return;
    }
    capture.sent(bytes);
    this.ahead += bytes.length;
    if (this.ahead > mostAhead) socket.pause();
    void controller.flushed().then(() => {
      this.ahead -= bytes.length;
      if (this.ahead <= mostAhead / 2) socket.resume();
    });
  }
}
