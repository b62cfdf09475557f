import type { Ask } from '../../model/ask.ts';
import type { Check, Ended, Guard, Known, Scene } from '../../model/procedure.ts';
import { ms } from '../../model/units.ts';
import type { CheckName, Verdict } from '../../model/verdict.ts';

/** A check whose kind of evidence is its own business. */
export interface AnyCheck {
  readonly name: CheckName;
  begin(scene: Scene): CheckRun;
}

/** One check under way: which ask waits, and what the evidence so far comes to. */
export interface CheckRun {
  /** The first ask, or undefined where there is nothing to ask. */
  start(): Ask | undefined;
  /** The ask after the one that ended so. */
  next(ended: Ended): Ask | undefined;
  /** Who looks on while the ask that waits is open. */
  readonly guard: Guard | undefined;
  /** Judges what was kept; subjects without evidence come out as not tested. */
  verdicts(): readonly Verdict[];
  known(): Partial<Known>;
}

export function anyCheck<Item>(check: Check<Item>): AnyCheck {
  return { name: check.name, begin: (scene) => run(check, scene) };
}

function run<Item>(check: Check<Item>, scene: Scene): CheckRun {
  const kept: Item[] = [];
  const procedure = check.gather(scene);
  let guard: Guard | undefined;
  const untilAsk = (first: ReturnType<typeof procedure.next>): Ask | undefined => {
    let step = first;
    while (!step.done) {
      if ('ask' in step.value) {
        guard = step.value.guard;
        return step.value.ask;
      }
      kept.push(step.value.keep);
      step = procedure.next(afterKeeping);
    }
    return undefined;
  };
  return {
    start: () => untilAsk(procedure.next(afterKeeping)),
    next: (ended) => untilAsk(procedure.next(ended)),
    get guard() {
      return guard;
    },
    verdicts: () => check.judge(kept, scene),
    known: () => check.teaches(kept, scene),
  };
}

/** What a procedure is sent when it goes on from a `keep`; no procedure reads it. */
const afterKeeping: Ended = { by: 'time', window: { from: ms(0), to: ms(0), lead: undefined, readings: [] } };
