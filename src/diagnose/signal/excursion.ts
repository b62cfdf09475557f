import type { InputName } from '../../model/machine.ts';
import type { Window } from '../../model/procedure.ts';
import { type Millis, ms } from '../../model/units.ts';
import { fingersAtFastest } from '../limits.ts';
import { movers } from './movers.ts';
import { agree, inputsOf, knownAfter, type Sample, type State, track } from './track.ts';

/** How one input left its level in a window, from the level it had when the ask was put. */
export interface Excursion {
  readonly input: InputName;
  readonly rest: State;
  /** The state it first went to. */
  readonly away: State;
  /** At the end of the window it was back at rest. */
  readonly returned: boolean;
  readonly edges: number;
  /** Host clock of the first sample that differs, and of the last change. */
  readonly firstAt: Millis;
  readonly lastAt: Millis;
  /** Edges closer together than any finger makes them. */
  readonly bounces: number;
  /** A whole report (not an edge alone) showed the level moved while the active bit stayed. */
  readonly levelOnly: boolean;
}

/** The samples that differ from what was known before them. */
export function changes(samples: readonly Sample[]): readonly Sample[] {
  let known: State | undefined;
  return samples.filter((sample) => {
    const before = known;
    known = knownAfter(sample, before);
    return before !== undefined && !agree(before, sample);
  });
}

export function excursionOf(samples: readonly Sample[], input: InputName): Excursion | undefined {
  const [rest, ...later] = samples;
  if (!rest) return undefined;
  const moved = changes(samples);
  const first = moved[0];
  const last = moved.at(-1);
  if (!first || !last) return undefined;
  return {
    input,
    rest,
    away: awayState(later, rest, first),
    returned: agree(
      samples.reduce<State>((known, each) => knownAfter(each, known), rest),
      rest,
    ),
    edges: moved.length,
    firstAt: first.arrived,
    lastAt: last.arrived,
    bounces: moved.filter((edge, i) => edge.at - (moved[i - 1]?.at ?? ms(-Infinity)) < fingersAtFastest)
      .length,
    levelOnly: isLevelOnly(later, rest),
  };
}

/** The settled away state is told by a whole report where there is one: an edge alone leaves the active bit behind. */
function awayState(samples: readonly Sample[], rest: State, first: State): State {
  return (
    samples.find((each) => each.from === 'status' && !agree(each, rest) && bothMoved(each, rest)) ?? first
  );
}

const bothMoved = (a: State, b: State): boolean =>
  (a.level !== b.level || a.level === '?') && (a.active !== b.active || a.active === '?');

/** Level away from rest in two reports or more, the active bit reported and never moved. */
function isLevelOnly(samples: readonly Sample[], rest: State): boolean {
  if (rest.active === '?' || rest.level === '?') return false;
  if (samples.some((each) => each.active !== rest.active)) return false;
  return samples.filter((each) => each.from === 'status' && each.level !== rest.level).length >= 2;
}

/** Every input that moved in a window, in the order they first moved; `deaf` ones are left out. */
export function excursions(window: Window, deaf: readonly InputName[] = []): readonly Excursion[] {
  const moved = movers(window);
  return inputsOf(window)
    .filter((input) => moved.has(input) && !deaf.includes(input))
    .flatMap((input) => excursionOf(track(window, input), input) ?? [])
    .sort((a, b) => a.firstAt - b.firstAt);
}
