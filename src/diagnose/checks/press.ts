import type { Subject, Switch } from '../../model/machine.ts';
import type { Check, Known, Procedure, Scene } from '../../model/procedure.ts';
import { type SideClash, sideClashes } from '../../model/side-clash.ts';
import type { Verdict } from '../../model/verdict.ts';
import { answeringInput, judgePresses, type PressEvidence } from '../judging/presses.ts';
import { shiftedPlugs } from '../judging/shifted-plug.ts';
import { withoutEvidence } from '../judging/status.ts';
import { unansweredEnds } from '../limits.ts';
import { type Asking, type Latest, switchesAsked } from '../procedures/asking.ts';
import { motorsOff } from '../procedures/motors-off.ts';
import { type Pressed, pressOnce } from '../procedures/press-once.ts';
import { restMustBeRest } from '../procedures/rest-must-be-rest.ts';

type PressItem = PressEvidence | { readonly motorsOff: true };

/**
 * Is each switch on the terminal it is drawn on, and does it answer when pressed and only then? Each is named and pressed, and
 * all inputs are watched: crossed wires answer on the neighbour, a plug one pin off answers one further along, touching wires
 * answer two at a time. Three good presses show the wiring, not the reliability.
 */
export const press: Check<PressItem> = { name: 'press', gather, judge, teaches };

function* gather(scene: Scene): Procedure<PressItem> {
  const latest: Latest = { status: scene.now };
  const missing = yield* motorsOff('press', scene, latest);
  if (!missing) yield { keep: { motorsOff: true } };
  for (const each of switchesAsked(scene)) {
    if (missing) yield { keep: { subject: each.subject, missing, rest: 'at-rest', presses: [], asked: 0 } };
    else if (scene.known.flickering.includes(each.input)) yield { keep: flickering(each) };
    else yield { keep: yield* pressSwitch(each, scene, latest) };
  }
}

/** A level that changes by itself answers everything and nothing: no one is sent to press it. */
const flickering = ({ subject }: Switch): PressEvidence => ({
  subject,
  flickers: true,
  rest: 'at-rest',
  presses: [],
  asked: 0,
});

function* pressSwitch(pressed: Switch, scene: Scene, latest: Latest): Asking<PressEvidence> {
  const { subject, input } = pressed;
  const rest = yield* restMustBeRest('press', pressed, input, scene, latest);
  const presses: Pressed[] = [];
  for (let round = 1; round <= scene.presses; round++) {
    const outcome = yield* pressOnce(
      pressed,
      {
        check: 'press',
        round,
        rounds: scene.presses,
        expect: 'answer',
        deaf: scene.known.flickering,
        label: 'press',
        onGap: 'repeat',
      },
      latest,
    );
    if (outcome.kind === 'refused') return { subject, missing: outcome.why, rest, presses, asked: round };
    presses.push(outcome);
    if (presses.filter((each) => each.moved.length === 0).length >= unansweredEnds) break;
  }
  return { subject, rest, presses, asked: presses.length };
}

function judge(kept: readonly PressItem[], scene: Scene): readonly Verdict[] {
  const evidence = kept.filter((item) => 'subject' in item);
  const shifted = shiftedPlugs(evidence, scene);
  const clashes = sideClashes(scene.machine);
  return switchesAsked(scene).map((each) => {
    const item = evidence.find(({ subject }) => subject === each.subject);
    if (!item) return withoutEvidence({ check: 'press', subject: each.subject }, 'stopped');
    return withClash(judgePresses(item, each, scene, shifted.get(each.subject)), clashes);
  });
}

/** Noted where a hand has just been at the switch: whoever writes the wrong end down often has the machine mirrored too. */
function withClash(verdict: Verdict, clashes: readonly SideClash[]): Verdict {
  const clash = clashes.find(({ subject }) => subject === verdict.subject);
  return clash ? { ...verdict, findings: [...verdict.findings, clash.finding] } : verdict;
}

function teaches(kept: readonly PressItem[], scene: Scene): Partial<Known> {
  const evidence = kept.filter((item) => 'subject' in item);
  const answering: Record<Subject, string> = { ...scene.known.answering };
  for (const each of switchesAsked(scene)) {
    const item = evidence.find(({ subject }) => subject === each.subject);
    const by = item && answeringInput(item, each);
    if (by) answering[each.subject] = by;
  }
  return {
    answering,
    motorsOff: scene.known.motorsOff || kept.some((item) => 'motorsOff' in item),
    restInDoubt: evidence.filter((each) => each.rest === 'in-doubt').map((each) => each.subject),
    touchedAsked: evidence.filter((each) => each.rest === 'explained').map((each) => each.subject),
  };
}
