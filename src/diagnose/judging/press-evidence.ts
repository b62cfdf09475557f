import type { InputName, Subject, Switch } from '../../model/machine.ts';
import type { Missing, Resolution, Trace } from '../../model/verdict.ts';
import { pressAtShortest } from '../limits.ts';
import type { Excursion } from '../signal/excursion.ts';

/** What one press came to. */
export interface Pressed {
  readonly kind: 'pressed';
  /** The inputs that moved, first mover first; none: nothing answered. */
  readonly moved: readonly Excursion[];
  /** The person said "done": where nothing moved, only this shows that anything was pressed. */
  readonly confirmed: boolean;
  /** "Done" was said, not only seen. */
  readonly said: boolean;
  /** The controller went into fault on this press: it acts on the input. */
  readonly halted: boolean;
  /** Inputs that stayed away from rest though the person had let go. */
  readonly stuck: readonly InputName[];
  readonly resolution: Resolution | undefined;
  readonly trace: Trace;
}

/** Whether the level a switch starts from may be called its rest. */
export type RestCheck = 'at-rest' | 'explained' | 'in-doubt';

/** All presses of one switch. */
export interface PressEvidence {
  readonly subject: Subject;
  readonly flickers?: true;
  readonly missing?: Missing;
  /** Undefined where no hand went to the switch. */
  readonly rest: RestCheck | undefined;
  readonly presses: readonly Pressed[];
  readonly asked: number;
  /** What the person said of answers too brief for a held press. */
  readonly briefly?: 'pressed' | 'not-pressed' | 'unsure';
}

/** The one input that answered the presses of a switch: its own where it did, else the one that answered every time. */
export function answeringInput({ presses }: PressEvidence, { input }: Switch): InputName | undefined {
  const answered = presses.filter((each) => each.moved.length > 0);
  if (answered.length === 0) return undefined;
  const always = (candidate: InputName) =>
    answered.every((each) => each.moved.some((moved) => moved.input === candidate));
  if (always(input)) return input;
  if (answered.some((each) => each.moved.some((moved) => moved.input === input))) return undefined;
  const first = answered[0]?.moved.map((each) => each.input) ?? [];
  return first.find(always);
}

/** How many presses an input moved with. */
export const answersOf = (item: PressEvidence, input: InputName): number =>
  item.presses.filter((each) => each.moved.some((moved) => moved.input === input)).length;

/** Another input moved for as long as a press, and the switch's own kept still. One that moves more briefly makes no press of a missed one. */
export const isElsewhere = ({ moved }: Pressed, own: InputName): boolean =>
  !moved.some(({ input }) => input === own) &&
  moved.some(({ returned, firstAt, lastAt }) => !returned || lastAt - firstAt >= pressAtShortest);
