import type { Finding, FindingKind } from '../../model/finding.ts';
import { visible } from '../../model/visible.ts';
import {
  axisOrder,
  gantry,
  headsAway,
  headsForWork,
  mirrored,
  stopTold,
  turned,
  wrongSwitch,
} from './direction.ts';
import type { Change, FindingEntry, FindingScene } from './entry.ts';
import {
  doesNotClear,
  endsInFault,
  noReversal,
  otherAxisMoves,
  referenceLost,
  slowNotSlower,
  turnsOneWay,
  zeroedInPlace,
  zeroNotSet,
} from './homing.ts';
import {
  backOffUnfit,
  homeOutsideSoft,
  littleRoomToStop,
  outsideSoftLimits,
  softLimitsMistyped,
  softLimitsOutside,
  switchBehindStop,
  workOffsetDoubtful,
  zeroNotAtHome,
} from './limits.ts';
import {
  anotherAnswered,
  answersElsewhere,
  chainBlocked,
  conflictingAnswers,
  inputNotInStream,
  movesTogether,
  shiftedPlug,
  sideClash,
} from './mapping.ts';
import { alreadyOpen, breakUndetected, floatsOpen, stillOut, wrongPlug } from './open-wire.ts';
import {
  declaredOtherwise,
  notEnabled,
  polarityReversed,
  polarityShared,
  polarityUnknown,
} from './polarity.ts';
import { backlash, scaleOff, waysDiffer } from './scale.ts';
import {
  blockedElsewhere,
  crawls,
  inferredTrip,
  noTrip,
  notActedOn,
  overruns,
  pressedAtStart,
  scatteredTrips,
} from './seek.ts';
import {
  chatters,
  flickers,
  missesPresses,
  neverChanges,
  slowAnswer,
  sticks,
  stuckActive,
} from './silent.ts';
import { falseTrips } from './soak.ts';
import { doesNotLatch, powerStaysOn, restarts, statusNotFollowing } from './stop.ts';
import { controllerRestarted, streamGaps } from './stream.ts';

/** One entry, many mouths: the report, `explain` and the page of all findings speak from here. */
export const findingWords = {
  'break-undetected': breakUndetected,
  'polarity-reversed': polarityReversed,
  'polarity-shared': polarityShared,
  'polarity-unknown': polarityUnknown,
  'never-changes': neverChanges,
  'stuck-active': stuckActive,
  'already-open': alreadyOpen,
  flickers,
  'answers-elsewhere': answersElsewhere,
  'shifted-plug': shiftedPlug,
  'moves-together': movesTogether,
  'chain-blocked': chainBlocked,
  chatters,
  'misses-presses': missesPresses,
  'another-answered': anotherAnswered,
  sticks,
  'slow-answer': slowAnswer,
  'floats-open': floatsOpen,
  'declared-otherwise': declaredOtherwise,
  'not-enabled': notEnabled,
  'wrong-plug': wrongPlug,
  'still-out': stillOut,
  'power-stays-on': powerStaysOn,
  'status-not-following': statusNotFollowing,
  'does-not-latch': doesNotLatch,
  restarts,
  'false-trips': falseTrips,
  'controller-restarted': controllerRestarted,
  'conflicting-answers': conflictingAnswers,
  'input-not-in-stream': inputNotInStream,
  'side-clash': sideClash,
  'heads-away': headsAway,
  'heads-for-work': headsForWork,
  mirrored,
  turned,
  'wrong-switch': wrongSwitch,
  'pressed-at-start': pressedAtStart,
  'zeroed-in-place': zeroedInPlace,
  'zero-not-set': zeroNotSet,
  'no-reversal': noReversal,
  'does-not-clear': doesNotClear,
  'no-trip': noTrip,
  'inferred-trip': inferredTrip,
  overruns,
  'reference-lost': referenceLost,
  'not-acted-on': notActedOn,
  'axis-order': axisOrder,
  crawls,
  'blocked-elsewhere': blockedElsewhere,
  gantry,
  'ends-in-fault': endsInFault,
  'slow-not-slower': slowNotSlower,
  'turns-one-way': turnsOneWay,
  'other-axis-moves': otherAxisMoves,
  'scattered-trips': scatteredTrips,
  'stop-told': stopTold,
  'soft-limits-outside': softLimitsOutside,
  'soft-limits-mistyped': softLimitsMistyped,
  'little-room-to-stop': littleRoomToStop,
  'switch-behind-stop': switchBehindStop,
  'back-off-unfit': backOffUnfit,
  'home-outside-soft': homeOutsideSoft,
  'zero-not-at-home': zeroNotAtHome,
  'outside-soft-limits': outsideSoftLimits,
  'work-offset-doubtful': workOffsetDoubtful,
  'scale-off': scaleOff,
  backlash,
  'ways-differ': waysDiffer,
  'stream-gaps': streamGaps,
} satisfies { readonly [Kind in FindingKind]: FindingEntry<Kind> };

const entryOf = (finding: Finding): FindingEntry<FindingKind> =>
  findingWords[finding.kind] as unknown as FindingEntry<FindingKind>;

/** The case at hand in one sentence. */
export function saidOf(finding: Finding, scene: FindingScene): string {
  const said = visible(entryOf(finding).said(finding, scene));
  // A name of the person's own keeps the spelling it has in the file.
  return said.startsWith('the ') ? `The ${said.slice(4)}` : said;
}

/** The changes a person would make to cure it; none where it has to be looked for first. */
export const changesOf = (finding: Finding, scene: FindingScene): readonly Change[] =>
  entryOf(finding)
    .change(finding, scene)
    .map((each) => ({
      ...each,
      from: visible(each.from),
      to: visible(each.to),
      why: visible(each.why.charAt(0).toUpperCase() + each.why.slice(1)),
    }));
