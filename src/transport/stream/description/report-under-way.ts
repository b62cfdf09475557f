import type { Active, Activity, Level } from '../../../model/reading.ts';
import type { StreamDescription } from '../../../model/stream-description.ts';
import type { Millis, Mm } from '../../../model/units.ts';
import type { InputState, LineSays } from './compiled.ts';

export interface States {
  readonly arrived: Millis;
  readonly activity: Activity | undefined;
  readonly levels: readonly Level[];
  readonly active: readonly Active[];
  readonly positions: readonly (Mm | undefined)[];
}

/**
 * Puts the lines of one report together. It is whole when everything bound has been told; where a line tells again what was told
 * already, the next report has begun, and what the last one left out stays unknown.
 */
export function reportUnderWay({ inputs, axes, activity }: StreamDescription) {
  let states = new Map<number, InputState>();
  let positions = new Map<number, Mm | undefined>();
  let doing: Activity | undefined;
  let last: Millis | undefined;

  const close = (): readonly States[] => {
    if (last === undefined) return [];
    const report: States = {
      arrived: last,
      activity: doing,
      levels: inputs.map((_, i) => states.get(i)?.level ?? '?'),
      active: inputs.map((_, i) => states.get(i)?.active ?? '?'),
      positions: axes.map((_, i) => positions.get(i)),
    };
    reset();
    return [report];
  };
  const reset = () => {
    states = new Map();
    positions = new Map();
    doing = undefined;
    last = undefined;
  };
  const isWhole = () =>
    states.size === inputs.length &&
    positions.size === axes.length &&
    (activity === undefined || doing !== undefined);

  return {
    take(line: LineSays, arrived: Millis): readonly States[] {
      const again =
        [...line.inputs.keys()].some((each) => states.has(each)) ||
        [...line.axes.keys()].some((each) => positions.has(each)) ||
        (line.activity !== undefined && doing !== undefined);
      const before = again ? close() : [];
      for (const [index, state] of line.inputs) states.set(index, state);
      for (const [index, position] of line.axes) positions.set(index, position);
      doing = line.activity ?? doing;
      last = arrived;
      return isWhole() ? [...before, ...close()] : before;
    },
    reset,
  };
}
