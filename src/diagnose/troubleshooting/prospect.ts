import { type Outcome, unforeseen } from '../../model/outcomes.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Test } from './aims.ts';
import type { AnyDeed, Deed } from './deed.ts';
import { type DeedName, deedsFor } from './deeds/all.ts';
import { type History, type Hypothesis, hypothesesOf } from './hypotheses.ts';
import { Imagined, type Surroundings } from './imagined.ts';
import { chancesIn, type Odds } from './odds.ts';

/** A deed with what would come of it under each hypothesis. */
export interface Trial extends Test {
  readonly name: DeedName;
  readonly kind: Deed['kind'];
  /** The outcomes in the order of the chances; the last stands for anything nobody foresaw. */
  readonly keys: readonly Outcome[];
  /** How often its answer is wrong; the chances hold that already. */
  readonly mistaken: number;
  /** How likely each outcome is to be told by mistake. */
  readonly slips: readonly number[];
}

/** Everything that may be the matter with an input and everything that can be done about finding out, computed once. */
export interface Prospect {
  readonly wiring: Wiring;
  readonly hypotheses: readonly Hypothesis[];
  readonly trials: readonly Trial[];
}

export function prospectOf(wiring: Wiring, history: History, around: Surroundings): Prospect {
  const hypotheses = hypothesesOf(wiring, history, around);
  const scenes = hypotheses.map(({ faults }) => new Imagined(wiring, faults, around));
  return { wiring, hypotheses, trials: deedsFor(wiring).map((deed) => trialOf(deed, scenes)) };
}

function trialOf(
  { name, kind, minutes, mistaken, slipsTo = [], odds }: AnyDeed,
  scenes: readonly Imagined[],
): Trial {
  const all = scenes.map((scene): Odds => odds(scene));
  const keys: readonly Outcome[] = [
    ...new Set(all.flatMap((each) => chancesIn(each).map(([key]) => key))),
    unforeseen,
  ];
  const usual = slipsTo.filter((key) => keys.includes(key));
  const even = usual.length === 0 ? mistaken : mistaken / 2;
  const slips = keys.map(
    (key) => even / keys.length + (usual.includes(key) ? (mistaken - even) / usual.length : 0),
  );
  const chances = all.map((each) =>
    keys.map((key, at) => (1 - mistaken) * (each[key] ?? 0) + (slips[at] ?? 0)),
  );
  const outcomes = keys.length;
  return { name, kind, minutes, mistaken, slips, outcomes, chances, keys, sameAs: alikeRows(chances) };
}

/** Hypotheses that a trial would show alike, to the hundredth, have one number. */
export function alikeRows(chances: Trial['chances']): readonly number[] {
  const rows = new Map<string, number>();
  return chances.map((row) => {
    const text = row.map((chance) => chance.toFixed(2)).join();
    const number = rows.get(text) ?? rows.size;
    rows.set(text, number);
    return number;
  });
}
