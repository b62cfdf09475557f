import { allSwitches, type Switch } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import type { CheckName, Missing } from '../../model/verdict.ts';
import { timeToPlug } from '../limits.ts';
import { stateIn } from '../signal/track.ts';
import { type Asking, type Latest, refusal } from './asking.ts';
import { untilUnbroken } from './motors-off.ts';

/** What a motion that was stopped left behind, put right by the person before anything moves again. */
export interface Righted {
  /** A stop was let out: the drives may have lost their power. */
  readonly letOut: boolean;
  readonly missing: Missing | undefined;
}

/** A stop that still reads operated is let out, then a halt is cleared by her own control; where neither is so, nothing is asked. */
export function* rightAfterHalt(check: CheckName, scene: Scene, latest: Latest): Asking<Righted> {
  let letOut = false;
  for (const stop of allSwitches(scene.machine).filter(({ duty }) => duty.includes('stop'))) {
    const input = scene.known.answering[stop.subject] ?? stop.input;
    if (!isOperated(input, latest)) continue;
    const out = yield* untilUnbroken(
      {
        check,
        action: 'release',
        subject: stop.subject,
        watch: [input],
        why: 'latched',
        seconds: timeToPlug,
      },
      latest,
    );
    letOut = true;
    if (isOperated(input, latest)) return { letOut, missing: refusal(out) ?? 'motors-not-on' };
  }
  if (latest.status?.activity !== 'fault') return { letOut, missing: undefined };
  const cleared = yield* untilUnbroken({ check, action: 'clear', seconds: timeToPlug }, latest);
  return { letOut, missing: refusal(cleared) };
}

/** By its active bit alone: where the stream carries levels only nobody knows which of them is the operated one. */
const isOperated = (input: Switch['input'], { status }: Latest): boolean =>
  status !== undefined && stateIn(status, input)?.active === '1';
