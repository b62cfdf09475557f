import type { StreamFacts } from '../../model/session-facts.ts';
import { streamStatement, watchWords } from '../../words/watch-words.ts';
import { inputRows } from './input-rows.ts';
import type { LiveInputs } from './live-inputs.ts';
import { type Canvas, clipped, type Row, row } from './row.ts';

export interface WatchState {
  readonly port: string;
  readonly inputs: LiveInputs;
  readonly facts: StreamFacts;
  /** What happened last, the newest at the end: marks, losses. */
  readonly said: readonly string[];
  /** Axis letters with their commanded places, as the stream tells them. */
  readonly places: readonly string[];
  readonly soak: string | undefined;
  /** The description's request is written to the port. */
  readonly hasRequest: boolean;
}

/** The watch as at most `height` rows: the inputs have the room, what was said last stands below them. */
export function watchRows(state: WatchState, canvas: Canvas): readonly Row[] {
  const head = [
    row(' tellwire listens only and cannot stop the machine', 'faint'),
    row(` ${state.port}: ${streamStatement(state.facts)}`),
    ...(state.soak === undefined ? [] : [row(` ${state.soak}`, 'caution')]),
    row(''),
  ];
  const foot = [
    ...(state.places.length === 0 ? [] : [row(` commanded: ${state.places.join('  ')}`, 'faint')]),
    row(` ${watchWords.keys(state.hasRequest)}`, 'marked'),
  ];
  const room = Math.max(0, canvas.height - head.length - foot.length);
  const live = inputRows(state.inputs, undefined, room, canvas);
  const left = Math.max(0, room - live.length - 1);
  const said = left === 0 ? [] : [row(''), ...state.said.slice(-left).map((each) => row(` ${each}`))];
  const rows = [...head, ...live, ...said];
  return [...rows.slice(0, canvas.height - foot.length), ...foot]
    .slice(0, canvas.height)
    .map((each) => clipped(each, canvas.width));
}
