import type { InputName, Subject, Switch } from '../../model/machine.ts';
import type { Check, Known, Procedure, Scene } from '../../model/procedure.ts';
import { type SideClash, sideClashes } from '../../model/side-clash.ts';
import type { Missing, Verdict } from '../../model/verdict.ts';
import { answeringInput, type PressEvidence } from '../judging/press-evidence.ts';
import { judgePresses } from '../judging/presses.ts';
import { shiftedPlugs } from '../judging/shifted-plug.ts';
import { withoutEvidence } from '../judging/status.ts';
import { withoutStrays } from '../judging/strays.ts';
import type { Latest } from '../procedures/asking.ts';
import { listenedFirst } from '../procedures/listened-first.ts';
import { motorsOff } from '../procedures/motors-off.ts';
import { pressSwitch } from '../procedures/press-switch.ts';
import { switchesAsked } from '../scope/switches-asked.ts';

type PressItem =
  | PressEvidence
  | { readonly motorsOff: true }
  | { readonly handsOff: Missing }
  | { readonly flickers: readonly InputName[] };

/**
 * Is each switch on the terminal it is drawn on, and does it answer when pressed and only then? Each is named and pressed, and
 * all inputs are watched: crossed wires answer on the neighbour, a plug one pin off answers one further along, touching wires
 * answer two at a time. Three good presses show the wiring, not the reliability.
 */
export const press: Check<PressItem> = { name: 'press', gather, judge, teaches };

function* gather(scene: Scene): Procedure<PressItem> {
  const latest: Latest = { status: scene.now };
  const missing = yield* motorsOff('press', scene, latest);
  yield { keep: missing ? { handsOff: missing } : { motorsOff: true } };
  const flickers = missing ? [] : yield* listenedFirst('press', scene, latest);
  if (flickers.length > 0) yield { keep: { flickers } };
  const deaf = [...scene.known.flickering, ...flickers];
  for (const each of switchesAsked(scene)) {
    if (missing) yield { keep: { subject: each.subject, missing, rest: undefined, presses: [], asked: 0 } };
    else if (deaf.includes(each.input)) yield { keep: flickering(each) };
    else yield { keep: yield* pressSwitch(each, deaf, scene, latest) };
  }
}

/** A level that changes by itself answers everything and nothing: no one is sent to press it. */
const flickering = ({ subject }: Switch): PressEvidence => ({
  subject,
  flickers: true,
  rest: undefined,
  presses: [],
  asked: 0,
});

const switchEvidence = (kept: readonly PressItem[]): readonly PressEvidence[] =>
  kept.filter((item) => 'subject' in item);

function judge(kept: readonly PressItem[], scene: Scene): readonly Verdict[] {
  const { evidence } = withoutStrays(switchEvidence(kept), scene);
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
  const { evidence, flickering: strays } = withoutStrays(switchEvidence(kept), scene);
  const heard = kept.flatMap((item) => ('flickers' in item && !('subject' in item) ? item.flickers : []));
  const handsOff = kept.flatMap((item) => ('handsOff' in item ? item.handsOff : []))[0];
  const answering: Record<Subject, string> = { ...scene.known.answering };
  for (const each of switchesAsked(scene)) {
    const item = evidence.find(({ subject }) => subject === each.subject);
    const by = item && answeringInput(item, each);
    if (by) answering[each.subject] = by;
  }
  return {
    restHeard: scene.known.restHeard || evidence.some((each) => !each.missing),
    flickering: [...new Set([...scene.known.flickering, ...heard, ...strays])],
    ...(handsOff && { handsOff }),
    answering,
    motorsOff: scene.known.motorsOff || kept.some((item) => 'motorsOff' in item),
    restInDoubt: evidence.filter((each) => each.rest === 'in-doubt').map((each) => each.subject),
    touchedAsked: evidence.filter((each) => each.rest === 'explained').map((each) => each.subject),
  };
}
