import type { InputName, Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { isElsewhere, type PressEvidence, type Pressed } from '../judging/press-evidence.ts';
import { cleanEdges, pressAtShortest, timeToAnswer, unansweredEnds } from '../limits.ts';
import type { Asking, Latest } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';
import { pressOnce } from './press-once.ts';
import { restMustBeRest } from './rest-must-be-rest.ts';

/** All presses of one switch, from rest. */
export function* pressSwitch(
  pressed: Switch,
  deaf: readonly InputName[],
  scene: Scene,
  latest: Latest,
): Asking<PressEvidence> {
  const { subject, input } = pressed;
  const { streamInputs } = scene;
  let rounds = scene.presses;
  const rest = yield* restMustBeRest('press', pressed, input, scene, latest);
  const presses: Pressed[] = [];
  // An input the stream does not carry cannot answer; one press shows whether another does.
  const enough = streamInputs.includes(input) ? unansweredEnds : 1;
  for (let round = 1; round <= rounds; round++) {
    const press = {
      check: 'press',
      round,
      rounds,
      expect: 'answer',
      deaf,
      label: 'press',
      onGap: 'repeat',
    } as const;
    const outcome = yield* pressOnce(pressed, press, latest);
    if (outcome.kind === 'refused') {
      if (round > scene.presses) break;
      return { subject, missing: outcome.why, rest, presses, asked: round };
    }
    presses.push(outcome);
    if (presses.filter((each) => each.moved.length === 0).length >= enough) break;
    const unclean = presses.filter(isUnclean).length;
    // One press that went to and fro may be a finger that slipped: as many clean ones again tell it from a contact that does.
    if (round === scene.presses && unclean === 1) rounds += scene.presses;
    // One that another input answered may have been another switch: it comes again, once.
    else if (round === scene.presses) rounds += elsewhere(presses, input);
    if (round > scene.presses && unclean > 1) break;
  }
  const evidence = { subject, rest, presses, asked: presses.length };
  if (!presses.every(isTooBrief)) return evidence;
  const ask = {
    check: 'press',
    action: 'confirm',
    topic: 'pressed',
    subject,
    seconds: timeToAnswer,
  } as const;
  const { answer } = yield* untilUnbroken(ask, latest);
  return { ...evidence, briefly: answer === 'yes' ? 'pressed' : answer === 'no' ? 'not-pressed' : 'unsure' };
}

/** How many went to another input, where most went to the own one. */
function elsewhere(presses: readonly Pressed[], own: InputName): number {
  const others = presses.filter((each) => isElsewhere(each, own)).length;
  const answered = presses.filter(({ moved }) => moved.some((each) => each.input === own)).length;
  return answered > others ? others : 0;
}

const isUnclean = ({ moved }: Pressed): boolean => moved.some(({ edges }) => edges > cleanEdges);

/** Seen, not said, and shorter than any press: flicker looks like this, and so does a controller that reports only the release. */
const isTooBrief = ({ moved, said }: Pressed): boolean =>
  !said &&
  moved.length > 0 &&
  moved.every((each) => each.returned && each.lastAt - each.firstAt < pressAtShortest);
