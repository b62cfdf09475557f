import type { FaultName } from '../../model/fault-names.ts';
import { type Belief, normalised, posterior } from './belief.ts';
import { type Choice, nextTest, weightsOf } from './chooser.ts';
import { type Kind, kinds } from './deed.ts';
import type { DeedName } from './deeds/all.ts';
import { namesOf } from './hypotheses.ts';
import { type Prospect, type Trial, unforeseen } from './prospect.ts';

/** How sure one cause must be before it is named (judgement: one wrong in fifty at most, and each further test costs minutes). */
export const sureEnough = 0.98;

export interface Finding {
  readonly deed: DeedName;
  readonly outcome: string;
}

/** What it came to. */
export interface Conclusion {
  /** Causes that no deed left could tell apart, the likeliest first; one of several faults at once has several names. */
  readonly causes: readonly (readonly FaultName[])[];
  /** How much of the belief they hold together, 0 to 1. */
  readonly share: number;
}

/** One search for a cause: what is believed, what was learnt, what is left to do. Pure: every step gives a new one. */
export class Inquiry {
  readonly prospect: Prospect;
  readonly belief: Belief;
  readonly findings: readonly Finding[];
  private readonly left: readonly Trial[];

  private constructor(
    prospect: Prospect,
    belief: Belief,
    findings: readonly Finding[],
    left: readonly Trial[],
  ) {
    this.prospect = prospect;
    this.belief = belief;
    this.findings = findings;
    this.left = left;
  }

  static begin(prospect: Prospect, allows: (trial: Trial) => boolean = () => true): Inquiry {
    const belief = normalised(prospect.hypotheses.map(({ weight }) => weight));
    return new Inquiry(prospect, belief, [], prospect.trials.filter(allows));
  }

  /** What was seen counts, and its deed is not asked for again. */
  learnt(deed: DeedName, outcome: string): Inquiry {
    const trial = this.prospect.trials.find(({ name }) => name === deed);
    if (!trial) return this;
    const at = trial.keys.indexOf(outcome);
    const column = at < 0 ? trial.keys.indexOf(unforeseen) : at;
    const belief = posterior(this.belief, trial.chances, column) ?? this.belief;
    return new Inquiry(this.prospect, belief, [...this.findings, { deed, outcome }], this.without(deed));
  }

  /** Not possible here, skipped, or nobody is sure: it is not asked for again. A missing meter takes all its deeds with it. */
  ruledOut(deed: DeedName, alsoKind?: Kind): Inquiry {
    const left = this.without(deed).filter(({ kind }) => kind !== alsoKind);
    return new Inquiry(this.prospect, this.belief, this.findings, left);
  }

  /** The next deed, or undefined where the cause is sure enough or nothing left tells more. Safer kinds go first. */
  next(): Choice<Trial> | undefined {
    const classOf = this.classOf();
    if (Math.max(...weightsOf(this.belief, classOf)) >= sureEnough) return undefined;
    for (const kind of kinds) {
      const choice = nextTest(
        this.belief,
        this.left.filter((trial) => trial.kind === kind),
        { classOf },
      );
      if (choice) return choice;
    }
    return undefined;
  }

  conclusion(): Conclusion {
    const classOf = this.classOf();
    const weights = weightsOf(this.belief, classOf);
    const ranked = [...weights.keys()].sort((a, b) => (weights[b] ?? 0) - (weights[a] ?? 0));
    const taken: number[] = [];
    let share = 0;
    for (const group of ranked) {
      if (share >= sureEnough) break;
      taken.push(group);
      share += weights[group] ?? 0;
    }
    const members = [...this.belief.keys()]
      .filter((at) => taken.includes(classOf[at] ?? -1))
      .sort((a, b) => (this.belief[b] ?? 0) - (this.belief[a] ?? 0));
    const most = this.belief[members[0] ?? 0] ?? 0;
    const causes = members
      .filter((at) => (this.belief[at] ?? 0) >= negligible * most)
      .map((at) => namesOf(this.prospect.hypotheses[at] ?? { faults: [], weight: 0 }));
    return { causes, share };
  }

  private without(deed: DeedName): readonly Trial[] {
    return this.left.filter(({ name }) => name !== deed);
  }

  /** Hypotheses that every deed left would show alike are one class: no minute is spent on telling them apart. */
  private classOf(): readonly number[] {
    const numbers = new Map<string, number>();
    return this.prospect.hypotheses.map((_, at) => {
      const text = this.left.map(({ sameAs }) => sameAs[at]).join();
      const number = numbers.get(text) ?? numbers.size;
      numbers.set(text, number);
      return number;
    });
  }
}

/** A cause this much less likely than the first is not named beside it. */
const negligible = 0.02;
