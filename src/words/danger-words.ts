import type { Danger, DangerKind } from '../model/procedure.ts';

const stopNow = 'Stop it now, at the real stop.';

/** What is shown and sounded the moment it is seen. Short: it is read across a room. */
const words = {
  'heads-away': (axis) => `${stopNow} ${axis} runs away from its home switch.`,
  'heads-for-work': (axis) => `${stopNow} ${axis} runs towards the work.`,
  'wrong-switch': (axis) => `${stopNow} While ${axis} seeks, another switch answered.`,
  overruns: (axis) => `${stopNow} ${axis} pushes on after its switch answered.`,
  'does-not-clear': (axis) => `${stopNow} ${axis} backs off and its switch does not let go.`,
} satisfies Record<DangerKind, (axis: string) => string>;

export const dangerWords = ({ axis, finding }: Danger): string => words[finding](axis);
