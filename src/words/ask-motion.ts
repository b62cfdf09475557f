import type { Ask, Late } from '../model/ask.ts';
import type { ConfirmOf } from '../model/confirm-ask.ts';
import type { Machine } from '../model/machine.ts';
import { cautions, dropCautions } from './cautions.ts';
import type { AskWords } from './instruction.ts';

type Of<Action extends Ask['action']> = Extract<Ask, { readonly action: Action }>;

/** How late a warning comes, in time and in way, as it was measured on this machine. */
function lateText(late: Late | undefined, isRotary: boolean): string {
  if (!late) return '';
  const unit = isRotary ? 'degrees' : 'mm';
  const way = late.by === undefined ? '' : `, about ${late.by} ${unit} of travel`;
  return ` Do not wait for me: I may be late by two reports, ${late.after} ms${way}.`;
}

const moving = (machine: Machine): readonly string[] => [
  ...cautions('listens', 'lateByTwo', 'yourControl', 'stayClear', 'clothing'),
  ...dropCautions(machine),
];

const isRotary = (axis: string, machine: Machine): boolean =>
  machine.axes.find(({ letter }) => letter === axis)?.kind === 'rotary';

export const seekWords = ({ axis, late }: Of<'seek'>, machine: Machine): AskWords => ({
  text: `By your own control, send ${axis} towards its home switch, at its lowest speed, with your hand on the stop. Stop it yourself where it goes away from the switch or pushes on after it.${lateText(late, isRotary(axis, machine))}`,
  cautions: moving(machine),
  short: `Send ${axis} to its home switch`,
});

export const homeWords = ({ axis, late }: Of<'home'>, machine: Machine): AskWords => ({
  text: `By your own control, start the homing of ${axis === 'all' ? 'all axes' : axis}, with your hand on the stop. Let it come to its end unless something goes wrong.${lateText(late, isRotary(axis, machine))}`,
  cautions: moving(machine),
  short: axis === 'all' ? 'Home all axes' : `Home ${axis}`,
});

export const hardWiredStop = (_ask: ConfirmOf<'hard-wired-stop'>, machine: Machine): AskWords => ({
  text: 'The machine file names no stop input. Is there a stop within your reach, wired so that it takes the power from the drives whatever the controller does, and have you seen it work today? Answer yes only if both are so.',
  cautions: [...cautions('listens', 'statusNoProof', 'licensed'), ...dropCautions(machine)],
  short: 'A hard-wired stop, seen to work?',
});

/** Where the whole travel is shorter, no one can keep so much free. */
const middleBelow = 110;

export function wayFreeWords({ axis }: ConfirmOf<'way-free'>, machine: Machine): AskWords {
  const found = machine.axes.find((each) => each.letter === axis);
  const room =
    found?.kind === 'rotary'
      ? 'at least 50 degrees free either way'
      : found?.travel !== undefined && found.travel < middleBelow
        ? 'in the middle of its travel'
        : 'at least 50 mm free on both sides';
  return {
    text: `Is the path of ${axis} clear: ${room}, off its switches, no tool in, spindle off, no work and no clamp in reach, every prop taken out? Answer yes only after you have looked.`,
    cautions: [...cautions('listens', 'stayClear', 'clothing'), ...dropCautions(machine)],
    short: `Is the path of ${axis} clear, both ways?`,
  };
}
