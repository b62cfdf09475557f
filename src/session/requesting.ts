import type { StreamRequest } from '../model/stream-description.ts';
import { type Millis, ms } from '../model/units.ts';

export interface RequestingParts {
  /** Undefined: nothing is ever written. */
  readonly request: StreamRequest | undefined;
  readonly write: (text: string) => void;
  /** Something moves, for all that is known. */
  readonly isMoving: () => boolean;
  readonly after: (delay: Millis, then: () => void) => () => void;
}

/**
 * Writes the request of a description at its pace, which the person let pass. While the controller says that something moves,
 * nothing is written; as it then may say nothing more, only the person can say that it stands still again.
 */
export class Requesting {
  private readonly parts: RequestingParts;
  private next: (() => void) | undefined;
  /** Something moved when last asked. */
  private isPaused = false;
  /** How often it was written. */
  times = 0;

  constructor(parts: RequestingParts) {
    this.parts = parts;
  }

  /** The port is open. */
  begin(): void {
    this.end();
    this.ask();
  }

  /** The port is not open any more. */
  end(): void {
    this.next?.();
    this.next = undefined;
  }

  /** The person says that nothing moves. */
  standsStill(): void {
    this.isPaused = false;
  }

  private ask(): void {
    const { request, isMoving, write, after } = this.parts;
    if (!request) return;
    this.isPaused ||= isMoving();
    if (!this.isPaused) {
      this.times++;
      write(request.send);
    }
    this.next = after(ms(request.every), () => this.ask());
  }
}

/** The bytes of a text of latin1 characters. */
export const bytesOf = (text: string): Uint8Array =>
  Uint8Array.from(text, (character) => character.charCodeAt(0));
