import { Inquiry } from '../../../../src/diagnose/troubleshooting/inquiry.ts';
import { byList, checklistFor } from './checklist.ts';
import { chanceFor } from './draws.ts';
import { judged, type Verdict } from './judged.ts';
import { type Machine, machineOf, mended } from './machine.ts';
import { guidedMinutes, leastMinutes, small } from './optimum.ts';
import { chosen, prospectFor } from './prospects.ts';
import { type Guide, type Searched, search, together } from './search.ts';
import type { Solver } from './solvers.ts';

/** How often a person's answer is wrong or missing, in the run with mistakes. */
export const mistaken = 0.02;

export const machinesFrom = (seed: number, count: number): readonly Machine[] =>
  Array.from({ length: count }, (_, at) => machineOf(seed + at));

/** Every machine searched from the complaint to the end. */
export const searched = (machines: readonly Machine[], guide: Guide, mistakes: number, solve: Solver) =>
  together(
    machines.map((machine) => search(machine, Inquiry.begin(prospectFor(machine)), guide, mistakes)),
    solve,
  );

/** Of two faults one is mended, the switch is tried again and still is not right: the search for the other. */
export function searchedAgain(
  first: readonly Searched[],
  mistakes: number,
  solve: Solver,
): readonly Searched[] {
  const left = first
    .filter((each) => judged(each) === 'in part')
    .map(({ machine, conclusion }) => mended(machine, conclusion.causes.flat()));
  return searched(left, chosen, mistakes, solve);
}

/** The best fixed order for these machines, written from what the troubleshooter believes of each kind of them. */
export const guideOf = (machines: readonly Machine[], seed: number, samples: number): Guide =>
  byList(checklistFor(machines.map(prospectFor), chanceFor(seed, 'checklist'), samples));

export interface Compared {
  readonly least: number;
  readonly chosen: number;
}

/** Small problems cut out of the machines' own, each thought through to the end. */
export const optimumCompared = (machines: readonly Machine[], seed: number): readonly Compared[] =>
  machines.flatMap((machine, at) => {
    const problem = small(prospectFor(machine), chanceFor(seed + at, 'small'), 6, 6);
    const least = leastMinutes(problem);
    return least > 0 ? [{ least, chosen: guidedMinutes(problem, (inquiry) => inquiry.next()?.test) }] : [];
  });

export const shareOf = (all: readonly Searched[], verdict: Verdict): number =>
  all.filter((each) => judged(each) === verdict).length / Math.max(all.length, 1);

export const meanOf = (all: readonly Searched[], of: (each: Searched) => number): number =>
  all.reduce((sum, each) => sum + of(each), 0) / Math.max(all.length, 1);
