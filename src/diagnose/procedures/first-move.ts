import type { AxisLetter } from '../../model/machine.ts';
import type { FirstMove, Scene } from '../../model/procedure.ts';
import type { CheckName, Missing } from '../../model/verdict.ts';
import { firstMove, timeToAnswer, timeToMove } from '../limits.ts';
import { type Motion, motionOf } from '../motion/motion.ts';
import type { Moving } from '../motion/runs.ts';
import { abilitiesOf } from '../seek/abilities.ts';
import { seekRoles } from '../seek/roles.ts';
import { type Asking, type Latest, put, refusal } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';

/**
 * The first move of an axis: 5 mm away from its switch, which way the tool went over the work, and back again. Whatever is set wrong shows here where nothing can
 * be hit yet. Returns what is missing where it was not made.
 */
export function* moveFirst(
  check: CheckName,
  letter: AxisLetter,
  scene: Scene,
  latest: Latest,
): Asking<FirstMove | Missing> {
  const roles = seekRoles(scene.machine, letter, scene.known.answering);
  if (!roles) return 'no-home-switch';
  const away = roles.toward === 1 ? 'negative' : 'positive';
  const ask = {
    check,
    action: 'move',
    axis: letter,
    distance: firstMove,
    unit: roles.axis.kind === 'rotary' ? 'degrees' : 'mm',
    seconds: timeToMove,
  } as const;
  const moved = yield* untilUnbroken({ ...ask, direction: away }, latest);
  const window = moved.window;
  const first = moveAsked(motionOf(window, letter, abilitiesOf(roles.axis, [window])));
  const why = refusal(moved);
  if (!first && why) return why;
  const commanded = first?.direction;
  const tool = yield* toolSeen(check, letter, latest);
  if (!first && (tool === undefined || tool === 'none')) return { window, commanded, tool };
  if (tool === 'none') {
    const ask = { check, action: 'look', topic: 'moved-other', axis: letter, seconds: timeToAnswer } as const;
    const { answer } = yield* untilUnbroken(ask, latest);
    if (answer === 'yes') {
      const otherWay = yield* otherSeen(check, letter, scene, latest);
      return { window, commanded, tool, other: true, ...(otherWay && { otherWay }) };
    }
  }
  const direction = away === 'positive' ? 'negative' : 'positive';
  const returned = yield* put({ ...ask, direction }, latest);
  if (refusal(returned) === 'skipped') return 'skipped';
  // One that went the wrong way may go that way whatever it is told.
  const isAgainst = tool !== undefined && tool !== 'none' && (tool === 'positive') !== (commanded === 1);
  return isAgainst
    ? { window, commanded, tool, back: yield* toolSeen(check, letter, latest) }
    : { window, commanded, tool };
}

/** Of several ways the one as long as asked for: an axis may still have been coming to rest, and a hand corrects itself. */
function moveAsked({ runs, samples }: Motion): Moving | undefined {
  const off = ({ from, to }: Moving) =>
    Math.abs(Math.abs((samples[to]?.position ?? 0) - (samples[from]?.position ?? 0)) - firstMove);
  return runs.filter((run) => run.kind === 'moving').sort((a, b) => off(a) - off(b))[0];
}

/** Asked axis by axis: the first that the tool went along is the one whose motor was driven. */
function* otherSeen(
  check: CheckName,
  letter: AxisLetter,
  { machine }: Scene,
  latest: Latest,
): Asking<FirstMove['otherWay']> {
  for (const { letter: axis, kind } of machine.axes) {
    if (axis === letter || kind === 'rotary') continue;
    const tool = yield* toolSeen(check, axis, latest);
    if (tool === 'positive' || tool === 'negative') return { axis, tool };
  }
  return undefined;
}

/** Which way the tool went over the work, as far as the person is sure. */
export function* toolSeen(check: CheckName, axis: AxisLetter, latest: Latest): Asking<FirstMove['tool']> {
  const ask = { check, action: 'look', topic: 'direction', axis, seconds: timeToAnswer } as const;
  const { answer } = yield* untilUnbroken(ask, latest);
  return answer === 'positive' || answer === 'negative' || answer === 'none' ? answer : undefined;
}
