import type { AxisLetter, InputName } from '../../model/machine.ts';
import type { Field } from '../../model/stream-description.ts';
import type { Millis } from '../../model/units.ts';

/** One line as it was heard and taken apart. */
export interface HeardLine {
  readonly arrived: Millis;
  readonly fields: readonly Field[];
  readonly count: number;
}

/** What a person was asked for while lines were heard; `by` is signed, in mm or degrees. */
export type AskedWindow = { readonly from: Millis; readonly to: Millis } & (
  | { readonly kind: 'rest' }
  | { readonly kind: 'press'; readonly input: InputName }
  | { readonly kind: 'move'; readonly axis: AxisLetter; readonly by: number }
);

/** A stretch of time that counts as one trial: rest is cut into as many as it has room for. */
export interface Trial {
  readonly from: Millis;
  readonly to: Millis;
  readonly asked: AskedWindow;
}

/** About as long as a press takes. */
const restSlice = 3000;

export function trialsOf(windows: readonly AskedWindow[]): readonly Trial[] {
  return windows.flatMap((asked) => {
    const parts = asked.kind === 'rest' ? Math.max(1, Math.floor((asked.to - asked.from) / restSlice)) : 1;
    const length = (asked.to - asked.from) / parts;
    return Array.from({ length: parts }, (_, i) => ({
      from: (asked.from + i * length) as Millis,
      to: (asked.from + (i + 1) * length) as Millis,
      asked,
    }));
  });
}

/** The trial each line belongs to, by its place in the list; -1 between trials. Lines and trials in order of time. */
export function trialOfEach(lines: readonly HeardLine[], trials: readonly Trial[]): Int32Array {
  const found = new Int32Array(lines.length).fill(-1);
  let at = 0;
  for (const [i, { arrived }] of lines.entries()) {
    while (at < trials.length && arrived > (trials[at]?.to ?? 0)) at++;
    const trial = trials[at];
    if (trial && arrived >= trial.from) found[i] = at;
  }
  return found;
}
