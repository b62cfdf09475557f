import type { Line, Reading } from '../model/reading.ts';
import type { SourceEvent } from '../model/source.ts';
import type { CaptureEntry } from './capture.ts';
import { type LineSplitter, lineSplitter } from './line-splitter.ts';
import type { Decoder } from './stream/decoder.ts';

/**
 * From what a port hands over to what is kept of it. Live readings are made from these entries, as replayed ones are, so that a
 * capture cannot say anything else than the session heard.
 */
export function hearing(port: string, splitter: LineSplitter = lineSplitter()) {
  const received = ({ arrived, text, cut }: Line): CaptureEntry => ({ kind: 'rx', at: arrived, text, cut });
  return (event: SourceEvent): readonly CaptureEntry[] => {
    if (event.kind === 'bytes') return splitter.push(event.bytes, event.arrived).map(received);
    // A line whose end was never heard ends where the port did.
    const unfinished = splitter.flush(event.arrived);
    const entry: CaptureEntry =
      event.kind === 'lost'
        ? { kind: 'gap', at: event.arrived, text: latin1(event.why) }
        : { kind: 'opening', at: event.arrived, text: latin1(port) };
    return unfinished === undefined ? [entry] : [received(unfinished), entry];
  };
}

/** What a kept entry says. */
export function readingsOf(entry: CaptureEntry, decoder: Decoder): readonly Reading[] {
  if (entry.kind === 'rx') return decoder.decode({ arrived: entry.at, text: entry.text, cut: entry.cut });
  if (entry.kind === 'tx') return [];
  return decoder.gap(entry.at, entry.kind === 'gap' ? 'lost-port' : 'opened');
}

const latin1 = (text: string) => text.replace(/[^\x00-\xff]/g, '?');
