import type { VirtualTime } from '../../src/bench/virtual-time.ts';
import type { Source, SourceEvent } from '../../src/model/source.ts';
import { sumDigits } from '../../src/transport/stream/checksum.ts';

/** How the controller below is read. `every` ms it is asked. */
export const whenAsked = (every = 100): string => `stream: speaks when it is asked
request: { send: "tell\\n", every: ${every} }
inputs:
  x-home: { field: "pins", character: 0, length: 2, shows: active, active: ["1"], inactive: ["0"] }
  stop: { field: "pins", character: 1, length: 2, shows: active, active: ["1"], inactive: ["0"] }
axes: {}
activity: { field: "doing", still: ["rests"], moving: ["runs"], homing: [], fault: ["halted"] }
`;

/** Every write, with what the controller was doing at that moment. */
export interface Written {
  readonly text: string;
  readonly at: number;
  readonly moving: boolean;
}

/** Stands before a bench and speaks in words of its own, and only when it is asked with these very bytes. */
export class WhenAsked {
  readonly written: Written[] = [];
  /** An axis moves, as by somebody at the controller's own control. */
  moving = false;
  /** The same in native sentences, for whoever asks in vain. */
  native = false;
  private pins = '00';
  private rest = '';

  readonly through = (port: Source, time: VirtualTime): Source => {
    let hear: (event: SourceEvent) => void = () => {};
    return {
      ...port,
      open: (listener) => {
        hear = listener;
        return port.open((event) => {
          if (event.kind === 'bytes') this.take(event.bytes);
          else listener(event);
        });
      },
      write: (bytes) => {
        const text = Buffer.from(bytes).toString('latin1');
        this.written.push({ text, at: time.now(), moving: this.moving });
        if (text !== 'tell\n') return;
        const line = `doing=${this.moving ? 'runs' : 'rests'} pins=${this.pins}\r\n`;
        hear({ kind: 'bytes', arrived: time.now(), bytes: Buffer.from(line, 'latin1') });
      },
    };
  };

  /** What the bench reports in native sentences is what its pins are. */
  private take(bytes: Uint8Array): void {
    const lines = (this.rest + Buffer.from(bytes).toString('latin1')).split('\n');
    this.rest = lines.pop() ?? '';
    for (const line of lines) {
      const [, body = '', sum] = /\$(.*)\*(..)\r?$/.exec(line) ?? [];
      const fields = body.split(',');
      if (fields[0] === 'PTWRS' && sum === sumDigits(body)) this.pins = fields[5] ?? '';
    }
  }
}
