import type { InputName } from '../../model/machine.ts';
import type { Mm } from '../../model/units.ts';
import type { Abilities } from '../motion/jumps.ts';
import type { Direction } from '../motion/runs.ts';
import type { State } from '../signal/track.ts';

/** What a seek of one axis should look like, and what it is watched against. */
export interface SeekExpectation extends Abilities {
  readonly axis: string;
  /** The commanded way to the end the switch stands at; undefined where nobody knows. */
  readonly toward: Direction | undefined;
  /** The commanded way to the work: negative on a Z above it (ISO 841). Only given where seeking that way is wrong by itself. */
  readonly towardWork?: Direction | undefined;
  /** The inputs that may trip it: its home switch, or both of a gantry. */
  readonly inputs: readonly InputName[];
  /** Inputs of other axes and ends whose trip is wrong, but for one that its own axis works by moving. */
  readonly others: readonly { readonly input: InputName; readonly axis?: string | undefined }[];
  /** ms. */
  readonly reaction?: number | undefined;
  readonly backOff?: Mm | undefined;
  /** The number the axis gets where it is zeroed. */
  readonly homeValue?: Mm | undefined;
  /** Whether `step` is known to be the grid of the reported positions. */
  readonly gridKnown: boolean;
  /** Inputs' states when free, where the stream carries levels alone. */
  readonly rest: Readonly<Record<InputName, State>>;
}
