import { writeRequest } from './stream.ts';

const request = writeRequest().trimEnd();

/** Listens for whole requests among bytes that come in pieces; keeps no more than one line of them. */
export class RequestEar {
  private line = '';

  /** How many requests came to their end with these bytes. */
  take(bytes: Uint8Array): number {
    let asked = 0;
    for (const byte of bytes) {
      if (byte === 0x0a) {
        if (this.line.slice(this.line.lastIndexOf('$')).trimEnd() === request) asked++;
        this.line = '';
      } else this.line = (this.line + String.fromCharCode(byte)).slice(-64);
    }
    return asked;
  }
}
