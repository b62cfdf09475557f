import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import type { SourceEvent, Timekeeper } from '../../model/source.ts';
import { encodeEntry, toMicrosecond } from '../capture.ts';
import { hearing } from '../hearing.ts';
import { lineSplitter } from '../line-splitter.ts';

/** As much of a line as a description of any stream may read. Bytes. */
const longestLine = 8192;
const tickEvery = 100;

export interface CaptureWriter {
  heard(event: SourceEvent): void;
  sent(bytes: Uint8Array): void;
  close(): Promise<void>;
}

/** Writes a capture beside a running line: a few times a second and never in the way of it. Rejects where the file cannot be made. */
export async function captureWriter(path: string, port: string, time: Timekeeper): Promise<CaptureWriter> {
  const file = createWriteStream(path, { flags: 'wx' });
  await once(file, 'open');
  const entries = hearing(port, lineSplitter(longestLine));
  const began = time.now();
  const since = (moment: number) => toMicrosecond((moment - began) as typeof began);
  let waiting: string[] = [];
  const flush = () => {
    if (waiting.length > 0) file.write(waiting.join(''), 'latin1');
    waiting = [];
  };
  const timer = setInterval(flush, tickEvery);
  return {
    heard(event) {
      for (const entry of entries(event)) waiting.push(encodeEntry({ ...entry, at: since(entry.at) }));
    },
    sent(bytes) {
      for (let at = 0; at < bytes.length; at += longestLine) {
        const text = Buffer.from(bytes.subarray(at, at + longestLine)).toString('latin1');
        waiting.push(encodeEntry({ kind: 'tx', at: since(time.now()), text }));
      }
    },
    async close() {
      clearInterval(timer);
      flush();
      file.end();
      await once(file, 'close');
    },
  };
}
