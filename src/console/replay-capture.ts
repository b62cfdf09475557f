import { basename } from 'node:path';
import { visible } from '../model/visible.ts';
import { edges } from '../report/signals/edges.ts';
import { vcd } from '../report/signals/vcd.ts';
import { readBareCapture } from '../session/bare-capture.ts';
import { writeInPieces } from '../session/session-writer.ts';
import { captureWords } from '../words/capture-words.ts';
import { streamStatement } from '../words/watch-words.ts';
import type { CaptureThere } from './bare-capture-at.ts';
import { descriptionAt } from './read-stream.ts';
import { showJson, showLines } from './show.ts';
import { toolVersion } from './version.ts';

export interface CaptureWishes {
  readonly json: boolean;
  readonly vcd?: string;
  readonly csv?: string;
  readonly stream?: string;
}

/** Says what the stream of a capture said; judges nothing. */
export function showCapture({ capture, stream: beside }: CaptureThere, wishes: CaptureWishes): 0 {
  const named = wishes.stream ?? beside;
  const description = named === undefined ? undefined : descriptionAt(named);
  const found = readBareCapture(capture, description);
  const { stream, lasted, inputs, sent, damaged, signals } = found;
  const head = {
    toolVersion: toolVersion(),
    started: 'when is not known',
    machine: visible(basename(capture)),
    inputs: signals.inputs,
  };
  if (wishes.vcd !== undefined) writeInPieces(wishes.vcd, vcd(head, signals.events));
  if (wishes.csv !== undefined) writeInPieces(wishes.csv, edges(signals.events));
  if (wishes.json) showJson({ kind: 'capture', lasted, stream, inputs, sent, damaged });
  else
    showLines([
      captureWords.bare(capture),
      captureWords.lasted(lasted, stream.lines),
      ...(stream.reports > 0
        ? [streamStatement(stream)]
        : [description ? captureWords.noReport : captureWords.nativeTried]),
      ...inputs.map(({ input, changes, level, active }) => captureWords.input(input, changes, level, active)),
      ...(sent > 0 ? [captureWords.sent(sent)] : []),
      ...(damaged > 0 ? [captureWords.damaged(damaged)] : []),
    ]);
  return 0;
}
