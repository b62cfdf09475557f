import type { Axis } from './axis.ts';
import type { FieldLine, Leg } from './field-line.ts';
import { HandRefused } from './hand-refused.ts';
import type { World } from './world.ts';

/** The switch a hand was told to go to, and its line. Throws HandRefused where there is none. */
export function switchNamed(world: World, subject: string): { readonly line: FieldLine; readonly leg: Leg } {
  for (const line of world.wiring.lines) {
    const leg = line.leg(subject);
    if (leg) return { line, leg };
  }
  throw new HandRefused(
    `no switch ${subject}`,
    world.contacts.map(({ truth }) => truth.subject),
  );
}

export function axisNamed(world: World, letter: string): Axis {
  const axis = world.axes.find((each) => each.letter === letter);
  if (axis) return axis;
  throw new HandRefused(
    `no axis ${letter}`,
    world.axes.map((each) => each.letter),
  );
}
