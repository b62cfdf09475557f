import type { DeedName } from '../../../../src/diagnose/troubleshooting/deeds/all.ts';
import { bins } from '../../../../src/model/every-outcome.ts';
import { jumps, type Outcome, still } from '../../../../src/model/outcomes.ts';
import { probeOf } from './doings.ts';
import { chanceFor, happens, oneOf } from './draws.ts';
import type { Machine } from './machine.ts';

const opposite: { readonly [Each in Outcome]?: Outcome } = { yes: 'no', no: 'yes', on: 'off', off: 'on' };

/** What is answered: the truth, or now and then that nobody is sure (undefined), or something wrong. */
export function answerOf(
  machine: Machine,
  deed: DeedName,
  truth: Outcome,
  mistakes: number,
  isAgain = false,
): Outcome | undefined {
  const chance = chanceFor(machine.seed, 'person', isAgain ? `${deed} again` : deed);
  if (!happens(chance, mistakes)) return truth;
  if (happens(chance, 0.5)) return undefined;
  if (truth in opposite) return opposite[truth];
  const probe = probeOf(deed);
  if (probe)
    return oneOf(
      chance,
      ['bin 0' as const, 'bin 1' as const, bins[probe.limits.length] ?? 'bin 4'].filter(
        (each) => each !== truth,
      ),
    );
  // The wrong switch, the wrong plug: nothing was seen to happen, or something jumped that should not.
  if (deed === 'press' || deed === 'tap' || deed === 'carriage') return truth === still ? jumps : still;
  return deed === 'neighbour'
    ? oneOf(
        chance,
        (['own', 'none', 'third'] as const).filter((each) => each !== truth),
      )
    : jumps;
}
