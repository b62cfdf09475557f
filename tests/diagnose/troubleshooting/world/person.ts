import type { DeedName } from '../../../../src/diagnose/troubleshooting/deeds/all.ts';
import { still } from '../../../../src/diagnose/troubleshooting/deeds/presses.ts';
import { jumps } from '../../../../src/diagnose/troubleshooting/glimpse.ts';
import { probeOf } from './doings.ts';
import { chanceFor, happens, oneOf } from './draws.ts';
import type { Machine } from './machine.ts';

const opposite: Readonly<Record<string, string>> = { yes: 'no', no: 'yes', on: 'off', off: 'on' };

/** What is answered: the truth, or now and then that nobody is sure (undefined), or something wrong. */
export function answerOf(
  machine: Machine,
  deed: DeedName,
  truth: string,
  mistakes: number,
  isAgain = false,
): string | undefined {
  const chance = chanceFor(machine.seed, 'person', isAgain ? `${deed} again` : deed);
  if (!happens(chance, mistakes)) return truth;
  if (happens(chance, 0.5)) return undefined;
  if (truth in opposite) return opposite[truth];
  const probe = probeOf(deed);
  if (probe)
    return oneOf(
      chance,
      ['bin 0', 'bin 1', `bin ${probe.limits.length}`].filter((each) => each !== truth),
    );
  // The wrong switch, the wrong plug: nothing was seen to happen, or something jumped that should not.
  if (deed === 'press' || deed === 'tap' || deed === 'carriage') return truth === still ? jumps : still;
  return deed === 'neighbour'
    ? oneOf(
        chance,
        ['own', 'none', 'third'].filter((each) => each !== truth),
      )
    : jumps;
}
